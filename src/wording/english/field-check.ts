import type { CheckedField, FieldCheck, PredictedRate } from "../../questions/field-check.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Format } from "../format.ts";

export type FieldCheckWords = ReturnType<typeof englishFieldCheck>;

/** Everything said about what the field used. */
export function englishFieldCheck(format: Format) {
  const level = ({ options }: FieldCheck) => format.percent(options.level, 0);
  const rate = ({ value, standardError }: Estimate<"kg/ha">) =>
    format.value(value, "rate", standardError);
  const interval = (estimate: Estimate<"kg/ha">) => format.estimateInterval(estimate, "rate");
  const named = (check: CheckedField, place: number) => {
    const when = check.date === null ? null : format.date(check.date);
    const fill = check.fill === null ? null : `fill ${check.fill}`;
    return [when, fill].filter((part) => part !== null).join(", ") || `check ${place + 1}`;
  };
  const against = (estimate: Estimate<"fraction"> | null, what: string) =>
    estimate === null ? null : `${format.signedPercent(estimate.value)} against ${what}`;

  return {
    heading: "Field checks",
    named,
    sentence: (result: FieldCheck): string => {
      const latest = result.checks.at(-1);
      const who = `Bin ${result.bin} (${result.product})`;
      if (latest === undefined) return `${who}: no field check.`;
      const range = interval(latest.rate);
      const compared = [
        against(latest.rateError, "the rate intended"),
        against(latest.bias, "what the catches let expect"),
      ].filter((part) => part !== null);
      return `${who}, ${named(latest, result.checks.length - 1)}: the field got ${rate(latest.rate)}${range === null ? "" : ` (${range})`}${compared.length === 0 ? "" : `, ${format.list(compared)}`}.`;
    },
    used: (check: CheckedField, place: number): string =>
      `${capital(named(check, place))}: ${format.value(check.usedKg, "mass")} on ${format.value(check.areaHectares, "area")}.`,
    predicted: (check: CheckedField): string | null => {
      const { predicted } = check;
      if (predicted === null) return null;
      const range = interval(predicted.rate);
      return `Expected from the catches: ${rate(predicted.rate)}${range === null ? "" : ` (${range})`}, ${basisWords(predicted)}.`;
    },
    agreement: (check: CheckedField): string | null => {
      const { agreement, withinPrediction, best } = check;
      if (agreement !== null) {
        const verdict = agreement.agrees ? "Field and catches agree" : "Field and catches disagree";
        const together =
          best === null ? "" : ` Best value of both together: ${rate(best)} (${interval(best)}).`;
        return `${verdict}: normalised error ${format.plain(agreement.normalisedError, 2)} (agreement is within ± 1).${together}`;
      }
      if (withinPrediction === null) return null;
      return `The rate found lies ${withinPrediction ? "within" : "outside"} the interval the catches give; whether the two agree cannot be judged while the field's own uncertainty is not known.`;
    },
    correction: (result: FieldCheck): string | null => {
      const { correction } = result;
      if (correction === null) return null;
      const { factor, checks } = correction;
      const range =
        factor.interval?.lower == null || factor.interval.upper === null
          ? "no interval with one check"
          : `${level(result)} interval ${format.percent(factor.interval.lower, 1)} to ${format.percent(factor.interval.upper, 1)}, Student's t on ${factor.df} df`;
      return `Field against catches over ${checks} ${checks === 1 ? "check" : "checks"}: ${format.percent(factor.value, 1)} of what the catches let expect (${range}). This is what the moving field does; it is no part of catch scatter, and more catches do not change it.`;
    },
    detail: "Field checks in figures",
    table: {
      caption: "Field checks in order",
      check: "Check",
      used: (unit: string) => `Used (${unit})`,
      area: (unit: string) => `Area (${unit})`,
      rate: (unit: string) => `Rate (${unit})`,
      intended: (unit: string) => `Intended (${unit})`,
      error: "Off the rate intended",
      predicted: (unit: string) => `Expected (${unit})`,
      bias: "Field against catches",
      normalisedError: "Normalised error",
      running: "Running correction",
      unknown: "not known",
    },
    chart: {
      title: (result: FieldCheck) => `Field checks, bin ${result.bin}`,
      description: ({ checks }: FieldCheck) =>
        `Rate found in the field beside the rate intended and the rate the catches let expect: ${checks
          .map((check, i) => `${named(check, i)}: ${rate(check.rate)}`)
          .join("; ")}.`,
      check: "Field check",
      rate: (unit: string) => `Rate (${unit})`,
      kinds: {
        field: "found in the field",
        predicted: "expected from the catches",
        intended: "intended",
      },
    },
  };
}

function basisWords({ basis, deliveryOf }: PredictedRate): string {
  const by = {
    "assumed delivery": "with the drive set for the delivery assumed then",
    "turns per hectare": "at the turns per area the drive is set to now",
    "drive ratio": "at the drive ratio set now",
  } as const;
  return `${by[basis]}, from ${deliveryOf === "this fill" ? "the catches of that fill" : "what any fill of this bin delivers"}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
