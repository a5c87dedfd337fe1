import type { Delivery } from "../../questions/delivery.ts";
import type { VarianceLaw } from "../../statistics/through-origin.ts";
import type { Format } from "../format.ts";
import { catchWords, degrees } from "./counted.ts";

export type DeliveryWords = ReturnType<typeof englishDelivery>;

/** Everything said about the delivery of one fill. */
export function englishDelivery(format: Format) {
  const interval = (result: Delivery) => format.estimateInterval(result.estimate, "delivery");
  const value = (result: Delivery) =>
    format.value(result.estimate.value, "delivery", result.estimate.standardError);
  const plusMinus = ({ estimate }: Delivery) => {
    const upper = estimate.interval?.upper ?? null;
    return upper === null ? null : format.plusMinus((upper - estimate.value) / estimate.value);
  };
  const level = (result: Delivery) => format.percent(result.options.level, 0);

  const bandWords = (result: Delivery) =>
    interval(result) === null
      ? ""
      : `; the inner band is its ${level(result)} interval, the outer one where one more catch is expected`;

  return {
    heading: "Delivery per turn",
    plusMinus,
    value,
    interval,
    /** The one sentence a person at the machine takes away. */
    sentence: (result: Delivery): string => {
      const range = interval(result);
      const catches = catchWords(result.input.catches);
      if (result.disagree !== null)
        return `Bin ${result.bin} (${result.product}), fill ${result.fill}: ${value(result)} from ${catches} that disagree: one of them is wrong, so how far off this may be cannot be told. Catch again.`;
      if (range === null)
        return `Bin ${result.bin} (${result.product}), fill ${result.fill}: ${value(result)} from ${catches}; how far off that may be cannot be told from ${result.input.catches === 1 ? "one catch" : "these catches"}.`;
      return `Bin ${result.bin} (${result.product}), fill ${result.fill}: ${value(result)} from ${catches}; with ${level(result)} confidence this fill delivers ${range}, so the figure is good to ${plusMinus(result)}.`;
    },
    /** Both bands, where a catch stands out. */
    hull: ({ hull, estimate }: Delivery): string | null => {
      if (hull === null) return null;
      const which = `${hull.catches.length === 1 ? "catch" : "catches"} ${format.list(hull.catches.map(String))}`;
      const band = ({ interval: ends }: Delivery["estimate"]) =>
        ends === null ? "" : format.interval(ends, "delivery", estimate.standardError);
      return `With ${which}, which ${hull.catches.length === 1 ? "stands" : "stand"} out, this fill delivers ${band(hull.with)}; without, ${band(hull.without)}. The figure stays that of all catches, and ± reaches to the farther end of both.`;
    },
    intervalAbout: (result: Delivery) => `${level(result)} interval for this fill's delivery`,
    nextCatch: (result: Delivery): string | null => {
      const { turns, estimate } = result.nextCatch;
      const range = format.estimateInterval(estimate, "mass");
      return range === null
        ? null
        : `Another catch of ${format.plain(turns)} turns should weigh ${range} (${level(result)} of such catches would).`;
    },
    scatter: (result: Delivery): string => {
      const typical = result.scatterOfTypicalCatch;
      if (typical === null) return "Catch scatter is not known: one catch cannot show any.";
      const size = `Catch scatter: ${format.percent(typical.relative)} of a ${format.plain(typical.turns)}-turn catch`;
      return result.scatter.source === "pooled"
        ? `${size}, from ${result.scatter.fills} fills together (${degrees(result.scatter.df, format)}).`
        : `${size}, from this fill's ${catchWords(result.input.catches)} alone.`;
    },
    constantMass: (result: Delivery): string => {
      const check = result.constantMass;
      if (check === null)
        return "Whether the same mass is in every catch (a tare left in, a lost part-turn) cannot be told: that takes at least four catches, the longest with twice the turns of the shortest.";
      const range = format.estimateInterval(check.constant, "mass");
      const power =
        check.tareKg === null || check.powerForTare === null
          ? `A constant of ${format.value(check.detectableKg, "mass")} would have been seen with a chance of 80 %.`
          : `A bag of ${format.value(check.tareKg, "mass")} left in every catch would have been seen with a chance of ${format.percent(check.powerForTare, 0)}.`;
      return `Mass that is the same in every catch: ${format.value(check.constant.value, "mass", check.constant.standardError)} (${range ?? "no interval"}), ${format.pValue(check.pValue)}. ${power}`;
    },
    lackOfFit: ({ lackOfFit }: Delivery): string =>
      lackOfFit === null
        ? "Whether mass follows turns in a straight line cannot be tested: that takes two turn levels, one of them repeated."
        : `Straight line through zero against the means at ${lackOfFit.levels} turn levels: F = ${format.plain(lackOfFit.statistic)} on ${lackOfFit.dfLackOfFit} and ${lackOfFit.dfPureError} df, ${format.pValue(lackOfFit.pValue)}.`,
    laws: {
      proportional: "scatter in proportion to turns (ratio of sums)",
      constant: "constant scatter (ordinary least squares)",
      squared: "scatter in proportion to turns squared (mean of ratios)",
    } satisfies Record<VarianceLaw, string>,
    chart: {
      title: (result: Delivery) => `Net mass against turns, bin ${result.bin}, fill ${result.fill}`,
      description: (result: Delivery) =>
        `${catchWords(result.input.catches)}: net mass against meter turns, with the line through zero at ${value(result)}${bandWords(result)}.`,
      perTurnTitle: (result: Delivery) =>
        `What each catch delivered per turn, bin ${result.bin}, fill ${result.fill}`,
      perTurnDescription: (result: Delivery) =>
        `${catchWords(result.input.catches)}: net mass divided by turns, against turns, with the fill's delivery at ${value(result)}${bandWords(result)}.`,
      turns: "Meter turns",
      mass: (unit: string) => `Net mass (${unit})`,
      perTurn: (unit: string) => `Delivery per turn (${unit})`,
      catch: (point: Delivery["points"][number]) =>
        `Catch ${point.catch}: ${format.value(point.netKg, "mass")} in ${format.plain(point.turns)} turns, ${format.signedPercent(point.relativeResidual)}`,
    },
    table: {
      caption: (result: Delivery) => `Catches of fill ${result.fill}`,
      row: "Row",
      catch: "Catch",
      turns: "Turns",
      net: (unit: string) => `Net (${unit})`,
      fitted: (unit: string) => `Fitted (${unit})`,
      residual: "Off by",
      leverage: "Leverage",
    },
    weightingsCaption:
      "The same catches under other weightings (own scatter, before the scale's division)",
    weighting: "Weighting",
    unknown: "not known",
    standardError: "Standard error",
    robustError: "HC3 standard error",
    detail: "How this was computed",
    basis: (result: Delivery): string =>
      `Sum of net mass over sum of turns. The standard error rests on ${englishStandardError[result.standardErrorFrom]}; reading the scale is ${result.variance.division === null ? "left out, because no division is given" : "added to it"}. ${result.estimate.df === null ? "" : `Student's t on ${degrees(result.estimate.df, format)}.`}`.trim(),
  };
}

const englishStandardError: Record<Delivery["standardErrorFrom"], string> = {
  model: "this fill's own scatter, taken in proportion to turns",
  robust:
    "this fill's own scatter, by the larger standard error that does not trust proportion (HC3)",
  "pooled scatter": "the catch scatter of all fills of this bin and product",
  none: "nothing: one catch stands alone",
};
