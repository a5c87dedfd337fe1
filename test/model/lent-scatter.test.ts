import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { pooledScatter } from "../../src/model/catch-scatter.ts";
import { estimateFill } from "../../src/model/fill-estimate.ts";
import type { OutsideVote } from "../../src/model/lenders.ts";
import {
  byItself,
  chooseScatter,
  type MeterScatter,
  nothingLent,
  scatterAgainstOthers,
  scatterExceedance,
  scatterFloor,
  seenVariance,
} from "../../src/model/lent-scatter.ts";
import { type Fill, metersOf, newestFill } from "../../src/model/meters.ts";
import { estimateOf, fitModel, type ModelOptions } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

/** Three bins of one morning, 20 turns a catch, a scale of 20 g. */
const masses = { A: [6.02, 5.91, 6.1], B: [5.48, 5.57, 5.5], C: [6.33, 6.2, 6.28] } as const;
const options: ModelOptions = { level: 0.95, tolerance: 0.02, scaleDivisionKg: 0.02 };

const binOf = (bin: string, own: readonly number[]) =>
  aFill(
    own.map((mass) => [20, mass] as const),
    { bin },
  );
const others = [...binOf("B", masses.B), ...binOf("C", masses.C)];

const fillOf = (catches: readonly Catch[]): Fill => newestFill(present(metersOf(catches)[0]));
const today = fillOf(binOf("A", masses.A));

/** What others say, at will. */
const outside = (center: number, variance: number): OutsideVote => ({
  center,
  variance,
  from: "other bins",
  meters: 2,
  sameProduct: false,
});
const only = (vote: OutsideVote): MeterScatter => ({ ...nothingLent, outside: vote });

describe("earlier fills of a meter and other bins", () => {
  // test/reference/generate/one-morning.R:
  // own earlier fills with 0.0042 on 8 degrees of freedom from 4 fills, B and C, and A's three catches.
  const lent: MeterScatter = {
    variance: null,
    relative: (0.0042 * 8 + 2 * 0.00503874574) / 10,
    df: 10,
    fills: 5,
    homogeneity: null,
    floor: null,
    outside: outside(-5.747302378, 2.322467033),
  };

  it("speak together for a fill, the more alike the more", () => {
    const { df, variance, lentBy } = chooseScatter(today, lent);
    expect(digits(df, 7.929914239)).toBeGreaterThan(9);
    expect(digits(present(variance) / today.delivery ** 2, 0.00406300284)).toBeGreaterThan(8);
    expect(lentBy).toEqual({ fills: 4, meters: 2, assumed: false });
    expect(
      digits(present(estimateFill(today, lent, options).halfWidth), 0.01919100267),
    ).toBeGreaterThan(8);
  });

  it("have no part in it where nobody lends", () => {
    expect(chooseScatter(today, nothingLent)).toMatchObject({
      source: "own",
      lentBy: { fills: 0, meters: 0, assumed: false },
    });
  });

  it("are in the model as the formula has them, worked out by R from the catches", async () => {
    const own = [
      [6.05, 5.97, 6.02],
      [6.31, 6.2, 6.22],
      [5.9, 5.84, 5.96],
    ];
    const catches = [
      ...own.flatMap((row, i) =>
        aFill(
          row.map((mass) => [20, mass] as const),
          { bin: "A", fill: i + 1 },
        ),
      ),
      ...binOf("A", masses.A).map((row) => ({ ...row, fill: 4 })),
      ...others,
    ];
    const meter = present(fitModel(catches, options).meters[0]);
    const A = estimateOf(meter, newestFill(meter), options);
    const [df, q, half, alone] = await evalR(
      `${votesInR}
       q <- function(...) sum(sapply(list(...), function(m) squares(m, rep(20, 3)))) / 2
       fills <- vote.of.own.fills(q(one, two, three) / 3, 6, 3)
       bins <- vote.of.others(c(q(B), q(C)), c(2, 2))
       known <- moderated(prior.of(together(fills, bins)), q(A), 2)
       itself <- moderated(prior.of(fills), q(A), 2)
       w <- function(k) width(k, T = 60, n = 3, d = 0.02, b = sum(A) / 60)
       c(known, w(known), w(itself))`,
      { one: present(own[0]), two: present(own[1]), three: present(own[2]), ...masses },
    );
    expect(digits(A.scatter.df, present(df))).toBeGreaterThan(10);
    expect(digits(present(A.scatter.variance) / A.estimate.value ** 2, present(q))).toBeGreaterThan(
      10,
    );
    expect(digits(present(A.halfWidth), present(half))).toBeGreaterThan(10);
    // By itself means: with its own earlier fills, and no other bin.
    expect(digits(present(A.byItself?.halfWidth), present(alone))).toBeGreaterThan(10);
    expect(A.scatter.lentBy).toEqual({ fills: 3, meters: 2, assumed: false });
  });
});

