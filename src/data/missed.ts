import { type Caution, caution } from "../results/caution.ts";
import type { MissedCatch } from "./types.ts";

/** A note for each catch that stands in the log without a mass, so that no surface passes over it. */
export function missedCautions(missed: readonly MissedCatch[]): readonly Caution[] {
  return missed.map(({ bin, product, fill, catch: number, reason }) =>
    caution("catch-without-mass", { bin, product, fill, catches: [number] }, { reason }),
  );
}
