import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperTail,
} from "../../../src/numeric/distributions/chi-squared.ts";
import { fLowerTail, fQuantile, fUpperTail } from "../../../src/numeric/distributions/f.ts";
import {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from "../../../src/numeric/distributions/noncentral-t.ts";
import {
  normalDensity,
  normalLowerTail,
  normalQuantile,
  normalUpperTail,
} from "../../../src/numeric/distributions/normal.ts";
import {
  studentTDensity,
  studentTLowerTail,
  studentTQuantile,
  studentTTwoSided,
  studentTUpperTail,
} from "../../../src/numeric/distributions/student-t.ts";
import {
  studentizedRangeQuantile,
  studentizedRangeUpperTail,
} from "../../../src/numeric/distributions/studentized-range.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { rangesInR } from "../../support/studentized-range-in-r.ts";
import { evalR } from "../../support/webr.ts";

const infinite = Number.POSITIVE_INFINITY;
const dfs = [1, 2, 2.5, 3, 17.4, 200, 1e6];

/** One of its functions: of x, or of p, and the parameters in their order. */
type OfX = (x: number, ...parameters: number[]) => number;

interface Distribution {
  readonly file: string;
  readonly parameters: readonly string[];
  /** Each with the digits it has against values computed to 25. */
  readonly lower?: readonly [OfX, number];
  readonly upper: readonly [OfX, number];
  readonly quantile?: readonly [OfX, number];
  /** Against R: code that gives quantile, lower tail, upper tail (and density) at every row of a grid of p and parameters. */
  readonly inR?: {
    readonly code: string;
    readonly grid: readonly (readonly number[])[];
    readonly digits: number;
    readonly density?: OfX;
    /** What R's own quantile is good to, where that is less. */
    readonly quantileError?: (x: number, row: readonly number[]) => number;
  };
  /** A quantile's nearer tail turned back into the probability: range of the only parameter, and digits. */
  readonly back?: { readonly from: number; readonly to: number; readonly digits: number };
  readonly limits: readonly (readonly [found: number, wanted: number])[];
  readonly refusals: readonly (readonly [call: () => number, message: string])[];
}

const distributions: Readonly<Record<string, Distribution>> = {
  "the normal distribution": {
    file: "normal",
    parameters: [],
    lower: [normalLowerTail, 15],
    upper: [normalUpperTail, 15],
    quantile: [normalQuantile, 15],
    inR: {
      code: "x <- qnorm(p); c(x, pnorm(x), pnorm(-x), dnorm(x))",
      grid: [],
      digits: 13,
      density: normalDensity,
    },
    limits: [
      [normalLowerTail(-infinite), 0],
      [normalUpperTail(-infinite), 1],
      [normalDensity(infinite), 0],
    ],
    refusals: [
      [() => normalLowerTail(Number.NaN), "normalLowerTail: x is NaN"],
      [() => normalUpperTail(Number.NaN), "normalUpperTail: x is NaN"],
      [() => normalDensity(Number.NaN), "x is NaN"],
      [() => normalQuantile(0), "p is 0; it must be strictly between 0 and 1"],
      [() => normalQuantile(1), "p is 1"],
      [() => normalQuantile(Number.NaN), "p is NaN"],
    ],
  },
  "Student's t": {
    file: "student-t",
    parameters: ["df"],
    lower: [studentTLowerTail, 14],
    upper: [studentTUpperTail, 14],
    quantile: [studentTQuantile, 14],
    inR: {
      code: "x <- qt(p, a); c(x, pt(x, a), pt(-x, a), dt(x, a))",
      grid: [dfs],
      digits: 12,
      density: studentTDensity,
      // R's own quantile is 0 to within rounding here, not exactly.
      quantileError: (x, [p = 0]) => (p === 0.5 ? 1e-15 : 1e-12 * Math.abs(x)),
    },
    back: { from: 0.3, to: 1e7, digits: 12 },
    limits: [
      [studentTLowerTail(-1.7, infinite), normalLowerTail(-1.7)],
      [studentTQuantile(0.975, infinite), normalQuantile(0.975)],
      [studentTTwoSided(-2.3, 4.5), 2 * studentTUpperTail(2.3, 4.5)],
      [studentTTwoSided(0, 3), 1],
      [studentTTwoSided(infinite, 3), 0],
    ],
    refusals: [
      [() => studentTLowerTail(Number.NaN, 3), "studentTLowerTail: x is NaN"],
      [() => studentTUpperTail(1, 0), "df is 0; it must be a number above 0"],
      [() => studentTTwoSided(1, -2), "df is -2"],
      [() => studentTDensity(1, Number.NaN), "df is NaN"],
      [() => studentTQuantile(0, 3), "p is 0; it must be strictly between 0 and 1"],
      [() => studentTQuantile(1, 3), "p is 1"],
      [() => studentTQuantile(0.3, Number.NaN), "df is NaN"],
      [() => studentTQuantile(1e-300, 0.01), "outside what a number can hold"],
    ],
  },
  "chi-squared": {
    file: "chi-squared",
    parameters: ["df"],
    lower: [chiSquaredLowerTail, 13],
    upper: [chiSquaredUpperTail, 13],
    quantile: [chiSquaredQuantile, 13],
    inR: {
      code: "x <- qchisq(p, a); c(x, pchisq(x, a), pchisq(x, a, lower.tail = FALSE))",
      grid: [dfs],
      digits: 11,
    },
    back: { from: 0.3, to: 1e4, digits: 10 },
    limits: [
      [chiSquaredLowerTail(0, 3), 0],
      [chiSquaredUpperTail(-2, 3), 1],
      [chiSquaredLowerTail(infinite, 3), 1],
      [chiSquaredUpperTail(infinite, 3), 0],
    ],
    refusals: [
      [() => chiSquaredLowerTail(Number.NaN, 3), "chiSquaredLowerTail: x is NaN"],
      [() => chiSquaredUpperTail(1, 0), "df is 0; it must be a finite number above 0"],
      [() => chiSquaredUpperTail(1, infinite), "df is Infinity"],
      [() => chiSquaredQuantile(1, 3), "p is 1"],
      [() => chiSquaredQuantile(0.5, Number.NaN), "df is NaN"],
    ],
  },
  F: {
    file: "f",
    parameters: ["df1", "df2"],
    lower: [fLowerTail, 12],
    upper: [fUpperTail, 12],
    quantile: [fQuantile, 12],
    inR: {
      // From df2 = 4e5 on R takes the chi-squared quantile instead.
      code: "x <- qf(p, a, b); c(x, pf(x, a, b), pf(x, a, b, lower.tail = FALSE))",
      grid: [
        [1, 2, 3, 11.5, 200],
        [1, 2, 3, 8.4, 200, 1e5],
      ],
      digits: 11,
      // R finds small quantiles as a difference from 1, so they carry the rounding unit of 1 as an error.
      quantileError: (x, [, df1 = 1, df2 = 1]) => 1e-11 * x + 1e-15 * Math.max(1, df2 / df1),
    },
    limits: [
      [fLowerTail(-1, 2, 3), 0],
      [fUpperTail(0, 2, 3), 1],
      [fUpperTail(infinite, 2, 3), 0],
      [fLowerTail(infinite, 2, infinite), 1],
      [fUpperTail(1.9, 4, infinite), chiSquaredUpperTail(7.6, 4)],
    ],
    refusals: [
      [() => fLowerTail(Number.NaN, 2, 3), "fLowerTail: x is NaN"],
      [() => fUpperTail(Number.NaN, 2, 3), "fUpperTail: x is NaN"],
      [() => fUpperTail(1, infinite, 3), "df1 is Infinity"],
      [() => fUpperTail(1, 2, 0), "df2 is 0"],
      [() => fQuantile(0, 2, 3), "p is 0"],
      [() => fQuantile(0.5, Number.NaN, 3), "df1 is NaN"],
    ],
  },
  "noncentral t, up to noncentrality 150": {
    file: "noncentral-t",
    parameters: ["df", "noncentrality"],
    lower: [noncentralTLowerTail, 13],
    upper: [noncentralTUpperTail, 13],
    limits: [
      [noncentralTLowerTail(3, infinite, 2), normalLowerTail(1)],
      [noncentralTLowerTail(0, 4, 1.3), normalLowerTail(-1.3)],
      [noncentralTLowerTail(-infinite, 4, 1.3), 0],
      [noncentralTUpperTail(-infinite, 4, 1.3), 1],
    ],
    refusals: [
      [() => noncentralTLowerTail(Number.NaN, 3, 1), "noncentralTLowerTail: x is NaN"],
      [() => noncentralTUpperTail(1, 0, 1), "noncentralTUpperTail: df is 0"],
      [() => noncentralTLowerTail(1, 3, infinite), "noncentrality is Infinity"],
    ],
  },
  "the studentized range, from 2 to 20 means": {
    file: "studentized-range",
    parameters: ["means", "df"],
    upper: [studentizedRangeUpperTail, 13],
    quantile: [studentizedRangeQuantile, 13],
    limits: [
      [studentizedRangeUpperTail(-1, 3, 5), 1],
      [studentizedRangeUpperTail(0, 3, 5), 1],
      [studentizedRangeUpperTail(infinite, 3, 5), 0],
      [studentizedRangeUpperTail(infinite, 3, infinite), 0],
    ],
    refusals: [
      [() => studentizedRangeUpperTail(Number.NaN, 3, 5), "studentizedRangeUpperTail: q is NaN"],
      [
        () => studentizedRangeUpperTail(3, 1, 5),
        "means is 1; it must be a whole number of at least 2",
      ],
      [() => studentizedRangeUpperTail(3, 2.5, 5), "means is 2.5"],
      [() => studentizedRangeUpperTail(3, 3, 0), "df is 0"],
      [() => studentizedRangeQuantile(1, 3, 5), "p is 1"],
      [() => studentizedRangeQuantile(0.5, infinite, 5), "means is Infinity"],
    ],
  },
};

describe.each(Object.entries(distributions))("%s", (_, distribution) => {
  const { file, parameters, lower, upper, quantile, inR, back, limits, refusals } = distribution;
  const reference = distributionReference(file);
  const of = (row: (typeof reference.tails)[number]) => parameters.map((key) => numberAt(row, key));
  const nearer = (p: number) => (p < 0.5 && lower !== undefined ? lower[0] : upper[0]);

  it("has its tails against 25-digit values", () => {
    for (const row of reference.tails) {
      const x = numberAt(row, "x");
      expectDigits(upper[0](x, ...of(row)), numberAt(row, "upper"), upper[1], row);
      if (lower) expectDigits(lower[0](x, ...of(row)), numberAt(row, "lower"), lower[1], row);
    }
  });

  it("has its quantiles against 25-digit values, or their probability in the nearer tail", () => {
    for (const row of reference.quantiles) {
      const [p, x] = [numberAt(row, "p"), numberAt(row, "quantile")];
      if (quantile) expectDigits(quantile[0](p, ...of(row)), x, quantile[1], row);
      else expectDigits(nearer(p)(x, ...of(row)), Math.min(p, 1 - p), 11.5, row);
    }
  });

  if (quantile !== undefined && inR !== undefined)
    it("agrees with R on quantiles, tails and density", async () => {
      const { code, grid, digits, density, quantileError } = inR;
      const rows = combinations(probabilities, ...grid);
      const column = (place: number) => rows.map((row) => row[place] ?? 0);
      const found = await evalR(code, { p: column(0), a: column(1), b: column(2) });
      rows.forEach((row, i) => {
        const [p = 0, ...rest] = row;
        const [x = Number.NaN, ...truths] = [0, 1, 2, 3].map((b) => found[b * rows.length + i]);
        const allowed = quantileError?.(x, row) ?? 10 ** -digits * Math.abs(x);
        const error = Math.abs(quantile[0](p, ...rest) - x);
        expect(error, JSON.stringify(row)).toBeLessThanOrEqual(allowed);
        [lower?.[0], upper[0], density].forEach((f, j) => {
          if (f) expectDigits(f(x, ...rest), truths[j] ?? Number.NaN, digits, row);
        });
      });
    });

  if (quantile !== undefined && back !== undefined)
    it("has a quantile that its nearer tail turns back into the probability", () => {
      const p = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true });
      fc.assert(
        fc.property(p, fc.double({ min: back.from, max: back.to, noNaN: true }), (chance, df) => {
          const found = nearer(chance)(quantile[0](chance, df), df);
          expectDigits(found, Math.min(chance, 1 - chance), back.digits, { chance, df });
        }),
      );
    });

  it("has its limits", () => {
    for (const [found, wanted] of limits) expect(found).toBe(wanted);
  });

  it("refuses what it cannot answer and names the argument", () => {
    for (const [call, message] of refusals) {
      expect(call).toThrow(NumericalError);
      expect(call).toThrow(message);
    }
  });
});

