import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { simulateBounds, simulateRanges } from "../../../bench/study/skipping/simulate.ts";

const limit = 0.03;
const settings = ["mean of fills", 0.03, 0.05, -0.08] as const;
const cells = settings.flatMap((offCentre) =>
  [3, 5, 9].map((fills) => ({ offCentre, fills, spread: 0.02, limit })),
);

describe("the bound of the chance of an error beyond 3 %", () => {
  it.each(cells)("holds at 90 %: $offCentre, $fills fills", (plan) => {
    const outcomes = simulateBounds(plan, 4_000, 43);
    const holds = mean(outcomes.map(({ bound, happened }) => (bound >= happened ? 1 : 0)));
    expect(holds).toBeGreaterThanOrEqual(0.9);
  });

  it("says something: with nine fills at the mean it is below three quarters in most seasons", () => {
    const plan = { offCentre: "mean of fills", fills: 9, spread: 0.02, limit } as const;
    const bounds = simulateBounds(plan, 1_000, 44).map(({ bound }) => bound);
    expect(bounds.filter((bound) => bound < 0.75).length).toBeGreaterThan(600);
  });
});

describe("the 80 % range of the loss", () => {
  it.each(cells.filter(({ fills }) => fills !== 5))(
    "holds at 75 % or more: $offCentre, $fills fills",
    (plan) => {
      const outcomes = simulateRanges(plan, 600, 43);
      const holds = mean(
        outcomes.map(({ lower, upper, happened }) =>
          lower <= happened && happened <= upper ? 1 : 0,
        ),
      );
      expect(holds).toBeGreaterThanOrEqual(0.75);
    },
  );
});
