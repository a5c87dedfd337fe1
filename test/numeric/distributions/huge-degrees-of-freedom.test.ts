import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperQuantile,
} from "../../../src/numeric/distributions/chi-squared.ts";
import { fLowerTail, fQuantile, fUpperTail } from "../../../src/numeric/distributions/f.ts";
import { normalLowerTail, normalQuantile } from "../../../src/numeric/distributions/normal.ts";
import {
  studentTDensity,
  studentTLowerTail,
  studentTQuantile,
  studentTUpperTail,
} from "../../../src/numeric/distributions/student-t.ts";
import { betaOddsQuantile, incompleteBeta } from "../../../src/numeric/incomplete-beta.ts";
import { expectDigits } from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

const decades = (from: number, to: number) =>
  fc.double({ min: from, max: to, noNaN: true }).map((exponent) => 10 ** exponent);
const hugeDf = decades(3, 300);
const anyDf = fc.oneof(decades(-1, 3), hugeDf);
const anyValue = fc.oneof(decades(-300, 300), fc.double({ min: 0, max: 10, noNaN: true }));
/** Around the mean as well, where shapes this huge have all their mass. */
const nearOne = fc
  .tuple(fc.double({ min: -40, max: 40, noNaN: true }), decades(-150, 0))
  .map(([z, spread]) => Math.exp(z * spread));
const probability = fc.oneof(
  decades(-300, -0.31),
  decades(-15, -0.31).map((tail) => 1 - tail),
);

function expectChance(value: number): void {
  expect(value).toBeGreaterThanOrEqual(0);
  expect(value).toBeLessThanOrEqual(1);
}

describe("distributions with huge degrees of freedom", () => {
  it("end with a chance for every t", () => {
    fc.assert(
      fc.property(anyValue, hugeDf, (x, df) => {
        expectChance(studentTLowerTail(x, df));
        expectChance(studentTUpperTail(x, df));
        expect(Number.isFinite(studentTDensity(x, df))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it("end with chances that add up to 1 for every F", () => {
    fc.assert(
      fc.property(fc.oneof(anyValue, nearOne), anyDf, hugeDf, fc.boolean(), (x, one, df, swap) => {
        const [df1, df2] = swap ? [df, one] : [one, df];
        const [lower, upper] = [fLowerTail(x, df1, df2), fUpperTail(x, df1, df2)];
        expectChance(lower);
        expectChance(upper);
        expect(Math.abs(lower + upper - 1)).toBeLessThan(1e-12);
      }),
      { numRuns: 4000 },
    );
  });

  it("end with chances that add up to 1 for every beta variable", () => {
    const share = fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), decades(-300, 0));
    fc.assert(
      fc.property(share, anyDf, hugeDf, fc.boolean(), (x, one, shape, swap) => {
        const [a, b] = swap ? [shape, one] : [one, shape];
        const [lower, upper] = (["lower", "upper"] as const).map((side) =>
          incompleteBeta(x, 1 - x, a, b, side),
        ) as [number, number];
        expectChance(lower);
        expectChance(upper);
        expect(Math.abs(lower + upper - 1)).toBeLessThan(1e-12);
      }),
      { numRuns: 4000 },
    );
  });

  it("have finite quantiles that grow with the chance", () => {
    fc.assert(
      fc.property(probability, probability, hugeDf, hugeDf, (p, q, df, other) => {
        const [low, high] = p < q ? [p, q] : [q, p];
        for (const quantile of [
          (chance: number) => studentTQuantile(chance, df),
          (chance: number) => fQuantile(chance, df, other),
          (chance: number) => fQuantile(chance, 3, other),
          (chance: number) => fQuantile(chance, other, 3),
          (chance: number) => chiSquaredQuantile(chance, df),
          (chance: number) => betaOddsQuantile(chance, df, other),
        ]) {
          const [from, to] = [quantile(low), quantile(high)];
          expect(Number.isFinite(from) && Number.isFinite(to)).toBe(true);
          expect(to).toBeGreaterThanOrEqual(from * (1 - Math.sign(from) * 1e-12));
        }
      }),
      { numRuns: 1000 },
    );
  });

  it("are the normal distribution in the limit of t, tail and quantile", () => {
    for (const df of [1e18, 1e20, 1.01e20, 1e50, 1e155, 1e300]) {
      for (const x of [-30, -8.5, -1.7, -1e-5, 0, 0.3, 4])
        expectDigits(studentTLowerTail(x, df), normalLowerTail(x), 12.5, { x, df });
      for (const p of [1e-200, 1e-12, 0.025, 0.4, 0.9, 0.999])
        expectDigits(studentTQuantile(p, df), normalQuantile(p), 13, { p, df });
    }
  });

  it("are chi-squared over its degrees of freedom in the limit of F, from either end", () => {
    for (const df of [1e19, 1e21, 1e22, 1e100, 1e300])
      for (const x of [1e-3, 0.6, 1, 2.5]) {
        expectDigits(fLowerTail(x, 4, df), chiSquaredLowerTail(4 * x, 4), 13, { x, df });
        expectDigits(fUpperTail(1 / x, df, 4), chiSquaredLowerTail(4 * x, 4), 13, { x, df });
        expectDigits(fQuantile(0.9, df, 4), 4 / chiSquaredUpperQuantile(0.9, 4), 12.5, df);
      }
  });

  it("agree with R where R is exact: t at 1e15, chi-squared quantiles at 1e9 to 1e14", async () => {
    const ps = [1e-6, 0.025, 0.4, 0.6, 0.999];
    const dfs = [1e9, 1.9e12, 2.1e12, 1e14];
    const truth = await evalR(
      "c(qt(p, 1e15), unlist(lapply(df, function(n) qchisq(p, n))), unlist(lapply(df, function(n) qchisq(p, n, lower.tail = FALSE))))",
      { p: ps, df: dfs },
    );
    ps.forEach((p, i) => {
      expectDigits(studentTQuantile(p, 1e15), truth[i] ?? 0, 13, p);
      dfs.forEach((df, j) => {
        const at = (1 + j) * ps.length + i;
        expectDigits(chiSquaredQuantile(p, df), truth[at] ?? 0, 14, { p, df });
        const upper = truth[at + dfs.length * ps.length] ?? 0;
        expectDigits(chiSquaredUpperQuantile(p, df), upper, 14, { p, df });
      });
    });
  });
});
