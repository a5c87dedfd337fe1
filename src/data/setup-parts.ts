import * as z from "zod";
import { convert, findUnit, unitsOf } from "../units/convert.ts";
import type { ConvertibleUnit, Dimension, UnitOf } from "../units/factors.ts";
import { readDate } from "./dates.ts";
import type { Measured, Span } from "./setup.ts";
import { tidyText } from "./table.ts";

/**
 * Building blocks of the setup's schema. The message of every check completes "needed ...", so that a problem reads the
 * same in a setup as in a sheet of catches.
 */

/** Outside these limits no figure of a farm lies, and within them no later arithmetic overflows. */
const smallest = 1e-9;
const largest = 1e9;

export const above0 = bounded(smallest, largest, "a number above 0");
export const atLeast0 = bounded(0, largest, "a number of 0 or more");

function bounded(low: number, high: number, error: string) {
  return z.number({ error }).min(low, { error }).max(high, { error });
}

/** A percentage as a fraction. */
export function percentage(low: number, high: number) {
  return bounded(low, high, `a percentage from ${low} to ${high}`).transform(
    (percent) => percent / 100,
  );
}

const textError = "a text";
export const text = z
  .string({ error: textError })
  .transform(tidyText)
  .pipe(z.string().min(1, { error: textError }));

/** Bins are often numbered, and a number is then written without quotation marks. */
export const name = z
  .union([z.string(), z.number()], { error: "a name or a number" })
  .transform((value) => tidyText(String(value)))
  .pipe(z.string().min(1, { error: "a name or a number" }));

export const wholeFrom1 = z
  .number({ error: "a whole number from 1" })
  .int({ error: "a whole number from 1" })
  .min(1, { error: "a whole number from 1" })
  .max(1_000_000, { error: "a whole number up to 1000000" });

export const date = z.string({ error: "a date" }).transform((value, context) => {
  const found = readDate(value.trim());
  if (found !== null) return found;
  context.addIssue({
    code: "custom",
    message: "a date that exists, year first, such as 2026-04-12",
  });
  return z.NEVER;
});

/** What to do about a problem that an example of the field does not answer. */
export function remedy(sentence: string): { readonly remedy: string } {
  return { remedy: sentence };
}

/** An object that refuses keys it does not know: a slip of the keyboard must not switch something off in silence. */
export function strict<S extends z.ZodRawShape>(shape: S) {
  return z.strictObject(shape, { error: "an object in braces" });
}

export function list<S extends z.ZodType>(entry: S) {
  return z.array(entry, { error: "a list in square brackets" });
}

/** A figure with its unit and perhaps its standard uncertainty, in the unit evencatch works in. */
export function measured<D extends Dimension>(
  dimension: D,
  base: UnitOf<D>,
  value: z.ZodNumber = above0,
) {
  return strict({
    value,
    unit: unitOf(dimension),
    standard_uncertainty: atLeast0.optional(),
  }).transform(
    (quantity): Measured => ({
      value: inBase(quantity.value, quantity.unit, base),
      standardUncertainty:
        quantity.standard_uncertainty === undefined
          ? null
          : inBase(quantity.standard_uncertainty, quantity.unit, base),
    }),
  );
}

/** A figure with its unit that is wanted or displayed, not measured, so it has no uncertainty to give. */
export function exact<D extends Dimension>(dimension: D, base: UnitOf<D>) {
  return strict({ value: above0, unit: unitOf(dimension) }).transform(({ value, unit }) =>
    inBase(value, unit, base),
  );
}

/** From the lower figure to the higher, both wanted or set. */
export function span<D extends Dimension>(dimension: D, base: UnitOf<D>) {
  return strict({ from: exact(dimension, base), to: exact(dimension, base) }).transform(
    (ends, context): Span => {
      if (ends.from <= ends.to) return ends;
      context.addIssue({
        code: "custom",
        message: 'the lower figure under "from" and the higher under "to"',
        params: remedy("Swap the two."),
      });
      return z.NEVER;
    },
  );
}

function unitOf<D extends Dimension>(dimension: D) {
  const allowed = `one of the units ${unitsOf<Dimension>(dimension).join(", ")}`;
  return z.string({ error: allowed }).transform((value, context): UnitOf<D> => {
    const unit = findUnit(value, dimension);
    if (unit !== null) return unit;
    context.addIssue({ code: "custom", message: allowed });
    return z.NEVER;
  });
}

function inBase<D extends Dimension>(value: number, unit: UnitOf<D>, base: UnitOf<D>): number {
  // Both are units of D, and so compatible; the compiler cannot see that for a generic D.
  return convert<ConvertibleUnit>(value, unit as ConvertibleUnit, base as ConvertibleUnit);
}
