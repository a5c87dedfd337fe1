import type { Catch } from "../../data/types.ts";
import { at } from "../../errors/at.ts";
import type { OutsideVariance } from "../../statistics/constant-offset.ts";
import { pooledTotals } from "../catch-scatter.ts";
import { type BorrowingChoices, outsideVotes } from "../lenders.ts";
import {
  type MeterScatter,
  type ScatteringFill,
  scatterFloor,
  seenVariance,
  spreadPriorOf,
} from "../lent-scatter.ts";
import type { Fill, Meter } from "../meters.ts";
import { totalsOf } from "../totals.ts";
import { isUnchecked, levels, outlyingIn } from "./finding.ts";

const fewestByThemselves = 3;

/** How catches are screened and who lends to whom. */
export interface LendingRule {
  readonly divisionKg: number | null;
  readonly borrowing: BorrowingChoices;
}

/**
 * The meters, each fill with the catches that may speak for the catch scatter of others. A catch that fails the backward
 * test of its fill at 1 % may not, and one degree of freedom goes with it. Two passes: each fill screened by its own
 * scatter, then by what others, screened so, lend it. So one bad catch makes neither another look sound nor
 * today's figure less certain, while clean fills lend all but what they should.
 *
 * @param meters  with every catch that the person lets count
 * Source         coverage of today's interval with clean and bad histories: reports/outlier-study.md, section 1
 */
export function screenedForLending(
  meters: readonly Meter[],
  rule: LendingRule,
  level: number = levels.lent,
): readonly Meter[] {
  const once = meters.map((meter) => ({
    ...meter,
    fills: meter.fills.map((fill) => {
      const few = fill.catches.length < fewestByThemselves;
      return lending(fill, few ? [] : outlyingIn(fill, null, level, rule.divisionKg));
    }),
  }));
  const scatters = scattersOf(once, rule, false);
  return once.map((meter, i) => ({
    ...meter,
    fills: meter.fills.map((fill) => {
      const outside = outsideOf(fill, at(scatters, i));
      if (fill.catches.length < 2 || outside === null) return fill;
      return lending(fill, outlyingIn(fill, outside, level, rule.divisionKg));
    }),
  }));
}

/**
 * The scatter that the fills of each meter lend each other, and what the other meters say.
 *
 * @param isTested  whether anybody will ask if the fills of a meter scatter alike
 */
export function scattersOf(
  meters: readonly Pick<Meter, "product" | "fills">[],
  { divisionKg, borrowing }: LendingRule,
  isTested: boolean,
): readonly MeterScatter[] {
  const own = meters.map(({ product, fills }) => ({
    product,
    pooled: pooledTotals(
      fills.map(({ scatterTotals }) => scatterTotals),
      isTested,
    ),
    floor: scatterFloor(fills, divisionKg),
  }));
  const records = own.map(({ product, pooled, floor }) => ({
    product,
    spread: null,
    scatter: seenVariance(pooled.relative, pooled.df, floor),
  }));
  const outside = outsideVotes(records, "scatter", borrowing);
  return own.map(({ pooled, floor }, i) => {
    const { variance, relative, df, fills, homogeneity } = pooled;
    return { variance, relative, df, fills, homogeneity, floor, outside: at(outside, i) };
  });
}

/** What others lend to one fill, at its delivery, as its own estimate has it; null: it speaks for itself. */
export function outsideOf(fill: ScatteringFill, scatter: MeterScatter): OutsideVariance | null {
  const prior = spreadPriorOf(fill, scatter);
  return prior === null ? null : { variance: prior.s0Squared * fill.delivery ** 2, df: prior.nu0 };
}

/** The fill with these catches not speaking for others; one that somebody vouches for does all the same. */
export function lending(fill: Fill, silent: readonly Catch[]): Fill {
  if (silent.length === 0 && fill.notLent.length === 0 && fill.scatterTotals === fill.totals)
    return fill;
  const notLent = fill.catches.filter((row) => silent.includes(row) && isUnchecked(row));
  if (notLent.length === 0) return { ...fill, notLent, scatterTotals: fill.totals };
  const rest = fill.catches.filter((row) => !notLent.includes(row));
  return { ...fill, notLent, scatterTotals: totalsOf(rest) };
}
