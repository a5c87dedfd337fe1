import type { WeightedLaw } from "../statistics/without-scatter.ts";
import { expectedLoss, expectedLossOver, type FillPrices } from "./fill-prices.ts";
import { dfAfter, type KnownState } from "./known-width.ts";
import { errorAfter } from "./next-catch.ts";

/** What one catch more of a fill costs and saves, money. */
export interface WorthOfCatch {
  readonly costs: number;
  /** Expected; null: without bound, because so little is known of the scatter. */
  readonly saves: number | null;
  readonly pays: boolean;
  /**
   * Catches of the fill from which on a further one no longer pays, if the scatter stays as it is known now; null: one
   * pays as long as the fill may have one.
   */
  readonly until: number | null;
}

/** What leaving a fill uncaught costs against catching it, money. */
export interface WorthOfSkipping {
  /** Expected cost of the rate error left alone. */
  readonly skipping: number;
  /** Least expected cost with catches, their own included, and their number. */
  readonly catching: { readonly catches: number; readonly costs: number };
  readonly pays: boolean;
}

/** What catches are priced with. */
export interface CatchPricing {
  readonly prices: FillPrices;
  /** Of each catch. */
  readonly turns: number;
  /** Catches of the fill after which none is taken. */
  readonly mostCatches: number;
  /** Rate error that the setting makes by itself, because the drive has steps; 0: none. */
  readonly settingError: number;
}

/**
 * Does one catch more pay? It saves the difference of the expected losses with and without it, C·κ(ν)·(u_N − u_{N+1})
 * where the loss is linear and the setting without error of its own: C money per unit of relative error, u the standard
 * error of the delivery, κ(ν) = E|t(ν)| on the degrees of freedom of now. What the catch to come will say of the scatter is
 * averaged over by that exactly. With ν <= 1 the mean error has no bound, and the catch pays.
 *
 * @returns null while no scatter is known, or where no further catch is taken
 * Source   DeGroot, Optimal Statistical Decisions (value of one more observation); mean cost of stopping by it:
 *          reports/money-study.md
 */
export function worthOfNextCatch(state: KnownState, pricing: CatchPricing): WorthOfCatch | null {
  const saves = savedAfter(state, 0, pricing);
  if (saves === null || state.catches >= pricing.mostCatches) return null;
  return {
    costs: pricing.prices.perCatch,
    saves: Number.isFinite(saves) ? saves : null,
    pays: saves > pricing.prices.perCatch,
    until: catchesThatPay(state, pricing),
  };
}

/**
 * Catches of a fill from which on a further one no longer pays, if the scatter stays as it is known now; a fill has one
 * in any case.
 *
 * @returns null: one pays as long as the fill may have one
 */
export function catchesThatPay(state: KnownState, pricing: CatchPricing): number | null {
  const first = state.catches === 0 ? 1 : 0;
  for (let further = first; state.catches + further < pricing.mostCatches; further++) {
    const saves = savedAfter(state, further, pricing);
    if (saves !== null && saves <= pricing.prices.perCatch) return state.catches + further;
  }
  return null;
}

/**
 * Does leaving the fill to come uncaught cost less than the best number of catches? The error left alone has the law of
 * the next fill, that after m catches is centred with the standard error they leave, m from 1 to the most.
 *
 * @param laws   of the rate error of the fill left alone, and how much each counts
 * @param state  of the fill before its first catch
 * @returns      null where either has no bound
 */
export function worthOfSkipping(
  laws: readonly WeightedLaw[],
  state: KnownState,
  { prices, turns, mostCatches }: CatchPricing,
): WorthOfSkipping | null {
  const { hectares, perCatch, toSetUp, response } = prices;
  const left = expectedLossOver(laws, response);
  const options = Array.from({ length: mostCatches }, (_, i) => i + 1).flatMap((catches) => {
    const error = errorAfter(state, { further: catches, turns });
    const loss = error === null ? null : expectedLoss({ location: 0, ...error }, response);
    return loss === null
      ? []
      : [{ catches, costs: hectares * loss + toSetUp + catches * perCatch }];
  });
  const [first, ...others] = options;
  if (left === null || first === undefined) return null;
  const catching = others.reduce((best, one) => (one.costs < best.costs ? one : best), first);
  const skipping = hectares * left;
  return { skipping, catching, pays: skipping <= catching.costs };
}

/** What one catch saves after so many further ones, the scatter as it is now; Infinity without bound; null: not known. */
function savedAfter(state: KnownState, further: number, pricing: CatchPricing): number | null {
  const { prices, turns, settingError } = pricing;
  const df = dfAfter(state, { further, turns });
  const now = errorAfter(state, { further, turns });
  const then = errorAfter(state, { further: further + 1, turns });
  if (df === null || now === null || then === null) return null;
  const lossOf = ({ scale }: { readonly scale: number }) =>
    expectedLoss({ location: settingError, scale, df }, prices.response);
  const [before, after] = [lossOf(now), lossOf(then)];
  if (before === null || after === null) return Number.POSITIVE_INFINITY;
  return prices.hectares * (before - after);
}
