import type { CautionCode, CautionFacts } from "../../results/caution.ts";
import type { Format } from "../format.ts";

type Sentences<C extends CautionCode> = {
  readonly [K in C]: (facts: CautionFacts[K]) => string;
};

type PlanningCode =
  | "scatter-assumed"
  | "spread-assumed"
  | "scale-limits-tolerance"
  | "stopped-on-width"
  | "short-of-tolerance"
  | "tolerance-not-reachable"
  | "step-leaves-chance"
  | "skip-not-priced"
  | "book-value-outside"
  | "prices-missing"
  | "quadratic-about-best-rate"
  | "quadratic-needs-more"
  | "heavy-cost-below-product"
  | "set-up-time-not-counted";

/** Cautions about how many catches are enough, what skipping risks, and what it costs. */
export function englishPlanningCautions(format: Format): Sentences<PlanningCode> {
  return { ...aboutCatches(format), ...aboutSkipping(format), ...aboutMoney(format) };
}

type CatchesCode = Extract<
  PlanningCode,
  | "scatter-assumed"
  | "spread-assumed"
  | "scale-limits-tolerance"
  | "stopped-on-width"
  | "short-of-tolerance"
  | "tolerance-not-reachable"
  | "step-leaves-chance"
>;

function aboutCatches(format: Format): Sentences<CatchesCode> {
  return {
    "scatter-assumed": ({ relative, turns }) =>
      `No catch scatter is known yet, so the plan assumes ${format.percent(relative)} for a catch of ${format.plain(turns)} turns. That is an assumption, not your meter: published repeat-to-repeat unevenness of metered flow runs from 0.8 to 3.7 % (Yazgi et al., 2017). After three catches the plan rests on your own.`,
    "spread-assumed": ({ relative }) =>
      `The log shows no fill-to-fill spread apart from catch scatter, so the plan for a trial assumes ${format.percent(relative)}. No published figure was found for it.`,
    "scale-limits-tolerance": ({ turns, leastTurns, divisionKg }) =>
      `The scale${divisionKg === null ? "" : `'s step of ${format.value(divisionKg, "mass")}`} hides the scatter of ${format.plain(turns)} turns: below ${format.count(leastTurns)} turns a catch, reading it alone is wider than the tolerance.`,
    "stopped-on-width": ({ tolerance }) =>
      `If you stopped catching because ${format.plusMinus(tolerance)} was reached, state ${format.plusMinus(tolerance)}: stopping on the width makes a smaller figure too good.`,
    "short-of-tolerance": ({ halfWidth, tolerance }) =>
      `The fill is known within ${format.plusMinus(halfWidth)} so far; ${format.plusMinus(tolerance)} is wanted.`,
    "tolerance-not-reachable": (facts) => {
      const { halfWidth, tolerance, catches, mostCatches, heaviestCatchKg, leastTurns } = facts;
      const mass = `${format.value(heaviestCatchKg, "mass")}${facts.heaviestGiven ? "" : " (assumed)"}`;
      const cure =
        leastTurns === null
          ? "longer catches next time, or a wider tolerance"
          : `catches of at least ${format.count(leastTurns)} turns next time, a finer scale, or a wider tolerance`;
      return catches >= mostCatches
        ? `${mostCatches} catches were taken and the fill is known within ${format.plusMinus(halfWidth)}, not ${format.plusMinus(tolerance)}. State what was reached and do not go on until it happens to fit; what helps is ${cure}.`
        : `The fill is known within ${format.plusMinus(halfWidth)}. ${format.plusMinus(tolerance)} is not likely to be reached with ${mostCatches} catches of at most ${mass}; what helps is ${cure}.`;
    },
    "step-leaves-chance": ({ settingError, chance }) =>
      `The delivery is known well enough, but the nearest step is off by ${format.signedPercent(settingError)} by itself, so the rate is outside the tolerance with a chance of ${format.percent(chance, 0)}.`,
  };
}

function aboutSkipping(format: Format): Sentences<"skip-not-priced" | "book-value-outside"> {
  return {
    "skip-not-priced": ({ fills }) =>
      fills === 2
        ? "Two fills cannot price a skip: the chance of an error and its cost need at least three fills, better five."
        : fills === 1
          ? "One fill cannot price a skip: the chance of an error and its cost need at least three fills, better five."
          : "What is known of the spread of fills is too little to price a skip.",
    "book-value-outside": ({ bookKgPerTurn, lowerKgPerTurn, upperKgPerTurn }) =>
      `The book value of ${format.value(bookKgPerTurn, "delivery")} lies outside the band in which this meter's fills are expected (${format.value(lowerKgPerTurn, "delivery")} to ${format.value(upperKgPerTurn, "delivery")}). A drive left at it is off in one direction, fill after fill.`,
  };
}

type MoneyCode = Extract<
  PlanningCode,
  | "prices-missing"
  | "quadratic-about-best-rate"
  | "quadratic-needs-more"
  | "heavy-cost-below-product"
  | "set-up-time-not-counted"
>;

function aboutMoney(format: Format): Sentences<MoneyCode> {
  const perArea = (perHectare: number) =>
    `${format.plain(perHectare / format.convert(1, "area", 1))} ${format.units === "us" ? "an acre" : "a hectare"}`;
  return {
    "prices-missing": ({ missing }) =>
      `Not given, so what needs it is left out: ${format.list(missing.map((name) => missingWords[name] ?? name))}. No price is ever assumed.`,
    "quadratic-about-best-rate": () =>
      "The quadratic response is taken about the economically best rate: too much and too little cost alike, and the product's own price is already inside. It does not fit a target set well above or below that rate.",
    "quadratic-needs-more": () =>
      "After three fills the mean of a squared error is infinite, so skipping cannot be priced with a quadratic response; the upper figure stands for it. A fourth fill settles this.",
    "heavy-cost-below-product": ({ heavyPerPercent, productPerPercent }) =>
      `A percent too heavy is said to cost ${perArea(heavyPerPercent)}, less than the product alone (${perArea(productPerPercent)}). Check the response: it is to hold the product too.`,
    "set-up-time-not-counted": () =>
      "Minutes to set up before the first catch are not given and count as none, so catches look cheaper than they are.",
  };
}

const missingWords: Readonly<Record<string, string>> = {
  response: "what a rate error costs",
  pricePerKg: "the price of the product",
  targetKgPerHectare: "the target rate by mass",
  valueOfHour: "the value of an hour",
  minutesPerCatch: "the minutes a catch takes",
  areaHectares: "the area of the season",
  areaPerFillHectares: "the area of one fill",
};
