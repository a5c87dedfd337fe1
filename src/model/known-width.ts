import { chiSquaredLowerTail, chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { fLowerTail, fQuantile } from "../numeric/distributions/f.ts";
import { normalQuantile } from "../numeric/distributions/normal.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { readingVariance } from "./reading.ts";

/** What is known of the catch scatter, wherever it comes from; everything relative to the delivery. */
export interface Scatter {
  /** Variance of a one-turn catch, in turns: a total of T turns has 1/T of it. */
  readonly q: number;
  /** Degrees of freedom behind it; 0: assumed, so that only catches still to come will know it. */
  readonly nu: number;
  /** True when nothing but the fill's own catches spoke. */
  readonly own: boolean;
}

/** Where a fill stands: its catches so far, and what is known of their scatter. */
export interface KnownState {
  readonly catches: number;
  /** Their turns together. */
  readonly turns: number;
  readonly scatter: Scatter;
  /** Scale division over delivery per turn: the turns that weigh one division; 0: not known. */
  readonly divisionInTurns: number;
}

/** So many more catches of so many turns each. */
export interface Plan {
  readonly further: number;
  readonly turns: number;
}

/** How widths are stated. */
export interface WidthRule {
  readonly level: number;
  /** A width that stopping decides on is taken so many times larger; 1: taken as it is. */
  readonly phi: number;
}

/** The variances behind a delivery, both in the square of its unit, or both relative. */
export interface DeliveryVariance {
  readonly scatter: number;
  readonly reading: number;
}

/**
 * Half-width of the interval for a fill's delivery, in the unit of the variances' root. The only place where scatter
 * becomes "±": H² = t(ν)²·scatter + z²·reading. Scatter has Student's quantile, because it is estimated; reading the
 * scale has the normal one, because its size is known (two roundings are triangular on ± the division, and z/√6 = 0.80
 * of it holds 96 %). Two lone catches are the exception, H = t·√(scatter + reading): there the sum covers less than it
 * says.
 *
 * @returns zero for variances of zero, which says that nothing is known, not that all is
 * Source   GUM (JCGM 100:2008) F.2.2, G.4; coverage over scatter ÷ division from 0.05 to 4: reports/lending-study.md
 */
export function halfWidthOf(
  { scatter, reading }: DeliveryVariance,
  { nu, own }: Pick<Scatter, "nu" | "own">,
  { level, phi }: WidthRule,
): number {
  const t = studentTQuantile((1 + level) / 2, nu);
  if (own && nu < fewestDfForQuadrature) return phi * t * Math.sqrt(scatter + reading);
  const z = normalQuantile((1 + level) / 2);
  return phi * Math.hypot(t * Math.sqrt(scatter), z * Math.sqrt(reading));
}

const fewestDfForQuadrature = 2;

/** Relative half-width with the catches in hand; null: no catch, or a lone one whose scatter nobody knows. */
export function halfWidthNow(state: KnownState, rule: WidthRule): number | null {
  if (state.catches === 0 || state.scatter.nu === 0) return null;
  return halfWidthOf(varianceAfter(state, { further: 0, turns: 1 }), state.scatter, rule);
}

/**
 * Relative half-width to be expected after a plan, if the scatter stays as it is: each planned catch brings a degree of
 * freedom of its own, but the first of a fill, which carries the mean.
 *
 * @returns null where no scatter will be known then: no catch, or a single one with an assumed scatter
 */
export function plannedHalfWidth(state: KnownState, plan: Plan, rule: WidthRule): number | null {
  const df = dfAfter(state, plan);
  if (df === null) return null;
  return halfWidthOf(varianceAfter(state, plan), { nu: df, own: isOwn(state, plan) }, rule);
}

/**
 * Chance that the half-width after a plan is at most `width`. What is in hand stays; the squares still to come, relative
 * to it, follow F (χ² where the scatter is assumed).
 *
 * @returns null as `plannedHalfWidth`
 * Source   Hahn & Meeker, Statistical Intervals (assurance of a width)
 */
export function chanceOfWidth(
  state: KnownState,
  plan: Plan,
  width: number,
  rule: WidthRule,
): number | null {
  const df = dfAfter(state, plan);
  if (df === null) return null;
  const { q, nu } = state.scatter;
  const added = addedDf(state, plan);
  const most = mostScatter(state, plan, width, df, rule);
  if (nu === 0) return most <= 0 ? 0 : q === 0 ? 1 : chiSquaredLowerTail((df * most) / q, df);
  if (added === 0 || q === 0) return q <= most && most >= 0 ? 1 : 0;
  const ratio = ((df * most) / q - nu) / added;
  return ratio <= 0 ? 0 : fLowerTail(ratio, added, nu);
}

/** Relative half-width that will not be exceeded with a chance after a plan; null as `plannedHalfWidth`. */
export function halfWidthAtChance(
  state: KnownState,
  plan: Plan,
  chance: number,
  rule: WidthRule,
): number | null {
  const df = dfAfter(state, plan);
  if (df === null) return null;
  const { nu } = state.scatter;
  const added = addedDf(state, plan);
  const growth =
    nu === 0
      ? chiSquaredQuantile(chance, df) / df
      : added === 0
        ? 1
        : (nu + added * fQuantile(chance, added, nu)) / df;
  const { scatter, reading } = varianceAfter(state, plan);
  return halfWidthOf(
    { scatter: scatter * growth, reading },
    { nu: df, own: isOwn(state, plan) },
    rule,
  );
}

/** Relative variances of the delivery after a plan, with the scatter as it is known now. */
export function varianceAfter(state: KnownState, { further, turns }: Plan): DeliveryVariance {
  const total = state.turns + further * turns;
  return {
    scatter: state.scatter.q / total,
    reading: readingVariance((state.divisionInTurns * (state.catches + further)) / total),
  };
}

/** Degrees of freedom after a plan; null: still none. */
export function dfAfter(state: KnownState, plan: Plan): number | null {
  if (state.catches + plan.further === 0) return null;
  const { nu } = state.scatter;
  const df = nu === 0 ? state.catches + plan.further - 1 : nu + addedDf(state, plan);
  return df > 0 ? df : null;
}

function addedDf({ catches }: KnownState, { further }: Plan): number {
  return catches === 0 ? Math.max(0, further - 1) : further;
}

function isOwn({ scatter }: KnownState, { further }: Plan): boolean {
  return scatter.own || (scatter.nu === 0 && further > 0);
}

/** The largest variance of a one-turn catch with which the half-width is within `width`; below zero: none is. */
function mostScatter(
  state: KnownState,
  plan: Plan,
  width: number,
  df: number,
  { level, phi }: WidthRule,
): number {
  const total = state.turns + plan.further * plan.turns;
  const { reading } = varianceAfter(state, plan);
  const [t, z] = [studentTQuantile((1 + level) / 2, df), normalQuantile((1 + level) / 2)];
  const allowed = (width / phi) ** 2;
  if (isOwn(state, plan) && df < fewestDfForQuadrature) return (allowed / t ** 2 - reading) * total;
  return ((allowed - z ** 2 * reading) / t ** 2) * total;
}
