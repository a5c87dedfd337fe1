import { describe, expect, it } from "vitest";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { chanceBeyond, expectedSquare } from "../../src/statistics/expected-loss.ts";
import { chanceAnyBeyond } from "../../src/statistics/repeated-exceedance.ts";
import { detectableEffect, tTestPower } from "../../src/statistics/t-test-power.ts";
import { expectedExcess } from "../support/expected-sides.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const numberFromR = async (code: string, data: Readonly<Record<string, number>>) =>
  present((await evalR(code, data))[0]);

describe("planning against R", () => {
  it.each([
    [0.5, 0.8],
    [1, 0.9],
    [2, 0.95],
  ])("power of a t test, shift %s found with chance %s: power.t.test", async (delta, power) => {
    // strict = TRUE counts findings on both sides, as here; the tolerance is tightened from R's 1e-4.
    const n = await numberFromR(
      `power.t.test(delta = delta, power = power, sig.level = 0.05, type = "one.sample", strict = TRUE,
         tol = 1e-12)$n`,
      { delta, power },
    );
    const critical = studentTQuantile(0.975, n - 1);
    expect(digits(tTestPower(delta * Math.sqrt(n), n - 1, critical), power)).toBeGreaterThan(8);
  });

  // Of a chance of one in ten the effect is less than one standard error.
  it.each([0.1, 0.8])(
    "detectable shift of six fills, found with chance %s: power.t.test",
    async (power) => {
      const delta = await numberFromR(
        `power.t.test(n = 6, power = power, sig.level = 0.05, type = "one.sample", strict = TRUE,
           tol = 1e-12)$delta`,
        { power },
      );
      expect(digits(detectableEffect(5, power, 0.95) / Math.sqrt(6), delta)).toBeGreaterThan(8);
    },
  );

  it.each([
    [0.01, 0.02, 3],
    [-0.03, 0.01, 6],
    [0, 0.05, 2.5],
  ])("expected loss, location %s, scale %s, df %s: integrate() of dt", async (mu, sigma, df) => {
    const law = { location: mu, scale: sigma, df };
    const integral = (g: string) =>
      numberFromR(
        `integrate(function(x) { e <- mu + sigma * x; ${g} * dt(x, df) }, ${g.includes("max0") ? "-mu / sigma" : "-Inf"}, Inf,
           rel.tol = 1e-10, subdivisions = 2000)$value`.replaceAll("max0", "e"),
        { mu, sigma, df },
      );
    expect(digits(present(expectedExcess(law)), await integral("max0"))).toBeGreaterThan(7);
    expect(digits(present(expectedSquare(law)), await integral("e^2"))).toBeGreaterThan(
      df < 3 ? 3 : 6,
    );
    const tails = await numberFromR(
      "pt((-0.05 - mu) / sigma, df) + pt((0.05 - mu) / sigma, df, lower.tail = FALSE)",
      { mu, sigma, df },
    );
    expect(digits(chanceBeyond(law, 0.05).either, tails)).toBeGreaterThan(11);
  });

  it("any of four fills beyond the limit: a double integral in R", async () => {
    const law = { location: 0.01, spread: 0.02, df: 5, sharedVariance: 0.3 };
    const any = await numberFromR(
      `inner <- function(s) sapply(s, function(one) { sigma <- 0.02 / one
         1 - integrate(function(u) { a <- sqrt(0.3) * u
           inside <- pnorm((0.05 - 0.01) / sigma - a) - pnorm((-0.05 - 0.01) / sigma - a)
           inside^4 * dnorm(u) }, -8, 8, rel.tol = 1e-9)$value })
       density <- function(s) dchisq(5 * s^2, 5) * 10 * s
       integrate(function(s) inner(s) * density(s), 0, 6, rel.tol = 1e-9, subdivisions = 1000)$value`,
      {},
    );
    expect(Math.abs(chanceAnyBeyond(law, 0.05)(4) - any)).toBeLessThan(1e-6);
  });

  // What the cases share is as wide as their own parts here, and then the chance bends most over it.
  it.each([
    [0, 0.02, 20],
    [0.01, 0.08, 4],
  ])(
    "any of several after a single earlier fill, location %s, known spread %s, %s fills: integrate() over that fill's error",
    async (location, spread, count) => {
      const any = await numberFromR(
        `integrate(function(u) {
           inside <- pnorm((0.05 - mu) / sigma - u) - pnorm((-0.05 - mu) / sigma - u)
           (1 - inside^count) * dnorm(u) }, -9, 9, rel.tol = 1e-11, subdivisions = 1000)$value`,
        { mu: location, sigma: spread, count },
      );
      const law = { location, spread, df: Number.POSITIVE_INFINITY, sharedVariance: 1 };
      expect(Math.abs(chanceAnyBeyond(law, 0.05)(count) - any)).toBeLessThan(1e-6);
    },
  );
});
