import { NumericalError } from "../errors/errors.ts";
import { requireFinite } from "./domain.ts";

export interface MinimumOptions {
  /**
   * Relative width at which the search stops, default 1e-8: near a smooth minimum the function is flat, so x is
   * never known better than about the square root of the rounding unit.
   */
  readonly tolerance?: number;
  /** Default 200. */
  readonly maxIterations?: number;
}

export interface Minimum {
  /** Where the function is lowest. */
  readonly argument: number;
  readonly value: number;
}

const goldenFraction = 0.5 * (3 - Math.sqrt(5));

/**
 * The lowest point of a one-dimensional function with a single valley: Brent's method, parabolas through the three
 * best points with golden-section steps where a parabola is not to be trusted. The two ends are compared too, so a
 * minimum on the boundary is returned as exactly that end.
 *
 * @param f function, a number everywhere on the interval
 * @param lower lower end, finite
 * @param upper upper end, finite, above `lower`
 * @throws NumericalError when the interval is empty, f is NaN somewhere, or it does not converge
 * Source Brent 1973, Algorithms for Minimization without Derivatives, chapter 5
 */
export function minimize(
  f: (x: number) => number,
  lower: number,
  upper: number,
  options: MinimumOptions = {},
): Minimum {
  requireFinite("minimize", "lower", lower);
  requireFinite("minimize", "upper", upper);
  if (!(lower < upper)) {
    throw new NumericalError(`minimize: lower is ${lower}; it must be below upper, ${upper}.`);
  }
  const inner = innerMinimum(f, lower, upper, options);
  // The lower end comes last, so that it wins where the function is flat.
  return [upper, lower]
    .map((end) => ({ argument: end, value: evaluate(f, end) }))
    .reduce((best, end) => (end.value <= best.value ? end : best), inner);
}

/** Brent's localmin; x is the best point, w the second best, v the previous w. */
function innerMinimum(
  f: (x: number) => number,
  lower: number,
  upper: number,
  { tolerance = 1e-8, maxIterations = 200 }: MinimumOptions,
): Minimum {
  let [a, b] = [lower, upper];
  let x = a + goldenFraction * (b - a);
  let [w, v] = [x, x];
  let fx = evaluate(f, x);
  let [fw, fv] = [fx, fx];
  let [step, stepBefore] = [0, 0];
  for (let iteration = 0; iteration < maxIterations; iteration++) {
    const middle = 0.5 * (a + b);
    const resolution = tolerance * Math.abs(x) + 1e-12 * (upper - lower) + Number.MIN_VALUE;
    if (Math.abs(x - middle) <= 2 * resolution - 0.5 * (b - a)) return { argument: x, value: fx };
    const parabola = parabolaStep(x, fx, w, fw, v, fv);
    const trusted =
      Math.abs(stepBefore) > resolution &&
      Math.abs(parabola) < Math.abs(0.5 * stepBefore) &&
      x + parabola > a &&
      x + parabola < b;
    stepBefore = trusted ? step : x < middle ? b - x : a - x;
    step = trusted ? parabola : goldenFraction * stepBefore;
    const nearEnd = x + step - a < 2 * resolution || b - (x + step) < 2 * resolution;
    if (trusted && nearEnd) step = x < middle ? resolution : -resolution;
    const u = x + (Math.abs(step) >= resolution ? step : Math.sign(step) * resolution);
    const fu = evaluate(f, u);
    if (fu <= fx) {
      if (u < x) b = x;
      else a = x;
      [v, fv, w, fw, x, fx] = [w, fw, x, fx, u, fu];
      continue;
    }
    if (u < x) a = u;
    else b = u;
    if (fu <= fw || w === x) [v, fv, w, fw] = [w, fw, u, fu];
    else if (fu <= fv || v === x || v === w) [v, fv] = [u, fu];
  }
  throw new NumericalError(
    `minimize: no convergence in ${maxIterations} iterations between ${lower} and ${upper}.`,
  );
}

/** Step from x to the vertex of the parabola through the three points; NaN when they lie on a line. */
function parabolaStep(x: number, fx: number, w: number, fw: number, v: number, fv: number): number {
  const r = (x - w) * (fx - fv);
  const q = (x - v) * (fx - fw);
  return -((x - v) * q - (x - w) * r) / (2 * (q - r));
}

function evaluate(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (Number.isNaN(value)) throw new NumericalError(`minimize: the function is NaN at ${x}.`);
  return value;
}
