import type {
  DeliveryRegression,
  DensityExplanation,
  ExplainingVariables,
  Variable,
  WithinFillEffect,
} from "../../questions/explaining-variables/result.ts";
import type { Estimate } from "../../results/estimate.ts";
import { explainingUnits } from "../explaining-units.ts";
import type { Format } from "../format.ts";
import { fillWords } from "./counted.ts";

export type ExplainingVariablesWords = ReturnType<typeof englishExplainingVariables>;

/** Everything said about what goes with the delivery per turn. */
export function englishExplainingVariables(format: Format) {
  const level = (result: ExplainingVariables) => format.percent(result.options.level, 0);
  const figures = explainingUnits(format);
  const range = ({ interval }: Estimate, words: (value: number) => string): string | null =>
    interval === null || interval.lower === null || interval.upper === null
      ? null
      : `${words(interval.lower)} to ${words(interval.upper)}`;
  const unitOf = (name: string, variables: readonly Variable[]) =>
    figures.unit(name, variables)?.replace("turns", "turn") ?? "unit";

  return {
    heading: "What explains the differences",
    /** A recorded variable as it is called on paper. */
    variable: (name: string): string => name,
    unknown: "not known",
    sentence: ({ density }: ExplainingVariables): string => {
      if (density === null)
        return "No bulk density is recorded, so whether it explains how products differ cannot be told.";
      return `${densitySentence(density)}${shareSentence(density)}`;
    },
    volumes: ({ density }: ExplainingVariables): string | null => {
      const differing = density?.contrasts.filter(({ differenceFound }) => differenceFound) ?? [];
      return differing.length === 0
        ? null
        : `Volume per turn differs: ${format.list(
            differing.map(
              ({ first, second, ratio, pValue }) =>
                `${first} ${format.percent(Math.abs(ratio.value - 1), 1)} ${ratio.value < 1 ? "less" : "more"} than ${second}${pValue === null ? "" : ` (${format.pValue(pValue)})`}`,
            ),
          )}.`;
    },
    afterDensity: ({ density, options }: ExplainingVariables): string | null => {
      const test = density?.productAfterDensity ?? null;
      return test === null
        ? null
        : `With bulk density in a straight line first, products ${test.pValue < 1 - options.level ? "still differ" : "are not found to differ"}: F = ${format.plain(test.statistic)} on ${test.df1} and ${test.df2} degrees of freedom, ${format.pValue(test.pValue)}.`;
    },
    withinFill: (effect: WithinFillEffect, result: ExplainingVariables): string => {
      const { variable, fills, perUnit, pValue } = effect;
      const change = (value: number) =>
        format.signedPercent(figures.relative(value, variable, result.variables), 3);
      const limits = range(perUnit, change);
      const proof = [limits, pValue === null ? null : format.pValue(pValue)]
        .filter((part) => part !== null)
        .join(", ");
      return `Within a fill, delivery changes by ${change(perUnit.value)} for one ${unitOf(variable, result.variables)} more of ${variable}${proof === "" ? "" : ` (${proof})`}; one slope from each of ${fillWords(fills)}.`;
    },
    prediction: (result: ExplainingVariables): string | null => {
      const { prediction } = result;
      if (prediction === null) return null;
      const { densityKgPerM3, proportional, products, line } = prediction;
      const density = format.value(densityKgPerM3, "density");
      const value = format.value(proportional.value, "delivery", proportional.standardError);
      const limits = format.estimateInterval(proportional, "delivery");
      const start = `A product of ${density} not tried yet should deliver about ${value}, if the meter gives it the volume it gives the ${products} tried`;
      const band =
        limits === null
          ? "; how far off that may be cannot be told from one product."
          : `; ${level(result)} prediction interval ${limits}.`;
      const straight =
        line === null
          ? ""
          : ` A straight line through the products' means says ${format.value(line.estimate.value, "delivery", line.estimate.standardError)}.`;
      return `${start}${band}${straight}`;
    },
    causes:
      "What goes with the delivery need not cause it: whatever changed together with a variable is in its effect.",
    volume: figures.volume,
    volumeTable: {
      caption: "Volume per turn",
      product: "Product",
      fills: "Fills",
      density: (unit: string) => `Bulk density (${unit})`,
      delivery: (unit: string) => `Delivery (${unit})`,
      volume: `Volume (${figures.volumeUnit}/turn)`,
      interval: "Interval",
    },
    effectTable: {
      caption: "Effects on delivery per turn",
      variable: "Variable",
      between: "Between",
      units: {
        products: "products",
        "fills within products": "fills of a product",
      } satisfies Record<DeliveryRegression["units"], string>,
      withOthers: (others: readonly string[]) =>
        others.length === 0 ? "" : `, with ${format.list(others)}`,
      perUnit: "Per unit",
      interval: "Interval",
      elasticity: "Percent per percent",
      pValue: "p",
      effectUnit: (name: string, variables: readonly Variable[]) =>
        `${format.unit("delivery", 1)} per ${unitOf(name, variables)}`,
      value: figures.effect,
      range: (estimate: Estimate, name: string, variables: readonly Variable[]) =>
        range(estimate, (value) => figures.effect(value, name, variables)),
    },
    volumeRange: (estimate: Estimate) => range(estimate, figures.volume),
    detail: "Volumes and effects in figures",
    chart: {
      title: "Delivery per turn against bulk density",
      description: (result: ExplainingVariables) =>
        `Every fill by product. The line is delivery in proportion to density, the mean volume per turn of the products; the band is where a product not tried yet is expected (${level(result)}).${result.prediction === null ? "" : ` At ${format.value(result.prediction.densityKgPerM3, "density")}: ${format.estimateInterval(result.prediction.proportional, "delivery") ?? "not known"}.`}`,
      density: (unit: string) => `Bulk density (${unit})`,
      delivery: (unit: string) => `Delivery (${unit})`,
      product: "Product",
      fill: "Fill",
      predicted: "not tried yet",
    },
  };

  function densitySentence({ verdict }: DensityExplanation): string {
    switch (verdict) {
      case "not all":
        return "Bulk density does not explain all of the differences: products differ in volume per turn as well.";
      case "no more found":
        return "Bulk density explains the differences as far as these fills can tell: no difference in volume per turn was found, which does not prove that there is none.";
      case "nothing to explain":
        return "No difference in delivery was found, so there is nothing for bulk density to explain.";
      case "unknown":
        return "Whether bulk density explains the differences cannot be tested: at least two products need two fills each.";
    }
  }

  function shareSentence({ shareExplained, verdict }: DensityExplanation): string {
    if (shareExplained === null || verdict === "unknown" || verdict === "nothing to explain")
      return "";
    return shareExplained >= 0
      ? ` ${format.percent(shareExplained, 0)} of the variance between products goes with it.`
      : " Products differ more in volume per turn than in mass per turn.";
  }
}
