import { entryFor, type SetupPlace } from "../data/setup.ts";
import { at } from "../errors/at.ts";
import type { FillName } from "../results/fill-name.ts";
import { fewestForLasting } from "../statistics/shift-evidence.ts";
import {
  replayShifts,
  type SeriesOutcome,
  type SeriesReplay,
  type SeriesStep,
} from "../statistics/shift-replay.ts";
import { noPrior, type SpreadPrior } from "../statistics/spread-prior.ts";
import {
  type ApartFill,
  apartFills,
  type DifferingFill,
  differingFill,
  type FoundChange,
  foundChanges,
  type TrendingFills,
  trendingFills,
} from "./history-findings.ts";
import { deliveriesOf, type Fill, type Meter, severalSeasons } from "./meters.ts";

/**
 * not asked: as the caller wished · too few fills: fewer than 4 since the level began · steady · fill differs: the newest
 * stands apart, and the next one, or more catches of this one, will settle it · fill differs, confirmed: by many more
 * catches than usual · stood apart: the fill before the newest was the odd one, the newest is back · moved: found with
 * the newest fill, or fewer than 4 fills ago · trending: each fill delivers more, or less, than the last.
 */
export type HistoryStatus =
  | "not asked"
  | "too few fills"
  | "steady"
  | "fill differs"
  | "fill differs, confirmed"
  | "stood apart"
  | "moved"
  | "trending";

/** Fills of one level, in order of time; those that stood apart are not among them. */
export interface Stretch {
  readonly fills: readonly Fill[];
  /**
   * What began it: the first fill of the log; a change that was found; the setup, which says that the meter was opened or
   * changed; or it is a fill alone that differed just before that, so that nothing settled it.
   */
  readonly begins: "log" | "moved" | "setup" | "unsettled";
}

/** What was decided when a fill came. */
export interface HistoryStep {
  readonly fill: FillName;
  readonly outcome: SeriesOutcome;
  /** What the fill before, which differed, turned out to be with this one. */
  readonly settled: SeriesStep["settled"];
  /** Of this fill against those before it in its stretch; null: could not be asked. */
  readonly pValue: number | null;
  /** Averaged evidence of a lasting shift, so much to 1, and the limit for it; null: could not be asked. */
  readonly evidence: number | null;
  readonly limit: number | null;
}

/** Whether a meter has moved over its fills, asked after every fill, and what that leaves of them. */
export interface MeterHistory {
  readonly status: HistoryStatus;
  /** Oldest first; the last is in force: level and next fill rest on it, the spread rests on all. */
  readonly stretches: readonly Stretch[];
  /** Left out of mean and spread, oldest first. */
  readonly stoodApart: readonly ApartFill[];
  /** Every change of level that was found, oldest first. */
  readonly changes: readonly FoundChange[];
  /** The last of them, while it qualifies what to do; null: none, or it is history. */
  readonly moved: FoundChange | null;
  readonly differs: DifferingFill | null;
  readonly trending: TrendingFills | null;
  /** One for every fill; empty when not asked. */
  readonly steps: readonly HistoryStep[];
  /** The stretch in force as it stood before the newest fill came. */
  readonly beforeNewest: readonly Fill[];
}

/** Fill before which a meter was opened, cleaned or changed; product null: whatever product is in the bin. */
export interface FreshStart extends SetupPlace {
  readonly fill: number;
  /** Its season; null or left out: the log has one. */
  readonly season?: string | null | undefined;
}

/** How the history of a meter is to be read; everything optional. */
export interface HistoryChoices {
  /** Default "after every fill"; "never" where fills were planned to differ, as in a trial with blocks. */
  readonly asked?: "after every fill" | "never";
  /** Default none. */
  readonly startsAfresh?: readonly FreshStart[];
  /** What other meters say of the relative spread of fills, now; default nothing, this meter's own speaks. */
  readonly prior?: SpreadPrior;
  /** Whether a fill holds a catch that is not believed, and so cannot confirm itself; default: no fill does. */
  readonly flagged?: (fill: Fill) => boolean;
}

/**
 * Has this meter moved? One decision after every fill, of one estimate a fill in order of time (`replayShifts`): a pure
 * function of the fills and of what others lend. With the same prior, yesterday's answer is that of the log without today;
 * what other meters of the log lend grows with it.
 *
 * @param level  confidence level of the sizes' intervals
 */
