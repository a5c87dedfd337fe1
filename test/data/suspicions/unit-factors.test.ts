import { describe, expect, it } from "vitest";
import { massUnits } from "../../../src/data/column-kinds.ts";
import { isTimes, leastTimes, unitMeant } from "../../../src/data/suspicions/unit-factors.ts";

describe("the unit that was meant", () => {
  it.each([
    [2.2046, "kg", "lb"],
    [2, "kg", "lb"],
    [1000, "kg", "g"],
    [0.001, "g", "kg"],
    [453.6, "lb", "g"],
    [0.4536, "lb", "kg"],
    [35.3, "kg", "oz"],
    [1, "kg", null],
    [1.7, "kg", null],
    [3, "kg", null],
  ] as const)("of masses %s times too large in %s: %s", (times, read, meant) => {
    expect(unitMeant(times, read)).toBe(meant);
  });

  it("is none where masses are less than the least times too large or too small, and one just above", () => {
    for (const read of massUnits)
      for (const share of [0.01, 0.5, 0.999])
        for (const times of [leastTimes ** share, leastTimes ** -share])
          expect(unitMeant(times, read)).toBeNull();
    expect(unitMeant(1.001 * leastTimes, "kg")).toBe("lb");
    expect(unitMeant(1 / (1.001 * leastTimes), "lb")).toBe("kg");
  });

  it("is looked for both ways", () => {
    expect([4, 0.25, 3.9, 0.26].map((times) => isTimes(times, 4))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});
