import { NumericalError } from "./errors.ts";

/**
 * The value at a place that is there by construction. Where it is not, the fault is in this library, and a value made up in
 * its stead would hide it.
 *
 * @throws NumericalError naming the place
 */
export function at<T>(values: ArrayLike<T>, index: number): T {
  const value = values[index];
  if (value === undefined)
    throw new NumericalError(`There is no value at place ${index} of ${values.length}.`);
  return value;
}

/** The last of values of which there is one by construction. */
export function lastOf<T>(values: ArrayLike<T>): T {
  return at(values, values.length - 1);
}
