import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import {
  detectableShift,
  shiftPower,
  shiftSampleSize,
  shiftSampleSizeByNormal,
} from "../../src/statistics/shift-power.ts";
import { digits, present, printedTolerance, recomputed, reference } from "../support/reference.ts";

// NIST/SEMATECH e-Handbook 7.2.2.2; the file says what of it is from memory and agrees with R.
const handbook = reference("design/sample-size-handbook.json");
const oneSided = { level: 0.95, sides: "one" } as const;

describe("finding a shift of one standard deviation with chance 0.9, one-sided at 0.05", () => {
  it("takes the observations of the handbook's normal formula", () => {
    const n = shiftSampleSizeByNormal(1, 0.9, oneSided);
    expect(digits(n, recomputed(handbook, "n_normal_unrounded"))).toBeGreaterThan(12);
  });

  it("takes those of its t iteration, with quantiles on 8 degrees of freedom", () => {
    const [t1, t2] = [studentTQuantile(0.95, 8), studentTQuantile(0.9, 8)];
    const printed = (name: string) => present(handbook.certified[name]);
    const within = (value: number, name: string) =>
      expect(Math.abs(value - Number(printed(name)))).toBeLessThanOrEqual(
        printedTolerance(printed(name)),
      );
    within(t1, "t_alpha_df8");
    within(t2, "t_beta_df8");
    within((t1 + t2) ** 2, "n_t_iteration");
  });

  it("takes those of R's power.t.test", () => {
    const n = shiftSampleSize(1, 0.9, oneSided);
    // power.t.test solves to a tolerance of about 1e-5 only.
    expect(Math.abs(n - recomputed(handbook, "n_power_t_test"))).toBeLessThan(1e-5);
  });
});

describe("power, sample size and detectable shift", () => {
  const sides = fc.constantFrom("one", "two");
  const shift = fc.double({ min: 0.2, max: 3, noNaN: true });
  const power = fc.double({ min: 0.3, max: 0.98, noNaN: true });

  it("undo one another", () => {
    fc.assert(
      fc.property(shift, power, sides, (delta, chance, side) => {
        const test = { level: 0.95, sides: side } as const;
        const n = shiftSampleSize(delta, chance, test);
        expect(shiftPower(n, delta, test)).toBeCloseTo(chance, 9);
        expect(detectableShift(n, chance, test)).toBeCloseTo(delta, 7);
      }),
      { numRuns: 40 },
    );
  });

  it("with no shift the chance of a finding is that of a false alarm", () => {
    expect(shiftPower(5, 0, { level: 0.95, sides: "two" })).toBeCloseTo(0.05, 12);
    expect(shiftPower(5, 0, oneSided)).toBeCloseTo(0.05, 12);
  });

  it("need more than one observation and a shift above zero", () => {
    expect(() => shiftPower(1, 1, oneSided)).toThrow(NumericalError);
    expect(() => shiftSampleSizeByNormal(0, 0.8, oneSided)).toThrow(NumericalError);
    expect(() => detectableShift(5, 1, oneSided)).toThrow(NumericalError);
  });
});