describe("a fill to which nobody lends", () => {
  it("has its own scatter, and beside it what a typical one would make of two or three catches", async () => {
    const rows = [...masses.A, 5.99];
    const alone = [1, 2, 3, 4].map((n) => {
      const meter = present(fitModel(binOf("A", rows.slice(0, n)), options).meters[0]);
      return estimateOf(meter, newestFill(meter), options);
    });
    expect(alone.map(({ scatter }) => scatter.source)).toEqual(["none", "own", "own", "own"]);
    expect(alone.map(({ ifTypical }) => ifTypical !== null)).toEqual([false, true, true, false]);
    expect(alone.map(({ byItself: beside }) => beside)).toEqual([null, null, null, null]);
    const [typical] = await evalR(
      `${votesInR}
       prior <- prior.of(vote.of.assumption(0.015^2 * 20))
       width(moderated(prior, squares(A, rep(20, 3)) / 2, 2), T = 60, n = 3, d = 0.02, b = sum(A) / 60)`,
      masses,
    );
    expect(digits(present(alone[2]?.ifTypical?.halfWidth), present(typical))).toBeGreaterThan(10);
  });

  it("is as wide as its own scatter makes it: t(n − 1)·√(Σ(m − bt)²/t ÷ (n − 1) ÷ Σt) over b", async () => {
    const t = await evalR("qt(0.975, 1:7)");
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 5, max: 7, noNaN: true }), { minLength: 2, maxLength: 8 }),
        (own) => {
          const fill = fillOf(binOf("A", own));
          const b = own.reduce((a, m) => a + m, 0) / (20 * own.length);
          const squares = own.reduce((a, m) => a + (m - 20 * b) ** 2 / 20, 0);
          fc.pre(squares > 1e-9);
          const { halfWidth } = estimateFill(fill, nothingLent, {
            level: 0.95,
            scaleDivisionKg: null,
          });
          const quantile = present(t[own.length - 2]);
          const wanted = (quantile * Math.sqrt(squares / (own.length - 1) / (20 * own.length))) / b;
          expect(digits(present(halfWidth), wanted)).toBeGreaterThan(9);
        },
      ),
    );
  });
});

