type Cell = string | number;

/** A whole number with marks between its thousands, and a figure with two decimals. */
export const count = (value: number) => value.toLocaleString("en");
export const two = (value: number) => value.toFixed(2);

/** A Markdown table, one string a line. */
export function table(head: readonly Cell[], rows: readonly (readonly Cell[])[]): string[] {
  const line = (cells: readonly Cell[]) => `| ${cells.join(" | ")} |`;
  return [line(head), `|${head.map(() => "---|").join("")}`, ...rows.map(line)];
}
