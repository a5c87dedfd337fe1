import { at } from "../errors/at.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import {
  fewestForLasting,
  type LastingShift,
  lastingShift,
  type NewestValue,
  newestValue,
  shiftEvidence,
} from "./shift-evidence.ts";
import { lastingShiftLimit, newestLimit } from "./shift-evidence-limit.ts";
import { noPrior, type SpreadPrior } from "./spread-prior.ts";
import { spreadWithin } from "./spread-within.ts";
import { mean } from "./summary.ts";

/**
 * too few: fewer than 4 values since the last change, and the newest does not stand apart · steady · differs: the newest
 * stands apart, which the next one settles · moved: the level changed, a new stretch began · trending: rising or falling.
 */
export type SeriesOutcome = "too few" | "steady" | "differs" | "moved" | "trending";

/** What was found when a value came. */
export interface SeriesStep {
  readonly outcome: SeriesOutcome;
  /** What the value before, which differed, turned out to be with this one; null: none was pending. */
  readonly settled: "stood apart" | "moved" | null;
  /** Place of the first value of the stretch that the next value will be judged by. */
  readonly stretchFrom: number;
  /** Null: could not be asked, or a change was settled first. */
  readonly newest: NewestValue | null;
  readonly lasting: (LastingShift & { readonly limit: number }) | null;
}

/** Values of one level, by place; those that stood apart are not among them. */
export interface SeriesStretch {
  readonly places: readonly number[];
  /**
   * What began it: the first value of the series; a change that was found; a place that the caller named; or it is one
   * value alone that stood apart when such a place came, so that nothing settled it.
   */
  readonly begins: "series" | "moved" | "afresh" | "unsettled";
  /** Place of the value with which the change was found; null: nothing was found there. */
  readonly foundAt: number | null;
}

export interface SeriesReplay {
  /** One for every value. */
  readonly steps: readonly SeriesStep[];
  /** Oldest first; the last is the one in force. Empty without values. */
  readonly stretches: readonly SeriesStretch[];
  /** Values that stood apart, and the place of the value that showed it. */
  readonly apart: readonly { readonly place: number; readonly settledAt: number }[];
}

/** Above this p the value after a differing one belongs with those before it. */
const settlingLimit = 0.05;
/** Fewest values in which a rise is told from a step. */
const fewestForTrend = 5;

/** Where the replay stands; every step makes a new one. */
interface State {
  readonly stretch: readonly number[];
  readonly begins: SeriesStretch["begins"];
  readonly foundAt: number | null;
  /** What the closed stretches say of the relative spread. */
  readonly prior: SpreadPrior;
  /** Whether the last value of the stretch waits to be settled. */
  readonly pending: boolean;
  readonly closed: readonly SeriesStretch[];
  readonly apart: SeriesReplay["apart"];
}

type Judged = Omit<SeriesStep, "stretchFrom">;

/**
 * Did a series shift, drift, or throw up an odd value? Asked after every value, as if the later ones were not known, so
 * that the replay of a prefix is the beginning of the replay.
 *
 * After each value: a lasting shift (averaged evidence at `lastingShiftLimit`) closes the stretch at its best split, or is
 * called trending when a straight line explains more; else the newest value differs at p ≤ .002, and the value after it
 * settles whether it stood apart (p > .05 against those before: left out) or the level moved with it. Closed stretches
 * join the prior of the spread. Everything is relative to the mean of the stretch, because spread grows with the level.
 *
 * @param values above 0, in time order, one per independent unit: fills, never catches
 * @param afresh places from which the level is known to be a new one
 * @param prior  what is known of the relative spread beforehand; default nothing
 * @throws NumericalError when a value is not finite
 * Assumes near-normal values of one relative spread. A steady series is called moved, trending or differing within 12
 *   values in 1 of 20; values alike when close in time raise that: reports/drift-study.md
 */
export function replayShifts(
  values: readonly number[],
  afresh: readonly number[] = [],
  prior: SpreadPrior = noPrior,
): SeriesReplay {
  let state: State = {
    stretch: [],
    begins: "series",
    foundAt: null,
    prior,
    pending: false,
    closed: [],
    apart: [],
  };
  const steps = values.map((_, place): SeriesStep => {
    const [next, judged] =
      place > 0 && afresh.includes(place)
        ? beginAfresh(state, place, values)
        : takeIn(state, place, values);
    state = next;
    const { outcome, settled, newest, lasting } = judged;
    return { outcome, settled, newest, lasting, stretchFrom: at(next.stretch, 0) };
  });
  return {
    steps,
    stretches: values.length === 0 ? [] : [...state.closed, stretchOf(state)],
    apart: state.apart,
  };
}