describe("the normal distribution besides", () => {
  it("agrees with R far out, where the tail is 1e-300", async () => {
    const [truth = 0] = await evalR("pnorm(-37)");
    expectDigits(normalUpperTail(37), truth, 14, 37);
  });

  it("has tails that add up to 1", () => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (x) => {
        expect(normalLowerTail(x) + normalUpperTail(x)).toBeCloseTo(1, 15);
      }),
    );
  });

  it("does not jump where its pieces meet", () => {
    for (const z of [0.67448975, Math.sqrt(32)]) {
      const [before, after] = [normalUpperTail(z * (1 - 1e-15)), normalUpperTail(z * (1 + 1e-15))];
      expectDigits(before, after, 13, z); // the tail itself falls by 7e-14 at the farther one
    }
    for (const p of [0.075, Math.exp(-25)])
      expectDigits(normalQuantile(p * (1 - 1e-15)), normalQuantile(p * (1 + 1e-15)), 14, p);
  });
});

describe("Student's t besides", () => {
  it("is the Cauchy distribution for one degree of freedom", () => {
    for (const x of [-1e5, -3, -1e-9, 0, 1e-12, 1e-3, 0.7, 40]) {
      const cauchy = x < -1 ? Math.atan(-1 / x) / Math.PI : 0.5 + Math.atan(x) / Math.PI;
      expectDigits(studentTLowerTail(x, 1), cauchy, 14, x);
    }
  });

  it("is nearly the normal distribution for very many degrees of freedom", () => {
    expectDigits(studentTQuantile(0.975, 1e15), normalQuantile(0.975), 14, "df 1e15");
    expectDigits(studentTDensity(1, 1e15), studentTDensity(1, infinite), 14, "df 1e15");
  });

  it("is symmetric", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 0.5, noNaN: true }),
        fc.double({ min: 0.3, max: 1e7, noNaN: true }),
        (p, df) => {
          const x = studentTQuantile(p, df);
          expect(studentTLowerTail(x, df)).toBe(studentTUpperTail(-x, df));
          expect(studentTDensity(x, df)).toBe(studentTDensity(-x, df));
        },
      ),
    );
  });
});

