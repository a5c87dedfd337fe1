import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile, studentTUpperTail } from "../numeric/distributions/student-t.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { mean, sampleStandardDeviation } from "./summary.ts";

/** Which value is suspected: whichever lies farthest off, or, decided before looking, the largest or the smallest. */
export type GrubbsSide = "two-sided" | "largest" | "smallest";

export interface GrubbsTest {
  readonly side: GrubbsSide;
  readonly values: number;
  /** Place of the suspected value in the list given, from 0. */
  readonly index: number;
  /** Its distance from the mean of all values in sample standard deviations; never negative. */
  readonly statistic: number;
  readonly criticalValue: number;
  readonly pValue: number;
  readonly level: number;
  readonly outlying: boolean;
}

/** One step of the generalized ESD procedure: the value farthest off among those still there. */
export interface EsdStep {
  readonly index: number;
  readonly statistic: number;
  readonly criticalValue: number;
}

export interface GeneralizedEsd {
  readonly values: number;
  readonly level: number;
  readonly steps: readonly EsdStep[];
  /** Places of the values declared outlying: all steps up to the last whose statistic exceeds its critical value. */
  readonly outliers: readonly number[];
}

const fewestValues = 3;

/**
 * Is the value farthest from the mean too far? Grubbs' test: G = |x − mean|/s against (n−1)/√n·√(t²/(n−2+t²)), with t
 * the upper (1−level)/(2n) point of Student's t on n − 2 df ((1−level)/n for a side decided beforehand).
 *
 * @param values  n >= 3 finite numbers
 * @param level   chance that clean values raise no flag, in (0, 1)
 * @returns       p by the same bound, at most 1 (exact in the tail that matters, too large elsewhere); null when all
 *                values are equal, but for rounding
 * @throws        NumericalError with fewer than 3 values, or one that is not finite
 * Assumes        a normal sample; below n = 5 it sees gross errors only. reports/outlier-study.md
 * Source         Grubbs & Beck, Technometrics 14 (1972) 847; NIST/SEMATECH e-Handbook, 1.3.5.17.1
 * @example
 *   const masses = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
 *   grubbsTest(masses, "largest", 0.95)?.statistic // -> 2.4688
 */
export function grubbsTest(
  values: readonly number[],
  side: GrubbsSide,
  level: number,
): GrubbsTest | null {
  checkValues(values, fewestValues);
  const n = values.length;
  const farthest = farthestFromMean(values, allPlaces(values), side);
  if (farthest === null) return null;
  const tails = side === "two-sided" ? 2 : 1;
  const criticalValue = grubbsCriticalValue(n, (1 - level) / tails);
  const pValue = Math.min(1, tails * n * studentTUpperTail(tOf(farthest.statistic, n), n - 2));
  return {
    side,
    values: n,
    ...farthest,
    criticalValue,
    pValue,
    level,
    outlying: farthest.statistic > criticalValue,
  };
}

/**
 * How many values are too far, up to a number fixed beforehand? Generalized extreme studentized deviate procedure: take
 * away the farthest value `most` times; all up to the last step that exceeded its critical value are outlying, so that
 * two bad values that hide each other are found.
 *
 * @param values  n >= most + 2 finite numbers
 * @param most    whole number of at least 1
 * @param level   chance that clean values raise no flag, nominal; with n below 25 the true chance is lower
 * @returns       fewer steps than `most` when the values left are all equal
 * @throws        NumericalError with too few values, or one that is not finite
 * Source         Rosner, Technometrics 25 (1983) 165; NIST/SEMATECH e-Handbook, 1.3.5.17.3
 */
export function generalizedEsd(
  values: readonly number[],
  most: number,
  level: number,
): GeneralizedEsd {
  if (!(Number.isInteger(most) && most >= 1))
    throw new NumericalError(`most is ${most}; it must be a whole number of at least 1.`);
  checkValues(values, most + 2);
  const steps: EsdStep[] = [];
  let places = allPlaces(values);
  while (steps.length < most) {
    const farthest = farthestFromMean(values, places, "two-sided");
    if (farthest === null) break;
    steps.push({ ...farthest, criticalValue: grubbsCriticalValue(places.length, (1 - level) / 2) });
    places = places.filter((place) => place !== farthest.index);
  }
  const exceeding = steps.findLastIndex((step) => step.statistic > step.criticalValue);
  return {
    values: values.length,
    level,
    steps,
    outliers: steps.slice(0, exceeding + 1).map(({ index }) => index),
  };
}

/** The largest distance from the mean, in standard deviations, that chance exceeds with the given one-sided probability. */
function grubbsCriticalValue(n: number, tail: number): number {
  const t = studentTQuantile(1 - tail / n, n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
}

// A value at the largest possible distance, (n−1)/√n, leaves no scatter among the others: its t is infinite.
function tOf(statistic: number, n: number): number {
  const remaining = (n - 1) ** 2 - n * statistic ** 2;
  return remaining <= 0
    ? Number.POSITIVE_INFINITY
    : statistic * Math.sqrt((n * (n - 2)) / remaining);
}

function farthestFromMean(
  values: readonly number[],
  places: readonly number[],
  side: GrubbsSide,
): Pick<EsdStep, "index" | "statistic"> | null {
  const present = places.map((place) => at(values, place));
  const center = mean(present);
  const spread = sampleStandardDeviation(present);
  if (isDust(spread, center)) return null;
  const distance = (value: number) =>
    side === "two-sided"
      ? Math.abs(value - center)
      : side === "largest"
        ? value - center
        : center - value;
  const index = places.reduce((farthest, place) =>
    distance(at(values, place)) > distance(at(values, farthest)) ? place : farthest,
  );
  return { index, statistic: distance(at(values, index)) / spread };
}

function allPlaces(values: readonly number[]): readonly number[] {
  return values.map((_, place) => place);
}

function checkValues(values: readonly number[], fewest: number): void {
  if (values.length < fewest)
    throw new NumericalError(`Got ${values.length} values; at least ${fewest} are needed.`);
  for (const [place, value] of values.entries())
    if (!Number.isFinite(value))
      throw new NumericalError(`values[${place}] is ${value}; it must be a finite number.`);
}
