import { describe, expect, it } from "vitest";
import type { Delivery } from "../../../src/questions/delivery/result.ts";
import { uncertaintyBudgetOptions } from "../../../src/questions/uncertainty-budget/options.ts";
import {
  areaSources,
  deliverySources,
  driftSource,
  fillSource,
} from "../../../src/questions/uncertainty-budget/sources.ts";
import { catchesAsOne, rateOf, totalOf } from "../../../src/questions/uncertainty-budget/total.ts";

const model = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.01 };
type Given = Parameters<typeof uncertaintyBudgetOptions>[1];
const optionsOf = (given: Given = {}) => uncertaintyBudgetOptions(model, given);
const measured = (value: number, standardUncertainty: number | null) => ({
  value,
  standardUncertainty,
});

/** 0.4 kg/turn from four catches of 25 turns, standard error 0.005 of which 0.003 is reading the scale. */
const today = {
  estimate: {
    value: 0.4,
    unit: "kg/turn",
    standardError: 0.005,
    df: 3,
    interval: { lower: 0.38, upper: 0.42, level: 0.95, about: "this fill's delivery" },
  },
  variance: { model: 16e-6, robust: 12e-6, division: 9e-6, total: 25e-6 },
  scatter: { df: 3 },
  input: { catches: 4, turns: 100 },
} as unknown as Delivery;

const byName = (found: ReturnType<typeof deliverySources>) =>
  new Map(found.flatMap((one) => (typeof one === "string" ? [] : [[one.name, one] as const])));

describe("what makes the delivery uncertain", () => {
  const found = byName(
    deliverySources(
      today,
      optionsOf({ scaleTestedError: -0.006, turnCountStandardUncertainty: 0.5 }),
    ),
  );

  it("is scatter by the larger of its two errors, and reading of gross and tare alike", () => {
    expect(found.get("catch scatter")).toMatchObject({
      value: 0.4,
      standardUncertainty: expect.closeTo(0.004, 12),
      law: "t",
      df: 3,
    });
    // √(9e−6 ÷ 2), rectangular.
    for (const name of ["reading gross", "reading tare"] as const)
      expect(found.get(name)).toMatchObject({
        value: 0,
        standardUncertainty: expect.closeTo(0.003 / Math.SQRT2, 12),
        law: "rectangular",
      });
    const robust = byName(
      deliverySources({ ...today, variance: { ...today.variance, robust: 36e-6 } }, optionsOf()),
    );
    expect(robust.get("catch scatter")?.standardUncertainty).toBeCloseTo(0.006, 12);
    const one = byName(
      deliverySources({ ...today, variance: { ...today.variance, robust: null } }, optionsOf()),
    );
    expect(one.get("catch scatter")?.standardUncertainty).toBeCloseTo(0.004, 12);
    const other = byName(
      deliverySources({ ...today, variance: { ...today.variance, model: null } }, optionsOf()),
    );
    expect(other.get("catch scatter")?.standardUncertainty).toBeCloseTo(Math.sqrt(12e-6), 12);
    const neither = byName(
      deliverySources(
        { ...today, variance: { ...today.variance, model: null, robust: null } },
        optionsOf(),
      ),
    );
    expect(neither.get("catch scatter")?.standardUncertainty).toBe(0);
  });

  it("is a tested scale error anywhere up to its size, and the count of turns of every catch", () => {
    expect(found.get("scale error")).toMatchObject({
      standardUncertainty: expect.closeTo(0.006 / Math.sqrt(3), 12),
      law: "rectangular",
    });
    expect(found.get("turn count")).toMatchObject({ standardUncertainty: 0.5, law: "normal" });
  });

  it("moves the rate as each would", () => {
    const factor = (name: string, value: number) =>
      [...found].find(([one]) => one === name)?.[1].factor(value);
    expect(factor("catch scatter", 0.44)).toBeCloseTo(1.1, 12);
    expect(factor("reading gross", 0.02)).toBeCloseTo(1.05, 12);
    expect(factor("scale error", 0.25)).toBeCloseTo(0.8, 12);
    // A turn too many in each of four catches: 100 ÷ 104.
    expect(factor("turn count", 1)).toBeCloseTo(100 / 104, 12);
  });

  it("is named where nothing is known of it", () => {
    const unknown = {
      ...today,
      estimate: { ...today.estimate, standardError: null },
      variance: { ...today.variance, division: null },
    };
    expect(deliverySources(unknown as Delivery, optionsOf())).toEqual([
      "catch scatter",
      "reading gross",
      "reading tare",
      "scale error",
      "turn count",
    ]);
  });
});

