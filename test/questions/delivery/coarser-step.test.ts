import { describe, expect, it } from "vitest";
import { coarserStep } from "../../../src/questions/delivery/coarser-step.ts";
import { aFill } from "../../support/catches.ts";

const step = (...masses: readonly number[]) =>
  coarserStep(aFill(masses.map((kg) => [20, kg] as const)), 0.01);

describe("the step that readings move in", () => {
  it("is the largest of 5, 10, 20, 25 and 50 divisions of which every reading is a whole number", () => {
    expect(step(6.05, 6.1, 6.15)).toBeCloseTo(0.05, 12);
    expect(step(6.1, 6.2, 6.3)).toBeCloseTo(0.1, 12);
    expect(step(6.2, 6.4, 6.6)).toBeCloseTo(0.2, 12);
    expect(step(6.25, 6.5, 6.75)).toBeCloseTo(0.25, 12);
    expect(step(6, 6.5, 7)).toBeCloseTo(0.5, 12);
    expect(step(6.04, 6.08, 6.12)).toBeNull();
    expect(step(6.05, 6.1, 6.16)).toBeNull();
  });

  it("needs three readings that differ", () => {
    expect(step(6, 6.5)).toBeNull();
    expect(step(6, 6.5, 6.5)).toBeNull();
    expect(step(6, 6.5, 6.5, 7)).toBeCloseTo(0.5, 12);
  });

  it("lets a reading miss by less than a hundredth of a division", () => {
    expect(step(6.00009, 6.5, 7)).toBeCloseTo(0.5, 12);
    expect(step(6.00011, 6.5, 7)).toBeNull();
  });

  it("is that of the gross where one was read, and of no catch that names its own division", () => {
    const gross = aFill([
      [20, 6.01],
      [20, 6.52],
      [20, 7.03],
    ]).map((row, i) => ({
      ...row,
      grossKg: 6.5 + i / 2,
    }));
    expect(coarserStep(gross, 0.01)).toBeCloseTo(0.5, 12);
    const own = [
      ...aFill([
        [20, 6],
        [20, 6.5],
        [20, 7],
      ]),
      ...aFill([[20, 6.01]], { divisionKg: 0.01 }),
    ];
    expect(coarserStep(own, 0.01)).toBeCloseTo(0.5, 12);
    expect(
      coarserStep(
        own.map((row) => ({ ...row, divisionKg: 0.01 })),
        0.01,
      ),
    ).toBeNull();
  });
});
