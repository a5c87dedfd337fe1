import { type Cell, cellText } from "./table.ts";

/** A number and how finely it was written: 5.890 has three decimals. */
export interface PrintedNumber {
  readonly value: number;
  readonly decimals: number;
}

export type NumberRead =
  | ({ readonly ok: true } & PrintedNumber)
  | { readonly ok: false; readonly why: "not-a-number" | "not-finite" | "decimal-ambiguous" };

/** Which decimal marks a file is known to use, from numbers that can be read in one way only. */
export interface DecimalMarks {
  readonly comma: boolean;
  readonly point: boolean;
}

const numeral = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d{1,4})?$/i;
/** 1,234 and 12.345: one mark, three digits after it, and before it what could be a group of thousands. */
const couldBeThousands = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
const notFinite = /^[+-]?(?:nan|inf|infinity|∞)$/i;
const longestNumeral = 64;

/** Looks through the number cells of a file for decimal marks that cannot be anything else. */
export function decimalMarks(cells: Iterable<Cell>): DecimalMarks {
  let comma = false;
  let point = false;
  for (const cell of cells) {
    if (typeof cell !== "string") continue;
    const text = numeralText(cell);
    if (text === null || couldBeThousands.test(text)) continue;
    comma ||= text.includes(",");
    point ||= text.includes(".");
  }
  return { comma, point };
}

/**
 * The number in a cell. A point is the decimal mark of the format; a comma is taken as one only where it cannot
 * separate thousands, or where the rest of the file has decimal commas and no decimal points. A number that could
 * be read in two ways is refused, since a guess would be wrong by a factor of 1000.
 */
export function readNumber(cell: Cell, marks: DecimalMarks): NumberRead {
  if (typeof cell === "number" && !Number.isFinite(cell)) return { ok: false, why: "not-finite" };
  const text = numeralText(cell);
  if (text === null) {
    return { ok: false, why: notFinite.test(cellText(cell)) ? "not-finite" : "not-a-number" };
  }
  if (typeof cell === "string" && couldBeThousands.test(text) && !settled(text, marks)) {
    return { ok: false, why: "decimal-ambiguous" };
  }
  // A minus zero is no different on paper, and JSON would lose its sign.
  const value = Number(text.replace(",", ".")) + 0;
  if (!Number.isFinite(value)) return { ok: false, why: "not-finite" };
  return { ok: true, value, decimals: decimalsOf(text) };
}

function settled(text: string, marks: DecimalMarks): boolean {
  return text.includes(",") ? marks.comma && !marks.point : !marks.comma;
}

/**
 * Two ways to write a number that is refused as ambiguous, as a decimal and as thousands, each of which can be read in one
 * way only in this file.
 */
export function clearSpellings(text: string, marks: DecimalMarks): readonly [string, string] {
  const together = text.replace(/[.,]/, "");
  if (marks.comma !== marks.point) {
    return [text.replace(/[.,]/, marks.comma ? "," : "."), together];
  }
  // A fourth decimal makes thousands impossible, and so settles the rest of the file as well.
  return [`${text}0`, together];
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
  return { value: Number((minuend.value - subtrahend.value).toFixed(decimals)), decimals };
}

/** Half a unit in the last decimal written: the most by which rounding may have moved the number. */
export function roundingOf(number: PrintedNumber): number {
  return 0.5 * 10 ** -number.decimals;
}
