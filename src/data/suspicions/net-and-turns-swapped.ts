import { caution } from "../../results/caution.ts";
import { convert } from "../../units/convert.ts";
import type { Catch, MassUnit } from "../types.ts";
import type { Suspicion } from "./suspect.ts";

/** Fewer rows may look like anything. */
const fewest = 3;
/** Turns are counted to a whole number that somebody planned: 15, 20, 40. */
const counted = 5;
/** A plan has few levels of turns; a scale shows another weight nearly every time. */
const mostLevels = 3;
/** Nobody turns a meter so often for one catch; a scale in grams shows as much every time. */
const mostTurns = 400;

/** Masses that look counted beside turns that look weighed: the two columns are swapped. */
export const netAndTurnsSwapped: Suspicion = ({ meters, massUnit }) =>
  meters.flatMap(({ catches, where }) => {
    const netOf = ({ netKg }: Catch) => inFileUnit(netKg, massUnit);
    const swapped =
      catches.length >= fewest &&
      catches.every((row) => Number.isInteger(netOf(row) / counted)) &&
      new Set(catches.map(netOf)).size <= mostLevels &&
      looksWeighed(catches);
    if (!swapped) return [];
    const { turns, netKg } = catches.reduce(earlier);
    return caution("net-and-turns-swapped", where, {
      catches: catches.length,
      turns,
      net: inFileUnit(netKg, massUnit),
      unit: massUnit,
    });
  });

/** By number, so that the same catch is the example whatever the order of the rows. */
function earlier(one: Catch, other: Catch): Catch {
  return (other.fill - one.fill || other.catch - one.catch) < 0 ? other : one;
}

function looksWeighed(catches: readonly Catch[]): boolean {
  const fractions = catches.filter(({ turns }) => !Number.isInteger(turns));
  const differing = new Set(catches.map(({ turns }) => turns)).size;
  return (
    2 * differing > catches.length &&
    (2 * fractions.length > catches.length || catches.every(({ turns }) => turns >= mostTurns))
  );
}

/** As it stood in the file: converting there and back leaves dust in the last digit. */
function inFileUnit(kg: number, unit: MassUnit): number {
  return Number(convert(kg, "kg", unit).toPrecision(12));
}
