import type { PlainRow } from "../../data/write-csv.ts";
import type { Skipping } from "../../questions/skipping.ts";
import type { Analysis } from "../analyse.ts";
import { endCells, estimateCells, rowsOfEach } from "./cells.ts";

function ofEach(
  analysis: Analysis,
  rowsOf: (skipping: Skipping) => readonly PlainRow[],
): readonly PlainRow[] {
  return rowsOfEach(analysis, ({ skipping }) => skipping, rowsOf);
}

/** What leaving the drive alone risks: one row a bin and product, its figure the rate error of the next fill. */
export function skippingTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, (skipping) => {
    const { input, setting, nextFill, expected, lawful, shareOfFills } = skipping;
    const between = skipping.betweenCalibrations;
    return [
      {
        fills: input.fills,
        left_at_kg_per_turn: setting.nextKgPerTurn,
        ...estimateCells(nextFill),
        expected_heavy: expected?.heavy ?? null,
        expected_light: expected?.light ?? null,
        expected_absolute: expected?.absolute ?? null,
        expected_absolute_bound: expected?.absoluteUpperBound ?? null,
        least_chance: skipping.leastChance,
        tolerance: between?.tolerance ?? null,
        accepted_risk: between?.acceptedRisk ?? null,
        most_fills: between?.mostFills ?? null,
        most_fills_by_bound: between?.mostFillsByBound ?? null,
        lawful_lowest_kg_ha: lawful?.lowestKgPerHa ?? null,
        lawful_highest_kg_ha: lawful?.highestKgPerHa ?? null,
        chance_unlawful: lawful?.either?.chance ?? null,
        chance_unlawful_bound: lawful?.either?.upperBound ?? null,
        share_of_fills: shareOfFills?.content ?? null,
        ...endCells("share", shareOfFills?.interval ?? null),
      },
    ];
  });
}

/** Chances of a rate error beyond a limit at the next fill: one row a limit. */
export function skippingChanceTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, ({ chances }) =>
    chances.map(({ limit, heavy, light, either, upperBound }) => ({
      limit,
      chance_heavy: heavy,
      chance_light: light,
      chance_either: either,
      chance_bound: upperBound,
    })),
  );
}

/** What several fills in a row without a catch risk: one row a number of fills. */
export function skippingRunTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, ({ betweenCalibrations }) =>
    (betweenCalibrations?.points ?? []).map(({ fills, chanceAny, upperBound, expectedOff }) => ({
      fills_in_a_row: fills,
      chance_any: chanceAny,
      chance_bound: upperBound,
      fills_expected_off: expectedOff,
    })),
  );
}
