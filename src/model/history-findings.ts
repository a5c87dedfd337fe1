import { at, lastOf } from "../errors/at.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import type { Estimate } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { known } from "../results/options.ts";
import { changePointCritical, fewestToSplit } from "../statistics/change-point.ts";
import { newestLimit } from "../statistics/shift-evidence-limit.ts";
import type { SeriesReplay } from "../statistics/shift-replay.ts";
import type { SpreadPrior } from "../statistics/spread-prior.ts";
import { spreadWithin } from "../statistics/spread-within.ts";
import { lineAt, weightedLine } from "../statistics/straight-line.ts";
import { mean, median } from "../statistics/summary.ts";
import { deliveriesOf, type Fill } from "./meters.ts";
import { tEstimate } from "./t-estimate.ts";

/** A fill by its number, with its date. */
export interface FillPlace {
  readonly fill: FillName;
  readonly takenAt: string | null;
}

/** A change of level that was found. */
export interface FoundChange {
  /** First fill of the new level. */
  readonly since: FillPlace;
  /** Season that this fill begins; left out: it begins none, or the log has one. */
  readonly season?: string;
  /** Fill with which it was found. */
  readonly foundWith: FillName;
  readonly fillsBefore: number;
  readonly fillsSince: number;
  /** Mean delivery of the stretch before and of the one since, kg/turn. */
  readonly before: number;
  readonly after: number;
  /**
   * Change relative to the mean before; interval about "shift": ± the critical value of the largest |t| over the splits,
   * not of t, because the place was looked for, times the spread within all stretches. Held in 96–99 % of simulated seasons
   * in which a change was found, with a lent spread too (reports/drift-study.md, table 2).
   */
  readonly size: Estimate<"fraction">;
  /** Averaged evidence with which it was found, so much to 1, and the limit for it; null: a differing fill stayed so. */
  readonly evidence: number | null;
  readonly limit: number | null;
  /** p of the first fill of the new level when it came; null: it did not differ by itself. */
  readonly pValue: number | null;
}

/** The newest fill stands apart from those before it, and no later one tells yet what that means. */
export interface DifferingFill extends FillPlace {
  readonly earlierFills: number;
  /** Mean delivery of the earlier fills of its stretch, kg/turn. */
  readonly earlier: number;
  /** Distance from it, relative to it; interval about "difference". */
  readonly difference: Estimate<"fraction">;
  readonly pValue: number;
  /** p at which a fill differs. */
  readonly limit: number;
  readonly catches: number;
  /** Median number of catches of the earlier fills. */
  readonly usualCatches: number;
  /** Catches with which it is taken as it stands, if none of them is flagged. */
  readonly catchesToConfirm: number;
  /** Whether the fill was caught so much more than usual, without a flag, that it counts as it stands. */
  readonly confirmed: boolean;
}

/** Each fill delivers more, or less, than the one before. */
export interface TrendingFills {
  readonly from: FillPlace;
  readonly fills: number;
  /** Relative to the mean of the fills; interval about "trend". */
  readonly perFill: Estimate<"fraction/fill">;
  /** Ends of the fitted line, kg/turn. */
  readonly line: { readonly start: number; readonly end: number };
  readonly evidence: number;
  readonly limit: number;
}

/** A fill that differed and stayed alone. */
export interface ApartFill extends FillPlace {
  /** Distance from the mean of the earlier fills of its stretch, relative to it. */
  readonly difference: number;
  /** The fill that was back. */
  readonly backWith: FillName;
}

/** A replay with the fills it is about. */
export interface ReplayedFills {
  readonly fills: readonly Fill[];
  readonly replay: SeriesReplay;
  readonly level: number;
  /** Of the relative spread, as the replay had it. */
  readonly prior: SpreadPrior;
}

/** Changes of level that were found, oldest first. */
export function foundChanges({
  fills,
  replay,
  level,
  prior,
}: ReplayedFills): readonly FoundChange[] {
  const stretches = replay.stretches.map(({ places }) => places.map((i) => at(fills, i)));
  return replay.stretches.flatMap(({ begins, foundAt }, i) => {
    if (begins !== "moved" || foundAt === null) return [];
    const [earlier, later] = [at(stretches, i - 1), at(stretches, i)];
    const { nu0, s0Squared } = prior;
    const atLevel = { nu0, s0Squared: s0Squared * mean(deliveriesOf(earlier)) ** 2 };
    const spread = spreadWithin(stretches.map(deliveriesOf), atLevel);
    const first = at(later, 0);
    const { lasting } = at(replay.steps, foundAt);
    const own = at(replay.steps, fills.indexOf(first));
    return [
      {
        since: placeOf(first),
        ...known({ season: seasonBegunBy(first, fills) }),
        foundWith: at(fills, foundAt).fill,
        fillsBefore: earlier.length,
        fillsSince: later.length,
        before: mean(deliveriesOf(earlier)),
        after: mean(deliveriesOf(later)),
        size: sizeOf(earlier, later, spread, level),
        evidence: lasting?.evidence ?? null,
        limit: lasting?.limit ?? null,
        pValue: own.outcome === "differs" ? (own.newest?.pValue ?? null) : null,
      },
    ];
  });
}

