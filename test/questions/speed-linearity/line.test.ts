import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { speedLine, speedsWithin } from "../../../src/questions/speed-linearity/line.ts";
import type { SpeedSlope } from "../../../src/questions/speed-linearity/result.ts";
import { speedLinearity } from "../../../src/questions/speed-linearity.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

const slope = (value: number, half: number | null) =>
  ({
    estimate: {
      value,
      interval: half === null ? null : { lower: value - half, upper: value + half },
    },
  }) as SpeedSlope;

describe("the line over meter speeds", () => {
  it("runs from the lowest to the highest speed, one at the reference, its band widest at the ends", () => {
    const line = speedLine(slope(0.002, 0.001), 40, { from: 20, to: 68 });
    expect(line).toHaveLength(25);
    expect(line.map(({ turnsPerMin }) => turnsPerMin).slice(0, 3)).toEqual([20, 22, 24]);
    expect(line.at(-1)?.turnsPerMin).toBe(68);
    // 20 below: 1 − 0.04, between 1 − 0.06 and 1 − 0.02; 28 above: 1 + 0.056.
    expect(line[0]).toMatchObject({
      relative: expect.closeTo(0.96, 12),
      lower: expect.closeTo(0.94, 12),
      upper: expect.closeTo(0.98, 12),
    });
    expect(line.at(-1)).toMatchObject({
      relative: expect.closeTo(1.056, 12),
      lower: expect.closeTo(1.028, 12),
      upper: expect.closeTo(1.084, 12),
    });
    expect(line[10]).toEqual({ turnsPerMin: 40, relative: 1, lower: 1, upper: 1 });
  });

  it("stays within the tolerance so far as it is steep, and no farther than speeds were caught", () => {
    const caught = { from: 20, to: 60 };
    // 0.03 ÷ 0.002 = 15 to either side; surely 0.03 ÷ 0.003 = 10.
    expect(speedsWithin(slope(0.002, 0.001), 40, caught, 0.03)).toEqual({
      estimated: { from: 25, to: 55 },
      sure: { from: expect.closeTo(30, 9), to: expect.closeTo(50, 9) },
    });
    expect(speedsWithin(slope(-0.002, 0.001), 40, caught, 0.03).sure.from).toBeCloseTo(30, 9);
    expect(speedsWithin(slope(0.001, null), 40, caught, 0.03)).toEqual({
      estimated: caught,
      sure: caught,
    });
    expect(speedsWithin(slope(0, null), 40, caught, 0.03).estimated).toEqual(caught);
    expect(speedsWithin(slope(0.002, 0.001), 24, caught, 0.03).estimated).toEqual({
      from: 20,
      to: 39,
    });
  });
});

/** Fills of catches of 20 turns: speed and net mass. */
type Fills = readonly (readonly (readonly [number | null, number])[])[];

describe("what keeps a slope from being told", () => {
  const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.01 };

  const asked = (...fills: Fills) => {
    const catches = fills.flatMap((pairs, i) =>
      pairs.map(([meterRpm, netKg], place) =>
        present(aFill([[20, netKg]], { fill: i + 1, catch: place + 1, meterRpm })[0]),
      ),
    );
    return speedLinearity(present(fitModel(catches, options).meters[0]), options);
  };
  const why = (...fills: Fills) => {
    const answer = asked(...fills);
    return answer === null
      ? null
      : [answer.slope === null, ...answer.cautions.map(({ code, facts }) => [code, facts])];
  };

  it("is told by what is missing first", () => {
    expect(
      why([
        [null, 6],
        [null, 6.1],
      ]),
    ).toBeNull();
    expect(
      why([
        [40, 6],
        [40, 6.1],
        [40, 6.2],
        [40, 6.1],
      ]),
    ).toEqual([true, ["one-meter-speed", { turnsPerMin: 40 }]]);
    expect(
      why([
        [40, 6],
        [47.9, 6.1],
        [40, 6.2],
        [44, 6.1],
      ]),
    ).toEqual([true, ["speeds-too-alike", { lower: 40, upper: 47.9 }]]);
    expect(
      why(
        [
          [40, 6],
          [40, 6.1],
        ],
        [
          [60, 6.2],
          [60, 6.1],
        ],
      ),
    ).toEqual([true, ["speed-never-varied-within-a-fill", { fills: 2 }]]);
    expect(
      why([
        [40, 6],
        [60, 6.1],
        [40, 6.2],
      ]),
    ).toEqual([true, ["too-few-for-speed", { catches: 3, needed: 4 }]]);
    // Two telling fills of two need two levels, a slope and one more: four are enough.
    expect(
      asked(
        [
          [40, 6],
          [60, 6.1],
        ],
        [
          [40, 6.02],
          [60, 6.15],
        ],
      )?.slope,
    ).not.toBeNull();
    expect(
      why([
        [40, 6],
        [60, 6],
        [40, 6],
        [60, 6],
      ]),
    ).toEqual([true, ["speed-catches-agree", { catches: 4 }]]);
  });

  it("is nothing at a highest speed of 1.2 times the lowest, and four catches", () => {
    expect(
      asked([
        [40, 6],
        [48, 6.1],
        [40, 6.05],
        [44, 6.1],
      ])?.slope,
    ).not.toBeNull();
    const { input, caught, reference } = present(
      asked([
        [40, 6],
        [50, 6.1],
        [40, 6.05],
        [null, 6],
        [44, 6.1],
      ]),
    );
    expect(input).toEqual({ catches: 4, fills: 1, withoutSpeed: 1 });
    expect(caught).toEqual({ from: 40, to: 50 });
    expect(reference).toBeCloseTo(43.5, 12);
  });
});
