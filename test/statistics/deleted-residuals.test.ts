import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import {
  deletionSteps,
  familyOf,
  judgeInFamily,
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
