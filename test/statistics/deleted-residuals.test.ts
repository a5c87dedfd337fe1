import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { randomStream } from "../../src/numeric/random.ts";
import {
  allowedP,
  type DeletionStep,
  deletionSteps,
  exceeds,
  familyOf,
  firstLook,
  judgeInFamily,
  limitBelow,
  outlyingOf,
} from "../../src/statistics/deleted-residuals.ts";
import { generalizedEsd, grubbsTest } from "../../src/statistics/outlier-tests.ts";
import { type JudgedPoint, lineOf } from "../../src/statistics/predicting-line.ts";
import { deletedResiduals } from "../support/outliers.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const turns = [20, 15, 30, 20, 30];
const masses = [6.02, 4.51, 9.33, 6.41, 8.98];
const otherTurns = [20, 20, 15, 30];
const otherMasses = [5.7, 5.82, 4.2, 8.61];

function points(x: readonly number[], y: readonly number[], knownVariance = 0): JudgedPoint[] {
  return x.map((value, i) => ({ x: value, y: y[i] ?? 0, knownVariance }));
}

function scatterOf(x: readonly number[], y: readonly number[]) {
  const { variance, df } = lineOf(points(x, y), null);
  return { variance: present(variance), df };
}

describe("deleted residuals of a line through the origin", () => {
  test("are R's rstudent for one fill by itself", async () => {
    const inR = await evalR("rstudent(lm(y ~ 0 + x, weights = 1 / x))", { x: turns, y: masses });
    const found = deletedResiduals(points(turns, masses), null);
    expect(found).toHaveLength(5);
    for (const [i, one] of found.entries()) expect(one.statistic).toBeCloseTo(inR[i] ?? 0, 10);
    expect(found.every(({ df }) => df === 3)).toBe(true);
  });

  test("with lent scatter are R's rstudent in the model with a slope for each fill", async () => {
    const inR = await evalR(
      `fill <- factor(fill); model <- lm(y ~ 0 + x:fill, weights = 1 / x)
       p <- 2 * pt(-abs(rstudent(model)), df.residual(model) - 1)
       c(rstudent(model)[1:5], p[1:5])`,
      {
        x: [...turns, ...otherTurns],
        y: [...masses, ...otherMasses],
        fill: [1, 1, 1, 1, 1, 2, 2, 2, 2],
      },
    );
    const lent = scatterOf(otherTurns, otherMasses);
    const found = deletedResiduals(points(turns, masses), lent);
    for (const [i, one] of found.entries()) {
      expect(one.statistic).toBeCloseTo(inR[i] ?? 0, 9);
      expect(one.pValue).toBeCloseTo(inR[i + 5] ?? 0, 10);
    }
  });

  test("keep their value when masses change unit and points change places", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (unit) => {
        const found = deletedResiduals(points(turns, masses), null);
        const scaled = masses.map((mass) => mass * unit).reverse();
        const again = deletedResiduals(points([...turns].reverse(), scaled), null);
        expect([...again].reverse().map(({ statistic }) => statistic)).toEqual(
          found.map(({ statistic }) => expect.closeTo(statistic, 8)),
        );
      }),
    );
  });

  test("are pulled in by known errors, and never infinite where others agree exactly", () => {
    const agreeing = [6, 6, 6, 6, 6.02];
    const equal = [20, 20, 20, 20, 20];
    expect(deletionSteps(points(equal, agreeing), null, 1)).toEqual([]);
    const read = deletedResiduals(points(equal, agreeing, 0.02 ** 2 / 6), null);
    // One division off is at most √(6·4/5) standard errors of reading, however well the others agree.
    expect(Math.abs(read[4]?.statistic ?? 0)).toBeCloseTo(Math.sqrt((6 * 4) / 5), 6);
  });

  test("refuse fewer than two points, and points that cannot be used", () => {
    const steps = (given: readonly JudgedPoint[]) => () => deletionSteps(given, null, 1);
    expect(steps(points([20], [6]))).toThrow(NumericalError);
    expect(steps(points([0, 20], [6, 6]))).toThrow("x is 0");
    expect(steps(points([20, 20], [6, Number.NaN]))).toThrow("y is NaN");
    expect(steps(points([20, 20], [6, 6], -1))).toThrow("knownVariance");
  });
});

