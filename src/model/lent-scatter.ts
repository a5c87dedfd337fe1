import { fUpperTail } from "../numeric/distributions/f.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { defaults } from "../results/defaults.ts";
import type { LentBy } from "../results/lent-by.ts";
import type { SpreadPrior } from "../statistics/spread-prior.ts";
import {
  type AgainstVote,
  type EstimatedVariance,
  priorOfVote,
  type SpreadVote,
  typicalOfVote,
  unlikeVote,
  voteOfOwnGroups,
  votesTogether,
} from "../statistics/spread-votes.ts";
import { mean } from "../statistics/summary.ts";
import { dfOf, type PooledScatter, pooledScatter, relativeSquares } from "./catch-scatter.ts";
import { divisionsOf } from "./fill-sums.ts";
import type { OutsideVote } from "./lenders.ts";
import type { Fill } from "./meters.ts";
import { readingVariance } from "./reading.ts";
import type { FillTotals } from "./totals.ts";

/** The scatter a fill's interval rests on, and who spoke for it. */
export interface ChosenScatter {
  readonly source: "own" | "lent" | "none";
  /** kg²/turn. */
  readonly variance: number | null;
  readonly df: number;
  readonly lentBy: LentBy;
}

/** What a meter's fills lend each other, and what other meters add to it. */
export interface MeterScatter extends PooledScatter {
  /** Of other meters, or of an assumption; null: none. */
  readonly outside: OutsideVote | null;
  /** The least relative variance that reading the scale leaves to be seen, in turns; null: no division is known. */
  readonly floor: number | null;
}

/** Pooled scatter with nobody outside the meter to lend. */
export function byItself(pooled: PooledScatter, floor: number | null = null): MeterScatter {
  return { ...pooled, outside: null, floor };
}

export const nothingLent: MeterScatter = byItself(pooledScatter([]));

/**
 * The least relative variance of a one-turn catch that reading the scale lets anybody see, in turns: d²/(6·t·b²), mean over
 * the fills. Catches that agree to the step do not scatter less.
 *
 * @param divisionKg  of the scale for catches that name none; null: unknown, and so is what is asked
 */
export function scatterFloor(
  fills: readonly Pick<Fill, "catches" | "totals" | "delivery" | "sums">[],
  divisionKg: number | null,
): number | null {
  const floors: number[] = [];
  for (const fill of fills) {
    const { totals, delivery } = fill;
    const division = meanDivision(fill, divisionKg);
    if (division === null) continue;
    const turns = totals.turns / totals.catches;
    floors.push(readingVariance(division) / (turns * delivery ** 2));
  }
  return floors.length === 0 ? null : mean(floors);
}

/** Mean of the divisions of a fill's catches, kg; null where one of them is not known. */
function meanDivision(
  { catches, sums }: Pick<Fill, "catches" | "sums">,
  divisionKg: number | null,
): number | null {
  if (sums !== undefined) {
    const divisions = divisionsOf(sums, divisionKg);
    return divisions === null ? null : divisions / sums.catches;
  }
  // As it mostly is; the mean of equal ones is each of them.
  if (catches.length > 0 && catches.every((row) => row.divisionKg == null)) return divisionKg;
  const divisions = catches.map((row) => row.divisionKg ?? divisionKg);
  const known = divisions.filter((division) => division !== null);
  return known.length < divisions.length || known.length === 0 ? null : mean(known);
}

/** A variance as a source of a vote: not below what reading the scale hides; null where nothing is known of either. */
export function seenVariance(
  variance: number | null,
  df: number,
  floor: number | null,
): EstimatedVariance | null {
  if (variance === null || df <= 0) return null;
  const least = Math.max(variance, floor ?? 0);
  return isDust(Math.sqrt(least), 1) ? null : { variance: least, df };
}

/** What of a fill its scatter is chosen by. */
export type ScatteringFill = Pick<Fill, "totals" | "scatterTotals" | "delivery">;

/** What is known of a fill's catch scatter before its own catches: relative variance of a one-turn catch, in turns. */
export interface ScatterPrior extends SpreadPrior {
  readonly lentBy: LentBy;
  /** Standard deviation in the middle of what is known, of a one-turn catch. */
  readonly typical: number;
}

/**
 * What others lend to one fill: the meter's other fills, which are much alike, and the other meters, which are less. Both
 * speak for the logarithm of the variance, each the more the better it is known.
 *
 * @param scatter  of all the meter's fills, each with the catches that may speak for others
 * @returns        null when nobody can tell
 * Source          Smyth 2004 (moderated variances); coverage of what comes of it: reports/lending-study.md
 */
