import {
  dfAfter,
  halfWidthAtChance,
  halfWidthNow,
  type KnownState,
  type Plan,
  plannedHalfWidth,
} from "./known-width.ts";
import { asShown, type CatchAim, chanceAfter, chanceOff } from "./next-catch.ts";
import { canPriceSkip, statedChance } from "./skip-chance.ts";

/** Where one number of catches leads. */
export interface CurvePoint {
  /** Catches of the fill; 0: none, the earlier fills alone. */
  readonly catches: number;
  /** Of these still to come. */
  readonly further: number;
  readonly basis: "earlier fills" | "made" | "planned";
  /** Relative half-width, to be expected where catches are planned; null: unknown. */
  readonly halfWidth: number | null;
  /** Relative half-width that will not be exceeded with the chance `assurance`; null: unknown. */
  readonly halfWidthAssured: number | null;
  /** Chance that the width allows the tolerance to be kept; null: unknown. */
  readonly chance: number | null;
  /** Chance that the rate is off by more than the tolerance with the drive set by these catches; null: unknown. */
  readonly chanceOffTolerance: number | null;
  /** The least that chance is stated, where few earlier fills alone speak; null: anything. */
  readonly leastChance: number | null;
}

/** How well the fill's delivery is known after 0, 1, 2, … catches: the one curve. */
export interface NextCatchCurve {
  readonly kind: "next-catch-curve";
  readonly turnsPerCatch: number;
  readonly points: readonly CurvePoint[];
}

/** What earlier fills alone say of a fill. */
export interface SkippedFill {
  /** Relative half-width of the band for the next fill. */
  readonly halfWidth: number;
  readonly df: number;
  /** Of these, the meter's own. */
  readonly ownDf: number;
  /** The least chance that may be stated of it; null: any. */
  readonly leastChance: number | null;
}

/**
 * The curve: the earlier fills alone, the catches made, and each further catch of `turns` turns.
 *
 * @param skipped  what the earlier fills say; null: nothing
 * @param most     further catches to show
 */
export function nextCatchCurve(
  state: KnownState,
  skipped: SkippedFill | null,
  turns: number,
  aim: CatchAim,
  most: number,
): NextCatchCurve {
  const first = state.catches === 0 ? 1 : 0;
  const planned = Array.from({ length: most + 1 - first }, (_, i) =>
    pointAfter(state, { further: i + first, turns }, aim),
  );
  return {
    kind: "next-catch-curve",
    turnsPerCatch: turns,
    points: [skippedPoint(skipped, aim), ...planned],
  };
}

function pointAfter(state: KnownState, plan: Plan, aim: CatchAim): CurvePoint {
  const made = plan.further === 0;
  const plain = asShown(aim);
  const halfWidth = made ? halfWidthNow(state, plain) : plannedHalfWidth(state, plan, plain);
  const df = dfAfter(state, plan);
  const known = halfWidth !== null && halfWidth > 0 && df !== null;
  return {
    catches: state.catches + plan.further,
    further: plan.further,
    basis: made ? "made" : "planned",
    halfWidth: known ? halfWidth : null,
    halfWidthAssured: known ? halfWidthAtChance(state, plan, aim.assurance, plain) : null,
    chance: known ? chanceAfter(state, plan, aim) : null,
    chanceOffTolerance: known ? chanceOff(halfWidth, df, aim) : null,
    leastChance: null,
  };
}

/** The chance is the one that skipping is asked for, and no more is said of it than there. */
function skippedPoint(skipped: SkippedFill | null, aim: CatchAim): CurvePoint {
  const priced = skipped !== null && canPriceSkip(skipped) ? skipped : null;
  const leastChance = priced?.leastChance ?? null;
  return {
    catches: 0,
    further: 0,
    basis: "earlier fills",
    halfWidth: skipped?.halfWidth ?? null,
    halfWidthAssured: null,
    chance: null,
    chanceOffTolerance:
      priced === null
        ? null
        : statedChance(chanceOff(priced.halfWidth, priced.df, aim), leastChance),
    leastChance,
  };
}
