import { type ApparentDivision, apparentDivision } from "../data/apparent-division.ts";
import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import { type Caution, caution } from "../results/caution.ts";

/** Where the division comes from of the scale for catches that name none. */
export interface ScaleDivision {
  /** catches: every one of them names its own · figures: nobody states it, and it was read from the digits of the weights. */
  readonly from: "option" | "setup" | "catches" | "figures" | "unknown";
  /** What the digits say; null where somebody states the division, or they say nothing. */
  readonly read: ApparentDivision | null;
}

/**
 * Who says what the scale's division is: an option counts before the setup, the setup before the digits of the weights.
 *
 * @param given  kg; null or left out: not given
 * @param log    its weights; null: planned before any catch
 */
export function scaleDivisionOf(
  given: number | null | undefined,
  setup: Setup | null,
  log: CatchLog | null,
): ScaleDivision {
  if (given != null) return { from: "option", read: null };
  if (setup?.scale.divisionKg != null) return { from: "setup", read: null };
  if (log === null) return { from: "unknown", read: null };
  if (log.catches.every(({ divisionKg }) => divisionKg !== null))
    return { from: "catches", read: null };
  const read = apparentDivision(log);
  return { from: read === null ? "unknown" : "figures", read };
}

/** The note on a division that nobody stated. */
export function divisionCautions({ read }: ScaleDivision): readonly Caution[] {
  return read === null ? [] : [caution("division-read-from-digits", {}, read)];
}
