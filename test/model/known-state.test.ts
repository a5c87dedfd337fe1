import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { scatterOfFill, scatterOfNextFill, stateOfNextFill } from "../../src/model/known-state.ts";
import { newestFill } from "../../src/model/meters.ts";
import { estimateOf, fitModel, type ModelOptions } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const options: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const meterOf = (catches: readonly Catch[], given: Partial<ModelOptions> = {}) =>
  present(fitModel(catches, { ...options, ...given }).meters[0]);

function ofNewest(catches: readonly Catch[], given: Partial<ModelOptions> = {}) {
  const meter = meterOf(catches, given);
  const fill = newestFill(meter);
  const estimated = estimateOf(meter, fill, { ...options, ...given });
  return { fill, estimated, scatter: scatterOfFill(fill, estimated) };
}

const morning = aFill([
  [20, 6.02],
  [20, 5.91],
  [20, 6.1],
]);
const earlier = inventedFills({ fills: 4, catches: 3, spread: 0.02, scatter: 0.015 }, 4);

describe("the catch scatter that is known of a fill", () => {
  it("is its own where no other fill speaks: Σ(m − bt)²/t over n − 1, over b²", () => {
    const { scatter } = ofNewest(morning);
    // Catches of one bin of a morning; R 4.2.2.
    expect(present(scatter).variance).toBeCloseTo(0.00503874574, 12);
    expect(scatter).toMatchObject({ source: "own", df: 2 });
  });

  it("is that of all fills where others speak", () => {
    const { scatter } = ofNewest([...earlier, ...morning.map((row) => ({ ...row, fill: 5 }))]);
    expect(scatter).toMatchObject({ source: "pooled", df: 10 });
  });

  it("is the larger of both standard errors where turns differ", () => {
    const unequal = aFill([
      [10, 3.3],
      [40, 12],
      [40, 12.5],
      [10, 2.9],
    ]);
    const { scatter, estimated } = ofNewest(unequal);
    const { model, robust } = estimated.variance;
    expect(present(robust)).toBeGreaterThan(present(model));
    expect(present(scatter).variance).toBeCloseTo(
      (present(robust) * 100) / estimated.estimate.value ** 2,
      14,
    );
  });

  it("is relative to the delivery as it was asked for, whichever the weighting", () => {
    const unequal = aFill([
      [10, 3.3],
      [40, 12],
      [40, 12.5],
    ]);
    const { scatter, estimated, fill } = ofNewest(unequal, { varianceLaw: "squared" });
    const { value } = estimated.estimate;
    expect(Math.abs(value / fill.delivery - 1)).toBeGreaterThan(1e-3);
    const largest = Math.max(present(estimated.variance.model), estimated.variance.robust ?? 0);
    expect(present(scatter).variance).toBeCloseTo((largest * 90) / value ** 2, 14);
  });

  it("is none for a lone catch", () => {
    expect(ofNewest(aFill([[20, 6]])).scatter).toBeNull();
  });
});

describe("where the next fill stands", () => {
  it("is before its first catch, with the scatter of all fills on all their degrees of freedom", () => {
    const meter = meterOf(earlier);
    const state = present(stateOfNextFill(meter, options));
    const mean = meter.across.nextFill.value;
    expect(state).toMatchObject({ catches: 0, turns: 0, divisionInTurns: 0.02 / mean });
    expect(state.scatter).toMatchObject({ nu: 8, own: false });
    // Σ (SS_f/b_f²) ÷ Σ (n_f − 1): each fill's squares relative to its own delivery.
    const relative = meter.fills.map(({ totals, delivery }) => totals.scatterSum / delivery ** 2);
    expect(state.scatter.q).toBeCloseTo(relative.reduce((sum, one) => sum + one, 0) / 8, 15);
    expect(scatterOfNextFill(meter)).toMatchObject({ source: "pooled", df: 8 });
  });

  it("is unknown while no scatter is, or on one degree of freedom", () => {
    expect(stateOfNextFill(meterOf(aFill([[20, 6]])), options)).toBeNull();
    expect(stateOfNextFill(meterOf(morning.slice(0, 2)), options)).toBeNull();
    expect(stateOfNextFill(meterOf(morning), options)).not.toBeNull();
  });

  it("reads a scale without a division as none", () => {
    const state = present(stateOfNextFill(meterOf(earlier), { scaleDivisionKg: null }));
    expect(state.divisionInTurns).toBe(0);
  });
});
