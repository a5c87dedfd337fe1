import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inverseTrigamma } from "../../src/numeric/inverse-trigamma.ts";
import {
  addVotes,
  assumedVote,
  logVariance,
  noVotes,
  priorOfVote,
  typicalOfVote,
  unlikeVote,
  voteAmongOthers,
  voteOfOthers,
  voteOfOwnGroups,
  votesTogether,
  withoutVotes,
} from "../../src/statistics/spread-votes.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const h = 0.5;
const sumOf = (sources: readonly { variance: number; df: number }[], heterogeneity = h) =>
  sources.map((one) => voteAmongOthers(one, heterogeneity)).reduce(addVotes, noVotes);
const alike = (meters: number, df: number) =>
  present(voteOfOthers(sumOf(Array.from({ length: meters }, () => ({ variance: 1, df }))), h));

/** Digits of test/reference/generate/one-morning.R and
 * test/reference/generate/lent-spread.R, which invert the trigamma function by limma's trigammaInverse. */
const asInR = 1e-9;
const near = (found: number, wanted: number) =>
  expect(Math.abs(found / wanted - 1)).toBeLessThan(asInR);

describe("votes on a spread", () => {
  it("knows as much as so many meters of so many degrees of freedom tell", () => {
    near(priorOfVote(alike(1, 2)).nu0, 1.198252252);
    near(priorOfVote(alike(1, 8)).nu0, 1.607109403);
    near(priorOfVote(alike(2, 2)).nu0, 1.589712306);
    near(priorOfVote(alike(2, 8)).nu0, 2.002518791);
    near(priorOfVote(alike(5, 4)).nu0, 2.320273926);
    near(priorOfVote(alike(30, 5)).nu0, 2.751908555);
  });

  it("never knows more than meters unlike each other can tell of one more", () => {
    const endless = voteOfOthers({ weight: 1e12, weighted: 0, count: 1e12 }, h);
    near(priorOfVote(present(endless)).nu0, 2.85251024);
  });

  it("makes the prior of two bins of one morning", () => {
    const vote = present(
      voteOfOthers(
        sumOf([
          { variance: 0.001467675541, df: 2 },
          { variance: 0.002187577106, df: 2 },
        ]),
        h,
      ),
    );
    near(vote.center, -5.747302378);
    near(vote.variance, 2.322467033);
    near(priorOfVote(vote).nu0, 1.589712306);
    near(priorOfVote(vote).s0Squared, 0.001511573788);
  });

  it("makes the prior of the spread of two bins of nine fills", () => {
    const vote = present(
      voteOfOthers(
        sumOf([
          { variance: 0.021 ** 2, df: 8 },
          { variance: 0.034 ** 2, df: 8 },
        ]),
        h,
      ),
    );
    near(vote.center, -7.114450903);
    near(vote.variance, 1.641911478);
    near(Math.sqrt(priorOfVote(vote).s0Squared), 0.02137725599);
  });

  it("puts earlier fills and other bins together", () => {
    const own = voteOfOwnGroups({ variance: 0.0042, df: 8 }, 4, 0.2);
    near(own.center, -5.342494061);
    near(own.variance, 0.4838229557);
    const others = { center: -5.747302378, variance: 2.322467033 };
    const vote = present(votesTogether([own, others]));
    near(vote.variance, 0.400408678);
    near(priorOfVote(vote).nu0, 5.929914239);
    near(priorOfVote(vote).s0Squared, 0.003733911099);
  });

  it("is the source itself where sources are taken to be all alike", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-8, max: 1e3, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 1, max: 9 }),
        (variance, df, groups) => {
          const { nu0, s0Squared } = priorOfVote(voteOfOwnGroups({ variance, df }, groups, 0));
          expect(nu0 / df).toBeCloseTo(1, 9);
          expect(s0Squared / variance).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("takes one source out again", () => {
    const [one, two, three] = [
      { variance: 0.002, df: 2 },
      { variance: 0.004, df: 6 },
      { variance: 0.001, df: 3 },
    ];
    const all = sumOf([one, two, three]);
    const without = present(voteOfOthers(withoutVotes(all, voteAmongOthers(two, h)), h));
    const direct = present(voteOfOthers(sumOf([one, three]), h));
    expect(without.center).toBeCloseTo(direct.center, 12);
    expect(without.variance).toBeCloseTo(direct.variance, 12);
    expect(voteOfOthers(withoutVotes(sumOf([one]), voteAmongOthers(one, h)), h)).toBeNull();
  });

  it("follows a change of the unit, and is told from its middle", () => {
    const vote = logVariance({ variance: 4, df: 5 });
    const scaled = logVariance({ variance: 400, df: 5 });
    expect(scaled.center - vote.center).toBeCloseTo(Math.log(100), 12);
    expect(typicalOfVote(assumedVote(0.03 ** 2, 1))).toBeCloseTo(0.03, 14);
    const { s0Squared } = priorOfVote(assumedVote(0.03 ** 2, 1));
    expect(Math.sqrt(s0Squared)).toBeLessThan(0.03);
  });

  it("says which are unlike the others, by the F law as R has it", async () => {
    const vote = { center: Math.log(0.02 ** 2), variance: 1.64 };
    const { nu0, s0Squared } = priorOfVote(vote);
    const [upper] = await evalR("pf(v / s, 4, n, lower.tail = FALSE)", {
      v: 0.09 ** 2,
      s: s0Squared,
      n: nu0,
    });
    expect(unlikeVote({ variance: 0.09 ** 2, df: 4 }, vote, 0.2)).toEqual({
      pValue: expect.closeTo(present(upper), 12),
      more: true,
    });
    expect(unlikeVote({ variance: 0.02 ** 2, df: 4 }, vote, 0.05)).toBeNull();
    expect(unlikeVote({ variance: 0.0001 ** 2, df: 4 }, vote, 0.05)?.more).toBe(false);
  });
});

