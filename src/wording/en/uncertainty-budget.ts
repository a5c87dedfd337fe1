import type { Counts, Facts } from "./facts.ts";
import { leftOut, sources } from "./uncertainty-sources.ts";

/** What is said of how uncertain the applied rate is, and why. */
export const uncertaintyBudget = {
  labels: {
    heading: "How far off the rate may be",
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
  },
  sources,
  /** What a budget may leave out, as a person names it. */
  leftOut,
  laws: { t: "Student's t", normal: "normal", rectangular: "rectangular" },
  valueFor: {
    "this fill": "this fill",
    "next fills": "the fills that follow, when the value is kept",
  },
  notTold: (f: Facts<"bin" | "product"> & Counts<"fill">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: how far off the rate may be cannot be told without a known catch scatter.`,
  known: (
    f: Facts<"bin" | "product" | "valueFor" | "expanded" | "level" | "tolerance"> &
      Counts<"fill"> & { readonly within: boolean },
  ) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: everything listed together, the rate of ${f.valueFor} is known to ${f.expanded} (${f.level}), ${f.within ? "within" : "not within"} the tolerance of ${f.tolerance}.`,
  improve: (f: Facts<"source" | "share" | "halved">) =>
    `Improve first: ${f.source}, ${f.share} of the variance. Half of it would leave ${f.halved}.`,
  remedies: {
    "catch scatter": "More catches, and longer ones, make it smaller.",
    "reading gross": "More turns a catch, or a finer scale, make it smaller; more catches do not.",
    "reading tare": "More turns a catch, or a finer scale, make it smaller; more catches do not.",
    "scale error": "Test the scale with a known mass near that of a catch, and have it adjusted.",
    "turn count": "Stop on the mark, and turn more turns a catch.",
    "fill to fill": "Catch every fill instead of keeping an older value.",
    drift: "Look for what moves the meter, and catch every fill until it stands.",
    "working width": "Measure the width between passes in the field, overlap included.",
    "wheel travel":
      "Measure the travel over more turns, loaded, in the field, nobody beside the machine while it moves.",
    slip: "Count the wheel's turns over a measured distance in work, openers in the ground, nobody beside the machine while it moves.",
  },
  combined: (f: Facts<"combined" | "coverage", "df">) =>
    `Combined standard uncertainty ${f.combined} of the rate, ${f.df === null ? "known well" : `effective degrees of freedom ${f.df} (Welch–Satterthwaite; catches and their readings count as one source, on the catches' own)`}; coverage factor ${f.coverage}.`,
  check: (
    f: Facts<"draws" | "level" | "lower" | "upper" | "budget" | "difference" | "limit"> &
      Counts<"seed"> & { readonly agrees: boolean },
  ) =>
    `Monte Carlo check: ${f.draws} draws (random start ${f.seed}) put ${f.level} of the rates between ${f.lower} and ${f.upper}; the budget says ${f.budget}. The ends differ by at most ${f.difference}, ${f.agrees ? "within" : "more than"} the ${f.limit} that one digit of the uncertainty, or chance in the draws, allows (GUM supplement 1).`,
  turns: (turns: string) => `${turns} turns`,
  perUnit: (f: Facts<"change" | "unit">) => `${f.change} per ${f.unit}`,
  perTurn: (change: string) => `${change} per turn`,
  perPercent: (change: string) => `${change} per percent`,
  chart: {
    title: (f: Facts<"bin">) => `What makes the rate uncertain, bin ${f.bin}`,
    share: "Share of the variance (%)",
  },
  staircase: {
    title: (f: Facts<"bin">) =>
      `What makes the rate uncertain if this fill's value is kept, and what would halving it buy? Bin ${f.bin}`,
    share: "Share of variance, added up (%)",
    stages: {
      scale: "Scale",
      catches: "Catches",
      fills: "Fills differ",
      drift: "Trend of the fills",
      ground: "Width, wheel, slip",
    },
    nothing: {
      scale: "not known",
      catches: "not known",
      fills: "not known",
      drift: "none found",
      ground: "not given",
    },
  },
  step: (f: Facts<"stage" | "share">) => `${f.stage}: ${f.share} of the variance`,
  noStep: (f: Facts<"stage" | "why">) => `${f.stage}: ${f.why}`,
  halved: (f: Facts<"left", "saves">) =>
    `halved: ${f.left}${f.saves === null ? "" : `, saves ${f.saves}`}`,
  altogether: (f: Facts<"expanded" | "level">) => `All together: ${f.expanded} (${f.level})`,
  costs: (loss: string) => `expected cost ${loss}`,
  staircaseDescription: (f: Facts<"steps" | "all">) =>
    `How the variance of the rate builds up from scale to field when this fill's value is kept for the next fill. ${f.steps}. ${f.all}.`,
  chartDescription: (shares: string) =>
    `Share of each source in the variance of the applied rate: ${shares}.`,
  chartLabel: (f: Facts<"share" | "contribution">) => `${f.share} (${f.contribution} of the rate)`,
};
