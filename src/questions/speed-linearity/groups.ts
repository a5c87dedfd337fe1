import { sampleCorrelation, sum } from "simple-statistics";
import type { Catch } from "../../data/types.ts";
import type { Fill, Meter } from "../../model/meters.ts";
import { noScatter } from "../../numeric/rounding-dust.ts";
import type { SlopeGroup } from "../../statistics/pooled-slope.ts";
import { mean, weightedMean } from "../../statistics/summary.ts";

/** A catch whose meter speed is known. */
export interface SpeedCatch {
  readonly row: Catch;
  readonly fill: Fill;
  readonly turnsPerMin: number;
}

/** One fill's catches with a known meter speed. */
export interface SpeedGroup extends SlopeGroup {
  readonly catches: readonly SpeedCatch[];
}

/**
 * Catches with a meter speed, by fill: delivery relative to the fill's own against meter speed, weights turns, because
 * catch scatter of a delivery goes with 1/turns.
 */
export function speedGroups(meter: Meter): readonly SpeedGroup[] {
  return meter.fills
    .map((fill) =>
      fill.catches.flatMap((row) =>
        row.meterRpm === null ? [] : [{ row, fill, turnsPerMin: row.meterRpm }],
      ),
    )
    .filter((catches) => catches.length > 0)
    .map((catches) => ({
      catches,
      x: catches.map(({ turnsPerMin }) => turnsPerMin),
      y: catches.map(({ row, fill }) => row.netKg / row.turns / fill.delivery),
      weights: catches.map(({ row }) => row.turns),
    }));
}

/** Mean meter speed weighted by turns. */
export function referenceSpeed(groups: readonly SpeedGroup[]): number {
  return weightedMean(
    groups.flatMap(({ x }) => x),
    groups.flatMap(({ weights }) => weights),
  );
}

/**
 * How far meter speed and turns go together within fills: where they do, a constant mass in every catch looks like an
 * effect of speed. Correlation of deviations from the fill's means; null when either never varies.
 */
export function speedAgainstTurns(groups: readonly SpeedGroup[]): number | null {
  const [speeds, turns] = [groups.map(({ x }) => x), groups.map(({ weights }) => weights)];
  return varyWithin(speeds) && varyWithin(turns)
    ? sampleCorrelation(speeds.flatMap(deviations), turns.flatMap(deviations))
    : null;
}

function varyWithin(groups: readonly (readonly number[])[]): boolean {
  const squares = sum(groups.flatMap(deviations).map((deviation) => deviation ** 2));
  return !noScatter(squares, groups.flat());
}

function deviations(values: readonly number[]): number[] {
  const middle = mean(values);
  return values.map((value) => value - middle);
}