/** Made by limma 3.54.1 in R 4.2.2: test/reference/generate/squeezed-variances.R. */
const limma: {
  readonly data: Readonly<Record<"y" | "variance" | "df", readonly number[]>>;
  readonly trigammaInverse: readonly number[];
  readonly squeezeVar: { readonly prior_variance: number; readonly prior_df: number };
} = JSON.parse(
  readFileSync(new URL("../reference/varcomp/squeezed-variances-r.json", import.meta.url), "utf8"),
);

describe("a prior from votes", () => {
  it("is that of limma's squeezeVar, given the centre and the variance that limma takes from the votes", () => {
    const { variance, df } = limma.data;
    const votes = variance.map((one, i) => logVariance({ variance: one, df: present(df[i]) }));
    const mean = votes.reduce((sum, { center }) => sum + center, 0) / votes.length;
    const between = votes.reduce((sum, { center }) => sum + (center - mean) ** 2, 0);
    const ofEach = votes.reduce((sum, vote) => sum + vote.variance, 0) / votes.length;
    const { nu0, s0Squared } = priorOfVote({
      center: mean,
      variance: between / (votes.length - 1) - ofEach,
    });
    near(nu0, limma.squeezeVar.prior_df);
    near(s0Squared, limma.squeezeVar.prior_variance);
  });
});

describe("inverseTrigamma", () => {
  it("agrees with limma's trigammaInverse", () => {
    limma.data.y.forEach((y, i) => {
      near(inverseTrigamma(y), present(limma.trigammaInverse[i]));
    });
  });

  it("is undone by R's trigamma", async () => {
    const y = [1e-12, 1e-6, 0.01, 0.3, 1, 7, 1e3, 1e9];
    const back = await evalR("trigamma(x)", { x: y.map(inverseTrigamma) });
    y.forEach((wanted, i) => {
      expect(present(back[i]) / wanted).toBeCloseTo(1, 12);
    });
  });
});