export function historyOf(meter: Meter, level: number, choices: HistoryChoices = {}): MeterHistory {
  const { fills } = meter;
  const { asked = "after every fill", prior = noPrior, flagged = () => false } = choices;
  const replay = replayOf(meter, choices);
  const replayed = { fills, replay, level, prior };
  const differs = differingFill(replayed, flagged);
  const changes = foundChanges(replayed);
  return {
    status: asked === "never" ? "not asked" : statusOf(replay, differs),
    stretches: stretchesIn(fills, replay),
    stoodApart: apartFills(replayed),
    changes,
    moved: movedLately(replay) ? (changes.at(-1) ?? null) : null,
    differs,
    trending: trendingFills(replayed),
    steps: asked === "never" ? [] : replay.steps.map((step, i) => stepOf(step, at(fills, i))),
    beforeNewest: beforeNewest(fills, replay),
  };
}

/** The stretches of `historyOf` alone. */
export function stretchesOf(meter: Meter, choices: HistoryChoices = {}): readonly Stretch[] {
  return stretchesIn(meter.fills, replayOf(meter, choices));
}

function replayOf(
  { fills, place: { farm, machine, bin }, product }: Meter,
  { asked = "after every fill", startsAfresh = [], prior = noPrior }: HistoryChoices,
): SeriesReplay {
  const start = entryFor(startsAfresh, { farm, machine, bin, product });
  const place =
    start === null ? -1 : fills.findIndex((fill) => isFrom(fill, start, severalSeasons(fills)));
  const afresh = place > 0 ? [place] : [];
  return asked === "never"
    ? cutOnly(fills.length, afresh)
    : replayShifts(deliveriesOf(fills), afresh, prior);
}

function stretchesIn(fills: readonly Fill[], { stretches }: SeriesReplay): readonly Stretch[] {
  return stretches.map(({ places, begins }) => ({
    fills: places.map((i) => at(fills, i)),
    begins: begins === "series" ? "log" : begins === "afresh" ? "setup" : begins,
  }));
}

/** The stretch of a meter's fills that is in force. */
export function stretchInForce({ stretches }: Pick<MeterHistory, "stretches">): readonly Fill[] {
  return stretches.at(-1)?.fills ?? [];
}

/** Whether a fill is the one that a fresh start names, or the first after it in that season. */
function isFrom(
  fill: Fill,
  { fill: number, season = null }: FreshStart,
  several: boolean,
): boolean {
  return fill.number >= number && (season === null ? !several : fill.season === season);
}

/** Stretches as the setup cuts them, with nothing asked. */
function cutOnly(fills: number, [cut = 0]: readonly number[]): SeriesReplay {
  const places = Array.from({ length: fills }, (_, i) => i);
  const asked = { settled: null, newest: null, lasting: null, outcome: "steady" } as const;
  const before = { places: places.slice(0, cut), begins: "series", foundAt: null } as const;
  const since = { places: places.slice(cut), foundAt: null } as const;
  return {
    steps: places.map((place) => ({ ...asked, stretchFrom: place < cut ? 0 : cut })),
    stretches:
      cut === 0 ? [{ ...since, begins: "series" }] : [before, { ...since, begins: "afresh" }],
    apart: [],
  };
}

function statusOf(replay: SeriesReplay, differs: DifferingFill | null): HistoryStatus {
  const last = replay.steps.at(-1);
  if (differs !== null) return differs.confirmed ? "fill differs, confirmed" : "fill differs";
  if (last?.outcome === "trending") return "trending";
  if (movedLately(replay)) return "moved";
  if (last?.settled === "stood apart") return "stood apart";
  return last?.outcome === "steady" ? "steady" : "too few fills";
}

/** A change qualifies what to do when it is found, and until its stretch can be asked again. */
function movedLately({ steps, stretches }: SeriesReplay): boolean {
  const inForce = stretches.at(-1);
  if (inForce?.begins !== "moved") return false;
  return inForce.foundAt === steps.length - 1 || inForce.places.length < fewestForLasting;
}

function stepOf({ outcome, settled, newest, lasting }: SeriesStep, { fill }: Fill): HistoryStep {
  return {
    fill,
    outcome,
    settled,
    pValue: newest?.pValue ?? null,
    evidence: lasting?.evidence ?? null,
    limit: lasting?.limit ?? null,
  };
}

function beforeNewest(fills: readonly Fill[], { steps, apart }: SeriesReplay): readonly Fill[] {
  const newest = fills.length - 1;
  const before = steps[newest - 1];
  if (before === undefined) return [];
  const leftOut = new Set(
    apart.filter(({ settledAt }) => settledAt < newest).map(({ place }) => place),
  );
  return fills.filter((_, i) => i >= before.stretchFrom && i < newest && !leftOut.has(i));
}
