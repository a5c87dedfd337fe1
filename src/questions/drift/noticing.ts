import { stretchInForce } from "../../model/history.ts";
import type { MeterModel } from "../../model/model.ts";
import {
  fewestBeforeKnown,
  lastingShiftChance,
  type ShiftChance,
} from "../../statistics/lasting-shift-power.ts";
import { typicalSpread } from "../../statistics/spread-within.ts";

/** Chance to have noticed a lasting shift once so many fills show it, by its size. */
export interface NoticingCurve {
  readonly fillsSince: number;
  readonly points: readonly {
    /** As a fraction of the delivery. */
    readonly shift: number;
    readonly chance: number;
  }[];
}

/** What the decision would find of a shift that sets in with the next fill: operating characteristic curves. */
export interface Noticing extends Pick<ShiftChance, "bound"> {
  /** Of the level in force. */
  readonly fillsBefore: number;
  /** Typical spread between fills that explains what is known of them, relative to the delivery. */
  readonly relativeSpread: number;
  /** The fewest fills first. */
  readonly curves: readonly NoticingCurve[];
}

const fillsSince = [1, 2, 3, 6];
/** In spreads; beyond the last everything is found, or nothing more is known. */
const shifts = Array.from({ length: 12 }, (_, i) => (i + 1) / 2);

/**
 * Chance that a lasting shift which sets in with the next fill will have been found one, two, three and six fills later, from
 * the table of simulated chances at shift ÷ spread, linear between its figures.
 *
 * @returns null where nobody looks, with fewer than three fills in force, without any spread, and while fills trend
 * Source   reports/drift-study.md
 */
export function noticingOf({
  history,
  across,
}: Pick<MeterModel, "history" | "across">): Noticing | null {
  const fillsBefore = stretchInForce(history).length;
  const relative = across.spread.relative ?? 0;
  if (history.status === "not asked" || history.trending !== null) return null;
  if (fillsBefore < fewestBeforeKnown || !(relative > 0)) return null;
  const relativeSpread = typicalSpread(relative, across.spread.df);
  const ownOnly = across.spread.source === "own" && history.stretches.length === 1;
  const bounds: ShiftChance["bound"][] = [ownOnly ? "about" : "at least"];
  const curves = fillsSince.map((after) => ({
    fillsSince: after,
    points: shifts.flatMap((shift) => {
      const found = lastingShiftChance({ before: fillsBefore, after, shift });
      if (found === null) return [];
      bounds.push(found.bound);
      return [{ shift: shift * relativeSpread, chance: found.chance }];
    }),
  }));
  const bound = bounds.includes("at least") ? "at least" : "about";
  return { fillsBefore, relativeSpread, bound, curves };
}
