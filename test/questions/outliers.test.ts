import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { fitModel, type MeterModel } from "../../src/model/model.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { outliers } from "../../src/questions/outliers.ts";
import { aCatch } from "../support/catches.ts";
import { quietFills as earlier, fillOf, outliersOptions as options } from "../support/outliers.ts";
import { present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

function meterOf(...fills: readonly (readonly Catch[])[]): MeterModel {
  return present(fitModel(fills.flat(), options).meters[0]);
}

/** Answer of a log whose scale has this division, as every part of it is told. */
function withDivision(scaleDivisionKg: number | null, ...fills: readonly (readonly Catch[])[]) {
  const all = { ...options, scaleDivisionKg };
  return outliers(present(fitModel(fills.flat(), all).meters[0]), all);
}

describe("a catch of the newest fill", () => {
  test("that stands out is named, with what the delivery would be without it, and left where it is", () => {
    const meter = meterOf(...earlier, fillOf(4, [6.02, 6.44, 5.95, 6.0]));
    const found = outliers(meter, options);
    const suspect = present(found.suspects[0]);
    expect(found.suspects).toHaveLength(1);
    expect(suspect).toMatchObject({ fill: 4, catch: 2, verdict: "stands out" });
    expect(suspect.relativeResidual).toBeCloseTo(6.44 / ((6.02 + 5.95 + 6.0) / 3) - 1, 12);
    expect(suspect.influence.now.value).toBe(
      delivery(meter, { ...options, varianceLaw: "proportional" }).estimate.value,
    );
    expect(suspect.influence.without.value).toBeCloseTo((6.02 + 5.95 + 6.0) / 60, 12);
    expect(suspect.influence.without.interval?.upper).toBeLessThan(
      present(suspect.influence.now.interval?.upper),
    );
    expect(present(meter.fills[3]).catches).toHaveLength(4);
    expect(found.cautions).toMatchObject([
      { code: "suspect-catch", severity: "serious", where: { fill: 4, catches: [2] } },
    ]);
  });

  test("has the statistic, p value and critical value that R gives for the others' prediction", async () => {
    const meter = meterOf(...earlier, fillOf(4, [6.02, 6.44, 5.95, 6.0]));
    const found = withDivision(null, ...earlier, fillOf(4, [6.02, 6.44, 5.95, 6.0]));
    const suspect = present(found.suspects[0]);
    // The vote of three quiet fills, each relative to its own delivery, at the delivery of this fill.
    const [statistic = 0, single = 0, critical = 0] = await evalR(
      `${votesInR}
       q <- tapply(y, fill, function(m) squares(m, rep(20, 4)))
       prior <- prior.of(vote.of.own.fills(sum(q[1:3]) / 9, 9, 3))
       own <- y[fill == 4]
       rest <- moderated(c(prior[1], prior[2] * (sum(own) / 80)^2), var(own[-2]) / 20, 2)
       t <- (own[2] - mean(own[-2])) / sqrt(rest[2] * 20 * (1 + 1 / 3)); df <- rest[1]
       c(t, 2 * pt(-abs(t), df), qt(1 - 0.025 / 4, df))`,
      {
        y: meter.fills.flatMap(({ catches }) => catches.map(({ netKg }) => netKg)),
        fill: meter.fills.flatMap(({ catches }) => catches.map(({ fill }) => fill)),
      },
    );
    expect(suspect.statistic).toBeCloseTo(statistic, 8);
    expect(suspect.inFill).toMatchObject({ comparisons: 4 });
    expect(suspect.inFill?.pValue).toBeCloseTo(4 * single, 10);
    expect(suspect.inFill?.criticalValue).toBeCloseTo(critical, 9);
    expect(suspect.inLog?.comparisons).toBe(16);
  });

  test("in line is said to be in line, and raises nothing", () => {
    const found = outliers(meterOf(...earlier, fillOf(4, [6.02, 6.08, 5.95, 6.0])), options);
    expect(found.suspects).toEqual([]);
    expect(found.cautions).toEqual([]);
    expect(new Set(found.catches.map(({ verdict }) => verdict))).toEqual(new Set(["in line"]));
  });

  test("is held against sound catches only, when two stand out", () => {
    const found = outliers(
      meterOf(...earlier, fillOf(4, [6.02, 6.52, 5.95, 6.5, 6.0, 5.97])),
      options,
    );
    expect(found.today.standingOut).toEqual([2, 4]);
    const mean = (6.02 + 5.95 + 6.0 + 5.97) / 4;
    for (const suspect of found.suspects) expect(suspect.expectedKg).toBeCloseTo(mean, 10);
    expect(found.today.withoutSuspects?.without.value).toBeCloseTo(mean / 20, 12);
  });
});

describe("the family of a catch of the newest fill", () => {
  const masses = (n: number) =>
    Array.from({ length: n }, (_, i) => 6 + 0.01 * (((i * 7) % 11) - 5));

  test.each([20, 199, 200, 260])("is all %i catches of it while none stands out", (n) => {
    const { catches, today } = outliers(meterOf(fillOf(1, masses(n))), options);
    expect(today.standingOut).toEqual([]);
    expect(new Set(catches.map(({ inFill }) => present(inFill).comparisons))).toEqual(new Set([n]));
  });

  test.each([20, 199, 200, 260])("is the sound ones of %i and itself where one stands out", (n) => {
    const heavy = masses(n).map((mass, i) => (i === 4 ? 7.5 : mass));
    const { catches, today } = outliers(meterOf(fillOf(1, heavy)), options);
    expect(today.standingOut).toEqual([5]);
    for (const one of catches)
      expect(present(one.inFill).comparisons).toBe(one.catch === 5 ? n : n - 1);
  });
});

describe("an earlier fill", () => {
  // More than three standard errors: enough among the four catches of its fill, not among twenty-eight.
  const slight = [
    fillOf(1, [6.01, 5.93, 6.06, 5.98]),
    fillOf(2, [6.21, 6.46, 6.25, 6.18]),
    fillOf(3, [5.88, 5.8, 5.9, 5.84]),
    ...[4, 5, 6, 7].map((fill) => fillOf(fill, [6.04, 5.96, 6.02, 5.91])),
  ];

  test("that shows a catch only when looked at alone is graded so, with how many fills would by chance", () => {
    const found = outliers(meterOf(...slight), options);
    const suspect = present(found.suspects[0]);
    expect(suspect).toMatchObject({
      fill: 2,
      catch: 2,
      family: "this fill",
      verdict: "stands out only when its fill is looked at alone",
    });
    expect(suspect.inFill?.pValue).toBeLessThan(0.05);
    expect(suspect.inLog?.pValue).toBeGreaterThan(0.05);
    expect(found.cautions).toMatchObject([
      {
        code: "suspect-only-in-fill",
        severity: "note",
        facts: { expectedByChance: expect.closeTo(0.35, 12) },
      },
    ]);
  });

  test("would have stood out as the newest: the family is named by what is asked", () => {
    const asNewest = slight.map((fill, i) =>
      fill.map((row) => ({ ...row, fill: i === 1 ? 9 : row.fill })),
    );
    const found = outliers(meterOf(...asNewest), options);
    expect(found.suspects[0]).toMatchObject({
      fill: 9,
      verdict: "stands out",
      family: "this fill",
    });
  });

  test("is judged more strictly when more meters share the log", () => {
    const gross = [...earlier, fillOf(4, [6.0, 6.05, 5.97]), fillOf(5, [6.3, 6.24, 6.33])].flat();
    const three = ["1", "2", "3"].flatMap((bin) => gross.map((row) => ({ ...row, bin })));
    const [ofOne, ofThree] = [gross, three].map((rows) =>
      outliers(present(fitModel(rows, options).meters[0]), options),
    );
    expect(ofOne?.tests).toBe(18);
    expect(ofThree).toMatchObject({ tests: 18, metersInLog: 3 });
    const [one, inThree] = [ofOne, ofThree].map((found) => present(found?.catches[0]?.inLog));
    expect(inThree?.comparisons).toBe(54);
    expect(inThree?.criticalValue).toBeGreaterThan(present(one).criticalValue);
  });

  test("with a bad catch does not hide today's: the catch is set aside from the scatter", () => {
    const bad = fillOf(1, [6.01, 7.2, 6.06, 5.98]);
    const today = fillOf(4, [6.02, 6.36, 5.95, 6.0]);
    const found = outliers(meterOf(bad, ...earlier.slice(1), today), options);
    expect(found.scatter.setAside).toContainEqual({ fill: 1, catch: 2 });
    expect(present(found.scatter.after).variance).toBeLessThan(
      present(found.scatter.before).variance / 20,
    );
    expect(found.today.standingOut).toEqual([2]);
    expect(found.suspects.map(({ fill }) => fill)).toEqual([1, 4]);
  });
});

describe("too few catches", () => {
  test.each([1, 2, 3, 4])("%i alone cannot be judged, and it is said", (n) => {
    const found = outliers(meterOf(fillOf(1, [6.0, 6.6, 6.1, 5.9].slice(0, n))), options);
    expect(found.today.status).toBe("too few to judge");
    expect(found.catches.every(({ verdict }) => verdict === "too few to judge")).toBe(true);
    expect(found.catches.every(({ statistic }) => statistic === null)).toBe(true);
    expect(found.cautions).toMatchObject([
      { code: "too-few-to-judge", facts: { catches: n, outsideDf: 0 } },
    ]);
    expect(found.tests).toBe(0);
  });

  test("five alone can, by their own scatter", () => {
    const found = outliers(meterOf(fillOf(1, [6.0, 7.9, 6.1, 5.9, 6.05])), options);
    expect(found.today).toMatchObject({ status: "judged", outsideDf: 0, standingOut: [2] });
  });

  test("three can when earlier fills lend their scatter", async () => {
    const found = outliers(meterOf(...earlier, fillOf(4, [6.02, 6.5, 5.95])), options);
    // Three fills of four catches lend 5.25 of their 9 degrees of freedom.
    const [df = 0] = await evalR(`${votesInR} prior.of(vote.of.own.fills(1, 9, 3))`);
    expect(found.today).toMatchObject({
      status: "judged",
      outsideDf: expect.closeTo(df, 9),
      standingOut: [2],
    });
  });

  test("three can when other bins lend theirs", () => {
    const others = ["2", "3"].flatMap((bin) => earlier.flat().map((row) => ({ ...row, bin })));
    const found = outliers(meterOf(fillOf(1, [6.02, 7.5, 5.95]), others), options);
    expect(found.today.status).toBe("judged");
    expect(found.today.standingOut).toEqual([2]);
    expect(outliers(meterOf(fillOf(1, [6.02, 7.5, 5.95])), options).today.status).toBe(
      "too few to judge",
    );
  });

  test("two can only disagree: never which one, no explanation, no estimate without either", () => {
    const found = outliers(meterOf(...earlier, fillOf(4, [6.02, 6.5])), options);
    expect(found.suspects).toEqual([]);
    expect(found.pairs).toMatchObject([{ fill: 4, catches: [1, 2] }]);
    expect(found.pairs[0]?.relativeDifference).toBeCloseTo(0.48 / 6.26, 10);
    expect(found.pairs[0]?.inFill.comparisons).toBe(1);
    expect(found.today.withoutSuspects).toBeNull();
    const verdicts = found.catches.slice(-2).map(({ verdict }) => verdict);
    expect(verdicts).toEqual(["one of two that disagree", "one of two that disagree"]);
    expect(found.cautions).toMatchObject([{ code: "two-disagree", severity: "serious" }]);
  });

  test("two that agree are in line", () => {
    const found = outliers(meterOf(...earlier, fillOf(4, [6.02, 6.05])), options);
    expect(found.pairs).toEqual([]);
    expect(found.cautions).toEqual([]);
  });

  test("three of which all disagree are more than can be told apart", () => {
    const found = outliers(meterOf(...earlier, fillOf(4, [6.02, 6.6, 7.4])), options);
    expect(found.today.moreThanCanBeTold).toBe(true);
    expect(found.cautions.map(({ code }) => code)).toContain("more-than-can-be-told");
  });
});

describe("degenerate scatter", () => {
  test("catches that agree exactly, with no division known, leave nothing to compare with", () => {
    const alike = [6, 6, 6, 6, 6.5];
    const found = withDivision(null, fillOf(1, alike));
    expect(found.today.status).toBe("nothing to compare with");
    expect(found.catches.every(({ statistic }) => statistic === null)).toBe(true);
  });

  test("one division off among catches that agree is the scale, not the catch", () => {
    const found = outliers(meterOf(fillOf(1, [6, 6, 6, 6, 6.01])), options);
    expect(found.suspects).toEqual([]);
  });
});

describe("catches left out by the person", () => {
  test("are listed with the reason, and the delivery is told with and without them", () => {
    const today = fillOf(4, [6.02, 6.44, 5.95, 6.0]).map((row) =>
      row.catch === 2 ? { ...row, leftOut: "bag not tared" } : row,
    );
    const found = outliers(meterOf(...earlier, today), options);
    expect(found.input).toMatchObject({ catches: 15, leftOut: 1 });
    const [left] = found.leftOut;
    expect(left).toMatchObject({ fill: 4, catches: [{ catch: 2, reason: "bag not tared" }] });
    expect(left?.without.value).toBeCloseTo((6.02 + 5.95 + 6.0) / 60, 12);
    expect(left?.withThem.value).toBeCloseTo((6.02 + 6.44 + 5.95 + 6.0) / 80, 12);
    expect(left?.relativeChange).toBeCloseTo(17.97 / 60 / (24.41 / 80) - 1, 12);
    expect(found.suspects).toEqual([]);
  });
});

describe("the result", () => {
  const found = outliers(meterOf(...earlier, fillOf(4, [6.02, 6.44, 5.95, 6.0, 6.03])), options);

  test("is plain: it survives JSON unchanged", () => {
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });

  test("carries the named tests for who must report them, Grubbs from 3 and ESD from 5 catches", () => {
    expect(found.today.named.grubbs?.index).toBe(1);
    expect(found.today.named.generalizedEsd?.outliers).toEqual([1]);
    expect(found.fills[0]?.named.grubbs).not.toBeNull();
    expect(found.fills[0]?.named.generalizedEsd).toBeNull();
  });

  test("tells what each catch of the newest fill does to its delivery", () => {
    expect(found.influence.map((one) => one.catch)).toEqual([1, 2, 3, 4, 5]);
    for (const { now, without, relativeChange } of found.influence)
      expect(relativeChange).toBeCloseTo(without.value / now.value - 1, 12);
  });

  test("does not depend on the order of rows", () => {
    const rows = [...earlier, fillOf(4, [6.02, 6.44, 5.95, 6.0, 6.03])].flat();
    fc.assert(
      fc.property(fc.shuffledSubarray(rows, { minLength: rows.length }), (shuffled) => {
        expect(outliers(meterOf(shuffled), options)).toEqual(found);
      }),
      { numRuns: 20 },
    );
  });

  test("scales with the masses: verdicts and statistics stay, deliveries follow", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (factor) => {
        const scaled = [...earlier, fillOf(4, [6.02, 6.44, 5.95, 6.0, 6.03])]
          .flat()
          .map((row) => ({ ...row, netKg: row.netKg * factor }));
        const again = withDivision(0.01 * factor, scaled);
        for (const [i, one] of again.catches.entries()) {
          expect(one.verdict).toBe(found.catches[i]?.verdict);
          expect(one.statistic).toBeCloseTo(found.catches[i]?.statistic ?? 0, 6);
        }
        const [now, before] = [again.influence[0]?.now.value, found.influence[0]?.now.value];
        expect(present(now) / factor).toBeCloseTo(present(before), 9);
      }),
      { numRuns: 20 },
    );
  });

  test("holds no number that is not one, whatever was weighed", () => {
    const weighing = fc.record({
      fill: fc.integer({ min: 1, max: 4 }),
      turns: fc.double({ min: 0.1, max: 1e4, noNaN: true }),
      netKg: fc.double({ min: 1e-4, max: 1e5, noNaN: true }),
      tareKg: fc.option(fc.double({ min: 0, max: 2, noNaN: true })),
    });
    fc.assert(
      fc.property(
        fc.array(weighing, { minLength: 1, maxLength: 16 }),
        fc.option(fc.double({ min: 1e-4, max: 1, noNaN: true })),
        (weighings, scaleDivisionKg) => {
          const rows = weighings.map((given, i) => aCatch({ ...given, row: i + 2, catch: i + 1 }));
          const result = withDivision(scaleDivisionKg, rows);
          expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        },
      ),
      { numRuns: 150 },
    );
  });
});
