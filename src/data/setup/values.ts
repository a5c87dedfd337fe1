import * as z from "zod";
import { convert, findUnit, unitsOf } from "../../units/convert.ts";
import type { ConvertibleUnit, Dimension, UnitOf } from "../../units/factors.ts";
import { readDate } from "../dates.ts";
import { tidyText } from "../table.ts";
import { messageOf, type SetupNeed } from "./needs.ts";

/**
 * Kinds of values in a setup. Each has a title that says what to write. The message of every check names what is needed,
 * so that a problem reads the same in a setup as in a sheet of catches.
 */

/** A quantity with the standard uncertainty its owner gives it; null: none given. */
export interface Measured {
  readonly value: number;
  readonly standardUncertainty: number | null;
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Outside these limits no figure of a farm lies, and within them no later arithmetic overflows. */
const smallest = 1e-9;
const largest = 1e9;

/** @internal */
export const above0 = bounded(smallest, largest, { problem: "setup-above-0", facts: {} });
/** @internal */
export const atLeast0 = bounded(0, largest, { problem: "setup-at-least-0", facts: {} });

/** @internal */
export function boundedBetween(low: number, high: number) {
  return bounded(low, high, { problem: "setup-between", facts: { low, high } });
}

function bounded(low: number, high: number, need: SetupNeed) {
  const error = messageOf(need);
  return z.number({ error }).min(low, { error }).max(high, { error }).meta({ title: "number" });
}

/** A percentage as a fraction. @internal */
export function percentage(low: number, high: number) {
  return bounded(low, high, { problem: "setup-percentage", facts: { low, high } })
    .transform((percent) => percent / 100)
    .meta({ title: "percentage" });
}

/** @internal */
export const textError = messageOf({ problem: "setup-text", facts: {} });
/** @internal */
export const text = z
  .string({ error: textError })
  .transform(tidyText)
  .pipe(z.string().min(1, { error: textError }))
  .meta({ title: "text" });

const nameError = messageOf({ problem: "setup-name", facts: {} });
/** Bins are often numbered, and a number is then written without quotation marks. @internal */
export const name = z
  .union([z.string(), z.number()], { error: nameError })
  .transform((value) => tidyText(String(value)))
  .pipe(z.string().min(1, { error: nameError }))
  .meta({ title: "name or number" });

const mostWhole = 1_000_000;
const wholeError = messageOf({ problem: "setup-whole-from-1", facts: {} });
/** @internal */
export const wholeFrom1 = z
  .number({ error: wholeError })
  .int({ error: wholeError })
  .min(1, { error: wholeError })
  .max(mostWhole, {
    error: messageOf({ problem: "setup-whole-up-to", facts: { most: mostWhole } }),
  })
  .meta({ title: "whole number" });

/** @internal */
export const date = z
  .string({ error: messageOf({ problem: "setup-date", facts: {} }) })
  .transform((value, context) => {
    const found = readDate(value.trim());
    if (found !== null) return found;
    context.addIssue({
      code: "custom",
      message: messageOf({ problem: "setup-no-such-date", facts: {} }),
    });
    return z.NEVER;
  })
  .meta({ title: "date" });

/** @internal */
export function oneOf<const V extends string>(...values: readonly V[]) {
  const title = `one of ${values.map((value) => `"${value}"`).join(", ")}`;
  const error = messageOf({ problem: "setup-one-of", facts: { values } });
  return z.enum(values, { error }).meta({ title });
}

/** @internal */
export function list<S extends z.ZodType>(entry: S) {
  return z.array(entry, { error: messageOf({ problem: "setup-list", facts: {} }) });
}

/** A figure with its unit and perhaps its standard uncertainty, in the unit evencatch works in. @internal */
export function measured<D extends Dimension>(
  dimension: D,
  base: UnitOf<D>,
  value: z.ZodNumber = above0,
) {
  return strict({ value, unit: unitOf(dimension), standard_uncertainty: atLeast0.optional() })
    .transform(
      (quantity): Measured => ({
        value: inBase(quantity.value, quantity.unit, base),
        standardUncertainty:
          quantity.standard_uncertainty === undefined
            ? null
            : inBase(quantity.standard_uncertainty, quantity.unit, base),
      }),
    )
    .meta({ title: `${inUnits(dimension)}, with an optional standard_uncertainty` });
}

/** A figure with its unit that is wanted or displayed, not measured, so it has no uncertainty to give. @internal */
export function exact<D extends Dimension>(dimension: D, base: UnitOf<D>) {
  return strict({ value: above0, unit: unitOf(dimension) })
    .transform(({ value, unit }) => inBase(value, unit, base))
    .meta({ title: inUnits(dimension) });
}

/** From the lower figure to the higher, both wanted or set. @internal */
export function span<D extends Dimension>(dimension: D, base: UnitOf<D>) {
  const units = unitsOf<Dimension>(dimension);
  return strict({ from: exact(dimension, base), to: exact(dimension, base) })
    .transform((ends, context): Span => {
      if (ends.from <= ends.to) return ends;
      context.addIssue({
        code: "custom",
        message: messageOf({ problem: "setup-span-reversed", facts: {} }),
      });
      return z.NEVER;
    })
    .meta({
      title: `from and to, each ${units.length === 1 ? `in ${units[0]}` : `a ${inUnits(dimension)}`}`,
    });
}

/** "mass in kg, g, t, lb or oz" */
export function inUnits(dimension: Dimension): string {
  return `${dimension} in ${either(unitsOf<Dimension>(dimension))}`;
}

/** @internal */
export function either(words: readonly string[]): string {
  return words.join(", ").replace(/, ([^,]+)$/, " or $1");
}

/** An object that refuses keys it does not know: a slip of the keyboard must not switch something off in silence. @internal */
export function strict<S extends z.ZodRawShape>(shape: S) {
  return z.strictObject(shape, { error: messageOf({ problem: "setup-object", facts: {} }) });
}

/** A quantity as the file writes it. */
export function quantity(value: number, unit: string, standardUncertainty?: number) {
  return standardUncertainty === undefined
    ? { value, unit }
    : { value, unit, standard_uncertainty: standardUncertainty };
}

function unitOf<D extends Dimension>(dimension: D) {
  const units = unitsOf<Dimension>(dimension);
  const error = messageOf({ problem: "setup-unit", facts: { units } });
  return (
    z
      .string({ error })
      .transform((value, context): UnitOf<D> => {
        const unit = findUnit(value, dimension);
        if (unit !== null) return unit;
        context.addIssue({ code: "custom", message: error });
        return z.NEVER;
      })
      // Examples, not the only spellings: "KG / HA" is understood too.
      .meta({ example: units[0] })
  );
}

function inBase<D extends Dimension>(value: number, unit: UnitOf<D>, base: UnitOf<D>): number {
  // Both are units of D, and so compatible; the compiler cannot see that for a generic D.
  return convert<ConvertibleUnit>(value, unit as ConvertibleUnit, base as ConvertibleUnit);
}
