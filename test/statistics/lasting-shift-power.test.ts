import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { lastingShiftChance } from "../../src/statistics/lasting-shift-power.ts";
import { present } from "../support/reference.ts";

const file = new URL("../reference/trend/lasting-shift-power.json", import.meta.url);
const { afters, rows }: Elsewhere = JSON.parse(readFileSync(file, "utf8"));

interface Elsewhere {
  readonly afters: readonly number[];
  readonly rows: readonly {
    readonly before: number;
    readonly shift: number;
    readonly found: readonly number[];
  }[];
}

const at = (before: number, after: number, shift: number) =>
  lastingShiftChance({ before, after, shift });

describe("the chance that a lasting shift has been found", () => {
  it("is the simulated one where there is one", () => {
    expect(at(3, 1, 2)).toEqual({ chance: 0.01, bound: "about" });
    expect(at(4, 3, 4)).toEqual({ chance: 0.41, bound: "about" });
    expect(at(6, 6, 2)).toEqual({ chance: 0.5, bound: "about" });
    expect(at(9, 2, 6)).toEqual({ chance: 0.95, bound: "about" });
  });

  it("is that of another program, wherever it asked", () => {
    expect(rows).toHaveLength(24);
    for (const { before, shift, found } of rows)
      found.forEach((chance, i) => {
        const after = present(afters[i]);
        // A shift of nothing is no plan: the smallest there is stands for it.
        const here = present(at(before, after, Math.max(shift, 1e-9))).chance;
        expect(here * 100).toBeCloseTo(Math.round(here * 100), 4);
        // Two simulations, one of them in whole percent and with what is found before the shift closing the stretch.
        const near = 0.005 + 0.02 * Math.sqrt(chance * (1 - chance));
        expect(Math.abs(here - chance), `${before}, ${after}, ${shift}`).toBeLessThan(near);
      });
  });

  it("lies between neighbours in each of the three, as far as the place between them", () => {
    expect(present(at(6, 6, 2.5)).chance).toBeCloseTo((0.5 + 0.87) / 2, 12);
    expect(present(at(5, 3, 3)).chance).toBeCloseTo((0.21 + 0.39) / 2, 12);
    expect(present(at(4, 5, 4)).chance).toBeCloseTo((0.65 + 0.9) / 2, 12);
    const corners = [0.16, 0.31, 0.38, 0.65, 0.28, 0.5, 0.62, 0.87];
    const middle = corners.reduce((sum, chance) => sum + chance / 8, 0);
    expect(present(at(5, 5, 2.5)).chance).toBeCloseTo(middle, 12);
  });

  it("is a bound beyond the table, and unknown with fewer before than the table has", () => {
    expect(at(14, 6, 3)).toEqual({ chance: 0.96, bound: "at least" });
    expect(at(9, 20, 3)).toEqual({ chance: 0.96, bound: "at least" });
    expect(at(6, 3, 11)).toEqual({ chance: 0.97, bound: "at least" });
    expect(at(6, 3, 0.5)).toEqual({ chance: (0.02 + 0.05) / 2, bound: "about" });
    expect(at(2, 6, 4)).toBeNull();
  });

  it("grows with the values before, the values since and the shift", () => {
    const grid = [3, 4, 5, 6, 7, 8, 9].flatMap((before) =>
      [1, 2, 3, 4, 5, 6].flatMap((after) =>
        [0.2, 1, 1.6, 2, 2.6, 3, 3.7, 4, 5, 6].map((shift) => ({ before, after, shift })),
      ),
    );
    const chance = (plan: (typeof grid)[number]) => present(lastingShiftChance(plan)).chance;
    for (const plan of grid) {
      if (plan.before < 9)
        expect(chance({ ...plan, before: plan.before + 1 })).toBeGreaterThanOrEqual(chance(plan));
      if (plan.after < 6)
        expect(chance({ ...plan, after: plan.after + 1 })).toBeGreaterThanOrEqual(chance(plan));
      if (plan.shift < 5.9)
        expect(chance({ ...plan, shift: plan.shift + 0.1 })).toBeGreaterThanOrEqual(chance(plan));
    }
  });

  it("refuses what is no plan", () => {
    expect(() => at(4.5, 2, 3)).toThrow(NumericalError);
    expect(() => at(4, 0, 3)).toThrow(NumericalError);
    expect(() => at(4, 2, 0)).toThrow(NumericalError);
  });
});
