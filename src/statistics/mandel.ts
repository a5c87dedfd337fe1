import { sum } from "simple-statistics";
import { fQuantile } from "../numeric/distributions/f.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { requireProbability, requireWhole } from "../numeric/domain.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { mean, sampleStandardDeviation } from "./summary.ts";

/** One of several that measured the same: a laboratory, an operator, a fill. */
export interface MandelGroup {
  readonly mean: number;
  readonly variance: number;
  /** Behind the variance. */
  readonly df: number;
}

export interface MandelStatistic {
  /** Distance of its mean from the mean of means, in standard deviations of the means. */
  readonly h: number;
  /** Its standard deviation over the pooled one; null where nothing scatters. */
  readonly k: number | null;
}

/**
 * Mandel's statistics of consistency: h = (x̄ᵢ − x̿)/s(x̄) between groups, k = sᵢ/s_r within them, s_r² = Σνᵢsᵢ²/Σνᵢ.
 *
 * @param groups 3 or more
 * @returns      null with fewer than three groups, or where all means agree exactly
 * Source        ISO 5725-2:2019, 8.3.1; ASTM E691, 15.5 and 15.6
 */
export function mandelStatistics(
  groups: readonly MandelGroup[],
): readonly MandelStatistic[] | null {
  if (groups.length < fewestGroups) return null;
  const means = groups.map((group) => group.mean);
  const [center, spread] = [mean(means), sampleStandardDeviation(means)];
  if (isDust(spread, center)) return null;
  const pooled =
    sum(groups.map(({ variance, df }) => variance * df)) / sum(groups.map(({ df }) => df));
  return groups.map((group) => ({
    h: (group.mean - center) / spread,
    k: pooled > 0 ? Math.sqrt(group.variance / pooled) : null,
  }));
}

/** Below three groups h can take but two values. */
const fewestGroups = 3;

/**
 * |h| that one group exceeds by chance with probability α: (p − 1)·t/√(p·(t² + p − 2)), t = t(1 − α/2; p − 2).
 *
 * @param p groups, 3 or more
 * Source   ISO 5725-2:2019, 8.3.1; ASTM E691, appendix X1
 */
export function mandelHLimit(p: number, alpha: number): number {
  requireWhole("mandelHLimit", "p", p, fewestGroups);
  requireProbability("mandelHLimit", "alpha", alpha);
  const t = studentTQuantile(1 - alpha / 2, p - 2);
  return ((p - 1) * t) / Math.sqrt(p * (t * t + p - 2));
}

/**
 * k that a group on ν degrees of freedom exceeds by chance with probability α, the others having R:
 * √((ν + R)/(ν + R/F)), F = F(1 − α; ν, R). With groups alike it is √(p/(1 + (p − 1)/F)).
 *
 * Source ISO 5725-2:2019, 8.3.1; ASTM E691, appendix X1
 */
export function mandelKLimit(df: number, dfOfOthers: number, alpha: number): number {
  requireWhole("mandelKLimit", "df", df, 1);
  requireWhole("mandelKLimit", "dfOfOthers", dfOfOthers, 1);
  requireProbability("mandelKLimit", "alpha", alpha);
  const f = fQuantile(1 - alpha, df, dfOfOthers);
  return Math.sqrt((df + dfOfOthers) / (df + dfOfOthers / f));
}
