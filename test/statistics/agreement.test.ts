import fc from "fast-check";
import { mean, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { inverseVarianceMean, normalisedError } from "../../src/statistics/agreement.ts";
import reference from "../reference/agreement/normalised-error-ten-laboratories.json" with {
  type: "json",
};
import { present, printedTolerance } from "../support/reference.ts";

describe("normalisedError", () => {
  it("gives the printed scores of ten laboratories", () => {
    const { measured, uncertainty, assigned } = reference.data;
    const target = { value: present(assigned[0]), expanded: 0 };
    const scores = measured.map((value, i) =>
      normalisedError({ value, expanded: present(uncertainty[i]) }, target),
    );
    const { mean_score, sd_score, largest } = reference.certified;
    expect(Math.abs(mean(scores) - Number(mean_score))).toBeLessThan(printedTolerance(mean_score));
    expect(Math.abs(sampleStandardDeviation(scores) - Number(sd_score))).toBeLessThan(
      printedTolerance(sd_score),
    );
    expect(Math.max(...scores.map(Math.abs))).toBeCloseTo(Number(largest), 12);
  });

  it("counts both uncertainties: 3-4-5", () => {
    expect(normalisedError({ value: 12, expanded: 3 }, { value: 7, expanded: 4 })).toBe(1);
  });

  it("refuses two values that claim to be exact", () => {
    const exact = { value: 1, expanded: 0 };
    expect(() => normalisedError(exact, exact)).toThrow(NumericalError);
    expect(() => normalisedError({ value: Number.NaN, expanded: 1 }, exact)).toThrow(
      NumericalError,
    );
    expect(() => normalisedError({ value: 1, expanded: -1 }, exact)).toThrow("-1");
  });
});

describe("inverseVarianceMean", () => {
  it("by hand: 10 ± 1 and 13 ± 2 make 10.6 ± 0.894", () => {
    const best = inverseVarianceMean([
      { value: 10, standardUncertainty: 1 },
      { value: 13, standardUncertainty: 2 },
    ]);
    expect(best.value).toBeCloseTo((10 + 13 / 4) / 1.25, 12);
    expect(best.standardUncertainty).toBeCloseTo(Math.sqrt(1 / 1.25), 12);
  });

  it("lies between its values and is surer than any of them", () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    const doubt = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    const entry = fc.record({ value, standardUncertainty: doubt });
    fc.assert(
      fc.property(fc.array(entry, { minLength: 1, maxLength: 6 }), (entries) => {
        const best = inverseVarianceMean(entries);
        const values = entries.map((one) => one.value);
        const slack = 1e-9 * Math.max(...values.map(Math.abs));
        expect(best.value).toBeGreaterThanOrEqual(Math.min(...values) - slack);
        expect(best.value).toBeLessThanOrEqual(Math.max(...values) + slack);
        for (const { standardUncertainty } of entries)
          expect(best.standardUncertainty).toBeLessThanOrEqual(standardUncertainty);
      }),
    );
  });

  it("refuses no values, and a value without doubt", () => {
    expect(() => inverseVarianceMean([])).toThrow("no values");
    expect(() => inverseVarianceMean([{ value: 1, standardUncertainty: 0 }])).toThrow(
      NumericalError,
    );
  });
});

it("weighs values whose uncertainties are hundreds of decades apart", () => {
  const values = [
    { value: 10, standardUncertainty: 1e-200 },
    { value: 13, standardUncertainty: 2 },
  ];
  expect(inverseVarianceMean(values)).toEqual({ value: 10, standardUncertainty: 1e-200 });
});
