import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { blockLayout, independentLayout } from "../../src/statistics/comparison-layout.ts";
import { compareMeans, type MeanComparisonOptions } from "../../src/statistics/mean-comparison.ts";
import type { RatioSet } from "../../src/statistics/ratio-interval.ts";
import {
  allPairs,
  bonferroniRule,
  studentizedRangeRule,
} from "../../src/statistics/simultaneous.ts";
import { mean } from "../../src/statistics/summary.ts";
import ratios from "../reference/ratio/fieller-welch.json" with { type: "json" };
import { present } from "../support/reference.ts";

const plain: MeanComparisonOptions = { level: 0.95, scale: "as measured", margin: null };
const [a, b] = [
  [5.1, 5.3, 4.9, 5.2],
  [5, 5.2, 5.1, 4.8],
];
const pairs = allPairs(2);
const blocks = a.map((value, i) => [value, b[i] ?? null]);

function only<T>(items: readonly T[]): T {
  expect(items).toHaveLength(1);
  return present(items[0]);
}

describe("two groups by themselves", () => {
  const layout = independentLayout([a, b], pairs, null, "separate");

  it("take the degrees of freedom of their ratio at the ratio", () => {
    const { x, y } = ratios.data;
    const { pairOf } = independentLayout([x, y], pairs, null, "separate");
    const { first, second, error } = present(pairOf({ first: 0, second: 1 }));
    expect(present(error).at(first / second).df).toBeCloseTo(
      ratios.recomputed_in_R.df_at_ratio,
      11,
    );
  });

  it("are equivalent exactly where their ratios at 90 % lie within the margin, as both one-sided tests say", () => {
    const equivalenceAt = (margin: number) =>
      present(only(compareMeans(layout, pairs, { ...plain, margin })).equivalence);
    const { set, setLevel } = equivalenceAt(0.1);
    expect(setLevel).toBe(0.9);
    if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
    const narrowest = Math.max(set.upper - 1, 1 / set.lower - 1);
    for (const [margin, equivalent] of [
      [narrowest * 1.001, true],
      [narrowest * 0.999, false],
    ] as const) {
      expect(equivalenceAt(margin).equivalent).toBe(equivalent);
      expect(equivalenceAt(margin).pValue < 0.05).toBe(equivalent);
    }
  });
});

describe("ratios whose denominator may be nothing", () => {
  const tenths = fc.integer({ min: -10, max: 60 }).map((tenth) => tenth / 10);
  const values = fc.array(tenths, { minLength: 3, maxLength: 5 });
  const holds = (set: RatioSet, ratio: number) => {
    if (set.shape === "whole line") return true;
    return set.shape === "interval"
      ? set.lower <= ratio && ratio <= set.upper
      : ratio <= set.below || ratio >= set.above;
  };
  const compared = (x: readonly number[], y: readonly number[], margin: number | null) =>
    only(
      compareMeans(independentLayout([x, y], pairs, null, "separate"), pairs, { ...plain, margin }),
    );

  it("hold 1 exactly where no difference is found, whatever their shape", () => {
    const shapes = new Set<string>();
    fc.assert(
      fc.property(values, values, (x, y) => {
        fc.pre(new Set(x).size > 1 && new Set(y).size > 1 && mean(y) !== 0);
        const { ratioSet, differenceFound } = compared(x, y, null);
        if (ratioSet === null) return;
        shapes.add(ratioSet.shape);
        expect(holds(ratioSet, 1)).toBe(!differenceFound);
      }),
      { numRuns: 400, seed: 4 },
    );
    expect(shapes).toEqual(new Set(["interval", "two half-lines", "whole line"]));
  });

  it("are two half-lines without 1 where the second is nothing to speak of, and the first is", () => {
    const { ratioSet, differenceFound } = compared([5, 5.2, 4.9], [0.3, -0.2, 0.4], null);
    expect([ratioSet?.shape, differenceFound]).toEqual(["two half-lines", true]);
    expect(holds(present(ratioSet), 1)).toBe(false);
    expect(holds(present(ratioSet), 1000)).toBe(true);
  });
});

describe("a ratio far from 1 with other degrees of freedom than the difference", () => {
  const few = [13, 13.75];
  const many = [10.05, 10.7, 10.25, 10.25];

  it.each([
    ["first", [few, many]],
    ["second", [many, few]],
  ])("is not told apart from 1 where no difference is found, the few standing %s", (_, groups) => {
    const layout = independentLayout(groups, pairs, null, "separate");
    const { pairOf } = layout;
    const { first, second, error } = present(pairOf({ first: 0, second: 1 }));
    // By Fieller's set with the degrees of freedom of the ratio the two would part here, whichever comes first.
    expect(present(error).at(first / second).df).not.toBeCloseTo(present(error).at(1).df, 1);
    const rule = bonferroniRule(1);
    const { differenceFound, ratioSet, verdict } = only(
      compareMeans({ ...layout, rule }, pairs, plain),
    );
    const set = present(ratioSet);
    if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
    expect(differenceFound).toBe(false);
    expect(verdict).toBe("undecided");
    expect(set.lower <= 1 && set.upper >= 1).toBe(true);
  });
});

