import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import {
  expectation,
  type MishapLaw,
  mishapLaws,
} from "../../../src/questions/outliers/mishap-laws.ts";
import type { Mishap } from "../../../src/results/mishap.ts";
import { aCatch } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

/** A line of 0.3 kg a turn through 80 turns, variance 0.0004 kg² a turn, read with a variance of 0.0001 kg². */
const line = { slope: 0.3, variance: 0.0004, information: 80, knownVariance: 1e-8, df: 3 } as never;
const doubtOf = (row: Partial<Catch>, more: Partial<Parameters<typeof mishapLaws>[0]> = {}) => ({
  row: aCatch({ turns: 20, netKg: 6.5, catch: 3, ...row }),
  line,
  readingVariance: 0.0001,
  previous: null,
  fellows: [
    aCatch({ turns: 20, netKg: 6, catch: 1 }),
    aCatch({ turns: 20, netKg: 6.02, catch: 2 }),
  ],
  massUnit: "kg" as const,
  ...more,
});
const lawOf = (laws: readonly MishapLaw[], mishap: Mishap) =>
  laws.find((one) => one.mishap === mishap) ?? null;
const placeOf = (laws: readonly MishapLaw[], mishap: Mishap) =>
  present(lawOf(laws, mishap)?.places[0]);

describe("what a catch should weigh", () => {
  it("is turns times the slope, blurred by its own scatter, that of the line, and reading", () => {
    // 0.0004·20·(1 + 20 ÷ 80) + 0.0001 + 20²·1e−8 = 0.010104.
    const { kg, standardError } = expectation(doubtOf({}), 20);
    expect(kg).toBeCloseTo(6, 12);
    expect(standardError).toBeCloseTo(Math.sqrt(0.010104), 12);
    const unknown = expectation(
      doubtOf({}, { line: { ...(line as object), variance: null } as never }),
      20,
    );
    expect(unknown.standardError).toBeCloseTo(Math.sqrt(0.000104), 12);
  });
});

