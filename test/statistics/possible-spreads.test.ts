import { sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { possibleSpreads } from "../../src/statistics/possible-spreads.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const meanOf = (spreads: ReturnType<typeof possibleSpreads>) =>
  sum(spreads.map(({ value, weight }) => value * weight));

describe("values a true standard deviation may have", () => {
  it.each([
    ["fine", 2, 2e-4],
    ["fine", 3, 2e-5],
    ["fine", 11.5, 1e-6],
    ["coarse", 3, 5e-3],
    ["coarse", 6, 1e-3],
    ["coarse", 18, 2e-4],
  ] as const)(
    "%s, %s df: the mean is that of s·√(ν/χ²), integrate() in R",
    async (how, df, error) => {
      const [expected] = await evalR(
        "integrate(function(x) sqrt(df / x) * dchisq(x, df), 0, Inf, rel.tol = 1e-10)$value",
        { df },
      );
      const found = meanOf(possibleSpreads(0.02, df, how));
      expect(Math.abs(found / (0.02 * present(expected)) - 1)).toBeLessThan(error);
    },
  );

  it("weigh 1 together, and are one where the spread is known", () => {
    for (const how of ["fine", "coarse"] as const)
      expect(sum(possibleSpreads(1, 4, how).map(({ weight }) => weight))).toBeCloseTo(1, 13);
    expect(possibleSpreads(0.02, Number.POSITIVE_INFINITY)).toEqual([{ value: 0.02, weight: 1 }]);
  });
});
