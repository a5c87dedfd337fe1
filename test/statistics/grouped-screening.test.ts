import { describe, expect, test } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { screenGroups } from "../../src/statistics/grouped-screening.ts";
import type { JudgedPoint } from "../../src/statistics/predicting-line.ts";

const rule = {
  pointLevel: 0.999,
  mostShare: 0.2,
  mostOfGroup: (points: number) => (points >= 5 ? 2 : 1),
};

function group(y: readonly number[]): JudgedPoint[] {
  return y.map((value) => ({ x: 20, y: value, knownVariance: 0 }));
}

const quiet = [
  group([6.0, 6.05, 5.97]),
  group([6.3, 6.24, 6.33]),
  group([5.8, 5.86, 5.83]),
  group([6.1, 6.04, 6.09]),
];

describe("screening several lines for one scatter", () => {
  test("sets nothing aside of lines that scatter alike, whatever their slopes", () => {
    expect(screenGroups(quiet, rule)).toEqual([]);
  });

  test("sets a gross point aside, and only that", () => {
    const groups = [...quiet.slice(0, 3), group([6.1, 6.5, 6.09])];
    expect(screenGroups(groups, rule)).toEqual([{ group: 3, index: 1 }]);
  });

  test("finds bad points in several groups that hide each other", () => {
    const groups = [
      group([6.0, 6.55, 5.97]),
      group([6.3, 6.24, 6.83]),
      ...quiet.slice(2),
      group([6.2, 6.16, 6.22, 6.19]),
      group([5.9, 5.93, 5.88, 5.91]),
    ];
    expect(screenGroups(groups, rule)).toHaveLength(2);
    expect(screenGroups(groups, rule)).toEqual(
      expect.arrayContaining([
        { group: 0, index: 1 },
        { group: 1, index: 2 },
      ]),
    );
  });

  test("sets both of a pair aside, because nobody can say which is bad", () => {
    expect(screenGroups([...quiet, group([6, 6.9])], rule)).toEqual([
      { group: 4, index: 0 },
      { group: 4, index: 1 },
    ]);
  });

  test("takes no more of a group than the rule lets it lose", () => {
    const groups = [...quiet, group([6, 6.9, 7.8])];
    expect(screenGroups(groups, rule).filter((one) => one.group === 4)).toHaveLength(1);
  });

  test("has nothing to do without groups, or with single points", () => {
    expect(screenGroups([], rule)).toEqual([]);
    expect(screenGroups([group([6]), group([7])], rule)).toEqual([]);
  });

  test("keeps nearly every good point: p < 0.001 by itself", () => {
    let lost = 0;
    for (let replicate = 0; replicate < 400; replicate++) {
      const random = randomStream(11, replicate);
      const groups = Array.from({ length: 10 }, () =>
        group(Array.from({ length: 4 }, () => 6 + 0.09 * random.normal())),
      );
      lost += screenGroups(groups, rule).length;
    }
    // 16,000 good points at 0.001 each, give or take three standard errors, and a little for going on to the last step.
    expect(lost).toBeGreaterThan(4);
    expect(lost).toBeLessThan(40);
  });
});
