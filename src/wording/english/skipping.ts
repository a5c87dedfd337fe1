import type { AssumedValue } from "../../model/rate-error.ts";
import type { Skipping } from "../../questions/skipping.ts";
import type { Interval } from "../../results/estimate.ts";
import type { Format } from "../format.ts";

export type SkippingWords = ReturnType<typeof englishSkipping>;

/** Everything said about leaving the drive alone. */
export function englishSkipping(format: Format) {
  const level = (result: Skipping) => format.percent(result.options.level, 0);
  const range = ({ lower, upper }: Interval) =>
    lower === null || upper === null
      ? null
      : `${format.signedPercent(lower)} to ${format.signedPercent(upper)}`;
  const leftAt = ({ options, setting }: Skipping) =>
    `${assumedWords(options.assumed)}, ${format.value(setting.nextKgPerTurn, "delivery")}`;
  const who = (result: Skipping) => `Bin ${result.bin} (${result.product})`;
  const atTolerance = ({ chances, options }: Skipping) =>
    chances.find(({ limit }) => limit === options.tolerance) ?? null;

  return {
    heading: "What skipping calibration risks",
    leftAt,
    sentence: (result: Skipping): string => {
      const { interval } = result.nextFill;
      const band = interval === null ? null : range(interval);
      const start = `${who(result)}, left at ${leftAt(result)}`;
      if (band === null)
        return `${start}: how far off the next fill would be cannot be told from these fills.`;
      const error = `${start}: the rate error of the next fill is expected within ${band} (${level(result)} band)`;
      const chance = atTolerance(result);
      if (chance === null || result.expected === null)
        return `${error}; a chance or a cost cannot be given yet.`;
      return `${error}. The chance of more than ${format.plusMinus(chance.limit)} is ${format.percent(chance.either)} (${format.percent(chance.upperBound)} at most, with 90 % confidence); on average the rate is off by ${format.percent(result.expected.absolute)}.`;
    },
    today: (result: Skipping): string | null => {
      const { today } = result;
      if (today === null) return null;
      const band = today.interval === null ? null : range(today.interval);
      const value = assumedWords(result.options.assumed);
      return `Had the drive been left at ${value} for fill ${result.input.newestFill}, the rate error would have been ${format.signedPercent(today.value)}${band === null ? "" : ` (${band})`}.`;
    },
    share: ({ shareOfFills }: Skipping): string | null => {
      const band = shareOfFills === null ? null : range(shareOfFills.interval);
      return shareOfFills === null || band === null
        ? null
        : `${format.percent(shareOfFills.content, 0)} of fills lie within ${band}, with ${format.percent(shareOfFills.interval.level, 0)} confidence.`;
    },
    between: ({ betweenCalibrations: risk }: Skipping): string | null => {
      if (risk === null) return null;
      const aim = `the chance of any of them being off by more than ${format.plusMinus(risk.tolerance)} within ${format.percent(risk.acceptedRisk, 0)}`;
      if (risk.mostFills === 0)
        return `Not even one fill can be skipped keeping ${aim}: calibrate every fill.`;
      const fills = (count: number) => `${count} ${count === 1 ? "fill" : "fills"}`;
      const most = risk.openEnded
        ? `${fills(risk.mostFills)} and more`
        : `up to ${fills(risk.mostFills)}`;
      const bound =
        risk.mostFillsByBound < risk.mostFills
          ? ` By the upper bound of the risk it is ${risk.mostFillsByBound === 0 ? "none" : fills(risk.mostFillsByBound)}.`
          : "";
      return `Between calibrations ${most} in a row can be skipped keeping ${aim}.${bound}`;
    },
    practice: ({ commonPractice: said }: Skipping): string => {
      const figure = `Common practice puts the error of skipping at ${format.percent(said.lower, 0)} to ${format.percent(said.upper, 0)}; no source was found for it`;
      switch (said.compared) {
        case "unknown":
          return `${figure}, and these fills cannot check it.`;
        case "smaller":
          return `${figure}. This meter's band ends at ${format.percent(said.farthest ?? 0)}: smaller.`;
        case "alike":
          return `${figure}. This meter's band ends at ${format.percent(said.farthest ?? 0)}: about as said.`;
        case "larger":
          return `${figure}. This meter's band reaches to ${format.percent(said.farthest ?? 0)}: larger.`;
      }
    },
    assumptions:
      "This takes the next fill for one more of the same kind: same product, no trend, nothing changed on the meter. Where fills close in time are alike, the first fill after a calibration is better than said here and later ones are worse.",
    chances: {
      caption: "Chance of a rate error at the next fill",
      limit: "Off by more than",
      heavy: "Too heavy",
      light: "Too light",
      either: "Either way",
      bound: "At most (90 %)",
    },
    risk: {
      caption: "Fills in a row without a catch",
      fills: "Fills",
      any: "Chance that any is off by more than the tolerance",
      bound: "At most (90 %)",
      expected: "Fills off, expected",
    },
    chart: {
      title: (result: Skipping) => `Rate error at the next fill when skipped, bin ${result.bin}`,
      description: (result: Skipping) =>
        `Density of the rate error when the drive is left at ${leftAt(result)}. Chance beyond ${result.chances
          .map(({ limit, either }) => `${format.plusMinus(limit)}: ${format.percent(either)}`)
          .join("; ")}.`,
      error: "Rate error (%; above zero: heavier than intended)",
      tolerance: (tolerance: number) => `tolerance ${format.plusMinus(tolerance)}`,
      today: "this fill, by its catches",
      intended: "as intended",
    },
    detail: "Chances in figures",
  };
}

function assumedWords(assumed: AssumedValue): string {
  switch (assumed.source) {
    case "book value":
      return "the book value";
    case "last fill":
      return "the previous fill's value";
    case "fill":
      return `the value of fill ${assumed.fill}`;
    case "average of fills":
      return "the mean of its fills";
  }
}
