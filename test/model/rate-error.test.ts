import { describe, expect, it } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel } from "../../src/model/model.ts";
import {
  asRateError,
  assumedNow,
  basisOfExpectation,
  lawsOfExpectation,
  nextFillError,
  settingOf,
} from "../../src/model/rate-error.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const options = { level: 0.95, tolerance: 0.05, scaleDivisionKg: null };
const meterOf = (masses: readonly number[]) =>
  present(
    fitModel(
      masses.flatMap((mass, i) => aFill([[20, mass]], { fill: i + 1 })),
      options,
    ).meters[0],
  );
const meter = meterOf([6, 6.2, 6.6]);

describe("what a drive is left at", () => {
  it("a book value stays what it is", () => {
    expect(settingOf({ source: "book value", kgPerTurn: 0.29 }, meter)).toEqual({
      todayKgPerTurn: 0.29,
      nextKgPerTurn: 0.29,
    });
  });

  it("the value of a fill by number stays that fill's", () => {
    const { todayKgPerTurn, nextKgPerTurn } = settingOf({ source: "fill", fill: 2 }, meter);
    expect(todayKgPerTurn).toBeCloseTo(0.31, 14);
    expect(nextKgPerTurn).toBeCloseTo(0.31, 14);
  });

  it("the previous fill's is the one before today's, and today's for the next", () => {
    const { todayKgPerTurn, nextKgPerTurn } = settingOf({ source: "last fill" }, meter);
    expect(todayKgPerTurn).toBeCloseTo(0.31, 14);
    expect(nextKgPerTurn).toBeCloseTo(0.33, 14);
  });

  it("the mean is that of the fills before today's, and with today's for the next", () => {
    const { todayKgPerTurn, nextKgPerTurn } = settingOf({ source: "average of fills" }, meter);
    expect(todayKgPerTurn).toBeCloseTo(0.305, 14);
    expect(nextKgPerTurn).toBeCloseTo((0.3 + 0.31 + 0.33) / 3, 14);
  });

  it("a first fill has nothing before it", () => {
    const first = meterOf([6]);
    expect(settingOf({ source: "last fill" }, first).todayKgPerTurn).toBeNull();
    expect(settingOf({ source: "average of fills" }, first).todayKgPerTurn).toBeNull();
  });

  it.each([
    ["previous fill", "last fill"],
    ["mean of fills", "average of fills"],
  ] as const)("%s, its name of earlier versions, is the %s", (source, now) => {
    expect(assumedNow({ assumed: { source } })).toEqual({ assumed: { source: now } });
    expect(assumedNow({ assumed: { source: now } })).toEqual({ assumed: { source: now } });
  });

  it("a fill that is not there, or a book value of nothing, is refused with what there is", () => {
    expect(() => settingOf({ source: "fill", fill: 9 }, meter)).toThrow(/one of the fills 1, 2, 3/);
    for (const kgPerTurn of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => settingOf({ source: "book value", kgPerTurn }, meter)).toThrow(OptionError);
  });
});

describe("a delivery as a rate error", () => {
  it("is delivered over believed, less one, with its interval", () => {
    const estimate = {
      value: 0.33,
      unit: "kg/turn",
      standardError: 0.003,
      df: 4,
      interval: { lower: 0.321, upper: null, level: 0.95, about: "next fill" },
    } as const;
    const error = asRateError(estimate, 0.3, "rate error at the next fill");
    expect(error.value).toBeCloseTo(0.1, 14);
    expect(error.standardError).toBeCloseTo(0.01, 14);
    expect(error.interval?.lower).toBeCloseTo(0.07, 14);
    expect(error.interval?.upper).toBeNull();
    expect(error.interval?.about).toBe("rate error at the next fill");
  });

  it("of the next fill has the location and scale of the interval across fills", () => {
    const { law, fills } = present(nextFillError(meter.across, 0.3));
    expect(law.location).toBeCloseTo((0.3 + 0.31 + 0.33) / 3 / 0.3 - 1, 13);
    expect(law.scale).toBeCloseTo(present(meter.across.nextFill.standardError) / 0.3, 14);
    expect(law.df).toBe(2);
    expect(fills).toMatchObject({ mean: law.location, n: 3, df: 2 });
    expect(fills.standardDeviation * Math.sqrt(4 / 3)).toBeCloseTo(law.scale, 14);
    expect(nextFillError(meterOf([6]).across, 0.3)).toBeNull();
  });
});

