import { describe, expect, it } from "vitest";
import { earlyFillCell } from "../../bench/study/outliers/early-fill.ts";
import { simulateFill, usualScene } from "../../bench/study/outliers/simulate.ts";
import { analyse } from "../../src/analysis/analyse.ts";
import { augment } from "../../src/analysis/tables/catches.ts";
import type { Catch } from "../../src/data/types.ts";
import { metersOf as metersIn } from "../../src/model/meters.ts";
import { fitModel, type MeterModel } from "../../src/model/model.ts";
import {
  findInFill,
  judgedPoint,
  laterShare,
  outlyingIn,
  testsOf,
} from "../../src/model/screening/finding.ts";
import { totalsOf } from "../../src/model/totals.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import { outliersOptions } from "../../src/questions/outliers/options.ts";
import { outliers } from "../../src/questions/outliers.ts";
import { deletionSteps, outlyingOf } from "../../src/statistics/deleted-residuals.ts";
import { aCatch, aLog } from "../support/catches.ts";
import { fillOf } from "../support/outliers.ts";
import { present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: null };
const modelOf = (rows: readonly Catch[]) => fitModel(rows, options);
const meterOf = (...fills: readonly (readonly Catch[])[]): MeterModel =>
  present(modelOf(fills.flat()).meters[0]);

const tableOf = (rows: readonly Catch[]) => augment(aLog(rows), analyse(aLog(rows), null, options));

/** Five quiet fills; the third has a bag that was not emptied. */
const masses = [
  [6.01, 5.93, 6.06, 5.98],
  [6.21, 6.3, 6.25, 6.18],
  [5.88, 11.66, 5.9, 5.84],
  [6.11, 6.02, 6.07, 6.16],
  [5.95, 6.04, 5.99, 5.92],
] as const;
const season = masses.map((ofFill, i) => fillOf(i + 1, ofFill));
const asNumbers = { y: masses.flat(), x: Array(20).fill(20), fill: fillNumbers() };

const findingOf = (meter: MeterModel, place: number) => present(meter.screening.findings[place]);
const asideIn = (meter: MeterModel, place: number) =>
  findingOf(meter, place).setAside.map((row) => row.catch);

function fillNumbers(): readonly number[] {
  return masses.flatMap((ofFill, i) => ofFill.map(() => i + 1));
}

