import { type Caution, caution } from "../results/caution.ts";
import { type LogNames, logNames } from "./log-names.ts";
import type { Catch, MissedCatch } from "./types.ts";

/** A note for each catch that stands in the log without a mass, so that no surface passes over it. */
export function missedCautions(
  missed: readonly MissedCatch[],
  catches: readonly Catch[],
): readonly Caution[] {
  const named = new Map<string, LogNames>();
  return missed.map((one) => {
    const { farm, machine, season } = one;
    const key = JSON.stringify([farm, machine, season]);
    // Named as its meter is, and as none where nothing else was caught from that machine.
    const names = named.get(key) ?? logNames([...catches, one]);
    named.set(key, names);
    const { product, catch: number, reason } = one;
    const where = { bin: names.bin(one), product, fill: names.fill(one), catches: [number] };
    return caution("catch-without-mass", where, { reason });
  });
}
