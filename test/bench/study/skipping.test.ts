import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { overTrue, simulateExpected } from "../../../bench/study/skipping/expected-error.ts";
import { simulateBounds, simulateRanges } from "../../../bench/study/skipping/simulate.ts";
import { present } from "../../support/reference.ts";

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

describe("the mean error of a skipped fill", () => {
  const outcomes = (spreadFrom: number, spreadTo: number, fills: number) =>
    simulateExpected({ fills, spreadFrom, spreadTo, limit }, 800, 45);

  it.each([6, 9])("of a calm meter is nearer to the truth than before, %i fills", (fills) => {
    const calm = outcomes(0.005, 0.005, fills);
    const [before, now] = [overTrue(calm, "asMeasured"), overTrue(calm, "stated")].map(present);
    expect(before).toBeGreaterThan(1.7);
    expect(now).toBeLessThan(0.85 * present(before));
    expect(now).toBeGreaterThan(1.1);
  });

  it.each([3, 6, 9])("of meters of every kind is not stated too small, %i fills", (fills) => {
    const mixed = outcomes(0.005, 0.06, fills);
    expect(overTrue(mixed, "stated")).toBeGreaterThan(1);
    expect(overTrue(mixed, "stated")).toBeLessThan(present(overTrue(mixed, "asMeasured")));
  });

  it("claims less than a component by itself would where catch scatter is most of the spread", () => {
    const scatter = outcomes(0.005, 0.06, 6).filter(({ mostlyScatter }) => mostlyScatter);
    expect(scatter.length).toBeGreaterThan(100);
    expect(overTrue(scatter, "byItself")).toBeLessThan(present(overTrue(scatter, "stated")) - 0.05);
  });

  it("comes with no chance below 5 % from three fills, and chances as reckoned from six", () => {
    const of = (fills: number) => outcomes(0.005, 0.005, fills);
    expect(Math.min(...of(3).map(({ chanceStated }) => chanceStated))).toBe(0.05);
    for (const { chanceReckoned, chanceStated } of of(6)) expect(chanceStated).toBe(chanceReckoned);
  });
});

describe("the bound where neighbouring fills are alike", () => {
  it("holds less often than it says", () => {
    const plan = { offCentre: "mean of fills", fills: 6, spread: 0.03, limit: 0.05 } as const;
    const holds = (likeness: number) =>
      mean(
        simulateBounds({ ...plan, likeness }, 2_000, 46).map(({ bound, happened }) =>
          bound >= happened ? 1 : 0,
        ),
      );
    expect(holds(0)).toBeGreaterThan(0.9);
    expect(holds(0.5)).toBeLessThan(0.89);
    expect(holds(0.5)).toBeGreaterThan(0.83);
  });
});
