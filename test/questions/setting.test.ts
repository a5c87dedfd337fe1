import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DriveSetup, TargetRate } from "../../src/data/setup.ts";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel } from "../../src/model/model.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { type SettingChoices, settingOptions } from "../../src/questions/setting/options.ts";
import { setting } from "../../src/questions/setting.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";

const model = { level: 0.95, tolerance: 0.05, scaleDivisionKg: 0.01 };
const exact = (value: number) => ({ value, standardUncertainty: null });
const mass = (kgPerHectare: number): TargetRate => ({ kind: "mass", kgPerHectare });
/** Delivers 0.4 kg/turn to a little over 1 %. */
const fill = aFill([
  [20, 8.05],
  [20, 7.9],
  [20, 8.05],
]);
const wheel = (given: Partial<Extract<DriveSetup, { kind: "ground-wheel" }>> = {}): DriveSetup => ({
  kind: "ground-wheel",
  ratio: null,
  steps: null,
  stepNames: null,
  ...given,
});
const motor = (from: number, to: number): DriveSetup => ({
  kind: "motor",
  meterSpeedTurnsPerMin: { from, to },
});

function ask(given: Partial<SettingChoices>, catches: readonly Catch[] = fill) {
  const meter = present(fitModel(catches, model).meters[0]);
  const answer = delivery(meter, { ...model, varianceLaw: "proportional" });
  return setting(meter, answer, settingOptions(model, given));
}

const codes = (result: ReturnType<typeof ask>) => result.cautions.map(({ code }) => code);

describe("what to set", () => {
  it("by hand for a motor: 120 kg/ha at 0.4 kg/turn are 300 turns/ha, 48 turns/min at 8 km/h and 12 m", () => {
    const result = ask({
      target: mass(120),
      workingWidthM: exact(12),
      speedKmPerH: { from: 8, to: 8 },
      drive: motor(20, 100),
    });
    expect(result.delivery.value).toBeCloseTo(0.4, 12);
    expect(result.turnsPerHectare?.value).toBeCloseTo(300, 9);
    expect(result.meterSpeeds.map(({ turnsPerMin }) => turnsPerMin.value)).toEqual([
      expect.closeTo(48, 9),
    ]);
    expect(result.ratio).toBeNull();
    // Slowest and fastest meter at 8 km/h; slowest and fastest speed at 120 kg/ha.
    expect(result.reach).toEqual({
      rates: { lower: expect.closeTo(50, 9), upper: expect.closeTo(250, 9), empty: false },
      speedsKmPerH: { lower: expect.closeTo(8 / 2.4, 9), upper: expect.closeTo(8 / 0.48, 9) },
    });
    expect(result.missing).toEqual([]);
  });

  it("by hand for a ground wheel: 12 m × 2 m and no slip need a ratio of 0.72 for 120 kg/ha", () => {
    const steps = [0.6, 0.9, 0.7];
    const result = ask({
      target: mass(120),
      workingWidthM: exact(12),
      wheelTravelM: exact(2),
      drive: wheel({ ratio: 0.9, steps, stepNames: ["low", "high", "middle"] }),
    });
    expect(result.ratio?.value).toBeCloseTo(0.72, 12);
    expect(result.steps.map(({ name, rate }) => [name, rate.value])).toEqual([
      ["low", expect.closeTo(100, 9)],
      ["high", expect.closeTo(150, 9)],
      ["middle", expect.closeTo(350 / 3, 9)],
    ]);
    expect(result.nearest).toEqual({ nearest: 2, below: 2, above: 1 });
    expect(result.steps[2]?.rateError?.value).toBeCloseTo(350 / 3 / 120 - 1, 12);
    expect(result.now?.rateError?.value).toBeCloseTo(0.25, 12);
    expect(result.reach?.rates).toEqual({
      lower: expect.closeTo(100, 9),
      upper: expect.closeTo(150, 9),
      empty: false,
    });
    expect(codes(result)).toEqual(["slip-not-given", "drive-set-off"]);
  });

  it("needs more turns where the wheel slips: the ratio grows by 1/(1 − slip)", () => {
    const ratio = (slip: number) =>
      present(
        ask({
          target: mass(120),
          workingWidthM: exact(12),
          wheelTravelM: exact(2),
          slip: exact(slip),
          drive: wheel(),
        }).ratio,
      ).value;
    expect(ratio(0.1) / ratio(0)).toBeCloseTo(1 / 0.9, 12);
  });

  it("takes plants through kernel mass, germination and emergence: 300 × 40 ÷ (100 × 0.95 × 0.9)", () => {
    const seed = {
      thousandKernelMassG: { value: 40, standardUncertainty: 0.8 },
      germination: { value: 0.95, standardUncertainty: 0.019 },
      emergence: { value: 0.9, standardUncertainty: 0.018 },
    };
    const result = ask({ target: { kind: "plants", plantsPerM2: 300 }, seed });
    expect(result.target?.value).toBeCloseTo(120 / 0.855, 9);
    // Three independent parts of 2 % each.
    expect(present(result.target?.standardError) / (120 / 0.855)).toBeCloseTo(
      0.02 * Math.sqrt(3),
      6,
    );
    expect(result.turnsPerHectare?.method).toBe("Fieller");
    const seeds = ask({ target: { kind: "seeds", seedsPerM2: 300 }, seed });
    expect(seeds.target?.value).toBeCloseTo(120, 12);
  });

  it("tables the setting needed and a little beside it, and meets the target in the middle", () => {
    const { around } = ask({ target: mass(120) });
    expect(around?.of).toBe("turns/ha");
    expect(around?.rows.map(({ rateError }) => rateError?.value)).toEqual(
      [-0.1, -0.05, -0.02, 0, 0.02, 0.05, 0.1].map((error) => expect.closeTo(error, 12)),
    );
    expect(around?.rows[3]?.rateError?.value).toBe(0);
  });
});

