import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveOf, fitModel, type ModelOptions } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";

const options: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };

const season = [6.0, 6.12, 5.9, 6.05].flatMap((mass, i) =>
  aFill(
    [
      [20, mass],
      [20, mass * 1.012],
      [20, mass * 0.99],
    ],
    { fill: i + 1 },
  ),
);

describe("the next-catch curve", () => {
  it("starts with the prediction interval for the next fill: skipping and predicting are one thing", () => {
    const meter = present(fitModel(season, options).meters[0]);
    const { interval, value } = meter.across.nextFill;
    const [skip] = curveOf(meter, options).points;
    expect(present(skip).halfWidth).toBeCloseTo(
      (present(present(interval).upper) - value) / value,
      14,
    );
    expect(present(skip).basis).toBe("history");
  });

  it("falls with every catch and with more turns, and rises with the level", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 60 }),
        fc.double({ min: 0.5, max: 0.98, noNaN: true }),
        (turns, level) => {
          const at = (given: ModelOptions, t: number) =>
            curveOf(present(fitModel(season, given).meters[0]), given, { turnsPerCatch: t })
              .points.slice(1)
              .map(({ halfWidth }) => present(halfWidth));
          const widths = at({ ...options, level }, turns);
          for (const [i, width] of widths.entries()) {
            if (i > 0) expect(width).toBeLessThan(present(widths[i - 1]));
            expect(width).toBeGreaterThan(present(at({ ...options, level }, turns + 5)[i]));
            expect(width).toBeLessThan(present(at({ ...options, level: level + 0.01 }, turns)[i]));
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  it("has even odds where the half-width at level 50 % is the tolerance", () => {
    const half = { ...options, level: 0.5 };
    const meter = present(fitModel(season, half).meters[0]);
    const width = present(curveOf(meter, half).points[2]).halfWidth;
    const at = { ...half, tolerance: present(width) };
    expect(present(curveOf(meter, at).points[2]).chanceOffTolerance).toBeCloseTo(0.5, 12);
  });

  it("is unknown at zero catches without history, and everywhere without any scatter", () => {
    const lone = present(
      fitModel(
        aFill([
          [20, 6],
          [20, 6.1],
        ]),
        options,
      ).meters[0],
    );
    expect(present(curveOf(lone, options).points[0]).basis).toBe("unknown");
    expect(present(curveOf(lone, options).points[1]).halfWidth).toBeGreaterThan(0);
    const single = present(fitModel(aFill([[20, 6]]), options).meters[0]);
    expect(curveOf(single, options).points.every(({ halfWidth }) => halfWidth === null)).toBe(true);
    expect(curveOf(single, options).catchesForTolerance).toBeNull();
  });

  it("says when one catch tells less than the earlier fills", () => {
    const calm = [6.0, 6.01, 5.995, 6.005, 6.0, 6.002, 5.998].flatMap((mass, i) =>
      aFill(
        [
          [20, mass * 1.02],
          [20, mass * 0.98],
        ],
        { fill: i + 1 },
      ),
    );
    const meter = present(fitModel(calm, options).meters[0]);
    expect(curveOf(meter, options).firstCatchTellsLess).toBe(true);
  });
});
