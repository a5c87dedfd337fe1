import { NumericalError, UnitError } from "../errors/errors.ts";
import {
  type CompatibleUnit,
  type ConvertibleUnit,
  type Dimension,
  type Factor,
  factors,
  type UnitOf,
} from "./factors.ts";

/**
 * How much is this in another unit?  value × from ÷ to, with the exact factors of the table in factors.ts.
 *
 * @param value  any finite number, in `from`
 * @param from   unit of the value
 * @param to     unit wanted, of the same dimension
 * @returns      the value in `to`, relative error below 1e-15
 * @throws       UnitError when a unit is unknown or the two measure different things; NumericalError when the value, or the
 *               converted value, is not finite
 * @example      convert(60, "lb/bu", "kg/m³") // -> 772.3115868584682
 */
export function convert<U extends ConvertibleUnit>(
  value: number,
  from: U,
  to: CompatibleUnit<U>,
): number {
  const dimension = dimensions.find((candidate) => factorIn(candidate, from) !== undefined);
  const allowed = dimension === undefined ? dimensions : [dimension];
  const source = factorIn(dimension, from);
  const target = factorIn(dimension, to);
  if (source === undefined || target === undefined) {
    throw new UnitError(`Cannot convert ${from} into ${to}; allowed: ${list(allowed)}.`);
  }
  const converted =
    source === target
      ? value
      : (((value * source.numerator) / source.denominator) * target.denominator) / target.numerator;
  if (!Number.isFinite(converted)) {
    throw new NumericalError(`Cannot convert ${value} ${from} into ${to}: not a finite number.`);
  }
  return converted;
}

/** Units of a dimension, base unit first, as they are written. */
export function unitsOf<D extends Dimension>(dimension: D): readonly UnitOf<D>[] {
  return Object.keys(factors[dimension]) as UnitOf<D>[];
}

/**
 * Which unit did a person mean?  Reads a unit in any case and spacing, with 2 and 3 for ² and ³ and the plural lbs; nothing else.
 *
 * @param text       for instance "kg/ha", "KG / HA", "plants/m2"
 * @param dimension  what the unit must measure
 * @returns          the unit as evencatch writes it
 * @throws           UnitError naming what was found and what is allowed
 */
export function parseUnit<D extends Dimension>(text: string, dimension: D): UnitOf<D> {
  const unit = findUnit(text, dimension);
  if (unit === null) {
    throw new UnitError(
      `${JSON.stringify(text)} is not a unit of ${dimension}; allowed: ${list([dimension])}.`,
    );
  }
  return unit;
}

/** As parseUnit; null instead of an error when the text names no such unit. */
export function findUnit<D extends Dimension>(text: string, dimension: D): UnitOf<D> | null {
  const wanted = plainSpelling(text);
  return unitsOf(dimension).find((candidate) => plainSpelling(candidate) === wanted) ?? null;
}

const dimensions = Object.keys(factors) as Dimension[];

function factorIn(dimension: Dimension | undefined, unit: string): Factor | undefined {
  if (dimension === undefined) return undefined;
  const table: Readonly<Record<string, Factor>> = factors[dimension];
  return Object.hasOwn(table, unit) ? table[unit] : undefined;
}

function plainSpelling(text: string): string {
  return text
    .toLowerCase()
    .replace(/\s/g, "")
    .replace(/²|\^2/g, "2")
    .replace(/³|\^3/g, "3")
    .replace(/^lbs(?=$|\/)/, "lb");
}

function list(allowed: readonly Dimension[]): string {
  return allowed.flatMap((dimension) => unitsOf<Dimension>(dimension)).join(", ");
}
