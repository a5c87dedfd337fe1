import { mean, sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { deletedVariances } from "../../src/statistics/deleted-variances.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const variances = [1.2, 0.7, 2.9, 0.3, 1.1, 40, 0.9];
const dfs = [4, 6, 3, 8, 5, 4, 2];
const given = variances.map((variance, i) => ({ variance, df: dfs[i] ?? 1 }));

/** Written from the formulas, with R's integrator over τ and, within it, over ln σ². */
const inR = `
  one <- function(i) {
    e <- (log(s2) - digamma(d / 2) + log(d / 2))[-i]; v <- trigamma(d / 2)[-i]
    w <- function(t) 1 / (t^2 + v); mu <- function(t) sum(w(t) * e) / sum(w(t))
    reml <- function(t) 0.5 * (sum(log(w(t))) - log(sum(w(t))) - sum(w(t) * (e - mu(t))^2))
    best <- optimize(reml, c(0, 8), maximum = TRUE)$objective
    over <- function(f) integrate(Vectorize(function(t) exp(reml(t) - best) * f(t)), 0, 8,
      rel.tol = 1e-8, subdivisions = 1000)$value
    tail <- function(lower) function(t) integrate(function(z) dnorm(z) * pchisq(
      d[i] * s2[i] / exp(mu(t) + sqrt(t^2 + 1 / sum(w(t))) * z), d[i], lower.tail = lower), -9, 9,
      rel.tol = 1e-9, subdivisions = 1000)$value
    all <- over(function(t) 1)
    p <- c(over(tail(TRUE)), over(tail(FALSE))) / all
    c(exp(over(mu) / all / 2), min(1, 2 * min(p)), p[2] < p[1])
  }
  unlist(lapply(seq_along(s2), one))`;

describe("a variance against others", () => {
  it.each([
    ["far apart", variances],
    ["as alike as chance makes them", [1.2, 0.7, 1.9, 0.8, 1.1, 1.4, 0.9]],
  ])("has the tails that R finds from the same formulas, %s", async (_, s2) => {
    const found = deletedVariances(s2.map((variance, i) => ({ variance, df: dfs[i] ?? 1 })));
    const wanted = await evalR(inR, { s2, d: dfs });
    found.forEach((one, i) => {
      const { typical, pValue, more } = present(one);
      [typical, pValue, Number(more)].forEach((value, j) => {
        expect(value).toBeCloseTo(wanted[3 * i + j] ?? Number.NaN, 6);
      });
    });
  });

  it("is the F test on all their degrees of freedom where there are many, as alike as chance makes them", async () => {
    const others = await evalR("qchisq((1:400 - 0.5) / 400, 40) / 40");
    const own = { variance: 2.5, df: 6 };
    const all = [own, ...others.map((variance) => ({ variance, df: 40 }))];
    const [wanted = 0] = await evalR("2 * pf(2.5, 6, 16000, lower.tail = FALSE)");
    expect(present(deletedVariances(all)[0]).pValue / wanted).toBeCloseTo(1, 1);
  });

  it("says nothing of too few others, and does not care for the unit", () => {
    expect(deletedVariances(given.slice(0, 3))).toEqual([null, null, null]);
    const scaled = deletedVariances(
      given.map((one) => ({ ...one, variance: 1e-8 * one.variance })),
    );
    deletedVariances(given).forEach((one, i) => {
      expect(present(scaled[i]).pValue).toBeCloseTo(present(one).pValue, 9);
    });
  });

  it.each([
    [12, 0],
    [12, 1],
    [40, 0.6],
    [40, 1.6],
  ])("finds of %i of one kind no more than it says, sd of ln σ² %f", (perRound, heterogeneity) => {
    const stream = randomStream(5);
    const all = Array.from({ length: Math.ceil(1200 / perRound) }, () =>
      deletedVariances(
        Array.from({ length: perRound }, (_, i) => {
          const df = 3 + (i % 4) * 2;
          const squares = sum(Array.from({ length: df }, () => stream.normal() ** 2));
          return { df, variance: (Math.exp(heterogeneity * stream.normal()) * squares) / df };
        }),
      ).map((one) => present(one).pValue),
    ).flat();
    for (const limit of [0.05, 0.005]) {
      const error = Math.sqrt((limit * (1 - limit)) / all.length);
      expect(mean(all.map((p) => (p < limit ? 1 : 0)))).toBeLessThan(limit + 3 * error);
    }
  });
});

it("needs three others", () => {
  expect(deletedVariances(given.slice(0, 4)).every((one) => one !== null)).toBe(true);
});