describe("a catch of an earlier fill beyond doubt", () => {
  const meter = meterOf(...season);
  const third = present(meter.fills[2]);

  it("leaves its fill; what was found keeps the fill with it", () => {
    expect(third.catches.map((row) => row.catch)).toEqual([1, 3, 4]);
    expect(third.totals).toMatchObject({ catches: 3, turns: 60 });
    expect(third.totals.massKg).toBeCloseTo(17.62, 12);
    expect(third.delivery).toBeCloseTo(17.62 / 60, 12);
    const found = findingOf(meter, 2);
    expect(asideIn(meter, 2)).toEqual([2]);
    expect(found.fill.catches.map((row) => row.catch)).toEqual([1, 2, 3, 4]);
    expect(found.fill.totals).toMatchObject({ catches: 4, turns: 80 });
    expect(found.fill.totals.massKg).toBeCloseTo(29.28, 12);
    expect(found.fill.delivery).toBeCloseTo(29.28 / 80, 12);
    const { catches } = outliers(meter, outliersOptions(options));
    const judged = present(catches.find((row) => row.fill === 3 && row.catch === 2));
    expect(judged.relativeResidual).toBeCloseTo(11.66 / (17.62 / 3) - 1, 12);
  });

  it("leaves all that rests on means: mean over fills, spread, the band for the next", async () => {
    const deliveries = masses.map((ofFill, i) => {
      const kept = i === 2 ? [5.88, 5.9, 5.84] : [...ofFill];
      return kept.reduce((a, b) => a + b) / kept.length / 20;
    });
    const mean = deliveries.reduce((a, b) => a + b) / 5;
    const sd = Math.sqrt(deliveries.reduce((a, b) => a + (b - mean) ** 2, 0) / 4);
    expect(meter.across.mean.value).toBeCloseTo(mean, 12);
    expect(meter.across.catches).toBe(19);
    const [t = 0] = await evalR("qt(0.975, 4)");
    const half = (value: MeterModel["across"]["nextFill"]) =>
      present(value.interval?.upper) - value.value;
    expect(half(meter.across.nextFill)).toBeCloseTo(t * sd * Math.sqrt(1.2), 9);
    const whole = present(meter.withAll);
    expect(whole.mean.value).toBeCloseTo(mean + (29.28 / 80 - 17.62 / 60) / 5, 12);
    expect(whole.nextFillHalfWidth).toBeCloseTo(half(whole.nextFill) / whole.mean.value, 12);
    const all = deliveries.map((value, i) => (i === 2 ? 29.28 / 80 : value));
    const center = all.reduce((a, b) => a + b) / 5;
    const spread = Math.sqrt(all.reduce((a, b) => a + (b - center) ** 2, 0) / 4);
    expect(half(whole.nextFill)).toBeCloseTo(t * spread * Math.sqrt(1.2), 9);
    expect(half(whole.nextFill)).toBeGreaterThan(3 * half(meter.across.nextFill));
  });

  it("has the p value that R gives it among all catch tests of the log", async () => {
    // The vote of the four other fills, each at its own delivery, for this one at the delivery of all its catches.
    const [pValue = 0] = await evalR(
      `${votesInR}
       others <- tapply(y, fill, function(m) squares(m, rep(20, 4)))[-3]
       prior <- prior.of(vote.of.own.fills(sum(others) / 12, 12, 4))
       own <- y[fill == 3]
       rest <- moderated(c(prior[1], prior[2] * (sum(own) / 80)^2), var(own[-2]) / 20, 2)
       20 * 2 * pt(-abs(own[2] - mean(own[-2])) / sqrt(rest[2] * 20 * (1 + 1 / 3)), rest[1])`,
      asNumbers,
    );
    expect(meter.screening.testsInLog).toBe(20);
    const { catches } = outliers(meter, outliersOptions(options));
    const judged = present(catches.find((row) => row.fill === 3 && row.catch === 2)?.inLog);
    expect(judged.pValue).toBeLessThan(0.01);
    expect(judged.pValue / pValue).toBeCloseTo(1, 6);
  });

  it("is in the tidy table of catches, marked, and in no answer's points", () => {
    const rows = tableOf(season.flat());
    expect(rows.filter(({ set_aside }) => set_aside).map((row) => [row.fill, row.catch])).toEqual([
      [3, 2],
    ]);
    expect(rows).toHaveLength(20);
    expect(rows.find(({ set_aside }) => set_aside)?.leverage).toBeNull();
    const points = acrossFills(meter, options).points;
    expect(points.map(({ catches }) => catches)).toEqual([4, 4, 3, 4, 4]);
  });

  it("does not speak for the scatter of other fills either, and takes a degree of freedom with it", () => {
    expect(third.notLent).toEqual(findingOf(meter, 2).setAside);
    expect(meter.scatter.df).toBe(14);
    expect(meter.screening.scatterOfAll.df).toBe(15);
    const clean = meterOf(...season.map((fill) => fill.filter(({ netKg }) => netKg < 7)));
    expect(meter.scatter).toEqual(clean.scatter);
  });

  it("stays when somebody looked at it: it counts in every figure, scatter too", () => {
    const looked = season.map((fill) =>
      fill.map((row) => (row.netKg > 7 ? { ...row, checked: "bag weighed again" } : row)),
    );
    const kept = meterOf(...looked);
    expect(asideIn(kept, 2)).toEqual([]);
    expect(kept.fills[2]?.delivery).toBeCloseTo(29.28 / 80, 12);
    expect(kept.withAll).toBeNull();
    expect(kept.scatter.df).toBe(15);
  });

  it("of the newest fill is never set aside, however wild", () => {
    const newest = meterOf(
      ...season.filter((_, i) => i !== 2),
      fillOf(6, [5.88, 11.66, 5.9, 5.84]),
    );
    const last = present(newest.fills.at(-1));
    expect(last.catches).toHaveLength(4);
    expect(asideIn(newest, 4)).toEqual([]);
    expect(last.delivery).toBeCloseTo(29.28 / 80, 12);
    expect(last.notLent.map((row) => row.catch)).toEqual([2]);
  });

  it("is told among the tests of every meter of the log", () => {
    const mild = season.map((fill) =>
      fill.map((row) => (row.netKg > 7 ? { ...row, netKg: 6.18 } : row)),
    );
    const alone = meterOf(...mild);
    expect(asideIn(alone, 2)).toHaveLength(1);
    const others = Array.from({ length: 12 }, (_, i) =>
      mild.flatMap((fill) =>
        fill.map((row) => ({
          ...row,
          bin: `other ${i}`,
          netKg: row.fill === 3 && row.catch === 2 ? 5.9 : row.netKg,
        })),
      ),
    );
    const together = present(modelOf([...mild.flat(), ...others.flat()]).meters[0]);
    expect(together.screening.testsInLog).toBe(13 * 20);
    expect(asideIn(together, 2)).toEqual([]);
    // By itself it fails at 1 %, so it is not lent to others all the same.
    expect(together.fills[2]?.notLent.map((row) => row.catch)).toEqual([2]);
  });
});