describe("what the fills that follow add", () => {
  const next = optionsOf({ valueFor: "next fills" });
  const spread = { standardDeviation: { value: 0.01 }, df: 5 } as never;

  it("is the difference of two fills, and a step of a trend", () => {
    const [fill] = fillSource(spread, today, next);
    expect(fill).toMatchObject({
      name: "fill to fill",
      standardUncertainty: expect.closeTo(0.01 * Math.SQRT2, 12),
      df: 5,
      law: "t",
    });
    expect(typeof fill === "object" ? fill.factor(0.04) : null).toBeCloseTo(1.1, 12);
    const [drift] = driftSource({ trending: { perFill: { value: -0.02 } } as never }, next);
    expect(drift).toMatchObject({
      name: "drift",
      standardUncertainty: expect.closeTo(0.02 / Math.sqrt(3), 12),
    });
    expect(typeof drift === "object" ? drift.factor(0.02) : null).toBeCloseTo(1.02, 12);
  });

  it("is nothing of this fill, and named where no spread is known", () => {
    expect(fillSource(spread, today, optionsOf())).toEqual([]);
    expect(driftSource({ trending: { perFill: { value: 0.02 } } as never }, optionsOf())).toEqual(
      [],
    );
    expect(driftSource({ trending: null }, next)).toEqual([]);
    expect(fillSource({ standardDeviation: null, df: 0 } as never, today, next)).toEqual([
      "fill to fill",
    ]);
    expect(fillSource({ standardDeviation: { value: 0 }, df: 5 } as never, today, next)).toEqual([
      "fill to fill",
    ]);
  });
});

describe("what makes the area uncertain", () => {
  const names = (given: Given) =>
    areaSources(optionsOf(given)).map((one) => (typeof one === "string" ? one : `${one.name} ±`));
  const wheel = { kind: "ground-wheel", ratio: null, steps: null, stepNames: null } as const;

  it("is width, and what the drive rolls on or measures by", () => {
    expect(names({})).toEqual(["working width", "drive"]);
    expect(names({ workingWidthM: measured(6, null) })).toEqual(["working width", "drive"]);
    expect(names({ workingWidthM: measured(6, 0) })).toEqual(["working width ±", "drive"]);
    expect(names({ drive: { kind: "motor", meterSpeedTurnsPerMin: null } })).toEqual([
      "working width",
      "speed measure",
    ]);
    expect(names({ drive: wheel, wheelTravelM: measured(2, 0.01) })).toEqual([
      "working width",
      "wheel travel ±",
      "slip",
    ]);
    expect(names({ drive: wheel, slip: measured(0.02, 0.01) })).toEqual([
      "working width",
      "wheel travel",
      "slip ±",
    ]);
  });

  it("moves the rate the other way than the area", () => {
    const factor = (given: Given, name: string, value: number) => {
      const one = areaSources(optionsOf(given)).find(
        (each) => typeof each === "object" && each.name === name,
      );
      return typeof one === "object" ? one.factor(value) : null;
    };
    expect(factor({ workingWidthM: measured(6, 0.1) }, "working width", 6.6)).toBeCloseTo(
      6 / 6.6,
      12,
    );
    expect(
      factor({ drive: wheel, wheelTravelM: measured(2, 0.1) }, "wheel travel", 2.5),
    ).toBeCloseTo(0.8, 12);
    // Where the wheel slips more the meter turns less.
    expect(factor({ drive: wheel, slip: measured(0.2, 0.1) }, "slip", 0.4)).toBeCloseTo(0.75, 12);
  });
});

describe("the whole", () => {
  const sources = [...byName(deliverySources(today, optionsOf())).values()];

  it("takes scatter and readings as one: √(4² + 3²) = 5, on the degrees of freedom of the interval", () => {
    const [one, ...others] = catchesAsOne(sources);
    expect(others).toEqual([]);
    expect(one).toMatchObject({
      name: "catch scatter",
      standardUncertainty: expect.closeTo(0.005, 12),
    });
    expect(one?.df).toBe(sources[0]?.dfWithReadings);
    const scatter = { ...sources[0], dfWithReadings: null } as (typeof sources)[number];
    expect(catchesAsOne([scatter])[0]).toMatchObject({ law: "normal", df: null });
    const { dfWithReadings: _, ...without } = scatter;
    expect(catchesAsOne([without])[0]).toMatchObject({ law: "t", df: 3 });
  });

  it("is the product of the factors", () => {
    expect(rateOf(sources)([0.44, 0.02, 0.02])).toBeCloseTo(1.1 * 1.05 * 1.05, 12);
    expect(rateOf([])([])).toBe(1);
  });

  it("is never narrower than any one source alone", () => {
    const scatter = {
      ...sources[0],
      df: 1,
      dfWithReadings: 1,
      standardUncertainty: 0.004,
    } as (typeof sources)[number];
    const small = {
      ...scatter,
      name: "turn count",
      value: 0,
      unit: "turns",
      law: "normal",
      df: null,
      standardUncertainty: 0.004,
      factor: (x: number) => 1 + x,
    } as (typeof sources)[number];
    const alone = totalOf([scatter], 0.95);
    // t(0.975; 1) = 12.7062 (e-Handbook, 1.3.6.7.2: 12.706) times 0.004 ÷ 0.4.
    expect(alone.expanded).toBeCloseTo(12.706204736174694 * 0.01, 9);
    const both = totalOf([scatter, small], 0.95);
    expect(both.expanded).toBeGreaterThan(alone.expanded * (1 - 1e-12));
    expect(both.expanded).toBeCloseTo(both.coverageFactor * both.combined, 12);
    expect(both.combined).toBeCloseTo(Math.hypot(0.01, 0.004), 9);
  });
});
