import { describe, expect, it } from "vitest";
import {
  blockLayout,
  completeBlocks,
  independentLayout,
} from "../../src/statistics/comparison-layout.ts";
import { allPairs, pairsWithReference } from "../../src/statistics/simultaneous.ts";
import { present } from "../support/reference.ts";

const groups = [
  [5, 7, 6],
  [9, 11, 8, 10],
  [4, 4.5],
];
const pairs = allPairs(3);
const pair = { first: 0, second: 1 };
/** Sums of squares 2, 5 and 0.125 on 2, 3 and 1 degrees of freedom. */
const pooled = 7.125 / 6;

describe("independent groups", () => {
  it("with one spread share its variance by their sizes, and err independently", () => {
    const layout = independentLayout(groups, pairs, null, "common");
    const { first, second, n, error } = present(layout.pairOf(pair));
    expect([first, second]).toEqual([6, 9.5]);
    expect(n).toEqual([3, 4]);
    const { firstVariance, secondVariance, covariance, at } = present(error);
    expect(firstVariance).toBeCloseTo(pooled / 3, 13);
    expect(secondVariance).toBeCloseTo(pooled / 4, 13);
    expect(covariance).toBe(0);
    expect(at(2).variance).toBeCloseTo(pooled / 3 + pooled, 12);
    expect(at(2).df).toBe(6);
  });

  it("with spreads of their own have Welch's degrees of freedom at every ratio", () => {
    const layout = independentLayout(groups, pairs, null, "separate");
    const { covariance, at } = present(present(layout.pairOf(pair)).error);
    expect(covariance).toBe(0);
    for (const ratio of [0.5, 1, 3]) {
      const [a, b] = [1 / 3, (ratio ** 2 * (5 / 3)) / 4];
      expect(at(ratio).variance).toBeCloseTo(a + b, 12);
      expect(at(ratio).df).toBeCloseTo((a + b) ** 2 / (a ** 2 / 2 + b ** 2 / 3), 10);
    }
  });

  it("have no error where nothing scatters, one where one of the two does, and no F where one does not", () => {
    const still = [
      [2, 2],
      [3, 3],
      [4, 5],
    ];
    for (const spread of ["separate", "common"] as const) {
      const none = independentLayout(still.slice(0, 2), [pair], null, spread);
      expect(present(none.pairOf(pair)).error).toBeNull();
      const one = independentLayout(still, pairs, null, spread);
      expect(present(one.pairOf({ first: 1, second: 2 })).error).not.toBeNull();
      expect(one.overall).toBeNull();
      expect(independentLayout(groups, pairs, null, spread).overall).not.toBeNull();
    }
    const separate = independentLayout(still, pairs, null, "separate");
    expect(present(separate.pairOf(pair)).error).toBeNull();
  });

  it("are called by the method they are compared with", () => {
    const against = pairsWithReference(3, 1);
    const methods = (["separate", "common"] as const).flatMap((spread) => [
      independentLayout(groups, pairs, null, spread).method,
      independentLayout(groups, against, 1, spread).method,
    ]);
    expect(methods).toEqual(["games-howell", "dunnett-separate", "tukey-kramer", "dunnett"]);
  });
});

describe("blocks", () => {
  const blocks = [
    [5, 7, 6],
    [4, 7.5, null],
    [6, 8, 8],
    [5.5, 8.2, 6.9],
  ];

  it("are complete where every group was tried", () => {
    expect(completeBlocks(blocks)).toEqual([blocks[0], blocks[2], blocks[3]]);
    expect(completeBlocks([[], [null]])).toEqual([]);
  });

  it("with one spread rest on those that are complete, with independent errors", () => {
    const layout = blockLayout(blocks, pairs, null, "common");
    const { first, second, n, error } = present(layout.pairOf(pair));
    expect(n).toEqual([3, 3]);
    expect(first).toBeCloseTo(5.5, 12);
    expect(second).toBeCloseTo(23.2 / 3, 12);
    const { covariance, firstVariance, secondVariance, at } = present(error);
    expect(covariance).toBe(0);
    expect(secondVariance).toBe(firstVariance);
    expect(at(1.5).variance).toBeCloseTo(firstVariance * 3.25, 12);
    expect(at(1.5).df).toBe(4);
    expect(layout.overall).not.toBeNull();
  });

  it("with spreads of their own rest on all that hold both of a pair, two at least", () => {
    const layout = blockLayout(blocks, pairs, null, "separate");
    const four = present(layout.pairOf(pair));
    expect(four.n).toEqual([4, 4]);
    expect(four.first).toBeCloseTo(20.5 / 4, 12);
    expect(present(layout.pairOf({ first: 0, second: 2 })).n).toEqual([3, 3]);
    const two = blockLayout(blocks.slice(0, 2), pairs, null, "separate");
    expect(present(two.pairOf(pair)).n).toEqual([2, 2]);
    expect(two.pairOf({ first: 0, second: 2 })).toBeNull();
    expect(two.overall).toBeNull();
  });

  it("tell of no pair with one spread where fewer than two are complete", () => {
    expect(blockLayout(blocks.slice(0, 2), pairs, null, "common").pairOf(pair)).toBeNull();
    expect(blockLayout(blocks.slice(1, 4), pairs, null, "common").pairOf(pair)).not.toBeNull();
  });

  it("know no error where the differences of a pair agree, or all differences of all", () => {
    const alike = [
      [1, 2, 4],
      [3, 4, 6],
      [5, 6, 8],
    ];
    for (const spread of ["separate", "common"] as const)
      expect(present(blockLayout(alike, pairs, null, spread).pairOf(pair)).error).toBeNull();
    const nearly = alike.map((row, i) => row.map((value, j) => value + (i === j ? 1e-9 : 0)));
    for (const spread of ["separate", "common"] as const)
      expect(present(blockLayout(nearly, pairs, null, spread).pairOf(pair)).error).not.toBeNull();
  });
});

describe("pairs within blocks", () => {
  const two = [{ first: 0, second: 1 }];

  it("err by their variances and what they share, at every ratio", () => {
    const rows = [
      [5, 2],
      [7, 6],
      [9, 4],
    ];
    // Squares about the means 7 and 4: 8 and 8, products 4; over n·(n − 1) = 6.
    const { error } = present(blockLayout(rows, two, null, "separate").pairOf(pair));
    const { firstVariance, secondVariance, covariance, at } = present(error);
    expect(firstVariance).toBeCloseTo(8 / 6, 12);
    expect(secondVariance).toBeCloseTo(8 / 6, 12);
    expect(covariance).toBeCloseTo(4 / 6, 12);
    expect(at(1)).toEqual({ variance: expect.closeTo(8 / 6, 12), df: 2 });
    expect(at(0.5).variance).toBeCloseTo((8 - 4 + 2) / 6, 12);
  });

  it("do not scatter where they differ by rounding of the larger of two means", () => {
    const apart = (by: number) => {
      const rows = [
        [1000.1 + by, 1.1],
        [1000.2, 1.2],
        [1000.3, 1.3],
      ];
      return present(blockLayout(rows, two, null, "separate").pairOf(pair)).error;
    };
    expect(apart(1e-10)).toBeNull();
    expect(apart(1e-7)).not.toBeNull();
  });
});
