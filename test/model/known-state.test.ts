import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { scatterOfFill, scatterOfNextFill, stateOfNextFill } from "../../src/model/known-state.ts";
import { type Fill, newestFill } from "../../src/model/meters.ts";
import { estimateOf, fitModel, type ModelOptions } from "../../src/model/model.ts";
import { priorOfVote } from "../../src/statistics/spread-votes.ts";
import { aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const options: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const meterOf = (catches: readonly Catch[], given: Partial<ModelOptions> = {}) =>
  present(fitModel(catches, { ...options, ...given }).meters[0]);

function ofNewest(catches: readonly Catch[], given: Partial<ModelOptions> = {}) {
  const meter = meterOf(catches, given);
  const fill = newestFill(meter);
  const estimated = estimateOf(meter, fill, { ...options, ...given });
  return { fill, estimated, scatter: scatterOfFill(fill, estimated) };
}

const relativeSquaresOf = ({ totals, delivery }: Fill) => totals.scatterSum / delivery ** 2;

const morning = aFill([
  [20, 6.02],
  [20, 5.91],
  [20, 6.1],
]);
const earlier = inventedFills({ fills: 4, catches: 3, spread: 0.02, scatter: 0.015 }, 4);

describe("the catch scatter that is known of a fill", () => {
  it("is its own where no other fill speaks: Σ(m − bt)²/t over n − 1, over b²", () => {
    const { scatter } = ofNewest(morning);
    // Catches of one bin of a morning: test/reference/generate/one-morning.R.
    expect(present(scatter).variance).toBeCloseTo(0.00503874574, 12);
    expect(scatter).toMatchObject({ source: "own", df: 2 });
  });

  it("is its own together with what earlier fills lend, as R has it", async () => {
    const { scatter } = ofNewest([...earlier, ...morning.map((row) => ({ ...row, fill: 5 }))]);
    const [df, variance] = await evalR(
      `${votesInR}
       prior <- prior.of(vote.of.own.fills(sum(lent) / 8, 8, 4))
       moderated(prior, squares(c(6.02, 5.91, 6.1), rep(20, 3)) / 2, 2)`,
      { lent: meterOf(earlier).fills.map(relativeSquaresOf) },
    );
    expect(scatter).toMatchObject({
      source: "lent",
      lentBy: { fills: 4, meters: 0, assumed: false },
    });
    expect(digits(present(scatter).df, present(df))).toBeGreaterThan(10);
    expect(digits(present(scatter).variance, present(variance))).toBeGreaterThan(10);
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
  it("is before its first catch, with the scatter that the fills lend one more, as R has it", async () => {
    const meter = meterOf(earlier);
    const state = present(stateOfNextFill(meter, options));
    const mean = meter.across.nextFill.value;
    expect(state).toMatchObject({ catches: 0, turns: 0, divisionInTurns: 0.02 / mean });
    // Σ (SS_f/b_f²) ÷ Σ (n_f − 1): each fill's squares relative to its own delivery.
    const [nu, q] = await evalR(`${votesInR} prior.of(vote.of.own.fills(sum(lent) / 8, 8, 4))`, {
      lent: meter.fills.map(relativeSquaresOf),
    });
    expect(state.scatter.own).toBe(false);
    expect(digits(state.scatter.nu, present(nu))).toBeGreaterThan(10);
    expect(digits(state.scatter.q, present(q))).toBeGreaterThan(10);
    expect(scatterOfNextFill(meter)).toEqual({
      source: "lent",
      lentBy: { fills: 4, meters: 0, assumed: false },
      variance: expect.closeTo(present(q), 12),
      df: expect.closeTo(present(nu), 9),
    });
  });

  it("is unknown while no scatter is, and hardly known from two catches", async () => {
    expect(stateOfNextFill(meterOf(aFill([[20, 6]])), options)).toBeNull();
    const two = present(stateOfNextFill(meterOf(morning.slice(0, 2)), options));
    const [nu] = await evalR(`${votesInR} prior.of(vote.of.own.fills(1, 1, 1))`);
    expect(digits(two.scatter.nu, present(nu))).toBeGreaterThan(10);
    expect(two.scatter.nu).toBeLessThan(1);
    const three = present(stateOfNextFill(meterOf(morning), options));
    expect(three.scatter.nu).toBeGreaterThan(two.scatter.nu);
  });

  it("takes from other bins what its own fills do not tell", () => {
    const others = inventedFills(
      { fills: 2, catches: 3, spread: 0.02, scatter: 0.01, bin: "2" },
      5,
    );
    const state = present(stateOfNextFill(meterOf([...aFill([[20, 6]]), ...others]), options));
    const { outside } = meterOf([...aFill([[20, 6]]), ...others]).scatter;
    const { nu0, s0Squared } = priorOfVote(present(outside));
    expect(state.scatter).toMatchObject({ nu: nu0, own: false });
    expect(digits(state.scatter.q, s0Squared)).toBeGreaterThan(12);
  });

  it("reads a scale without a division as none", () => {
    const state = present(stateOfNextFill(meterOf(earlier), { scaleDivisionKg: null }));
    expect(state.divisionInTurns).toBe(0);
  });
});
