import { doubtedEstimate, type FillEstimate } from "./doubted-estimate.ts";
import type { EstimateOptions } from "./fill-estimate.ts";
import type { MeterScatter } from "./lent-scatter.ts";
import type { Fill } from "./meters.ts";
import type { FillFinding } from "./screening/finding.ts";

/** What an estimate of a fill was made from, beside it. */
interface Estimated {
  readonly finding: FillFinding | null;
  readonly options: EstimateOptions;
  readonly estimate: FillEstimate;
}

/** By the model they belong to, so that they are forgotten with it: the same fills may be looked at in many. */
const estimated = new WeakMap<MeterScatter, WeakMap<Fill, readonly Estimated[]>>();

/** `doubtedEstimate`, made once: nearly every question begins with the same estimate of the same fill. */
export function estimateOnce(
  fill: Fill,
  finding: FillFinding | null,
  scatter: MeterScatter,
  options: EstimateOptions,
): FillEstimate {
  const ofModel = estimated.get(scatter) ?? new WeakMap<Fill, readonly Estimated[]>();
  estimated.set(scatter, ofModel);
  const before = ofModel.get(fill) ?? [];
  const same = before.find((one) => one.finding === finding && isAlike(one.options, options));
  if (same !== undefined) return same.estimate;
  const estimate = doubtedEstimate(fill, finding, scatter, options);
  ofModel.set(fill, [...before, { finding, options, estimate }]);
  return estimate;
}

function isAlike(one: EstimateOptions, other: EstimateOptions): boolean {
  return (
    one.level === other.level &&
    one.scaleDivisionKg === other.scaleDivisionKg &&
    one.varianceLaw === other.varianceLaw
  );
}
