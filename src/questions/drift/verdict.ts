import type { Changes } from "./changes.ts";
import type { NewestFill } from "./newest.ts";

/**
 * too few fills: fewer than 4, nothing can be said · steady: nothing found · newest differs: the fill in the bin is outside
 * the band of the earlier ones, and no more than that · moved: one shift, from a fill on · trending: a rise or fall
 * through the season, which a slow wander looks like.
 */
export type DriftVerdict = "too few fills" | "steady" | "newest differs" | "moved" | "trending";

/** What to do next; the first comes first. */
export type DriftStep = "collect fills" | "carry on" | "catch again" | "recalibrate" | "inspect";

export const fewestForVerdict = 4;

/**
 * Season findings come before the newest fill, because they rest on more fills. Where both season tests reject, the
 * one with the smaller p names the change: they can seldom be told apart in a season.
 */
export function driftVerdict(
  fills: number,
  { trend, shift }: Changes,
  newest: NewestFill | null,
  level: number,
): DriftVerdict {
  if (fills < fewestForVerdict) return "too few fills";
  const found = (test: { readonly adjustedPValue: number } | null) =>
    test !== null && test.adjustedPValue <= 1 - level;
  const shiftIsStronger = shift !== null && (trend === null || shift.pValue <= trend.pValue);
  if (found(shift) && (shiftIsStronger || !found(trend))) return "moved";
  if (found(trend)) return "trending";
  return newest?.outside ? "newest differs" : "steady";
}

/**
 * A shift that stays needs another setting; one beyond the tolerance also has a cause worth looking for. A trend goes
 * on, so no setting lasts until its cause is found. A single odd fill is checked by catching again before anything is
 * turned.
 */
export function nextSteps(
  verdict: DriftVerdict,
  shiftBeyondTolerance: boolean,
): readonly DriftStep[] {
  switch (verdict) {
    case "too few fills":
      return ["collect fills"];
    case "steady":
      return ["carry on"];
    case "newest differs":
      return ["catch again"];
    case "moved":
      return shiftBeyondTolerance ? ["recalibrate", "inspect"] : ["recalibrate"];
    case "trending":
      return ["inspect", "catch again"];
  }
}