it("chi-squared is exponential for two degrees of freedom", () => {
  for (const x of [1e-9, 0.3, 2, 40]) {
    expectDigits(chiSquaredLowerTail(x, 2), -Math.expm1(-x / 2), 14, x);
    expectDigits(chiSquaredUpperTail(x, 2), Math.exp(-x / 2), 14, x);
  }
});

describe("F besides", () => {
  it("is the square of t for one numerator degree of freedom", () => {
    for (const t of [1e-6, 0.4, 1.9, 12]) {
      expectDigits(fUpperTail(t * t, 1, 6.5), studentTTwoSided(t, 6.5), 13, t);
    }
  });

  it("is chi-squared over its df for infinitely many denominator degrees of freedom", () => {
    expect(fLowerTail(1.9, 4, infinite) + fUpperTail(1.9, 4, infinite)).toBeCloseTo(1, 14);
    expectDigits(fQuantile(0.95, 4, 1e12), fQuantile(0.95, 4, infinite), 10, "df2 1e12");
  });

  it("turns over when the degrees of freedom are exchanged", () => {
    const positive = { min: 0.5, max: 1e5, noNaN: true };
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.double(positive),
        fc.double(positive),
        (x, df1, df2) => {
          const turned = fUpperTail(1 / x, df2, df1);
          if (turned > 1e-200) expectDigits(fLowerTail(x, df1, df2), turned, 8, { x, df1, df2 });
        },
      ),
    );
  });
});

