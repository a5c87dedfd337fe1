import type { Catch } from "../../data/types.ts";
import { estimateFill } from "../../model/fill-estimate.ts";
import { type Fill, withCatches } from "../../model/meters.ts";
import { estimateOf, type MeterModel, type ModelOptions } from "../../model/model.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Influence, Outliers } from "./result.ts";

/** Delivery of a fill as the model has it. */
export function deliveryNow(
  meter: MeterModel,
  fill: Fill,
  options: ModelOptions,
): Estimate<"kg/turn"> {
  return estimateOf(meter, fill, options).estimate;
}

/** Delivery of a fill had it these catches only; other fills lend it what they do. */
export function deliveryWith(
  meter: MeterModel,
  fill: Fill,
  catches: readonly Catch[],
  options: ModelOptions,
): Estimate<"kg/turn"> {
  return estimateFill(withCatches(fill, catches), meter.scatter, options).estimate;
}

/** What leaving some catches out would do; null when none would remain. */
export function influenceOf(
  meter: MeterModel,
  fill: Fill,
  gone: readonly Catch[],
  options: ModelOptions,
): Influence | null {
  return influenceOn(deliveryNow(meter, fill, options), meter, fill, gone, options);
}

function influenceOn(
  now: Estimate<"kg/turn">,
  meter: MeterModel,
  fill: Fill,
  gone: readonly Catch[],
  options: ModelOptions,
): Influence | null {
  const stay = fill.catches.filter((row) => !gone.includes(row));
  if (stay.length === 0) return null;
  const without = deliveryWith(meter, fill, stay, options);
  return { now, without, relativeChange: without.value / now.value - 1 };
}

/** Each is a fit of its own, and nobody reads a list of more. */
const mostTold = 200;

/** Catches of a fill in order; of too many, those without which its ratio of sums changes most. */
function thoseThatChangeMost({ catches, totals, delivery }: Fill): readonly Catch[] {
  if (catches.length <= mostTold) return catches;
  const changeWithout = ({ turns, netKg }: Catch) =>
    Math.abs((totals.massKg - netKg) / (totals.turns - turns) - delivery);
  const most = new Set(
    catches.toSorted((a, b) => changeWithout(b) - changeWithout(a)).slice(0, mostTold),
  );
  return catches.filter((row) => most.has(row));
}

/** What each catch of a fill does to its delivery; empty for a single catch. */
export function influenceOfEach(
  meter: MeterModel,
  fill: Fill,
  options: ModelOptions,
): Outliers["influence"] {
  const now = deliveryNow(meter, fill, options);
  return thoseThatChangeMost(fill).flatMap((row) => {
    const influence = influenceOn(now, meter, fill, [row], options);
    return influence === null ? [] : [{ catch: row.catch, ...influence }];
  });
}
