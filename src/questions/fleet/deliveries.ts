import { sum } from "simple-statistics";
import { at } from "../../errors/at.ts";
import { stretchInForce } from "../../model/history.ts";
import { type Fill, newestFill } from "../../model/meters.ts";
import { estimateOf, type MeterModel, type ModelOptions } from "../../model/model.ts";
import { groupBy } from "../../numeric/group-by.ts";
import type { Estimate } from "../../results/estimate.ts";
import { type DeletedGroup, deletedGroups, fewestOthers } from "../../statistics/deleted-groups.ts";
import type { Group } from "../../statistics/random-effects.ts";
import { weightedMean } from "../../statistics/summary.ts";

/** Fewest meters with one product: each against the others, which must tell how far meters lie apart. */
export const metersForLevel = fewestOthers + 1;

/** A meter's delivery against the level of the others, before it is judged together with all. */
export interface Leveled extends DeletedGroup {
  readonly level: number;
  readonly ratio: Estimate<"ratio">;
}

/**
 * Every meter against its product's level: logarithms of deliveries, the level by random effects of the other meters with the
 * product, turns being the information of a fill and the fills of one level the scatter within a meter.
 *
 * @returns one a meter, null below `metersForLevel` meters with its product
 */
export function leveledDeliveries(
  meters: readonly MeterModel[],
  options: ModelOptions,
): ReadonlyMap<MeterModel, Leveled> {
  const usable = meters.filter(({ fills, across }) =>
    [across.mean.value, ...fills.map(({ delivery }) => delivery)].every((one) => one > 0),
  );
  const ofProducts = [...groupBy(usable, ({ product }) => product).values()];
  return new Map(
    ofProducts.flatMap((same) => {
      const found = deletedGroups(same.map(groupOf), same.map(ownVariance));
      return same.flatMap((meter, i) => {
        const one = at(found, i);
        return one === null ? [] : [[meter, leveled(meter, one, options)] as const];
      });
    }),
  );
}

function leveled(meter: MeterModel, found: DeletedGroup, options: ModelOptions): Leveled {
  const level = Math.exp(found.center);
  return { ...found, level, ratio: relativeTo(level, estimateFor(meter, options)) };
}

/** What the chapter of a meter says of its level; of a lone fill nothing is said of a mean over fills. */
function estimateFor(meter: MeterModel, options: ModelOptions): Estimate<"kg/turn"> {
  const { fills, mean } = meter.across;
  return fills > 1 ? mean : estimateOf(meter, newestFill(meter), options).estimate;
}

function relativeTo(level: number, estimate: Estimate<"kg/turn">): Estimate<"ratio"> {
  const { value, standardError, df, interval } = estimate;
  const ratio = (one: number | null) => (one === null ? null : one / level);
  return {
    value: value / level,
    unit: "ratio",
    standardError: ratio(standardError),
    df,
    interval:
      interval === null
        ? null
        : { ...interval, lower: ratio(interval.lower), upper: ratio(interval.upper) },
  };
}

/** Turns of the fills of the level in force. */
export function turnsInForce({ history }: MeterModel): number {
  return sum(stretchInForce(history).map(({ totals }) => totals.turns));
}

/** On the scale of logarithms, with all levels of the meter telling how much its fills differ. */
export function groupOf(meter: MeterModel): Group {
  const stretches = meter.history.stretches.map(({ fills }) => fills);
  return {
    estimate: Math.log(meter.across.mean.value),
    information: turnsInForce(meter),
    sumOfSquares: sum(stretches.map(squaresPerTurn)),
    df: sum(stretches.map(({ length }) => length - 1)),
  };
}

function squaresPerTurn(fills: readonly Fill[]): number {
  const turns = fills.map(({ totals }) => totals.turns);
  const logs = fills.map(({ delivery }) => Math.log(delivery));
  const center = weightedMean(logs, turns);
  return sum(logs.map((log, i) => at(turns, i) * (log - center) ** 2));
}

/** Of the logarithm of its level, with what other meters lend. */
function ownVariance({ across }: MeterModel): number | null {
  const { relative } = across.spread;
  return relative === null ? null : relative ** 2 / across.fills;
}
