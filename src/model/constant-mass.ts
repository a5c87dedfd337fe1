import { max, min } from "simple-statistics";
import { type OffsetFit, testOffset } from "../statistics/constant-offset.ts";
import { holm } from "../statistics/multiplicity.ts";
import type { MeterScatter } from "./lent-scatter.ts";
import { type Fill, type Meter, newestFill } from "./meters.ts";
import { outsideOf } from "./screening/lending.ts";

/** A test that every bin's newest fill stands: what it says by itself, and among all bins of the log. */
export interface StandingTest {
  readonly pValue: number;
  /** Holm's, over the bins that stood it. */
  readonly adjustedPValue: number;
}

const fewestCatches = 4;
const smallestTurnsRatio = 2;

/**
 * Test of a mass that is the same in every catch, with the scatter that the fill's delivery rests on.
 *
 * @returns null when it cannot be told: fewer than 4 catches, or longest and shortest less than a factor 2 apart
 */
export function constantMassTest(fill: Fill, scatter: MeterScatter): OffsetFit | null {
  const turns = fill.catches.map((row) => row.turns);
  if (turns.length < fewestCatches) return null;
  if (max(turns) / min(turns) < smallestTurnsRatio) return null;
  const points = fill.catches.map((row) => ({ x: row.turns, y: row.netKg }));
  return testOffset(points, outsideOf(fill, scatter));
}

/** That test of the newest fill of every meter; null where it cannot be told. */
export function constantMassOverBins(
  meters: readonly { readonly meter: Meter; readonly scatter: MeterScatter }[],
): readonly (StandingTest | null)[] {
  const pValues = meters.map(
    ({ meter, scatter }) => constantMassTest(newestFill(meter), scatter)?.pValue ?? null,
  );
  const adjusted = [...holm(pValues.filter((pValue) => pValue !== null))];
  return pValues.map((pValue) =>
    pValue === null ? null : { pValue, adjustedPValue: adjusted.shift() ?? pValue },
  );
}
