import type { MoneyResponse } from "../data/setup.ts";
import {
  notNegative,
  oneOf,
  orNull,
  parts,
  positive,
  type Rule,
  text,
} from "../results/options.ts";
import {
  type ErrorLaw,
  type ExpectedSides,
  expectedSides,
  expectedSquare,
} from "../statistics/expected-loss.ts";
import { meanOver, meanSidesOver, type WeightedLaw } from "../statistics/without-scatter.ts";

/** What catches cost, given in money or as time and the value of an hour; null: not given. */
export interface CatchingPrices {
  /** Before that of minutes. */
  readonly costPerCatch: number | null;
  readonly costToSetUp: number | null;
  readonly valueOfHour: number | null;
  readonly minutesPerCatch: number | null;
  readonly minutesToSetUp: number | null;
}

/** What a rate error and the catches of one fill cost, all in one currency. */
export interface FillPrices {
  /** null: not named. */
  readonly currency: string | null;
  readonly response: MoneyResponse;
  /** Drilled with the fill. */
  readonly hectares: number;
  readonly perCatch: number;
  /** Before the first catch. */
  readonly toSetUp: number;
}

/** The prices of a fill where enough is given; null: no response, no area, or nothing of what a catch costs. */
export function fillPricesOf(
  given: CatchingPrices & {
    readonly currency: string | null;
    readonly response: MoneyResponse | null;
    readonly areaPerFillHectares: number | null;
  },
): FillPrices | null {
  const { currency, response, areaPerFillHectares: hectares } = given;
  const perCatch = priceOfCatch(given);
  if (response === null || hectares === null || perCatch === null) return null;
  return { currency, response, hectares, perCatch, toSetUp: priceOfSetUp(given) ?? 0 };
}

/** What one catch costs; null: neither given nor to be worked out. */
export function priceOfCatch({
  costPerCatch,
  minutesPerCatch,
  valueOfHour,
}: CatchingPrices): number | null {
  return costPerCatch ?? priceOfTime(minutesPerCatch, valueOfHour);
}

/** What getting ready for the catches of a fill costs, however many they are; null: neither given nor to be worked out. */
export function priceOfSetUp({
  costToSetUp,
  minutesToSetUp,
  valueOfHour,
}: CatchingPrices): number | null {
  return costToSetUp ?? priceOfTime(minutesToSetUp, valueOfHour);
}

function priceOfTime(minutes: number | null, valueOfHour: number | null): number | null {
  return minutes === null || valueOfHour === null ? null : (minutes / 60) * valueOfHour;
}

/**
 * For the mean of a square, ν/(ν − 2) times that of a known spread: at 2 it is infinite, and a lent spread may know hardly
 * more than 2.
 */
export const fewestDfForSquare = 3;

/**
 * What a rate error of this law costs on average, money/ha. Linear: so much for each percent on either side. Quadratic:
 * curvature times the square of the percent, equal on both sides about the economically best rate; product saved and
 * product wasted are inside.
 *
 * @returns null: without bound, on 1 degree of freedom or fewer (below 3 with a quadratic response)
 * Source   Berger, Statistical Decision Theory (expected loss)
 */
export function expectedLoss(law: ErrorLaw, response: MoneyResponse): number | null {
  if (response.kind === "quadratic") {
    const square = law.df < fewestDfForSquare ? null : expectedSquare(law);
    return square === null
      ? null
      : response.curvaturePerHectarePerPercentSquared * 100 ** 2 * square;
  }
  const sides = expectedSides(law);
  return sides === null ? null : lossOfSides(sides, response);
}

/** The mean of it over laws, each with its weight; null where one has none. */
export function expectedLossOver(
  laws: readonly WeightedLaw[],
  response: MoneyResponse,
): number | null {
  if (response.kind === "quadratic") return meanOver(laws, (law) => expectedLoss(law, response));
  const sides = meanSidesOver(laws);
  return sides === null ? null : lossOfSides(sides, response);
}

/** What a mean error on either side costs where each percent costs the same. */
export function lossOfSides(
  { excess, shortfall }: ExpectedSides,
  response: Extract<MoneyResponse, { readonly kind: "linear" }>,
): number {
  return (
    100 * excess * response.heavyCostPerHectarePerPercent +
    100 * shortfall * response.lightCostPerHectarePerPercent
  );
}

const kindOfResponse = parts<MoneyResponse>({ kind: oneOf("linear", "quadratic") });

/** A response that can be meant. */
export const moneyResponse: Rule<MoneyResponse> = (option, given) => {
  kindOfResponse(option, given);
  if (given.kind === "linear") {
    notNegative(`${option}.heavy`, given.heavyCostPerHectarePerPercent);
    notNegative(`${option}.light`, given.lightCostPerHectarePerPercent);
  }
  if (given.kind === "quadratic")
    notNegative(`${option}.curvature`, given.curvaturePerHectarePerPercentSquared);
};

/** Prices that can be meant. */
export const fillPrices = parts<FillPrices>({
  currency: orNull(text),
  response: moneyResponse,
  hectares: positive,
  perCatch: notNegative,
  toSetUp: notNegative,
});