describe("two catches of an earlier fill that disagree beyond doubt", () => {
  const pairs = [
    [6.01, 5.93],
    [6.21, 6.3],
    [5.88, 11.66],
    [6.11, 6.02],
    [5.95, 6.04],
    [6.05, 6.0],
  ].map((ofFill, i) => fillOf(i + 1, ofFill));

  it("take their fill out of the season, because nobody can say which one is wrong", () => {
    const meter = meterOf(...pairs);
    expect(meter.fills.map(({ fill }) => fill)).toEqual([1, 2, 4, 5, 6]);
    expect(meter.across.fills).toBe(5);
    expect(meter.screening.findings.map(({ fill }) => fill.fill)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(asideIn(meter, 2)).toEqual([1, 2]);
    const rows = tableOf(pairs.flat());
    expect(rows.filter(({ set_aside }) => set_aside).map((row) => [row.fill, row.catch])).toEqual([
      [3, 1],
      [3, 2],
    ]);
  });
});

describe("a season's power and false alarms", () => {
  const replicates = 150;
  const seed = 20_261_201;

  it("a bag not emptied in the third fill hides a shift of 10 % no more: found as often as without it", () => {
    const clean = earlyFillCell(
      { catches: 3, shift: 0.1, bad: false, tails: "normal" },
      replicates,
      seed,
    );
    const bad = earlyFillCell(
      { catches: 3, shift: 0.1, bad: true, tails: "normal" },
      replicates,
      seed,
    );
    expect(clean.found).toBeGreaterThan(0.9);
    expect(Math.abs(bad.found - clean.found)).toBeLessThanOrEqual(0.02);
    expect(bad.foundWithAll).toBeLessThan(0.02);
    expect(Math.abs(bad.nextFill - clean.nextFill)).toBeLessThan(0.005);
    expect(bad.nextFillWithAll).toBeGreaterThan(0.2);
  });

  it("in clean seasons about one catch in a hundred seasons is set aside, and figures stay", () => {
    let setAside = 0;
    const seasons = 400;
    for (let replicate = 0; replicate < seasons; replicate++) {
      const random = randomStream(seed + 1, replicate);
      const rows = Array.from({ length: 9 }, (_, i) =>
        simulateFill(usualScene, i + 1, 4, random),
      ).flat();
      const meter = present(modelOf(rows).meters[0]);
      const { findings } = meter.screening;
      const aside = findings.flatMap((found) => found.setAside).length;
      if (aside === 0)
        expect(meter.fills.map(({ totals }) => totals)).toEqual(
          findings.map(({ fill }) => fill.totals),
        );
      setAside += aside;
    }
    // Three standard errors of a rate of 0.01.
    expect(setAside / seasons).toBeLessThan(0.01 + 3 * Math.sqrt(0.01 / seasons));
  });
});

it("tests catches by themselves from five on, with others' scatter a pair once and three or more each", () => {
  const outside = { variance: 0.001, df: 6 };
  const counts = [0, 1, 2, 3, 4, 5, 6];
  expect(counts.map((catches) => testsOf(catches, null))).toEqual([0, 0, 0, 0, 0, 5, 6]);
  expect(counts.map((catches) => testsOf(catches, outside))).toEqual([0, 0, 1, 3, 4, 5, 6]);
});

it("finds up to one of four catches, and up to two of five, before it says there may be more", () => {
  const outside = { variance: 1e-5, df: 40 };
  const found = (given: readonly number[]) =>
    findInFill(present(metersIn(fillOf(1, given))[0]?.fills[0]), outside, true, {
      divisionKg: null,
      testsInLog: 5,
    });
  const four = found([6, 6.01, 8, 9.5]);
  expect(four.inFill.map((row) => row.catch)).toHaveLength(1);
  expect(four.moreThanCanBeTold).toBe(true);
  const five = found([6, 6.01, 6.02, 8, 9.5]);
  expect(five.inFill.map((row) => row.catch).toSorted()).toEqual([4, 5]);
  expect(five.moreThanCanBeTold).toBe(false);
  expect(found([6, 6.01, 6.02, 6.01]).inFill).toEqual([]);
});

it("says that there may be more where catches that are alone in the log scatter grossly and hide each other", () => {
  const alone = (...given: readonly number[]) =>
    findInFill(present(metersIn(fillOf(1, given))[0]?.fills[0]), null, true, {
      divisionKg: null,
      testsInLog: given.length,
    });
  const hidden = [6.3, 6.5, 6.4, 6.42, 6.45, 9.8, 3.2, 12.8];
  expect(alone(...hidden)).toMatchObject({ inFill: [], moreThanCanBeTold: true });
  // R: sd(x)/mean(x) is .08932 and .09012.
  expect(alone(9, 10, 11, 9, 10.6, 10.85).moreThanCanBeTold).toBe(false);
  expect(alone(9, 10, 11, 9, 10.6, 10.9).moreThanCanBeTold).toBe(true);
  expect(alone(6.3, 6.5, 6.4, 6.42, 6.45).moreThanCanBeTold).toBe(false);
});

it("flags what the whole test flags, however many fills are done with by their totals", () => {
  const random = randomStream(41);
  let flagged = 0;
  for (let i = 0; i < 3000; i++) {
    const catches = Array.from({ length: random.integer(3, 8) }, (_, place) => {
      const turns = random.integer(5, 30);
      const odd = place === 0 && i % 3 === 0 ? 1 + 0.05 * random.normal() : 1;
      const netKg = 0.3 * turns * odd + 0.012 * Math.sqrt(turns) * random.normal();
      return aCatch({ catch: place + 1, turns, netKg });
    });
    const outside = { variance: 1.44e-4 * (0.5 + random.uniform()), df: 20 * random.uniform() };
    const level = i % 2 === 0 ? 0.95 : 0.99;
    const fill = { catches, totals: totalsOf(catches) };
    const points = catches.map((row) => judgedPoint(row, 0.02));
    const steps = deletionSteps(points, outside, catches.length < 5 ? 1 : 2);
    const whole = outlyingOf(steps, { level, laterShare: laterShare.lent });
    const found = outlyingIn(fill, outside, level, 0.02);
    expect(found).toEqual(whole.map((place) => catches[place]));
    flagged += found.length;
  }
  expect(flagged).toBeGreaterThan(200);
});
