import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import {
  fewestForLasting,
  lastingShift,
  logEvidence,
  newestValue,
  type ShiftEvidence,
  shiftEvidence,
} from "../../src/statistics/shift-evidence.ts";
import { noPrior, type SpreadPrior } from "../../src/statistics/spread-prior.ts";
import { mean, sampleStandardDeviation } from "../../src/statistics/summary.ts";
import { trendTest } from "../../src/statistics/trend.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

/** Six values of one level and three of a level 6 % above it; the expected figures: test/reference/generate/moved-meter.R. */
const shifted = [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011, 0.3165, 0.319, 0.3148];
const lent: SpreadPrior = { nu0: 2, s0Squared: (0.0214 * 0.3) ** 2 };

const found = (values: readonly number[], prior: SpreadPrior = noPrior): ShiftEvidence =>
  present(shiftEvidence(values, prior));
const pOfNewest = (values: readonly number[], prior?: SpreadPrior) =>
  present(newestValue(values, found(values, prior))).pValue;
const evidence = (values: readonly number[], prior?: SpreadPrior) =>
  present(lastingShift(values, found(values, prior))).evidence;

describe("the evidence of a shift, by the values of one worked series", () => {
  it("is that of R with the series' own spread", () => {
    expect(pOfNewest(shifted.slice(0, 4))).toBeCloseTo(0.2292174902, 10);
    expect(evidence(shifted.slice(0, 4))).toBeCloseTo(0.9843358196, 10);
    expect(pOfNewest(shifted.slice(0, 7))).toBeCloseTo(0.003590406101, 12);
    expect(evidence(shifted.slice(0, 7))).toBeCloseTo(0.9260047459, 10);
    expect(pOfNewest(shifted.slice(0, 8))).toBeCloseTo(0.06217796094, 11);
    expect(evidence(shifted.slice(0, 8))).toBeCloseTo(5.8326292, 7);
  });

  it("is largest at the true split, and 27.6 to 1 there", () => {
    const eight = shifted.slice(0, 8);
    expect(present(lastingShift(eight, found(eight))).before).toBe(6);
    expect(Math.exp(logEvidence(found(eight), 6))).toBeCloseTo(27.62755812, 8);
  });

  it("is that of R with a spread lent by others", () => {
    expect(pOfNewest(shifted.slice(0, 7), lent)).toBeCloseTo(0.008535758165, 12);
    expect(evidence(shifted.slice(0, 8), lent)).toBeCloseTo(5.961351132, 9);
    expect(evidence(shifted, lent)).toBeCloseTo(14.16292037, 8);
  });
});

describe("the evidence of a split", () => {
  // Over σ (dσ/σ, by t = ln σ) and over the shift uσ, u normal with variance 2, with the squares taken as 1: with the shift
  // they are 1 − 2u√(rm)σ + mu²σ². No formula of the library is in it.
  it.each([
    [8, noPrior],
    [9, lent],
  ] as const)(
    "is the likelihood averaged over shifts that may be, for %i values, as R integrates it",
    async (n, prior) => {
      const values = shifted.slice(0, n);
      const all = found(values, prior);
      const ratios = await evalR(
        `sapply(seq_along(r), function(f) {
           m <- f * (n - f) / n
           over_sigma <- function(u) integrate(function(t)
             exp(-(df + 1) * t - exp(-2 * t) / 2 + u * sqrt(r[f] * m) * exp(-t) - m * u^2 / 2),
             -6, 8, rel.tol = 1e-11, subdivisions = 2000)$value
           over_shift <- integrate(function(u) sapply(u, over_sigma) * dnorm(u, 0, sqrt(2)),
             -12, 12, rel.tol = 1e-10, subdivisions = 2000)$value
           over_shift / over_sigma(0)
         })`,
        { r: all.shares, n, df: all.df },
      );
      expect(ratios).toHaveLength(n - 1);
      ratios.forEach((ratio, i) => {
        expect(Math.exp(logEvidence(all, i + 1)) / ratio).toBeCloseTo(1, 8);
      });
      const averaged = mean(ratios.slice(0, -1));
      expect(evidence(values, prior) / averaged).toBeCloseTo(1, 8);
    },
  );

  it("has the squares of a two-sample comparison behind it", () => {
    const { shares } = found(shifted);
    const squares = 8 * sampleStandardDeviation(shifted) ** 2;
    const [before, after] = [shifted.slice(0, 4), shifted.slice(4)];
    const between = (mean(after) - mean(before)) ** 2 * (20 / 9);
    expect(present(shares[3])).toBeCloseTo(between / squares, 12);
  });

  it("stays a number for a long series of two levels far apart", () => {
    const long = Array.from({ length: 600 }, (_, i) => (i < 300 ? 1 : 900) + 0.01 * (i % 3));
    const { evidence, before } = present(lastingShift(long, found(long)));
    expect(before).toBe(300);
    expect(Number.isFinite(evidence)).toBe(true);
  });
});

