import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import {
  noncentralTLowerTail,
  noncentralTQuantile,
  noncentralTUpperTail,
} from "../../../src/numeric/distributions/noncentral-t.ts";
import { normalLowerTail } from "../../../src/numeric/distributions/normal.ts";
import {
  studentTLowerTail,
  studentTQuantile,
} from "../../../src/numeric/distributions/student-t.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

const infinite = Number.POSITIVE_INFINITY;

describe("noncentral t against 25-digit values", () => {
  const reference = distributionReference("noncentral-t");

  it("has both tails to 13 digits, up to noncentrality 150", () => {
    for (const row of reference.tails) {
      const [x, df, shift] = [
        numberAt(row, "x"),
        numberAt(row, "df"),
        numberAt(row, "noncentrality"),
      ];
      expectDigits(noncentralTLowerTail(x, df, shift), numberAt(row, "lower"), 13, row);
      expectDigits(noncentralTUpperTail(x, df, shift), numberAt(row, "upper"), 13, row);
    }
  });

  it("has quantiles to 13 digits, up to noncentrality 150", () => {
    for (const row of reference.quantiles) {
      const [p, df, shift] = [
        numberAt(row, "p"),
        numberAt(row, "df"),
        numberAt(row, "noncentrality"),
      ];
      expectDigits(noncentralTQuantile(p, df, shift), numberAt(row, "quantile"), 13, row);
    }
  });
});

describe("noncentral t against R", () => {
  // R's pt itself says that it is good to an absolute 1e-12 for small noncentrality only, and its far tails are poor.
  it("agrees on the lower tail to 1e-10 where R is good", async () => {
    const rows = combinations([-1, 0.5, 2, 4, 9], [1, 2.5, 3, 17.4, 200], [0.5, 1.7, 4]);
    const column = (place: number) => rows.map((row) => row[place] ?? 0);
    const found = await evalR("pt(x, df, ncp)", { x: column(0), df: column(1), ncp: column(2) });
    rows.forEach(([x = 0, df = 0, shift = 0], i) => {
      const lower = noncentralTLowerTail(x, df, shift);
      expect(Math.abs(lower - (found[i] ?? 0)), JSON.stringify({ x, df, shift })).toBeLessThan(
        1e-10,
      );
    });
  });
});

describe("noncentral t", () => {
  it("is Student's t without noncentrality, over 16 decades of probability", () => {
    for (const [p = 0, df = 1] of combinations(probabilities, [0.6, 1, 2, 3, 9.7, 200, 1e6])) {
      const x = studentTQuantile(p, df);
      expectDigits(noncentralTLowerTail(x, df, 0), studentTLowerTail(x, df), 12, { p, df });
      if (p !== 0.5) expectDigits(noncentralTQuantile(p, df, 0), x, 13, { p, df });
    }
  });

  it("is a shifted normal for infinitely many degrees of freedom", () => {
    expect(noncentralTLowerTail(3, infinite, 2)).toBe(normalLowerTail(1));
    expectDigits(noncentralTQuantile(0.95, 1e9, 2), noncentralTQuantile(0.95, infinite, 2), 8, 1e9);
  });

  it("is at zero what the normal distribution leaves below minus the noncentrality", () => {
    expect(noncentralTLowerTail(0, 4, 1.3)).toBe(normalLowerTail(-1.3));
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

  it("has a quantile that its nearer tail turns back into the probability", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        fc.double({ min: 0.5, max: 1e5, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (p, df, shift) => {
          const x = noncentralTQuantile(p, df, shift);
          const back =
            p < 0.5 ? noncentralTLowerTail(x, df, shift) : noncentralTUpperTail(x, df, shift);
          expectDigits(back, p < 0.5 ? p : 1 - p, 9, { p, df, shift });
        },
      ),
    );
  });

  it("refuses what it cannot answer and names the argument", () => {
    expect(() => noncentralTLowerTail(Number.NaN, 3, 1)).toThrow(NumericalError);
    expect(() => noncentralTUpperTail(1, 0, 1)).toThrow("noncentralTUpperTail: df is 0");
    expect(() => noncentralTLowerTail(1, 3, infinite)).toThrow("noncentrality is Infinity");
    expect(() => noncentralTQuantile(0, 3, 1)).toThrow("p is 0");
    expect(() => noncentralTQuantile(0.5, 3, Number.NaN)).toThrow("noncentrality is NaN");
  });
});
