import { binKey, isSameFilling, meterKey } from "../data/identity.ts";
import type { LogNames } from "../data/log-names.ts";
import type { Catch, CatchLog, MissedCatch } from "../data/types.ts";
import { groupBy } from "../numeric/group-by.ts";
import type { Caution } from "../results/caution.ts";
import { type Fill, type Meter, newestFill } from "./meters.ts";
import { bySeasonAndNumber } from "./time-order.ts";

/** Where a fill stands in the numbering of its meter. */
type NumberedFill = Pick<Fill, "fill" | "number" | "seasonRank">;

/**
 * What of a log concerns one meter, sorted out once: asked meter by meter of the whole log, a log of ten times as many meters
 * would take a hundred times as long.
 */
export interface LogIndex<M extends Meter = Meter> {
  /** The meters of the same bin, itself among them. */
  readonly inItsBin: (meter: Meter) => readonly M[];
  /** The last fill that the log has of it by season and number, fills that are left out included. */
  readonly lastFill: (meter: Meter) => NumberedFill;
  /** Findings of the file that may concern it, in their order. */
  readonly fileFindings: (meter: Meter) => readonly Caution[];
}

export function logIndex<M extends Meter>(
  log: CatchLog,
  meters: readonly M[],
  names: LogNames,
): LogIndex<M> {
  const ofBin = groupBy(meters, ({ place }) => binKey(place));
  const last = lastFills(log, names);
  const placed = log.cautions.map((found, place) => ({ found, place }));
  const findings = groupBy(placed, ({ found }) => found.where.bin);
  return {
    inItsBin: ({ place }) => ofBin.get(binKey(place)) ?? [],
    lastFill: (meter) => {
      const { farm, machine, bin } = meter.place;
      return (
        last.get(meterKey({ farm, machine, bin, product: meter.product })) ?? newestFill(meter)
      );
    },
    fileFindings: ({ bin }) =>
      [...(findings.get(null) ?? []), ...(findings.get(bin) ?? [])]
        .sort((one, other) => one.place - other.place)
        .map(({ found }) => found),
  };
}

/** Catches that were spilled or missed stand for their fill too. */
function lastFills(
  { catches, missed = [] }: CatchLog,
  names: LogNames,
): ReadonlyMap<string, NumberedFill> {
  const last = new Map<string, NumberedFill>();
  let before: Catch | MissedCatch | null = null;
  for (const row of missed.length === 0 ? catches : [...catches, ...missed]) {
    const isSame = before !== null && isSameFilling(before, row) && before.product === row.product;
    if (isSame) continue;
    before = row;
    const key = meterKey(row);
    const place = { number: row.fill, seasonRank: names.seasonRank(row.season) };
    const known = last.get(key);
    if (known === undefined || bySeasonAndNumber(known, place) < 0)
      last.set(key, { ...place, fill: names.fill(row) });
  }
  return last;
}