describe("where a mishap would put it", () => {
  const laws = mishapLaws(doubtOf({}, { previous: aCatch({ turns: 20, netKg: 6.02, catch: 2 }) }));

  it("is so many turns more or fewer", () => {
    const kg = (
      [
        "one-turn-more",
        "one-turn-fewer",
        "two-turns-more",
        "two-turns-fewer",
        "two-catches-in-one",
      ] as const
    ).map((mishap) => {
      const { fromKg, toKg, turns } = placeOf(laws, mishap);
      expect(toKg).toBe(fromKg);
      return [turns, fromKg];
    });
    expect(kg).toEqual([
      [21, expect.closeTo(6.3, 9)],
      [19, expect.closeTo(5.7, 9)],
      [22, expect.closeTo(6.6, 9)],
      [18, expect.closeTo(5.4, 9)],
      [40, expect.closeTo(12, 9)],
    ]);
    const one = mishapLaws(doubtOf({ turns: 1 })).map(({ mishap }) => mishap);
    expect(one).not.toContain("one-turn-fewer");
    const two = mishapLaws(doubtOf({ turns: 2 })).map(({ mishap }) => mishap);
    expect(two).toContain("one-turn-fewer");
    expect(two).not.toContain("two-turns-fewer");
  });

  it("is the catch before on top, or two to four fifths of a whole one", () => {
    expect(placeOf(laws, "bag-not-emptied")).toMatchObject({
      fromKg: expect.closeTo(12.02, 9),
      massKg: 6.02,
    });
    expect(lawOf(mishapLaws(doubtOf({})), "bag-not-emptied")).toBeNull();
    expect(placeOf(laws, "meter-starved")).toMatchObject({
      fromKg: expect.closeTo(2.4, 9),
      toKg: expect.closeTo(4.8, 9),
      factor: expect.closeTo(6.5 / 6, 9),
    });
  });

  it("is a bag of 200 to 600 g more or less where no tare is written", () => {
    expect(placeOf(laws, "tare-left-in")).toMatchObject({
      fromKg: expect.closeTo(6.2, 9),
      toKg: expect.closeTo(6.6, 9),
      massKg: expect.closeTo(0.5, 9),
    });
    expect(placeOf(laws, "tare-taken-off-twice")).toMatchObject({
      fromKg: expect.closeTo(5.4, 9),
      toKg: expect.closeTo(5.8, 9),
      massKg: expect.closeTo(-0.5, 9),
    });
  });

  it("is the mean bag of the others, as uncertain as bags differ", () => {
    const fellows = [0.4, 0.5, 0].map((tareKg, i) =>
      aCatch({ turns: 20, netKg: 6, catch: i + 1, tareKg }),
    );
    const tared = mishapLaws(doubtOf({ tareKg: 0.45 }, { fellows }));
    expect(placeOf(tared, "tare-left-in")).toMatchObject({
      fromKg: expect.closeTo(6.45, 9),
      massKg: expect.closeTo(0.45, 9),
      // Standard deviation of 0.4 and 0.5: √0.005.
      standardError: expect.closeTo(Math.sqrt(0.010104 + 0.005), 9),
    });
    expect(placeOf(tared, "tare-taken-off-twice").fromKg).toBeCloseTo(5.55, 9);
    const single = mishapLaws(doubtOf({ tareKg: 0.4 }, { fellows: fellows.slice(0, 1) }));
    expect(placeOf(single, "tare-left-in").standardError).toBeCloseTo(Math.sqrt(0.010104), 9);
  });

  it("has odds by what the tare column says", () => {
    const fellows = [0.4, 0.5, 0].map((tareKg, i) =>
      aCatch({ turns: 20, netKg: 6, catch: i + 1, tareKg }),
    );
    const prior = (tareKg: number | null) =>
      lawOf(mishapLaws(doubtOf({ tareKg }, { fellows })), "tare-left-in")?.prior;
    const plain = present(prior(null));
    expect(present(prior(0.45)) / plain).toBeCloseTo(0.25, 12);
    // Rule of succession: one zero of three makes (1 + 1) ÷ (3 + 2) of another.
    expect(present(prior(0)) / plain).toBeCloseTo(5 / 2, 12);
    expect(
      lawOf(mishapLaws(doubtOf({ tareKg: 0 }, { fellows })), "tare-taken-off-twice"),
    ).toBeNull();
  });

  it("is what was meant where a unit or a decimal mark was mistaken, stretched as the slip stretches the scale", () => {
    // 1 kg is 2.204622622 lb.
    const unit = present(lawOf(laws, "other-unit")).places;
    expect(unit.map(({ comparedKg, factor, weight }) => [comparedKg, factor, weight])).toEqual(
      [2.204622622, 1 / 2.204622622].map((factor) => [
        expect.closeTo(6.5 / factor, 6),
        expect.closeTo(factor, 6),
        expect.closeTo(0.5 / factor, 6),
      ]),
    );
    const decimal = present(lawOf(laws, "decimal-moved")).places;
    expect(decimal.map(({ massKg, weight }) => [massKg, weight])).toEqual(
      [10, 0.1, 100, 0.01].map((factor) => [
        expect.closeTo(6.5 / factor, 9),
        expect.closeTo(0.25 / factor, 9),
      ]),
    );
  });

  it("is likelier for simple slips than for those that need a second one", () => {
    const priors = new Map(laws.map(({ mishap, prior }) => [mishap, prior]));
    const simple: readonly Mishap[] = [
      "tare-left-in",
      "one-turn-more",
      "one-turn-fewer",
      "bag-not-emptied",
      "meter-starved",
    ];
    for (const mishap of simple) expect(priors.get(mishap), mishap).toBe(0.01);
    for (const mishap of ["tare-taken-off-twice", "two-catches-in-one"] as const)
      expect(priors.get(mishap), mishap).toBe(0.005);
    for (const mishap of [
      "two-turns-more",
      "two-turns-fewer",
      "other-unit",
      "digits-swapped",
      "decimal-moved",
    ] as const)
      expect(priors.get(mishap), mishap).toBe(0.003);
  });
});