describe("the four outcomes", () => {
  const verdictOf = (shift: number, margin: number | null) => {
    const layout = blockLayout(
      [0, 0.011, -0.008, 0.004].map((block, i) => [
        block + shift + present([0.002, -0.001, 0, -0.001][i]),
        block,
      ]),
      pairs,
      null,
      "common",
    );
    return only(compareMeans(layout, pairs, { level: 0.95, scale: "log", margin })).verdict;
  };

  it.each([
    [0.05, 0.02, "different"],
    [0.0001, 0.02, "equivalent"],
    [0.008, 0.02, "different within the margin"],
    [0.001, 0.001, "undecided"],
    [0.001, null, "undecided"],
    [0.05, null, "different"],
  ] as const)("of a shift of %d and a margin of %d: %s", (shift, margin, verdict) => {
    expect(verdictOf(shift, margin)).toBe(verdict);
  });
});

describe("groups in blocks", () => {
  it("take out what a block shares: each pair by its differences", () => {
    const shifted = blocks.map((block, i) => block.map((value) => (value ?? 0) + 100 * i));
    const [found, moved] = [blocks, shifted].map((rows) =>
      only(compareMeans(blockLayout(rows, pairs, null, "separate"), pairs, plain)),
    );
    expect(present(moved).standardError).toBeCloseTo(present(present(found).standardError), 10);
    expect(present(found).df).toBe(3);
  });

  it("have a covariance by which the error of a difference is that of the differences", () => {
    const layout = blockLayout(blocks, pairs, null, "separate");
    const error = present(present(layout.pairOf({ first: 0, second: 1 })).error);
    for (const ratio of [0.8, 1, 1.3]) {
      const byParts =
        error.firstVariance - 2 * ratio * error.covariance + ratio ** 2 * error.secondVariance;
      expect(error.at(ratio).variance).toBeCloseTo(byParts, 14);
    }
  });

  it("leave out a pair that was never tried together", () => {
    const rows = [
      [1, 2, null],
      [1.5, 2.2, null],
      [null, 2.1, 3],
      [null, 2.3, 3.4],
    ];
    const three = allPairs(3);
    const found = compareMeans(blockLayout(rows, three, null, "separate"), three, plain);
    expect(found.map(({ first, second }) => [first, second])).toEqual([
      [0, 1],
      [1, 2],
    ]);
  });

  it("know no error where differences agree exactly", () => {
    const rows = [
      [1, 2],
      [3, 4],
      [5, 6],
    ];
    const found = only(compareMeans(blockLayout(rows, pairs, null, "separate"), pairs, plain));
    expect(found).toMatchObject({ difference: -1, standardError: null, verdict: "untested" });
  });
});

describe("rules for several contrasts", () => {
  it("are Student's t for one contrast", () => {
    const t = studentTQuantile(0.975, 7);
    expect(bonferroniRule(1).criticalValue(0.95, 7)).toBeCloseTo(t, 12);
    expect(studentizedRangeRule(2).criticalValue(0.95, 7)).toBeCloseTo(t, 9);
  });

  it("grow with the number of contrasts, the studentized range less than Bonferroni's", () => {
    for (const means of [3, 5]) {
      const range = studentizedRangeRule(means).criticalValue(0.95, 20);
      const bonferroni = bonferroniRule((means * (means - 1)) / 2).criticalValue(0.95, 20);
      expect(range).toBeGreaterThan(studentTQuantile(0.975, 20));
      expect(range).toBeLessThan(bonferroni);
    }
  });

  it("reject exactly where the simultaneous interval leaves out zero", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 6, noNaN: true }), (statistic) => {
        const rule = studentizedRangeRule(3);
        const outside = statistic > rule.criticalValue(0.95, 9);
        expect(rule.adjustedPValue(statistic, 9) < 0.05).toBe(outside);
      }),
      { numRuns: 12 },
    );
  });
});

it("refuses a margin of zero and a second mean of zero", () => {
  const layout = independentLayout([a, b], pairs, null, "separate");
  expect(() => compareMeans(layout, pairs, { ...plain, margin: 0 })).toThrow(NumericalError);
  const zero = independentLayout([a, [-1, 1]], pairs, null, "separate");
  expect(() => compareMeans(zero, pairs, plain)).toThrow("second mean is 0");
});
