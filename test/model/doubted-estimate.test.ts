import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { scatterDiffers } from "../../src/model/catch-scatter.ts";
import { doubtedEstimate } from "../../src/model/doubted-estimate.ts";
import { type MeterScatter, nothingLent } from "../../src/model/lent-scatter.ts";
import { metersOf, newestFill } from "../../src/model/meters.ts";
import { estimateOf, fitModel } from "../../src/model/model.ts";
import { findInFill, levels } from "../../src/model/screening/finding.ts";
import { outsideOf } from "../../src/model/screening/lending.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { outliers } from "../../src/questions/outliers.ts";
import { judgeInFamily } from "../../src/statistics/deleted-residuals.ts";
import { logVariance } from "../../src/statistics/spread-votes.ts";
import { deletedResiduals, fillOf, quietFills } from "../support/outliers.ts";
import { digits, present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: null };

function logOf(...fills: readonly (readonly Catch[])[]) {
  const meter = present(fitModel(fills.flat(), options).meters[0]);
  return { meter, today: estimateOf(meter, newestFill(meter), options) };
}

/** Nine catches whose scatter is 0.0045 relative to the delivery squared, per turn, on 8 degrees of freedom: 8·0.09². */
const lender = fillOf(1, [6.09, 5.91, 6.09, 5.91, 6.09, 5.91, 6.09, 5.91, 6]);
const flaggedMasses = [6.0, 6.05, 5.97, 6.42];

/** Others who are known to scatter alike say so for certain: the same variance on the same degrees of freedom. */
const knownForCertain: MeterScatter = {
  ...nothingLent,
  outside: {
    ...logVariance({ variance: 0.0045, df: 8 }),
    ...{ from: "other bins", meters: 1, sameProduct: false },
  },
};

