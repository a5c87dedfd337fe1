import { NumericalError } from "../errors/errors.ts";
import { studentTDensity, studentTQuantile } from "../numeric/distributions/student-t.ts";
import { findRoot } from "../numeric/roots.ts";

/** A Student's t distribution moved to a center and stretched by a scale. */
export interface ScaledT {
  readonly center: number;
  readonly scale: number;
  readonly df: number;
}

export interface CombinedT {
  readonly mean: number;
  /** Ends of the equal-tailed interval. */
  readonly lower: number;
  readonly upper: number;
  /** Chance of lying further than this from the mean. */
  readonly chanceBeyond: (distance: number) => number;
}

const places = 4000;
const negligible = 1e-9;

/**
 * Two independent statements about one quantity put together: the product of two scaled t densities, normalised
 * numerically, with an equal-tailed interval.
 *
 * @returns null when the two leave (to one part in 10⁹) no value in common: then they contradict each other
 * @throws  NumericalError when a scale or df is not above zero, or the level is not inside (0, 1)
 * Source   Box & Tiao, Bayesian Inference in Statistical Analysis, 1973, section 9.2 (product of t densities)
 */
export function combineScaledT(a: ScaledT, b: ScaledT, level: number): CombinedT | null {
  for (const { scale, df } of [a, b])
    if (!(scale > 0 && df > 0))
      throw new NumericalError(
        `A t distribution needs scale and df above zero; got ${scale}, ${df}.`,
      );
  if (!(level > 0 && level < 1))
    throw new NumericalError(`level is ${level}; it must be in (0, 1).`);
  const [from, to] = common(a, b);
  if (!(from < to)) return null;

  const step = (to - from) / places;
  const at = (i: number) => from + i * step;
  const heights = Float64Array.from(
    { length: places + 1 },
    (_, i) => density(a, at(i)) * density(b, at(i)),
  );
  // Trapezoids converge faster than any power of the step here, because the product fades out at both ends.
  const below = new Float64Array(places + 1);
  let moment = 0;
  for (let i = 1; i <= places; i++) {
    const [left, right] = [heights[i - 1] ?? 0, heights[i] ?? 0];
    below[i] = (below[i - 1] ?? 0) + (left + right) / 2;
    moment += (left * at(i - 1) + right * at(i)) / 2;
  }
  const total = below[places] ?? 0;
  if (!(total > 0)) return null;

  const curve = { heights, below: corrected(below, heights) };
  const share = (x: number) =>
    areaAt(curve, Math.min(places, Math.max(0, (x - from) / step))) / total;
  const mean = moment / total;
  const tail = (1 - level) / 2;
  return {
    mean,
    lower: from + step * placeOf(curve, tail * total),
    upper: from + step * placeOf(curve, (1 - tail) * total),
    chanceBeyond: (distance) => share(mean - distance) + (1 - share(mean + distance)),
  };
}

function common(a: ScaledT, b: ScaledT): readonly [number, number] {
  const reach = ({ scale, df }: ScaledT) => scale * studentTQuantile(1 - negligible, df);
  return [
    Math.max(a.center - reach(a), b.center - reach(b)),
    Math.min(a.center + reach(a), b.center + reach(b)),
  ];
}

function density({ center, scale, df }: ScaledT, x: number): number {
  return studentTDensity((x - center) / scale, df) / scale;
}

// The end correction of Euler and Maclaurin: over the whole range trapezoids are exact, up to a point inside they are not.
function corrected(below: Float64Array, heights: Float64Array): Float64Array {
  return below.map((area, i) =>
    i === 0 || i === places ? area : area - ((heights[i + 1] ?? 0) - (heights[i - 1] ?? 0)) / 24,
  );
}

/** A density at equal steps, and the area below it up to each step, by trapezoids. */
interface Curve {
  readonly heights: Float64Array;
  readonly below: Float64Array;
}

// Inside a step the density is taken as straight, so that the area there is exactly what the trapezoid says.
function areaAt({ heights, below }: Curve, place: number): number {
  const i = Math.min(below.length - 2, Math.floor(place));
  const part = place - i;
  const [left, right] = [heights[i] ?? 0, heights[i + 1] ?? 0];
  return (below[i] ?? 0) + part * (left + (part * (right - left)) / 2);
}

/** Where the area reaches a value, in steps from the start. */
function placeOf(curve: Curve, wanted: number): number {
  return findRoot((place) => areaAt(curve, place) - wanted, 0, curve.below.length - 1);
}
