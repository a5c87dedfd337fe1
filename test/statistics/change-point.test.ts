import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sharesCountedOnce, tableOptions } from "../../bench/study/change-point-table.ts";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTQuantile, studentTTwoSided } from "../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../src/numeric/random.ts";
import {
  changePoint,
  changePointCritical,
  changePointPValue,
} from "../../src/statistics/change-point.ts";
import { unfoldedShares } from "../../src/statistics/change-point-shares.ts";
import { changePointTable } from "../../src/statistics/change-point-table.ts";
import { present } from "../support/reference.ts";

describe("changePoint", () => {
  it("finds the split that parts two levels, with the two-sample t of that split", () => {
    const values = [5.1, 4.9, 5.0, 5.2, 6.0, 6.1, 5.9];
    const found = present(changePoint(values));
    expect(found.before).toBe(4);
    expect(found.meanBefore).toBeCloseTo(5.05, 12);
    expect(found.meanAfter).toBeCloseTo(6, 12);
    // Pooled by hand: sums of squares 0.05 and 0.02 on 5 degrees of freedom.
    const standardError = Math.sqrt((0.07 / 5) * (1 / 4 + 1 / 3));
    expect(found.standardError).toBeCloseTo(standardError, 12);
    expect(found.statistic).toBeCloseTo(0.95 / standardError, 9);
    expect(found.df).toBe(5);
  });

  it("never leaves a single value on one side", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 99 }), { minLength: 4 }), (values) => {
        const found = changePoint(values);
        if (found === null) return;
        expect(found.before).toBeGreaterThanOrEqual(2);
        expect(values.length - found.before).toBeGreaterThanOrEqual(2);
        expect(found.pValue).toBeGreaterThanOrEqual(0);
        expect(found.pValue).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("gives the same answer on any scale and far from zero", () => {
    const values = [3, 1, 2, 9, 7, 8, 9];
    const [plain, moved] = [values, values.map((value) => 1e6 + value / 1000)].map((list) =>
      present(changePoint(list)),
    );
    expect(present(moved).statistic).toBeCloseTo(present(plain).statistic, 5);
    expect(present(moved).before).toBe(present(plain).before);
  });

  it("has nothing to test against when the two sides do not scatter", () => {
    expect(changePoint([1, 1, 1, 2, 2, 2])).toBeNull();
    expect(changePoint([1, 1, 1, 1])).toBeNull();
  });

  it("refuses fewer than four values and values that are not numbers", () => {
    expect(() => changePoint([1, 2, 3])).toThrow(NumericalError);
    expect(() => changePoint([1, 2, Number.NaN, 3])).toThrow(NumericalError);
  });
});

describe("the distribution of the largest |t| over the splits", () => {
  it("is Student's t where there is one split only", () => {
    expect(changePointPValue(4.3, 4)).toBe(studentTTwoSided(4.3, 2));
    expect(changePointCritical(0.95, 4)).toBeCloseTo(studentTQuantile(0.975, 2), 12);
  });

  it("meets Bonferroni's bound, which is exact, where no two splits can exceed together", () => {
    for (const n of [5, 6, 8])
      expect(changePointPValue(40, n)).toBeCloseTo((n - 3) * studentTTwoSided(40, n - 2), 12);
  });

  it("is a distribution: p falls from 1 as t grows, and grows with the number of values at a fixed tail", () => {
    for (const n of [5, 6, 9, 21, 37, 90, 200, 1000]) {
      const along = Array.from({ length: 60 }, (_, i) => changePointPValue(i / 6, n));
      expect(along[0]).toBeCloseTo(1, 3);
      along.slice(1).forEach((p, i) => {
        expect(p).toBeLessThanOrEqual(along[i] ?? 0);
      });
    }
  });

  it("inverts itself", () => {
    for (const n of [5, 6, 9, 21, 60, 300])
      for (const level of [0.8, 0.95, 0.99, 0.9999])
        expect(changePointPValue(changePointCritical(level, n), n)).toBeCloseTo(1 - level, 10);
  });

  // A second route without weights: whole seasons of normal values, counted. 40,000 of them leave ± 0.0033 (3 s.e.).
  it("is exceeded by as many simulated seasons as it says, between the sizes of the table too", () => {
    const seasons = 40_000;
    for (const n of [6, 9, 12, 21, 55]) {
      const random = randomStream(11, n);
      const critical = changePointCritical(0.95, n);
      let exceeding = 0;
      for (let season = 0; season < seasons; season++) {
        const values = Array.from({ length: n }, () => random.normal());
        if (Math.abs(largestByHand(values)) > critical) exceeding++;
      }
      expect(Math.abs(exceeding / seasons - 0.05)).toBeLessThan(0.0033);
    }
  });

  // Alexandersson and Moberg 1997, International Journal of Climatology 17, 25: 95 % points of T0 = (n − 1)·r², their
  // test of the same maximum with single values allowed on either side; 6.95 at n = 20 is by an older simulation, so
  // n = 50 and 100 are used (8.45 and 9.15, from memory).
  it("agrees with the published table of the same test with one value allowed beside the split", () => {
    for (const [n, printed] of [
      [50, 8.45],
      [100, 9.15],
    ] as const) {
      const r2 = printed / (n - 1);
      const t = Math.sqrt(((n - 2) * r2) / (1 - r2));
      const exponent = -Math.log10(studentTTwoSided(t, n - 2));
      const [share] = sharesCountedOnce(n, {
        exponents: [exponent],
        samples: 40_000,
        seed: 5,
        fewestBeside: 1,
      });
      expect((n - 1) * 10 ** -exponent * present(share)).toBeCloseTo(0.05, 2);
    }
  });

  it("has a table that its generator makes again from another seed", () => {
    const { exponents, sizes, folded } = changePointTable;
    for (const n of [6, 12, 40]) {
      const again = sharesCountedOnce(n, {
        ...tableOptions,
        exponents: [exponents[10] ?? 1, exponents[20] ?? 2, exponents[30] ?? 3],
        samples: 30_000,
        seed: 99,
      });
      const row = unfoldedShares(folded[sizes.indexOf(n)] ?? [], exponents.length);
      [10, 20, 30].forEach((place, i) => {
        expect((again[i] ?? 0) / (row[place] ?? 0)).toBeCloseTo(1, 1.5);
      });
    }
  });

  it("refuses a size without two values on each side", () => {
    expect(() => changePointPValue(2, 3)).toThrow(NumericalError);
    expect(() => changePointCritical(1, 8)).toThrow(NumericalError);
  });
});

