import { sum } from "simple-statistics";
import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { requireFinite, requirePositiveOrInfinite } from "../numeric/domain.ts";
import type { RandomStream } from "../numeric/random.ts";

/** What is believed about an input around its value: scaled Student's t, normal, or rectangular. */
export type InputLaw = "t" | "normal" | "rectangular";

/** One input of a measurement. */
export interface Input {
  readonly name: string;
  readonly value: number;
  /** Standard deviation of what is believed about it, in its own unit. */
  readonly standardUncertainty: number;
  readonly law: InputLaw;
  /** Degrees of freedom of the standard uncertainty; null: known well. */
  readonly df: number | null;
}

export interface Contribution extends Input {
  /** How far the result moves when the input moves by one unit. */
  readonly sensitivity: number;
  /** |sensitivity| × standard uncertainty, in the unit of the result. */
  readonly contribution: number;
  /** Share of the combined variance. */
  readonly share: number;
}

/** A result with its uncertainty budget. */
export interface Budget {
  readonly value: number;
  readonly combined: number;
  /** Welch–Satterthwaite; null: infinite. */
  readonly effectiveDf: number | null;
  readonly coverageFactor: number;
  readonly expanded: number;
  readonly contributions: readonly Contribution[];
}

/** A result as a function of its inputs, in their order. */
export type Measurement = (values: readonly number[]) => number;

/**
 * Uncertainty budget of a result y = f(x₁ … xₙ) with independent inputs: u² = Σ(cᵢuᵢ)², cᵢ = ∂f/∂xᵢ by central
 * differences, effective df = u⁴/Σ((cᵢuᵢ)⁴/νᵢ), expanded = t(level, df)·u.
 *
 * @param level  coverage of the expanded uncertainty, such as 0.95
 * @throws       NumericalError when there is no input, an uncertainty is negative or not finite, or f is not finite
 * Source        JCGM 100:2008 (GUM) 5.1.2, 5.1.4, G.4.1, equation G.2b
 */
export function propagateUncertainty(
  measurement: Measurement,
  inputs: readonly Input[],
  level: number,
): Budget {
  checkInputs(inputs);
  const values = inputs.map(({ value }) => value);
  const value = finite(measurement(values));
  const effects = inputs.map((input, i) => {
    const sensitivity = sensitivityOf(measurement, values, i, input.standardUncertainty);
    return {
      ...input,
      sensitivity,
      contribution: Math.abs(sensitivity) * input.standardUncertainty,
    };
  });
  const variance = sum(effects.map(({ contribution }) => contribution ** 2));
  const effectiveDf = welchSatterthwaite(effects);
  const coverageFactor = studentTQuantile((1 + level) / 2, effectiveDf ?? Infinity);
  const combined = Math.sqrt(variance);
  return {
    value,
    combined,
    effectiveDf,
    coverageFactor,
    expanded: coverageFactor * combined,
    contributions: effects.map((effect) => ({
      ...effect,
      share: variance > 0 ? effect.contribution ** 2 / variance : 0,
    })),
  };
}

/**
 * Effective degrees of freedom of a combined standard uncertainty; null when every part is known well.
 *
 * @param parts  what each contributes, in the unit of the result, and the degrees of freedom behind it; null: known well
 * @throws       NumericalError when a contribution is not finite or df is not above zero
 * Source        JCGM 100:2008 (GUM) equation G.2b
 */
export function welchSatterthwaite(
  parts: readonly { readonly contribution: number; readonly df: number | null }[],
): number | null {
  for (const { contribution, df } of parts) {
    requireFinite("welchSatterthwaite", "contribution", contribution);
    if (df !== null) requirePositiveOrInfinite("welchSatterthwaite", "df", df);
  }
  const variance = sum(parts.map(({ contribution }) => contribution ** 2));
  const doubt = sum(
    parts.map(({ contribution, df }) => (df === null ? 0 : contribution ** 4 / df)),
  );
  return doubt > 0 ? variance ** 2 / doubt : null;
}

