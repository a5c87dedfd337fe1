import { entryFor } from "../data/setup.ts";
import { at } from "../errors/at.ts";
import { fewestForLasting } from "../statistics/shift-evidence.ts";
import { replayShifts, type SeriesReplay, type SeriesStep } from "../statistics/shift-replay.ts";
import { noPrior } from "../statistics/spread-prior.ts";
import { ofOneFill } from "./history/one-fill.ts";
import type {
  FreshStart,
  HistoryChoices,
  HistoryReading,
  HistoryStatus,
  HistoryStep,
  MeterHistory,
  Stretch,
} from "./history/result.ts";
import {
  apartFills,
  type DifferingFill,
  differingFill,
  foundChanges,
  trendingFills,
} from "./history-findings.ts";
import { deliveriesOf, type Fill, type Meter, severalSeasons } from "./meters.ts";

export type {
  FreshStart,
  HistoryChoices,
  HistoryStatus,
  HistoryStep,
  MeterHistory,
  Stretch,
} from "./history/result.ts";

/**
 * Has this meter moved? One decision after every fill, of one estimate a fill in order of time (`replayShifts`): a pure
 * function of the fills and of what others lend. With the same prior, yesterday's answer is that of the log without today;
 * what other meters of the log lend grows with it.
 *
 * @param level  confidence level of the sizes' intervals
 */
export function historyOf(meter: Meter, level: number, choices: HistoryChoices = {}): MeterHistory {
  const { fills } = meter;
  if (fills.length === 1) return ofOneFill.historyOf(meter, level, choices);
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

/** Reads what fills say one after the other. */
export const overFills: HistoryReading = { historyOf, stretchesOf };

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
