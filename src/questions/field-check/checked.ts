import type { FieldCheckSetup } from "../../data/setup.ts";
import type { MeterModel } from "../../model/model.ts";
import { asRateError } from "../../model/rate-error.ts";
import { derived, derivedEstimate, type WorkedOut } from "../../model/worked-out.ts";
import { normalUpperTail } from "../../numeric/distributions/normal.ts";
import { studentTTwoSided } from "../../numeric/distributions/student-t.ts";
import type { Estimate } from "../../results/estimate.ts";
import { inverseVarianceMean, normalisedError } from "../../statistics/agreement.ts";
import { areaTaken } from "./area-taken.ts";
import { predictedRate } from "./predicted.ts";
import type { Agreement, CheckedField, FieldCheckOptions } from "./result.ts";

/** One field check, worked out. */
export function checkedField(
  check: FieldCheckSetup,
  meter: MeterModel,
  options: FieldCheckOptions,
): CheckedField {
  const { filledKg, leftKg, areaHectares, intendedRateKgPerHectare: intended } = check;
  const withoutUncertainty = uncertaintiesMissing(check);
  const taken = areaTaken(check);
  const factor = taken?.factor ?? 1;
  const rate = fieldRate(check, factor, withoutUncertainty.length > 0, options.level);
  const predicted = predictedRate(check, meter, options);
  const bias = predicted === null ? null : biasOf(rate, predicted.rate, options.level);
  const together = options.checksInLog ?? options.checks.length;
  const agreement = predicted === null ? null : agreementOf(rate, predicted.rate, bias, together);
  return {
    date: check.date,
    fill: check.fill,
    usedKg: filledKg.value - leftKg.value,
    areaHectares: areaHectares.value * factor,
    taken,
    rate,
    withoutUncertainty,
    intendedKgPerHa: intended,
    rateError: intended === null ? null : asRateError(rate, intended, "rate error in the field"),
    predicted,
    bias,
    withinPrediction: predicted === null ? null : isWithin(rate.value, predicted.rate),
    agreement,
    best:
      predicted !== null && agreement?.agrees ? bestOf(rate, predicted.rate, options.level) : null,
    fieldDeliveryKgPerTurn:
      predicted === null ? null : (predicted.delivery.value * rate.value) / predicted.rate.value,
  };
}

function uncertaintiesMissing({
  filledKg,
  leftKg,
  areaHectares,
}: FieldCheckSetup): CheckedField["withoutUncertainty"] {
  const named = { filled: filledKg, left: leftKg, area: areaHectares } as const;
  return (["filled", "left", "area"] as const).filter(
    (name) => named[name].standardUncertainty === null,
  );
}

/** (filled − left)/(area · factor). An uncertainty that is not given is not zero, so then there is none at all. */
function fieldRate(
  { filledKg, leftKg, areaHectares }: FieldCheckSetup,
  factor: number,
  unknown: boolean,
  level: number,
): WorkedOut<"kg/ha"> {
  const rate = derived(
    ([filled = 0, left = 0, area = 1]) => (filled - left) / (area * factor),
    [filledKg, leftKg, areaHectares],
  );
  const estimate = derivedEstimate(rate, "kg/ha", level, "rate");
  return unknown
    ? { ...estimate, standardError: null, df: null, interval: null, method: "none" }
    : estimate;
}

/** Field ÷ predicted − 1, first order; the predicted rate's degrees of freedom are kept, which errs on the wide side. */
function biasOf(
  field: WorkedOut<"kg/ha">,
  predicted: WorkedOut<"kg/ha">,
  level: number,
): Estimate<"fraction"> {
  const value = field.value / predicted.value - 1;
  if (field.standardError === null || predicted.standardError === null)
    return { value, unit: "fraction", standardError: null, df: null, interval: null };
  const relative = Math.hypot(
    field.standardError / field.value,
    predicted.standardError / predicted.value,
  );
  const standardError = (1 + value) * relative;
  const half = halfWidthFactor(predicted) * standardError;
  return {
    value,
    unit: "fraction",
    standardError,
    df: predicted.df,
    interval: { lower: value - half, upper: value + half, level, about: "rate error in the field" },
  };
}

/** Half-width of an interval in standard errors. */
function halfWidthFactor({ value, standardError, interval }: WorkedOut): number {
  return ((interval?.upper ?? value) - value) / (standardError ?? 1);
}

function isWithin(value: number, { interval }: WorkedOut): boolean | null {
  if (interval?.lower == null || interval.upper === null) return null;
  return value >= interval.lower && value <= interval.upper;
}

function agreementOf(
  field: WorkedOut,
  predicted: WorkedOut,
  bias: Estimate<"fraction"> | null,
  checksInLog: number,
): Agreement | null {
  const [ofField, ofPredicted] = [expanded(field), expanded(predicted)];
  if (ofField === null || ofPredicted === null) return null;
  const error = normalisedError(
    { value: field.value, expanded: ofField },
    { value: predicted.value, expanded: ofPredicted },
  );
  return {
    normalisedError: error,
    agrees: Math.abs(error) <= 1,
    pValue: Math.min(1, checksInLog * chanceOf(bias)),
    expandedField: ofField,
    expandedPredicted: ofPredicted,
  };
}

/** Chance of a bias at least this large where there is none; two-sided. */
function chanceOf(bias: Estimate<"fraction"> | null): number {
  if (bias === null || bias.standardError === null) return 1;
  const statistic = bias.value / bias.standardError;
  return bias.df === null
    ? 2 * normalUpperTail(Math.abs(statistic))
    : studentTTwoSided(statistic, bias.df);
}

function expanded({ value, interval }: WorkedOut): number | null {
  return interval?.upper == null ? null : interval.upper - value;
}

function bestOf(
  field: WorkedOut<"kg/ha">,
  predicted: WorkedOut<"kg/ha">,
  level: number,
): WorkedOut<"kg/ha"> | null {
  if (field.standardError === null || predicted.standardError === null) return null;
  const best = inverseVarianceMean([
    { value: field.value, standardUncertainty: field.standardError },
    { value: predicted.value, standardUncertainty: predicted.standardError },
  ]);
  return derivedEstimate(best, "kg/ha", level, "rate");
}