describe("a gearbox of which one step was caught", () => {
  const gearbox = { steps: [0.6, 0.7, 0.9], stepNames: ["low", "middle", "high"] };
  const caughtAt = (caughtRatio: number) => ({
    target: mass(140),
    workingWidthM: exact(12),
    wheelTravelM: exact(2),
    slip: exact(0),
    drive: wheel({ ...gearbox, caughtRatio }),
  });

  it("by hand: 0.4 kg/turn, 0.7 turns a wheel turn of 0.0024 ha are 116.67 kg/ha, and 0.9 ÷ 0.7 of it at the next", () => {
    const result = ask(caughtAt(0.7));
    expect(result.caughtStep).toBe(1);
    expect(result.steps.map(({ assumed, rate }) => [assumed, rate.value])).toEqual([
      [true, expect.closeTo(100, 9)],
      [false, expect.closeTo(350 / 3, 9)],
      [true, expect.closeTo((350 / 3) * (0.9 / 0.7), 9)],
    ]);
    expect(result.cautions.find(({ code }) => code === "step-not-caught")?.facts).toEqual({
      stepName: "high",
      stepRatio: 0.9,
      caughtName: "middle",
      caughtRatio: 0.7,
    });
  });

  it("asks for no catch where the nearest step is the one caught", () => {
    expect(codes(ask(caughtAt(0.9)))).not.toContain("step-not-caught");
  });

  it("calls nothing assumed where no step is told", () => {
    const { steps, caughtStep } = ask({ ...caughtAt(0.9), drive: wheel(gearbox) });
    expect(steps.map(({ assumed }) => assumed)).toEqual([false, false, false]);
    expect(caughtStep).toBeNull();
  });

  it("goes from the turns of one setting: 280 turns/ha at 0.7 are 240 at 0.6, 360 at 0.9, and 140 kg/ha need 0.875", () => {
    const result = ask({
      target: mass(140),
      turnsPerHectare: 280,
      drive: wheel({ ...gearbox, ratio: 0.7, caughtRatio: 0.7 }),
    });
    expect(result.steps.map(({ rate }) => rate.value / 0.4)).toEqual(
      [240, 280, 360].map((turns) => expect.closeTo(turns, 9)),
    );
    expect(result.ratio?.value).toBeCloseTo(0.875, 12);
    expect(result.nearest?.nearest).toBe(2);
    expect(result.missing).toEqual(["working width"]);
    expect(codes(result)).not.toContain("slip-not-given");
  });
});