export interface MonteCarloCheck {
  readonly draws: number;
  readonly seed: number;
  readonly mean: number;
  readonly standardDeviation: number;
  /** Probabilistically symmetric interval. */
  readonly lower: number;
  readonly upper: number;
  /** Standard error of the less certain end, from the draws themselves. */
  readonly endError: number;
}

/**
 * The same result by drawing inputs: what the budget's linear sum is checked against.
 *
 * @param random  seeded stream; the same seed gives the same check
 * Source         JCGM 101:2008 (GUM supplement 1), clause 7; scaled t for inputs with finite df, 6.4.9
 */
export function monteCarloCheck(
  measurement: Measurement,
  inputs: readonly Input[],
  level: number,
  draws: number,
  random: RandomStream,
  seed: number,
): MonteCarloCheck {
  checkInputs(inputs);
  const results = Float64Array.from({ length: draws }, () =>
    measurement(inputs.map((input) => drawOf(input, random))),
  ).sort();
  const tail = (1 - level) / 2;
  const mean = sum([...results]) / draws;
  const squares = sum(Array.from(results, (value) => (value - mean) ** 2));
  const [lower, upper] = [tail, 1 - tail].map((share) => quantileOf(results, share));
  return {
    draws,
    seed,
    mean: finite(mean),
    standardDeviation: Math.sqrt(squares / (draws - 1)),
    lower: lower?.value ?? mean,
    upper: upper?.value ?? mean,
    endError: Math.max(lower?.standardError ?? 0, upper?.standardError ?? 0),
  };
}

/**
 * A quantile of sorted draws. So many of n lie below it as a binomial count tells, of standard deviation √(n·p·(1 − p)):
 * the values that many places to either side are a standard error away.
 *
 * Source  JCGM 101:2008 (GUM supplement 1), 7.9; David & Nagaraja, Order Statistics (2003), 7.1
 */
function quantileOf(sorted: Float64Array, share: number) {
  const last = sorted.length - 1;
  const place = Math.round(share * last);
  const aside = Math.max(1, Math.round(Math.sqrt(sorted.length * share * (1 - share))));
  const [below, value, above] = [place - aside, place, place + aside].map(
    (one) => sorted[Math.min(Math.max(one, 0), last)] ?? 0,
  );
  return { value: value ?? 0, standardError: ((above ?? 0) - (below ?? 0)) / 2 };
}

function drawOf({ value, standardUncertainty, law, df }: Input, random: RandomStream): number {
  switch (law) {
    case "rectangular":
      return value + standardUncertainty * Math.sqrt(3) * (2 * random.uniform() - 1);
    case "normal":
      return value + standardUncertainty * random.normal();
    case "t":
      return (
        value +
        (standardUncertainty * random.normal()) /
          Math.sqrt(df === null ? 1 : random.chiSquared(df) / df)
      );
  }
}

// A step of the size of the uncertainty itself sees the curvature that the uncertainty would see.
function sensitivityOf(
  measurement: Measurement,
  values: readonly number[],
  index: number,
  standardUncertainty: number,
): number {
  const center = values[index] ?? 0;
  const step = Math.max(
    standardUncertainty * 0.01,
    Math.abs(center) * 1e-6,
    Number.MIN_VALUE * 2 ** 60,
  );
  const at = (shift: number) =>
    measurement(values.map((v, i) => (i === index ? center + shift : v)));
  return finite((at(step) - at(-step)) / (2 * step));
}

function checkInputs(inputs: readonly Input[]): void {
  if (inputs.length === 0)
    throw new NumericalError("An uncertainty budget needs at least 1 input.");
  for (const { name, standardUncertainty, df } of inputs) {
    if (!(standardUncertainty >= 0 && Number.isFinite(standardUncertainty)))
      throw new NumericalError(
        `${name}: the standard uncertainty is ${standardUncertainty}; it must be zero or more.`,
      );
    if (df !== null && !(df > 0 && Number.isFinite(df)))
      throw new NumericalError(`${name}: df is ${df}; it must be above zero, or null: known well.`);
  }
}

function finite(value: number): number {
  if (!Number.isFinite(value))
    throw new NumericalError(
      `The result is ${value}; it must be finite for inputs near their values.`,
    );
  return value;
}
