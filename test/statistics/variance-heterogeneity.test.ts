import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { trigamma } from "../../src/numeric/special-functions.ts";
import type { EstimatedVariance } from "../../src/statistics/spread-votes.ts";
import { mean } from "../../src/statistics/summary.ts";
import {
  typicalDeviation,
  varianceHeterogeneity,
} from "../../src/statistics/variance-heterogeneity.ts";
import { evalR } from "../support/webr.ts";

interface ByLimma {
  readonly variance: readonly number[];
  readonly df: readonly number[];
  readonly scale: number;
  readonly df2: number;
}

const limma: { readonly equal: ByLimma; readonly unequal: ByLimma } = JSON.parse(
  readFileSync("test/reference/varcomp/variance-heterogeneity-r.json", "utf8"),
);
const estimates = ({ variance, df }: Pick<ByLimma, "variance" | "df">): EstimatedVariance[] =>
  variance.map((one, i) => ({ variance: one, df: df[i] ?? Number.NaN }));
const byMoments = ({ df2 }: ByLimma) => Math.sqrt(trigamma(df2 / 2)) / 2;
const spread = (one: readonly EstimatedVariance[]) => varianceHeterogeneity([one], 0.95);

/** Written from the formulas: restricted likelihood by group, its maximum by R's optimiser, its profile by R's root finder. */
const inR = `
  e <- log(s2) - digamma(d / 2) + log(d / 2)
  v <- trigamma(d / 2)
  deviance <- function(tau2) sum(sapply(unique(g), function(j) {
    w <- 1 / (tau2 + v[g == j]); y <- e[g == j]; m <- sum(w * y) / sum(w)
    -sum(log(w)) + log(sum(w)) + sum(w * (y - m)^2)
  }))
  best <- optimize(function(t) deviance(t^2), c(0, 6), tol = 1e-12)$minimum^2
  rest <- function(tau2) deviance(tau2) - deviance(best) - qchisq(0.95, 1)
  low <- if (rest(0) <= 0) 0 else uniroot(rest, c(0, best), tol = 1e-14)$root
  high <- uniroot(rest, c(best, 400), tol = 1e-12)$root
  w <- 1 / (best + v); m <- sum(w * e) / sum(w); k <- length(e) - 1
  half <- qt(0.975, k) * sqrt(max(1, sum(w * (e - m)^2) / k) / sum(w))
  c(sqrt(c(best, low, high)) / 2, exp(c(m, m - half, m + half) / 2))
`;

describe("heterogeneity of variances", () => {
  it("is the moment estimate of limma where all have the same degrees of freedom", () => {
    expect(spread(estimates(limma.equal)).value).toBeCloseTo(byMoments(limma.equal), 7);
  });

  it("is near it where they have not", () => {
    const { value, lower, upper } = spread(estimates(limma.unequal));
    const moments = byMoments(limma.unequal);
    expect(Math.abs(value / moments - 1)).toBeLessThan(0.15);
    expect(lower).toBeLessThan(moments);
    expect(upper).toBeGreaterThan(moments);
  });

  it.each([
    ["one group", limma.unequal.variance.slice(0, 31), limma.unequal.df.slice(0, 31), [31]],
    ["few of them", [0.0021, 0.0034, 0.0125], [2, 8, 3], [3]],
    [
      "three groups",
      limma.unequal.variance.slice(0, 20),
      limma.unequal.df.slice(0, 20),
      [3, 12, 5],
    ],
  ] as const)(
    "is R's maximum of the restricted likelihood, with its profile: %s",
    async (_, variance, df, sizes) => {
      const all = estimates({ variance, df });
      const starts = sizes.map((_size, i) => sizes.slice(0, i).reduce<number>((a, b) => a + b, 0));
      const groups = sizes.map((size, i) => all.slice(starts[i], (starts[i] ?? 0) + size));
      const found = varianceHeterogeneity(groups, 0.95);
      const typical = typicalDeviation(all, found.value, 0.95);
      const [value, low, high, ...middle] = await evalR(inR, {
        s2: variance,
        d: df,
        g: sizes.flatMap((size, i) => Array.from({ length: size }, () => i)),
      });
      // R's optimiser knows a minimum to half the digits of a double.
      expect(found.value).toBeCloseTo(value ?? Number.NaN, 6);
      expect(found.lower).toBeCloseTo(low ?? Number.NaN, 6);
      expect(found.upper).toBeCloseTo(high ?? Number.NaN, 6);
      expect(
        [typical.value, typical.lower, typical.upper].map((x, i) => x / (middle[i] ?? 0)),
      ).toEqual([1, 1, 1].map((one) => expect.closeTo(one, 6)));
      expect(found.groups).toBe(sizes.length);
    },
  );

  it("is zero at the boundary, with an upper end, where variances are more alike than chance makes them", () => {
    const found = spread(Array.from({ length: 8 }, () => ({ variance: 0.001, df: 4 })));
    expect(found).toMatchObject({ value: 0, lower: 0, atBoundary: true });
    expect(found.upper).toBeGreaterThan(0);
  });

  it("does not depend on the unit of the variances, nor on where a group lies", () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (shift) => {
        const all = estimates(limma.unequal);
        const moved = all.map((one) => ({ ...one, variance: one.variance * Math.exp(shift) }));
        const [plain, away] = [
          varianceHeterogeneity([all.slice(0, 30), all.slice(30)], 0.9),
          varianceHeterogeneity([all.slice(0, 30), moved.slice(30)], 0.9),
        ];
        expect(away.value).toBeCloseTo(plain.value, 8);
        expect(away.upper).toBeCloseTo(plain.upper, 8);
      }),
      { numRuns: 20 },
    );
  });

  it("passes over groups of one, and refuses to speak of nothing else", () => {
    const all = estimates(limma.equal);
    expect(varianceHeterogeneity([all, all.slice(0, 1)], 0.95)).toEqual(spread(all));
    expect(() => varianceHeterogeneity([all.slice(0, 1)], 0.95)).toThrow(NumericalError);
    expect(() => typicalDeviation(all.slice(0, 1), 0.5, 0.95)).toThrow(NumericalError);
  });

  it.each([
    ["8 degrees of freedom each", [8], 0.93, 0.015],
    ["2 each", [2], 0.88, 0.07],
    ["2 to 20", [2, 5, 20], 0.92, 0.03],
  ] as const)("finds .5 among 30 meters without bias: %s", (_, dfs, coverage, low) => {
    const stream = randomStream(30);
    const runs = 300;
    const found = Array.from({ length: runs }, () =>
      spread(
        Array.from({ length: 30 }, (_meter, i) => {
          const df = dfs[i % dfs.length] ?? 1;
          return { variance: Math.exp(stream.normal()) * (stream.chiSquared(df) / df), df };
        }),
      ),
    );
    const squares = found.map(({ value }) => 4 * value ** 2);
    const middle = mean(squares);
    const error = Math.sqrt(mean(squares.map((one) => (one - middle) ** 2)) / runs);
    expect(Math.abs(middle - 1)).toBeLessThan(3 * error);
    const held = found.filter(({ lower, upper }) => lower <= 0.5 && 0.5 <= upper).length / runs;
    expect(held).toBeGreaterThan(coverage);
    // What is unbiased is the square; its root lies low, the lower the less the variances tell.
    const bias = mean(found.map(({ value }) => value)) - 0.5;
    expect(bias).toBeLessThan(0.01);
    expect(bias).toBeGreaterThan(-low);
  });
});
