import type { Catch } from "../../data/types.ts";
import type { OutsideVariance } from "../../statistics/constant-offset.ts";
import {
  type PooledScatter,
  pooledScatter,
  type ScatteringFill,
  scatterLentTo,
} from "../catch-scatter.ts";
import type { Fill } from "../meters.ts";
import { totalsOf } from "../totals.ts";
import { isUnchecked, levels, outlyingIn } from "./finding.ts";

const fewestByThemselves = 3;

/**
 * The fills of a meter, each with the catches that may speak for the catch scatter of others. A catch that fails the
 * backward test of its fill at 1 % may not, and one degree of freedom goes with it. Two passes: each fill screened by its
 * own scatter, then by the screened scatter of the other fills. So one bad catch makes neither another look sound nor
 * today's figure less certain, while clean fills lend all but what they should.
 *
 * @param fills  with every catch that the person lets count
 * Source        coverage of today's interval with clean and bad histories: reports/outlier-study.md, section 1
 */
export function screenedForLending(
  fills: readonly Fill[],
  divisionKg: number | null,
  level: number = levels.lent,
): readonly Fill[] {
  const once = fills.map((fill) => {
    const few = fill.catches.length < fewestByThemselves;
    return lending(fill, few ? [] : outlyingIn(fill, null, level, divisionKg));
  });
  const pooled = lentScatter(once);
  return once.map((fill) => {
    const outside = outsideAtAnyRate(fill, pooled);
    if (fill.catches.length < 2 || outside === null) return fill;
    return lending(fill, outlyingIn(fill, outside, level, divisionKg));
  });
}

/** The scatter that the fills of a meter lend each other. */
export function lentScatter(fills: readonly Pick<Fill, "scatterTotals">[]): PooledScatter {
  return pooledScatter(fills.map(({ scatterTotals }) => ({ totals: scatterTotals })));
}

/** What other fills lend to one, at its delivery, as its own estimate has it; null: it speaks for itself. */
export function outsideOf(fill: ScatteringFill, pooled: PooledScatter): OutsideVariance | null {
  const lent = scatterLentTo(fill, pooled);
  return lent?.givenUp ? null : atDeliveryOf(fill, lent);
}

/** The same even where fills seem to scatter differently: until bad catches are found, that is what they look like. */
export function outsideAtAnyRate(
  fill: ScatteringFill,
  pooled: PooledScatter,
): OutsideVariance | null {
  return atDeliveryOf(fill, scatterLentTo(fill, pooled));
}

function atDeliveryOf(
  { delivery }: ScatteringFill,
  lent: ReturnType<typeof scatterLentTo>,
): OutsideVariance | null {
  return lent === null ? null : { variance: lent.relative * delivery ** 2, df: lent.df };
}

/** The fill with these catches not speaking for others; one that somebody vouches for does all the same. */
export function lending(fill: Fill, silent: readonly Catch[]): Fill {
  const notLent = fill.catches.filter((row) => silent.includes(row) && isUnchecked(row));
  if (notLent.length === 0) return { ...fill, notLent, scatterTotals: fill.totals };
  const rest = fill.catches.filter((row) => !notLent.includes(row));
  return { ...fill, notLent, scatterTotals: totalsOf(rest) };
}
