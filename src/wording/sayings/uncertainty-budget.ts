import { min } from "simple-statistics";
import type {
  BudgetLine,
  BudgetSource,
  Staircase,
  StaircaseStep,
  UncertaintyBudget,
} from "../../questions/uncertainty-budget.ts";
import type { InputLaw } from "../../statistics/propagation.ts";
import type { uncertaintyBudget as templates } from "../en/uncertainty-budget.ts";
import type { Format } from "../format.ts";
import { moneyPerAreaWords } from "./money.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about how uncertain the applied rate is, and why. */
export function uncertaintyBudgetSayings(format: Format, say: typeof templates) {
  const length = format.unit("length", 1);

  /** What a step adds, and below it what half of it would buy. */
  const stepLines = (
    { stage, sources, share, ifHalved }: StaircaseStep,
    { options }: UncertaintyBudget,
  ): readonly string[] => {
    const named = { stage: say.staircase.stages[stage] };
    if (sources.length === 0) return [say.noStep({ ...named, why: say.staircase.nothing[stage] })];
    const adds = say.step({ ...named, share: format.percent(share, 0) });
    if (ifHalved === null) return [adds];
    const { expanded, savesPerHectare: saves } = ifHalved;
    return [
      adds,
      say.halved({
        left: format.plusMinus(expanded),
        saves: saves === null ? null : moneyPerAreaWords(saves, options.currency, format),
      }),
    ];
  };
  const totalLines = (
    { expanded, lossPerHectare: loss }: Pick<Staircase, "expanded" | "lossPerHectare">,
    { options }: UncertaintyBudget,
  ): readonly string[] => [
    say.altogether({
      expanded: format.plusMinus(expanded),
      level: format.percent(options.level, 0),
    }),
    ...(loss === null ? [] : [say.costs(moneyPerAreaWords(loss, options.currency, format))]),
  ];

  return {
    ...say.labels,
    source: (source: BudgetSource) => say.sources[source],
    law: (law: InputLaw) => say.laws[law],
    sentence: (result: UncertaintyBudget): string => {
      const { total, options } = result;
      if (total === null) return say.notTold(result);
      return say.known({
        ...result,
        valueFor: say.valueFor[options.valueFor],
        expanded: format.plusMinus(total.expanded),
        level: format.percent(options.level, 0),
        within: total.withinTolerance,
        tolerance: format.plusMinus(options.tolerance),
      });
    },
    improve: ({ improveFirst, total }: UncertaintyBudget): string | null => {
      if (improveFirst === null || total === null) return null;
      const { source, share, expandedIfHalved } = improveFirst;
      return sentences(
        say.improve({
          source: say.sources[source],
          share: format.percent(share, 0),
          halved: format.plusMinus(expandedIfHalved),
        }),
        say.remedies[source],
      );
    },
    combined: ({ total }: UncertaintyBudget): string | null =>
      total === null
        ? null
        : say.combined({
            combined: format.percent(total.combined),
            df: total.effectiveDf === null ? null : format.plain(total.effectiveDf),
            coverage: format.plain(total.coverageFactor),
          }),
    check: ({ check, total, options }: UncertaintyBudget): string | null => {
      if (check === null || total === null) return null;
      const signed = (error: number) => format.signedPercent(error, 2);
      return say.check({
        ...check,
        draws: format.count(check.draws),
        level: format.percent(options.level, 0),
        lower: signed(check.lower),
        upper: signed(check.upper),
        budget: format.range(signed(-total.expanded), signed(total.expanded)),
        difference: format.percent(check.difference, 2),
        limit: format.percent(check.limit, 2),
      });
    },
    /** @param beside  the lines of a column: masses of all have the decimals that the smallest deserves */
    uncertaintyOf: (
      { standardUncertainty, unit }: BudgetLine,
      beside: readonly BudgetLine[],
    ): string => {
      switch (unit) {
        case "kg/turn":
          return format.value(standardUncertainty, "delivery", smallestOf(beside));
        case "m":
          return `${format.plain(format.convert(standardUncertainty, "length", 1), 2)} ${length}`;
        case "turns":
          return say.turns(format.plain(standardUncertainty, 2));
        case "fraction":
          return format.percent(standardUncertainty);
      }
    },
    /** Per unit of the source: what one g, m, turn or percent does. */
    sensitivityOf: ({ sensitivity, unit }: BudgetLine): string => {
      switch (unit) {
        case "kg/turn": {
          const perGram = sensitivity / format.convert(1, "delivery", 0.01);
          const unit = format.unit("delivery", 0.01);
          return say.perUnit({ change: format.signedPercent(perGram, 2), unit });
        }
        case "m": {
          const perLength = sensitivity / format.convert(1, "length", 1);
          return say.perUnit({ change: format.signedPercent(perLength, 1), unit: length });
        }
        case "turns":
          return say.perTurn(format.signedPercent(sensitivity, 1));
        case "fraction":
          return say.perPercent(format.signedPercent(sensitivity / 100, 2));
      }
    },
    staircase: {
      title: say.staircase.title,
      share: say.staircase.share,
      step: stepLines,
      total: totalLines,
      description: (result: UncertaintyBudget, { steps, ...whole }: Staircase) =>
        say.staircaseDescription({
          steps: steps.map((step) => stepLines(step, result).join("; ")).join(". "),
          all: totalLines(whole, result).join("; "),
        }),
    },
    chart: {
      ...say.chart,
      description: ({ lines }: UncertaintyBudget) =>
        say.chartDescription(
          lines
            .map(({ source, share }) => `${say.sources[source]} ${format.percent(share, 0)}`)
            .join("; "),
        ),
      label: ({ share, contribution }: BudgetLine) =>
        say.chartLabel({
          share: format.percent(share, 0),
          contribution: format.plusMinus(contribution),
        }),
    },
  };
}

function smallestOf(lines: readonly BudgetLine[]): number {
  const masses = lines.filter(({ unit }) => unit === "kg/turn");
  return min(masses.map(({ standardUncertainty }) => standardUncertainty));
}
