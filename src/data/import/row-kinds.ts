import { justOver, roundingOf } from "../numbers.ts";
import { cellText, type TableRow } from "../table.ts";
import { cellKey } from "../workbook.ts";
import type { Use } from "./columns-of.ts";
import { figureIn } from "./figures.ts";
import { unnamed } from "./header-meaning.ts";
import type { AsideReason } from "./result.ts";
import { bare, wordsOf } from "./synonyms/all.ts";

const mean = wordsOf("mean");
const total = wordsOf("total");
const otherFigure = wordsOf("otherFigure");
const spilled = wordsOf("spilled");

/** Columns in which such a word may be part of what somebody has to say, or somebody's name. */
const talking: ReadonlySet<string> = new Set(["note", "checked", "reason", "operator"]);
/** Columns that number a catch: one that is worked out from others has such a word in place of a number, or nothing. */
const numbering: ReadonlySet<string> = new Set(["bin", "fill", "catch"]);
const weighing: ReadonlySet<string> = new Set(["net", "gross"]);

interface Word {
  readonly why: AsideReason;
  readonly use: Use;
  /** Whether nothing else stands in the cell. */
  readonly alone: boolean;
}

/**
 * Whether a row is worked out from others, by the word that stands in it; null: nothing says so. A row with turns and a mass
 * that is numbered as a catch is one, whatever a word beside it means.
 */
export function workedOutByWord(row: TableRow, uses: readonly Use[]): AsideReason | null {
  const words = uses.flatMap((use) => (mayLabel(use) ? (wordIn(row, use) ?? []) : []));
  const [first] = words;
  if (first === undefined) return null;
  const has = (names: ReadonlySet<string>) => uses.some((use) => names.has(use.name) && says(use));
  const says = (use: Use) => {
    const text = cellText(row.cells[use.index]);
    const blank = text === "" || isStroke(text) || isDitto(text);
    return !blank && !words.some((word) => word.use === use);
  };
  if (!has(new Set(["turns"])) || !has(weighing)) return first.why;
  if (has(new Set(["catch"]))) return null;
  if (!has(numbering)) return first.why;
  const telling = words.find(
    ({ use, alone }) => numbering.has(use.name) || (alone && use.kind !== "own"),
  );
  return telling?.why ?? null;
}

/** Whether a column that says nothing of a catch itself has such a word, and nothing else, in this row. */
export function worksOutBeside(row: TableRow, uses: readonly Use[]): boolean {
  return uses.some(
    (use) => (use.kind === "own" || talking.has(use.name)) && wordIn(row, use)?.alone === true,
  );
}

/** In a column without a name stands what belongs to the row as a whole; in one with a name of its own, what that name says. */
function mayLabel({ kind, name, header, index }: Use): boolean {
  return kind === "own" ? header === unnamed(index) : !talking.has(name);
}

function wordIn(row: TableRow, use: Use): Word | null {
  const text = cellText(row.cells[use.index]);
  if (text === "" || text.length > 60 || figureIn(text) !== null) return null;
  const whole = bare(text);
  const first = bare(/^[^\s:=]+/.exec(text)?.[0] ?? "");
  if (mean.has(whole) || mean.has(first)) return { why: "mean", use, alone: mean.has(whole) };
  if (total.has(whole) || total.has(first)) return { why: "total", use, alone: total.has(whole) };
  return otherFigure.has(whole) ? { why: "other-figure", use, alone: true } : null;
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

/** Figures as all that a mean takes. */
export interface Summed {
  readonly count: number;
  readonly sum: number;
}

/** Whether a figure is the mean or the sum of those above it, to the digits it is written with. */
export function workedOutByFigure(text: string, { count, sum }: Summed): "mean" | "total" | null {
  const number = figureIn(text)?.number.replace(",", ".");
  if (number === undefined || count < 2) return null;
  const decimals = number.split(".")[1]?.length ?? 0;
  const half = roundingOf({ value: Number(number), decimals }) * justOver;
  if (Math.abs(Number(number) - sum / count) <= half) return "mean";
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
