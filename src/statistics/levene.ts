import { NumericalError } from "../errors/errors.ts";
import { type OneWayAnova, oneWayAnova } from "./anova.ts";
import { mean, median } from "./summary.ts";

/** Centre that distances are taken from: "mean" is Levene's own test, "median" that of Brown and Forsythe. */
export type LeveneCenter = "mean" | "median";

/**
 * Do groups scatter alike? One-way analysis of variance of the distances |x − centre of its group|. With the median it
 * keeps its level for values that are not normal, but needs groups of an even number of at least 6: a small odd group
 * always holds a distance of 0, which makes the test almost never reject, and with 2 the distances are equal.
 *
 * @param groups at least 2 groups of at least 3 finite values
 * @param center default "median"
 * @returns the analysis of variance of the distances; its statistic is Levene's W, null when distances do not vary
 * @throws NumericalError when there are too few groups, a group is too small, or a value is not finite
 * Source Levene 1960, in Contributions to Probability and Statistics, 278–292; Brown and Forsythe 1974, Journal of the
 *   American Statistical Association 69, 364–367
 */
export function levene(
  groups: readonly (readonly number[])[],
  center: LeveneCenter = "median",
): OneWayAnova {
  const middle = center === "median" ? median : mean;
  return oneWayAnova(
    groups.map((group, i) => {
      if (group.length < 3) {
        throw new NumericalError(`levene: group ${i + 1} has ${group.length} values; at least 3.`);
      }
      const at = middle(group);
      return group.map((value) => Math.abs(value - at));
    }),
  );
}

/** Whether groups of these sizes suit the test with medians: even, and at least 6. */
export function suitsBrownForsythe(sizes: readonly number[]): boolean {
  return sizes.every((n) => n >= 6 && n % 2 === 0);
}