describe("the newest value", () => {
  it("is judged by the prediction interval of those before it", () => {
    const { statistic, df, difference, standardError } = present(
      newestValue(shifted, found(shifted)),
    );
    const earlier = shifted.slice(0, -1);
    const error = sampleStandardDeviation(earlier) * Math.sqrt(1 + 1 / earlier.length);
    expect(difference).toBeCloseTo(0.3148 - mean(earlier), 14);
    expect(standardError).toBeCloseTo(error, 14);
    expect(statistic).toBeCloseTo(difference / error, 10);
    expect(df).toBe(7);
  });

  it("can be the second where a spread is lent, and the third where none is", () => {
    expect(shiftEvidence([1, 1.1], noPrior)).toBeNull();
    expect(shiftEvidence([1, 1.1], { nu0: 0.9, s0Squared: 0.01 })).toBeNull();
    expect(shiftEvidence([1], { nu0: 4, s0Squared: 0.01 })).toBeNull();
    // One against one on ν0 = 4: t = 0.1/(0.05·√2) = √2, on 4 degrees of freedom.
    const two = present(newestValue([1, 1.1], found([1, 1.1], { nu0: 4, s0Squared: 0.0025 })));
    expect(two.statistic).toBeCloseTo(Math.SQRT2, 12);
    expect(two.df).toBe(4);
    expect(found([1, 1.1, 1.2]).df).toBe(1);
  });
});

describe("a straight line", () => {
  it("explains the share of the squares that its t statistic says", () => {
    const rising = [1, 1.1, 1.22, 1.28, 1.41, 1.5];
    const { statistic, df } = present(trendTest(rising));
    expect(found(rising).lineShare).toBeCloseTo(statistic ** 2 / (statistic ** 2 + df), 12);
    expect(present(lastingShift(rising, found(rising))).lineExplainsMore).toBe(true);
    expect(present(lastingShift(shifted, found(shifted))).lineExplainsMore).toBe(false);
  });

  it("that explains exactly as much as the shift explains no more", () => {
    // 13 values that rise by 2 to 16 below the mean, and 13 from 16 above it. Before the step they add up to −364, and
    // times their places about the middle all of them to 5460: 364²·26/(13·13) = 12·5460²/(26·(26² − 1)) = 20384.
    const both = Array.from({ length: 26 }, (_, i) => 100 + (i < 13 ? 2 * i - 40 : 2 * i - 10));
    const all = found(both);
    expect(all.lineShare).toBe(all.shares[12]);
    expect(lastingShift(both, all)).toMatchObject({ before: 13, lineExplainsMore: false });
  });
});

describe("any series", () => {
  const series = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 4, maxLength: 14 });
  const priors = fc.constantFrom(noPrior, { nu0: 2, s0Squared: 30 }, { nu0: 7.5, s0Squared: 4 });
  const figures = (values: readonly number[], prior: SpreadPrior) => {
    const all = shiftEvidence(values, prior);
    return {
      evidence: all === null ? null : (lastingShift(values, all)?.evidence ?? null),
      pValue: all === null ? null : (newestValue(values, all)?.pValue ?? null),
    };
  };
  const expectAlike = (a: ReturnType<typeof figures>, b: ReturnType<typeof figures>) => {
    for (const name of ["evidence", "pValue"] as const)
      if (a[name] === null) expect(b[name]).toBeNull();
      else expect(present(b[name]) / a[name]).toBeCloseTo(1, 6);
  };

  it("says the same with a constant added, with its own spread", () => {
    fc.assert(
      fc.property(series, fc.integer({ min: -1000, max: 1000 }), (values, constant) => {
        expectAlike(
          figures(values, noPrior),
          figures(
            values.map((value) => value + constant),
            noPrior,
          ),
        );
      }),
    );
  });

  it("says the same in any unit, the prior's spread in it too", () => {
    fc.assert(
      fc.property(
        series,
        priors,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (values, prior, unit) => {
          expectAlike(
            figures(values, prior),
            figures(
              values.map((value) => value * unit),
              { ...prior, s0Squared: prior.s0Squared * unit ** 2 },
            ),
          );
        },
      ),
    );
  });

  it("says the same turned upside down", () => {
    fc.assert(
      fc.property(series, priors, (values, prior) => {
        expectAlike(
          figures(values, prior),
          figures(
            values.map((value) => -value),
            prior,
          ),
        );
      }),
    );
  });

  it("has no evidence where nothing scatters about what would be found", () => {
    expect(shiftEvidence([2, 2, 2, 2], noPrior)).toBeNull();
    const step = [2, 2, 2, 3, 3, 3];
    expect(lastingShift(step, found(step))).toBeNull();
    const odd = [0.3, 0.3, 0.3, 0.31];
    expect(newestValue(odd, found(odd))).toBeNull();
    expect(newestValue(odd, found(odd, { nu0: 3, s0Squared: 0.01 }))).not.toBeNull();
  });

  it("is asked for a lasting shift from the fourth value on, and refused where a value is none", () => {
    const values = [1, 1.1, 0.9, 1.05];
    expect(values).toHaveLength(fewestForLasting);
    expect(lastingShift(values.slice(0, 3), found(values.slice(0, 3)))).toBeNull();
    expect(lastingShift(values, found(values))).not.toBeNull();
    expect(() => shiftEvidence([1, Number.NaN, 2], noPrior)).toThrow(NumericalError);
    expect(() => shiftEvidence([], lent)).toThrow(NumericalError);
  });
});
