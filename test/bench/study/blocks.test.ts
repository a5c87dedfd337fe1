import { describe, expect, it } from "vitest";
import {
  simulateGamesHowell,
  simulateTrials,
  type TrialPlan,
} from "../../../bench/study/blocks/simulate.ts";

const trials = 300;
/** Four standard errors of a share near 0.05 in so many trials. */
const error = 4 * Math.sqrt((0.05 * 0.95) / trials);

const plan: TrialPlan = {
  blocks: 4,
  spreads: [0.02, 0.02, 0.02],
  errors: "normal",
  spread: "common",
  againstFirst: false,
  margin: 0.1,
};

describe("trials in complete blocks", () => {
  it.each([
    ["all pairs, pooled", {}],
    ["against a reference, pooled", { againstFirst: true }],
    ["all pairs, spreads not assumed alike", { spread: "separate" }],
  ] as const)("keep what they state: %s", (_, given) => {
    const { covered, equivalentAtMargin } = simulateTrials({ ...plan, ...given }, trials, 7);
    expect(Math.abs(covered - 0.95)).toBeLessThan(error);
    expect(Math.abs(equivalentAtMargin - 0.05)).toBeLessThan(error);
  });

  it("are the same for the same seed and others for another", () => {
    const outcomes = [1, 1, 2].map((seed) =>
      JSON.stringify([3, 4, 5].map((blocks) => simulateTrials({ ...plan, blocks }, 60, seed))),
    );
    expect(outcomes[0]).toBe(outcomes[1]);
    expect(outcomes[0]).not.toBe(outcomes[2]);
  });

  it("pass the widest pair at the margin too often where spreads are pooled that are not alike", () => {
    const unlike = { ...plan, spreads: [0.01, 0.01, 0.02, 0.04] };
    const { equivalentAtMargin } = simulateTrials(unlike, trials, 7);
    expect(equivalentAtMargin).toBeGreaterThan(0.06);
  });
});

it("finds a difference that is not there by Games and Howell about as often as it says", () => {
  const alike = { fills: [4, 4, 4], spreads: [0.02, 0.02, 0.02] };
  expect(simulateGamesHowell(alike, trials, 7)).toBeLessThan(0.05 + error);
});
