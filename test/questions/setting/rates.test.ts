import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { speedsCaught } from "../../../src/questions/setting/caught-speeds.ts";
import { missingForSetting } from "../../../src/questions/setting/missing.ts";
import { type SettingChoices, settingOptions } from "../../../src/questions/setting/options.ts";
import { nearestSteps, rateNow, ratesOfSteps } from "../../../src/questions/setting/rates.ts";
import { reachOf } from "../../../src/questions/setting/reach.ts";
import type { RateAtSetting } from "../../../src/questions/setting/result.ts";
import { setting } from "../../../src/questions/setting.ts";
import type { Estimate } from "../../../src/results/estimate.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

const model = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.01 };
const exact = (value: number) => ({ value, standardUncertainty: null });
const delivery: Estimate<"kg/turn"> = {
  value: 0.4,
  unit: "kg/turn",
  standardError: 0.004,
  df: 8,
  interval: { lower: 0.39, upper: 0.41, level: 0.95, about: "this fill's delivery" },
} as Estimate<"kg/turn">;

const basisOf = (given: Partial<SettingChoices>, targetKgPerHa: number | null = 100) => ({
  delivery,
  options: settingOptions(model, given),
  targetKgPerHa,
});
// A wheel turn of 2 m on 5 m covers 10 m² = 0.001 ha: ratio i turns the meter 1000·i times a hectare.
const wheel = (steps: readonly number[] | null, stepNames: readonly string[] | null = null) => ({
  workingWidthM: exact(5),
  wheelTravelM: exact(2),
  drive: { kind: "ground-wheel", ratio: null, steps, stepNames } as const,
});

describe("the steps of a drive", () => {
  it("put out the delivery times the turns of a hectare, and miss the target by a fraction of it", () => {
    const rates = ratesOfSteps(basisOf(wheel([0.2, 0.25, 0.3], ["A", "B", "C"])));
    expect(rates.map(({ name, setting: ratio }) => [name, ratio])).toEqual([
      ["A", 0.2],
      ["B", 0.25],
      ["C", 0.3],
    ]);
    expect(rates.map(({ rate }) => rate.value)).toEqual(
      [80, 100, 120].map((each) => expect.closeTo(each, 9)),
    );
    expect(rates.map(({ rateError }) => rateError?.value)).toEqual([
      expect.closeTo(-0.2, 12),
      0,
      expect.closeTo(0.2, 12),
    ]);
    expect(ratesOfSteps(basisOf(wheel([0.2]), null))[0]?.rateError).toBeNull();
    expect(ratesOfSteps(basisOf({ ...wheel([0.2]), wheelTravelM: null }))).toEqual([]);
    expect(ratesOfSteps(basisOf(wheel(null)))).toEqual([]);
    expect(
      ratesOfSteps(
        basisOf({ ...wheel([0.2]), drive: { kind: "motor", meterSpeedTurnsPerMin: null } }),
      ),
    ).toEqual([]);
  });

  const steps = (...settings: readonly number[]) =>
    settings.map((one) => ({ setting: one }) as RateAtSetting);

  it("lie below and above what is needed, whatever their order, the nearer one nearest", () => {
    expect(nearestSteps(steps(0.3, 0.1, 0.2), 0.24)).toEqual({ nearest: 2, below: 2, above: 0 });
    expect(nearestSteps(steps(0.3, 0.1, 0.2), 0.26)).toEqual({ nearest: 0, below: 2, above: 0 });
    // As far from both: the lower one.
    expect(nearestSteps(steps(0.75, 0.25), 0.5)).toEqual({ nearest: 1, below: 1, above: 0 });
    expect(nearestSteps(steps(0.1, 0.2), 0.2)).toEqual({ nearest: 1, below: 1, above: 1 });
    expect(nearestSteps(steps(0.1, 0.2), 0.05)).toEqual({ nearest: 0, below: null, above: 0 });
    expect(nearestSteps(steps(0.1, 0.2), 0.25)).toEqual({ nearest: 1, below: 1, above: null });
    expect(nearestSteps([], 0.25)).toBeNull();
    expect(nearestSteps(steps(0.1), null)).toBeNull();
  });
});

