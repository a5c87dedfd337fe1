import { describe, expect, it } from "vitest";
import { chanceAbove, density, quantile } from "../../src/numeric/standard-normal.ts";
import { expectDigits } from "../support/distributions.ts";
import { evalR } from "../support/webr.ts";

describe("the standard normal distribution", () => {
  // On both sides of every end of a piece: 0.67448975, √32, 38.5, where the tail is no number any more.
  const z = [0, 1e-9, 0.3, 0.674, 0.6744897, 0.67449, 0.7, 1.5, 5.6568, 5.6569, 7, 9, 20, 37.5];

  it("has R's tails, on either side of 0", async () => {
    const truth = await evalR("c(pnorm(z, lower.tail = FALSE), pnorm(z), dnorm(z))", { z });
    z.forEach((one, i) => {
      expectDigits(chanceAbove(one), truth[i] ?? 0, 13.5, one);
      expectDigits(chanceAbove(-one), truth[z.length + i] ?? 0, 15, one);
      expectDigits(density(one), truth[2 * z.length + i] ?? 0, 12.5, one);
    });
    expect(chanceAbove(39.5)).toBe(0);
    expect(chanceAbove(-39.5)).toBe(1);
    expect(chanceAbove(38.2)).toBeGreaterThan(0);
  });

  // On both sides of 0.425 off the middle, and of √−ln p = 5, which is at 1.4e-11.
  it("has R's quantiles, in either half", async () => {
    const p = [0.5, 0.3, 0.0751, 0.0749, 0.01, 1e-5, 1.5e-11, 1.3e-11, 1e-20, 1e-100, 1e-300];
    const truth = await evalR("qnorm(p)", { p });
    p.forEach((one, i) => {
      expectDigits(quantile(one), truth[i] ?? 0, 14, one);
      if (one > 1e-6) expectDigits(quantile(1 - one), -(truth[i] ?? 0), 11, one);
    });
  });
});