describe("backward deletion", () => {
  test.each([null, scatterOf(otherTurns, otherMasses)])(
    "begins with the largest of them",
    (lent) => {
      const found = deletedResiduals(points(turns, masses), lent);
      const [first] = deletionSteps(points(turns, masses), lent, 1);
      const sizes = found.map(({ statistic }) => Math.abs(statistic));
      const index = sizes.indexOf(Math.max(...sizes));
      expect(first?.index).toBe(index);
      expect(first?.statistic).toBeCloseTo(present(found[index]).statistic, 12);
      expect(first?.pValue).toBeCloseTo(present(found[index]).pValue, 12);
    },
  );

  const equal = (values: readonly number[]) =>
    points(
      values.map(() => 20),
      values,
    );
  const values = [6.02, 5.91, 6.1, 5.97, 6.43, 6.05, 6.44, 5.99];

  test("with equal turns and nothing lent is Grubbs' test and generalized ESD", () => {
    const steps = deletionSteps(equal(values), null, 2);
    const esd = generalizedEsd(values, 2, 0.95);
    expect(steps.map(({ index }) => index)).toEqual(esd.steps.map(({ index }) => index));
    expect(outlyingOf(steps, { level: 0.95 })).toEqual(esd.outliers);
    const grubbs = present(grubbsTest(values, "two-sided", 0.95));
    const first = present(steps[0]);
    expect(judgeInFamily(first, 8, 1, 0.95).pValue).toBeCloseTo(grubbs.pValue, 12);
  });

  test("finds two bad points that hide each other, and leaves the good ones", () => {
    const hidden = [6.0, 6.02, 5.99, 6.01, 6.4, 6.42, 6.0, 5.98];
    const steps = deletionSteps(equal(hidden), null, 2);
    expect(present(steps[0]).pValue * 8).toBeGreaterThan(0.05);
    expect([...outlyingOf(steps, { level: 0.95 })].sort()).toEqual([4, 5]);
  });

  test("takes a pair as one test with one statistic", () => {
    const lent = { variance: 0.002, df: 10 };
    const pair = deletedResiduals(equal([6, 6.5]), lent);
    expect(pair[0]?.statistic).toBeCloseTo(-(pair[1]?.statistic ?? 0), 12);
    expect([familyOf(1), familyOf(2), familyOf(3)]).toEqual([0, 1, 3]);
    expect(outlyingOf(deletionSteps(equal([6, 6.9]), lent, 1), { level: 0.95 })).toHaveLength(1);
  });

  test("gives a later look only the share it is allowed", () => {
    const hidden = [6.0, 6.02, 5.99, 6.01, 6.4, 6.42, 6.0, 5.98];
    const steps = deletionSteps(equal(hidden), null, 2);
    const second = present(steps[1]);
    const justTooSmall = (0.99 * second.pValue * second.remaining) / 0.05;
    expect(outlyingOf(steps, { level: 0.95, laterShare: justTooSmall })).toEqual([]);
    expect(outlyingOf(steps, { level: 0.95, laterShare: 1.02 * justTooSmall })).toHaveLength(2);
  });

  test("has the critical value of Student's t in R", async () => {
    const [critical = 0] = await evalR("qt(1 - 0.025 / 2 / 7, 14)");
    const found = judgeInFamily({ df: 14, pValue: 0.001 }, 7, 0.5, 0.95);
    expect(found.criticalValue).toBeCloseTo(critical, 10);
    expect(found.pValue).toBeCloseTo(0.014, 12);
  });

  test("makes no step where there is no scatter to compare with", () => {
    expect(deletionSteps(equal([6, 6, 6, 6, 7]), null, 2)).toEqual([]);
    expect(deletionSteps(equal([6, 7]), null, 1)).toEqual([]);
    expect(() => deletionSteps(equal([6]), null, 1)).toThrow(NumericalError);
  });
});