describe("what the drive can do", () => {
  it("goes, of a ground wheel, from its slowest step to its fastest", () => {
    const basis = basisOf(wheel([0.3, 0.2, 0.25]));
    const reach = reachOf(basis, ratesOfSteps(basis), null);
    expect(reach?.rates?.lower).toBeCloseTo(80, 9);
    expect(reach?.rates?.upper).toBeCloseTo(120, 9);
    expect([reach?.rates?.empty, reach?.speedsKmPerH]).toEqual([false, null]);
    expect(reachOf(basis, [], null)).toBeNull();
  });

  const motor = (given: Partial<SettingChoices> = {}) =>
    basisOf({
      workingWidthM: exact(6),
      speedKmPerH: { from: 6, to: 10 },
      drive: { kind: "motor", meterSpeedTurnsPerMin: { from: 10, to: 60 } },
      ...given,
    });
  // R = 600·k·n/(W·v): 600·0.4·10/(6·6) = 66.67 and 600·0.4·60/(6·10) = 240 kg/ha.
  const turns = { value: 250 } as never;

  it("goes, of a motor, from the least at the slowest to the most at the fastest speed", () => {
    const reach = reachOf(motor(), [], turns);
    expect(reach?.rates?.lower).toBeCloseTo(2400 / 36, 9);
    expect(reach?.rates?.upper).toBeCloseTo(240, 9);
    expect(reach?.rates?.empty).toBe(false);
    // v = 600·n/(W·T): 600·10/(6·250) = 4 and 24 km/h.
    expect(reach?.speedsKmPerH?.lower).toBeCloseTo(4, 9);
    expect(reach?.speedsKmPerH?.upper).toBeCloseTo(24, 9);
  });

  it("is empty where the least at the slowest is more than the most at the fastest", () => {
    const narrow = { kind: "motor", meterSpeedTurnsPerMin: { from: 40, to: 60 } } as const;
    expect(reachOf(motor({ drive: narrow }), [], null)?.rates?.empty).toBe(true);
  });

  it("is known as far as speeds, limits and a target are given", () => {
    expect(reachOf(motor({ speedKmPerH: null }), [], turns)).toMatchObject({ rates: null });
    expect(reachOf(motor(), [], null)).toMatchObject({ speedsKmPerH: null });
    expect(reachOf(motor({ speedKmPerH: null }), [], null)).toBeNull();
    expect(reachOf(motor({ workingWidthM: null }), [], turns)).toBeNull();
    const open = { kind: "motor", meterSpeedTurnsPerMin: null } as const;
    expect(reachOf(motor({ drive: open }), [], turns)).toBeNull();
  });
});

describe("what the drive puts out as it stands", () => {
  it("is the delivery times its turns, off the target", () => {
    const now = rateNow(basisOf({ turnsPerHectare: 260 }));
    expect(now?.rate.value).toBeCloseTo(104, 9);
    expect(now?.rateError?.value).toBeCloseTo(0.04, 9);
    expect(rateNow(basisOf({}))).toBeNull();
  });
});

describe("what is not given", () => {
  const missing = (given: Partial<SettingChoices>) =>
    missingForSetting(settingOptions(model, given), ["target rate", "target rate"]);

  it("is asked for once, and only what this drive has", () => {
    expect(missing({})).toEqual(["target rate", "drive", "working width"]);
    expect(
      missing({ drive: { kind: "motor", meterSpeedTurnsPerMin: null }, workingWidthM: exact(6) }),
    ).toEqual(["target rate", "working speed", "meter speeds"]);
    expect(missing({ ...wheel(null), wheelTravelM: null })).toEqual([
      "target rate",
      "wheel travel",
    ]);
    expect(missing(wheel(null))).toEqual(["target rate"]);
  });
});