describe("noncentral t besides", () => {
  // R's pt itself says that it is good to an absolute 1e-12 for small noncentrality only, and its far tails are poor.
  it("agrees with R on the lower tail to 1e-10 where R is good", async () => {
    const rows = combinations([-1, 0.5, 2, 4, 9], [1, 2.5, 3, 17.4, 200], [0.5, 1.7, 4]);
    const column = (place: number) => rows.map((row) => row[place] ?? 0);
    const found = await evalR("pt(x, df, ncp)", { x: column(0), df: column(1), ncp: column(2) });
    rows.forEach(([x = 0, df = 0, shift = 0], i) => {
      const error = Math.abs(noncentralTLowerTail(x, df, shift) - (found[i] ?? Number.NaN));
      expect(error, JSON.stringify({ x, df, shift })).toBeLessThan(1e-10);
    });
  });

  it("is Student's t without noncentrality, over 16 decades of probability", () => {
    for (const [p = 0, df = 1] of combinations(probabilities, [0.6, 1, 2, 3, 9.7, 200, 1e6])) {
      const x = studentTQuantile(p, df);
      expectDigits(noncentralTLowerTail(x, df, 0), studentTLowerTail(x, df), 12, { p, df });
    }
  });

  it("does not jump beside 0", () => {
    expectDigits(noncentralTLowerTail(1e-12, 4, 1.3), normalLowerTail(-1.3), 10, "beside zero");
  });

  it("turns over with the sign of its arguments, and its tails add up to 1", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -200, max: 200, noNaN: true }),
        fc.double({ min: 0.3, max: 1e5, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (x, df, shift) => {
          const lower = noncentralTLowerTail(x, df, shift);
          expect(noncentralTUpperTail(-x, df, -shift)).toBe(lower);
          expect(lower + noncentralTUpperTail(x, df, shift)).toBeCloseTo(1, 12);
        },
      ),
    );
  });
});

