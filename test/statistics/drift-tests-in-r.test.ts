import { describe, expect, it } from "vitest";
import { changePoint, changePointCritical } from "../../src/statistics/change-point.ts";
import { mannKendall } from "../../src/statistics/mann-kendall.ts";
import { holm } from "../../src/statistics/multiplicity.ts";
import { pooledSlope } from "../../src/statistics/pooled-slope.ts";
import { trendTest } from "../../src/statistics/trend.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const season = [0.4165, 0.4223, 0.4327, 0.4134, 0.4155, 0.4111, 0.4174, 0.4247, 0.4098];
const longSeason = Array.from({ length: 60 }, (_, i) => Math.sin(7 * i) + i / 90);

describe("R's own routines give the same", () => {
  it("slope, standard error and p by lm", async () => {
    for (const y of [season, longSeason]) {
      const found = present(trendTest(y));
      const [slope, error, p] = await evalR(
        "x <- seq_along(y); coef(summary(lm(y ~ x)))[2, c(1, 2, 4)]",
        { y },
      );
      expect(digits(found.slope, present(slope))).toBeGreaterThan(12);
      expect(digits(found.standardError, present(error))).toBeGreaterThan(12);
      expect(digits(found.pValue, present(p))).toBeGreaterThan(11);
    }
  });

  it("exact Kendall p by cor.test, and with ties the normal one with continuity", async () => {
    const exact = mannKendall(season);
    const [p, tau] = await evalR(
      'r <- cor.test(seq_along(y), y, method = "kendall", exact = TRUE); c(r$p.value, r$estimate)',
      { y: season },
    );
    expect(digits(exact.pValue, present(p))).toBeGreaterThan(12);
    expect(exact.tau).toBeCloseTo(present(tau), 12);

    const tied = season.map((value) => Math.round(value * 100));
    const [pTied, tauTied] = await evalR(
      'r <- suppressWarnings(cor.test(seq_along(y), y, method = "kendall", exact = FALSE, continuity = TRUE)); c(r$p.value, r$estimate)',
      { y: tied },
    );
    const normal = mannKendall(tied);
    expect(normal.method).toBe("normal");
    expect(digits(normal.pValue, present(pTied))).toBeGreaterThan(12);
    expect(normal.tau).toBeCloseTo(present(tauTied), 12);
  });

  it("Holm's adjustment by p.adjust", async () => {
    const p = [0.011, 0.02, 0.9, 0.004, 0.02, 0.3];
    const wanted = await evalR('p.adjust(p, "holm")', { p });
    holm(p).forEach((value, i) => {
      expect(value).toBeCloseTo(present(wanted[i]), 15);
    });
  });

  it("the best split by t.test with equal variances", async () => {
    const found = present(changePoint(season));
    const [statistic, split] = await evalR(
      `n <- length(y)
       t <- sapply(2:(n - 2), function(s) t.test(y[(s + 1):n], y[1:s], var.equal = TRUE)$statistic)
       best <- which.max(abs(t)); c(t[best], best + 1)`,
      { y: season },
    );
    expect(digits(found.statistic, present(statistic))).toBeGreaterThan(11);
    expect(found.before).toBe(split);
  });

  it("a common slope by lm with a level for each fill", async () => {
    const groups = [
      { x: [1, 2, 3, 4], y: [1.02, 0.99, 0.97, 0.91], weights: [20, 20, 40, 20] },
      { x: [1, 2, 3], y: [1.04, 1.05, 0.99], weights: [15, 30, 15] },
    ];
    const found = present(pooledSlope(groups));
    const [slope, error, p] = await evalR(
      "coef(summary(lm(y ~ factor(g) + x, weights = w)))[3, c(1, 2, 4)]",
      {
        x: groups.flatMap(({ x }) => x),
        y: groups.flatMap(({ y }) => y),
        w: groups.flatMap(({ weights }) => weights),
        g: groups.flatMap(({ x }, g) => x.map(() => g)),
      },
    );
    expect(digits(found.slope, present(slope))).toBeGreaterThan(12);
    expect(digits(found.standardError, present(error))).toBeGreaterThan(12);
    expect(digits(found.pValue, present(p))).toBeGreaterThan(11);
  });

  // R's own generator and R's own arithmetic: 20,000 seasons, so ± 0.0046 (3 s.e.) about 0.05.
  it("5 % of seasons beyond the critical value of the change-point test, in seasons that R makes", async () => {
    for (const n of [6, 9, 12]) {
      const [share] = await evalR(
        `set.seed(n); y <- matrix(rnorm(n * 20000), n)
         total <- colSums(y); squares <- colSums(y^2) - total^2 / n
         largest <- 0
         for (s in 2:(n - 2)) {
           before <- colSums(y[1:s, , drop = FALSE])
           between <- (before - s * total / n)^2 * n / (s * (n - s))
           largest <- pmax(largest, between)
         }
         mean(sqrt((n - 2) * largest / (squares - largest)) > critical)`,
        { n, critical: changePointCritical(0.95, n) },
      );
      expect(Math.abs(present(share) - 0.05)).toBeLessThan(0.0046);
    }
  });
});
