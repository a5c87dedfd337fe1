import { describe, expect, it } from "vitest";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { blockAnova } from "../../src/statistics/block-anova.ts";
import { brownForsythe } from "../../src/statistics/brown-forsythe.ts";
import { independentLayout } from "../../src/statistics/comparison-layout.ts";
import { compareBlocks, compareGroups } from "../../src/statistics/group-comparison.ts";
import { compareMeans } from "../../src/statistics/mean-comparison.ts";
import { holm } from "../../src/statistics/multiplicity.ts";
import { nestedTest } from "../../src/statistics/nested-test.ts";
import { predict } from "../../src/statistics/prediction.ts";
import { regression } from "../../src/statistics/regression.ts";
import { sampleOf } from "../../src/statistics/sample.ts";
import { compareScatter } from "../../src/statistics/scatter-comparison.ts";
import { allPairs, dunnettRule } from "../../src/statistics/simultaneous.ts";
import { tTestPower } from "../../src/statistics/t-test-power.ts";
import { welchOneWay } from "../../src/statistics/welch.ts";
import { plainDesign, welchTest } from "../support/comparisons.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

// R 4.6 with the statistics and data sets that come with it; each value beside the call that makes it.

/** Weights of chicks by six feeds, unequal groups: R's data set chickwts. */
async function chickGroups(): Promise<number[][]> {
  const weights = await evalR("chickwts$weight");
  const feeds = await evalR("as.integer(chickwts$feed)");
  return [1, 2, 3, 4, 5, 6].map((feed) => weights.filter((_, i) => feeds[i] === feed));
}

/** Rows of a matrix that R gives column by column. */
function rowsOf(columnwise: readonly number[], columns: number): number[][] {
  const rows = columnwise.length / columns;
  return Array.from({ length: rows }, (_, i) =>
    Array.from({ length: columns }, (__, j) => columnwise[j * rows + i] ?? Number.NaN),
  );
}

function expectDigits(found: number | null | undefined, wanted: number | undefined, least: number) {
  expect(digits(present(found), present(wanted))).toBeGreaterThanOrEqual(least);
}

