import { describe, expect, it } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { independentLayout } from "../../src/statistics/comparison-layout.ts";
import type { SpreadLaw } from "../../src/statistics/simultaneous.ts";
import { allPairs, pairsWithReference } from "../../src/statistics/simultaneous.ts";
import { present } from "../support/reference.ts";

const runs = 800;
/** Four standard errors of a share near 0.05 in so many runs. */
const simulationError = 4 * Math.sqrt((0.05 * 0.95) / runs);

/** Share of trials without any true difference in which some pair is found to differ at 5 %. */
function anyFalseDifference(
  sizes: readonly number[],
  spreads: readonly number[],
  reference: number | null,
  spread: SpreadLaw,
): number {
  const random = randomStream(20260925);
  const pairs =
    reference === null ? allPairs(sizes.length) : pairsWithReference(sizes.length, reference);
  let found = 0;
  for (let run = 0; run < runs; run++) {
    const groups = sizes.map((n, i) =>
      Array.from({ length: n }, () => 10 + present(spreads[i]) * random.normal()),
    );
    const layout = independentLayout(groups, pairs, reference, spread);
    const smallest = pairs.map((pair) => {
      const { first, second, error } = present(layout.pairOf(pair));
      const { variance, df } = present(error).at(1);
      return layout.rule.adjustedPValue((first - second) / Math.sqrt(variance), df);
    });
    if (Math.min(...smallest) < 0.05) found++;
  }
  return found / runs;
}

// The wanted shares were simulated in R: test/reference/generate/compared-products.R.
describe("any false difference among three groups", () => {
  it.each([
    ["alike", [3, 3, 3], [1, 1, 1], 0.039],
    ["of unequal spread", [4, 4, 4], [1, 2, 4], 0.059],
    ["of unequal spread and size, the wrong way round", [6, 4, 3], [1, 2, 4], 0.075],
  ])("by Games and Howell, groups %s", (_, sizes, spreads, simulated) => {
    const share = anyFalseDifference(sizes, spreads, null, "separate");
    expect(Math.abs(share - simulated)).toBeLessThan(simulationError);
  });

  it("by a common spread that is not there, three times as often as it says", () => {
    const share = anyFalseDifference([6, 4, 3], [1, 2, 4], null, "common");
    expect(Math.abs(share - 0.169)).toBeLessThan(1.7 * simulationError);
  });

  it.each([
    ["alike, common spread", [4, 4, 4], [1, 1, 1], "common"],
    ["alike, separate spreads", [4, 4, 4], [1, 1, 1], "separate"],
    ["of unequal spread, separate spreads", [5, 5, 5], [1, 2, 4], "separate"],
  ] as const)("against a reference, groups %s, at most a little over 5 %%", (_, n, sd, law) => {
    expect(anyFalseDifference(n, sd, 0, law)).toBeLessThan(0.055 + simulationError);
  });
});
