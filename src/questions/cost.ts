import { min } from "simple-statistics";
import { stateOfNextFill } from "../model/known-state.ts";
import { newestFill } from "../model/meters.ts";
import type { MeterModel } from "../model/model.ts";
import { errorAfter } from "../model/next-catch.ts";
import { type NextFillError, nextFillError, settingOf } from "../model/rate-error.ts";
import { requireModelOptions } from "../results/options.ts";
import { breakEvens, firstToPay } from "./cost/break-even.ts";
import { costCautions } from "./cost/cautions.ts";
import { lossOf, lossUnknown, lossWhenSkipping } from "./cost/loss.ts";
import { catchingCost, missingPrices } from "./cost/prices.ts";
import type { Cost, CostOptions, CostPoint, Prices } from "./cost/result.ts";
import { skippedLoss } from "./cost/skipped.ts";

export type {
  BreakEven,
  Cost,
  CostOptions,
  CostPoint,
  LossOfError,
  MissingPrice,
  Prices,
  SkippedLoss,
} from "./cost/result.ts";

const flatness = 0.05;

/**
 * What do 0, 1, 2, … catches of every fill cost, errors and catches together, and how many cost least?
 *
 * Expected loss of the rate error e = μ + σ·t(ν) under the response given: linear, cost of a percent too heavy times
 * E max(e, 0) plus cost of a percent too light times E max(−e, 0); quadratic, curvature times E e². For 0 catches the law
 * is that of the next fill with the drive left at the assumed value, catch scatter taken out of the spread of fills as
 * in `skipping`; for m >= 1 it is centred, with the width of the
 * next-catch curve. To this the price of the catches is added, spread over the area of a fill. Break-even area: cost
 * of the catches ÷ (loss when skipping − loss with them), as a range from the generalized confidence
 * limits of the loss when skipping, 5 and 90 %: mean and spread of the fills are both uncertain.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  as resolved; prices in any one currency
 * @returns        money per hectare, per season, hectares per fill
 * Null when       a price is not given (caution prices-missing); fewer than three fills, for skipping (skip-not-priced);
 *                 2 degrees of freedom or fewer with a quadratic response, whose mean loss is infinite then
 *                 (quadratic-needs-more)
 * @throws         OptionError when the assumed value does not exist
 * Assumes         response as given; the quadratic one is about the economically best rate and holds the product already
 * Source          Berger, Statistical Decision Theory (expected loss); Jensen & Pesek, SSSA Proceedings 26 (1962);
 *                 Weerahandi, JASA 88 (1993) 899 (generalized confidence limits)
 */
export function cost(meter: MeterModel, options: CostOptions): Cost {
  requireModelOptions(options);
  const { prices } = options;
  const setting = settingOf(options.assumed, meter).nextKgPerTurn;
  const catchesToday = newestFill(meter).totals.catches;
  const skipped = nextFillError(meter.across, setting);
  const points = pointsOf(meter, skipped, options, catchesToday);
  const breakEven = breakEvens(points, prices);
  return {
    kind: "cost",
    bin: meter.bin,
    product: meter.product,
    options,
    input: { fills: meter.across.fills, catchesToday },
    setToKgPerTurn: setting,
    missing: missingPrices(prices),
    points,
    skipping: skippedLoss(skipped, points, prices),
    cheapest: cheapestOf(points),
    breakEvens: breakEven,
    paysFrom: firstToPay(breakEven),
    cautions: costCautions(meter, setting, options),
  };
}

function pointsOf(
  meter: MeterModel,
  skipped: NextFillError | null,
  options: CostOptions,
  catchesToday: number,
): readonly CostPoint[] {
  const { prices } = options;
  const lossWithout = () => (skipped === null ? lossUnknown : lossWhenSkipping(skipped, prices));
  const lossAfter = (catches: number) => {
    const error =
      state === null ? null : errorAfter(state, { further: catches, turns: meter.turnsPerCatch });
    return error === null ? lossUnknown : lossOf({ location: 0, ...error }, prices);
  };
  const most = Math.max(options.mostCatches, catchesToday + 1);
  const state = stateOfNextFill(meter, options);
  return Array.from({ length: most + 1 }, (_, catches) => {
    const loss = catches === 0 ? lossWithout() : lossAfter(catches);
    const catchingPerHectare = perHectare(catchingCost(catches, prices), prices);
    const total = added(loss.perHectare, catchingPerHectare);
    return {
      catches,
      loss,
      catchingPerHectare,
      totalPerHectare: total,
      totalPerSeason:
        total === null || prices.areaHectares === null ? null : total * prices.areaHectares,
    };
  });
}

function perHectare(money: number | null, { areaPerFillHectares }: Prices): number | null {
  if (money === 0) return 0;
  return money === null || areaPerFillHectares === null ? null : money / areaPerFillHectares;
}

function added(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a + b;
}

function cheapestOf(points: readonly CostPoint[]): Cost["cheapest"] {
  const priced = points.flatMap(({ catches, totalPerHectare, totalPerSeason }) =>
    totalPerHectare === null ? [] : [{ catches, totalPerHectare, totalPerSeason }],
  );
  if (priced.length === 0) return null;
  const least = min(priced.map(({ totalPerHectare }) => totalPerHectare));
  const cheapest = priced.find(({ totalPerHectare }) => totalPerHectare === least);
  const nearly = priced.find(({ totalPerHectare }) => totalPerHectare <= least * (1 + flatness));
  if (cheapest === undefined || nearly === undefined) return null;
  return {
    ...cheapest,
    nearlyAsCheap: nearly.catches,
    comparedWithSkipping: priced[0]?.catches === 0,
  };
}
