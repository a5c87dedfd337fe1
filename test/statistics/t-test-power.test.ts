import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { detectableEffect, tTestPower } from "../../src/statistics/t-test-power.ts";

const critical = (df: number) => studentTQuantile(0.975, df);

describe("power and detectable effect of a t test", () => {
  it("undo one another", () => {
    const df = fc.double({ min: 1, max: 60, noNaN: true });
    const power = fc.double({ min: 0.3, max: 0.98, noNaN: true });
    fc.assert(
      fc.property(df, power, (nu, chance) => {
        const effect = detectableEffect(nu, chance, 0.95);
        expect(tTestPower(effect, nu, critical(nu))).toBeCloseTo(chance, 10);
        expect(tTestPower(-effect, nu, critical(nu))).toBeCloseTo(chance, 10);
      }),
      { numRuns: 40 },
    );
  });

  it("find nothing that is not there more often than by a false alarm", () => {
    expect(tTestPower(0, 4, critical(4))).toBeCloseTo(0.05, 12);
  });

  it("need an effect, degrees of freedom and a chance", () => {
    expect(() => tTestPower(Number.NaN, 4, 2)).toThrow(NumericalError);
    expect(() => tTestPower(1, 0, 2)).toThrow("df is 0");
    expect(() => tTestPower(1, 4, 0)).toThrow("criticalValue is 0");
    expect(() => detectableEffect(5, 1, 0.95)).toThrow("power is 1");
    expect(() => detectableEffect(0, 0.8, 0.95)).toThrow("df is 0");
  });
});
