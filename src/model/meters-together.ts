import { at } from "../errors/at.ts";
import { noPrior } from "../statistics/spread-prior.ts";
import { priorOfVote } from "../statistics/spread-votes.ts";
import { type AcrossGround, type FillsTogether, fillsTogether } from "./across-fills.ts";
import { lentSpread } from "./fill-spread.ts";
import type { HistoryChoices, HistoryReading, MeterHistory, Stretch } from "./history/result.ts";
import {
  type BorrowingChoices,
  type MeterRecord,
  type OutsideVote,
  outsideVotes,
} from "./lenders.ts";
import { type MeterScatter, seenVariance } from "./lent-scatter.ts";
import { type Fill, type Meter, withinSeasons } from "./meters.ts";
import { scattersOf } from "./screening/lending.ts";

/** How meters are read beside one another. */
export interface TogetherRule {
  readonly level: number;
  readonly divisionKg: number | null;
  readonly borrowing: BorrowingChoices;
  readonly history: Omit<HistoryChoices, "prior" | "flagged">;
  readonly reading: HistoryReading;
}

/** What one meter is told by the others, and what it tells them. */
export interface MeterAmongOthers {
  readonly scatter: MeterScatter;
  readonly record: MeterRecord;
  readonly spreadVote: OutsideVote | null;
}

/** What a meter's fills say with what others lend. */
export interface MeterRead {
  readonly history: MeterHistory;
  readonly across: FillsTogether;
  /** What both were read with. */
  readonly ground: AcrossGround;
  readonly choices: HistoryChoices;
}

/** What meters lend one another, summed up over all of them; one for each meter, in order. */
export function metersTogether(
  meters: readonly Meter[],
  { divisionKg, borrowing, history, reading }: TogetherRule,
): readonly MeterAmongOthers[] {
  const scatters = scattersOf(meters, { divisionKg, borrowing }, true);
  const records = meters.map((meter, i) =>
    recordOf(meter, at(scatters, i), reading.stretchesOf(meter, history), divisionKg),
  );
  const spreadVotes = outsideVotes(records, "spread", borrowing);
  return records.map((record, i) => ({
    scatter: at(scatters, i),
    record,
    spreadVote: at(spreadVotes, i),
  }));
}

/**
 * What the fills of one meter say, with what others lend it.
 *
 * @param flagged  whether a fill holds a catch that is not believed; default: no fill does
 */
export function readMeter(
  meter: Meter,
  { scatter, spreadVote }: MeterAmongOthers,
  { level, divisionKg, history, reading }: TogetherRule,
  flagged?: (fill: Fill) => boolean,
): MeterRead {
  const choices = {
    ...(flagged === undefined ? {} : { flagged }),
    ...history,
    prior: spreadVote === null ? noPrior : priorOfVote(spreadVote),
  };
  const ground = {
    level,
    scatter,
    outside: spreadVote,
    divisionKg,
    inTimeOrder: history.asked !== "never",
  };
  const found = reading.historyOf(meter, level, choices);
  const stretches = found.stretches.map(({ fills }) => fills);
  return { history: found, across: fillsTogether(stretches, ground), ground, choices };
}

/**
 * What a meter can tell others. Its fills' spread is that within levels found with its own fills only: what others lend
 * comes back to them by no detour. A level that lasts over seasons lends the spread within each of them: what changed in the
 * winter between is no difference of fills.
 */
function recordOf(
  { product }: Meter,
  { relative, df, floor }: MeterScatter,
  stretches: readonly Stretch[],
  divisionKg: number | null,
): MeterRecord {
  return {
    product,
    scatter: seenVariance(relative, df, floor),
    spread: lentSpread(
      stretches.flatMap(({ fills }) => withinSeasons(fills)),
      divisionKg,
    ),
  };
}
