import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { benjaminiHochberg } from "../../src/statistics/false-discovery.ts";
import { holm } from "../../src/statistics/multiplicity.ts";
import { evalR } from "../support/webr.ts";

/** Table of 15 comparisons in Benjamini & Hochberg 1995, section 3.1: four are found at a share of 5 %. */
const thrombolysis = [
  0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719,
  0.6528, 0.759, 1,
];

describe("the adjustment of Benjamini and Hochberg", () => {
  it("finds four of the fifteen comparisons of their example, where Holm's finds three", () => {
    const found = (adjusted: readonly number[]) => adjusted.filter((p) => p <= 0.05).length;
    expect(found(benjaminiHochberg(thrombolysis))).toBe(4);
    expect(found(holm(thrombolysis))).toBe(3);
  });

  it("is that of p.adjust in R, with ties, ends and in any order", async () => {
    const lists = [
      thrombolysis,
      [0.04, 0.01, 0.03, 0.02, 0.02, 0.5],
      [1, 0, 0.2, 0.2, 1e-12],
      [0.7],
      Array.from({ length: 180 }, (_, i) => ((i * 7919) % 181) / 181),
    ];
    for (const pValues of lists) {
      const inR = await evalR('p.adjust(p, "BH")', { p: pValues });
      benjaminiHochberg(pValues).forEach((value, i) => {
        expect(value).toBeCloseTo(inR[i] ?? Number.NaN, 14);
      });
    }
  });

  it("lies between the raw value and Holm's, keeps the order, and finds by the rule of the largest k", () => {
    const probabilities = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 14 });
    fc.assert(
      fc.property(probabilities, (p) => {
        const adjusted = benjaminiHochberg(p);
        const strict = holm(p);
        expect(adjusted).toHaveLength(p.length);
        p.forEach((raw, i) => {
          const value = adjusted[i] ?? Number.NaN;
          expect(value).toBeGreaterThanOrEqual(raw);
          expect(value).toBeLessThanOrEqual((strict[i] ?? 0) * (1 + 1e-12));
          p.forEach((other, j) => {
            if (other < raw) expect(adjusted[j]).toBeLessThanOrEqual(value);
          });
        });
        const sorted = p.toSorted((a, b) => a - b);
        const largest = sorted.findLastIndex((raw, i) => (p.length / (i + 1)) * raw <= 0.05);
        expect(adjusted.filter((value) => value <= 0.05)).toHaveLength(largest + 1);
      }),
    );
  });

  it("has nothing to say of nothing, and refuses what is no probability", () => {
    expect(benjaminiHochberg([])).toEqual([]);
    expect(() => benjaminiHochberg([0.2, 1.2])).toThrow(NumericalError);
    expect(() => benjaminiHochberg([Number.NaN])).toThrow(NumericalError);
  });
});
