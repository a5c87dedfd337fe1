import { justOver, roundingOf } from "../numbers.ts";
import { cellText, type TableRow } from "../table.ts";
import { cellKey } from "../workbook.ts";
import type { Use } from "./columns-of.ts";
import { figureIn } from "./figures.ts";
import type { AsideReason } from "./result.ts";
import { bare, wordsOf } from "./synonyms/all.ts";

const mean = wordsOf("mean");
const total = wordsOf("total");
const otherFigure = wordsOf("otherFigure");
const spilled = wordsOf("spilled");

/** Columns in which such a word may be part of what somebody has to say, or somebody's name. */
const talking: ReadonlySet<string> = new Set(["note", "checked", "reason", "operator"]);

/** Whether a row is worked out from others, by the word that stands in it; null: nothing says so. */
export function workedOutByWord(row: TableRow, uses: readonly Use[]): AsideReason | null {
  const silent = new Set(uses.flatMap(({ name, index }) => (talking.has(name) ? index : [])));
  const texts = row.cells.flatMap((cell, index) => (silent.has(index) ? [] : cellText(cell)));
  for (const text of texts) {
    if (text === "" || text.length > 60 || figureIn(text) !== null) continue;
    const whole = bare(text);
    const first = bare(/^[^\s:=]+/.exec(text)?.[0] ?? "");
    if (mean.has(whole) || mean.has(first)) return "mean";
    if (total.has(whole) || total.has(first)) return "total";
    if (otherFigure.has(whole)) return "other-figure";
  }
  return null;
}

const overRows =
  /\b(AVERAGE|SUM|SUBTOTAL|MEDIAN|STDEV[.A-Z]*|VAR[.A-Z]*|MIN|MAX)\((?:\d+,)?\$?[A-Z]+\$?(\d+):\$?[A-Z]+\$?(\d+)/i;

/** The same by a formula of one of its masses that goes over several rows. */
export function workedOutByFormula(
  row: TableRow,
  uses: readonly Use[],
  formulas: ReadonlyMap<string, string>,
): AsideReason | null {
  for (const { kind, index } of uses) {
    const formula = kind === "mass" ? formulas.get(cellKey(row.number, index)) : undefined;
    const [, name = "", first, last] = overRows.exec(formula ?? "") ?? [];
    if (name === "" || first === last) continue;
    if (/^AVERAGE$/i.test(name)) return "mean";
    return /^SU/i.test(name) ? "total" : "other-figure";
  }
  return null;
}

/** Whether a figure without turns is the mean or the sum of those above it, to the digits it is written with. */
export function workedOutByFigure(text: string, above: readonly number[]): AsideReason | null {
  const number = figureIn(text)?.number.replace(",", ".");
  if (number === undefined || above.length < 2) return null;
  const decimals = number.split(".")[1]?.length ?? 0;
  const half = roundingOf({ value: Number(number), decimals }) * justOver;
  const sum = above.reduce((all, one) => all + one, 0);
  if (Math.abs(Number(number) - sum / above.length) <= half) return "mean";
  return Math.abs(Number(number) - sum) <= half ? "total" : null;
}

/** Whether what stands in place of a mass, or as a note beside none, says that nothing could be weighed. */
export function saysSpilled(text: string): boolean {
  const first = bare(/^[^\s,;:.!]+/.exec(text)?.[0] ?? "");
  return spilled.has(bare(text)) || spilled.has(first);
}

/** What people write into a cell to say that there is nothing to write. */
const strokes = /^(?:[-–—/.]+|n\.?\s?a\.?|k\.?\s?a\.?)$/i;

export function isStroke(text: string): boolean {
  return strokes.test(text);
}

const dittoWords = wordsOf("ditto");
const dittoMarks = /^(?:["″”„“〃]|''|,,|-\s?["″”„]\s?-)$/;

export function isDitto(text: string): boolean {
  return dittoMarks.test(text) || dittoWords.has(bare(text.replace(/[.]/g, " ")));
}
