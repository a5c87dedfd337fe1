import { studentTQuantile, studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { findRoot } from "../numeric/roots.ts";
import {
  chanceOfWidth,
  dfAfter,
  type KnownState,
  type Plan,
  plannedHalfWidth,
  varianceAfter,
  type WidthRule,
} from "./known-width.ts";

/** What catches are taken for, and where they end. */
export interface CatchAim extends WidthRule {
  /** Rate error that can be accepted, a fraction. */
  readonly tolerance: number;
  /** Chance wanted of reaching it. */
  readonly assurance: number;
  /** Rate error that the setting makes by itself, because the drive has steps; 0: none. */
  readonly settingError: number;
  /** Catches of the fill before its width may decide. */
  readonly fewestCatches: number;
  /** Catches of the fill after which to stop whatever the width. */
  readonly mostCatches: number;
}

/** So many more catches, what they are for, and how likely they get there: the one number every answer quotes. */
export interface NumberOfCatches extends Plan {
  /** Half-width they are to reach, relative; taken because they pay, the tolerance all the same. */
  readonly reaches: number;
  /** Chance that they do. */
  readonly chance: number;
  /** Half-width to be expected then, relative. */
  readonly typically: number;
}

/**
 * The fewest further catches whose chance to end within the tolerance is at least the assurance: catches of `turns` turns
 * where these do, else of twice, three times … as many, up to the longest.
 *
 * @returns null: no number within the limits does
 */
export function numberOfCatches(
  state: KnownState,
  turns: number,
  longestTurns: number,
  aim: CatchAim,
): NumberOfCatches | null {
  for (const length of lengthsToTry(turns, longestTurns)) {
    const found = fewestFurther(state, length, aim);
    if (found !== null) return found;
  }
  return null;
}

function fewestFurther(state: KnownState, turns: number, aim: CatchAim): NumberOfCatches | null {
  const least = Math.max(1, aim.fewestCatches - state.catches);
  for (let further = least; state.catches + further <= aim.mostCatches; further++) {
    const plan = { further, turns };
    const typically = plannedHalfWidth(state, plan, asShown(aim));
    const chance = chanceAfter(state, plan, aim);
    if (typically !== null && chance !== null && chance >= aim.assurance)
      return { ...plan, reaches: aim.tolerance, chance, typically };
  }
  return null;
}

/** The width itself: the factor of stopping decides, and is no part of what is shown. */
export function asShown({ level }: CatchAim): WidthRule {
  return { level, phi: 1 };
}

function lengthsToTry(turns: number, longest: number): readonly number[] {
  if (turns >= longest) return [longest];
  const multiples = Math.floor(longest / turns);
  const tried = Array.from({ length: multiples }, (_, i) => turns * (i + 1));
  return tried.at(-1) === longest ? tried : [...tried, longest];
}

/**
 * Whether to stop taking catches one at a time: at the first, from the fewest on, whose half-width allows the tolerance,
 * or at the most. Stopping on the width favours fills whose catches happen to agree, so the width itself is too good;
 * stated as ± the larger of half-width and tolerance the interval keeps its coverage: reports/stopping-study.md.
 *
 * @param df  degrees of freedom of the half-width
 * @returns   why; null: catch again
 */
export function stopsAt(
  catches: number,
  halfWidth: number,
  df: number,
  aim: CatchAim,
): "within tolerance" | "most catches reached" | null {
  const within = aim.phi * halfWidth <= widthAllowed(aim, df);
  if (within && catches >= aim.fewestCatches) return "within tolerance";
  return catches >= aim.mostCatches ? "most catches reached" : null;
}

/**
 * The turns of a catch from which on reading the scale leaves the tolerance within reach: more catches of fewer turns
 * read alike and do not average it out.
 *
 * @returns null where the division is not known
 */
export function leastTurnsForScale({ divisionInTurns }: KnownState, aim: CatchAim): number | null {
  if (divisionInTurns === 0) return null;
  const oneTurn = plannedHalfWidth(
    { catches: 0, turns: 0, divisionInTurns, scatter: { q: 0, nu: 1, own: false } },
    { further: 1, turns: 1 },
    aim,
  );
  return oneTurn === null ? null : Math.ceil(oneTurn / aim.tolerance);
}

/** Standard error of the delivery after so many catches, relative, with its degrees of freedom; null: unknown. */
export function errorAfter(
  state: KnownState,
  plan: Plan,
): { readonly scale: number; readonly df: number } | null {
  const { scatter, reading } = varianceAfter(state, plan);
  const scale = Math.sqrt(scatter + reading);
  return state.scatter.nu === 0 || !(scale > 0) ? null : { scale, df: state.scatter.nu };
}

/** Chance that a plan ends in a width that allows the tolerance to be kept; null: unknown. */
export function chanceAfter(state: KnownState, plan: Plan, aim: CatchAim): number | null {
  const df = dfAfter(state, plan);
  return df === null ? null : chanceOfWidth(state, plan, widthAllowed(aim, df), aim);
}

/**
 * Chance that the rate is off by more than the tolerance: P(|s + (H/t)·T| > tolerance), s the error of the setting itself
 * and T Student's t.
 */
export function chanceOff(
  halfWidth: number,
  df: number,
  { tolerance, settingError, level }: Pick<CatchAim, "tolerance" | "settingError" | "level">,
): number {
  const scale = halfWidth / studentTQuantile((1 + level) / 2, df);
  if (scale === 0) return Math.abs(settingError) > tolerance ? 1 : 0;
  const beyond = (distance: number) => {
    const both = studentTTwoSided(Math.abs(distance) / scale, df);
    return distance >= 0 ? both / 2 : 1 - both / 2;
  };
  return beyond(tolerance - settingError) + beyond(tolerance + settingError);
}

/** The widest interval with which the rate keeps the tolerance at the level: the tolerance itself, less with a step's error. */
export function widthAllowed(aim: CatchAim, df: number): number {
  const { tolerance, settingError, level } = aim;
  if (settingError === 0) return tolerance;
  // With this width one tail alone has half of what is allowed, and the other has less.
  const certain = tolerance - Math.abs(settingError);
  if (certain <= 0) return 0;
  const spare = (width: number) => chanceOff(width, df, aim) - (1 - level);
  // Within rounding of either end, the width is that end.
  if (spare(tolerance) <= 0) return tolerance;
  if (spare(certain) >= 0) return certain;
  return findRoot(spare, certain, tolerance);
}
