import { describe, expect, it } from "vitest";
import { betaExpansion } from "../../src/numeric/beta-expansion.ts";
import { fLowerTail, fUpperTail } from "../../src/numeric/distributions/f.ts";
import { incompleteBeta } from "../../src/numeric/incomplete-beta.ts";
import { distributionReference, expectDigits, numberAt } from "../support/distributions.ts";

describe("the uniform expansion of the incomplete beta function", () => {
  it("has both tails of F for huge degrees of freedom to 13 digits, against values of mpmath", () => {
    for (const row of distributionReference("f-huge").tails) {
      const [x, df1, df2] = [numberAt(row, "x"), numberAt(row, "df1"), numberAt(row, "df2")];
      expectDigits(fLowerTail(x, df1, df2), numberAt(row, "lower"), 13, row);
      expectDigits(fUpperTail(x, df1, df2), numberAt(row, "upper"), 13, row);
    }
  });

  it("continues the fraction where it takes over", () => {
    const [a, b] = [1e8, 4e8];
    for (const z of [-6, -1, -1e-3, 0, 0.2, 4]) {
      const excess = z * Math.sqrt((a * b) / (a + b));
      const x = (a + excess) / (a + b);
      for (const side of ["lower", "upper"] as const) {
        const fraction = incompleteBeta(x, 1 - x, a, b, side, excess);
        expectDigits(betaExpansion(a, b, excess, side), fraction, 12.5, { z, side });
      }
    }
  });

  it("is certain at the ends", () => {
    expect(betaExpansion(2e8, 3e8, -2e8, "lower")).toBe(0);
    expect(betaExpansion(2e8, 3e8, 3e8, "lower")).toBe(1);
    expect(betaExpansion(2e300, 3e300, 3e300, "upper")).toBe(0);
  });
});
