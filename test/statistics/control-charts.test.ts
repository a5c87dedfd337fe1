import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { cusumChart, ewmaChart, individualsChart } from "../../src/statistics/control-charts.ts";
import { column, present, printedTolerance, recomputed, reference } from "../support/reference.ts";

/** Half a unit of the printed digits; a whole one where the source rounds on the way. */
function expectPrinted(value: number, printed: string, units = 1) {
  expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(
    units * printedTolerance(printed) * (1 + 1e-9),
  );
}

describe("individualsChart", () => {
  // NIST/SEMATECH e-Handbook 6.3.2.2 (from memory, agrees with R).
  const set = reference("control/individuals-chart-handbook.json");
  const chart = individualsChart(column(set, "x"));

  it("reaches the handbook's flow rate limits", () => {
    expectPrinted(chart.center, present(set.certified.mean));
    expectPrinted(chart.meanMovingRange, present(set.certified.mean_moving_range));
    // The handbook divides by 1.128; d2 is 1.12838, which moves the limits in the fourth digit after the point.
    expect(Math.abs(chart.upper - Number(set.certified.ucl))).toBeLessThan(0.002);
    expect(Math.abs(chart.lower - Number(set.certified.lcl))).toBeLessThan(0.002);
    const d2 = 1.128;
    expect(chart.center + (3 * chart.meanMovingRange) / d2).toBeCloseTo(recomputed(set, "ucl"), 12);
    expect(chart.outside).toEqual([]);
  });

  it("uses 2.66 mean moving ranges", () => {
    expect((chart.upper - chart.center) / chart.meanMovingRange).toBeCloseTo(2.66, 2);
  });

  it("names the places of values outside", () => {
    expect(individualsChart([1, 1.1, 0.9, 1, 1.1, 9, 1, 1.1, 0.9, 1, 0.9, 1.1]).outside).toEqual([
      5,
    ]);
  });

  it("refuses a single value", () => {
    expect(() => individualsChart([1])).toThrow(NumericalError);
  });
});

describe("ewmaChart", () => {
  // NIST/SEMATECH e-Handbook 6.3.2.4 (from memory, agrees with R).
  const set = reference("control/ewma-handbook.json");
  const points = ewmaChart(column(set, "x"), {
    target: 50,
    standardDeviation: 2.0539,
    weight: 0.3,
    width: 3,
  });

  it("reaches the handbook's averages", () => {
    points.forEach(({ value }, i) => {
      expectPrinted(value, present(set.certified[`z${i + 1}`]));
      expect(value).toBeCloseTo(recomputed(set, `z${i + 1}`), 12);
    });
    expect(points).toHaveLength(20);
  });

  it("widens its limits to the handbook's final ones", () => {
    expect(present(points[0]).upper).toBeCloseTo(recomputed(set, "ucl_at_t1"), 10);
    expect(present(points[1]).upper).toBeCloseTo(recomputed(set, "ucl_at_t2"), 10);
    const last = present(points.at(-1));
    expectPrinted(last.upper, present(set.certified.ucl), 2);
    expectPrinted(last.lower, present(set.certified.lcl), 2);
  });

  it("is the values themselves at weight one", () => {
    const values = [3, 1, 4, 1, 5];
    const all = ewmaChart(values, { target: 0, standardDeviation: 1, weight: 1, width: 3 });
    expect(all.map(({ value }) => value)).toEqual(values);
    expect(all.map(({ upper }) => upper)).toEqual([3, 3, 3, 3, 3]);
  });

  it("refuses a weight of zero and a spread of zero", () => {
    const options = { target: 0, standardDeviation: 1, weight: 0.3, width: 3 };
    expect(() => ewmaChart([1], { ...options, weight: 0 })).toThrow(NumericalError);
    expect(() => ewmaChart([1], { ...options, standardDeviation: 0 })).toThrow(NumericalError);
  });
});

describe("cusumChart", () => {
  // NIST/SEMATECH e-Handbook 6.3.2.3 (from memory, agrees with R).
  const set = reference("control/cusum-handbook.json");
  const points = cusumChart(column(set, "x"), {
    target: 325,
    allowance: 0.3175,
    decision: 4.1959,
  });

  it("reaches the handbook's sums and first signal", () => {
    points.forEach(({ upper, lower }, i) => {
      // The handbook prints 7.45 and 14.44 for 7.4475 and 14.445: rounded to even.
      expectPrinted(upper, present(set.certified[`Sh${i + 1}`]));
      expect(upper).toBeCloseTo(recomputed(set, `Sh${i + 1}`), 9);
      expect(lower).toBeCloseTo(recomputed(set, `Sl${i + 1}`), 9);
    });
    const first = points.findIndex(({ signal }) => signal !== null) + 1;
    expect(first).toBe(Number(set.certified.first_signal_upper));
    expect(present(points[first - 1]).signal).toBe("upper");
  });

  it("mirrors upper and lower when the values are mirrored about the target", () => {
    const options = { target: 2, allowance: 0.5, decision: 3 };
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -20, max: 20 })), (values) => {
        const mirrored = cusumChart(
          values.map((value) => 4 - value),
          options,
        );
        cusumChart(values, options).forEach(({ upper, lower }, i) => {
          expect(mirrored[i]).toMatchObject({ upper: lower, lower: upper });
        });
      }),
    );
  });

  it("refuses a negative allowance and a decision of zero", () => {
    const options = { target: 0, allowance: 0.5, decision: 3 };
    expect(() => cusumChart([1], { ...options, allowance: -1 })).toThrow(NumericalError);
    expect(() => cusumChart([1], { ...options, decision: 0 })).toThrow(NumericalError);
    expect(() => cusumChart([Number.NaN], options)).toThrow(NumericalError);
  });
});

describe("on a limit, and beyond it", () => {
  it("a value is outside only beyond its limit, on either side", () => {
    const values = [5, 7, 6, 9, 4, 6];
    // Moving ranges 2, 1, 3, 5, 2: a mean of 2.6 over d₂ = 2/√π, which tables print as 1.128.
    const spread = (2.6 * Math.sqrt(Math.PI)) / 2;
    const sigmas = (9 - 37 / 6) / spread;
    expect(individualsChart(values, sigmas * 1.001).outside).toEqual([]);
    expect(individualsChart(values, sigmas * 0.999).outside).toEqual([3]);
    expect(individualsChart(values, (0.9 * (37 / 6 - 4)) / spread).outside).toEqual([3, 4]);
    expect(individualsChart(values)).toEqual(individualsChart(values, 3));
    expect(individualsChart([5, 7])).toMatchObject({ center: 6, meanMovingRange: 2 });
    const even = individualsChart([4, 4, 4]);
    expect(even).toMatchObject({ lower: 4, upper: 4, outside: [] });
  });

  it("a sum signals beyond the decision only, up, down or both", () => {
    const of = (values: readonly number[], decision: number) =>
      cusumChart(values, { target: 0, allowance: 0, decision }).map(({ signal }) => signal);
    expect(of([1, 1, 1], 2)).toEqual([null, null, "upper"]);
    expect(of([-1, -1, -1], 2)).toEqual([null, null, "lower"]);
    expect(of([3, -0.5], 2)).toEqual(["upper", "upper"]);
    expect(of([3, -2.5, 0.25], 0.4)).toEqual(["upper", "both", "both"]);
    const [first, second] = cusumChart([1, -3], { target: 0.5, allowance: 0.25, decision: 9 });
    expect(first).toEqual({ upper: 0.25, lower: 0, signal: null });
    expect(second).toEqual({ upper: 0, lower: 3.25, signal: null });
  });
});
