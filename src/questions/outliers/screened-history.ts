import { sum } from "simple-statistics";
import type { Catch } from "../../data/types.ts";
import type { Fill } from "../../model/meters.ts";
import { type FillTotals, noTotals, totalsOf } from "../../model/totals.ts";
import { type BartlettTest, bartlettTest } from "../../statistics/bartlett.ts";
import type { OutsideVariance } from "../../statistics/constant-offset.ts";
import { screenGroups } from "../../statistics/grouped-screening.ts";
import type { JudgedPoint } from "../../statistics/predicting-line.ts";

/** The log with the catches that must not speak for the catch scatter of other fills set aside. */
export interface ScreenedHistory {
  /** Each fill with the totals of the catches that may speak for others. */
  readonly kept: ReadonlyMap<Fill, FillTotals>;
  readonly setAside: readonly Catch[];
  readonly before: OutsideVariance | null;
  readonly after: OutsideVariance | null;
  readonly homogeneity: BartlettTest | null;
}

/**
 * p < 0.001 by itself, whatever the size of the log: strict enough that today's false flags stay below 6 % after a clean
 * history of three fills of three, loose enough to win back about half of the power that one bad catch in twenty costs
 * a longer log. Judged by simulation in reports/outlier-study.md, section 1.
 */
const pointLevel = 0.999;
const mostShare = 0.2;
const catchesForTwo = 5;

/** How many catches of a fill may be taken away: two of five or more, else one. */
export function mostOfFill(catches: number): number {
  return catches >= catchesForTwo ? 2 : 1;
}

/** Sets aside, for the pooled scatter only, catches that no fill's scatter explains. */
export function screenHistory(fills: readonly Fill[], divisionKg: number | null): ScreenedHistory {
  const groups = fills.map(({ catches }) => catches.map((row) => judgedPoint(row, divisionKg)));
  const rule = { pointLevel, mostShare, mostOfGroup: mostOfFill };
  const setAside = screenGroups(groups, rule).flatMap(
    ({ group, index }) => fills[group]?.catches[index] ?? [],
  );
  const aside = new Set(setAside);
  const kept = new Map(
    fills.map((fill) => [fill, totalsOf(fill.catches.filter((row) => !aside.has(row)))]),
  );
  const totals = [...kept.values()];
  return {
    kept,
    setAside,
    before: pooled(fills.map((fill) => fill.totals)),
    after: pooled(totals),
    homogeneity: bartlettTest(
      totals.map((one) => ({ sumOfSquares: one.scatterSum, df: dfOf(one) })),
    ),
  };
}

/** Catch scatter that all fills but one lend it; null when they know none. */
export function lentTo(fill: Fill, { kept, after }: ScreenedHistory): OutsideVariance | null {
  const own = kept.get(fill) ?? noTotals;
  const df = (after?.df ?? 0) - dfOf(own);
  if (after === null || df <= 0) return null;
  return { variance: Math.max(0, after.variance * after.df - own.scatterSum) / df, df };
}

/** A catch as a point of its fill's line; the reading error of gross and tare is d²/6. */
export function judgedPoint(row: Catch, divisionKg: number | null): JudgedPoint {
  const division = row.divisionKg ?? divisionKg ?? 0;
  return { x: row.turns, y: row.netKg, knownVariance: division ** 2 / 6 };
}

function pooled(totals: readonly FillTotals[]): OutsideVariance | null {
  const df = sum([0, ...totals.map(dfOf)]);
  const squares = sum([0, ...totals.map(({ scatterSum }) => scatterSum)]);
  return df > 0 ? { variance: squares / df, df } : null;
}

function dfOf({ catches }: FillTotals): number {
  return Math.max(0, catches - 1);
}