describe("comparisons of means", () => {
  it("has t.test's Welch test", async () => {
    const [a = [], b = []] = await chickGroups();
    const wanted = await evalR(
      "r <- t.test(a, b); c(r$statistic, r$parameter, r$p.value, r$conf.int)",
      { a, b },
    );
    const { statistic, df, pValue, lower, upper } = welchTest(sampleOf(a), sampleOf(b));
    [statistic, df, pValue, lower, upper].forEach((value, i) => {
      expectDigits(value, wanted[i], 12);
    });
  });

  it("has oneway.test's Welch test", async () => {
    const wanted = await evalR(
      "r <- oneway.test(weight ~ feed, chickwts); c(r$statistic, r$parameter, r$p.value)",
    );
    const { statistic, df1, df2, pValue } = welchOneWay((await chickGroups()).map(sampleOf));
    [statistic, df1, df2, pValue].forEach((value, i) => {
      expectDigits(value, wanted[i], 12);
    });
  });

  it("has TukeyHSD's differences, limits and p-values for unequal groups", async () => {
    const wanted = rowsOf(await evalR("TukeyHSD(aov(weight ~ feed, chickwts))$feed"), 4);
    const { contrasts: found } = compareGroups(await chickGroups(), {
      ...plainDesign,
      spread: "common",
    });
    expect(wanted).toHaveLength(15);
    // R names the later group first, in the order 2-1, 3-1, … 3-2, …: our pairs turned round.
    found.forEach((contrast, i) => {
      const [difference, lower, upper, p] = present(wanted[i]);
      expectDigits(-contrast.difference, difference, 12);
      expectDigits(-present(contrast.upper), lower, 6);
      expectDigits(-present(contrast.lower), upper, 6);
      // TukeyHSD rounds p to 7 decimals.
      expect(Math.abs(present(contrast.pValue) - present(p))).toBeLessThan(1e-6);
    });
  });

  it("has ptukey's p for every pair by Games and Howell", async () => {
    const groups = await chickGroups();
    for (const { statistic, df, pValue } of compareGroups(groups, plainDesign).contrasts) {
      // ptukey is poor in its tail below 10 degrees of freedom; here all have more.
      expect(present(df)).toBeGreaterThan(10);
      const [p] = await evalR("ptukey(abs(t) * sqrt(2), 6, df, lower.tail = FALSE)", {
        t: present(statistic),
        df: present(df),
      });
      expect(Math.abs(present(pValue) - present(p))).toBeLessThan(1e-7);
    }
  });

  it("has Dunnett's p as a double integral over the reference and the error, done by integrate", async () => {
    const groups = await chickGroups();
    const design = { ...plainDesign, reference: 0, spread: "common" } as const;
    const { contrasts } = compareGroups(groups, design);
    for (const { first, statistic, df, pValue } of contrasts.slice(0, 2)) {
      const sizes = groups.slice(1).map((group) => group.length);
      const [p] = await evalR(
        `load <- sqrt(size / (size + reference))
         inside <- function(d) integrate(function(z) sapply(z, function(one) dnorm(one) * prod(
           pnorm((d - load * one) / sqrt(1 - load^2)) - pnorm((-d - load * one) / sqrt(1 - load^2)))),
           -8, 8, rel.tol = 1e-10)$value
         1 - integrate(function(s) sapply(s, function(one)
           inside(d * one) * 2 * one * df * dchisq(df * one^2, df)), 0.4, 1.8, rel.tol = 1e-9)$value`,
        {
          d: Math.abs(present(statistic)),
          df: present(df),
          size: sizes,
          reference: present(groups[0]).length,
        },
      );
      expect(first).toBeGreaterThan(0);
      expect(Math.abs(present(pValue) - present(p))).toBeLessThan(1e-7);
    }
  });

  it("has p.adjust's Holm", async () => {
    const p = [0.011, 0.02, 0.004, 0.3, 0.02, 0.9];
    const wanted = await evalR('p.adjust(p, "holm")', { p });
    holm(p).forEach((value, i) => {
      expectDigits(value, wanted[i], 14);
    });
  });
});

