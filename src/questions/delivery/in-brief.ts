import type { FillEstimate } from "../../model/doubted-estimate.ts";
import { type Fill, newestFill } from "../../model/meters.ts";
import { estimateOf, type MeterModel } from "../../model/model.ts";
import { requireModelOptions } from "../../results/options.ts";
import { lackOfFit } from "../../statistics/lack-of-fit.ts";
import { deliveryCautions } from "./cautions.ts";
import { constantMassCheck } from "./constant-mass.ts";
import { fitBy, inputOf, typicalTurns } from "./parts.ts";
import type { Delivery, DeliveryOptions } from "./result.ts";

/** What of a fill's delivery a decision is made from, without what is drawn. */
export interface DeliveryInBrief
  extends Pick<
    Delivery,
    "bin" | "product" | "fill" | "takenAt" | "input" | "estimate" | "halfWidth" | "cautions"
  > {
  readonly nextCatch: Pick<Delivery["nextCatch"], "turns">;
}

/** The same answer as `delivery`, as far as a decision needs it. */
export function deliveryInBrief(
  meter: MeterModel,
  options: DeliveryOptions,
  fill: Fill = newestFill(meter),
): DeliveryInBrief {
  return gathered(meter, options, fill).brief;
}

/** What is known of a fill's delivery before anything is drawn of it. */
export function gathered(
  meter: MeterModel,
  options: DeliveryOptions,
  fill: Fill,
): {
  readonly brief: DeliveryInBrief;
  readonly estimated: FillEstimate;
  readonly checks: Pick<Delivery, "constantMass" | "lackOfFit">;
} {
  requireModelOptions(options);
  const { level, scaleDivisionKg } = options;
  const estimated = estimateOf(meter, fill, options);
  const checks = {
    constantMass: constantMassCheck(fill, meter.scatter, level),
    lackOfFit: lackOfFit(fitBy("proportional", estimated.fit)),
  };
  const cautions = deliveryCautions({
    constantMass: checks.constantMass,
    lackOfFit: checks.lackOfFit,
    fill,
    scatter: estimated.scatter,
    lent: meter.scatter,
    estimated,
    divisionKg: scaleDivisionKg,
    // Only the newest fill stands the test among the bins.
    constantMassAmongBins: fill === newestFill(meter) ? meter.constantMass : null,
    pairPValue:
      meter.screening.findings.find((one) => one.fill.fill === fill.fill)?.pairPValue ?? null,
    level,
  });
  const brief = {
    bin: fill.bin,
    product: fill.product,
    fill: fill.fill,
    takenAt: fill.takenAt,
    input: inputOf(meter, fill),
    estimate: estimated.estimate,
    halfWidth: estimated.halfWidth,
    nextCatch: { turns: typicalTurns(fill) },
    cautions,
  };
  return { brief, estimated, checks };
}
