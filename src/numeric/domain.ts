import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";

/** Throws a `NumericalError` naming the argument when `value` is not a number; ±Infinity passes. */
export function requireNumber(routine: string, argument: string, value: number): void {
  if (typeof value !== "number" || Number.isNaN(value))
    refuse(routine, argument, value, "a number");
}

/** Throws a `NumericalError` naming the argument unless `value` is a finite number. */
export function requireFinite(routine: string, argument: string, value: number): void {
  if (!Number.isFinite(value)) refuse(routine, argument, value, "a finite number");
}

/** The same of every value, naming its place; a name is made only for one that is refused. */
export function requireAllFinite(
  routine: string,
  argument: string,
  values: readonly number[],
): void {
  for (let i = 0; i < values.length; i++)
    if (!Number.isFinite(values[i])) requireFinite(routine, `${argument} ${i + 1}`, at(values, i));
}

/** Half of less, or its square root's error, is no number any more that a computer works with at full precision. */
const least = 1e-300;

/** Throws a `NumericalError` naming the argument unless `value` is finite and above 0, by 1e-300 at least. */
export function requirePositive(routine: string, argument: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) {
    refuse(routine, argument, value, "a finite number above 0");
  }
  requireAtLeast(routine, argument, value, least);
}

/** Throws a `NumericalError` naming the argument unless `value` is finite and 0 or more. */
export function requireNotNegative(routine: string, argument: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) {
    refuse(routine, argument, value, "a finite number of 0 or more");
  }
}

/** Throws a `NumericalError` naming the argument unless `value` is above 0, by 1e-300 at least; Infinity passes. */
export function requirePositiveOrInfinite(routine: string, argument: string, value: number): void {
  if (!(typeof value === "number" && value > 0)) {
    refuse(routine, argument, value, "a number above 0, or Infinity");
  }
  requireAtLeast(routine, argument, value, least);
}

/** Throws a `NumericalError` naming the argument unless 0 < `value` < 1. */
export function requireProbability(routine: string, argument: string, value: number): void {
  if (!(typeof value === "number" && value > 0 && value < 1)) {
    refuse(routine, argument, value, "strictly between 0 and 1");
  }
}

/** Throws a `NumericalError` naming the argument when `value` is below what the routine can still work out. */
export function requireAtLeast(
  routine: string,
  argument: string,
  value: number,
  least: number,
): void {
  if (value < least) refuse(routine, argument, value, `at least ${least}`);
}

/** Throws a `NumericalError` naming the argument unless `value` is a whole number of at least `least`. */
export function requireWhole(
  routine: string,
  argument: string,
  value: number,
  least: number,
): void {
  if (!(Number.isSafeInteger(value) && value >= least)) {
    refuse(routine, argument, value, `a whole number of at least ${least}`);
  }
}

/** Passes a finite result on; throws a `NumericalError` when the answer has no finite double. */
export function finiteResult(routine: string, value: number): number {
  if (!Number.isFinite(value)) {
    throw new NumericalError(`${routine}: the result is ${value}, outside what a number can hold.`);
  }
  return value;
}

/** Passes a finite result above 0 on; throws a `NumericalError` when the answer has no such double. */
export function positiveResult(routine: string, value: number): number {
  if (!(value > 0)) {
    throw new NumericalError(`${routine}: the result is too small for a number to hold.`);
  }
  return finiteResult(routine, value);
}

function refuse(routine: string, argument: string, value: unknown, allowed: string): never {
  throw new NumericalError(`${routine}: ${argument} is ${String(value)}; it must be ${allowed}.`);
}
