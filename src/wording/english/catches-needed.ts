import type { CurvePoint, NumberOfCatches } from "../../model/next-catch.ts";
import type { CatchesNeeded, TrialSplit } from "../../questions/catches-needed.ts";
import type { Format } from "../format.ts";
import { catchWords, degrees } from "./counted.ts";

export type CatchesNeededWords = ReturnType<typeof englishCatchesNeeded>;

/** Everything said about how many catches are enough. */
export function englishCatchesNeeded(format: Format) {
  const who = ({ bin, product, fill }: CatchesNeeded) =>
    bin === null
      ? "Before any catch"
      : `Bin ${bin} (${product}), ${fill === null ? "the next fill" : `fill ${fill}`}`;
  const level = ({ options }: CatchesNeeded) => format.percent(options.level, 0);

  /** The one number, in the words in which it is quoted everywhere. */
  const numberWords = (needed: NumberOfCatches, first = false) =>
    `${moreCatches(needed, first, format)}: within ${format.plusMinus(needed.reaches)} with a chance of ${format.percent(needed.chance, 0)} (typically ${format.plusMinus(needed.typically)})`;

  return {
    heading: "Enough catches?",
    sentence: (result: CatchesNeeded): string => {
      const { standing, needed, options, halfWidth, input, basis } = result;
      const tolerance = format.plusMinus(options.tolerance);
      const known =
        halfWidth === null
          ? ""
          : `known within ${format.plusMinus(halfWidth)} after ${catchWords(input.catches)}`;
      switch (standing) {
        case "waits":
          return `${who(result)}: a catch of this fill must be explained or repeated first; until then no number of catches can be named.`;
        case "unknown":
          return `${who(result)}: ${catchWords(input.catches)} ${input.catches === 1 ? "says" : "say"} nothing of ${input.catches === 1 ? "its" : "their"} error.`;
        case "too few":
          return `${who(result)}: two catches cannot say how much they scatter. Take a third, then ask again.`;
        case "enough":
          return `${who(result)}: ${known}, enough for the tolerance of ${tolerance}.`;
        case "not reachable": {
          const limits = `${options.mostCatches} catches of at most ${format.value(basis.heaviestCatch.kg, "mass")}`;
          return input.catches === 0
            ? `${who(result)}: ${limits} are not likely enough to reach ${tolerance}.`
            : `${who(result)}: ${known}; ${tolerance} is not likely to be reached with ${limits}. State what was reached.`;
        }
        case "short": {
          if (needed === null) return `${who(result)}: ${known}.`;
          const number = numberWords(needed, input.catches === 0);
          return input.catches === 0
            ? `${who(result)}: ${number}.`
            : `${who(result)}: ${known}; ${number}.`;
        }
      }
    },
    buys: ({ curve, standing }: CatchesNeeded): string | null => {
      const now = curve.points.find(({ basis }) => basis === "made");
      const next = curve.points.find(({ further }) => further === 1);
      if (now?.halfWidth == null || next?.halfWidth == null || standing === "not reachable")
        return null;
      return format.percent(now.halfWidth) === format.percent(next.halfWidth)
        ? `One catch more would change little (${format.plusMinus(now.halfWidth)}).`
        : `One catch more would typically take the figure from ${format.plusMinus(now.halfWidth)} to ${format.plusMinus(next.halfWidth)}.`;
    },
    rule: ({ options, basis }: CatchesNeeded): string => {
      const fewest = basis.scatter === "pooled" ? options.fewestPooled : options.fewestOwn;
      return `One catch at a time: at least ${catchWords(fewest)}, then stop as soon as the interval is within ${format.plusMinus(options.tolerance)}, at ${catchWords(options.mostCatches)} at the latest. Then state the tolerance, or the interval where it is wider.`;
    },
    basis: (result: CatchesNeeded): string | null => {
      const { basis } = result;
      const size = `${format.percent(basis.relativeScatter)} for a catch of ${format.plain(basis.turnsPerCatch)} turns`;
      switch (basis.scatter) {
        case "pooled":
          return `Catch scatter ${size}, from all fills together (${degrees(basis.df, format)}).`;
        case "own":
          return `Catch scatter ${size}, from this fill alone (${degrees(basis.df, format)}).`;
        case "assumed":
          return result.input.catches > 0 ? null : `Catch scatter ${size}: assumed, not measured.`;
      }
    },
    scale: ({ leastTurns, basis }: CatchesNeeded): string | null =>
      leastTurns === null || leastTurns <= basis.turnsPerCatch
        ? null
        : `Below ${format.count(leastTurns)} turns a catch, reading the scale alone is wider than the tolerance, and more catches do not average that out.`,
    step: ({ options }: CatchesNeeded): string | null =>
      options.settingError === 0
        ? null
        : `The nearest step of the drive is off by ${format.signedPercent(options.settingError)} by itself, so the delivery has to be known within less than ${format.plusMinus(options.tolerance)}.`,
    limits: ({ basis, standing }: CatchesNeeded): string | null =>
      standing !== "short" || basis.longestTurns === null
        ? null
        : `A catch is taken to weigh ${format.value(basis.heaviestCatch.kg, "mass")} at most (${basis.heaviestCatch.given ? "from the setup" : "assumed; give the capacity of bag or scale in the setup"}).`,
    time: ({ turnsPlan, options }: CatchesNeeded): string | null => {
      if (turnsPlan === null || options.time === null) return null;
      const { best } = turnsPlan;
      return best === null
        ? `${format.plain(options.time.minutes)} minutes are too short for catches whose scatter can be judged.`
        : `In ${format.plain(options.time.minutes)} minutes ${catchWords(best.catches)} of ${format.plain(best.turns)} turns ${best.catches === 1 ? "does" : "do"} best: ${format.plusMinus(best.halfWidth)}.`;
    },
    trial: ({ trialPlan }: CatchesNeeded): string | null => {
      if (trialPlan === null) return null;
      const { best, bestWithTwoLevels } = trialPlan;
      if (best === null) return "The budget allows no trial of two fills with two catches each.";
      const split = ({ fills, catchesPerFill, halfWidth }: TrialSplit) =>
        `${fills} fills of ${catchWords(catchesPerFill)} (mean over fills known within ${format.plusMinus(halfWidth)})`;
      const levels =
        bestWithTwoLevels === null
          ? ""
          : ` To see a constant mass such as a tare left in, take two turn levels: ${split(bestWithTwoLevels)}.`;
      return `For a trial the budget goes furthest with ${split(best)}.${levels}`;
    },
    curve: {
      caption: "What each catch buys",
      catches: "Catches",
      further: "Further catches",
      halfWidth: "Known within ±",
      assured: (assurance: number) => `With a chance of ${format.percent(assurance, 0)}`,
      chance: "Chance of reaching the tolerance",
      chanceOff: "Chance off by more than the tolerance",
      basis: "Rests on",
      bases: {
        "earlier fills": "earlier fills alone",
        made: "catches made",
        planned: "catches planned",
      } satisfies Record<CurvePoint["basis"], string>,
    },
    splits: {
      caption: "Ways to split the budget of a trial",
      fills: "Fills",
      catches: "Catches each",
      turns: "Turns",
      cost: "Cost",
      halfWidth: "Mean known within ±",
      detectable: "Difference found (80 %)",
      constant: "Constant mass found (80 %), of a catch",
    },
    choices: {
      caption: "Ways to spend the time",
      catches: "Catches",
      turns: "Turns each",
      minutes: "Minutes",
      halfWidth: "Known within ±",
    },
    unknown: "not known",
    detail: "Plans in figures",
    chart: {
      title: (result: CatchesNeeded) =>
        result.bin === null
          ? "What each catch buys"
          : `What each catch buys, bin ${result.bin}${result.fill === null ? "" : `, fill ${result.fill}`}`,
      description: (result: CatchesNeeded) =>
        `Half-width of the ${level(result)} interval for the fill's delivery against its number of catches, expected and not exceeded with a chance of ${format.percent(result.options.assurance, 0)}, with the tolerance of ${format.plusMinus(result.options.tolerance)}. ${result.curve.points
          .flatMap(({ catches: n, halfWidth }) =>
            halfWidth === null ? [] : [`${n}: ${format.percent(halfWidth)}`],
          )
          .join("; ")}.`,
      catches: "Catches of the fill",
      halfWidth: "Known within ± (%)",
      tolerance: "tolerance",
      planned: "expected",
      assured: (assurance: number) => `with a chance of ${format.percent(assurance, 0)}`,
      "earlier fills": "earlier fills alone",
      made: "so far",
    },
  };
}

/** "2 more catches of 20 turns"; before the first catch without "more". */
export function moreCatches(
  { further, turns }: Pick<NumberOfCatches, "further" | "turns">,
  first: boolean,
  format: Format,
): string {
  return `${format.count(further)}${first ? "" : " more"} ${further === 1 ? "catch" : "catches"} of ${format.plain(turns)} turns`;
}
