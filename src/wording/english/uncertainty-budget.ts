import type {
  BudgetLine,
  BudgetSource,
  LeftOut,
  UncertaintyBudget,
} from "../../questions/uncertainty-budget.ts";
import type { InputLaw } from "../../statistics/propagation.ts";
import type { Format } from "../format.ts";

export type UncertaintyBudgetWords = ReturnType<typeof englishUncertaintyBudget>;

/** Everything said about how uncertain the applied rate is, and why. */
export function englishUncertaintyBudget(format: Format) {
  const level = ({ options }: UncertaintyBudget) => format.percent(options.level, 0);
  const who = (result: UncertaintyBudget) =>
    `Bin ${result.bin} (${result.product}), fill ${result.fill}`;
  const valueFor = ({ options }: UncertaintyBudget) =>
    options.valueFor === "this fill"
      ? "this fill"
      : "the fills that follow, when the value is kept";

  return {
    heading: "How far off the rate may be",
    source: (source: BudgetSource) => sourceWords[source],
    sentence: (result: UncertaintyBudget): string => {
      const { total } = result;
      if (total === null)
        return `${who(result)}: how far off the rate may be cannot be told without a known catch scatter.`;
      return `${who(result)}: everything listed together, the rate of ${valueFor(result)} is known to ${format.plusMinus(total.expanded)} (${level(result)}), ${total.withinTolerance ? "within" : "not within"} the tolerance of ${format.plusMinus(result.options.tolerance)}.`;
    },
    improve: ({ improveFirst, total }: UncertaintyBudget): string | null => {
      if (improveFirst === null || total === null) return null;
      const { source, share, expandedIfHalved } = improveFirst;
      return `Improve first: ${sourceWords[source]}, ${format.percent(share, 0)} of the variance. Half of it would leave ${format.plusMinus(expandedIfHalved)}. ${remedies[source]}`;
    },
    combined: ({ total }: UncertaintyBudget): string | null =>
      total === null
        ? null
        : `Combined standard uncertainty ${format.percent(total.combined)} of the rate, ${total.effectiveDf === null ? "known well" : `effective degrees of freedom ${format.plain(total.effectiveDf)} (Welch–Satterthwaite; catches and their readings count as one source, on the catches' own)`}; coverage factor ${format.plain(total.coverageFactor)}.`,
    check: ({ check, total, options }: UncertaintyBudget): string | null =>
      check === null || total === null
        ? null
        : `Monte Carlo check: ${format.count(check.draws)} draws (seed ${check.seed}) put ${format.percent(options.level, 0)} of the rates between ${format.signedPercent(check.lower, 2)} and ${format.signedPercent(check.upper, 2)}; the budget says ${format.signedPercent(-total.expanded, 2)} to ${format.signedPercent(total.expanded, 2)}. The ends differ by at most ${format.percent(check.difference, 2)}, ${check.agrees ? "within" : "more than"} the ${format.percent(check.limit, 2)} that one digit of the uncertainty, or chance in the draws, allows (GUM supplement 1).`,
    notHere:
      "What a moving field does that a standing drill does not is not in this budget; a field check shows it.",
    detail: "The budget in figures",
    table: {
      caption: "Uncertainty budget of the applied rate",
      source: "Source",
      law: "Distribution",
      standardUncertainty: "Standard uncertainty",
      sensitivity: "Changes the rate by",
      df: "Degrees of freedom",
      contribution: "Part of the rate",
      share: "Share of variance",
      wellKnown: "known well",
    },
    law: (law: InputLaw) => lawWords[law],
    uncertaintyOf: ({ standardUncertainty, unit }: BudgetLine): string => {
      switch (unit) {
        case "kg/turn":
          return format.value(standardUncertainty, "delivery", standardUncertainty);
        case "m":
          return `${format.plain(format.convert(standardUncertainty, "length", 1), 2)} ${format.unit("length", 1)}`;
        case "turns":
          return `${format.plain(standardUncertainty, 2)} turns`;
        case "fraction":
          return format.percent(standardUncertainty);
      }
    },
    /** Per unit of the source: what one g, m, turn or percent does. */
    sensitivityOf: ({ sensitivity, unit }: BudgetLine): string => {
      switch (unit) {
        case "kg/turn": {
          const perGram = sensitivity / format.convert(1, "delivery", 0.01);
          return `${format.signedPercent(perGram, 2)} per ${format.unit("delivery", 0.01)}`;
        }
        case "m": {
          const perLength = sensitivity / format.convert(1, "length", 1);
          return `${format.signedPercent(perLength, 1)} per ${format.unit("length", 1)}`;
        }
        case "turns":
          return `${format.signedPercent(sensitivity, 1)} per turn`;
        case "fraction":
          return `${format.signedPercent(sensitivity / 100, 2)} per percent`;
      }
    },
    chart: {
      title: (result: UncertaintyBudget) => `What makes the rate uncertain, bin ${result.bin}`,
      description: ({ lines }: UncertaintyBudget) =>
        `Share of each source in the variance of the applied rate: ${lines
          .map(({ source, share }) => `${sourceWords[source]} ${format.percent(share, 0)}`)
          .join("; ")}.`,
      share: "Share of the variance (%)",
      label: ({ share, contribution }: BudgetLine) =>
        `${format.percent(share, 0)} (${format.plusMinus(contribution)} of the rate)`,
    },
  };
}

const sourceWords: Readonly<Record<BudgetSource, string>> = {
  "catch scatter": "catch scatter",
  "reading gross": "reading the scale, gross",
  "reading tare": "reading the scale, tare",
  "scale error": "tested error of the scale",
  "turn count": "counting turns",
  "fill to fill": "difference between fills",
  "working width": "working width and overlap",
  "wheel travel": "wheel travel per turn",
  slip: "slip of the drive wheel",
};

/** What a budget may leave out, as a person names it. */
export const leftOutWords: Readonly<Record<string, string>> = {
  ...sourceWords,
  drive: "the drive (not given)",
  "speed measure": "the drive's own measure of speed",
} satisfies Record<LeftOut, string>;

const remedies: Readonly<Record<BudgetSource, string>> = {
  "catch scatter": "More catches, and longer ones, make it smaller.",
  "reading gross": "More turns a catch, or a finer scale, make it smaller; more catches do not.",
  "reading tare": "More turns a catch, or a finer scale, make it smaller; more catches do not.",
  "scale error": "Test the scale with a known mass near that of a catch, and have it adjusted.",
  "turn count": "Stop on the mark, and turn more turns a catch.",
  "fill to fill": "Catch every fill instead of keeping an older value.",
  "working width": "Measure the width between passes in the field, overlap included.",
  "wheel travel": "Measure the travel over more turns, loaded, in the field.",
  slip: "Count the wheel's turns over a measured distance in work, openers in the ground.",
};

const lawWords: Readonly<Record<InputLaw, string>> = {
  t: "Student's t",
  normal: "normal",
  rectangular: "rectangular",
};
