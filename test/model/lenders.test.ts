import { describe, expect, it } from "vitest";
import {
  type BorrowingChoices,
  type MeterRecord,
  type OutsideVote,
  outsideVotes,
  perTurnVariance,
  usualBorrowing,
} from "../../src/model/lenders.ts";
import { digits, present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const record = (product: string, variance: number, df: number): MeterRecord => ({
  product,
  spread: { variance, df },
  scatter: null,
});
const silent = (product: string): MeterRecord => ({ product, spread: null, scatter: null });

const votesFor = (records: readonly MeterRecord[], given: Partial<BorrowingChoices> = {}) =>
  outsideVotes(records, "spread", { ...usualBorrowing, ...given });

async function expectVoteOf(
  vote: OutsideVote | null | undefined,
  sources: readonly { readonly variance: number; readonly df: number }[],
): Promise<void> {
  const [center, variance] = await evalR(`${votesInR} vote.of.others(s2, d)`, {
    s2: sources.map((one) => one.variance),
    d: sources.map((one) => one.df),
  });
  expect(digits(present(vote).center, present(center))).toBeGreaterThan(11);
  expect(digits(present(vote).variance, present(variance))).toBeGreaterThan(11);
}

describe("who speaks for a meter", () => {
  const [wheat, pea, barley] = [
    record("wheat", 4e-4, 3),
    record("pea", 9e-4, 5),
    record("barley", 1e-4, 8),
  ];

  it("is every other meter of the log that can tell, and those of a library, as R has their vote", async () => {
    const votes = votesFor([wheat, pea, silent("rye")], { library: [barley] });
    expect(votes.map((vote) => vote?.meters)).toEqual([2, 2, 3]);
    expect(votes.map((vote) => vote?.library)).toEqual([1, 1, 1]);
    expect(votesFor([wheat, pea])[0]).not.toHaveProperty("library");
    const of = (...records: readonly MeterRecord[]) => records.map(({ spread }) => present(spread));
    await expectVoteOf(votes[0], of(pea, barley));
    await expectVoteOf(votes[1], of(wheat, barley));
    await expectVoteOf(votes[2], of(wheat, pea, barley));
    expect(votes[0]).toMatchObject({ from: "other bins", sameProduct: false });
  });

  it("are of a library those of the product's class, whatever its capitals, where there are two or more", async () => {
    const [one, two] = [record("Wheat", 2e-4, 2), record("WHEAT", 6e-4, 4)];
    const nameless = { ...barley, product: null };
    const vote = votesFor([wheat, pea], { library: [one, two, nameless] })[0];
    expect(vote).toMatchObject({ meters: 2, library: 2, sameProduct: true });
    await expectVoteOf(vote, [present(one.spread), present(two.spread)]);
    const mixed = votesFor([wheat, pea, { ...pea, product: "wheat" }], {
      library: [one, nameless],
    })[0];
    expect(mixed).toMatchObject({ meters: 2, library: 1, sameProduct: true });
    expect(votesFor([wheat], { library: [nameless] })[0]).toMatchObject({ meters: 1, library: 1 });
  });

  it("are those with the same product only, where there are two or more of them", async () => {
    const [second, third] = [record("wheat", 2e-4, 2), record("wheat", 6e-4, 4)];
    const two = votesFor([wheat, second, pea])[0];
    expect(two).toMatchObject({ meters: 2, sameProduct: false });
    const three = votesFor([wheat, second, pea, third]);
    expect(three[0]).toMatchObject({ meters: 2, sameProduct: true });
    await expectVoteOf(
      three[0],
      [second, third].map(({ spread }) => present(spread)),
    );
    expect(three[2]).toMatchObject({ meters: 3, sameProduct: false });
    // One that cannot tell is none of the two.
    expect(votesFor([wheat, second, silent("wheat"), pea])[0]).toMatchObject({
      meters: 2,
      sameProduct: false,
    });
  });

  it("is nobody where others are not to lend, or cannot tell", () => {
    expect(votesFor([wheat, pea], { borrow: "none", library: [barley] })).toEqual([null, null]);
    expect(votesFor([wheat])).toEqual([null]);
    expect(votesFor([wheat, silent("pea")])[0]).toBeNull();
  });

  it("is an assumption only where one is stated and nobody else tells, or is to", () => {
    const assumed = { spread: 0.02, scatter: null };
    const [alone] = votesFor([wheat], { assumed });
    expect(alone).toMatchObject({ from: "assumption", meters: 0, sameProduct: false, variance: 4 });
    expect(present(alone).center).toBeCloseTo(Math.log(0.02 ** 2), 12);
    expect(votesFor([wheat, pea], { assumed })[0]).toMatchObject({ from: "other bins" });
    expect(votesFor([wheat, pea], { assumed, borrow: "none" })[0]).toEqual(alone);
    expect(votesFor([wheat], { assumed: { spread: null, scatter: 0.02 } })).toEqual([null]);
  });

  it("assumes the scatter of a catch of 20 turns, which one turn has twenty times", () => {
    expect(perTurnVariance(0.015)).toBeCloseTo(20 * 0.015 ** 2, 15);
    const [vote] = outsideVotes([silent("wheat")], "scatter", {
      ...usualBorrowing,
      assumed: { spread: null, scatter: 0.015 },
    });
    expect(present(vote).center).toBeCloseTo(Math.log(20 * 0.015 ** 2), 12);
  });
});
