import { binKey, fillKey, meterKey } from "../data/identity.ts";
import { logNames } from "../data/log-names.ts";
import type { CatchLog } from "../data/types.ts";
import { at, lastOf } from "../errors/at.ts";
import { groupBy } from "../numeric/group-by.ts";
import type { Caution } from "../results/caution.ts";
import type { FillName } from "../results/fill-name.ts";
import { earliestOf, type Fill, type Meter } from "./meters.ts";
import { bySeasonAndNumber, instantOf, inTimeOrder, type Numbered } from "./time-order.ts";

/** Where a fill stands among those of its meter, and what it is called. */
type NumberedFill = Numbered & Pick<Fill, "fill">;

/**
 * What of a log concerns one meter, sorted out once: asked meter by meter of the whole log, a log of ten times as many meters
 * would take a hundred times as long.
 */
export interface LogIndex<M extends Meter = Meter> {
  /** The meters of the same bin, itself among them. */
  readonly inItsBin: (meter: Meter) => readonly M[];
  /** The last of the fills after its newest of which every catch is left out, spilled or missed; null: none. */
  readonly leftOutSince: (meter: Meter) => FillName | null;
  /** Findings of the file that may concern it, in their order. */
  readonly fileFindings: (meter: Meter) => readonly Caution[];
}

export function logIndex<M extends Meter>(log: CatchLog, meters: readonly M[]): LogIndex<M> {
  const ofBin = groupBy(meters, ({ place }) => binKey(place));
  const leftOutAfter = laterLeftOut(log);
  const placed = log.cautions.map((found, place) => ({ found, place }));
  const findings = groupBy(placed, ({ found }) => found.where.bin);
  return {
    inItsBin: ({ place }) => ofBin.get(binKey(place)) ?? [],
    leftOutSince: (meter) => inTimeOrder(leftOutAfter(meter)).at(-1)?.fill ?? null,
    fileFindings: ({ bin }) =>
      [...(findings.get(null) ?? []), ...(findings.get(bin) ?? [])]
        .sort((one, other) => one.place - other.place)
        .map(({ found }) => found),
  };
}

/** Fills after the newest of a meter that have no catch that counts; catches that were spilled or missed stand for their fill too. */
function laterLeftOut({
  catches,
  missed = [],
}: CatchLog): (meter: Meter) => readonly NumberedFill[] {
  // A season of which everything was missed is one all the same.
  const names = logNames(missed.length === 0 ? catches : [...catches, ...missed]);
  const placed = ({ season, number, takenAt }: Pick<Fill, "season" | "number" | "takenAt">) => ({
    number,
    seasonRank: names.seasonRank(season),
    takenAt,
  });
  const undated = missed.map((one) => ({ ...one, takenAt: null }));
  const ofMeter = groupBy(
    [...catches.filter(({ leftOut }) => leftOut !== null), ...undated],
    meterKey,
  );
  return (meter) => {
    const rows = ofMeter.get(meterKey({ ...meter.place, product: meter.product }));
    if (rows === undefined) return [];
    const counted = new Set(
      meter.fills.map(({ season, number }) => fillKey({ ...meter.place, season, fill: number })),
    );
    const isLater = laterThan(meter.fills.map(placed));
    return [...groupBy(rows, fillKey)].flatMap(([key, ofFill]) => {
      const { season, fill: number } = at(ofFill, 0);
      const place = placed({ season, number, takenAt: earliestOf(ofFill) });
      if (counted.has(key) || !isLater(place)) return [];
      return { ...place, fill: names.fill({ season, fill: number }) };
    });
  };
}

/** By date where it and all fills that count have one, else by season and number. */
function laterThan(fills: readonly Numbered[]): (one: Numbered) => boolean {
  const hasDate = ({ takenAt }: Numbered) => instantOf(takenAt) !== null;
  const areDated = fills.every(hasDate);
  const newest = lastOf(inTimeOrder(fills));
  const highest = lastOf(fills.toSorted(bySeasonAndNumber));
  return (one) =>
    areDated && hasDate(one)
      ? lastOf(inTimeOrder([newest, one])) === one
      : bySeasonAndNumber(highest, one) < 0;
}
