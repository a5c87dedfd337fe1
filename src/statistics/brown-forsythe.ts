import { NumericalError } from "../errors/errors.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { type OneWayAnova, oneWayAnova } from "./anova.ts";
import { median } from "./summary.ts";

/**
 * Do groups scatter alike? One-way analysis of variance of the distances |x − median of its group|: Levene's test about
 * the median. It keeps its level for values that are not normal, but needs groups of an even number of at least 6: a small
 * odd group always holds a distance of 0, which makes the test almost never reject, and with 2 the distances are equal.
 *
 * @param groups at least 2 groups of at least 3 finite values
 * @returns the analysis of variance of the distances; its statistic is Levene's W, null when distances do not vary
 * @throws NumericalError when there are too few groups, a group is too small, or a value is not finite
 * Source Levene 1960, in Contributions to Probability and Statistics, 278–292; Brown and Forsythe 1974, Journal of the
 *   American Statistical Association 69, 364–367
 */
export function brownForsythe(groups: readonly (readonly number[])[]): OneWayAnova {
  return oneWayAnova(
    groups.map((group, i) => {
      if (group.length < 3) {
        throw new NumericalError(
          `brownForsythe: group ${i + 1} has ${group.length} values; at least 3.`,
        );
      }
      const middle = median(group);
      // The size of the values is lost in their distances, so what rounding made of them is told from none here.
      return group.map((value) => (isDust(value - middle, middle) ? 0 : Math.abs(value - middle)));
    }),
  );
}

/** Whether groups of these sizes suit the test with medians: even, and at least 6. */
export function suitsBrownForsythe(sizes: readonly number[]): boolean {
  return sizes.every((n) => n >= 6 && n % 2 === 0);
}
