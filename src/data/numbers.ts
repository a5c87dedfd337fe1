import { powerOfTen } from "../units/power-of-ten.ts";
import { type Cell, cellText, type Table } from "./table.ts";

/** A number and how finely it was written: 5.890 has three decimals. */
export interface PrintedNumber {
  readonly value: number;
  readonly decimals: number;
}

export type NumberRead =
  | ({ readonly ok: true } & PrintedNumber)
  | { readonly ok: false; readonly why: "not-a-number" | "not-finite" | "decimal-ambiguous" };

/** What is known of the decimal mark of a file. */
export interface DecimalMarks {
  /** Some number has a comma that can be nothing but a decimal mark. */
  readonly comma: boolean;
  /** The same of a point. */
  readonly point: boolean;
  /**
   * The mark of the format itself: a point where commas separate cells, and in JSON. Semicolons and tabs are what programs
   * choose where the comma is taken for decimals, so nothing is known from them.
   */
  readonly ofFormat: "point" | "unknown";
}

export const numeral = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d{1,4})?$/i;
/** 1,234 and 12.345: one mark, three digits after it, and before it what could be a group of thousands. */
export const couldBeThousands = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
export const notFinite = /^[+-]?(?:nan|inf|infinity|∞)$/i;
export const longestNumeral = 64;
/** What roundings may come to, times this: a difference of exactly so much is not lost to binary arithmetic. */
export const justOver = 1.000001;

/** Looks through the number cells of a file for decimal marks that cannot be anything else. */
export function decimalMarks(cells: Iterable<Cell>, ofFormat: Table["decimalMark"]): DecimalMarks {
  let comma = false;
  let point = false;
  for (const cell of cells) {
    if (typeof cell !== "string" || !tellsMore(cell, comma, point)) continue;
    const text = numeralText(cell);
    if (text === null || couldBeThousands.test(text)) continue;
    comma ||= text.includes(",");
    point ||= text.includes(".");
    if (point && (comma || ofFormat === "only point")) break;
  }
  return { comma, point, ofFormat: ofFormat === "unknown" ? ofFormat : "point" };
}

/** Whether a cell has a mark that the cells before it did not settle. */
function tellsMore(cell: string, comma: boolean, point: boolean): boolean {
  return (!comma && cell.includes(",")) || (!point && cell.includes("."));
}

/**
 * The number in a cell. One rule for comma and point: a mark that cannot separate thousands is the decimal mark; one that
 * could (1,234 or 42.050) is the decimal mark only where the file has settled it, by other numbers with that mark or by
 * its format, and no number has the other mark. Anything else is refused, since a guess would be wrong by a factor of
 * 1000.
 */
export function readNumber(cell: Cell, marks: DecimalMarks): NumberRead {
  if (typeof cell === "number" && !Number.isFinite(cell)) return { ok: false, why: "not-finite" };
  const text = numeralText(cell);
  if (text === null) {
    return { ok: false, why: notFinite.test(cellText(cell)) ? "not-finite" : "not-a-number" };
  }
  if (
    typeof cell === "string" &&
    couldBeThousands.test(text) &&
    !text.includes(markOf(marks) ?? "?")
  ) {
    return { ok: false, why: "decimal-ambiguous" };
  }
  // A minus zero is no different on paper, and JSON would lose its sign.
  const value = Number(text.replace(",", ".")) + 0;
  if (!Number.isFinite(value)) return { ok: false, why: "not-finite" };
  return { ok: true, value, decimals: decimalsOf(text) };
}

/**
 * Two ways to write a number that is refused as ambiguous, as a decimal and as thousands, each of which can be read in one
 * way only in this file.
 */
export function clearSpellings(text: string, marks: DecimalMarks): readonly [string, string] {
  const together = text.replace(/[.,]/, "");
  const mark = markOf(marks);
  // A fourth decimal makes thousands impossible, and so settles the rest of the file as well.
  return [mark === null ? `${text}0` : text.replace(/[.,]/, mark), together];
}

/** The decimal mark of a file; null where nothing, or everything, speaks for one. */
export function markOf({ comma, point, ofFormat }: DecimalMarks): "," | "." | null {
  if (comma !== point) return comma ? "," : ".";
  return !comma && ofFormat === "point" ? "." : null;
}

function numeralText(cell: Cell): string | null {
  if (typeof cell === "boolean") return null;
  // Word processors write a minus sign for the hyphen.
  const text = cellText(cell).replace(/^\u2212/, "-");
  return text.length <= longestNumeral && numeral.test(text) ? text : null;
}

function decimalsOf(text: string): number {
  const [digits = "", exponent = "0"] = text.toLowerCase().split("e");
  const written = digits.split(/[.,]/)[1]?.length ?? 0;
  // toFixed knows no more than 100 decimals.
  return Math.min(100, Math.max(0, written - Number(exponent)));
}

/**
 * Difference of two numbers as one would work it out on paper: 6.31 − 0.42 is 5.89, not 5.889999999999999. The
 * result has the decimals of the more finely written number, so rounding to them removes nothing but what binary
 * arithmetic added.
 */
export function paperDifference(minuend: PrintedNumber, subtrahend: PrintedNumber): PrintedNumber {
  const decimals = Math.max(minuend.decimals, subtrahend.decimals);
  return { value: toDecimals(minuend.value - subtrahend.value, decimals), decimals };
}

const powersOfTen = [1, 10, 100, 1e3, 1e4, 1e5, 1e6] as const;
/** Below it a number with six decimals is a whole number of the last one, and arithmetic with it exact. */
const exactly = 1e9;

/** The number nearest to a value among those with so many decimals. */
function toDecimals(value: number, decimals: number): number {
  const power = powersOfTen[decimals];
  return power === undefined || Math.abs(value) >= exactly
    ? Number(value.toFixed(decimals))
    : Math.round(value * power) / power;
}

/** Half a unit in the last decimal written: the most by which rounding may have moved the number. */
export function roundingOf(number: PrintedNumber): number {
  return 0.5 * powerOfTen(-number.decimals);
}
