import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { requireFinite, requirePositive } from "../numeric/domain.ts";
import { realPower } from "../numeric/powers.ts";
import { mean } from "./summary.ts";

/** Mean range of two normal values in standard deviations, 2/√π: the factor d2 = 1.128 of control charts. */
const meanRangeOfTwo = 2 / Math.sqrt(Math.PI);

/** Limits that values of a steady process seldom leave. They come from the values, never from what is wanted of them. */
export interface IndividualsChart {
  readonly center: number;
  /** Mean distance between neighbours in time. */
  readonly meanMovingRange: number;
  /** Mean moving range over d2 = 1.128. */
  readonly standardDeviation: number;
  readonly lower: number;
  readonly upper: number;
  /** Places (from 0) of the values outside the limits. */
  readonly outside: readonly number[];
}

export interface EwmaPoint {
  readonly value: number;
  readonly lower: number;
  readonly upper: number;
}

export interface EwmaOptions {
  /** Value of the steady process. */
  readonly target: number;
  /** Standard deviation of one value, above 0. */
  readonly standardDeviation: number;
  /** Weight of the newest value, in (0, 1]; small ones find small shifts. */
  readonly weight: number;
  /** Half-width of the limits in standard deviations of the average. */
  readonly width: number;
}

export interface CusumPoint {
  readonly upper: number;
  readonly lower: number;
  /** Which sum is beyond the decision interval; null: neither. */
  readonly signal: "upper" | "lower" | "both" | null;
}

export interface CusumOptions {
  readonly target: number;
  /** Deviation that is let pass at each value, half the shift to be found; in the unit of the values. */
  readonly allowance: number;
  /** Sum beyond which a shift is signalled; in the unit of the values. */
  readonly decision: number;
}

/**
 * Chart of single values in time order: mean ± 3·(mean moving range)/d2, which is ± 2.66 mean moving ranges.
 *
 * @param values at least 2 finite numbers in time order
 * @param sigmas half-width of the limits in standard deviations, default 3
 * @throws NumericalError with fewer than 2 values or one that is not finite
 * Source NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2
 */
export function individualsChart(values: readonly number[], sigmas = 3): IndividualsChart {
  if (values.length < 2)
    throw new NumericalError(
      `individualsChart: ${values.length} values; at least 2 are needed for a moving range.`,
    );
  requirePositive("individualsChart", "sigmas", sigmas);
  const center = mean(values);
  const meanMovingRange = mean(values.slice(1).map((value, i) => Math.abs(value - at(values, i))));
  const standardDeviation = meanMovingRange / meanRangeOfTwo;
  const [lower, upper] = [center - sigmas * standardDeviation, center + sigmas * standardDeviation];
  const outside = values.flatMap((value, i) => (value < lower || value > upper ? i : []));
  return { center, meanMovingRange, standardDeviation, lower, upper, outside };
}

/**
 * Exponentially weighted moving average z_i = w·x_i + (1 − w)·z_(i−1) from z_0 = target, with limits
 * target ± width·s·√(w/(2 − w)·(1 − (1 − w)^2i)), which widen to their final place over the first values.
 *
 * @param values finite numbers in time order
 * @throws NumericalError when a value or an option is out of range
 * Source Lucas and Saccucci 1990, Technometrics 32, 1–12; NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4
 */
export function ewmaChart(values: readonly number[], options: EwmaOptions): readonly EwmaPoint[] {
  const { target, standardDeviation, weight, width } = options;
  requireFinite("ewmaChart", "target", target);
  requirePositive("ewmaChart", "standardDeviation", standardDeviation);
  requirePositive("ewmaChart", "width", width);
  if (!(weight > 0 && weight <= 1))
    throw new NumericalError(`ewmaChart: weight is ${weight}; it must be above 0 and at most 1.`);
  let average = target;
  return values.map((value, i) => {
    requireFinite("ewmaChart", `value ${i + 1}`, value);
    average += weight * (value - average);
    const share = (weight / (2 - weight)) * (1 - realPower(1 - weight, 2 * (i + 1)));
    const half = width * standardDeviation * Math.sqrt(share);
    return { value: average, lower: target - half, upper: target + half };
  });
}

/**
 * Tabular CUSUM: upper sum max(0, S + x − target − allowance), lower sum max(0, S + target − x − allowance), both from 0.
 *
 * @param values finite numbers in time order
 * @returns both sums at every value, neither below 0
 * @throws NumericalError when a value or an option is out of range
 * Source Montgomery, Introduction to Statistical Quality Control (tabular cusum); NIST/SEMATECH e-Handbook of Statistical
 *   Methods, 6.3.2.3
 */
export function cusumChart(
  values: readonly number[],
  options: CusumOptions,
): readonly CusumPoint[] {
  const { target, allowance, decision } = options;
  requireFinite("cusumChart", "target", target);
  requirePositive("cusumChart", "decision", decision);
  if (!(allowance >= 0 && Number.isFinite(allowance)))
    throw new NumericalError(`cusumChart: allowance is ${allowance}; it must be 0 or more.`);
  let [upper, lower] = [0, 0];
  return values.map((value, i) => {
    requireFinite("cusumChart", `value ${i + 1}`, value);
    upper = Math.max(0, upper + value - target - allowance);
    lower = Math.max(0, lower + target - value - allowance);
    return { upper, lower, signal: signalOf(upper > decision, lower > decision) };
  });
}

function signalOf(upper: boolean, lower: boolean): CusumPoint["signal"] {
  if (upper && lower) return "both";
  if (upper) return "upper";
  return lower ? "lower" : null;
}
