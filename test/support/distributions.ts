import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { digits } from "./reference.ts";

type Row = Readonly<Record<string, number | string>>;

export interface DistributionReference {
  readonly tails: readonly Row[];
  readonly quantiles: readonly Row[];
}

/** Values of one distribution to 25 digits, from test/reference/distributions with the name of their generator. */
export function distributionReference(name: string): DistributionReference {
  const file = new URL(`../reference/distributions/${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, "utf8"));
}

/** A number of a row; decimal strings become the nearest double. */
export function numberAt(row: Row, key: string): number {
  const value = Number(row[key]);
  if (Number.isNaN(value)) throw new Error(`The row has no number ${key}.`);
  return value;
}

/** Expects a value to agree with the truth to so many digits (−log10 of the relative error). */
export function expectDigits(value: number, truth: number, least: number, where: unknown): void {
  expect(digits(value, truth), `${value} for ${truth} at ${JSON.stringify(where)}`).toBeGreaterThan(
    least,
  );
}

/** Every combination of one value from each list. */
export function combinations(...lists: readonly (readonly number[])[]): number[][] {
  return lists.reduce<number[][]>(
    (rows, list) => rows.flatMap((row) => list.map((value) => [...row, value])),
    [[]],
  );
}

/** Probabilities from 1e-8 to 1 − 1e-8. */
export const probabilities = [
  1e-8,
  1e-6,
  1e-3,
  0.025,
  0.2,
  0.5,
  0.8,
  0.975,
  0.999,
  1 - 1e-6,
  1 - 1e-8,
];

/** ln x − digamma, trigamma and Stirling's remainder to 25 digits. */
export function specialFunctionReference(): readonly Row[] {
  const file = new URL("../reference/distributions/special-functions.json", import.meta.url);
  return JSON.parse(readFileSync(file, "utf8")).values;
}
