import { NumericalError } from "../errors/errors.ts";
import { fUpperTail } from "../numeric/distributions/f.ts";
import { noScatter } from "../numeric/rounding-dust.ts";

/** F test that some terms of a model are not needed. */
export interface NestedTest {
  readonly statistic: number;
  readonly df1: number;
  readonly df2: number;
  readonly pValue: number;
}

/**
 * Do the terms that a larger model adds explain anything? F = [(RSS₀ − RSS₁)/(df₀ − df₁)] / (RSS₁/df₁).
 *
 * @param smaller residual sum of squares and df of the model without the terms
 * @param larger the same with them; its terms include the smaller model's
 * @param y what both models explain
 * @returns null when the larger model leaves no residuals to compare with
 * @throws NumericalError when the larger model does not have fewer degrees of freedom
 */
export function nestedTest(
  smaller: { readonly residualSumOfSquares: number; readonly df: number },
  larger: { readonly residualSumOfSquares: number; readonly df: number },
  y: readonly number[],
): NestedTest | null {
  const df1 = smaller.df - larger.df;
  if (!(df1 > 0)) throw new NumericalError("nestedTest: the larger model adds no terms.");
  if (larger.df <= 0 || noScatter(larger.residualSumOfSquares, y)) return null;
  const gain = Math.max(0, smaller.residualSumOfSquares - larger.residualSumOfSquares);
  const statistic = gain / df1 / (larger.residualSumOfSquares / larger.df);
  return { statistic, df1, df2: larger.df, pValue: fUpperTail(statistic, df1, larger.df) };
}
