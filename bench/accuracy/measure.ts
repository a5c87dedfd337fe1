import { readFileSync } from "node:fs";

export type Row = Readonly<Record<string, number | string>>;

/** One function, measured against reference values. */
export interface Measured {
  readonly function: string;
  readonly provider: string;
  readonly minDigits: number;
  readonly medianDigits: number;
  /** Where the least digits were found. */
  readonly where: string;
}

/** −log10 of the relative error (of the absolute error for a truth of 0), from 0 to 16. */
export function digitsOf(value: number, truth: number): number {
  const error = Math.abs(truth === 0 ? value : value / truth - 1);
  if (Number.isNaN(error)) return 0;
  return Math.min(16, Math.max(0, -Math.log10(error)));
}

/** Digits of a function over the rows of a reference: the least, the median, and where the least is. */
export function measure(
  name: string,
  provider: string,
  rows: readonly Row[],
  value: (row: Row) => number,
  truthKey: string,
): Measured {
  const found = rows
    .map((row) => ({ row, digits: digitsOf(value(row), numberAt(row, truthKey)) }))
    .sort((a, b) => a.digits - b.digits);
  const [worst] = found;
  const middle = found[Math.floor(found.length / 2)];
  if (worst === undefined || middle === undefined)
    throw new Error(`No reference rows for ${name}.`);
  return {
    function: name,
    provider,
    minDigits: oneDecimal(worst.digits),
    medianDigits: oneDecimal(middle.digits),
    where: place(worst.row),
  };
}

export function numberAt(row: Row, key: string): number {
  const value = Number(row[key]);
  if (Number.isNaN(value)) throw new Error(`A reference row has no number ${key}.`);
  return value;
}

/** A JSON file of test/reference. */
export function readReference<T>(path: string): T {
  return JSON.parse(readFileSync(new URL(`../../test/reference/${path}`, import.meta.url), "utf8"));
}

export function oneDecimal(digits: number): number {
  return Math.floor(digits * 10) / 10;
}

const truths = new Set([
  "lower",
  "upper",
  "quantile",
  "logMinusDigamma",
  "trigamma",
  "stirlingRemainder",
]);

function place(row: Row): string {
  return Object.entries(row)
    .filter(([key]) => !truths.has(key))
    .map(
      ([key, value]) => `${key} ${key === "p" ? chance(Number(value)) : shortened(Number(value))}`,
    )
    .join(", ");
}

/** A probability near 1 by its distance from 1: as such 1 − 1e-8 would print as 1. */
function chance(p: number): string {
  return p > 0.99 ? `1 − ${Number((1 - p).toPrecision(3))}` : shortened(p);
}

function shortened(value: number): string {
  return String(Number(value.toPrecision(6)));
}
