import type { FillPrices } from "../../model/fill-prices.ts";
import type { HistoryStatus } from "../../model/history.ts";
import { stateOfNextFill } from "../../model/known-state.ts";
import { type KnownState, plannedHalfWidth } from "../../model/known-width.ts";
import { newestFill } from "../../model/meters.ts";
import { estimateOf, type MeterModel } from "../../model/model.ts";
import {
  asShown,
  type CatchAim,
  chanceAfter,
  type NumberOfCatches,
} from "../../model/next-catch.ts";
import { lawsOfExpectation, nextFillError, settingOf } from "../../model/rate-error.ts";
import { isFlagged } from "../../model/screening/screen-log.ts";
import {
  type CatchPricing,
  catchesThatPay,
  type WorthOfCatch,
  worthOfNextCatch,
  worthOfSkipping,
} from "../../model/worth-of-catch.ts";
import { chanceBeyond } from "../../statistics/expected-loss.ts";
import type { CatchesNeededOptions, Decider, Knowledge, SkipAdvice } from "./result.ts";

/** With two fills of its own the mean error of a fill left alone has no bound. */
const fewestFillsToSkip = 3;
/** Chance of leaving a tolerance that somebody gave, up to which a fill may go uncaught: that of the usual level. */
const chanceBorne = 0.05;
/** With nothing found against the next fill being one of the same kind. */
const steady: readonly HistoryStatus[] = ["steady", "too few fills"];

/** What money can be asked with, where prices are given and the scatter is not just assumed; null: it cannot. */
export function pricingOf(basis: Knowledge, options: CatchesNeededOptions): CatchPricing | null {
  return options.prices === null || basis.df === 0 || basis.catches >= options.mostCatches
    ? null
    : pricingAt(basis.turnsPerCatch, options.prices, options);
}

/** Whose word counts: that of a tolerance somebody gave, else that of money where it can speak. */
export function deciderOf(
  pricing: CatchPricing | null,
  { toleranceFrom }: CatchesNeededOptions,
): Decider {
  return toleranceFrom === "default" && pricing !== null ? "money" : "tolerance";
}

/** What one catch more of a fill that has catches is worth; null: money cannot be asked. */
export function worthOf(state: KnownState, pricing: CatchPricing | null): WorthOfCatch | null {
  return pricing === null || state.catches === 0 ? null : worthOfNextCatch(state, pricing);
}

/** Further catches until another no longer pays, at least one; what they reach is told by the tolerance. */
export function numberThatPays(
  state: KnownState,
  pricing: CatchPricing,
  aim: CatchAim,
): NumberOfCatches | null {
  const { turns, mostCatches } = pricing;
  const further = (catchesThatPay(state, pricing) ?? mostCatches) - state.catches;
  const plan = { further, turns };
  const [typically, chance] = [
    plannedHalfWidth(state, plan, asShown(aim)),
    chanceAfter(state, plan, aim),
  ];
  return typically === null || chance === null
    ? null
    : { ...plan, reaches: aim.tolerance, chance, typically };
}

/**
 * Whether the fill to come may go uncaught. By money where it decides: leaving it costs no more than the best number of
 * catches. By the tolerance: it is left with a chance of at most 5 %, known from six fills or more.
 *
 * @returns null: fewer than three fills of one level, a history that is not steady, a newest fill with a catch in doubt,
 *          or nothing known of how fills differ; rates set by label or law, which no chance lets be broken
 */
export function skipOf(meter: MeterModel | null, options: CatchesNeededOptions): SkipAdvice | null {
  if (meter === null || options.lawfulRates === "given") return null;
  if (!maySpeakForNext(meter, options)) return null;
  const setToKgPerTurn = settingOf(options.assumed, meter).nextKgPerTurn;
  const error = nextFillError(meter.across, setToKgPerTurn);
  if (error === null) return null;
  const { fills } = meter.across;
  const chanceOff =
    error.leastChance === null ? chanceBeyond(error.law, options.tolerance).either : null;
  const state = stateOfNextFill(meter, options);
  const worth =
    options.prices === null || state === null
      ? null
      : worthOfSkipping(
          lawsOfExpectation(error),
          state,
          pricingAt(meter.turnsPerCatch, options.prices, options),
        );
  const decides = options.toleranceFrom === "default" && worth !== null ? "money" : "tolerance";
  const byTolerance = chanceOff !== null && chanceOff <= chanceBorne;
  return {
    decides,
    skips: decides === "money" && worth !== null ? worth.pays : byTolerance,
    setToKgPerTurn,
    fills,
    chanceOff,
    chanceBorne,
    worth,
  };
}

function pricingAt(
  turns: number,
  prices: FillPrices,
  { mostCatches, settingError }: CatchesNeededOptions,
): CatchPricing {
  return { prices, turns, mostCatches, settingError };
}

function maySpeakForNext(meter: MeterModel, options: CatchesNeededOptions): boolean {
  const { across, history, screening } = meter;
  if (across.fills < fewestFillsToSkip || !steady.includes(history.status)) return false;
  const newest = newestFill(meter);
  return !isFlagged(screening, newest) && estimateOf(meter, newest, options).disagree === null;
}