describe("a catch of the newest fill that stands out", () => {
  const flagged = newestFill(present(metersOf(fillOf(2, flaggedMasses))[0]));
  const finding = findInFill(flagged, outsideOf(flagged, knownForCertain), true, {
    divisionKg: null,
    testsInLog: 4,
  });

  // The worked example of the rule, a scatter of 0.0045 on 8 degrees of freedom being lent:
  // test/reference/generate/suspect-catch.R.
  it("is neither dropped nor believed: ± reaches to the farther end of the bands with and without it", () => {
    const today = doubtedEstimate(flagged, finding, knownForCertain, options);
    expect(today.scatter.df).toBeCloseTo(11, 9);
    const hull = present(today.hull);
    expect(hull.catches).toEqual([4]);
    expect(hull.with.value).toBeCloseTo(0.3055, 12);
    expect(present(hull.with.interval?.upper) - hull.with.value).toBeCloseTo(0.007393464215, 12);
    expect(hull.without.value).toBeCloseTo(0.3003333333, 10);
    expect(present(hull.without.interval?.upper) - hull.without.value).toBeCloseTo(
      0.00531224419,
      11,
    );
    expect(hull.without.interval?.lower).toBeCloseTo(0.2950210891, 10);
    expect(hull.with.interval?.upper).toBeCloseTo(0.3128934642, 10);
    expect(today.estimate.value).toBeCloseTo(0.3055, 12);
    const half = 0.3055 - 0.2950210891;
    expect(today.halfWidth).toBeCloseTo(half / 0.3055, 9);
    expect(today.estimate.interval?.lower).toBeCloseTo(0.2950210891, 10);
    expect(today.estimate.interval?.upper).toBeCloseTo(0.3055 + half, 10);
  });

  it("has the statistics and limits of that example", () => {
    const lent = present(finding.outside);
    expect(lent.variance).toBeCloseTo(0.0045 * 0.3055 ** 2, 12);
    expect(lent.df).toBeCloseTo(8, 9);
    const points = flaggedMasses.map((y) => ({ x: 20, y, knownVariance: 0 }));
    const statistics = deletedResiduals(points, lent).map(({ statistic }) => statistic);
    const printed = [-0.94031405, -0.49767545, -1.23097041, 4.2642832];
    for (const [i, value] of printed.entries()) expect(statistics[i]).toBeCloseTo(value, 7);
    const limitAt = (level: number) =>
      judgeInFamily({ df: lent.df + 2, pValue: 1 }, 4, 1, level).criticalValue;
    expect(limitAt(levels.told)).toBeCloseTo(3.038243334, 8);
    expect(limitAt(levels.lookFirst)).toBeCloseTo(4.004530448, 8);
    const four = flagged.catches.filter((row) => row.catch === 4);
    expect([finding.inFill, finding.inFillStrictly]).toEqual([four, four]);
  });

  it("is as R has it where an earlier fill lends: both bands, statistic and limit", async () => {
    const { meter, today } = logOf(lender, fillOf(2, flaggedMasses));
    const [statistic, limit, withIt, withoutIt] = await evalR(
      `${votesInR}
       prior <- prior.of(vote.of.own.fills(0.0045, 8, 1))
       half <- function(m) {
         b <- mean(m) / 20
         b * width(moderated(prior, squares(m, rep(20, length(m))) / (length(m) - 1), length(m) - 1), 20 * length(m))
       }
       rest <- moderated(c(prior[1], prior[2] * (mean(m) / 20)^2), var(m[1:3]) / 20, 2)
       c((m[4] - mean(m[1:3])) / sqrt(rest[2] * 20 * (1 + 1 / 3)),
         qt(1 - 0.05 / 2 / 4, rest[1]), half(m), half(m[1:3]))`,
      { m: flaggedMasses },
    );
    const suspect = present(outliers(meter, { ...options, massUnit: "kg" }).suspects[0]);
    expect(digits(present(suspect.statistic), present(statistic))).toBeGreaterThan(9);
    expect(digits(present(suspect.inFill?.criticalValue), present(limit))).toBeGreaterThan(9);
    const hull = present(today.hull);
    const halfOf = ({ value, interval }: typeof hull.with) => present(interval?.upper) - value;
    expect(digits(halfOf(hull.with), present(withIt))).toBeGreaterThan(9);
    expect(digits(halfOf(hull.without), present(withoutIt))).toBeGreaterThan(9);
    // An earlier fill alone is not certain enough to keep the catch from speaking for the scatter of others.
    expect(meter.scatter.df).toBe(11);
  });

  it("is what every answer reads: delivery, its standard error over Student's t, and the band of the line", async () => {
    const { meter, today } = logOf(lender, fillOf(2, flaggedMasses));
    const answer = delivery(meter, { ...options, varianceLaw: "proportional" });
    expect(answer.estimate).toEqual(today.estimate);
    expect(answer.hull).toEqual(today.hull);
    // What is worked out from the delivery is as wide as the hull.
    const [t] = await evalR("qt(0.975, df)", { df: present(today.estimate.df) });
    expect(present(today.estimate.standardError) * present(t)).toBeCloseTo(
      present(today.halfWidth) * today.estimate.value,
      9,
    );
    const end = present(answer.line.at(-1));
    expect(present(end.meanUpperKg) - end.fittedKg).toBeCloseTo(
      end.turns * (present(today.estimate.interval?.upper) - today.estimate.value),
      12,
    );
  });

  it("keeps both bands when somebody says it was looked at", () => {
    const checked = fillOf(2, flaggedMasses).map((row) =>
      row.catch === 4 ? { ...row, checked: "weighed again" } : row,
    );
    const plain = logOf(lender, fillOf(2, flaggedMasses)).today;
    const { hull, halfWidth } = logOf(lender, checked).today;
    expect(hull?.catches).toEqual([4]);
    for (const band of ["with", "without"] as const)
      expect(hull?.[band].interval?.upper).toBeCloseTo(
        present(plain.hull?.[band].interval?.upper),
        14,
      );
    expect(halfWidth).toBeCloseTo(present(plain.halfWidth), 14);
  });

  it("never widens an earlier fill, whose catches are told and not planned with", () => {
    const { meter } = logOf(lender, fillOf(2, flaggedMasses), fillOf(3, [6.01, 6.05, 5.98]));
    expect(estimateOf(meter, present(meter.fills[1]), options).hull).toBeNull();
  });
});

describe("a flagged catch three fills back", () => {
  const steady = [
    fillOf(1, [6.01, 5.93, 6.06, 5.98]),
    fillOf(2, [6.21, 6.3, 6.25, 6.18]),
    fillOf(3, [5.88, 5.8, 5.9, 5.84]),
    fillOf(4, [6.11, 6.02, 6.07, 6.16]),
    fillOf(5, [5.95, 6.04, 5.99, 5.92]),
  ];
  const today = fillOf(6, [6.05, 6.03, 6.06, 6.04]);
  const withBad = steady.map((fill, i) =>
    i === 2 ? fill.map((row) => (row.catch === 2 ? { ...row, netKg: 6.35 } : row)) : fill,
  );
  const withoutIt = steady.map((fill, i) =>
    i === 2 ? fill.filter((row) => row.catch !== 2) : fill,
  );

  it("neither makes today look better known nor worse: the band is that of the log without the catch", async () => {
    const [bad, clean] = [logOf(...withBad, today), logOf(...withoutIt, today)];
    // With it the fills seem to scatter differently.
    expect(scatterDiffers(bad.meter.screening.scatterOfAll)).toBe(true);
    expect(bad.meter.fills[2]?.notLent.map((row) => row.catch)).toEqual([2]);
    expect(bad.today.scatter).toEqual(clean.today.scatter);
    expect(bad.today.estimate).toEqual(clean.today.estimate);
    // Five fills of four catches lend what they know, less the one: 14 degrees of freedom, and today has 3 of its own.
    const [nu] = await evalR(`${votesInR} prior.of(vote.of.own.fills(1, 14, 5))`);
    expect(bad.today.scatter).toMatchObject({
      source: "lent",
      df: expect.closeTo(present(nu) + 3, 9),
      lentBy: { fills: 5, meters: 0, assumed: false },
    });
  });
});

