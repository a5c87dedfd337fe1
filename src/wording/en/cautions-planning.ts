import { anotherCatchPays } from "./catches-needed.ts";
import type { Counts, Facts, Numbers } from "./facts.ts";

type Reached = Facts<"known" | "tolerance", "leastTurns"> & Counts<"mostCatches">;

const cure = ({ leastTurns }: Reached) =>
  leastTurns === null
    ? "longer catches next time, or a wider tolerance"
    : `catches of at least ${leastTurns} turns next time, a finer scale, or a wider tolerance`;

/** Cautions about how many catches are enough, what skipping risks, and what it costs. */
export const cautionsPlanning = {
  labels: {
    mostCatchesTaken: (f: Reached) =>
      `${f.mostCatches} catches were taken and the fill is known within ${f.known}, not ${f.tolerance}. State what was reached and do not go on until it happens to fit; what helps is ${cure(f)}.`,
    spreadTooLittleKnown: "What is known of the spread of fills is too little to price a skip.",
    /** Figures a cost needs, as a person names them. */
    missing: {
      response: "what a rate error costs",
      pricePerKg: "the price of the product",
      targetKgPerHectare: "the target rate by mass",
      valueOfHour: "the value of an hour",
      minutesPerCatch: "the minutes a catch takes",
      areaHectares: "the area of the season",
      areaPerFillHectares: "the area of one fill",
    } as Readonly<Record<string, string>>,
    perArea: {
      metric: (money: string) => `${money} a hectare`,
      us: (money: string) => `${money} an acre`,
    },
  },
  // catches needed
  "scatter-assumed": (f: Facts<"scatter"> & Numbers<"turns">) =>
    `No catch scatter is known yet, so the plan assumes ${f.scatter} for a catch of ${f.turns.words} turns. That is an assumption, not your meter: published repeat-to-repeat unevenness of metered flow runs from 0.8 to 3.7 % (Yazgi et al., 2017). After three catches the plan rests on your own.`,
  "spread-assumed": (spread: string) =>
    `The log shows no fill-to-fill spread apart from catch scatter, so the plan for a trial assumes ${spread}. No published figure was found for it.`,
  "scale-limits-tolerance": (f: Facts<"turns" | "leastTurns", "division">) =>
    `The scale${f.division === null ? "" : `'s step of ${f.division}`} hides the scatter of ${f.turns} turns: below ${f.leastTurns} turns a catch, reading it alone is wider than the tolerance.`,
  "stopped-on-width": (tolerance: string) =>
    `If you stopped catching because ${tolerance} was reached, state ${tolerance}: stopping on the width makes a smaller figure say more than it holds.`,
  "enough-by-money": () =>
    "No tolerance was given, so money decides: the catches are enough once another costs more than it saves. A tolerance of your own, with --tolerance or in the setup, decides first.",
  "next-catch-pays": anotherCatchPays,
  "short-of-tolerance": (f: Facts<"known" | "tolerance", "step">) =>
    f.step === null
      ? `The fill is known within ${f.known} so far; ${f.tolerance} is wanted.`
      : `The fill is known within ${f.known} so far, and the nearest step of the drive is off by ${f.step} by itself; together they are to keep within ${f.tolerance}.`,
  "tolerance-not-reachable": (
    f: Reached & Facts<"heaviest"> & { readonly heaviestGiven: boolean },
  ) =>
    `The fill is known within ${f.known}. ${f.tolerance} is not likely to be reached with ${f.mostCatches} catches of at most ${f.heaviest}${f.heaviestGiven ? "" : " (assumed)"}; what helps is ${cure(f)}.`,
  "step-leaves-chance": (f: Facts<"step" | "chance">) =>
    `The delivery is known well enough, but the nearest step is off by ${f.step} by itself, so the rate is outside the tolerance with a chance of ${f.chance}.`,
  // skipping
  "skip-not-priced": (fills: 1 | 2) =>
    `${fills === 1 ? "One fill" : "Two fills"} cannot price a skip: the chance of an error and its cost need at least three fills, better five.`,
  /** Null: all of it. */
  "spread-mostly-catch-scatter": (share: string | null) =>
    `Catch scatter explains ${share ?? "all"} of the variance between the fills. The average error and its cost leave it out and keep how unsure the mean is; chances still count it. More catches of a fill would tell the two apart.`,
  "book-value-outside": (f: Facts<"book" | "band">) =>
    `The book value of ${f.book} lies outside the band in which this meter's fills are expected (${f.band}). A drive left at it is off in one direction, fill after fill.`,
  // cost
  "prices-missing": (missing: string) =>
    `Not given, so what needs it is left out: ${missing}. No price is ever assumed.`,
  "quadratic-about-best-rate": () =>
    "The quadratic response is taken about the economically best rate: too much and too little cost alike, and the product's own price is already inside. It does not fit a target set well above or below that rate.",
  "quadratic-needs-more": () =>
    "So little is known of how much fills differ that the mean of a squared error is infinite, or far above what is likely. Skipping then cannot be priced with a quadratic response; the upper figure stands for it. One more fill settles this.",
  "heavy-cost-below-product": (f: Facts<"heavy" | "product">) =>
    `A percent too heavy is said to cost ${f.heavy}, less than the product alone (${f.product}). Check the response: it is to hold the product too.`,
  "set-up-time-not-counted": () =>
    "What it costs to set up before the first catch is not given and counts as nothing, so catches look cheaper than they are.",
};
