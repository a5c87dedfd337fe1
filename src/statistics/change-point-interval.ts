import { max, min } from "simple-statistics";
import { requireProbability } from "../numeric/domain.ts";
import { type ChangePoint, changePointCritical, splitContrasts } from "./change-point.ts";

/** How large a shift is and where it lies, both found from the same values. */
export interface ChangePointInterval {
  readonly difference: { readonly lower: number; readonly upper: number };
  /** Fewest and most values that may lie before the shift. */
  readonly before: { readonly fewest: number; readonly most: number };
  readonly level: number;
}

/**
 * Interval for a shift whose place was looked for: difference ± c·standardError, c the critical value of the
 * change-point test instead of Student's t. It leaves out zero exactly when the test rejects. The places are the splits
 * that explain the values worse than the best one by at most c² residual variances.
 *
 * @param values the values that `found` was found in
 * @param level confidence level, 0 < level < 1
 * @throws NumericalError when the level is out of range
 * Assumes one shift, independent normal values. Of the series in which a shift is found, a t interval at the best split
 *   would hold it in 58–96 %, this one in 91–99 % from shifts of 1.5 standard deviations on. Smaller ones are found only
 *   when chance makes them look large, and are held less often. Coverage: reports/drift-study.md, table 8
 */
export function changePointInterval(
  values: readonly number[],
  found: ChangePoint,
  level: number,
): ChangePointInterval {
  requireProbability("changePointInterval", "level", level);
  const critical = changePointCritical(level, values.length);
  const half = critical * found.standardError;
  const { totalSquares, contrasts } = splitContrasts(values);
  const best = max(contrasts.map(({ contrast }) => contrast ** 2));
  const residualVariance = (totalSquares - best) / found.df;
  const possible = contrasts
    .filter(({ contrast }) => best - contrast ** 2 <= critical ** 2 * residualVariance)
    .map(({ before }) => before);
  return {
    difference: { lower: found.difference - half, upper: found.difference + half },
    before: { fewest: min(possible), most: max(possible) },
    level,
  };
}
