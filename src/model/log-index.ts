import { binKey, meterKey } from "../data/identity.ts";
import type { CatchLog } from "../data/types.ts";
import { groupBy } from "../numeric/group-by.ts";
import type { Caution } from "../results/caution.ts";
import type { Meter } from "./meters.ts";

/**
 * What of a log concerns one meter, sorted out once: asked meter by meter of the whole log, a log of ten times as many meters
 * would take a hundred times as long.
 */
export interface LogIndex<M extends Meter = Meter> {
  /** The meters of the same bin, itself among them. */
  readonly inItsBin: (meter: Meter) => readonly M[];
  /** The highest number of a fill that the log has of it, catches that are left out included. */
  readonly highestFill: (meter: Meter) => number;
  /** Findings of the file that may concern it, in their order. */
  readonly fileFindings: (meter: Meter) => readonly Caution[];
}

export function logIndex<M extends Meter>(log: CatchLog, meters: readonly M[]): LogIndex<M> {
  const ofBin = groupBy(meters, binKey);
  const highest = new Map<string, number>();
  for (const row of log.catches) {
    const key = meterKey(row);
    const known = highest.get(key);
    if (known === undefined || row.fill > known) highest.set(key, row.fill);
  }
  const placed = log.cautions.map((found, place) => ({ found, place }));
  const findings = groupBy(placed, ({ found }) => found.where.bin);
  return {
    inItsBin: (meter) => ofBin.get(binKey(meter)) ?? [],
    highestFill: (meter) => highest.get(meterKey(meter)) ?? 0,
    fileFindings: ({ bin }) =>
      [...(findings.get(null) ?? []), ...(findings.get(bin) ?? [])]
        .sort((one, other) => one.place - other.place)
        .map(({ found }) => found),
  };
}
