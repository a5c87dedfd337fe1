import type { Cell } from "./table.ts";

/**
 * One rule for all text tables: in every one that is written, an apostrophe stands before a text that a spreadsheet would work
 * out instead of showing it, and everything that reads one takes it off again. No other format has it or needs it: a cell of a
 * workbook says itself that it is text.
 *
 * Worked out is what begins with = + - @, also as letters of full width, or with a tab or a line break before one.
 */
export const guardedForm = /^'('*[=+\-@\t\r\n＝＋－＠])/;

/** What begins with apostrophes of its own gets one more, so that it comes back with as many. */
const formula = /^'*[=+\-@\t\r\n＝＋－＠]/;
/** A figure with its sign, which no spreadsheet takes for more than it is. */
const figure = /^[+-]?\d[\d.,]*(?:e[+-]?\d+)?$/i;

/** A cell that a spreadsheet shows as it is. */
export function guarded<C extends Cell>(cell: C): C | string {
  return typeof cell === "string" && formula.test(cell) && !figure.test(cell) ? `'${cell}` : cell;
}

/** A cell of a text table as it was before it was guarded. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") ? cell.replace(guardedForm, "$1") : cell;
}

/** Whether some cell of a text may be guarded: hardly any is, and a million rows are not gone through for nothing. */
export function mayBeGuarded(text: string): boolean {
  return /'[=+\-@\t\r\n＝＋－＠]/.test(text);
}
