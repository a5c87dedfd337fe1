import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { fitModel } from "../../src/model/model.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import {
  type CatchesNeededChoices,
  catchesNeededOptions,
} from "../../src/questions/catches-needed/options.ts";
import { catchesNeeded } from "../../src/questions/catches-needed.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { drift } from "../../src/questions/drift.ts";
import { outliersOptions } from "../../src/questions/outliers/options.ts";
import { outliers } from "../../src/questions/outliers.ts";
import { repeatability } from "../../src/questions/repeatability.ts";
import type { Caution, CautionCode } from "../../src/results/caution.ts";
import { defaults } from "../../src/results/defaults.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { cautionGroups } from "../tools/docs/caution-list.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };

const meterOf = (catches: readonly Catch[]) => present(fitModel(catches, options).meters[0]);

const ofDelivery = (catches: readonly Catch[]) =>
  delivery(meterOf(catches), { ...options, varianceLaw: "proportional" }).cautions;
const ofUnscaled = (catches: readonly Catch[]) => {
  const unscaled = { ...options, scaleDivisionKg: null };
  const meter = present(fitModel(catches, unscaled).meters[0]);
  return delivery(meter, { ...unscaled, varianceLaw: "proportional" }).cautions;
};
const ofCoarse = (catches: readonly Catch[]) =>
  catchesNeeded(
    present(fitModel(catches, { ...options, scaleDivisionKg: 0.3 }).meters[0]),
    catchesNeededOptions({ ...options, scaleDivisionKg: 0.3 }),
  ).cautions;
const ofFills = (catches: readonly Catch[]) => acrossFills(meterOf(catches), options).cautions;
const ofRepeatability = (catches: readonly Catch[]) =>
  repeatability(meterOf(catches), options).cautions;
const ofNextFill = (catches: readonly Catch[]) =>
  catchesNeeded(meterOf(catches), catchesNeededOptions(options, { fill: "next" })).cautions;
const ofNeeded = (given: Partial<CatchesNeededChoices>) => (catches: readonly Catch[]) =>
  catchesNeeded(meterOf(catches), catchesNeededOptions(options, given)).cautions;
const ofOutliers = (catches: readonly Catch[]) =>
  outliers(meterOf(catches), outliersOptions(options)).cautions;

const ofDrift = (catches: readonly Catch[]) => {
  const { meters } = fitModel(catches, options);
  const meter = present(meters.find(({ product }) => product === "wheat"));
  const { shiftOfInterest } = defaults;
  return drift(meter, { ...options, shiftOfInterest }, meters).cautions;
};
/** A fill of catches of 20 turns with these masses. */
const fill = (number: number, masses: readonly number[], given: Partial<Catch> = {}) =>
  aFill(
    masses.map((mass) => [20, mass] as const),
    { fill: number, ...given },
  );

const quiet = [6.02, 5.98, 6.0, 6.01, 5.99];
const wild = [6.3, 5.7, 6.2, 5.8, 6.0];

/** Outlets weighed apart: every mass is one outlet's, in this catch. */
const outletOf = (outlet: string, number: number, netKg: number) =>
  fill(1, [netKg], { outlet, catch: number });

/** Six fills of three catches that scatter by 1 %, and between them one of two catches this far apart. */
const withPair = (apartKg: number) => [
  ...[1, 2, 4, 5, 6, 7].flatMap((number) => fill(number, [6.06, 5.94, 6.0])),
  ...fill(3, [6 + apartKg / 2, 6 - apartKg / 2]),
];

/** Six fills of three catches that scatter by 1 %. */
const sixAlike = [1, 2, 3, 4, 5, 6].flatMap((number) => fill(number, [6.06, 5.94, 6.0]));

/** A bin and two others that are like each other. */
const amongBins = (own: readonly Catch[], other: readonly Catch[]) => [
  ...own,
  ...["2", "3"].flatMap((bin) => other.map((row) => ({ ...row, bin }))),
];

