import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { fillsTogether } from "../../src/model/across-fills.ts";
import {
  type FreshStart,
  type HistoryChoices,
  historyOf,
  type MeterHistory,
  stretchInForce,
} from "../../src/model/history.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { nothingLent } from "../../src/model/lent-scatter.ts";
import { type Fill, metersOf } from "../../src/model/meters.ts";
import { fitModel } from "../../src/model/model.ts";
import { settingOf } from "../../src/model/rate-error.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { logVariance } from "../../src/statistics/spread-votes.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const level = 0.95;
const options = { level, tolerance: 0.03, scaleDivisionKg: 0.02 };

/** Six fills of one level and four of a level 6 % above it; the expected figures: test/reference/generate/moved-meter.R. */
const calm = [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011];
const shifted = [...calm, 0.3165, 0.319, 0.3148, 0.3201];

/** Fills of so many equal catches, so that a fill's delivery is what the list says. */
const logOf = (deliveries: readonly number[], catches: (fill: number) => number = () => 2) =>
  deliveries.flatMap((delivery, f) =>
    aFill(
      Array.from({ length: catches(f + 1) }, () => [20, 20 * delivery] as const),
      { fill: f + 1 },
    ),
  );
const historyIn = (catches: readonly Catch[], choices: HistoryChoices = {}): MeterHistory =>
  historyOf(present(metersOf(catches)[0]), level, choices);
const numbers = (fills: readonly Fill[]) => fills.map(({ fill }) => fill);
const stretches = (history: MeterHistory) =>
  history.stretches.map(({ fills, begins }) => [begins, ...numbers(fills)]);

