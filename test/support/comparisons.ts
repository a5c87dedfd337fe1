import type { GroupDesign } from "../../src/statistics/group-comparison.ts";
import { type Sample, varianceOfMean } from "../../src/statistics/sample.ts";
import { differenceOfMeans, welchDf } from "../../src/statistics/welch.ts";

/** All pairs at 95 %, each group with a spread of its own. */
export const plainDesign: GroupDesign = {
  level: 0.95,
  scale: "as measured",
  margin: null,
  reference: null,
  spread: "separate",
};

/** Welch's t test, put together as comparisons of two kinds put it together. */
export function welchTest(first: Sample, second: Sample, level = 0.95) {
  const error = Math.sqrt(varianceOfMean(first) + varianceOfMean(second));
  return differenceOfMeans(first.mean - second.mean, error, welchDf(first, second), level);
}
