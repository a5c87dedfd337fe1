import { describe, expect, it } from "vitest";
import {
  type DivisionOutcome,
  type Habit,
  simulateDivision,
} from "../../../bench/study/division/simulate.ts";

const replicates = 1_000;
/** Of a coverage near 0.96 with 1,000 fills: about three standard errors. */
const simulationError = 0.018;
const claimed = 0.955;
const scatters = [0.1, 0.5, 1] as const;
const scales = [
  { divisionKg: 0.01, unit: "kg" },
  { divisionKg: 0.02, unit: "kg" },
  { divisionKg: 0.05, unit: "kg" },
  { divisionKg: 0.02, unit: "g" },
] as const;

const simulated = new Map<string, readonly DivisionOutcome[]>();
function outcomesOf(habit: Habit, catches: number): readonly DivisionOutcome[] {
  const key = `${habit} ${catches}`;
  const known = simulated.get(key);
  if (known !== undefined) return known;
  const outcomes = scales.flatMap((scale) =>
    scatters.map((scatterInDivisions, i) =>
      simulateDivision({ habit, catches, ...scale, scatterInDivisions }, replicates, 11 + i),
    ),
  );
  simulated.set(key, outcomes);
  return outcomes;
}

describe("the interval of a fill whose scale's division is read from the digits", () => {
  it.each([
    ["gross and tare", 2],
    ["gross and tare", 3],
    ["net shown", 2],
    ["net shown", 3],
  ] as const)(
    "%s, %i catches: holds the truth, and the step is never below the division",
    (habit, catches) => {
      for (const { coverage, below, ...cell } of outcomesOf(habit, catches)) {
        expect(coverage, JSON.stringify(cell)).toBeGreaterThan(claimed - simulationError);
        expect(below).toBe(0);
      }
    },
  );

  it("holds it where catches agree because the scale is coarse", () => {
    for (const habit of ["gross and tare", "net shown"] as const)
      for (const { scatterInDivisions, alike, coverageOfAlike } of outcomesOf(habit, 3)) {
        if (scatterInDivisions > 0.1) continue;
        expect(alike).toBeGreaterThan(0.4);
        expect(coverageOfAlike).toBeGreaterThan(claimed - simulationError);
      }
  });

  it("is at most twice as wide on average as with the division known", () => {
    for (const habit of ["gross and tare", "net shown"] as const)
      for (const { width } of outcomesOf(habit, 3)) expect(width).toBeLessThan(2.1);
  });

  it("is not given for equal nets that were worked out to the gram: their digits are not the scale's", () => {
    for (const { unit, scatterInDivisions, told, coverage } of outcomesOf("net worked out", 3)) {
      if (unit === "g") continue;
      if (scatterInDivisions === 0.1) expect(told).toBeLessThan(0.3);
      expect(coverage).toBeGreaterThan(claimed - simulationError);
    }
  });

  it("the same seed gives the same figures", () => {
    const cell = { habit: "net shown", catches: 2, divisionKg: 0.02, unit: "kg" } as const;
    const run = () => simulateDivision({ ...cell, scatterInDivisions: 0.5 }, 100, 3);
    expect(run()).toEqual(run());
  });
});
