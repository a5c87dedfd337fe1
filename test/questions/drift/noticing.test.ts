import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { noticingOf } from "../../../src/questions/drift/noticing.ts";
import { lastingShiftChance } from "../../../src/statistics/lasting-shift-power.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const noticed = (fills: number) =>
  noticingOf(
    present(
      fitModel(inventedFills({ fills, catches: 3, spread: 0.02, scatter: 0.01 }, 3), options)
        .meters[0],
    ),
  );

describe("chances to notice a shift", () => {
  it("are the simulated ones, in spreads of this meter", () => {
    const { relativeSpread, fillsBefore, curves } = present(noticed(6));
    expect(fillsBefore).toBe(6);
    for (const { fillsSince, points } of curves)
      for (const { shift, chance } of points)
        expect(chance).toBeCloseTo(
          present(
            lastingShiftChance({ before: 6, after: fillsSince, shift: shift / relativeSpread }),
          ).chance,
          10,
        );
    // Of a shift of four spreads after three fills, as the table of test/reference/trend has it.
    expect(curves[2]?.points[7]?.chance).toBeCloseTo(0.67, 10);
  });

  it("grow with the shift and with the fills that show it", () => {
    const { curves } = present(noticed(5));
    for (const { points } of curves) {
      const chances = points.map(({ chance }) => chance);
      expect(chances).toEqual([...chances].sort((a, b) => a - b));
    }
    const largest = curves.map(({ points }) => Number(points.at(-1)?.chance));
    expect(largest).toEqual([...largest].sort((a, b) => a - b));
  });

  it("are not known with two fills, while fills trend, and where nobody asked", () => {
    expect(noticed(2)).toBeNull();
    const rising = Array.from({ length: 12 }, (_, f) =>
      aFill(
        [20, 20, 20].map((turns, c) => [turns, 6 * (1 + 0.02 * f + 0.001 * (c - 1))] as const),
        {
          fill: f + 1,
        },
      ),
    ).flat();
    const { across, history } = present(fitModel(rising, options).meters[0]);
    expect(history.trending).not.toBeNull();
    expect(noticingOf({ across, history })).toBeNull();
    const steady = { ...history, trending: null };
    expect(noticingOf({ across, history: steady })).not.toBeNull();
    expect(noticingOf({ across, history: { ...steady, status: "not asked" } })).toBeNull();
  });
});
