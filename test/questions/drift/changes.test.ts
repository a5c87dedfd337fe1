import { linearRegression, mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import type { HistoryStatus } from "../../../src/model/history.ts";
import { fitModel } from "../../../src/model/model.ts";
import { byName } from "../../../src/questions/drift/by-name.ts";
import { changesOf, changeTests } from "../../../src/questions/drift/changes.ts";
import { nextSteps } from "../../../src/questions/drift/verdict.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

const fillsOf = (deliveries: readonly number[]) =>
  present(
    fitModel(
      deliveries.flatMap((each, i) =>
        aFill([[20, 20 * each]], {
          fill: i + 1,
          takenAt: `2026-04-${String(i + 1).padStart(2, "0")}`,
        }),
      ),
    ).meters[0],
  ).fills;

// Four fills about 0.3 and three about 0.36.
const deliveries = [0.3, 0.302, 0.299, 0.301, 0.36, 0.359, 0.362];

describe("what is asked once of a season", () => {
  const fills = fillsOf(deliveries);
  const tests = changeTests(fills);
  const { trend, shift } = changesOf(tests, fills, 0.95);

  it("is a slope from five fills on, and a shift from six", () => {
    const asked = (count: number) => {
      const found = changeTests(fillsOf(deliveries.slice(0, count)));
      return [found.trend !== null, found.shift !== null];
    };
    expect([4, 5, 6].map(asked)).toEqual([
      [false, false],
      [true, false],
      [true, true],
    ]);
    expect(changesOf({ trend: null, shift: null }, fills, 0.95)).toEqual({
      trend: null,
      shift: null,
    });
  });

  it("tells the slope by least squares on the order, and relative to the mean", () => {
    const { m, b } = linearRegression(deliveries.map((each, i) => [i + 1, each]));
    expect(trend?.perFill.value).toBeCloseTo(m, 12);
    expect(trend?.line.start).toBeCloseTo(b + m, 12);
    expect(trend?.line.end).toBeCloseTo(b + 7 * m, 12);
    const middle = mean([...deliveries]);
    for (const [name, part] of [
      ["value", "value"],
      ["standardError", "standardError"],
    ] as const)
      expect(present(trend?.relativePerFill[name])).toBeCloseTo(
        present(trend?.perFill[part]) / middle,
        12,
      );
    const [absolute, relative] = [
      present(trend?.perFill.interval),
      present(trend?.relativePerFill.interval),
    ];
    expect(relative.lower).toBeCloseTo(present(absolute.lower) / middle, 12);
    expect(relative.upper).toBeCloseTo(present(absolute.upper) / middle, 12);
    expect(trend?.df).toBe(5);
  });

  it("tells the shift where the means differ most, and relative to the mean before", () => {
    const before = mean(deliveries.slice(0, 4));
    const after = mean(deliveries.slice(4));
    expect(shift).toMatchObject({
      fillsBefore: 4,
      fillsAfter: 3,
      since: { fill: 5, takenAt: "2026-04-05" },
    });
    expect(shift?.before).toBeCloseTo(before, 12);
    expect(shift?.after).toBeCloseTo(after, 12);
    expect(shift?.size.value).toBeCloseTo(after - before, 12);
    expect(shift?.relativeSize.value).toBeCloseTo(after / before - 1, 12);
    expect(present(shift?.relativeSize.standardError)).toBeCloseTo(
      present(shift?.size.standardError) / before,
      12,
    );
    const [absolute, relative] = [
      present(shift?.size.interval),
      present(shift?.relativeSize.interval),
    ];
    expect(relative.lower).toBeCloseTo(present(absolute.lower) / before, 12);
    expect(relative.upper).toBeCloseTo(present(absolute.upper) / before, 12);
    expect(present(absolute.lower)).toBeLessThan(after - before);
    expect(present(absolute.upper)).toBeGreaterThan(after - before);
  });

  it("has both p-values adjusted together by Holm's method", () => {
    const [one, other] = [present(tests.trend), present(tests.shift)];
    const [smaller, larger] = [one, other].sort((a, b) => a.pValue - b.pValue);
    expect(smaller?.adjustedPValue).toBeCloseTo(Math.min(1, 2 * present(smaller).pValue), 14);
    expect(larger?.adjustedPValue).toBeCloseTo(
      Math.max(present(larger).pValue, present(smaller?.adjustedPValue)),
      14,
    );
  });
});

describe("methods by name", () => {
  it("are asked of 4 to 500 fills", () => {
    const asked = (count: number) =>
      byName(fillsOf(Array.from({ length: count }, (_, i) => 0.3 + 0.001 * ((7 * i) % 5)))) !==
      null;
    expect([3, 4, 500, 501].map(asked)).toEqual([false, true, true, false]);
  });

  it("have limits 2.66 mean moving ranges from the mean, and name the fills outside", () => {
    const named = present(byName(fillsOf([0.3, 0.301, 0.3, 0.301, 0.3, 0.301, 0.3, 0.32])));
    // Moving ranges: six of 0.001 and one of 0.02, mean 0.026 ÷ 7; mean of fills 2.423 ÷ 8.
    const [center, range] = [2.423 / 8, 0.026 / 7];
    expect(named.individuals.center).toBeCloseTo(center, 12);
    expect(named.individuals.meanMovingRange).toBeCloseTo(range, 12);
    expect(named.individuals.lower).toBeCloseTo(center - 2.66 * range, 4);
    expect(named.individuals.upper).toBeCloseTo(center + 2.66 * range, 4);
    expect(named.individuals.outside).toEqual([8]);
    // Slopes between pairs of a straight line are all its own.
    expect(byName(fillsOf([0.3, 0.31, 0.32, 0.33]))?.theilSenPerFill).toBeCloseTo(0.01, 12);
  });
});

describe("what to do next", () => {
  it.each<[HistoryStatus, readonly string[]]>([
    ["too few fills", ["collect fills"]],
    ["not asked", ["carry on"]],
    ["steady", ["carry on"]],
    ["stood apart", ["carry on"]],
    ["fill differs", ["catch again"]],
    ["fill differs, confirmed", ["set by this fill", "look for the cause"]],
    ["moved", ["set by this fill", "look for the cause"]],
    ["trending", ["catch every fill", "look for the cause"]],
  ])("where a meter is %s", (status, steps) => {
    expect(nextSteps(status)).toEqual(steps);
  });
});
