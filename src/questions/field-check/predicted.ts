import { type FieldCheckSetup, namesFill } from "../../data/setup.ts";
import { turnsSetNow } from "../../model/drive.ts";
import { severalSeasons } from "../../model/meters.ts";
import { estimateOf, type MeterModel } from "../../model/model.ts";
import { type Derived, derived, exactly, timesDelivery } from "../../model/worked-out.ts";
import type { FieldCheckOptions, PredictedRate } from "./result.ts";

/**
 * The rate that the catches let expect: delivery × turns per hectare. The turns are those of the drive set for an assumed
 * delivery (intended rate ÷ assumed delivery), else as it stands now. Where the check names a fill that was caught, its
 * own delivery counts; else that of any fill of the meter, with the spread of fills in its interval.
 *
 * @returns null when nothing says how the drive was set
 */
export function predictedRate(
  check: FieldCheckSetup,
  meter: MeterModel,
  options: FieldCheckOptions,
): PredictedRate | null {
  const turns = turnsOf(check, options);
  if (turns === null) return null;
  const { delivery, deliveryOf } = deliveryFor(check, meter, options);
  return {
    rate: timesDelivery(turns.perHectare, delivery, "kg/ha", options.level, "rate"),
    basis: turns.basis,
    deliveryOf,
    delivery,
  };
}

function turnsOf(
  { intendedRateKgPerHectare: intended, assumedDeliveryKgPerTurn: assumed }: FieldCheckSetup,
  options: FieldCheckOptions,
): { readonly perHectare: Derived; readonly basis: PredictedRate["basis"] } | null {
  if (intended !== null && assumed !== null)
    return { perHectare: overWidth(intended / assumed, options), basis: "assumed delivery" };
  const now = turnsSetNow(options);
  if (now === null) return null;
  const { turnsPerHectare, from } = now;
  return from === "drive ratio"
    ? { perHectare: turnsPerHectare, basis: from }
    : { perHectare: overWidth(turnsPerHectare.value, options), basis: from };
}

/** Turns per hectare are counted over the width the drive believes in; the field has the width that was worked. */
function overWidth(turnsPerHectare: number, { workingWidthM }: FieldCheckOptions): Derived {
  if (workingWidthM === null) return exactly(turnsPerHectare);
  const believed = workingWidthM.value;
  return derived(([width = believed]) => (turnsPerHectare * believed) / width, [workingWidthM]);
}

function deliveryFor(
  check: FieldCheckSetup,
  meter: MeterModel,
  options: FieldCheckOptions,
): Pick<PredictedRate, "delivery" | "deliveryOf"> {
  const several = severalSeasons(meter.fills);
  const fill = meter.fills.find((one) => namesFill(check, one, several));
  if (fill === undefined) return { delivery: meter.across.nextFill, deliveryOf: "any fill" };
  return { delivery: estimateOf(meter, fill, options).estimate, deliveryOf: "this fill" };
}
