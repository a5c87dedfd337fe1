import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { holm } from "../../src/statistics/multiplicity.ts";

describe("Holm's adjustment", () => {
  it("works through a list by hand: 0.01·4, 0.02·3, 0.03·2 raised to 0.06, 0.04·1 raised to 0.06", () => {
    const found = holm([0.01, 0.04, 0.03, 0.02]);
    [0.04, 0.06, 0.06, 0.06].forEach((wanted, i) => {
      expect(found[i]).toBeCloseTo(wanted, 15);
    });
  });

  it("never falls below the raw value, never exceeds Bonferroni's, and keeps the order", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 }), (p) => {
        const adjusted = holm(p);
        expect(adjusted).toHaveLength(p.length);
        p.forEach((raw, i) => {
          const value = adjusted[i] ?? Number.NaN;
          expect(value).toBeGreaterThanOrEqual(raw);
          expect(value).toBeLessThanOrEqual(Math.min(1, p.length * raw));
          p.forEach((other, j) => {
            if (other < raw) expect(adjusted[j]).toBeLessThanOrEqual(value);
          });
        });
      }),
    );
  });

  it("refuses what is no probability", () => {
    expect(() => holm([0.2, 1.2])).toThrow(NumericalError);
    expect(() => holm([Number.NaN])).toThrow(NumericalError);
  });
});
