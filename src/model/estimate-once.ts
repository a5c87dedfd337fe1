import { doubtedEstimate, type FillEstimate } from "./doubted-estimate.ts";
import type { EstimateOptions } from "./fill-estimate.ts";
import type { MeterScatter } from "./lent-scatter.ts";
import type { Fill } from "./meters.ts";
import type { FillFinding } from "./screening/finding.ts";

/** What an estimate was made from, beside it. */
interface Estimated {
  readonly scatter: MeterScatter;
  readonly finding: FillFinding | null;
  readonly options: EstimateOptions;
  readonly estimate: FillEstimate;
}

const estimated = new WeakMap<Fill, readonly Estimated[]>();

/** `doubtedEstimate`, made once: nearly every question begins with the same estimate of the same fill. */
export function estimateOnce(
  fill: Fill,
  finding: FillFinding | null,
  scatter: MeterScatter,
  options: EstimateOptions,
): FillEstimate {
  const before = estimated.get(fill) ?? [];
  const same = before.find(
    (one) => one.scatter === scatter && one.finding === finding && isAlike(one.options, options),
  );
  if (same !== undefined) return same.estimate;
  const estimate = doubtedEstimate(fill, finding, scatter, options);
  estimated.set(fill, [...before, { scatter, finding, options, estimate }]);
  return estimate;
}

function isAlike(one: EstimateOptions, other: EstimateOptions): boolean {
  return (
    one.level === other.level &&
    one.scaleDivisionKg === other.scaleDivisionKg &&
    one.varianceLaw === other.varianceLaw
  );
}