describe("what is lent", () => {
  const votes = fc.record({
    center: fc.double({ min: -9, max: -3, noNaN: true }),
    variance: fc.double({ min: 0.02, max: 8, noNaN: true }),
  });

  it("changes degrees of freedom and width only a little where its certainty does", () => {
    fc.assert(
      fc.property(votes, ({ center, variance }) => {
        const [before, after] = [variance, variance * (1 + 1e-7)].map((V) => {
          const { halfWidth, scatter } = estimateFill(today, only(outside(center, V)), options);
          return { half: present(halfWidth), df: scatter.df };
        });
        expect(Math.abs(present(after).df / present(before).df - 1)).toBeLessThan(1e-6);
        expect(Math.abs(present(after).half / present(before).half - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it("is worth the less the less certain it is: df falls towards the fill's own", () => {
    fc.assert(
      fc.property(votes, ({ center, variance }) => {
        const [sure, unsure] = [variance, 2 * variance].map(
          (V) => chooseScatter(today, only(outside(center, V))).df,
        );
        expect(present(unsure)).toBeLessThan(present(sure));
        expect(present(unsure)).toBeGreaterThan(2);
      }),
    );
    expect(chooseScatter(today, only(outside(-6, 1e9))).df).toBeCloseTo(2, 3);
  });

  it("is not less than reading the scale lets anybody see: d²/(6·t·b²)", () => {
    const catches = binOf("B", [6, 6, 6]);
    expect(scatterFloor([fillOf(catches)], 0.02)).toBeCloseTo(0.02 ** 2 / (6 * 20 * 0.09), 15);
    expect(scatterFloor([fillOf(catches)], null)).toBeNull();
    const ofItsOwn = catches.map((row) => ({ ...row, divisionKg: 0.05 }));
    expect(scatterFloor([fillOf(ofItsOwn)], 0.02)).toBeCloseTo(0.05 ** 2 / (6 * 20 * 0.09), 15);
    expect(seenVariance(0, 2, 1e-4)).toEqual({ variance: 1e-4, df: 2 });
    expect(seenVariance(0.004, 2, 1e-4)).toEqual({ variance: 0.004, df: 2 });
    // Without a division no scatter is no variance that has a logarithm, and without catches none is known.
    expect(seenVariance(0, 2, null)).toBeNull();
    expect(seenVariance(0.004, 0, 1e-4)).toBeNull();
    expect(seenVariance(null, 2, 1e-4)).toBeNull();
  });

  it("comes from a bin whose catches agree exactly as the scale's step, and from nobody without one", () => {
    const exact = [...binOf("A", masses.A), ...binOf("B", [6, 6, 6])];
    const told = (scaleDivisionKg: number | null) =>
      present(fitModel(exact, { ...options, scaleDivisionKg }).meters[0]).scatter.outside;
    expect(told(null)).toBeNull();
    expect(told(0.02)).toMatchObject({ meters: 1, from: "other bins" });
  });
});

describe("catches against what is lent", () => {
  it("scatter so much or more with the upper tail of F on n − 1 and ν0, as R has it", async () => {
    const wild = fillOf(binOf("A", [6.02, 5.7, 6.4]));
    const vote = outside(-5.747302378, 2.322467033);
    const [tail] = await evalR(
      `${votesInR}
       prior <- prior.of(c(-5.747302378, 2.322467033))
       pf(squares(m, rep(20, 3)) / 2 / prior[2], 2, prior[1], lower.tail = FALSE)`,
      { m: [6.02, 5.7, 6.4] },
    );
    expect(digits(present(scatterExceedance(wild, only(vote))), present(tail))).toBeGreaterThan(9);
    expect(scatterExceedance(wild, nothingLent)).toBeNull();
    expect(scatterExceedance(fillOf(binOf("A", [6.02])), only(vote))).toBeNull();
  });

  it("are said to be unlike those of other bins only beyond 5 % on either side, never unlike an assumption", () => {
    const own = (variance: number): MeterScatter => ({
      ...byItself(pooledScatter([today])),
      relative: variance,
      df: 20,
      outside: outside(Math.log(0.004), 1.2),
    });
    expect(scatterAgainstOthers(own(0.004))).toBeNull();
    expect(scatterAgainstOthers(own(0.4))).toMatchObject({ more: true });
    expect(scatterAgainstOthers(own(0.00001))).toMatchObject({ more: false });
    const assumed = { ...outside(Math.log(0.004), 1.2), from: "assumption" } as const;
    expect(scatterAgainstOthers({ ...own(0.4), outside: assumed })).toBeNull();
    expect(scatterAgainstOthers({ ...own(0.4), outside: null })).toBeNull();
  });
});
