import type { SheetRow, TrialPlan, TrialPlanOptions } from "../../questions/trial-plan/result.ts";
import type { trialPlan as templates } from "../en/trial-plan.ts";
import type { Format } from "../format.ts";
import { numbered } from "./numbered.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about a planned trial. */
export function trialPlanSayings(format: Format, say: typeof templates) {
  const { chance, percent, plusMinus, plain } = format;
  const chosen = (options: TrialPlanOptions) => ({
    difference: percent(options.difference),
    fillSpread: percent(options.fillSpread),
    scatter: percent(options.catchScatter.relative),
    turns: numbered(options.catchScatter.turns, format),
    level: percent(options.level, 0),
    fills: options.fills,
    turnLevels: format.list(options.turnLevels.map((turns) => plain(turns))),
    catchesPerLevel: options.catchesPerLevel,
  });
  /** What of it is assumed, and what a log tells. */
  const rests = ({ options, fromLog }: Pick<TrialPlan, "options" | "fromLog">): string => {
    const facts = chosen(options);
    const parts = [
      { known: fromLog.fillSpread, words: say.rests.fills(facts) },
      { known: fromLog.catchScatter, words: say.rests.catches(facts) },
    ];
    const of = (known: boolean) =>
      parts.filter((part) => part.known === known).map(({ words }) => words);
    const source = options.found?.source ?? "";
    const told = of(true);
    const assumed = of(false);
    return [
      ...(told.length === 0 ? [] : [say.rests.fromLog({ source, parts: say.rests.also(told) })]),
      ...(assumed.length === 0 ? [] : [say.rests.assumed(say.rests.also(assumed))]),
    ].join(". ");
  };

  return {
    ...say.labels,
    /** Who speaks in the log that was looked into, and what it does not tell; null: none was. */
    found: ({ options: { found }, fromLog }: TrialPlan): string | null =>
      found === null
        ? null
        : sentences(
            say.found[found.speaking](found),
            found.untold === null ? null : say.untold[found.untold],
            !fromLog.fillSpread ? null : found.withinBlocks ? say.beside.blocks : say.beside.level,
          ),
    sentence: ({ options, input, expected }: TrialPlan): string =>
      say.sentence({
        products: input.products,
        fills: options.fills,
        catches: input.catches,
        turns: plain(input.turns, 6),
        halfWidth: plusMinus(expected.halfWidth),
        difference: percent(options.difference),
        power: chance(expected.power),
        reference: options.reference,
      }),
    equivalence: ({ options, expected }: TrialPlan): string | null =>
      options.equivalenceMargin === null || expected.equivalencePower === null
        ? null
        : say.equivalence({
            margin: plusMinus(options.equivalenceMargin),
            power: chance(expected.equivalencePower),
          }),
    assumptions: ({ options, fromLog, spreadOfFills, expected }: TrialPlan): string =>
      say.assumptions({
        rests: rests({ options, fromLog }),
        level: percent(options.level, 0),
        spreadOfFills: percent(spreadOfFills),
        contrasts: say.contrasts[options.analysis],
        spread: say.spreads[expected.spread],
        reference: options.reference,
      }),
    defaults: ({ byDefault, options }: TrialPlan): string | null =>
      byDefault.length === 0
        ? null
        : say.defaults(byDefault.map((name) => say.named[name](chosen(options))).join("; ")),
    spreads: say.spreads,
    order: ({ options }: TrialPlan): string =>
      sentences(say.order(options.seed), options.analysis === "blocks" ? say.withinBlocks : null),
    alternatives: {
      ...say.alternatives,
      power: (difference: number) => say.chanceOfFinding(percent(difference)),
      equivalence: (margin: number) => say.chanceOfShowing(plusMinus(margin)),
    },
    sheet: {
      ...say.sheet,
      cell: (value: SheetRow[string] | undefined): string =>
        typeof value === "number" ? plain(value, 6) : (value ?? ""),
    },
  };
}