describe("comparisons within blocks", () => {
  /** Speed of light, 20 runs as blocks, five experiments: R's data set morley. */
  const blocksOfRuns = async () => rowsOf(await evalR("morley$Speed"), 5);

  it("has aov's two-way analysis", async () => {
    const blocks = await blocksOfRuns();
    const wanted = await evalR(
      `r <- summary(aov(Speed ~ factor(Run) + factor(Expt), morley))[[1]]
       c(r[["Sum Sq"]], r[["F value"]][2], r[["Pr(>F)"]][2])`,
    );
    const { blockSumOfSquares, treatmentSumOfSquares, errorSumOfSquares, test } =
      blockAnova(blocks);
    [
      blockSumOfSquares,
      treatmentSumOfSquares,
      errorSumOfSquares,
      test?.statistic,
      test?.pValue,
    ].forEach((value, i) => {
      expectDigits(value, wanted[i], 11);
    });
  });

  it("has TukeyHSD's limits for complete blocks with a common spread", async () => {
    const blocks = await blocksOfRuns();
    const wanted = rowsOf(
      await evalR('TukeyHSD(aov(Speed ~ factor(Run) + factor(Expt), morley), "factor(Expt)")[[1]]'),
      4,
    );
    const { contrasts: found } = compareBlocks(blocks, { ...plainDesign, spread: "common" });
    expect(wanted).toHaveLength(10);
    found.forEach((contrast, i) => {
      const [difference, lower, upper, p] = present(wanted[i]);
      expectDigits(-contrast.difference, difference, 11);
      expectDigits(-present(contrast.upper), lower, 5);
      expectDigits(-present(contrast.lower), upper, 5);
      expect(Math.abs(present(contrast.pValue) - present(p))).toBeLessThan(1e-6);
    });
  });

  it("has TukeyHSD's limits and qtukey's for few blocks", async () => {
    const blocks = [
      [0.301, 0.31, 0.297],
      [0.295, 0.309, 0.296],
      [0.306, 0.318, 0.304],
      [0.298, 0.306, 0.29],
    ];
    const wanted = rowsOf(
      await evalR(
        `d <- data.frame(y = y, block = factor(rep(1:4, each = 3)), product = factor(rep(1:3, 4)))
         TukeyHSD(aov(y ~ block + product, d), "product")[[1]]`,
        { y: blocks.flat() },
      ),
      4,
    );
    const { contrasts: found } = compareBlocks(blocks, { ...plainDesign, spread: "common" });
    expect(wanted).toHaveLength(3);
    found.forEach((contrast, i) => {
      const [difference, lower, upper, p] = present(wanted[i]);
      expectDigits(-contrast.difference, difference, 12);
      expectDigits(-present(contrast.upper), lower, 6);
      expectDigits(-present(contrast.lower), upper, 6);
      expect(Math.abs(present(contrast.pValue) - present(p))).toBeLessThan(1e-6);
    });
  });

  it.each([
    [2, 6],
    [3, 9],
  ])(
    "has Dunnett's critical value for %d products against one on %d degrees of freedom",
    async (k, df) => {
      const [wanted] = await evalR(
        `inside <- function(d) integrate(function(z)
         dnorm(z) * (pnorm(d * sqrt(2) - z) - pnorm(-d * sqrt(2) - z))^k, -9, 9, rel.tol = 1e-11)$value
       missed <- function(c) integrate(function(s) sapply(s, function(one)
         inside(c * one) * 2 * one * df * dchisq(df * one^2, df)), 0, 5, rel.tol = 1e-10)$value - 0.95
       uniroot(missed, c(2, 4), tol = 1e-10)$root`,
        { k, df },
      );
      const loadings = Array.from({ length: k }, () => Math.SQRT1_2);
      expectDigits(dunnettRule(loadings).criticalValue(0.95, df), wanted, 8);
    },
  );

  it("has pairwise.t.test's paired p-values with Bonferroni's adjustment, beside a common spread too", async () => {
    const wanted = await evalR(
      `p <- pairwise.t.test(morley$Speed, morley$Expt, paired = TRUE, p.adjust.method = "bonferroni")$p.value
       p[lower.tri(p, diag = TRUE)]`,
    );
    const blocks = await blocksOfRuns();
    const separate = compareBlocks(blocks, plainDesign);
    const common = compareBlocks(blocks, { ...plainDesign, spread: "common" });
    expect(wanted).toHaveLength(10);
    separate.contrasts.forEach(({ pValue }, i) => {
      expectDigits(pValue, wanted[i], 10);
    });
    expect(separate.notAlike).toBeNull();
    expect(common.notAlike).toEqual(separate.contrasts);
  });
});

describe("comparisons of ratios on the log scale", () => {
  it("has exp of t.test's limits on logarithms for two groups", async () => {
    const [a = [], b = []] = await chickGroups();
    const wanted = await evalR("r <- t.test(log(a), log(b)); c(exp(r$conf.int), r$p.value)", {
      a,
      b,
    });
    const pairs = allPairs(2);
    const layout = independentLayout([a.map(Math.log), b.map(Math.log)], pairs, null, "separate");
    const [found] = compareMeans(layout, pairs, { level: 0.95, scale: "log", margin: null });
    const set = present(found?.ratioSet);
    if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
    expectDigits(set.lower, wanted[0], 9);
    expectDigits(set.upper, wanted[1], 9);
    expectDigits(found?.pValue, wanted[2], 9);
  });
});