describe("round trips", () => {
  it("put out the target again when the drive is set as told, by turns and by ratio", () => {
    const target = fc.double({ min: 5, max: 400, noNaN: true });
    const size = fc.double({ min: 0.5, max: 24, noNaN: true });
    fc.assert(
      fc.property(target, size, size, (rate, width, travel) => {
        const geometry = {
          target: mass(rate),
          workingWidthM: exact(width),
          wheelTravelM: exact(travel),
          slip: exact(0.03),
        };
        const told = ask({ ...geometry, drive: wheel() });
        const byRatio = ask({ ...geometry, drive: wheel({ ratio: present(told.ratio).value }) });
        const byTurns = ask({
          ...geometry,
          turnsPerHectare: present(told.turnsPerHectare).value,
        });
        for (const { now } of [byRatio, byTurns]) {
          expect(present(now).rate.value / rate).toBeCloseTo(1, 12);
          expect(present(now?.rateError).value).toBe(0);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("scale with the delivery: twice the mass in every catch halves the turns and their interval", () => {
    const double = fill.map((row) => ({ ...row, netKg: 2 * row.netKg }));
    const options = { ...model, scaleDivisionKg: null };
    const turns = (catches: readonly Catch[]) => {
      const meter = present(fitModel(catches, options).meters[0]);
      const answer = delivery(meter, { ...options, varianceLaw: "proportional" });
      return present(
        setting(meter, answer, settingOptions(options, { target: mass(120) })).turnsPerHectare,
      );
    };
    const [once, twice] = [turns(fill), turns(double)];
    expect(twice.value / once.value).toBeCloseTo(0.5, 12);
    expect(present(twice.interval?.lower) / present(once.interval?.lower)).toBeCloseTo(0.5, 10);
    expect(present(twice.interval?.upper) / present(once.interval?.upper)).toBeCloseTo(0.5, 10);
  });
});

describe("what is said beside it", () => {
  it("names what is missing, and gives null for it", () => {
    const result = ask({});
    expect(result).toMatchObject({
      target: null,
      turnsPerHectare: null,
      ratio: null,
      around: null,
    });
    expect(result.missing).toEqual(["target rate", "drive", "working width"]);
    expect(codes(result)).toEqual(["setting-needs"]);
    const plants = ask({ target: { kind: "plants", plantsPerM2: 300 }, drive: wheel() });
    expect(plants.missing).toEqual([
      "thousand-kernel mass",
      "germination",
      "emergence",
      "working width",
      "wheel travel",
    ]);
    expect(ask({ drive: { kind: "motor", meterSpeedTurnsPerMin: null } }).missing).toContain(
      "meter speeds",
    );
  });

  const field = { target: mass(120), workingWidthM: exact(12), speedKmPerH: { from: 6, to: 8 } };
  const caughtAt = (rpm: number) => fill.map((row) => ({ ...row, meterRpm: rpm }));

  it("says when the meter will turn at speeds at which nothing was caught", () => {
    // 36 and 48 turns/min are needed; speeds are trusted a quarter beyond those caught.
    expect(codes(ask(field, caughtAt(30)))).toContain("setting-outside-caught-speeds");
    expect(codes(ask(field, caughtAt(45)))).not.toContain("setting-outside-caught-speeds");
    expect(codes(ask(field, caughtAt(46)))).toContain("setting-outside-caught-speeds");
    expect(codes(ask(field))).toContain("meter-speed-not-recorded");
  });

  it("says when the drive cannot reach the target, or no rate at every speed", () => {
    expect(codes(ask({ ...field, drive: motor(10, 40) }))).toContain("target-out-of-reach");
    expect(codes(ask({ ...field, drive: motor(10, 60) }))).not.toContain("target-out-of-reach");
    const slow = ask({ ...field, drive: motor(10, 40) }).cautions;
    expect(slow.find(({ code }) => code === "target-out-of-reach")?.facts).toMatchObject({
      drive: "motor",
    });
    const narrow = ask({ ...field, drive: motor(40, 41) });
    expect(narrow.reach?.rates?.empty).toBe(true);
    expect(codes(narrow)).toContain("target-out-of-reach");
  });

  it("says when no step comes near enough", () => {
    const stepped = (steps: readonly number[]) =>
      codes(ask({ ...field, wheelTravelM: exact(2), drive: wheel({ steps }) }));
    expect(stepped([0.6, 0.8])).toContain("no-step-within-tolerance");
    expect(stepped([0.6, 0.7])).not.toContain("no-step-within-tolerance");
  });

  it("leaves intervals out for a single catch, and cautions when catches cannot tell it from zero", () => {
    const single = ask(field, aFill([[20, 8]]));
    expect(single.turnsPerHectare).toMatchObject({ interval: null, method: "none" });
    const wild = ask(
      field,
      aFill([
        [20, 2],
        [20, 12],
        [20, 3],
        [20, 14],
        [20, 1],
      ]),
    );
    expect(wild.turnsPerHectare?.interval?.upper).toBeNull();
    expect(codes(wild)).toContain("delivery-not-told-from-zero");
  });

  it.each([
    [{ target: mass(0) }, "target"],
    [{ speedKmPerH: { from: 8, to: Number.NaN } }, "speedKmPerH.to"],
    [
      { seed: { thousandKernelMassG: null, germination: exact(1.2), emergence: null } },
      "seed.germination.value",
    ],
    [{ width: 12 } as never, "width"],
  ] satisfies [Partial<SettingChoices>, string][])("refuses %j", (given, option) => {
    expect(() => settingOptions(model, given)).toThrow(OptionError);
    expect(() => settingOptions(model, given)).toThrow(`"${option}"`);
  });

  describe.each(["target", "lowestRate", "highestRate"] as const)("the option %s", (option) => {
    it.each<[string, (amount: number) => TargetRate]>([
      ["mass", mass],
      ["seeds", (seedsPerM2) => ({ kind: "seeds", seedsPerM2 })],
      ["plants", (plantsPerM2) => ({ kind: "plants", plantsPerM2 })],
    ])("is a rate above zero of %s, and nothing else", (_, rate) => {
      for (const amount of [0, -120, Number.NaN, Number.POSITIVE_INFINITY]) {
        expect(() => settingOptions(model, { [option]: rate(amount) })).toThrow(OptionError);
        expect(() => settingOptions(model, { [option]: rate(amount) })).toThrow(`"${option}"`);
      }
      expect(settingOptions(model, { [option]: rate(0.5) })[option]).toEqual(rate(0.5));
    });
  });

  it("is plain data that survives JSON", () => {
    const result = ask({ ...field, wheelTravelM: exact(2), drive: wheel({ steps: [0.7] }) });
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});
