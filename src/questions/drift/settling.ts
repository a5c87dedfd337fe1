import { at } from "../../errors/at.ts";
import type { Fill } from "../../model/meters.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import { holm } from "../../statistics/multiplicity.ts";
import {
  informative,
  type PooledSlope,
  pooledSlope,
  type SlopeGroup,
} from "../../statistics/pooled-slope.ts";
import { mean } from "../../statistics/summary.ts";

/** Does the delivery change while a fill is emptied? One way of asking. */
export interface SettlingTest {
  /** Within the only fill, within all fills taken together, or from fill to fill. */
  readonly scope: "this fill" | "within fills" | "between fills";
  readonly against: "catch order" | "bin level";
  /** Relative change of the delivery from one catch to the next; interval about "trend". Null against bin level. */
  readonly perCatch: Estimate<"fraction/catch"> | null;
  /** Relative change from an empty to a full bin; interval about "trend". Null against catch order. */
  readonly emptyToFull: Estimate<"fraction"> | null;
  readonly statistic: number;
  readonly df: number;
  readonly pValue: number;
  /** Holm's, beside the other settling tests of this meter. */
  readonly adjustedPValue: number;
  readonly fills: number;
  /** Catches, or fills where the scope is "between fills". */
  readonly points: number;
}

type Against = SettlingTest["against"];
type Scope = SettlingTest["scope"];

interface Asked {
  readonly scope: Scope;
  readonly against: Against;
  readonly groups: readonly SlopeGroup[];
}

const fewestDf = 3;
const percent = 100;

/**
 * Settling: slope of the delivery of single catches, m/t weighted by turns, on catch order or on bin level, t on its
 * residual degrees of freedom. Within fills every fill keeps its own level, so differences between fills do not matter.
 *
 * The line is fitted to the catches themselves, not to residuals about the fill's delivery: with unequal turns those hide
 * part of the slope (reports/drift-study.md, table 9).
 *
 * @param fills  all of the meter, oldest first
 * @returns      in this order, each only where it can be tested with 3 or more degrees of freedom: on catch order (a lone
 *               fill takes 5 catches), on bin level where it changes within fills, fill to fill on bin level
 * Assumes       scatter variance in proportion to turns. Size checked by simulation in reports/drift-study.md
 */
export function settlingTests(fills: readonly Fill[], level: number): readonly SettlingTest[] {
  const tests = questionsFor(fills).flatMap((asked) => {
    const slope = pooledSlope(asked.groups);
    return slope === null || slope.df < fewestDf ? [] : [{ asked, slope }];
  });
  const adjusted = holm(tests.map(({ slope }) => slope.pValue));
  return tests.map(({ asked, slope }, i) => settlingTest(asked, slope, at(adjusted, i), level));
}

function questionsFor(fills: readonly Fill[]): readonly Asked[] {
  const within: Scope = fills.length > 1 ? "within fills" : "this fill";
  const inOrder: Asked = {
    scope: within,
    against: "catch order",
    groups: fills.map(byCatchOrder),
  };
  const levelsKnown = fills.some(({ catches }) =>
    catches.some(({ binLevelPercent }) => binLevelPercent !== null),
  );
  if (!levelsKnown) return [inOrder];
  return [
    inOrder,
    { scope: within, against: "bin level", groups: fills.map(byBinLevel) },
    { scope: "between fills", against: "bin level", groups: [acrossBinLevels(fills)] },
  ];
}

function byCatchOrder({ catches, delivery }: Fill): SlopeGroup {
  return {
    x: catches.map((row) => row.catch),
    y: catches.map(({ netKg, turns }) => netKg / turns / delivery),
    weights: catches.map(({ turns }) => turns),
  };
}

function byBinLevel(fill: Fill): SlopeGroup {
  const catches = fill.catches.filter(({ binLevelPercent }) => binLevelPercent !== null);
  return {
    ...byCatchOrder({ ...fill, catches }),
    x: catches.map(({ binLevelPercent }) => (binLevelPercent ?? 0) / percent),
  };
}

/** One point a fill: its delivery, relative to the mean of the fills, at the mean level of its catches. */
function acrossBinLevels(fills: readonly Fill[]): SlopeGroup {
  const known = fills.flatMap(({ catches, delivery }) => {
    const levels = catches.flatMap(({ binLevelPercent }) => binLevelPercent ?? []);
    return levels.length < catches.length ? [] : [{ level: mean(levels) / percent, delivery }];
  });
  if (known.length === 0) return { x: [], y: [], weights: [] };
  const center = mean(known.map(({ delivery }) => delivery));
  return {
    x: known.map((fill) => fill.level),
    y: known.map(({ delivery }) => delivery / center),
    weights: known.map(() => 1),
  };
}

function settlingTest(
  { scope, against, groups }: Asked,
  { slope, standardError, statistic, df, pValue }: PooledSlope,
  adjustedPValue: number,
  level: number,
): SettlingTest {
  const estimate = <U extends "fraction/catch" | "fraction">(unit: U) =>
    tEstimate(slope, unit, standardError, df, level, "trend");
  const used = informative(groups);
  const points = used.reduce((sum, { x }) => sum + x.length, 0);
  return {
    scope,
    against,
    perCatch: against === "catch order" ? estimate("fraction/catch") : null,
    emptyToFull: against === "bin level" ? estimate("fraction") : null,
    statistic,
    df,
    pValue,
    adjustedPValue,
    fills: scope === "between fills" ? points : used.length,
    points,
  };
}