describe("a first look", () => {
  const rules = [
    { level: 0.95 },
    { level: 0.8, laterShare: 0.25 },
    { level: 0.9, comparisons: (remaining: number) => 2 * remaining },
  ];
  const drawn = (seed: number, count: number): JudgedPoint[] => {
    const random = randomStream(seed);
    return Array.from({ length: count }, (_, i) => {
      const x = random.integer(10, 40);
      const odd = i % 5 === 0 ? 3 : 1;
      return { x, y: 0.3 * x + odd * 0.02 * Math.sqrt(x) * random.normal(), knownVariance: 0 };
    });
  };

  test.each(rules)("sees something exactly where a step exceeds: %o", (rule) => {
    const seen = new Set<string>();
    for (const outside of [null, { variance: 4e-4, df: 6 }])
      for (let seed = 1; seed <= 60; seed++)
        for (const most of [1, 2, 3]) {
          const given = drawn(seed, 3 + (seed % 6));
          const some = deletionSteps(given, outside, most).some((step, i) =>
            exceeds(step, i, rule),
          );
          const look = firstLook(given, outside, most, rule);
          expect(look).toBe(some ? "something may" : "nothing stands out");
          seen.add(look);
        }
    expect(seen.size).toBe(2);
  });

  test("may see more, and never less, where degrees of freedom are no whole number", () => {
    let more = 0;
    // 5.5 in all, judged as 6, and 3.1, judged as 4.
    for (const df of [2.5, 0.1])
      for (let seed = 1; seed <= 400; seed++) {
        const outside = { variance: 4e-4, df };
        const given = drawn(seed, 5);
        const [rule] = rules;
        const some = deletionSteps(given, outside, 2).some((step, i) =>
          exceeds(step, i, rule ?? { level: 0.95 }),
        );
        const look = firstLook(given, outside, 2, { level: 0.95 });
        if (some) expect(look).toBe("something may");
        else if (look === "something may") more++;
      }
    expect(more).toBeGreaterThan(0);
  });

  test("has nothing to compare with where the others do not scatter, at the first step and later", () => {
    const equal = (y: readonly number[]) =>
      points(
        y.map(() => 20),
        y,
      );
    const look = (y: readonly number[], most: number) =>
      firstLook(equal(y), null, most, { level: 0.95 });
    expect(look([6, 6, 6, 6], 1)).toBe("no scatter to compare with");
    expect(look([6, 7], 1)).toBe("no scatter to compare with");
    expect(look([6, 6.1, 6.3], 2)).toBe("nothing stands out");
    expect(look([6, 6.1, 6.3], 0)).toBe("nothing stands out");
  });

  test("knows a limit just below |t| of a p value as R's qt has it, of the next whole number of df", async () => {
    const [at7 = 0, at8 = 0, at75 = 0, z = 0] = await evalR("qt(1 - 0.004 / 2, c(7, 8, 7.5, Inf))");
    const justBelow = (limit: number, t: number) => {
      expect(limit).toBeLessThan(t);
      expect(limit).toBeCloseTo(t, 7);
    };
    justBelow(limitBelow(0.004, 7), at7);
    justBelow(limitBelow(0.004, 7.5), at8);
    justBelow(limitBelow(0.004, Number.POSITIVE_INFINITY), z);
    expect(limitBelow(0.004, 7.5)).toBeLessThan(at75);
  });
});

describe("the p value that a step is allowed", () => {
  const step = (pValue: number, remaining: number): DeletionStep => ({
    ...{ index: 0, remaining, slope: 1, residual: 1, standardError: 1, statistic: 1, df: 3 },
    pValue,
  });

  test("is the family's chance by its tests, and less of it later", () => {
    expect(allowedP(8, 0, { level: 0.95 })).toBeCloseTo(0.05 / 8, 14);
    expect(allowedP(2, 0, { level: 0.95 })).toBeCloseTo(0.05, 14);
    expect(allowedP(8, 1, { level: 0.95, laterShare: 0.2 })).toBeCloseTo(0.01 / 8, 14);
    expect(allowedP(8, 0, { level: 0.95, laterShare: 0.2 })).toBeCloseTo(0.05 / 8, 14);
    expect(allowedP(8, 3, { level: 0.9, comparisons: () => 4 })).toBeCloseTo(0.1 / 4, 14);
  });

  test("is what a step must lie below", () => {
    const rule = { level: 0.75, comparisons: () => 4, laterShare: 0.5 };
    expect(exceeds(step(0.0624, 5), 0, rule)).toBe(true);
    expect(exceeds(step(0.0625, 5), 0, rule)).toBe(false);
    expect(exceeds(step(0.0312, 5), 1, rule)).toBe(true);
    expect(exceeds(step(0.03125, 5), 1, rule)).toBe(false);
  });

  test("raises a p value to no more than 1", () => {
    expect(judgeInFamily({ df: 5, pValue: 0.4 }, 3, 1, 0.95).pValue).toBe(1);
    expect(judgeInFamily({ df: 5, pValue: 0.3 }, 3, 1, 0.95).pValue).toBeCloseTo(0.9, 12);
    expect(judgeInFamily({ df: 5, pValue: 0.3 }, 3, 1, 0.95).comparisons).toBe(3);
  });
});

test("stops at the number of steps asked for, and at one point left", () => {
  const given = points([20, 20, 30, 25], [6, 6.1, 9.3, 7.2]);
  const lent = { variance: 0.001, df: 9 };
  expect(deletionSteps(given, lent, 0)).toEqual([]);
  const all = deletionSteps(given, lent, 9);
  expect(all.map(({ remaining }) => remaining)).toEqual([4, 3, 2]);
  expect(new Set(all.map(({ index }) => index)).size).toBe(3);
});
