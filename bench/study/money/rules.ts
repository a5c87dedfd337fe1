import { at } from "../../../src/errors/at.ts";
import type { FillPrices } from "../../../src/model/fill-prices.ts";
import { halfWidthNow } from "../../../src/model/known-width.ts";
import { type CatchAim, stopsAt } from "../../../src/model/next-catch.ts";
import { worthOfNextCatch, worthOfSkipping } from "../../../src/model/worth-of-catch.ts";
import { chanceBeyond, meanAbsoluteT } from "../../../src/statistics/expected-loss.ts";
import { turns } from "./lent.ts";
import { mostCatches, type Season } from "./season.ts";

/** How many catches a fill is given; 0: it is left alone. */
export interface Rule {
  readonly name: string;
  readonly catches: (season: Season, prices: FillPrices) => number;
}

const fewestFillsToSkip = 3;
const fewestFillsForChance = 6;
const tolerance = 0.03;
const chanceBorne = 0.05;

/** A catch more while it pays, none where leaving the fill costs least: the rule in use. */
export const money: Rule = {
  name: "money",
  catches: (season, prices) => {
    const pricing = { prices, turns, mostCatches, settingError: 0 };
    const { left, states } = season;
    const before = at(states, 0);
    if (season.fills >= fewestFillsToSkip && left !== null)
      if (worthOfSkipping([{ law: left, weight: 1 }], before, pricing)?.pays === true) return 0;
    const enough = states.findIndex(
      (state) => scatterIsKnown(state) && worthOfNextCatch(state, pricing)?.pays !== true,
    );
    return enough < 0 ? mostCatches : enough;
  },
};

/** A catch more until the half-width is within 3 %, none where the chance of more is at most 5 %: the rule in use. */
export const withinTolerance: Rule = {
  name: `tolerance ${tolerance * 100} %`,
  catches: ({ fills, left, states }) => {
    if (fills >= fewestFillsForChance && left !== null)
      if (chanceBeyond(left, tolerance).either <= chanceBorne) return 0;
    const enough = states.findIndex((state) => {
      if (!scatterIsKnown(state)) return false;
      const aim = aimWith(state.scatter.own ? 3 : fills === 0 ? 2 : 1);
      const halfWidth = halfWidthNow(state, aim);
      return (
        halfWidth !== null && stopsAt(state.catches, halfWidth, state.scatter.nu, aim) !== null
      );
    });
    return enough < 0 ? mostCatches : enough;
  },
};

export const alwaysThree: Rule = { name: "always 3", catches: () => 3 };

/** What costs least for somebody who knows both true standard deviations. */
export const knowing: Rule = {
  name: "knowing the scatter",
  catches: (season, prices) => {
    const counts = Array.from({ length: mostCatches }, (_, i) => i + 1);
    const allowed = season.fills >= fewestFillsToSkip ? [0, ...counts] : counts;
    return allowed.reduce((best, count) =>
      costOf(season, count, prices) < costOf(season, best, prices) ? count : best,
    );
  },
};

/** Expected cost of the error that so many catches leave, and of themselves, by the true standard deviations. */
export function costOf(
  { catchError, leftError }: Season,
  catches: number,
  prices: FillPrices,
): number {
  const error = catches === 0 ? leftError : catchError / Math.sqrt(catches);
  const ofCatches = catches === 0 ? 0 : prices.toSetUp + catches * prices.perCatch;
  return perUnitError(prices) * meanAbsoluteT(Number.POSITIVE_INFINITY) * error + ofCatches;
}

function perUnitError({ response, hectares }: FillPrices): number {
  if (response.kind !== "linear") throw new RangeError("The study is of linear responses.");
  const { heavyCostPerHectarePerPercent: heavy, lightCostPerHectarePerPercent: light } = response;
  return 100 * hectares * ((heavy + light) / 2);
}

/** A catch has been made, and two lone ones, whose scatter is known on one degree of freedom, are not the last. */
function scatterIsKnown({ catches, scatter }: Season["states"][number]): boolean {
  return catches > 0 && scatter.nu > 0 && !(scatter.own && scatter.nu < 2);
}

function aimWith(fewestCatches: number): CatchAim {
  return {
    level: 0.95,
    phi: 1,
    tolerance,
    assurance: 0.8,
    settingError: 0,
    fewestCatches,
    mostCatches,
  };
}
