import type { SheetRow, TrialDefault, TrialPlan } from "../../questions/trial-plan/result.ts";
import type { Format } from "../format.ts";

export type TrialPlanWords = ReturnType<typeof englishTrialPlan>;

/** Everything said about a planned trial. */
export function englishTrialPlan(format: Format) {
  return {
    heading: "Trial plan",
    sentence: ({ options, input, expected }: TrialPlan): string =>
      `${input.products} products, ${options.fills} fills of each, ${input.catches} catches and ${format.plain(input.turns, 6)} turns in all: a difference between two products will be known to about ${format.plusMinus(expected.halfWidth)} of the delivery, and a true one of ${format.percent(options.difference)} will be found with a chance of ${format.percent(expected.power, 0)}.`,
    equivalence: ({ options, expected }: TrialPlan): string | null =>
      options.equivalenceMargin === null || expected.equivalencePower === null
        ? null
        : `Two products that do not differ at all will be shown equivalent within ${format.plusMinus(options.equivalenceMargin)} with a chance of ${format.percent(expected.equivalencePower, 0)} (one pair, not adjusted for others).`,
    assumptions: ({ options, spreadOfFills }: TrialPlan): string =>
      `Assumed: fills of one product spread by ${format.percent(options.fillSpread)}, catches of ${format.plain(options.catchScatter.turns)} turns scatter by ${format.percent(options.catchScatter.relative)}; so deliveries found for fills of one product have a standard deviation of ${format.percent(spreadOfFills)}. The contrasts are made ${options.analysis === "blocks" ? "within blocks" : "between fills"}, with ${options.spread === "common" ? "a spread declared common" : "a spread for each product"}, ${format.percent(options.level, 0)} for all pairs together.`,
    defaults: ({ byDefault, options }: TrialPlan): string | null => {
      const { catchScatter, turnLevels, catchesPerLevel } = options;
      const said: Readonly<Record<TrialDefault, string>> = {
        difference: `a difference of ${format.percent(options.difference)} to be found`,
        fillSpread: `a spread between fills of ${format.percent(options.fillSpread)}`,
        catchScatter: `a catch scatter of ${format.percent(catchScatter.relative)} at ${format.plain(catchScatter.turns)} turns`,
        level: `a confidence of ${format.percent(options.level, 0)}`,
        fills: `${format.count(options.fills)} fills of each product`,
        turnLevels: `catches of ${turnLevels.map((turns) => format.plain(turns)).join(" and ")} turns`,
        catchesPerLevel: `${format.count(catchesPerLevel)} catches of each kind`,
      };
      return byDefault.length === 0
        ? null
        : `Defaults, to be replaced by figures of your own: ${byDefault.map((name) => said[name]).join("; ")}.`;
    },
    order: ({ options }: TrialPlan): string =>
      `Work in the order of the sheet: within a block every product once in random order, within a fill every kind of catch in random order (seed ${options.seed}). Finish a block before the next one begins.`,
    alternatives: {
      caption: "Fewer or more fills",
      fills: "Fills of each product",
      catches: "Catches in all",
      halfWidth: "Difference known to",
      power: (difference: number) => `Chance of finding ${format.percent(difference)}`,
      equivalence: (margin: number) => `Chance of showing ${format.plusMinus(margin)}`,
    },
    sheet: {
      caption: "Catch sheet, in the order of work",
      heading: "The sheet",
      columns: {
        block: "Block",
        product: "Product",
        fill: "Fill",
        catch: "Catch",
        turns: "Turns",
        meter_rpm: "Turns/min",
      } satisfies Record<string, string>,
      cell: (value: SheetRow[string] | undefined): string =>
        typeof value === "number" ? format.plain(value, 6) : (value ?? ""),
    },
  };
}
