import { sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { finiteResult, requireFinite, requirePositiveOrInfinite } from "../numeric/domain.ts";
import { wholePower } from "../numeric/powers.ts";

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
  const variance = finite(sum(effects.map(({ contribution }) => contribution ** 2)));
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
 * @throws       NumericalError when a contribution or the result is not finite, or df is not above zero
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
    parts.map(({ contribution, df }) => (df === null ? 0 : wholePower(contribution, 4) / df)),
  );
  return doubt > 0 ? finiteResult("welchSatterthwaite", variance ** 2 / doubt) : null;
}

// A step of the size of the uncertainty itself sees the curvature that the uncertainty would see.
function sensitivityOf(
  measurement: Measurement,
  values: readonly number[],
  index: number,
  standardUncertainty: number,
): number {
  const center = at(values, index);
  const step = Math.max(
    standardUncertainty * 0.01,
    Math.abs(center) * 1e-6,
    Number.MIN_VALUE * 2 ** 60,
  );
  const moved = (shift: number) =>
    measurement(values.map((v, i) => (i === index ? center + shift : v)));
  return finite((moved(step) - moved(-step)) / (2 * step));
}

/** @throws NumericalError without inputs, or when one is out of range */
export function checkInputs(inputs: readonly Input[]): void {
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

/** @throws NumericalError when a result is not finite */
export function finite(value: number): number {
  if (!Number.isFinite(value))
    throw new NumericalError(
      `The result is ${value}; it must be finite for inputs near their values.`,
    );
  return value;
}
