type Cell = string | number;

/** A Markdown table, one string a line. */
export function table(head: readonly Cell[], rows: readonly (readonly Cell[])[]): string[] {
  const line = (cells: readonly Cell[]) => `| ${cells.join(" | ")} |`;
  return [line(head), `|${head.map(() => "---|").join("")}`, ...rows.map(line)];
}
