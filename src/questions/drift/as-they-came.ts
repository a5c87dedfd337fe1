import { intervalAround } from "../../model/t-estimate.ts";
import { normalQuantile } from "../../numeric/distributions/normal.ts";
import {
  studentTQuantile,
  studentTTwoSided,
  studentTUpperTail,
} from "../../numeric/distributions/student-t.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import type { Interval } from "../../results/estimate.ts";

/** One fill against the fills before it, as it could have been judged on the day. */
export interface AgainstEarlier {
  /** Mean of the earlier fills, kg/turn. */
  readonly mean: number;
  /** Where the fill was expected; about "next fill". */
  readonly interval: Interval;
  /** (fill − mean) ÷ (s·√(1 + 1/m)), m earlier fills. */
  readonly statistic: number;
  /** m − 1. */
  readonly df: number;
  readonly pValue: number;
  readonly outside: boolean;
}

/** Tails smaller than this are all the same to a chart, and the next step down would be infinite. */
const smallestTail = 1e-300;

/**
 * Every fill against the prediction interval of the fills before it: mean ± t(m − 1)·s·√(1 + 1/m).
 *
 * @param deliveries  one a fill, in time order
 * @param level       of each interval
 * @returns           null for the first two fills, and where the earlier ones agree exactly
 * Source             Hahn & Meeker, Statistical Intervals, section 4.7
 */
export function againstEarlier(
  deliveries: readonly number[],
  level: number,
): readonly (AgainstEarlier | null)[] {
  let [count, mean, squares] = [0, 0, 0];
  return deliveries.map((delivery) => {
    const judged =
      count >= 2 && !isDust(Math.sqrt(squares), mean)
        ? judge(delivery, mean, squares, count, level)
        : null;
    count += 1;
    const step = delivery - mean;
    mean += step / count;
    squares += step * (delivery - mean);
    return judged;
  });
}

function judge(
  delivery: number,
  mean: number,
  squares: number,
  count: number,
  level: number,
): AgainstEarlier {
  const df = count - 1;
  const error = Math.sqrt((squares / df) * (1 + 1 / count));
  const half = studentTQuantile((1 + level) / 2, df) * error;
  const statistic = (delivery - mean) / error;
  return {
    mean,
    interval: intervalAround(mean, half, level, "next fill"),
    statistic,
    df,
    pValue: studentTTwoSided(statistic, df),
    outside: Math.abs(delivery - mean) > half,
  };
}

/**
 * The comparison as a standard normal value: Φ⁻¹ of its chance under Student's t. Scores of a steady meter are
 * independent of each other whatever its mean and spread, so charts made for known ones can use them.
 * Source: Quesenberry, Journal of Quality Technology 23 (1991) 213.
 */
export function normalScore({ statistic, df }: Pick<AgainstEarlier, "statistic" | "df">): number {
  const tail = Math.max(studentTUpperTail(Math.abs(statistic), df), smallestTail);
  return tail >= 0.5 ? 0 : -Math.sign(statistic) * normalQuantile(tail);
}