describe("the history of a meter that moved", () => {
  const at = (fills: number) => historyIn(logOf(shifted.slice(0, fills)));

  it("is told with the eighth fill, since the seventh", () => {
    expect(at(7).status).toBe("steady");
    expect(at(8).status).toBe("moved");
    expect(stretches(at(8))).toEqual([
      ["log", 1, 2, 3, 4, 5, 6],
      ["moved", 7, 8],
    ]);
    const moved = present(at(8).moved);
    expect(moved).toMatchObject({
      since: { fill: 7, takenAt: null },
      foundWith: 8,
      fillsBefore: 6,
      fillsSince: 2,
      limit: 5.38,
      pValue: null,
    });
    expect(present(moved.evidence)).toBeCloseTo(5.8326292, 7);
  });

  it("is moved until four fills can be asked again, and history from then on", () => {
    expect(at(9).status).toBe("moved");
    expect(at(10)).toMatchObject({ status: "steady", moved: null });
    expect(at(10).changes).toHaveLength(1);
  });

  it("has a size relative to the level before, with the critical value of the search in its interval", () => {
    const { size, before, after } = present(at(10).changes[0]);
    expect(after).toBeCloseTo(0.3176, 12);
    expect(size.value).toBeCloseTo(after / before - 1, 12);
    // test/reference/generate/moved-meter.R: pooled standard deviation 0.002781973221 on 8 degrees of freedom.
    const error = (0.002781973221 * Math.sqrt(1 / 6 + 1 / 4)) / before;
    expect(size.standardError).toBeCloseTo(error, 11);
    expect(size.df).toBe(8);
    // The largest |t| over the splits of ten: critical value 3.46 at 5 %, from a simulation of 40,000 series.
    const half = present(present(size.interval).upper) - size.value;
    expect(half / error).toBeCloseTo(3.46, 1);
  });

  it("is the same for a log cut at any fill", () => {
    const whole = at(10);
    for (let fills = 1; fills <= 10; fills++)
      expect(at(fills).steps).toEqual(whole.steps.slice(0, fills));
  });

  it("keeps what was known before the newest fill came", () => {
    expect(numbers(at(8).beforeNewest)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(numbers(at(9).beforeNewest)).toEqual([7, 8]);
    expect(at(1).beforeNewest).toEqual([]);
  });
});

describe("the history of a meter to which others lend their spread", () => {
  const prior = { nu0: 2, s0Squared: 0.0214 ** 2 };
  const at = (fills: number) => historyIn(logOf(shifted.slice(0, fills)), { prior });

  it("has moved a fill later where that spread is wider than its own", () => {
    expect(at(7).status).toBe("steady");
    expect(at(8)).toMatchObject({ status: "steady", changes: [] });
    expect(at(9).status).toBe("moved");
    expect(present(at(9).moved)).toMatchObject({
      since: { fill: 7 },
      foundWith: 9,
      fillsSince: 3,
      limit: 6.09,
    });
    expect(at(10)).toMatchObject({ status: "steady", moved: null });
  });

  it("is the same for a log cut at any fill, while the others lend the same", () => {
    for (let fills = 1; fills <= 10; fills++)
      expect(at(fills).steps).toEqual(at(10).steps.slice(0, fills));
  });

  it("sizes the change with the spread of both together", () => {
    const { size, before } = present(at(10).changes[0]);
    // test/reference/generate/moved-meter.R: 0.002781973221 on 8 degrees of freedom within the two levels.
    const squares = 8 * 0.002781973221 ** 2 + 2 * (0.0214 * before) ** 2;
    const error = Math.sqrt((squares / 10) * (1 / 6 + 1 / 4)) / before;
    expect(size.df).toBe(10);
    expect(size.standardError).toBeCloseTo(error, 11);
  });

  it("asks of the second fill whether it differs, and settles it with the third", () => {
    const early = (deliveries: readonly number[]) => historyIn(logOf(deliveries), { prior });
    const two = early([0.3, 0.72]);
    expect(two.status).toBe("fill differs");
    expect(present(two.differs)).toMatchObject({ fill: 2, earlierFills: 1, catchesToConfirm: 4 });
    expect(present(two.differs).difference.value).toBeCloseTo(0.72 / 0.3 - 1, 12);
    expect(present(two.differs).difference.df).toBe(2);
    expect(early([0.3, 0.36]).status).toBe("too few fills");
    expect(early([0.3, 0.72, 0.304]).status).toBe("stood apart");
    const stayed = early([0.3, 0.72, 0.71]);
    expect(stayed.status).toBe("moved");
    expect(present(stayed.moved)).toMatchObject({ since: { fill: 2 }, fillsBefore: 1 });
    expect(present(present(stayed.moved).size.interval).lower).toBeGreaterThan(1);
    expect(historyIn(logOf([0.3, 0.72])).status).toBe("too few fills");
  });

  it("keeps the next fill to the level in force, with that spread", () => {
    const stretchesOf = at(10).stretches.map(({ fills }) => fills);
    const outside = { from: "other bins", meters: 1, sameProduct: false } as const;
    // One estimate on 2 degrees of freedom, with no heterogeneity, is that prior.
    const vote = logVariance({ variance: ((0.0214 * 0.3) / 0.3176) ** 2, df: 2 });
    const { nextFill, spread } = fillsTogether(stretchesOf, {
      level,
      scatter: nothingLent,
      outside: { ...vote, ...outside },
      divisionKg: null,
      inTimeOrder: true,
    });
    // test/reference/generate/moved-meter.R.
    expect(present(present(nextFill.interval).upper) - 0.3176).toBeCloseTo(0.009464601708, 11);
    expect(spread.df).toBeCloseTo(10, 10);
  });

  it("tells other meters of its spread by the levels that its own fills show", () => {
    const library = [8, 8].map((df) => ({
      product: "wheat",
      spread: { variance: 0.03 ** 2, df },
      scatter: null,
    }));
    const borrowing = { ...usualBorrowing, library };
    const [alone] = fitModel(logOf(shifted.slice(0, 8)), options).meters;
    const [lent] = fitModel(logOf(shifted.slice(0, 8)), options, { borrowing }).meters;
    expect(present(alone).history.status).toBe("moved");
    expect(present(lent).history.status).toBe("steady");
    expect(present(lent).record).toEqual(present(alone).record);
  });
});

describe("a fill that differs", () => {
  const odd = [...calm, 0.34];

  it("is named with its distance and p, and waits", () => {
    const { status, differs, stoodApart } = historyIn(logOf(odd));
    expect(status).toBe("fill differs");
    expect(stoodApart).toEqual([]);
    const { difference, earlier, pValue, ...rest } = present(differs);
    const mean = calm.reduce((sum, value) => sum + value / 6, 0);
    expect(earlier).toBeCloseTo(mean, 12);
    expect(difference.value).toBeCloseTo(0.34 / mean - 1, 12);
    expect(present(difference.interval).about).toBe("difference");
    expect(pValue).toBeLessThan(0.002);
    expect(rest).toEqual({
      fill: 7,
      takenAt: null,
      earlierFills: 6,
      limit: 0.002,
      catches: 2,
      usualCatches: 2,
      catchesToConfirm: 4,
      confirmed: false,
    });
  });

  it("is confirmed by twice the usual catches, at least four, unless one of them is flagged", () => {
    const withCatches = (usual: number, today: number, choices: HistoryChoices = {}) =>
      historyIn(
        logOf(odd, (fill) => (fill === 7 ? today : usual)),
        choices,
      ).status;
    expect(withCatches(2, 4)).toBe("fill differs, confirmed");
    expect(withCatches(2, 3)).toBe("fill differs");
    expect(withCatches(1, 3)).toBe("fill differs");
    expect(withCatches(1, 4)).toBe("fill differs, confirmed");
    expect(withCatches(3, 5)).toBe("fill differs");
    expect(withCatches(3, 6)).toBe("fill differs, confirmed");
    expect(withCatches(2, 8, { flagged: ({ fill }) => fill === 7 })).toBe("fill differs");
    expect(withCatches(2, 8, { flagged: ({ fill }) => fill === 6 })).toBe(
      "fill differs, confirmed",
    );
  });

  it("stood apart when the next fill is back: it is listed, and in no stretch", () => {
    const history = historyIn(logOf([...odd, 0.2995]));
    expect(history.status).toBe("stood apart");
    expect(stretches(history)).toEqual([["log", 1, 2, 3, 4, 5, 6, 8]]);
    expect(history.stoodApart).toEqual([
      { fill: 7, takenAt: null, difference: expect.closeTo(0.1338, 3), backWith: 8 },
    ]);
    const later = historyIn(logOf([...odd, 0.2995, 0.301]));
    expect(later.status).toBe("steady");
    expect(later.stoodApart).toHaveLength(1);
  });

  it("was the first of a new level when the next fill is there too", () => {
    const history = historyIn(logOf([...odd, 0.337]));
    expect(history.status).toBe("moved");
    expect(present(history.moved)).toMatchObject({
      since: { fill: 7 },
      foundWith: 8,
      evidence: null,
      limit: null,
    });
    expect(present(present(history.moved).pValue)).toBeLessThan(0.002);
  });
});

describe("a meter whose fills rise", () => {
  const rising = Array.from({ length: 9 }, (_, i) => 0.3 * (1 + 0.01 * i) + 0.0004 * (i % 2));

  it("trends: nothing is cut, and the rise is told per fill", () => {
    const history = historyIn(logOf(rising));
    expect(history.status).toBe("trending");
    expect(history.stretches).toHaveLength(1);
    const { perFill, line, from, fills } = present(history.trending);
    expect(from.fill).toBe(1);
    expect(fills).toBe(9);
    // 0.003 a fill of a mean of 0.3 · 1.04 + 4/9 · 0.0004 = 0.312178; the wobble of every second fill is even about the middle.
    expect(perFill.value).toBeCloseTo(0.003 / 0.312178, 5);
    expect(line.end - line.start).toBeCloseTo(8 * 0.003, 5);
    expect(present(perFill.interval).about).toBe("trend");
  });
});

describe("what the setup or the caller says", () => {
  it("cuts where the meter was opened, and shares the spread with the fills before", () => {
    const startsAfresh = [{ bin: "1", product: null, fill: 7 }];
    const history = historyIn(logOf(shifted), { startsAfresh });
    expect(stretches(history)).toEqual([
      ["log", 1, 2, 3, 4, 5, 6],
      ["setup", 7, 8, 9, 10],
    ]);
    expect(history.changes).toEqual([]);
    expect(historyIn(logOf(shifted.slice(0, 8)), { startsAfresh }).status).toBe("too few fills");
  });

  it("takes the entry about the product before the one about the bin, and the next fill of a missing one", () => {
    const firstInForce = (startsAfresh: readonly FreshStart[]) =>
      numbers(stretchInForce(historyIn(logOf(shifted), { asked: "never", startsAfresh })))[0];
    const ofBin = { bin: "1", product: null, fill: 9 };
    expect(firstInForce([ofBin, { bin: "1", product: "wheat", fill: 4 }])).toBe(4);
    expect(firstInForce([ofBin, { bin: "1", product: "pea", fill: 4 }])).toBe(9);
    expect(firstInForce([{ bin: "2", product: null, fill: 9 }])).toBe(1);
    expect(
      stretches(
        historyIn(
          logOf(calm).filter(({ fill }) => fill !== 5),
          { startsAfresh: [{ bin: "1", product: null, fill: 5 }] },
        ),
      ),
    ).toEqual([
      ["log", 1, 2, 3, 4],
      ["setup", 6],
    ]);
  });

  it("asks nothing where fills were planned to differ, and still cuts", () => {
    const never = historyIn(logOf(shifted), { asked: "never" });
    expect(never).toMatchObject({ status: "not asked", steps: [], changes: [], moved: null });
    expect(stretches(never)).toEqual([["log", 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]]);
    expect(numbers(never.beforeNewest)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    const startsAfresh = [{ bin: "1", product: null, fill: 9 }];
    const cut = historyIn(logOf(shifted), { asked: "never", startsAfresh });
    expect(stretches(cut).map(([begins]) => begins)).toEqual(["log", "setup"]);
    expect(numbers(cut.beforeNewest)).toEqual([9]);
  });
});

describe("figures after a change of level", () => {
  const [meter] = fitModel(logOf(shifted), options).meters;
  const { across } = present(meter);

  it("rest on the level in force, with the spread of all stretches", () => {
    // test/reference/generate/moved-meter.R.
    expect(across.mean.value).toBeCloseTo(0.3176, 12);
    expect(across.spread.standardDeviation?.value).toBeCloseTo(0.002781973221, 12);
    expect(across.spread).toMatchObject({ source: "own", df: 8, fills: 10 });
    const upper = present(present(across.nextFill.interval).upper);
    expect(upper - across.nextFill.value).toBeCloseTo(0.007172458323, 11);
    expect(across).toMatchObject({ fills: 4, catches: 8, sinceFill: 7 });
  });

  it("are those of all fills where nothing was asked", () => {
    const [planned] = fitModel(logOf(shifted), options, { asked: "never" }).meters;
    const { nextFill, sinceFill } = present(planned).across;
    // test/reference/generate/moved-meter.R.
    expect(present(present(nextFill.interval).upper) - nextFill.value).toBeCloseTo(
      0.02261995664,
      10,
    );
    expect(sinceFill).toBeNull();
  });

  it("leave out a fill that stood apart, as if it had not been", () => {
    const [withOdd, without] = [
      [...calm, 0.34, 0.2995],
      [...calm, 0.2995],
    ].map((list) => present(fitModel(logOf(list), options).meters[0]).across);
    expect(present(withOdd).nextFill).toEqual(present(without).nextFill);
    expect(present(withOdd).mean).toEqual(present(without).mean);
  });

  it("leave the drive at the mean of the level, for today as it was known before", () => {
    const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
    const settingAt = (fills: number) =>
      settingOf(
        { source: "average of fills" },
        present(fitModel(logOf(shifted.slice(0, fills)), options).meters[0]),
      );
    expect(settingAt(8).todayKgPerTurn).toBeCloseTo(mean(shifted.slice(0, 7)), 12);
    expect(settingAt(8).nextKgPerTurn).toBeCloseTo(mean(shifted.slice(6, 8)), 12);
    expect(settingAt(10).todayKgPerTurn).toBeCloseTo(mean(shifted.slice(6, 9)), 12);
    expect(settingAt(10).nextKgPerTurn).toBeCloseTo(0.3176, 12);
  });

  it("know the spread from earlier levels where the one in force has one fill", async () => {
    const startsAfresh = [{ bin: "1", product: null, fill: 7 }];
    const [lone] = fitModel(logOf(shifted.slice(0, 7)), options, { startsAfresh }).meters;
    const { spread, mean, nextFill, fills } = present(lone).across;
    expect(fills).toBe(1);
    expect(spread).toMatchObject({ source: "own", df: 5, fills: 6 });
    expect(nextFill.value).toBeCloseTo(0.3165, 12);
    const [half] = await evalR("qt(0.975, 5) * sd(b) * sqrt(2)", { b: calm });
    const { upper } = present(nextFill.interval);
    expect(present(upper) - nextFill.value).toBeCloseTo(present(half), 11);
    // One fill of a level says nothing of how neighbouring fills of it are alike.
    expect(mean.interval).toBeNull();
  });

  it("lend to other meters what fills of one level differ by, not what moved them", async () => {
    const lone = aFill([[20, 4]], { bin: "2" });
    const { record } = present(meter);
    const [variance, nu, s2] = await evalR(
      `${votesInR}
       ss <- function(b) sum((b / mean(b) - 1)^2)
       s2 <- (ss(before) + ss(after)) / 8
       c(s2, prior.of(vote.of.others(s2, 8)))`,
      { before: calm, after: shifted.slice(6) },
    );
    expect(record.spread).toEqual({ variance: expect.closeTo(present(variance), 12), df: 8 });
    const lent = present(fitModel([...logOf(shifted), ...lone], options).meters[1]).across.spread;
    expect(lent).toMatchObject({ source: "lent", ownDf: 0, df: expect.closeTo(present(nu), 9) });
    expect(present(lent.relative) ** 2).toBeCloseTo(present(s2), 12);
  });
});

/** Two meters of other seasons, nine fills each, whose fills differ by 2.1 % and by 3.4 %. */
const library = [0.021, 0.034].map((sd) => ({
  product: "barley",
  spread: { variance: sd ** 2, df: 8 },
  scatter: null,
}));
/** Figures to 12 digits: others' votes are summed up once, and what sums leave behind depends on who is among them. */
const asTold = (steps: MeterHistory["steps"]) =>
  steps.map((step) =>
    Object.entries(step).map(([name, value]) => [
      name,
      typeof value === "number" ? value.toPrecision(12) : value,
    ]),
  );

const lentBySeasons = { borrowing: { ...usualBorrowing, library } };

describe("a history cut short, to which others lend their spread", () => {
  const at = (fills: number) =>
    present(fitModel(logOf(shifted.slice(0, fills)), options, lentBySeasons).meters[0]).history;

  it("is judged with what they lend: told a fill later than by itself, because they differ by more", () => {
    // By themselves the fills are told to have moved with the eighth.
    expect([7, 8, 9].map((fills) => at(fills).status)).toEqual(["steady", "steady", "moved"]);
    expect(present(at(9).moved).since.fill).toBe(7);
  });

  it("has its newest fill judged from the second on, by itself from the third", () => {
    const judged = ({ steps }: MeterHistory) => steps.map(({ pValue }) => pValue !== null);
    expect(judged(at(3))).toEqual([false, true, true]);
    expect(judged(historyIn(logOf(shifted.slice(0, 3))))).toEqual([false, false, true]);
  });

  it("is that of the log cut there, also where other bins of the log lend", () => {
    const others = (fills: number) =>
      logOf([0.21, 0.2135, 0.2118, 0.2092, 0.2141].slice(0, fills)).map((row) => ({
        ...row,
        bin: "2",
      }));
    const history = (fills: number, ofOthers = 5) =>
      present(fitModel([...logOf(shifted.slice(0, fills)), ...others(ofOthers)], options).meters[0])
        .history;
    const whole = history(10);
    expect(whole.changes).toHaveLength(1);
    for (let fills = 1; fills <= 10; fills++)
      expect(asTold(history(fills).steps)).toEqual(asTold(whole.steps.slice(0, fills)));
    // What other bins catch later speaks too: only a log cut for all of them is as it was known then.
    expect(asTold(history(7, 2).steps)).not.toEqual(asTold(whole.steps.slice(0, 7)));
  });

  it("is that of the log cut by time, in whatever order its rows stand", () => {
    const dated = (rows: readonly Catch[]) =>
      rows.map((row) => ({ ...row, takenAt: `2026-03-${String(row.fill + 9)}` }));
    const log = dated([
      ...logOf(shifted),
      ...logOf([0.21, 0.2135, 0.2118, 0.2092, 0.2141, 0.2127]).map((row) => ({ ...row, bin: "2" })),
    ]);
    for (const day of [2, 4, 7, 8, 10]) {
      const until = log.filter(({ fill }) => fill <= day);
      const [inOrder, reversed] = [until, [...until].reverse()].map(
        (rows) => present(fitModel(rows, options).meters.find(({ bin }) => bin === "1")).history,
      );
      expect(present(inOrder).steps).toHaveLength(day);
      expect(asTold(present(reversed).steps)).toEqual(asTold(present(inOrder).steps));
    }
  });
});

describe("any log", () => {
  const list = fc.integer({ min: 1, max: 50_000 }).map((seed) => {
    const random = randomStream(seed);
    let center = 0.3;
    return Array.from({ length: 14 }, () => {
      if (random.uniform() < 0.12) center *= 1 + 0.08 * random.normal();
      const odd = random.uniform() < 0.08 ? 1 + 0.12 * random.normal() : 1;
      return Math.abs(center * odd * (1 + 0.01 * random.normal()));
    });
  });

  it("has a history that is plain data, and figures that are numbers", () => {
    fc.assert(
      fc.property(list, (deliveries) => {
        const [meter] = fitModel(logOf(deliveries), options).meters;
        const { history, across } = present(meter);
        expect(JSON.parse(JSON.stringify(history))).toEqual(history);
        expect(stretchInForce(history).length).toBeGreaterThan(0);
        expect(across.fills).toBe(stretchInForce(history).length);
        expect(across.nextFill.interval).not.toBeNull();
        expect(history.differs === null).toBe(!history.status.startsWith("fill differs"));
      }),
      { numRuns: 60 },
    );
  });

  it("is told the same in any unit of mass", () => {
    fc.assert(
      fc.property(list, (deliveries) => {
        const [plain, heavier] = [deliveries, deliveries.map((one) => 2.2046226 * one)].map((one) =>
          historyIn(logOf(one)),
        );
        expect(present(heavier).status).toBe(present(plain).status);
        expect(stretches(present(heavier))).toEqual(stretches(present(plain)));
      }),
      { numRuns: 60 },
    );
  });
});
