import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import {
  studentTDensity,
  studentTLowerTail,
  studentTUpperTail,
} from "../numeric/distributions/student-t.ts";
import {
  finiteResult,
  requireFinite,
  requirePositive,
  requirePositiveOrInfinite,
} from "../numeric/domain.ts";
import { density, chanceAbove as normalAbove } from "../numeric/standard-normal.ts";

/** How an error e is distributed: e = location + scale·t(df); df = Infinity: normal. */
export interface ErrorLaw {
  readonly location: number;
  /** Above zero. */
  readonly scale: number;
  /** Above zero, need not be whole. */
  readonly df: number;
}

/** Chances of an error beyond a limit on either side. */
export interface ChanceBeyond {
  /** P(e < −limit). */
  readonly below: number;
  /** P(e > limit). */
  readonly above: number;
  readonly either: number;
}

/**
 * How likely is an error beyond a limit? P(|e| > δ) = F((−δ − μ)/σ) + 1 − F((δ − μ)/σ), each tail by itself so that
 * small chances keep their digits.
 *
 * @param limit  0 or more, in the unit of the error
 */
export function chanceBeyond(law: ErrorLaw, limit: number): ChanceBeyond {
  check("chanceBeyond", law);
  requireFinite("chanceBeyond", "limit", limit);
  const below = chanceBelow(law, -limit);
  const above = chanceAbove(law, limit);
  return { below, above, either: Math.min(1, below + above) };
}

/** P(e < limit), the lower tail by itself. */
export function chanceBelow(law: ErrorLaw, limit: number): number {
  check("chanceBelow", law);
  requireFinite("chanceBelow", "limit", limit);
  return studentTLowerTail((limit - law.location) / law.scale, law.df);
}

/** P(e > limit), the upper tail by itself. */
export function chanceAbove(law: ErrorLaw, limit: number): number {
  check("chanceAbove", law);
  requireFinite("chanceAbove", "limit", limit);
  return studentTUpperTail((limit - law.location) / law.scale, law.df);
}

/** What an error comes to on either side of zero, on average. */
export interface ExpectedSides {
  /** The mean of what exceeds zero, E max(e, 0). */
  readonly excess: number;
  /** The mean of what falls short of zero, E max(−e, 0). */
  readonly shortfall: number;
}

/**
 * The mean of what exceeds zero, E max(e, 0) = σ·G(μ/σ) with G(z) = f(z)·(ν + z²)/(ν − 1) + z·F(z), for normal errors
 * f(z) + z·F(z); and of what falls short of it, σ·G(−μ/σ).
 *
 * @returns  null when df <= 1: the means do not exist
 * Source    integration of the t density by parts; Degroot, Optimal Statistical Decisions, 11.8 (normal case)
 */
export function expectedSides(law: ErrorLaw): ExpectedSides | null {
  check("expectedSides", law);
  const { location, scale, df } = law;
  if (df <= 1) return null;
  const size = Math.abs(location / scale);
  // Means over what a spread may be ask of thousands of normal laws, whose arguments have been checked here.
  const normal = df === Number.POSITIVE_INFINITY;
  const tail = normal ? normalAbove(size) : studentTUpperTail(size, df);
  const spread = normal ? 1 : (df + size * size) / (df - 1);
  const bell = (normal ? density(size) : studentTDensity(size, df)) * spread;
  const near = finiteResult("expectedSides", scale * (bell + size * (1 - tail)));
  // Far from zero the two terms cancel to rounding dust of either sign.
  const far = Math.max(0, scale * (bell - size * tail));
  return location > 0 ? { excess: near, shortfall: far } : { excess: far, shortfall: near };
}

/** E|e|: excess and shortfall together; null when df <= 1. */
export function expectedAbsolute(law: ErrorLaw): number | null {
  const sides = expectedSides(law);
  return sides === null ? null : sides.excess + sides.shortfall;
}

/**
 * The mean absolute value of Student's t, κ(ν) = 2√ν/((ν − 1)·B(ν/2, ½)): what a centred error costs for each unit of its
 * scale where the loss grows with its size. √(2/π) for normal errors (df = Infinity).
 *
 * @returns Infinity when df <= 1: the mean grows without bound
 */
export function meanAbsoluteT(df: number): number {
  return expectedAbsolute({ location: 0, scale: 1, df }) ?? Number.POSITIVE_INFINITY;
}

/** E e² = μ² + σ²·ν/(ν − 2), for a loss that grows with the square of the error; null when df <= 2: it is infinite. */
export function expectedSquare(law: ErrorLaw): number | null {
  check("expectedSquare", law);
  const { location, scale, df } = law;
  if (df <= 2) return null;
  const inflation = df === Number.POSITIVE_INFINITY ? 1 : df / (df - 2);
  return finiteResult("expectedSquare", location ** 2 + scale ** 2 * inflation);
}

/** Density of the error at x. */
export function errorDensity(law: ErrorLaw, x: number): number {
  check("errorDensity", law);
  return studentTDensity((x - law.location) / law.scale, law.df) / law.scale;
}

/**
 * The normal law with the scale at its confidence limit, scale·√(ν/χ²(1 − confidence, ν)), as if that were known: the
 * true scale is below it with that confidence. With a confidence below one half it is the lower limit. For centred
 * errors only are chances and losses by it limits too: off centre a wider scale can make a chance smaller. A scale known
 * (df = Infinity) is its own limit.
 *
 * @param confidence  0 < confidence < 1, one-sided
 */
export function lawAtScaleLimit(law: ErrorLaw, confidence: number): ErrorLaw {
  check("lawAtScaleLimit", law);
  const { location, scale, df } = law;
  if (df === Number.POSITIVE_INFINITY) return law;
  const factor = Math.sqrt(df / chiSquaredQuantile(1 - confidence, df));
  return { location, scale: scale * factor, df: Number.POSITIVE_INFINITY };
}

function check(routine: string, { location, scale, df }: ErrorLaw): void {
  requireFinite(routine, "location", location);
  requirePositive(routine, "scale", scale);
  requirePositiveOrInfinite(routine, "df", df);
}
