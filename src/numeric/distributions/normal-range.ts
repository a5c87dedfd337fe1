import { at } from "../../errors/at.ts";
import { interpolatedLog } from "../interpolation.ts";
import { realPower } from "../powers.ts";
import { gaussLegendreRule } from "../quadrature.ts";
import { chanceAbove, density } from "../standard-normal.ts";

/** Below this width Φ(z) − Φ(z − width) is integrated instead of subtracted, to keep its leading digits. */
const narrow = 0.5;

/** So far below the largest value no other can be, to more digits than a number has. */
const nothingBelow = -12;

/** Steps of the largest value z: Φ(z) and the probability of z, each with the step's width. */
interface LargestValue {
  readonly first: number;
  readonly step: number;
  readonly below: Float64Array;
  readonly mass: Float64Array;
  /** How many other values there are. */
  readonly others: number;
}

/**
 * Distribution of the range of `size` independent standard normal values: returns the function that gives one tail of
 * it at a width above 0.
 *
 * P(range ≤ w) = size ∫ φ(z)·(Φ(z) − Φ(z − w))^(size − 1) dz, z being the largest value. The integrand is analytic and
 * dies away like a Gaussian, so equal steps converge faster than any power of the step; steps of 0.55/√size leave an
 * error below 1e-17 up to size 100.
 *
 * @param size how many values, whole number of at least 2
 * @param side which tail the returned function gives
 * Source David and Nagaraja 2003, Order Statistics, 3rd edition, section 2.3
 */
export function rangeTail(size: number, side: "lower" | "upper"): (width: number) => number {
  if (side === "upper") return upperTails.get(size) ?? kept(size);
  const largest = largestValue(size);
  return (width) => (width < narrow ? narrowTail(width, largest) : lowerTail(width, largest));
}

/** Up to so many values a tail is worked out as fast as it is looked up. */
const few = 12;
/** From here on the tail is below 1e-18 times the number of pairs, and means over it hardly feel what lies there. */
const farOut = 13;
/** Comparisons of many means ask for the tail of one size at a hundred thousand widths. */
const upperTails = new Map<number, (width: number) => number>();
const sizesKept = 8;

function kept(size: number): (width: number) => number {
  const largest = largestValue(size);
  const exact = (width: number) => upperTail(width, largest);
  const tail = size <= few ? exact : interpolatedLog(exact, farOut);
  if (upperTails.size >= sizesKept) upperTails.clear();
  upperTails.set(size, tail);
  return tail;
}

function largestValue(size: number): LargestValue {
  const step = 0.55 / Math.sqrt(size);
  // Outside these the largest value does not add to any tail above 1e-8 in its first 16 digits.
  const first = -Math.sqrt(120 / size);
  const others = size - 1;
  const z = Float64Array.from(
    { length: Math.ceil((11 - first) / step) },
    (_, i) => first + i * step,
  );
  const below = z.map(standardLower);
  const mass = z.map((value, i) => size * step * density(value) * realPower(at(below, i), others));
  return { first, step, below, mass, others };
}

function lowerTail(width: number, { first, step, below, mass, others }: LargestValue): number {
  let total = 0;
  for (let i = 0; i < mass.length; i++) {
    const lowest = first + i * step - width;
    const inside = lowest < nothingBelow ? 1 : 1 - shareBelow(lowest, at(below, i));
    total += at(mass, i) * realPower(inside, others);
  }
  return Math.min(1, total);
}

/** As the lower tail with 1 − inside^others in place of inside^others, which is small where the tail is. */
function upperTail(width: number, { first, step, below, mass, others }: LargestValue): number {
  let total = 0;
  for (let i = mass.length - 1; i >= 0; i--) {
    const lowest = first + i * step - width;
    if (lowest < nothingBelow) break;
    const outside = shareBelow(lowest, at(below, i));
    total -= at(mass, i) * Math.expm1(others * Math.log1p(-outside));
  }
  return Math.min(1, total);
}

function narrowTail(width: number, { first, step, mass, others }: LargestValue): number {
  let total = 0;
  for (let i = 0; i < mass.length; i++) {
    const z = first + i * step;
    total += density(z) * realPower(slice(z, width), others);
  }
  return (others + 1) * step * total;
}

/** Φ(z) − Φ(z − width) for a narrow slice. */
function slice(z: number, width: number): number {
  const { nodes, weights } = gaussLegendreRule(8);
  const half = 0.5 * width;
  let sum = 0;
  for (let i = 0; i < 8; i++) sum += at(weights, i) * density(z - half + half * at(nodes, i));
  return half * sum;
}

function standardLower(z: number): number {
  return chanceAbove(-z);
}

/** Share of the values below the largest that are below `lowest` too; rounding must not make it more than all. */
function shareBelow(lowest: number, below: number): number {
  return Math.min(1, standardLower(lowest) / below);
}
