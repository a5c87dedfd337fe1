import type { Cell } from "./table.ts";

/** Begins what a spreadsheet works out instead of showing it; with apostrophes, it must come back with as many. */
const formula = /^'*[=+\-@\t\r]/;
/** A figure with its sign, perhaps with its unit, which no spreadsheet takes for more than it is. */
const figure = /^[+-]?[\d.,]+$/;
const guard = /^'(?='*[=+\-@\t\r])/;

/** A cell that a spreadsheet shows as it is: a text that would be a formula gets an apostrophe before it. */
export function guarded<C extends Cell>(cell: C): C | string {
  return typeof cell === "string" && formula.test(cell) && !figure.test(cell) ? `'${cell}` : cell;
}

/** The cells without the apostrophes that `guarded` puts before texts. */
export function withoutGuards(
  rows: readonly (readonly string[])[],
  text: string,
): readonly (readonly string[])[] {
  // Hardly any file has one, and a million rows are not gone through for nothing.
  if (!/'[=+\-@\t\r]/.test(text)) return rows;
  return rows.map((cells) => cells.map((cell) => cell.replace(guard, "")));
}
