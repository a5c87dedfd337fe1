import type { Measured } from "../data/setup.ts";
import { normalQuantile } from "../numeric/distributions/normal.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import type { About, Estimate, Interval, Unit } from "../results/estimate.ts";
import { type Measurement, propagateUncertainty } from "../statistics/propagation.ts";
import { fiellerSet, type RatioSet } from "../statistics/ratio-interval.ts";
import { combinedDf } from "../statistics/sample.ts";
import { dfOfInterval } from "./interval-df.ts";
import { intervalAround } from "./t-estimate.ts";

/** A figure worked out from exact and measured ones; standard uncertainty 0: exact, as far as anybody said. */
export interface Derived {
  readonly value: number;
  readonly standardUncertainty: number;
}

/** How an interval was found. */
export type IntervalMethod =
  /** Every part is exact. */
  | "exact"
  /** Scaled with the delivery's. */
  | "t interval"
  /** Its ends are those of the delivery's interval, turned upside down; exact. */
  | "reciprocal of the t interval"
  | "Fieller"
  | "GUM propagation"
  /** The delivery has no interval. */
  | "none";

/** An estimate that says how its interval was found. */
export interface WorkedOut<U extends Unit = Unit> extends Estimate<U> {
  readonly method: IntervalMethod;
}

/** An exact figure. */
export function exactly(value: number): Derived {
  return { value, standardUncertainty: 0 };
}

/**
 * A figure from independent measured ones, first order of the GUM: u² = Σ(cᵢuᵢ)². A part without uncertainty counts as
 * exact.
 *
 * @throws NumericalError when the formula has no finite value there
 */
export function derived(formula: Measurement, parts: readonly (Measured | Derived)[]): Derived {
  const inputs = parts.map(({ value, standardUncertainty }, i) => ({
    name: `part ${i + 1}`,
    value,
    standardUncertainty: standardUncertainty ?? 0,
    law: "normal" as const,
    df: null,
  }));
  // The level only shapes the expanded uncertainty, which is not used here.
  const { value, combined } = propagateUncertainty(formula, inputs, 0.95);
  return { value, standardUncertainty: combined };
}

/** A figure of its own with a normal interval; none when it is exact. */
export function derivedEstimate<U extends Unit>(
  { value, standardUncertainty }: Derived,
  unit: U,
  level: number,
  about: About,
): WorkedOut<U> {
  if (standardUncertainty === 0)
    return { value, unit, standardError: null, df: null, interval: null, method: "exact" };
  const half = normalQuantile((1 + level) / 2) * standardUncertainty;
  return {
    value,
    unit,
    standardError: standardUncertainty,
    df: null,
    interval: intervalAround(value, half, level, about),
    method: "GUM propagation",
  };
}

/**
 * A figure ÷ delivery per turn, such as the turns a hectare needs. With an exact figure the ends are those of the
 * delivery's interval, turned upside down, and exact; else Fieller's set with Student's t on Satterthwaite's degrees of
 * freedom, the delivery's being those of its interval.
 *
 * @param delivery above zero; without a standard error the result has none
 * @returns        interval about "setting"; its upper end is unbounded where the delivery is not told from zero
 * Source          Fieller 1954, Journal of the Royal Statistical Society B 16, 175–185
 */
export function perDelivery<U extends Unit>(
  { value: numerator, standardUncertainty }: Derived,
  delivery: Estimate<"kg/turn">,
  unit: U,
  level: number,
): WorkedOut<U> {
  const value = numerator / delivery.value;
  const { standardError, interval } = delivery;
  const df = dfOfInterval(delivery);
  if (standardError === null || interval === null || df === null)
    return withoutInterval(value, unit);
  if (standardUncertainty === 0)
    return {
      value,
      unit,
      standardError: (value * standardError) / delivery.value,
      df: delivery.df,
      interval: upsideDown(interval, numerator, level),
      method: "reciprocal of the t interval",
    };
  const numeratorVariance = standardUncertainty ** 2;
  const denominatorVariance = standardError ** 2;
  const jointDf = combinedDf([
    { variance: numeratorVariance, df: Number.POSITIVE_INFINITY },
    { variance: value ** 2 * denominatorVariance, df },
  ]);
  const parts = {
    numerator,
    denominator: delivery.value,
    numeratorVariance,
    denominatorVariance,
  };
  const set = fiellerSet(parts, studentTQuantile((1 + level) / 2, jointDf));
  return {
    value,
    unit,
    standardError: Math.hypot(standardUncertainty, value * standardError) / delivery.value,
    df: jointDf,
    interval: intervalOf(set, level),
    method: "Fieller",
  };
}

/**
 * Delivery per turn × a figure, such as the rate of so many turns a hectare. With an exact figure the delivery's interval
 * is scaled; else first order of the GUM with Welch–Satterthwaite's degrees of freedom, the delivery's being those of its
 * interval.
 *
 * @param delivery without a standard error the result has none
 * Source          JCGM 100:2008 (GUM) 5.1.2, G.4.1
 */
export function timesDelivery<U extends Unit>(
  factor: Derived,
  delivery: Estimate<"kg/turn">,
  unit: U,
  level: number,
  about: About,
): WorkedOut<U> {
  const value = delivery.value * factor.value;
  const { standardError, interval } = delivery;
  const df = dfOfInterval(delivery);
  if (standardError === null || interval === null || df === null)
    return withoutInterval(value, unit);
  if (factor.standardUncertainty === 0)
    return {
      value,
      unit,
      standardError: standardError * factor.value,
      df: delivery.df,
      interval: {
        lower: interval.lower === null ? null : interval.lower * factor.value,
        upper: interval.upper === null ? null : interval.upper * factor.value,
        level,
        about,
      },
      method: "t interval",
    };
  const inputs = [
    {
      name: "delivery",
      value: delivery.value,
      standardUncertainty: standardError,
      law: "t",
      df: Number.isFinite(df) ? df : null,
    },
    { name: "factor", ...factor, law: "normal", df: null },
  ] as const;
  const budget = propagateUncertainty(([k = 0, x = 0]) => k * x, inputs, level);
  return {
    value,
    unit,
    standardError: budget.combined,
    df: budget.effectiveDf,
    interval: intervalAround(value, budget.expanded, level, about),
    method: "GUM propagation",
  };
}

function withoutInterval<U extends Unit>(value: number, unit: U): WorkedOut<U> {
  return { value, unit, standardError: null, df: null, interval: null, method: "none" };
}

/** What reaches down to zero has no upper end upside down. */
function upsideDown({ lower, upper }: Interval, numerator: number, level: number): Interval {
  return {
    lower: upper === null ? 0 : numerator / upper,
    upper: lower === null || lower <= 0 ? null : numerator / lower,
    level,
    about: "setting",
  };
}

/** Of two half-lines only the one above zero can be set; of every ratio there is, each can. */
function intervalOf(set: RatioSet, level: number): Interval {
  const about = "setting";
  switch (set.shape) {
    case "interval":
      return { lower: set.lower, upper: set.upper, level, about };
    case "two half-lines":
      return { lower: set.above, upper: null, level, about };
    case "whole line":
      return { lower: null, upper: null, level, about };
  }
}