/** The statistic by its definition: every split's two-sample t. */
function largestByHand(values: readonly number[]): number {
  const squares = (list: readonly number[]) => {
    const mean = list.reduce((sum, value) => sum + value, 0) / list.length;
    return { mean, sum: list.reduce((sum, value) => sum + (value - mean) ** 2, 0) };
  };
  let largest = 0;
  for (let split = 2; split <= values.length - 2; split++) {
    const [a, b] = [squares(values.slice(0, split)), squares(values.slice(split))];
    const variance = (a.sum + b.sum) / (values.length - 2);
    const t = (b.mean - a.mean) / Math.sqrt(variance * (1 / split + 1 / (values.length - split)));
    if (Math.abs(t) > Math.abs(largest)) largest = t;
  }
  return largest;
}

it("counts between two sizes of its table once as often as lies between them in logarithms", () => {
  const shareAt = (n: number, p: number) => {
    const t = studentTQuantile(1 - p / 2, n - 2);
    return changePointPValue(t, n) / ((n - 3) * p);
  };
  for (const [small, n, large] of [
    [20, 21, 22],
    [60, 66, 70],
    [150, 190, 200],
  ] as const)
    for (const p of [0.3, 0.01, 1e-5]) {
      const weight = Math.log(n / small) / Math.log(large / small);
      const between = shareAt(small, p) ** (1 - weight) * shareAt(large, p) ** weight;
      expect(shareAt(n, p) / between).toBeCloseTo(1, 8);
    }
  expect(shareAt(1000, 1e-5)).toBeCloseTo(shareAt(200, 1e-5), 8);
});

describe("the table of shares", () => {
  const { exponents, sizes, folded } = changePointTable;
  const rows = folded.map((row) => unfoldedShares(row, exponents.length));

  it("begins where every split exceeds, so that one in so many splits counts", () => {
    rows.forEach((row, i) => {
      const splits = present(sizes[i]) - 3;
      expect(present(row[0]) * splits).toBeCloseTo(1, 3.9);
    });
  });

  it("rises from exponent to exponent, and never beyond 1", () => {
    for (const row of rows) {
      expect(Math.max(...row)).toBeLessThanOrEqual(1);
      row.slice(1).forEach((share, i) => {
        expect(share).toBeGreaterThanOrEqual(present(row[i]));
      });
    }
  });

  it("ends at 1 for few values, whose splits cannot exceed together", () => {
    for (const row of rows.slice(0, 8)) expect(row.at(-1)).toBeCloseTo(1, 4.5);
  });

  it("falls from size to size, since neighbours hang together the closer the more there are", () => {
    rows.slice(1).forEach((row, i) => {
      row.forEach((share, j) => {
        expect(share).toBeLessThanOrEqual(present(rows[i]?.[j]));
      });
    });
  });

  // Of the module as the generator wrote it; the simulations above say whether what it wrote is right.
  it("is as it was made, to the last digit", () => {
    const digest = createHash("sha256").update(JSON.stringify(changePointTable)).digest("hex");
    expect(digest).toBe("e6c7a61eef5977db3bf4bc1d667301473aee0954855e230b11f5284e82d1a3d6");
  });
});
