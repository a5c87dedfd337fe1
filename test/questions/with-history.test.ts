import { describe, expect, it } from "vitest";
import { curveOf, fitModel } from "../../src/model/model.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { withHistory } from "../../src/questions/with-history.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";

const options = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.02,
  varianceLaw: "proportional",
} as const;

const fillsOf = (masses: readonly number[]) =>
  masses.flatMap((mass, i) =>
    aFill(
      [
        [20, mass * 1.01],
        [20, mass * 0.985],
        [20, mass],
      ],
      { fill: i + 1 },
    ),
  );

function ask(masses: readonly number[], moved = false) {
  const meter = present(fitModel(fillsOf(masses), options).meters[0]);
  const today = delivery(meter, options);
  return { today, meter, answer: withHistory(meter, today, moved) };
}

const steady = [6, 6.08, 5.95, 6.05, 5.98, 6.02, 6.01];

describe("withHistory", () => {
  it("is narrower than today's catches alone and lies between today and the earlier fills", () => {
    const { today, answer } = ask(steady);
    const { value, interval } = present(answer.estimate);
    const own = present(today.estimate.interval);
    const width = present(interval?.upper) - present(interval?.lower);
    expect(width).toBeLessThan(present(own.upper) - present(own.lower));
    expect(answer.earlierFills).toBe(6);
    expect(value).toBeGreaterThan(0.29);
  });

  it.each([
    ["too few earlier fills", steady.slice(0, 6), false],
    ["the meter has moved", steady, true],
  ] as const)("is refused: %s", (refused, masses, moved) => {
    expect(ask(masses, moved).answer).toMatchObject({ estimate: null, refused });
  });

  it("as a curve is never above the plain one from one catch on, and is refused below six fills", () => {
    const { meter } = ask(steady);
    const plain = curveOf(meter, options).points;
    const combined = curveOf(meter, options, { withHistory: true }).points;
    expect(combined[0]).toEqual(plain[0]);
    for (const [i, point] of combined.entries())
      if (i > 0) {
        expect(present(point.halfWidth)).toBeLessThan(present(plain[i]?.halfWidth));
        expect(present(point.chanceOffTolerance)).toBeLessThan(
          present(plain[i]?.chanceOffTolerance),
        );
      }
    const short = ask(steady.slice(0, 5)).meter;
    expect(() => curveOf(short, options, { withHistory: true })).toThrow("false below 6 fills");
  });
});
