import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  derived,
  derivedEstimate,
  exactly,
  perDelivery,
  timesDelivery,
} from "../../src/model/worked-out.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../src/numeric/random.ts";
import type { Estimate } from "../../src/results/estimate.ts";
import { present } from "../support/reference.ts";

const level = 0.95;

function known(value: number, standardError: number, df: number): Estimate<"kg/turn"> {
  const half = studentTQuantile((1 + level) / 2, df) * standardError;
  return {
    value,
    unit: "kg/turn",
    standardError,
    df,
    interval: { lower: value - half, upper: value + half, level, about: "this fill's delivery" },
  };
}

const unknown: Estimate<"kg/turn"> = {
  value: 0.4,
  unit: "kg/turn",
  standardError: null,
  df: null,
  interval: null,
};

describe("perDelivery", () => {
  it("turns the t interval upside down when the delivery alone is uncertain", () => {
    const value = fc.double({ min: 0.05, max: 2, noNaN: true });
    const error = fc.double({ min: 0.001, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(value, error, fc.integer({ min: 2, max: 30 }), (k, relative, df) => {
        const delivery = known(k, k * relative, df);
        const turns = perDelivery(exactly(140), delivery, "turns/ha", level);
        const { lower, upper } = present(delivery.interval);
        fc.pre(present(lower) > 0);
        expect(turns.method).toBe("reciprocal of the t interval");
        expect(turns.df).toBeCloseTo(df, 9);
        expect(present(turns.interval?.lower) / (140 / present(upper))).toBeCloseTo(1, 9);
        expect(present(turns.interval?.upper) / (140 / present(lower))).toBeCloseTo(1, 9);
      }),
    );
  });

  it("and an interval that is not standard error times t, such as one with the scale read in it, likewise", () => {
    const { interval, ...rest } = known(0.4, 0.004, 3);
    const narrower = { ...present(interval), lower: 0.39, upper: 0.41 };
    const turns = perDelivery(exactly(140), { ...rest, interval: narrower }, "turns/ha", level);
    expect(turns.interval).toMatchObject({ lower: 140 / 0.41, upper: 140 / 0.39 });
  });

  it("has no upper end where the delivery is not told from zero", () => {
    const turns = perDelivery(exactly(140), known(0.4, 0.1, 1), "turns/ha", level);
    expect(turns.interval?.upper).toBeNull();
    expect(present(turns.interval?.lower)).toBeCloseTo(140 / (0.4 + 12.706205 * 0.1), 4);
  });

  it("holds the true setting as often as it says when rate and delivery are both uncertain", () => {
    const stream = randomStream(3);
    const runs = 4000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const rate = 140 * (1 + 0.02 * stream.normal());
      const errorFactor = Math.sqrt(stream.chiSquared(4) / 4);
      const delivery = known(0.4 * (1 + 0.02 * stream.normal()), 0.4 * 0.02 * errorFactor, 4);
      const numerator = { value: rate, standardUncertainty: 2.8 };
      const { interval, method } = perDelivery(numerator, delivery, "turns/ha", level);
      expect(method).toBe("Fieller");
      if (present(interval?.lower) <= 350 && 350 <= present(interval?.upper)) held++;
    }
    // Satterthwaite's degrees of freedom make it approximate; the bound is a little above three standard errors.
    expect(Math.abs(held / runs - level)).toBeLessThan(0.015);
  });

  it("has no interval when the delivery has none", () => {
    expect(perDelivery(exactly(140), unknown, "turns/ha", level)).toEqual({
      value: 350,
      unit: "turns/ha",
      standardError: null,
      df: null,
      interval: null,
      method: "none",
    });
  });
});

describe("timesDelivery", () => {
  it("scales the t interval when the factor is exact", () => {
    const delivery = known(0.4, 0.004, 5);
    const rate = timesDelivery(exactly(350), delivery, "kg/ha", level, "rate");
    expect(rate).toMatchObject({ method: "t interval", df: 5 });
    expect(rate.value).toBeCloseTo(140, 12);
    expect(rate.interval?.lower).toBeCloseTo(350 * present(delivery.interval?.lower), 10);
  });

  it("whatever the interval is made of, and where the factor is hardly uncertain, by the same to a hair", () => {
    for (const half of [0.0079, 0.009, 0.0103, 0.03]) {
      const { interval, ...rest } = known(0.4, 0.004, 5);
      const own = { ...present(interval), lower: 0.4 - half, upper: 0.4 + half };
      const delivery = { ...rest, interval: own };
      const rate = (standardUncertainty: number) =>
        timesDelivery({ value: 350, standardUncertainty }, delivery, "kg/ha", level, "rate");
      expect(rate(0).interval?.upper).toBeCloseTo(350 * (0.4 + half), 10);
      expect(present(rate(1e-6).interval?.upper)).toBeCloseTo(350 * (0.4 + half), 5);
    }
  });

  it("adds relative variances when the factor is uncertain: 3, 4 and 5 %", () => {
    const factor = { value: 350, standardUncertainty: 350 * 0.04 };
    const rate = timesDelivery(factor, known(0.4, 0.4 * 0.03, 5), "kg/ha", level, "rate");
    expect(present(rate.standardError) / rate.value).toBeCloseTo(0.05, 9);
    expect(rate.df).toBeCloseTo(0.05 ** 4 / (0.03 ** 4 / 5), 6);
    expect(rate.method).toBe("GUM propagation");
  });

  it("has no interval when the delivery has none", () => {
    expect(timesDelivery(exactly(2), unknown, "kg/ha", level, "rate").interval).toBeNull();
  });
});

describe("derived", () => {
  it("counts a part without uncertainty as exact", () => {
    const parts = [{ value: 12, standardUncertainty: null }, exactly(2)];
    expect(derived(([a = 0, b = 0]) => a * b, parts)).toEqual({
      value: 24,
      standardUncertainty: 0,
    });
    expect(derivedEstimate(exactly(24), "kg/ha", level, "rate")).toMatchObject({
      method: "exact",
      interval: null,
    });
  });

  it("gives a normal interval to what is uncertain", () => {
    const figure = derivedEstimate({ value: 10, standardUncertainty: 1 }, "kg/ha", level, "rate");
    expect(figure.interval?.upper).toBeCloseTo(11.959964, 6);
  });
});