describe("two or three catches that disagree", () => {
  it("have a value and no ±, with what each pair of three gives", () => {
    const { today } = logOf(fillOf(1, [6.0, 6.06, 9.6]));
    expect(today.estimate).toMatchObject({ standardError: null, df: null, interval: null });
    expect(today.estimate.value).toBeCloseTo(21.66 / 60, 12);
    expect(today.halfWidth).toBeNull();
    const disagree = present(today.disagree);
    expect(disagree).toMatchObject({ by: "range", apart: [1, 3] });
    expect(disagree.range).toBeCloseTo(3.6 / 7.22, 12);
    expect(disagree.pairs.map((pair) => pair.catches)).toEqual([
      [1, 2],
      [1, 3],
      [2, 3],
    ]);
    for (const [i, value] of [12.06 / 40, 15.6 / 40, 15.66 / 40].entries())
      expect(disagree.pairs[i]?.value).toBeCloseTo(value, 12);
  });

  it("of two, each gives what it gives", () => {
    const { today } = logOf(fillOf(1, [6.0, 9.6]));
    expect(today.disagree?.pairs).toEqual([
      { catches: [1], value: 0.3 },
      { catches: [2], value: 9.6 / 20 },
    ]);
  });

  it("agree up to a range of 15 % of their mean, four too that nothing can judge, and more are judged otherwise", () => {
    // 6.45 − 5.55 = 0.90 is 15 % of 6, to what a computer makes of it.
    expect(logOf(fillOf(1, [5.551, 6.449])).today.disagree).toBeNull();
    expect(logOf(fillOf(1, [5.54, 6.46])).today.disagree).not.toBeNull();
    expect(logOf(fillOf(1, [6.0, 6.06, 9.6, 6.1])).today.disagree).toMatchObject({
      by: "range",
      apart: [1, 3],
    });
    expect(logOf(fillOf(1, [6.0, 6.06, 9.6, 6.1, 6.03])).today.disagree).toBeNull();
    const lent = logOf(...quietFills, fillOf(4, [6.0, 6.06, 9.6, 6.1])).today;
    expect(lent.disagree).toBeNull();
  });

  it("also by the scatter that other fills lend, where a pair lies too far apart for it at 1 %", () => {
    const { meter, today } = logOf(...quietFills, fillOf(4, [6.0, 6.5]));
    expect(today.disagree).toMatchObject({ by: "pair test", apart: [1, 2] });
    expect(today.estimate.interval).toBeNull();
    expect(present(meter.screening.findings.at(-1)).pairPValue).toBeLessThan(0.01);
    expect(logOf(...quietFills, fillOf(4, [6.0, 6.13])).today.disagree).toBeNull();
  });

  it("are settled by somebody's word: for both of two, for the odd one of three", () => {
    const word = "weighed twice";
    const pair = fillOf(1, [6.0, 9.6]);
    const checkedIn = (rows: readonly Catch[], ...numbers: readonly number[]) =>
      rows.map((row) => (numbers.includes(row.catch) ? { ...row, checked: word } : row));
    expect(logOf(checkedIn(pair, 2)).today.disagree).not.toBeNull();
    expect(logOf(checkedIn(pair, 1, 2)).today.disagree).toBeNull();
    const trio = fillOf(1, [6.0, 6.06, 9.6]);
    expect(logOf(checkedIn(trio, 1)).today.disagree).not.toBeNull();
    expect(logOf(checkedIn(trio, 3)).today.disagree).toBeNull();
  });
});

describe("the interval of a delivery", () => {
  it("ends at zero at the least, however little is known; the half-width is not cut", async () => {
    const { today, meter } = logOf(fillOf(1, [1, 20, 1, 20, 1]));
    // Mean 8.6 kg, standard deviation √(433.2/4): ± 12.9 kg.
    const [half = 0] = await evalR("qt(0.975, 4) * sqrt(433.2 / 4 / 5) / 20");
    expect(half).toBeGreaterThan(8.6 / 20);
    expect(today.estimate.interval?.lower).toBe(0);
    expect(today.estimate.interval?.upper).toBeCloseTo(8.6 / 20 + half, 9);
    expect(today.halfWidth).toBeCloseTo(half / (8.6 / 20), 9);
    const { nextCatch, line } = delivery(meter, { ...options, varianceLaw: "proportional" });
    expect(nextCatch.estimate.interval?.lower).toBe(0);
    expect(line.every(({ meanLowerKg }) => present(meanLowerKg) === 0)).toBe(true);
    const two = logOf(fillOf(1, [6.0, 6.1]), fillOf(2, [8.0, 8.1]));
    expect(two.meter.across.nextFill.interval?.lower).toBe(0);
  });
});
