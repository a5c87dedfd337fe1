import { describe, expect, it } from "vitest";
import { pooledScatter } from "../../src/model/catch-scatter.ts";
import {
  betweenComponent,
  fillSpread,
  lentSpread,
  readingPerTurn,
  spreadAgainstOthers,
} from "../../src/model/fill-spread.ts";
import type { OutsideVote } from "../../src/model/lenders.ts";
import { type Fill, metersOf } from "../../src/model/meters.ts";
import { aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

/** Fills of one catch of 20 turns each. */
const fillsOf = (deliveries: readonly number[]): readonly Fill[] =>
  present(
    metersOf(deliveries.flatMap((delivery, f) => aFill([[20, 20 * delivery]], { fill: f + 1 })))[0],
  ).fills;

const calm = [0.296, 0.3015, 0.2988, 0.3042];
const later = [0.3165, 0.319, 0.3148];

const outside = (center: number, from: OutsideVote["from"] = "other bins"): OutsideVote => ({
  center,
  variance: 1.6,
  from,
  meters: 2,
  sameProduct: true,
});

describe("the spread that a meter lends", () => {
  it("is relative, and within its stretches: what moved it is not lent", async () => {
    const lent = present(lentSpread([fillsOf(calm), fillsOf(later), fillsOf([0.33])], null));
    const [variance] = await evalR(
      `squares <- function(b) sum((b / mean(b) - 1)^2)
       (squares(calm) + squares(later)) / 5`,
      { calm, later },
    );
    expect(lent.df).toBe(5);
    expect(digits(lent.variance, present(variance))).toBeGreaterThan(11);
  });

  it("is not below what reading the scale hides, and none where fills agree and no division is known", () => {
    const alike = fillsOf([0.3, 0.3, 0.3]);
    expect(lentSpread([alike], null)).toBeNull();
    // One catch of 20 turns: d²/6 over (20·0.3)².
    expect(present(lentSpread([alike], 0.02)).variance).toBeCloseTo(0.02 ** 2 / 6 / 36, 15);
    expect(lentSpread([fillsOf([0.3])], 0.02)).toBeNull();
  });
});

describe("the spread of a meter's fills", () => {
  const stretches = [fillsOf(calm), fillsOf(later)];
  const center = 0.3167;

  it("is its own where nobody lends: Σ squares within stretches over Σ(k − 1)", async () => {
    const [sd, lower, upper] = await evalR(
      `ss <- function(b) sum((b - mean(b))^2)
       s2 <- (ss(calm) + ss(later)) / 5
       sqrt(c(s2, 5 * s2 / qchisq(c(0.975, 0.025), 5)))`,
      { calm, later },
    );
    const own = fillSpread(stretches, center, 0.95, null);
    expect(own).toMatchObject({ source: "own", df: 5, ownDf: 5, fills: 7, lentBy: null });
    const { value, interval } = present(own.standardDeviation);
    expect(digits(value, present(sd))).toBeGreaterThan(11);
    expect(digits(present(interval?.lower), present(lower))).toBeGreaterThan(10);
    expect(digits(present(interval?.upper), present(upper))).toBeGreaterThan(10);
  });

  it("has what others say of it, scaled to the level in force, and says who they are", async () => {
    const [df, variance] = await evalR(
      `${votesInR}
       ss <- function(b) sum((b - mean(b))^2)
       prior <- prior.of(c(log(0.02^2), 1.6))
       moderated(c(prior[1], prior[2] * center^2), (ss(calm) + ss(later)) / 5, 5)`,
      { calm, later, center },
    );
    const lent = fillSpread(stretches, center, 0.95, outside(Math.log(0.02 ** 2)));
    expect(lent).toMatchObject({
      source: "lent",
      ownDf: 5,
      lentBy: { from: "other bins", meters: 2, sameProduct: true },
    });
    expect(digits(lent.df, present(df))).toBeGreaterThan(10);
    expect(digits(present(lent.standardDeviation).value ** 2, present(variance))).toBeGreaterThan(
      10,
    );
    expect(present(lent.relative)).toBeCloseTo(present(lent.standardDeviation).value / center, 14);
  });

  it("is unknown of a lone fill to which nobody lends", () => {
    expect(fillSpread([fillsOf([0.3])], 0.3, 0.95, null)).toEqual({
      source: "none",
      df: 0,
      ownDf: 0,
      fills: 0,
      lentBy: null,
      standardDeviation: null,
      relative: null,
    });
  });
});

describe("the spread of a meter against what others say", () => {
  const record = (variance: number) => ({
    product: "wheat",
    scatter: null,
    spread: { variance, df: 6 },
  });

  it("is called more or less only beyond 5 % on either side, by the F law as R has it", async () => {
    const vote = outside(Math.log(0.02 ** 2));
    const tails = async (variance: number) =>
      evalR(
        `${votesInR}
         prior <- prior.of(c(log(0.02^2), 1.6))
         c(pf(s2 / prior[2], 6, prior[1], lower.tail = FALSE), pf(s2 / prior[2], 6, prior[1]))`,
        { s2: variance },
      );
    const [wild, calmer] = [0.3 ** 2, 0.0004 ** 2];
    const more = present(spreadAgainstOthers(record(wild), vote));
    const less = present(spreadAgainstOthers(record(calmer), vote));
    expect([more.more, less.more]).toEqual([true, false]);
    expect(digits(more.pValue, present((await tails(wild))[0]))).toBeGreaterThan(9);
    expect(digits(less.pValue, present((await tails(calmer))[1]))).toBeGreaterThan(9);
    expect(spreadAgainstOthers(record(0.02 ** 2), vote)).toBeNull();
  });

  it("is not compared with an assumption, or where one of both is unknown", () => {
    const assumed = outside(Math.log(0.02 ** 2), "assumption");
    expect(spreadAgainstOthers(record(0.3 ** 2), assumed)).toBeNull();
    expect(spreadAgainstOthers(record(0.3 ** 2), null)).toBeNull();
    const unknown = { product: "wheat", scatter: null, spread: null };
    expect(spreadAgainstOthers(unknown, outside(-8))).toBeNull();
  });
});

describe("what fills differ by beside their catches", () => {
  const of = (turns: readonly number[], catches: number) =>
    present(
      metersOf(
        turns.flatMap((t, f) =>
          aFill(
            Array.from({ length: catches }, () => [t / catches, 0.3 * (t / catches)] as const),
            { fill: f + 1 },
          ),
        ),
      )[0],
    ).fills;
  const scatter = { ...pooledScatter([]), variance: 0.002, df: 7 };

  it("is the spread less what their catches make of it: σ²·mean(1/Σt)", () => {
    const found = present(betweenComponent(of([40, 80], 4), 0.01, scatter));
    const ofCatches = 0.002 * ((1 / 40 + 1 / 80) / 2);
    expect(found.value).toBeCloseTo(Math.sqrt(1e-4 - ofCatches), 12);
    expect(found.catchScatter.value).toBeCloseTo(Math.sqrt(ofCatches), 12);
    expect(found.catchScatter.df).toBe(7);
    expect(found.atBoundary).toBe(false);
    // 120 turns in 8 catches: 15 turns each.
    const own = 1e-4 - ofCatches;
    expect(found.intraclassCorrelation).toBeCloseTo(own / (own + 0.002 / 15), 12);
  });

  it("is nothing, and said to be at the boundary, where catches make all of it", () => {
    const found = present(betweenComponent(of([40, 80], 4), 0.004, scatter));
    expect(found).toMatchObject({ value: 0, atBoundary: true, intraclassCorrelation: 0 });
    const still = present(betweenComponent(of([40], 2), 0, { ...scatter, variance: 0 }));
    expect(still).toMatchObject({ value: 0, atBoundary: true, intraclassCorrelation: 0 });
    expect(betweenComponent(of([40], 2), 0.01, { ...scatter, variance: null })).toBeNull();
  });
});

it("reads a fill by the divisions its catches name, by the setup's else, over all turns", () => {
  const [fill] = present(
    metersOf(
      aFill([
        [20, 6],
        [30, 9],
      ]).map((row, i) => (i === 0 ? { ...row, divisionKg: 0.01 } : row)),
    )[0],
  ).fills;
  expect(readingPerTurn(present(fill), 0.05)).toBeCloseTo(0.06 / 50, 14);
  expect(readingPerTurn(present(fill), null)).toBeCloseTo(0.01 / 50, 14);
});