describe("a setting", () => {
  const catches = [40, 60].flatMap((meterRpm, i) =>
    aFill(
      [
        [20, 8.02],
        [20, 7.98],
        [20, 8.01],
      ],
      { fill: i + 1, meterRpm },
    ),
  );
  const meter = present(fitModel(catches, model).meters[0]);
  const answered = (given: Partial<SettingChoices>) =>
    setting(
      meter,
      { bin: "1", product: "wheat", fill: 2, estimate: delivery },
      settingOptions(model, { target: { kind: "mass", kgPerHectare: 100 }, ...given }),
    );
  const codes = (given: Partial<SettingChoices>) =>
    answered(given).cautions.map(({ code }) => code);

  it("knows the meter speeds of its own fill alone", () => {
    expect(speedsCaught(meter, 1)).toEqual({ from: 40, to: 40 });
    expect(speedsCaught(meter, 2)).toEqual({ from: 60, to: 60 });
    expect(speedsCaught(meter, 3)).toBeNull();
  });

  it("holds a quarter beyond the speeds that were caught, and is asked about beyond", () => {
    // n = R·W·v/(600·k) = 100·W·v/240: 6 m at 24 km/h is 60 turns/min.
    const at = (from: number, to: number) =>
      codes({
        workingWidthM: exact(6),
        speedKmPerH: { from: from * 0.4, to: to * 0.4 },
        drive: { kind: "motor", meterSpeedTurnsPerMin: null },
      }).includes("setting-outside-caught-speeds");
    expect([at(48.01, 74.99), at(47.9, 60), at(60, 75.1)]).toEqual([false, true, true]);
    const one = answered({ workingWidthM: exact(6), speedKmPerH: { from: 24, to: 24 } });
    expect(
      one.meterSpeeds.map(({ speedKmPerH, turnsPerMin }) => [speedKmPerH, turnsPerMin.value]),
    ).toEqual([[24, expect.closeTo(60, 9)]]);
  });

  it("is told off where a step or the drive misses by more than the tolerance, and not at it", () => {
    const step = (ratio: number) => codes(wheel([ratio])).includes("no-step-within-tolerance");
    expect([step(0.25 * 1.0299), step(0.25 * 1.0301), step(0.25 * 0.9699)]).toEqual([
      false,
      true,
      true,
    ]);
    const now = (turnsPerHectare: number) => codes({ turnsPerHectare }).includes("drive-set-off");
    expect([now(257.4), now(257.6), now(242.4)]).toEqual([false, true, true]);
  });

  it("is out of reach below the slowest step and above the fastest", () => {
    const reach = (...steps: readonly number[]) =>
      codes(wheel(steps)).includes("target-out-of-reach");
    expect([reach(0.2, 0.3), reach(0.251, 0.3), reach(0.2, 0.249)]).toEqual([false, true, true]);
    const found = answered(wheel([0.251])).cautions;
    expect(found.find(({ code }) => code === "target-out-of-reach")?.facts).toMatchObject({
      drive: "ground-wheel",
    });
  });

  it("has slip asked for where a ground wheel has a ratio", () => {
    expect(codes(wheel([0.25]))).toContain("slip-not-given");
    expect(codes({ ...wheel([0.25]), slip: exact(0.02) })).not.toContain("slip-not-given");
    expect(codes({ ...wheel([0.25]), target: null })).not.toContain("slip-not-given");
  });

  it("is told around the setting needed, seven times, of ratios where there is one", () => {
    const by = answered(wheel(null)).around;
    expect(by?.of).toBe("ratio");
    expect(by?.rows.map((row) => row.setting)).toEqual(
      [0.9, 0.95, 0.98, 1, 1.02, 1.05, 1.1].map((each) => expect.closeTo(0.25 * each, 9)),
    );
    expect(by?.rows.map(({ rate }) => rate.value)).toEqual(
      [90, 95, 98, 100, 102, 105, 110].map((each) => expect.closeTo(each, 9)),
    );
    const turns = answered({}).around;
    expect(turns?.of).toBe("turns/ha");
    expect(turns?.rows[3]?.setting).toBeCloseTo(250, 9);
    expect(answered({ target: null }).around).toBeNull();
  });
});