describe("what an expected error counts as spread of fills", () => {
  const errorOf = (spread: number, scatter: number) => {
    const catches = inventedFills({ fills: 6, catches: 3, spread, scatter }, 5);
    const { across } = present(fitModel(catches, options).meters[0]);
    return { across, error: present(nextFillError(across, across.nextFill.value)) };
  };

  it("leaves the catch scatter out that is known, relative to what the drive is left at", () => {
    const { across, error } = errorOf(0.02, 0.015);
    const inside = present(error.catchScatter);
    const { catchScatter, value } = present(across.between);
    expect(inside.standardDeviation).toBeCloseTo(catchScatter.value / across.nextFill.value, 15);
    expect(inside.df).toBe(12);
    // What is left and what was taken out make up the whole spread.
    expect(Math.hypot(catchScatter.value, value)).toBeCloseTo(
      present(across.spread.standardDeviation?.value),
      14,
    );
    expect(inside.share).toBeCloseTo(
      (inside.standardDeviation / error.fills.standardDeviation) ** 2,
      13,
    );
    expect(inside.isMost).toBe(false);
    expect(basisOfExpectation(error)).toBe("without catch scatter");
  });

  it("says where catch scatter is most of the spread, at most all of it", () => {
    const { across, error } = errorOf(0.0005, 0.03);
    expect(across.between?.atBoundary).toBe(true);
    expect(error.catchScatter).toMatchObject({ share: 1, isMost: true });
  });

  it("counts everything where no fill has a second catch, and where catches agree exactly", () => {
    const lone = present(nextFillError(meter.across, 0.3));
    expect(lone.catchScatter).toBeNull();
    expect(basisOfExpectation(lone)).toBe("as measured");
    expect(lawsOfExpectation(lone)).toEqual([{ law: lone.law, weight: 1 }]);
    expect(errorOf(0.02, 0).error.catchScatter?.share ?? 0).toBeLessThan(1e-20);
  });
});

describe("the error at the next fill", () => {
  const { across } = meterOf([6, 6.2, 6.6, 6.1]);
  const between = (value: number) => ({
    ...{ value: 0.001, unit: "kg/turn", atBoundary: false, intraclassCorrelation: 0.5 },
    catchScatter: { value, df: 9 },
  });
  const spread = present(across.spread.standardDeviation).value;
  const withScatter = (share: number) =>
    present(
      nextFillError(
        { ...across, between: between(spread * Math.sqrt(share)) } as typeof across,
        0.3,
      ),
    );

  it("lies where the fills do against the setting, as wide as the next fill is", () => {
    const found = present(nextFillError(across, 0.3));
    const mean = 24.9 / 80;
    expect(found.law.location).toBeCloseTo(mean / 0.3 - 1, 12);
    expect(found.law.scale).toBeCloseTo((spread * Math.sqrt(1.25)) / 0.3, 12);
    expect(found.law.df).toBe(3);
    expect(found.fills).toMatchObject({ n: 4, df: 3 });
    expect(found.fills.mean).toBeCloseTo(mean / 0.3 - 1, 12);
    expect(found.fills.standardDeviation).toBeCloseTo(spread / 0.3, 12);
    expect(found).toMatchObject({ ownDf: 3, leastChance: 0.05, catchScatter: null });
  });

  it("is mostly of catches beyond half of its variance, and never more than all of it", () => {
    expect(withScatter(0.49).catchScatter).toMatchObject({ isMost: false, df: 9 });
    expect(withScatter(0.51).catchScatter?.isMost).toBe(true);
    expect(withScatter(0.51).catchScatter?.share).toBeCloseTo(0.51, 10);
    expect(withScatter(1.7).catchScatter?.share).toBe(1);
    expect(withScatter(0.49).catchScatter?.standardDeviation).toBeCloseTo((0.7 * spread) / 0.3, 12);
    expect(withScatter(0).catchScatter).toBeNull();
  });

  it("is not known of one fill", () => {
    expect(nextFillError(meterOf([6]).across, 0.3)).toBeNull();
  });
});
