import { NumericalError } from "../errors/errors.ts";
import { requireFinite } from "./domain.ts";

export interface RootOptions {
  /** Stop when the root is known this well, in the unit of x; default 0: as well as a double can. */
  readonly tolerance?: number;
  /** Default 200, several times what a smooth function needs. */
  readonly maxIterations?: number;
}

export interface Bracket {
  readonly lower: number;
  readonly upper: number;
}

/**
 * Where a continuous function crosses zero between two points that have opposite signs.
 * Chandrupatla's method: inverse quadratic interpolation where it is safe, bisection where it is not.
 *
 * @param f continuous between the ends
 * @param lower one end, finite
 * @param upper the other end, finite
 * @throws NumericalError when the ends do not have opposite signs, f is not a number somewhere, or it does not converge
 * Source Chandrupatla 1997, Advances in Engineering Software 28, 145–149
 */
export function findRoot(
  f: (x: number) => number,
  lower: number,
  upper: number,
  options: RootOptions = {},
): number {
  requireFinite("findRoot", "lower", lower);
  requireFinite("findRoot", "upper", upper);
  const { tolerance = 0, maxIterations = 200 } = options;
  // a is the newest point, b the other side of the bracket, c the point that b or a replaced.
  let a = lower;
  let b = upper;
  let fa = evaluate(f, a);
  let fb = evaluate(f, b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) throw notBracketed(a, fa, b, fb);
  // A root at 0 has no relative precision to stop at; 32 digits of the bracket must do.
  const finest = 0.5 * tolerance + Number.EPSILON ** 2 * Math.abs(b - a) + Number.MIN_VALUE;
  let step = 0.5;
  for (let iteration = 0; iteration < maxIterations; iteration++) {
    const x = a + step * (b - a);
    const fx = evaluate(f, x);
    let c = a;
    let fc = fa;
    if (fx > 0 !== fa > 0) {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const smallestStep = (Number.EPSILON * Math.abs(best) + finest) / Math.abs(b - a);
    if (fa === 0 || smallestStep > 0.5) return best;
    step = nextStep(a, fa, b, fb, c, fc);
    step = Math.min(Math.max(step, smallestStep), 1 - smallestStep);
  }
  throw new NumericalError(
    `findRoot: no convergence in ${maxIterations} iterations between ${lower} and ${upper}.`,
  );
}

/**
 * Widens an interval, twice as far each time, until a monotone function has opposite signs at its ends.
 *
 * @param f monotone function
 * @param lower first guess of the lower end
 * @param upper first guess of the upper end, above `lower`
 * @param limit widenings tried before giving up, default 100
 * @throws NumericalError when the function keeps its sign
 */
export function bracketRoot(
  f: (x: number) => number,
  lower: number,
  upper: number,
  limit = 100,
): Bracket {
  let [low, high] = [lower, upper];
  let [fLow, fHigh] = [evaluate(f, low), evaluate(f, high)];
  for (let widening = 0; widening < limit; widening++) {
    if (fLow === 0 || fHigh === 0 || fLow > 0 !== fHigh > 0) return { lower: low, upper: high };
    const width = high - low;
    // The end with the smaller value is nearer to the root; the far end can then move up to the old near end.
    if (Math.abs(fLow) < Math.abs(fHigh)) {
      [high, fHigh] = [low, fLow];
      low -= 2 * width;
      fLow = evaluate(f, low);
    } else {
      [low, fLow] = [high, fHigh];
      high += 2 * width;
      fHigh = evaluate(f, high);
    }
  }
  throw notBracketed(low, fLow, high, fHigh);
}

/** Fraction of the way from a to b to try next. */
function nextStep(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  const interpolationIsSafe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!interpolationIsSafe) return 0.5;
  return (
    (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
  );
}

function evaluate(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (Number.isNaN(value)) throw new NumericalError(`Root search: the function is NaN at ${x}.`);
  return value;
}

function notBracketed(a: number, fa: number, b: number, fb: number): NumericalError {
  return new NumericalError(
    `Root search: the function has the same sign at both ends, ${fa} at ${a} and ${fb} at ${b}.`,
  );
}
