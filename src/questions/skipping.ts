import { newestFill } from "../model/meters.ts";
import { estimateOf, type MeterModel, type ModelOptions } from "../model/model.ts";
import { asRateError, nextFillError, settingOf } from "../model/rate-error.ts";
import { canPriceSkip } from "../model/skip-chance.ts";
import type { Estimate } from "../results/estimate.ts";
import { requireModelOptions } from "../results/options.ts";
import { betweenCalibrations } from "./skipping/between-calibrations.ts";
import { skippingCautions } from "./skipping/cautions.ts";
import {
  chancesOfError,
  commonPracticeOf,
  densityOf,
  expectedErrorOf,
  shareOfFills,
} from "./skipping/distribution.ts";
import { lawfulWhenSkipped } from "./skipping/lawful.ts";
import type { Skipping, SkippingOptions } from "./skipping/result.ts";

export type {
  BetweenCalibrations,
  BoundedChance,
  ChanceOfError,
  CommonPractice,
  DensityPoint,
  ExpectedError,
  LawfulAim,
  LawfulWhenSkipped,
  RiskPoint,
  ShareOfFills,
  Skipping,
  SkippingOptions,
} from "./skipping/result.ts";

/**
 * What rate error is accepted by not calibrating: today, and at the next fill?
 *
 * The drive is left at a value A. Today's error is b/A − 1, b being the newest fill's delivery by its own catches. The
 * next fill's delivery is distributed as b̄ + s_b·√(1 + 1/k)·t(ν), b̄ of the k fills of the level in force and s_b within
 * all stretches of one level, so its rate error is μ + σ·t(ν) with μ = (b̄ − A)/A, σ = s_b·√(1 + 1/k)/A. Chances are those
 * of that distribution, which counts the catch scatter inside s_b as spread of fills. The expected error leaves it out: it
 * is the mean over all that the component s_b² − s_c², not below zero, and the uncertainty of b̄ may be; where s_c² is more
 * than half of s_b², the figure by s_b stands beside it. Each comes with the bound that independent fills leave possible
 * with 90 % confidence, b̄ and spread both uncertain: of a chance by the noncentral t, 95 % for each side; of the mean
 * absolute error by generalized confidence limits.
 *
 * After three to five fills no chance below 5 % is stated, and no fill is skipped on a tolerance. Rates that label or law
 * sets are rate errors against the target, and the chances of breaking them are told likewise.
 *
 * @param meter    one bin × product of a fitted model; with a single fill the spread borrowed from other bins speaks
 * @param options  as resolved; limits and tolerance are fractions
 * @returns        fractions, signed: above zero means heavier than intended
 * Null when       a spread, own or borrowed, on fewer than 2 degrees of freedom (three fills of one level have 2): chances,
 *                 expectations and what follows from them (caution skip-not-priced); fills that agree exactly
 *                 (fills-agree-exactly)
 * @throws         OptionError when the assumed value does not exist
 * Assumes         the next fill is one more of the same kind: no trend, near-normal fills. With the drive at the mean of
 *                 fills, and only there, the t chance is cautious: over meters of unlike spread it is stated larger than
 *                 it happens. Off centre it can be too small. The bound allows for both, unless fills differ by no
 *                 more than their catch scatter and the drive is off by more than the limit (reports/skipping-study.md)
 * Source          Hahn & Meeker, Statistical Intervals, ch. 4; Howe, JASA 64 (1969) 610; Weerahandi, JASA 88 (1993) 899
 */
export function skipping(meter: MeterModel, options: SkippingOptions): Skipping {
  requireModelOptions(options);
  const { across } = meter;
  const setting = settingOf(options.assumed, meter);
  const nextFill = asRateError(
    across.nextFill,
    setting.nextKgPerTurn,
    "rate error at the next fill",
  );
  const error = nextFillError(across, setting.nextKgPerTurn);
  const priced = error !== null && canPriceSkip(error) ? error : null;
  const distribution = priced?.law ?? null;
  const limits = [...new Set([...options.limits, options.tolerance])].sort((a, b) => a - b);
  return {
    kind: "skipping",
    bin: meter.bin,
    product: meter.product,
    options,
    input: { fills: across.fills, catches: across.catches, newestFill: newestFill(meter).fill },
    setting,
    today: todaysError(meter, options, setting.todayKgPerTurn),
    nextFill,
    distribution,
    chances: priced === null ? [] : chancesOfError(priced, limits),
    leastChance: priced?.leastChance ?? null,
    lawful: options.lawful === null ? null : lawfulWhenSkipped(options.lawful, priced),
    expected: priced === null ? null : expectedErrorOf(priced),
    shareOfFills: distribution === null ? null : shareOfFills(across, setting, options),
    betweenCalibrations: priced === null ? null : betweenCalibrations(priced, options),
    commonPractice: commonPracticeOf(nextFill, priced),
    density: distribution === null ? [] : densityOf(distribution, limits),
    cautions: skippingCautions(meter, { error, priced, setting, assumed: options.assumed }),
  };
}

function todaysError(
  meter: MeterModel,
  options: ModelOptions,
  setTo: number | null,
): Estimate<"fraction"> | null {
  if (setTo === null) return null;
  const { estimate } = estimateOf(meter, newestFill(meter), options);
  return asRateError(estimate, setTo, "rate error today");
}
