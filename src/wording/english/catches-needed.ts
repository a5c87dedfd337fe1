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

  return {
    heading: "Enough catches?",
    sentence: (result: CatchesNeeded): string => {
      const { stopping, recommended, options } = result;
      const tolerance = format.plusMinus(options.tolerance);
      const known =
        result.halfWidth === null
          ? "how well the delivery is known cannot be told yet"
          : `known within ${format.plusMinus(result.halfWidth)} after ${catchWords(result.input.catches)}`;
      if (stopping.reason === "within tolerance")
        return `${who(result)}: ${known}, enough for the tolerance of ${tolerance}.`;
      if (stopping.reason === "most catches reached")
        return `${who(result)}: ${known}, wider than the tolerance of ${tolerance}. Stop here and state what was reached; next time take longer catches.`;
      const start = result.input.catches === 0 ? who(result) : `${who(result)}: ${known}`;
      if (recommended === null)
        return `${start}; up to ${options.mostCatches} catches of ${format.plain(result.basis.turnsPerCatch)} turns are not likely enough to reach ${tolerance}.`;
      const more = result.input.catches === 0 ? "" : " more";
      return `${start}; ${recommended.further}${more} ${recommended.further === 1 ? "catch" : "catches"} of ${format.plain(recommended.turns)} turns ${recommended.further === 1 ? "reaches" : "reach"} ${tolerance} with a chance of ${format.percent(recommended.chance, 0)}.`;
    },
    buys: ({ further, options }: CatchesNeeded): string | null => {
      const [now, next] = further;
      if (now?.halfWidth == null || next?.halfWidth == null) return null;
      const step = `One catch more takes the figure from ${format.plusMinus(now.halfWidth)} to about ${format.plusMinus(next.halfWidth)}`;
      if (format.percent(now.halfWidth) === format.percent(next.halfWidth))
        return `One catch more would change little (${format.plusMinus(now.halfWidth)}).`;
      return now.halfWidth <= options.tolerance || next.chance === null
        ? `${step}.`
        : `${step}, and reaches the tolerance with a chance of ${format.percent(next.chance, 0)}; ${format.percent(options.assurance, 0)} is wanted.`;
    },
    rule: ({ stopping, options }: CatchesNeeded): string =>
      `One catch at a time: at least ${catchWords(stopping.fewest)}, then stop as soon as the interval is within ${format.plusMinus(options.tolerance)}, at ${catchWords(options.mostCatches)} at the latest. Then state the tolerance, or the interval where it is wider.`,
    basis: (result: CatchesNeeded): string => {
      const { basis } = result;
      const size = `${format.percent(basis.relativeScatter)} for a catch of ${format.plain(basis.turnsPerCatch)} turns`;
      switch (basis.scatter) {
        case "pooled":
          return `Catch scatter ${size}, from all fills together (${degrees(basis.df, format)}).`;
        case "own":
          return `Catch scatter ${size}, from this fill alone (${degrees(basis.df, format)}).`;
        case "assumed":
          return `Catch scatter ${size}: assumed, not measured.`;
      }
    },
    byTurns: ({ byTurns, options, stopping }: CatchesNeeded): string | null => {
      if (stopping.action === "stop") return null;
      const ways = byTurns.map(({ turns, recommended }) =>
        recommended === null
          ? `of ${format.plain(turns)} turns: more than ${options.mostCatches} in all`
          : `of ${format.plain(turns)} turns: ${recommended.further}`,
      );
      return `Further catches for that, ${ways.join("; ")}.`;
    },
    scale: ({ turnsForScale }: CatchesNeeded): string | null =>
      turnsForScale === null
        ? null
        : `From ${turnsForScale === 1 ? "1 turn" : `${format.count(turnsForScale)} turns`} a catch on, reading the scale is a small part of the tolerance.`,
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
    further: {
      caption: "What further catches buy",
      further: "Further catches",
      catches: "Catches then",
      halfWidth: "Known within ±, expected",
      assured: (assurance: number) => `With a chance of ${format.percent(assurance, 0)}`,
      chance: "Chance of reaching the tolerance",
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
        `Half-width of the ${level(result)} interval for the fill's delivery against its number of catches, expected and not exceeded with a chance of ${format.percent(result.options.assurance, 0)}, with the tolerance of ${format.plusMinus(result.options.tolerance)}. ${result.further
          .flatMap(({ catches: n, halfWidth }) =>
            halfWidth === null ? [] : [`${n}: ${format.percent(halfWidth)}`],
          )
          .join("; ")}.`,
      catches: "Catches of the fill",
      halfWidth: "Known within ± (%)",
      tolerance: "tolerance",
      expected: "expected",
      assured: (assurance: number) => `with a chance of ${format.percent(assurance, 0)}`,
      history: "earlier fills alone",
      now: "so far",
    },
  };
}