describe("comparisons of scatter", () => {
  it("has Brown and Forsythe's test as an analysis of variance of distances", async () => {
    const [f, p] = await evalR(
      `d <- with(chickwts, abs(weight - ave(weight, feed, FUN = median)))
       r <- anova(lm(d ~ chickwts$feed)); c(r[["F value"]][1], r[["Pr(>F)"]][1])`,
    );
    const found = brownForsythe(await chickGroups());
    expectDigits(found.statistic, f, 11);
    expectDigits(found.pValue, p, 11);
  });

  it.each([
    ["pooled", [3, 3, 3], [3, 3, 3, 3], "TRUE"],
    ["welch", [2, 3, 4], [5, 3, 2, 6], "FALSE"],
  ] as const)("has the %s t test of corrected log variances", async (method, dfA, dfB, equal) => {
    const [sdA, sdB] = [
      [0.9, 1.4, 1.1],
      [2.2, 1.3, 1.9, 2.6],
    ];
    const wanted = await evalR(
      `L <- function(s, df) 2 * log(s) - (digamma(df / 2) - log(df / 2))
       r <- t.test(L(sa, da), L(sb, db), var.equal = ${equal})
       c(r$statistic, r$parameter, r$p.value, exp(r$conf.int / 2), exp(-diff(r$estimate) / 2))`,
      { sa: sdA, da: dfA, sb: sdB, db: dfB },
    );
    const scatters = (sds: readonly number[], dfs: readonly number[]) =>
      sds.map((standardDeviation, i) => ({ standardDeviation, df: present(dfs[i]) }));
    const found = present(compareScatter(scatters(sdA, dfA), scatters(sdB, dfB)));
    expect(found.method).toBe(method);
    const { statistic, df, pValue, lower, upper, ratio } = found;
    [statistic, df, pValue, lower, upper, ratio].forEach((value, i) => {
      expectDigits(value, wanted[i], 11);
    });
  });
});

describe("regression on several variables", () => {
  const variables = ["wt", "hp", "qsec"];
  const data = async () => ({
    rows: rowsOf(await evalR('as.matrix(mtcars[c("wt", "hp", "qsec")])'), 3),
    mpg: await evalR("mtcars$mpg"),
  });

  it("has lm's coefficients, errors, p-values, R², residual deviation and leverages", async () => {
    const { rows, mpg } = await data();
    const wanted = await evalR(
      `s <- summary(f <- lm(mpg ~ wt + hp + qsec, mtcars))
       c(s$coefficients[, c(1, 2, 4)], s$r.squared, s$sigma, hatvalues(f))`,
    );
    const fit = regression(variables, rows, mpg);
    const all = [fit.intercept, ...fit.slopes];
    [
      ...all.map(({ value }) => value),
      ...all.map(({ standardError }) => standardError),
      ...all.map(({ pValue }) => pValue),
      fit.rSquared,
      fit.residualStandardDeviation,
      ...fit.points.map(({ leverage }) => leverage),
    ].forEach((value, i) => {
      expectDigits(value, wanted[i], 10);
    });
  });

  it("has predict's intervals for the mean and for a new observation", async () => {
    const { rows, mpg } = await data();
    const wanted = await evalR(
      `f <- lm(mpg ~ wt + hp + qsec, mtcars); n <- data.frame(wt = 3.1, hp = 200, qsec = 22)
       c(predict(f, n, interval = "confidence"), predict(f, n, interval = "prediction")[2:3])`,
    );
    const found = predict(regression(variables, rows, mpg), [3.1, 200, 22]);
    const { value, meanLower, meanUpper, newLower, newUpper } = found;
    [value, meanLower, meanUpper, newLower, newUpper].forEach((one, i) => {
      expectDigits(one, wanted[i], 11);
    });
    expect(found.extrapolates).toBe(true);
  });

  it("has anova's F test of two nested models", async () => {
    const { rows, mpg } = await data();
    const [f, p] = await evalR(
      `r <- anova(lm(mpg ~ wt, mtcars), lm(mpg ~ wt + hp + qsec, mtcars)); c(r$F[2], r[["Pr(>F)"]][2])`,
    );
    const small = regression(
      ["wt"],
      rows.map(([wt = 0]) => [wt]),
      mpg,
    );
    const test = nestedTest(small, regression(variables, rows, mpg), mpg);
    expectDigits(test?.statistic, f, 11);
    expectDigits(test?.pValue, p, 11);
  });
});

it("has power.t.test's power", async () => {
  const [power] = await evalR("power.t.test(n = 4, delta = 0.05, sd = 0.022, strict = TRUE)$power");
  const effect = 0.05 / (0.022 * Math.sqrt(2 / 4));
  expectDigits(tTestPower(effect, 6, studentTQuantile(0.975, 6)), power, 8);
});
