import { studentTQuantile, studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { combineScaledT } from "../statistics/combined-t.ts";
import type { PooledScatter } from "./catch-scatter.ts";

/** What speaks at one point of the curve. */
export type CurveBasis =
  | "history"
  | "borrowed history"
  | "catches"
  | "catches with history"
  | "unknown";

export interface CurvePoint {
  /** Catches made of the fill; 0: calibration skipped. */
  readonly catches: number;
  /** Half-width of the interval for the fill's true delivery, as a fraction of the delivery; null: unknown. */
  readonly halfWidth: number | null;
  /** Chance that the rate is off by more than the tolerance when the drive is set to the estimate; null: unknown. */
  readonly chanceOffTolerance: number | null;
  /** Standard error as a fraction of the delivery. */
  readonly relativeError: number | null;
  readonly df: number | null;
  readonly basis: CurveBasis;
}

/** How well a fill's delivery is known after 0, 1, 2, … catches of it: the one curve every question reads. */
export interface NextCatchCurve {
  readonly kind: "next-catch-curve";
  readonly level: number;
  readonly tolerance: number;
  readonly turnsPerCatch: number;
  /** Delivery that percentages refer to, kg/turn. */
  readonly delivery: number;
  readonly points: readonly CurvePoint[];
  /** Fewest catches whose half-width is within the tolerance; 0: skipping is within it; null: none on this curve. */
  readonly catchesForTolerance: number | null;
  /** True where one catch tells less than the earlier fills do. */
  readonly firstCatchTellsLess: boolean;
}

/** What the curve is computed from; all of it comes from the model of one meter. */
export interface CurveInput {
  readonly delivery: number;
  /** Standard error of a new fill's delivery from earlier fills, kg/turn, with its df; null: no history. */
  readonly history: {
    readonly standardError: number;
    readonly df: number;
    readonly borrowed: boolean;
  } | null;
  readonly scatter: Pick<PooledScatter, "variance" | "df">;
  readonly divisionKg: number | null;
  readonly turnsPerCatch: number;
  readonly level: number;
  readonly tolerance: number;
  readonly mostCatches: number;
  /**
   * true: catches are read together with the history, as if the next fill came from the same row of fills (product of
   * the two t densities). Never the default; only with own history of at least six fills and no open drift finding.
   */
  readonly withHistory: boolean;
}

/**
 * The next-catch curve. m = 0: t interval for a new fill from earlier fills, or unknown. m >= 1: the fill's own
 * catches with the pooled catch scatter, t(ν_w)·√(s_w²/(m·t) + d²/6/t²). Today's value is not shrunk towards history:
 * a catch test exists to find the fill that differs.
 *
 * @returns  points for m = 0 … mostCatches; chance = P(|error| > tolerance) by the same t distribution
 */
export function nextCatchCurve(input: CurveInput): NextCatchCurve {
  const { level, tolerance, turnsPerCatch, delivery } = input;
  const points = [
    skippingPoint(input),
    ...Array.from({ length: input.mostCatches }, (_, i) => catchPoint(input, i + 1)),
  ];
  const [skip, first] = points;
  return {
    kind: "next-catch-curve",
    level,
    tolerance,
    turnsPerCatch,
    delivery,
    points,
    catchesForTolerance:
      points.find(({ halfWidth }) => halfWidth !== null && halfWidth <= tolerance)?.catches ?? null,
    firstCatchTellsLess:
      typeof skip?.halfWidth === "number" &&
      typeof first?.halfWidth === "number" &&
      first.halfWidth > skip.halfWidth,
  };
}

function skippingPoint(input: CurveInput): CurvePoint {
  if (input.history === null) return unknownPoint(0);
  const { standardError, df, borrowed } = input.history;
  return knownPoint(0, standardError, df, borrowed ? "borrowed history" : "history", input);
}

function catchPoint(input: CurveInput, catches: number): CurvePoint {
  const { scatter, turnsPerCatch, divisionKg } = input;
  if (scatter.variance === null) return unknownPoint(catches);
  const variance =
    scatter.variance / (catches * turnsPerCatch) + (divisionKg ?? 0) ** 2 / 6 / turnsPerCatch ** 2;
  if (variance === 0) return unknownPoint(catches);
  const error = Math.sqrt(variance);
  return input.withHistory
    ? combinedPoint(catches, error, scatter.df, input)
    : knownPoint(catches, error, scatter.df, "catches", input);
}

function combinedPoint(
  catches: number,
  standardError: number,
  df: number,
  { history, delivery, level, tolerance }: CurveInput,
): CurvePoint {
  if (history === null) return unknownPoint(catches);
  // Planned for a fill that turns out where the history expects it.
  const combined = combineScaledT(
    { center: 0, scale: history.standardError, df: history.df },
    { center: 0, scale: standardError, df },
    level,
  );
  if (combined === null) return unknownPoint(catches);
  return {
    catches,
    halfWidth: combined.upper / delivery,
    chanceOffTolerance: combined.chanceBeyond(tolerance * delivery),
    relativeError: null,
    df: null,
    basis: "catches with history",
  };
}

function knownPoint(
  catches: number,
  standardError: number,
  df: number,
  basis: CurveBasis,
  { level, tolerance, delivery }: CurveInput,
): CurvePoint {
  const relativeError = standardError / delivery;
  return {
    catches,
    halfWidth: studentTQuantile((1 + level) / 2, df) * relativeError,
    chanceOffTolerance: relativeError > 0 ? studentTTwoSided(tolerance / relativeError, df) : null,
    relativeError,
    df,
    basis,
  };
}

function unknownPoint(catches: number): CurvePoint {
  return {
    catches,
    halfWidth: null,
    chanceOffTolerance: null,
    relativeError: null,
    df: null,
    basis: "unknown",
  };
}
