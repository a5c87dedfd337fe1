import { type Caution, caution } from "../results/caution.ts";
import { logNames } from "./log-names.ts";
import type { Catch, MissedCatch } from "./types.ts";

/** A note for each catch that stands in the log without a mass, so that no surface passes over it. */
export function missedCautions(
  missed: readonly MissedCatch[],
  catches: readonly Catch[],
): readonly Caution[] {
  return missed.map((one) => {
    // Named as its meter is, and as none where nothing else was caught from that machine.
    const names = logNames([...catches, one]);
    const { product, catch: number, reason } = one;
    const where = { bin: names.bin(one), product, fill: names.fill(one), catches: [number] };
    return caution("catch-without-mass", where, { reason });
  });
}