const fillsOf = (masses: readonly number[]) =>
  masses.flatMap((mass, i) => fill(i + 1, [mass, mass]));
/** Four fills that differ by half a percent, and four that differ by a tenth. */
const steady = fillsOf([6, 6.05, 5.96, 6.02]);
const restless = fillsOf([6, 7, 5.2, 6.4]);

/** Fills numbered from 1, caught on these days of March. */
const dated = (days: readonly number[]) =>
  days.flatMap((day, i) => fill(i + 1, [6, 6.1], { takenAt: `2026-03-0${day}` }));

/** Nine fills, the delivery changed by this share since the sixth. */
const movedBy = (share: number) =>
  [0, 6, -4, 3, -7, 5, -2, 4, -5].flatMap((wobble, i) => {
    const mass = 6 * (1 + wobble / 1000) * (i >= 5 ? 1 + share : 1);
    return fill(i + 1, [mass * 0.99, mass * 1.01]);
  });

interface Case {
  readonly code: CautionCode;
  readonly when: string;
  readonly of: (catches: readonly Catch[]) => readonly Caution[];
  readonly raised: readonly Catch[];
  readonly facts: Record<string, unknown>;
  readonly not: readonly Catch[];
}

const cases: readonly Case[] = [
  {
    code: "few-degrees-of-freedom",
    when: "what other fills lend and the fill's own catches make up fewer than six",
    of: ofDelivery,
    raised: [1, 2, 3, 4, 5].flatMap((one) => fill(one, [6.02, 5.98])),
    // R: four fills of two catches lend 3.239; eight lend 5.237.
    facts: { df: expect.closeTo(4.23895967223, 9) },
    not: [1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((one) => fill(one, [6.02, 5.98])),
  },
  {
    code: "scatter-differs",
    when: "one fill scatters fifteen times as much as the others (the newest)",
    of: ofDelivery,
    raised: [...fill(1, quiet), ...fill(2, quiet), ...fill(3, wild)],
    facts: { pValue: expect.any(Number) },
    not: [...fill(1, wild), ...fill(2, wild), ...fill(3, wild)],
  },
  {
    code: "scatter-differs",
    when: "one fill scatters fifteen times as much as the others (all fills together)",
    of: ofFills,
    raised: [...fill(1, quiet), ...fill(2, wild), ...fill(3, quiet)],
    facts: { pValue: expect.any(Number) },
    not: [...fill(1, quiet), ...fill(2, quiet), ...fill(3, quiet)],
  },
  {
    code: "catches-wilder-than-bins",
    when: "the bin's catches scatter fifteen times as much as those of two others",
    of: ofDelivery,
    raised: amongBins(fill(1, wild), fill(1, quiet)),
    // R: upper tail of F(4, 2.09) at the ratio of the variances, what is lent being the smaller.
    facts: { pValue: expect.closeTo(0.00380588556135, 10) },
    not: amongBins(fill(1, quiet), fill(1, quiet)),
  },
  {
    code: "catches-calmer-than-bins",
    when: "the bin's catches scatter a fifteenth of those of two others",
    of: ofDelivery,
    raised: amongBins(fill(1, quiet), fill(1, wild)),
    // R, the lower tail.
    facts: { pValue: expect.closeTo(0.000121531458358, 12) },
    not: amongBins(fill(1, wild), fill(1, wild)),
  },
  {
    code: "fills-wilder-than-bins",
    when: "the bin's fills differ twenty times as much as those of two others",
    of: ofFills,
    raised: amongBins(restless, steady),
    // R, as for catches, of F(3, 1.77).
    facts: { pValue: expect.closeTo(0.00361600210212, 10) },
    not: amongBins(steady, steady),
  },
  {
    code: "fills-calmer-than-bins",
    when: "the bin's fills differ a twentieth of those of two others",
    of: ofFills,
    raised: amongBins(steady, restless),
    facts: { pValue: expect.closeTo(0.000389034222938, 12) },
    not: amongBins(restless, restless),
  },
  {
    code: "spread-lent",
    when: "two other bins tell how much fills differ",
    of: ofFills,
    raised: amongBins(steady, steady),
    // R: two meters of four fills lend 1.773 to the bin's own 3.
    facts: {
      from: "other bins",
      meters: 2,
      sameProduct: true,
      df: expect.closeTo(4.77256147754, 9),
    },
    not: steady,
  },
  {
    code: "few-scatter-apart",
    when: "three catches scatter more than is usual, and not beyond doubt",
    of: ofRepeatability,
    raised: [...sixAlike, ...fill(7, [6.15, 5.85, 6.0])],
    // R: over the middle of what six fills lend; twice the upper tail of F(2, 6.37).
    facts: { ratio: expect.closeTo(2.39520741745, 9), pValue: expect.closeTo(0.0530535660655, 9) },
    not: [...sixAlike, ...fill(7, [6.06, 5.94, 6.0])],
  },
  {
    code: "outlets-in-catches",
    when: "outlets of one catch were added up",
    of: ofDelivery,
    raised: [1, 2].flatMap((one) => ["a", "b", "c"].flatMap((o) => outletOf(o, one, 2 + one / 99))),
    facts: { outlets: 3 },
    not: fill(1, [6, 6.1]),
  },
  {
    code: "outlets-not-whole",
    when: "one catch lacks an outlet",
    of: ofDelivery,
    raised: [1, 2].flatMap((one) =>
      ["a", "b", "c"].slice(one - 1).flatMap((o) => outletOf(o, one, 2 + one / 99)),
    ),
    facts: { outlets: 3 },
    not: [1, 2].flatMap((one) => ["a", "b", "c"].flatMap((o) => outletOf(o, one, 2 + one / 99))),
  },
  {
    code: "outlets-not-whole",
    when: "all catches have one outlet, which may be any part of what the meter feeds",
    of: ofDelivery,
    raised: [1, 2].flatMap((one) => outletOf("a", one, 2 + one / 99)),
    facts: { outlets: 1 },
    not: fill(1, [2, 2.01]),
  },
  {
    code: "outlets-not-whole",
    when: "each catch has one outlet, so no catch is whole",
    of: ofDelivery,
    raised: ["a", "b", "c"].flatMap((outlet, i) => outletOf(outlet, i + 1, 2 + i / 99)),
    facts: { outlets: 3 },
    not: fill(1, [2, 2.01, 2.02]),
  },
  {
    code: "two-fills",
    when: "two fills are all",
    of: ofFills,
    raised: [...fill(1, [6, 6.1, 6.05]), ...fill(2, [6.3, 6.4, 6.35])],
    // t(0.975, 1)·√(1 + 1/2)/√2 = 12.7062·0.8660: the spread of two fills is their difference over √2.
    facts: { bandInDifferences: expect.closeTo(11.0039, 3) },
    not: [1, 2, 3].flatMap((one) => fill(one, [6 + one / 9, 6.1 + one / 9, 6.05 + one / 9])),
  },
  {
    code: "spread-at-boundary",
    when: "fills differ less than their catches' scatter would make them",
    of: ofFills,
    raised: [1, 2, 3, 4].flatMap((one) => fill(one, [6.2, 5.8, 6.001 + one / 1e3])),
    facts: { upperKgPerTurn: expect.any(Number) },
    not: [1, 2, 3, 4].flatMap((one) => fill(one, [6.02 + one / 2, 5.98 + one / 2, 6 + one / 2])),
  },
  {
    code: "fills-are-not-catches",
    when: "fills differ more than catches, in four fills",
    of: ofFills,
    raised: inventedFills({ fills: 4, catches: 4, spread: 0.05, scatter: 0.01 }, 3),
    facts: { timesTooNarrow: expect.any(Number) },
    not: [1, 2, 3, 4, 5, 6].flatMap((one) => fill(one, [6.2, 5.8, 6.001 + one / 1e3])),
  },
  {
    code: "first-catch-tells-less",
    when: "many like fills say more than one scattering catch",
    of: ofNextFill,
    raised: [1, 2, 3, 4, 5, 6, 7, 8].flatMap((one) => fill(one, [6.3, 5.7, 6 + one / 1e3])),
    facts: { skipHalfWidth: expect.any(Number), firstHalfWidth: expect.any(Number) },
    not: inventedFills({ fills: 8, catches: 4, spread: 0.05, scatter: 0.005 }, 3),
  },
  {
    code: "one-catch-lent",
    when: "the newest fill has one catch, and others tell how much catches scatter",
    of: ofDelivery,
    raised: [...fill(1, quiet), ...fill(2, [6.1])],
    // R: one fill of five catches lends 2.929 of its 4.
    facts: {
      df: expect.closeTo(2.92946537996, 9),
      lentBy: { fills: 1, meters: 0, assumed: false },
    },
    not: fill(1, [6.1]),
  },
  {
    code: "one-catch",
    when: "one catch stands alone",
    of: ofDelivery,
    raised: fill(1, [6.1]),
    facts: {},
    not: [...fill(1, quiet), ...fill(2, [6.1])],
  },
  {
    code: "zero-scatter-unscaled",
    when: "catches agree exactly and nobody gave the scale's division",
    of: ofUnscaled,
    raised: fill(1, [6, 6, 6]),
    facts: {},
    not: fill(1, [6, 6.02, 6]),
  },
  {
    code: "zero-scatter-unscaled",
    when: "a catch stands alone after fills whose catches agree exactly, which lend nothing without a division",
    of: ofUnscaled,
    raised: [...fill(1, [6, 6, 6]), ...fill(2, [6.1])],
    facts: {},
    not: [...fill(1, [6, 6.02, 6]), ...fill(2, [6.1])],
  },
  {
    code: "zero-scatter",
    when: "catches agree to within a division that is known",
    of: ofDelivery,
    raised: fill(1, [6, 6, 6]),
    facts: { divisionKg: expect.closeTo(0.02, 12) },
    not: fill(1, [6, 6.02, 6]),
  },
  {
    code: "scale-looks-coarser",
    when: "three different readings move in steps of five divisions or more",
    of: ofDelivery,
    raised: fill(1, [6, 6.2, 6.4]),
    facts: { stepKg: expect.closeTo(0.2, 12), divisionKg: 0.02 },
    // Readings that are alike move in no step at all.
    not: fill(1, [6.4, 6.4, 6.4]),
  },
  {
    code: "short-of-tolerance",
    when: "more catches are likely to bring the fill within the tolerance",
    of: ofNeeded({}),
    raised: fill(1, [6.36, 6.48, 6.56]),
    facts: { halfWidth: expect.any(Number), tolerance: 0.03, settingError: 0 },
    not: fill(1, [6.36, 6.38, 6.37]),
  },
  {
    code: "tolerance-not-reachable",
    when: "no number of catches within what bag and scale take is likely to",
    of: ofNeeded({ heaviestCatchKg: 6.5 }),
    raised: fill(1, [5.8, 6.4, 6.1]),
    facts: expect.objectContaining({ catches: 3, mostCatches: 8, heaviestGiven: true }),
    not: fill(1, [6.36, 6.48, 6.56]),
  },
  {
    code: "step-leaves-chance",
    when: "the catches are enough and the step of the drive is not",
    of: ofNeeded({ settingError: -0.029, heaviestCatchKg: 6.5 }),
    raised: fill(1, [6.36, 6.38, 6.4]),
    facts: { settingError: -0.029, chance: expect.any(Number) },
    not: fill(1, [5.8, 6.4, 6.1]),
  },
  {
    code: "stopped-on-width",
    when: "the catches are enough",
    of: ofNeeded({}),
    raised: fill(1, [6.36, 6.38, 6.37]),
    facts: { tolerance: 0.03 },
    not: fill(1, [6.36, 6.48, 6.56]),
  },
  {
    code: "scale-limits-tolerance",
    when: "reading the scale alone is wider than the tolerance at these turns",
    of: ofCoarse,
    raised: fill(1, [6.1, 6.2, 6.1, 6.2]),
    // 1.08 · 0.80 of 0.3 kg over 3 % of 0.3075 kg/turn.
    facts: { turns: 20, leastTurns: 29, divisionKg: 0.3 },
    not: fill(1, [60, 62, 58.5]),
  },
  {
    code: "two-disagree-in-fill-only",
    when: "two catches of an earlier fill differ by more than chance in it, not by more than chance in the log",
    of: ofOutliers,
    raised: withPair(0.2),
    // Seven fills, one in twenty of which shows one by chance.
    facts: {
      relativeDifference: expect.any(Number),
      pValue: expect.any(Number),
      expectedByChance: expect.closeTo(7 * 0.05, 12),
      remarks: [1, 2].map((number) => expect.objectContaining({ catch: number, note: null })),
    },
    not: withPair(0.08),
  },
  {
    code: "lack-of-fit",
    when: "level means do not follow a line through the origin, against catches that repeat closely",
    of: ofDelivery,
    raised: aFill([
      [10, 3.0],
      [10, 3.01],
      [20, 6.4],
      [20, 6.41],
      [40, 12.0],
      [40, 12.02],
    ]),
    facts: { pValue: expect.any(Number) },
    not: aFill([
      [10, 3.0],
      [10, 3.02],
      [20, 6.03],
      [20, 5.99],
      [40, 12.0],
      [40, 12.04],
    ]),
  },
  {
    code: "product-order-unknown",
    when: "two products of a bin have the same fill numbers and no dates",
    of: ofDrift,
    raised: [
      ...fill(1, [6, 6.1]),
      ...fill(2, [6, 6.1]),
      ...fill(1, [5, 5.1], { product: "barley" }),
    ],
    facts: {},
    not: [...fill(1, [6, 6.1]), ...fill(3, [6, 6.1]), ...fill(2, [5, 5.1], { product: "barley" })],
  },
  {
    code: "fill-numbers-against-dates",
    when: "a later number has an earlier date",
    of: ofDrift,
    raised: dated([3, 2, 4]),
    facts: {},
    not: dated([2, 3, 4]),
  },
  {
    code: "gaps-between-fills",
    when: "numbers are missing and a pause is long",
    of: ofDrift,
    raised: [...dated([1, 2]), ...fill(5, [6, 6.1], { takenAt: "2026-03-28" })],
    facts: { missingFills: 2, longestPauseDays: 26 },
    not: dated([1, 2, 3]),
  },
  {
    code: "delivery-settles",
    when: "the delivery falls from catch to catch of a fill",
    of: ofDrift,
    raised: fill(1, [6.3, 6.22, 6.15, 6.06, 6.0]),
    facts: {
      scope: "this fill",
      against: "catch order",
      change: expect.closeTo(-0.0124, 3),
      pValue: expect.any(Number),
    },
    not: fill(1, quiet),
  },
  {
    code: "fills-since-change",
    when: "a change of level was found, so that the next fill rests on the fills since",
    of: ofFills,
    raised: movedBy(-0.05),
    facts: { sinceFill: 6, fills: 4, spreadFills: 9 },
    not: movedBy(0),
  },
];

describe("a finding is raised where it holds, and only there", () => {
  it.each(cases)("$code: $when", ({ code, of, raised, facts, not }) => {
    const found = of(raised).filter((one) => one.code === code);
    expect(found.map((one) => one.facts)).toEqual([facts]);
    expect(of(not).map((one) => one.code)).not.toContain(code);
  });

  it("leaves a fill out where its two catches disagree beyond doubt in the whole log", () => {
    const codesAt = (apartKg: number) => ofOutliers(withPair(apartKg)).map(({ code }) => code);
    expect(codesAt(0.8)).toEqual(["fill-set-aside"]);
    // Six fills that are much alike, and may not be quite, lend fewer degrees of freedom than their catches have.
    expect(codesAt(0.5)).toEqual(["two-disagreed-earlier"]);
  });

  it("says that a stated spread is taken for granted, until another bin tells it", () => {
    const assumed = { spread: 0.03, scatter: null };
    const found = (catches: readonly Catch[]) => {
      const choices = { borrowing: { ...usualBorrowing, assumed } };
      const meter = present(fitModel(catches, options, choices).meters[0]);
      return acrossFills(meter, options).cautions.filter(({ code }) => code === "spread-lent");
    };
    // R: an assumption is worth 2·ψ′⁻¹(4) = 2·0.566 degrees of freedom, with the 3 of the bin's own.
    expect(found(steady).map(({ facts }) => facts)).toEqual([
      {
        from: "assumption",
        meters: 0,
        sameProduct: false,
        df: expect.closeTo(3 + 2 * 0.566385988999, 9),
      },
    ]);
    expect(found(amongBins(steady, steady))).toMatchObject([{ facts: { from: "other bins" } }]);
  });

  it("compares a bin with others only: with a typical scatter that is assumed none is unlike", () => {
    const assumed = { spread: 0.001, scatter: 0.001 };
    const choices = { borrowing: { ...usualBorrowing, assumed } };
    const meter = present(fitModel(restless, options, choices).meters[0]);
    const codes = [
      ...acrossFills(meter, options).cautions,
      ...delivery(meter, { ...options, varianceLaw: "proportional" }).cautions,
    ].map(({ code }) => code);
    expect(codes.filter((code) => code.endsWith("-than-bins"))).toEqual([]);
  });

  it("does not say that fills of one catch each would look narrower as catches", () => {
    for (const masses of [
      [4.5, 4.7, 5.16, 4.91],
      [4.55, 4.75, 5.21, 4.96],
      [5.34, 4.57, 5.03, 4.78, 4.79, 5.06],
    ]) {
      const codes = ofFills(masses.flatMap((mass, i) => fill(i + 1, [mass])));
      expect(codes.map(({ code }) => code)).not.toContain("fills-are-not-catches");
    }
  });

  it("counts how much narrower catches alone would look, and which half-width is the larger", () => {
    const facts = (wanted: CautionCode) => {
      const { of, raised } = present(cases.find(({ code }) => code === wanted));
      return present(of(raised).find(({ code }) => code === wanted)).facts;
    };
    expect(facts("fills-are-not-catches")).toSatisfy(
      ({ timesTooNarrow }: { timesTooNarrow: number }) => timesTooNarrow > 1,
    );
    expect(facts("first-catch-tells-less")).toSatisfy(
      (widths: { skipHalfWidth: number; firstHalfWidth: number }) =>
        widths.firstHalfWidth > widths.skipHalfWidth,
    );
    expect(facts("scatter-differs")).toSatisfy(({ pValue }: { pValue: number }) => pValue < 0.01);
  });
});

describe("the codes", () => {
  it("are each named by a test of what finds them", () => {
    // What is said about every code, and the list of them, is tested elsewhere; here only what raises them counts.
    const finders = ["analysis", "cli", "data", "model", "questions"];
    const tests = join(import.meta.dirname, "..");
    const text = finders
      .flatMap((folder) =>
        readdirSync(join(tests, folder), { recursive: true, encoding: "utf8" })
          .filter((name) => name.endsWith(".test.ts"))
          .map((name) => readFileSync(join(tests, folder, name), "utf8")),
      )
      // The table that test/analysis/wrong-but-accepted.test.ts goes through.
      .concat(readFileSync(join(tests, "support", "wrong-but-accepted.ts"), "utf8"))
      .join("\n");
    const codes = cautionGroups().flatMap((group) => group.codes.map(({ code }) => code));
    expect(codes.length).toBeGreaterThan(100);
    expect(codes.filter((code) => !text.includes(`"${code}"`))).toEqual([]);
  });
});
