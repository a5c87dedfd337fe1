import { describe, expect, test } from "vitest";
import { explanationCell } from "../../../bench/study/outliers/explanations.ts";
import { fillAlarm, logAlarm } from "../../../bench/study/outliers/false-alarms.ts";
import { usualScene } from "../../../bench/study/outliers/simulate.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { defaults } from "../../../src/results/defaults.ts";
import { deletionSteps, outlyingOf } from "../../../src/statistics/deleted-residuals.ts";

const seed = 20_261_128;

/** Three standard errors of a rate near 5 %. */
function allowance(replicates: number): number {
  return 3 * Math.sqrt((0.05 * 0.95) / replicates);
}

describe("false alarms", () => {
  // Setting catches of the history aside costs up to one percent (reports/outlier-study.md, section 1).
  const bySettingAside = 0.01;

  /** Fills scatter as unlike each other as is declared. */
  const unlike = defaults.betweenFills;

  test.each([
    [3, 4],
    [4, 2],
    [6, 4],
    [6, 0],
  ])(
    "a clean newest fill of %i catches after %i fills raises a flag in one of twenty",
    (catches, earlierFills) => {
      const replicates = 1500;
      const found = fillAlarm(usualScene, catches, earlierFills, replicates, seed, unlike);
      expect(found).toBeGreaterThan(0.05 - allowance(replicates));
      expect(found).toBeLessThan(0.05 + allowance(replicates) + bySettingAside);
    },
  );

  test("more rarely where all fills scatter alike, which nobody can know beforehand", () => {
    const replicates = 1500;
    const alike = fillAlarm(usualScene, 3, 4, replicates, seed);
    expect(alike).toBeGreaterThan(0.015);
    expect(alike).toBeLessThan(fillAlarm(usualScene, 3, 4, replicates, seed, unlike));
  });

  test("a clean season of 24 fills raises one at most 5 % of the time, not two times in three", () => {
    const replicates = 700;
    const found = logAlarm(usualScene, 24, 4, replicates, seed, unlike);
    // Far out in its tail Student's t is heavier than what unlike fills make: fewer than 5 %, and not none.
    expect(found.logAsFamily).toBeGreaterThan(0.005);
    expect(found.logAsFamily).toBeLessThan(0.05);
    expect(found.everyFillByItself).toBeGreaterThan(0.6);
    expect(found.meanOnlyInFill).toBeLessThan(1.4);
  });
});

describe("hit rates", () => {
  const sd = 0.015 * 6;
  const tare = (random: RandomStream) => 0.2 + 0.4 * random.uniform();
  const turn = (random: RandomStream) => (random.uniform() < 0.5 ? 0.3 : -0.3);
  const bridge = (random: RandomStream) => -6 * (0.2 + 0.4 * random.uniform());

  // Simulated in R: test/reference/generate/flagged-catches.R, 3,000 replicates
  // (6 kg catches, catch scatter 1.5 %): a tare of 0.2–0.6 kg, one turn of twenty, a meter that starves by 20–60 %.
  test.each([
    ["a tare", tare, 3, 4, 0.576],
    ["a tare", tare, 3, 20, 0.732],
    ["a tare", tare, 4, 10, 0.721],
    ["a tare", tare, 6, 10, 0.74],
    ["a tare", tare, 12, 10, 0.738],
    ["a turn", turn, 4, 10, 0.516],
    ["a turn", turn, 12, 10, 0.495],
    ["a starved meter", bridge, 4, 10, 1],
  ] as const)(
    "%s in a fill (%#) is found as often as where R looks for it",
    (_, fault, catches, lentDf, rate) => {
      const replicates = 1500;
      let found = 0;
      for (let replicate = 0; replicate < replicates; replicate++) {
        const random = randomStream(seed, replicate);
        const variance = (sd ** 2 / 20) * (random.chiSquared(lentDf) / lentDf);
        const points = Array.from({ length: catches }, (__, i) => ({
          x: 20,
          y: 6 + sd * random.normal() + (i === 1 ? fault(random) : 0),
          knownVariance: 0,
        }));
        const steps = deletionSteps(points, { variance, df: lentDf }, catches >= 5 ? 2 : 1);
        if (outlyingOf(steps, { level: 0.95 }).includes(1)) found++;
      }
      expect(Math.abs(found / replicates - rate)).toBeLessThan(0.04);
    },
  );
});

describe("explanations", () => {
  const weighed = { ...usualScene, columns: "gross and tare", scatter: 0.01 } as const;

  test.each([
    ["tare-left-in", 0.95],
    ["one-turn-more", 0.9],
    ["one-turn-fewer", 0.75],
    ["bag-not-emptied", 0.85],
    ["meter-starved", 0.85],
    ["other-unit", 0.95],
    ["digits-swapped", 0.75],
    ["decimal-moved", 0.95],
  ] as const)("%s comes first among what is named for a flagged catch", (mishap, least) => {
    const found = explanationCell(weighed, 4, mishap, 150, seed);
    expect(found.first).toBeGreaterThan(least);
    expect(found.named).toBeGreaterThan(0.9);
  });

  test("without a tare column a tare and a turn are told apart less often, but both are named", () => {
    const found = explanationCell({ ...usualScene, scatter: 0.01 }, 4, "tare-left-in", 150, seed);
    expect(found.first).toBeGreaterThan(0.45);
    expect(found.first).toBeLessThan(0.9);
    expect(found.named).toBeGreaterThan(0.95);
  });
});