export function scatterPrior(
  fill: Pick<ScatteringFill, "scatterTotals">,
  scatter: MeterScatter,
): ScatterPrior | null {
  const { outside } = scatter;
  const { vote, fills } = voteOfOthersOn(fill, scatter);
  if (vote === null) return null;
  const { nu0, s0Squared } = priorOfVote(vote);
  return {
    nu0,
    s0Squared,
    typical: typicalOfVote(vote),
    lentBy: {
      fills,
      meters: outside?.meters ?? 0,
      ...(outside?.library === undefined ? {} : { library: outside.library }),
      assumed: outside?.from === "assumption",
    },
  };
}

/** The same without who says it: screening a log asks for every fill, three times over. */
export function spreadPriorOf(
  fill: Pick<ScatteringFill, "scatterTotals">,
  scatter: MeterScatter,
): SpreadPrior | null {
  const { vote } = voteOfOthersOn(fill, scatter);
  return vote === null ? null : priorOfVote(vote);
}

/** What all others together say of a fill's scatter, and how many of them are fills of its own meter. */
function voteOfOthersOn(
  { scatterTotals }: Pick<ScatteringFill, "scatterTotals">,
  scatter: MeterScatter,
): { readonly vote: SpreadVote | null; readonly fills: number } {
  const { outside } = scatter;
  const others = otherFills(scatterTotals, scatter);
  const votes: SpreadVote[] = [];
  if (others !== null)
    votes.push(voteOfOwnGroups(others.seen, others.fills, defaults.betweenFills));
  if (outside !== null) votes.push(outside);
  return { vote: votesTogether(votes), fills: others?.fills ?? 0 };
}

/** The pooled scatter without what one fill put into it. */
function otherFills(
  put: FillTotals,
  { relative, df, fills, floor }: MeterScatter,
): { readonly seen: EstimatedVariance; readonly fills: number } | null {
  const putDf = dfOf(put);
  if (relative === null || df - putDf <= 0) return null;
  const squares = relative * df - (putDf > 0 ? relativeSquares(put) : 0);
  const seen = seenVariance(Math.max(0, squares) / (df - putDf), df - putDf, floor);
  return seen === null ? null : { seen, fills: fills - (putDf > 0 ? 1 : 0) };
}

const lentByNobody: LentBy = { fills: 0, meters: 0, assumed: false };

/**
 * Which scatter speaks for one fill: its own catches together with what others lend, or its own alone where nobody does;
 * none when a single catch stands alone.
 *
 * @returns  variance (ν0·s0²·b² + SS)/(ν0 + n − 1) in kg²/turn, ν0 and s0² being lent and b the delivery
 */
export function chooseScatter(fill: ScatteringFill, scatter: MeterScatter): ChosenScatter {
  const { totals, delivery } = fill;
  const ownDf = dfOf(totals);
  const prior = scatterPrior(fill, scatter);
  if (prior !== null) {
    const df = prior.nu0 + ownDf;
    const squares = prior.nu0 * prior.s0Squared * delivery ** 2 + totals.scatterSum;
    return { source: "lent", variance: squares / df, df, lentBy: prior.lentBy };
  }
  return ownDf > 0
    ? { source: "own", variance: totals.scatterSum / ownDf, df: ownDf, lentBy: lentByNobody }
    : noScatter;
}

/** Nothing is known of the scatter. */
export const noScatter: ChosenScatter = {
  source: "none",
  variance: null,
  df: 0,
  lentBy: lentByNobody,
};

/**
 * Chance that catches of a fill scatter so much, or more, if they are like those that lend to it: the upper tail of
 * F(n − 1, ν0) at q/s0²; null where nothing is lent, or there is one catch.
 */
export function scatterExceedance(fill: ScatteringFill, scatter: MeterScatter): number | null {
  const prior = scatterPrior(fill, scatter);
  const df = dfOf(fill.totals);
  if (prior === null || df === 0) return null;
  return fUpperTail(relativeSquares(fill.totals) / df / prior.s0Squared, df, prior.nu0);
}

/** Beyond this tail a meter is said to be unlike the others. It switches nothing: where it says so, the lent band still holds. */
export const unlikeLimit = 0.05;

/** Whether a meter's catches scatter unlike those of the other meters; null: they do not, or nobody else tells. */
export function scatterAgainstOthers({
  relative,
  df,
  floor,
  outside,
}: MeterScatter): AgainstVote | null {
  const own = seenVariance(relative, df, floor);
  return own === null || outside?.from !== "other bins"
    ? null
    : unlikeVote(own, outside, unlikeLimit);
}
