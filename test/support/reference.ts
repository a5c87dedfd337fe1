import { readFileSync } from "node:fs";

/** A published data set with its answers, as kept in test/reference with its source. */
export interface Reference {
  readonly data: Readonly<Record<string, readonly number[]>>;
  readonly certified: Readonly<Record<string, string>>;
  readonly recomputed_in_R: Readonly<Record<string, number>>;
}

export function reference(path: string): Reference {
  return JSON.parse(readFileSync(new URL(`../reference/${path}`, import.meta.url), "utf8"));
}

/** A column of a reference; the test fails when there is none. */
export function column(set: Reference, name: string): readonly number[] {
  const values = set.data[name];
  if (values === undefined) throw new Error(`The reference has no column ${name}.`);
  return values;
}

/** A full-precision value of a reference; the test fails when there is none. */
export function recomputed(set: Reference, name: string): number {
  const value = set.recomputed_in_R[name];
  if (value === undefined) throw new Error(`The reference has no value ${name}.`);
  return value;
}

/** Half a unit of the last digit a published number prints. */
export function printedTolerance(printed: string): number {
  const decimals = /\.(\d+)/.exec(printed)?.[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

/** Correct digits of a value: −log10 of its relative error, at most 16. */
export function digits(value: number, truth: number): number {
  if (value === truth) return 16;
  const error = truth === 0 ? Math.abs(value) : Math.abs(value / truth - 1);
  return Math.min(16, -Math.log10(error));
}

/** Insists that a value is there. */
export function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined)
    throw new Error("A value was expected, but none is there.");
  return value;
}
