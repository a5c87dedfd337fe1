import { sum } from "simple-statistics";
import { NumericalError } from "../errors/errors.ts";
import { chiSquaredUpperTail } from "../numeric/distributions/chi-squared.ts";

/** Sum of squares about a group's own mean with its degrees of freedom. */
export interface GroupScatter {
  readonly sumOfSquares: number;
  readonly df: number;
}

export interface BartlettTest {
  readonly statistic: number;
  readonly df: number;
  readonly pValue: number;
}

/**
 * Do several groups scatter alike? Bartlett's test: T = [ν ln s² − Σνᵢ ln sᵢ²]/C against χ² with groups − 1 df,
 * C = 1 + (Σ1/νᵢ − 1/ν)/(3(groups−1)).
 *
 * @param groups  any number; those without degrees of freedom or without any scatter are passed over, because
 *                ln 0 would decide alone
 * @returns       null when fewer than two groups remain
 * @throws        NumericalError when a sum of squares is negative or not finite
 * Source         Bartlett 1937; NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.7
 */
export function bartlettTest(groups: readonly GroupScatter[]): BartlettTest | null {
  for (const { sumOfSquares } of groups)
    if (!(sumOfSquares >= 0 && Number.isFinite(sumOfSquares)))
      throw new NumericalError(
        `A group's sum of squares is ${sumOfSquares}; it must be zero or more.`,
      );
  const usable = groups.filter(({ df, sumOfSquares }) => df > 0 && sumOfSquares > 0);
  if (usable.length < 2) return null;

  const df = sum(usable.map((group) => group.df));
  const pooled = sum(usable.map((group) => group.sumOfSquares)) / df;
  const logs = sum(usable.map((group) => group.df * Math.log(group.sumOfSquares / group.df)));
  const between = usable.length - 1;
  const correction = 1 + (sum(usable.map((group) => 1 / group.df)) - 1 / df) / (3 * between);
  const statistic = Math.max(0, (df * Math.log(pooled) - logs) / correction);
  return { statistic, df: between, pValue: chiSquaredUpperTail(statistic, between) };
}
