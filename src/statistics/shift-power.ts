import {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from "../numeric/distributions/noncentral-t.ts";
import { normalQuantile } from "../numeric/distributions/normal.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { requirePositive, requireProbability } from "../numeric/domain.ts";
import { bracketRoot, findRoot } from "../numeric/roots.ts";

/** A one-sample t test that is to find a shift of a mean. */
export interface ShiftTest {
  /** 1 − the chance of a false alarm, 0 < level < 1. */
  readonly level: number;
  readonly sides: "one" | "two";
}

/**
 * Chance that a one-sample t test of n observations finds a shift: noncentral t with noncentrality √n·shift/s. The
 * two-sided test counts findings on either side.
 *
 * @param n      observations, above 1, need not be whole
 * @param shift  true shift in standard deviations of one observation
 */
export function shiftPower(n: number, shift: number, test: ShiftTest): number {
  requirePositive("shiftPower", "n - 1", n - 1);
  requireProbability("shiftPower", "level", test.level);
  const df = n - 1;
  const noncentrality = Math.sqrt(n) * Math.abs(shift);
  const critical = studentTQuantile(test.sides === "two" ? (1 + test.level) / 2 : test.level, df);
  const found = noncentralTUpperTail(critical, df, noncentrality);
  return test.sides === "two" ? found + noncentralTLowerTail(-critical, df, noncentrality) : found;
}

/**
 * Observations that find a shift with the chance asked for, by the t test itself; not rounded, so that plans can be
 * compared.
 *
 * @param shift  in standard deviations of one observation, above 0
 * @param power  chance of finding it, above the chance of a false alarm
 */
export function shiftSampleSize(shift: number, power: number, test: ShiftTest): number {
  const start = Math.max(1, shiftSampleSizeByNormal(shift, power, test));
  const missing = (logDf: number) => shiftPower(1 + Math.exp(logDf), shift, test) - power;
  const { lower, upper } = bracketRoot(missing, Math.log(start), Math.log(start + 2));
  return 1 + Math.exp(findRoot(missing, lower, upper));
}

/**
 * The same if the scatter were known: n = ((z(level) + z(power))/shift)², not rounded.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2.
 */
export function shiftSampleSizeByNormal(shift: number, power: number, test: ShiftTest): number {
  requirePositive("shiftSampleSizeByNormal", "shift", shift);
  requireProbability("shiftSampleSizeByNormal", "power", power);
  const p = test.sides === "two" ? (1 + test.level) / 2 : test.level;
  return ((normalQuantile(p) + normalQuantile(power)) / shift) ** 2;
}

/** The shift, in standard deviations of one observation, that n observations find with the chance asked for. */
export function detectableShift(n: number, power: number, test: ShiftTest): number {
  requireProbability("detectableShift", "power", power);
  const missing = (shift: number) => shiftPower(n, shift, test) - power;
  let upper = 4 / Math.sqrt(n);
  while (missing(upper) < 0) upper *= 2;
  return findRoot(missing, 0, upper);
}