/** null: the fill is not the meter's first of a season, or there is no season before. */
function seasonBegunBy(fill: Fill, fills: readonly Fill[]): string | null {
  const before = fills[fills.indexOf(fill) - 1];
  return before === undefined || before.season === fill.season ? null : fill.season;
}

function sizeOf(
  earlier: readonly Fill[],
  later: readonly Fill[],
  { variance, df }: ReturnType<typeof spreadWithin>,
  level: number,
): Estimate<"fraction"> {
  const before = mean(deliveriesOf(earlier));
  const value = mean(deliveriesOf(later)) / before - 1;
  const found = tEstimate(
    value,
    "fraction",
    variance === null
      ? null
      : Math.sqrt(variance * (1 / earlier.length + 1 / later.length)) / before,
    df,
    level,
    "shift",
  );
  const fills = earlier.length + later.length;
  if (found.interval === null || found.standardError === null || fills < fewestToSplit)
    return found;
  const half =
    Math.max(changePointCritical(level, fills), studentTQuantile((1 + level) / 2, df)) *
    found.standardError;
  return { ...found, interval: { ...found.interval, lower: value - half, upper: value + half } };
}

const timesUsualCatches = 2;
const fewestToConfirm = 4;

/** The newest fill where it differs; null: it does not, or the one before was settled with it. */
export function differingFill(
  { fills, replay, level }: ReplayedFills,
  flagged: (fill: Fill) => boolean,
): DifferingFill | null {
  const [newest, step] = [lastOf(fills), lastOf(replay.steps)];
  if (step.outcome !== "differs" || step.newest === null) return null;
  const stretch = lastOf(replay.stretches).places.map((i) => at(fills, i));
  const { meanBefore, difference, standardError, df, pValue } = step.newest;
  const catches = newest.totals.catches;
  const usualCatches = median(fills.slice(0, -1).map(({ totals }) => totals.catches));
  const catchesToConfirm = Math.ceil(Math.max(fewestToConfirm, timesUsualCatches * usualCatches));
  return {
    ...placeOf(newest),
    earlierFills: stretch.length - 1,
    earlier: mean(deliveriesOf(stretch.slice(0, -1))),
    difference: tEstimate(
      difference / meanBefore,
      "fraction",
      standardError / meanBefore,
      df,
      level,
      "difference",
    ),
    pValue,
    limit: newestLimit,
    catches,
    usualCatches,
    catchesToConfirm,
    confirmed: catches >= catchesToConfirm && !flagged(newest),
  };
}

/** The rise or fall found with the newest fill; null: none was. */
export function trendingFills({ fills, replay, level }: ReplayedFills): TrendingFills | null {
  const step = lastOf(replay.steps);
  if (step.outcome !== "trending" || step.lasting === null) return null;
  const stretch = lastOf(replay.stretches).places.map((i) => at(fills, i));
  const center = mean(deliveriesOf(stretch));
  const line = weightedLine(
    stretch.map((_, i) => i + 1),
    deliveriesOf(stretch).map((delivery) => delivery / center),
  );
  return {
    from: placeOf(at(stretch, 0)),
    fills: stretch.length,
    perFill: tEstimate(
      line.slope,
      "fraction/fill",
      line.slopeStandardError,
      line.df,
      level,
      "trend",
    ),
    line: {
      start: center * lineAt(line, 1),
      end: center * lineAt(line, stretch.length),
    },
    evidence: step.lasting.evidence,
    limit: step.lasting.limit,
  };
}

/** Fills that stood apart, oldest first. */
export function apartFills({ fills, replay }: ReplayedFills): readonly ApartFill[] {
  return replay.apart.flatMap(({ place, settledAt }) => {
    const { newest } = at(replay.steps, place);
    if (newest === null) return [];
    const difference = newest.difference / newest.meanBefore;
    return [{ ...placeOf(at(fills, place)), difference, backWith: at(fills, settledAt).fill }];
  });
}

function placeOf({ fill, takenAt }: Fill): FillPlace {
  return { fill, takenAt };
}
