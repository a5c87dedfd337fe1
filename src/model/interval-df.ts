import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { keptWith } from "../numeric/kept.ts";
import { findRoot } from "../numeric/roots.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import type { Estimate } from "../results/estimate.ts";

/** Beyond so many degrees of freedom Student's t is the normal law to seven digits. */
const asGoodAsNormal = 1e7;
/** Below so few the quantiles of usual levels leave what a double holds. */
const fewest = 0.01;

/**
 * Degrees of freedom with which Student's t makes an estimate's interval of its standard error. They are those of its
 * scatter where that is all its error; where reading the scale has a quantile of its own, they are more. What is worked
 * out from the estimate and other doubts keeps to its interval by them.
 *
 * @returns Infinity where the interval is no wider than the normal law's; null without an interval
 */
export const dfOfInterval = keptWith(({ value, standardError, df, interval }: Estimate) => {
  if (standardError === null || df === null || interval === null) return null;
  const { lower, upper, level } = interval;
  const half = Math.max((upper ?? value) - value, value - (lower ?? value));
  const wanted = half / standardError;
  const excess = (one: number) => studentTQuantile((1 + level) / 2, one) - wanted;
  if (isDust(excess(df), wanted)) return df;
  if (excess(asGoodAsNormal) >= 0) return Number.POSITIVE_INFINITY;
  if (excess(fewest) <= 0) return fewest;
  const logDf = findRoot((x) => excess(Math.exp(x)), Math.log(fewest), Math.log(asGoodAsNormal));
  return Math.exp(logDf);
});