const nothingAsked: Judged = { outcome: "too few", settled: null, newest: null, lasting: null };

function beginAfresh(state: State, place: number, values: readonly number[]): [State, Judged] {
  const afresh = { begins: "afresh", foundAt: null } as const;
  if (!state.pending)
    return [
      { ...closeAt(state, state.stretch.length, values, afresh), stretch: [place] },
      nothingAsked,
    ];
  // A value that waited is neither of the old level nor of the new one: it stays by itself.
  const unsettled = { begins: "unsettled", foundAt: null } as const;
  const before = closeAt(state, state.stretch.length - 1, values, unsettled);
  return [{ ...closeAt(before, 1, values, afresh), stretch: [place] }, nothingAsked];
}

function takeIn(state: State, place: number, values: readonly number[]): [State, Judged] {
  if (!state.pending) return judge(state, place, values);
  const earlier = state.stretch.slice(0, -1);
  const odd = state.stretch.slice(-1);
  if (pAgainst(earlier, place, state.prior, values) > settlingLimit) {
    const apart = [...state.apart, ...odd.map((one) => ({ place: one, settledAt: place }))];
    const [next, judged] = judge({ ...state, stretch: earlier, apart }, place, values);
    return [next, { ...judged, settled: "stood apart" }];
  }
  const moved = closeAt(state, earlier.length, values, { begins: "moved", foundAt: place });
  return [
    { ...moved, stretch: [...odd, place] },
    { ...nothingAsked, outcome: "moved", settled: "moved" },
  ];
}

/** The stretch with one value more, by what it says now. */
function judge(state: State, place: number, values: readonly number[]): [State, Judged] {
  const { stretch, begins, foundAt, prior, closed, apart } = state;
  // By name: of long logs this is made a million times.
  const taken: State = {
    stretch: [...stretch, place],
    begins,
    foundAt,
    prior,
    pending: false,
    closed,
    apart,
  };
  const relative = relativeTo(taken.stretch, values);
  const found = shiftEvidence(relative, prior);
  const shift = found === null ? null : lastingShift(relative, found);
  const newest = found === null ? null : newestValue(relative, found);
  const lasting =
    shift === null
      ? null
      : {
          evidence: shift.evidence,
          before: shift.before,
          lineExplainsMore: shift.lineExplainsMore,
          limit: lastingShiftLimit(relative.length, prior.nu0),
        };
  const judged = (outcome: SeriesOutcome): Judged => ({ outcome, settled: null, newest, lasting });
  if (lasting !== null && lasting.evidence >= lasting.limit) {
    if (lasting.lineExplainsMore && relative.length >= fewestForTrend)
      return [taken, judged("trending")];
    const moved = { begins: "moved", foundAt: place } as const;
    return [closeAt(taken, lasting.before, values, moved), judged("moved")];
  }
  if (newest !== null && newest.pValue <= newestLimit)
    return [{ ...taken, pending: true }, judged("differs")];
  return [taken, judged(relative.length < fewestForLasting ? "too few" : "steady")];
}

/** Two-sided p of a value against earlier ones whose spread the prior shares. */
function pAgainst(
  earlier: readonly number[],
  place: number,
  prior: SpreadPrior,
  values: readonly number[],
): number {
  const level = mean(earlier.map((one) => at(values, one)));
  const { variance, df } = spreadWithin([relativeTo(earlier, values)], prior);
  const error = Math.sqrt((variance ?? 0) * (1 + 1 / earlier.length));
  return studentTTwoSided((at(values, place) / level - 1) / error, df);
}

/** Ends the stretch in force after so many of its values; its squares join the prior. */
function closeAt(
  state: State,
  split: number,
  values: readonly number[],
  next: Pick<SeriesStretch, "begins" | "foundAt">,
): State {
  const ended = { ...state, stretch: state.stretch.slice(0, split) };
  const { variance, df } = spreadWithin([relativeTo(ended.stretch, values)], state.prior);
  return {
    ...state,
    ...next,
    stretch: state.stretch.slice(split),
    prior: { nu0: df, s0Squared: variance ?? 0 },
    pending: false,
    closed: [...state.closed, stretchOf(ended)],
  };
}

function stretchOf({ stretch, begins, foundAt }: State): SeriesStretch {
  return { places: stretch, begins, foundAt };
}

function relativeTo(places: readonly number[], values: readonly number[]): number[] {
  const own = places.map((place) => at(values, place));
  const level = mean(own);
  return own.map((value) => value / level);
}
