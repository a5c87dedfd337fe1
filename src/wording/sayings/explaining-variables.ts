import type {
  ExplainingVariables,
  Variable,
  WithinFillEffect,
} from "../../questions/explaining-variables/result.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { explainingVariables as templates } from "../en/explaining-variables.ts";
import type { Format } from "../format.ts";
import { explainingUnits } from "./explaining-units.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about what goes with the delivery per turn. */
export function explainingVariablesSayings(format: Format, say: typeof templates) {
  const level = ({ options }: ExplainingVariables) => format.percent(options.level, 0);
  const figures = explainingUnits(format);
  const range = ({ interval }: Estimate, words: (value: number) => string): string | null =>
    interval === null || interval.lower === null || interval.upper === null
      ? null
      : format.range(words(interval.lower), words(interval.upper));
  const unitOf = (name: string, variables: readonly Variable[]) =>
    figures.unit(name, variables)?.replace("turns", say.turn) ?? say.unit;
  const value = (estimate: Estimate) =>
    format.value(estimate.value, "delivery", estimate.standardError);
  const pValue = (p: number | null) => (p === null ? null : format.pValue(p));

  return {
    ...say.labels,
    variable: say.variable,
    sentence: ({ density }: ExplainingVariables): string => {
      if (density === null) return say.densityNotRecorded;
      const { verdict, shareExplained: share } = density;
      const explained = say.density[verdict];
      if (share === null || verdict === "unknown" || verdict === "nothing to explain")
        return explained;
      return sentences(
        explained,
        share >= 0 ? say.shareExplained(format.percent(share, 0)) : say.noShareExplained,
      );
    },
    volumes: ({ density }: ExplainingVariables): string | null => {
      const differing = (density?.contrasts ?? [])
        .filter(({ differenceFound }) => differenceFound)
        .map(({ first, second, ratio, pValue: p }) =>
          say.volumeDiffers({
            first,
            second,
            percent: format.percent(Math.abs(ratio.value - 1), 1),
            less: ratio.value < 1,
            p: pValue(p),
          }),
        );
      return differing.length === 0 ? null : say.volumes(format.list(differing));
    },
    afterDensity: ({ density, options }: ExplainingVariables): string | null => {
      const test = density?.productAfterDensity ?? null;
      if (test === null) return null;
      const { df1, df2 } = test;
      const [statistic, p] = [format.plain(test.statistic), format.pValue(test.pValue)];
      return say.afterDensity({ differ: test.pValue < 1 - options.level, statistic, df1, df2, p });
    },
    withinFill: (effect: WithinFillEffect, { variables }: ExplainingVariables): string => {
      const { variable, fills, perUnit } = effect;
      const change = (one: number) =>
        format.signedPercent(figures.relative(one, variable, variables), 3);
      const proof = [range(perUnit, change), pValue(effect.pValue)].filter((one) => one !== null);
      return say.withinFill({
        change: change(perUnit.value),
        unit: unitOf(variable, variables),
        variable,
        proof: proof.length === 0 ? null : proof.join(", "),
        fills,
      });
    },
    prediction: (result: ExplainingVariables): string | null => {
      if (result.prediction === null) return null;
      const { densityKgPerM3, proportional, products, line } = result.prediction;
      const predicted = say.prediction({
        density: format.value(densityKgPerM3, "density"),
        value: value(proportional),
        products,
        level: level(result),
        interval: format.estimateInterval(proportional, "delivery"),
      });
      return sentences(predicted, line === null ? null : say.straightLine(value(line.estimate)));
    },
    volume: (estimate: Estimate, error = estimate.standardError) =>
      figures.volume(estimate.value, error),
    volumeTable: {
      ...say.volumeTable,
      density: say.densityAxis,
      delivery: say.deliveryAxis,
      volume: say.volumeAxis(figures.volumeUnit),
    },
    effectTable: {
      ...say.effectTable,
      withOthers: (others: readonly string[]) =>
        others.length === 0 ? "" : say.withOthers(format.list(others.map(say.variable))),
      effectUnit: (name: string, variables: readonly Variable[]) =>
        say.effectUnit({ delivery: format.unit("delivery", 1), unit: unitOf(name, variables) }),
      value: (estimate: Estimate, name: string, variables: readonly Variable[]) =>
        figures.effect(estimate.value, estimate, name, variables),
      range: (estimate: Estimate, name: string, variables: readonly Variable[]) =>
        range(estimate, (one) => figures.effect(one, estimate, name, variables)),
    },
    volumeRange: (estimate: Estimate, error = estimate.standardError) =>
      range(estimate, (one) => figures.volume(one, error)),
    chart: {
      ...say.chart,
      description: (result: ExplainingVariables): string => {
        const described = say.chartDescription(level(result));
        if (result.prediction === null) return described;
        const { densityKgPerM3, proportional } = result.prediction;
        return sentences(
          described,
          say.chartPrediction({
            density: format.value(densityKgPerM3, "density"),
            interval: format.estimateInterval(proportional, "delivery") ?? say.labels.unknown,
          }),
        );
      },
      density: say.densityAxis,
      delivery: say.deliveryAxis,
    },
  };
}
