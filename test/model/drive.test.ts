import { describe, expect, it } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import {
  type DriveGeometry,
  driveRules,
  hectaresPerWheelTurn,
  turnsSetNow,
} from "../../src/model/drive.ts";
import { resolve } from "../../src/results/options.ts";
import { present } from "../support/reference.ts";

const wheel: DriveGeometry = {
  workingWidthM: { value: 12, standardUncertainty: 0.12 },
  wheelTravelM: { value: 2.2, standardUncertainty: null },
  slip: { value: 0.04, standardUncertainty: 0.02 },
  drive: { kind: "ground-wheel", ratio: 0.9, steps: null, stepNames: null },
  turnsPerHectare: null,
};

describe("hectaresPerWheelTurn", () => {
  it("by hand: 12 m × 2.2 m ÷ 0.96 ÷ 10 000, uncertain by 1 % of width and 2 points of slip", () => {
    const area = present(hectaresPerWheelTurn(wheel));
    expect(area.value).toBeCloseTo((12 * 2.2) / 0.96 / 10_000, 15);
    expect(area.standardUncertainty / area.value).toBeCloseTo(Math.hypot(0.01, 0.02 / 0.96), 7);
  });

  it("takes no slip for none, and is null without width or travel", () => {
    expect(hectaresPerWheelTurn({ ...wheel, slip: null })?.value).toBeCloseTo(0.00264, 15);
    expect(hectaresPerWheelTurn({ ...wheel, workingWidthM: null })).toBeNull();
    expect(hectaresPerWheelTurn({ ...wheel, wheelTravelM: null })).toBeNull();
  });
});

describe("turnsSetNow", () => {
  it("believes the turns per hectare before the ratio", () => {
    expect(turnsSetNow({ ...wheel, turnsPerHectare: 330 })).toEqual({
      turnsPerHectare: { value: 330, standardUncertainty: 0 },
      from: "turns per hectare",
    });
    const byRatio = present(turnsSetNow(wheel));
    expect(byRatio.from).toBe("drive ratio");
    expect(byRatio.turnsPerHectare.value).toBeCloseTo((0.9 * 10_000 * 0.96) / 26.4, 9);
  });

  it("is null when nothing says how the drive stands", () => {
    expect(turnsSetNow(resolve(driveRules, {}))).toBeNull();
    expect(turnsSetNow({ ...wheel, wheelTravelM: null })).toBeNull();
  });
});

describe("what a drive may be", () => {
  it.each([
    [{ workingWidthM: { value: 0, standardUncertainty: null } }, "workingWidthM.value"],
    [{ wheelTravelM: { value: 2, standardUncertainty: -1 } }, "wheelTravelM.standardUncertainty"],
    [{ slip: { value: 1, standardUncertainty: null } }, "slip.value"],
    [{ turnsPerHectare: Number.NaN }, "turnsPerHectare"],
    [
      { drive: { kind: "ground-wheel", ratio: null, steps: [0.8, 0], stepNames: null } },
      "drive.steps",
    ],
    [
      { drive: { kind: "motor", meterSpeedTurnsPerMin: { from: 0, to: 10 } } },
      "drive.meterSpeedTurnsPerMin.from",
    ],
  ] satisfies [Partial<DriveGeometry>, string][])("refuses %j", (change, option) => {
    expect(() => resolve(driveRules, change)).toThrow(OptionError);
    expect(() => resolve(driveRules, change)).toThrow(`"${option}"`);
  });
});