describe("the studentized range besides", () => {
  // R's ptukey is wrong at 2 degrees of freedom, its upper tail is poor below 10, it loses digits with dozens of means or
  // thousands of degrees of freedom, and from 25,000 on it takes the error as known: none of these is used as truth.
  it("agrees with R to 1e-8 from 10 to 200 degrees of freedom", async () => {
    const rows = combinations([1, 2.5, 3.8, 5.5], [2, 3, 5, 12], [10, 17.4, 200]);
    const column = (place: number) => rows.map((row) => row[place] ?? 0);
    const found = await evalR("ptukey(q, means, df)", {
      q: column(0),
      means: column(1),
      df: column(2),
    });
    rows.forEach(([q = 0, means = 0, df = 0], i) => {
      const lower = 1 - studentizedRangeUpperTail(q, means, df);
      const error = Math.abs(lower - (found[i] ?? Number.NaN));
      expect(error, JSON.stringify({ q, means, df })).toBeLessThan(1e-8);
    });
  });

  it("agrees for 40 means with the integral that R does", async () => {
    const [lower = 0] = await evalR(`${rangesInR} tukey.lower(2.5 / sqrt(2), 40, 10)`);
    expectDigits(1 - studentizedRangeUpperTail(2.5, 40, 10), lower, 12, "40 means");
    expectDigits(studentizedRangeQuantile(lower, 40, 10), 2.5, 12, "40 means");
  });

  it("is √2·|t| for two means, over 16 decades of probability", () => {
    for (const [p = 0, df = 1] of combinations(probabilities, [0.6, 1, 2, 3, 9.7, 200, 1e6])) {
      const t = -studentTQuantile(0.5 * (1 - p), df);
      const q = Math.SQRT2 * t;
      const upper = studentTTwoSided(t, df);
      expectDigits(studentizedRangeUpperTail(q, 2, df), upper, 12, { p, df });
      // 1 − p has already rounded the smallest p.
      expectDigits(studentizedRangeQuantile(p, 2, df), q, p < 1e-3 ? 7 : 12, { p, df });
    }
  });

  it("is √2·|z| for two means whose error is known", () => {
    const q = -Math.SQRT2 * studentTQuantile(0.005, infinite);
    expectDigits(studentizedRangeUpperTail(q, 2, infinite), 0.01, 13, q);
    expectDigits(studentizedRangeQuantile(0.99, 2, infinite), q, 13, q);
  });

  it("has near 0 the chance √3·q²/(2π) for three means whose error is known", () => {
    const w = 1e-4;
    const limit = (Math.sqrt(3) * w * w) / (2 * Math.PI);
    expectDigits(studentizedRangeQuantile(limit, 3, infinite), w, 7, w);
  });

  it("grows with the number of means and shrinks with the degrees of freedom", () => {
    const quantiles = [2, 3, 5, 10, 50].map((means) => studentizedRangeQuantile(0.95, means, 7.5));
    expect(quantiles).toEqual([...quantiles].sort((a, b) => a - b));
    const byDf = [1, 2, 5, 30, 1000, infinite].map((df) => studentizedRangeQuantile(0.95, 4, df));
    expect(byDf).toEqual([...byDf].sort((a, b) => b - a));
  });
});
