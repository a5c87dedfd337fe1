import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { median } from "./summary.ts";

export interface RobustLine {
  /** Median of the slopes between all pairs of points. */
  readonly slope: number;
  /** Median of y minus slope times the median of x. */
  readonly intercept: number;
}

/**
 * A line that one or two wild points cannot turn: Theil–Sen slope, with the intercept of Conover that lets the line
 * run through the medians.
 *
 * @param x at least 2 finite values, not all equal; pairs with equal x are passed over
 * @param y finite values, as many as x
 * @throws NumericalError when lengths disagree, a value is not finite, or all x are equal
 * Source Sen 1968, Journal of the American Statistical Association 63, 1379–1389; Helsel and Hirsch 2002, Statistical
 *   Methods in Water Resources, chapter 10
 * @example theilSen([1, 2, 3, 4, 5], [1, 2, 3, 4, 50]).slope // -> 1
 */
export function theilSen(x: readonly number[], y: readonly number[]): RobustLine {
  if (x.length !== y.length)
    throw new NumericalError(`theilSen: ${x.length} x and ${y.length} y; they must be as many.`);
  const slopes: number[] = [];
  x.forEach((xj, j) => {
    for (let i = 0; i < j; i++) {
      const run = xj - at(x, i);
      if (run !== 0) slopes.push((at(y, j) - at(y, i)) / run);
    }
  });
  if (slopes.length === 0)
    throw new NumericalError("theilSen: a slope needs two points with different x.");
  const slope = median(slopes);
  return { slope, intercept: median(y) - slope * median(x) };
}
