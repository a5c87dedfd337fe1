import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  alarmTable,
  foundTable,
  nextFillTable,
  statedPowerTable,
} from "../../../bench/study/drift/decision.ts";
import { historyWith, over, togetherBy } from "../../../bench/study/drift/judge.ts";
import { twoByNine } from "../../../bench/study/drift/library.ts";
import { lastingRows, nextFillRows, steadyRows } from "../../../bench/study/drift/plans.ts";
import { rateTable, type Way } from "../../../bench/study/drift/rates.ts";
import { settlingTable } from "../../../bench/study/drift/settling.ts";
import type { DriftStudy } from "../../../bench/study/drift/tables.ts";
import { togetherTable } from "../../../bench/study/drift/together.ts";
import { verdictOn } from "../../../bench/study/support/claims.ts";
import { usualBorrowing } from "../../../src/model/lenders.ts";
import { metersOf } from "../../../src/model/meters.ts";
import { fitModel } from "../../../src/model/model.ts";
import { falseAlarms } from "../../../src/questions/drift/rates.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";

const seasons = 1500;
const elsewhere = 40_000;
/** Four standard errors of the difference of two simulated rates: some forty are compared. */
const simulationError = (rate: number, others = elsewhere, own = seasons) =>
  4 * Math.sqrt((rate * (1 - rate) + 0.002) * (1 / own + 1 / others));

describe("what the study asks", () => {
  it("is what the model answers, by itself and with a library", () => {
    const record = (sd: number) => ({
      product: "wheat",
      spread: { variance: sd ** 2, df: 8 },
      scatter: null,
    });
    for (const library of [[], [record(0.021), record(0.034)]])
      for (const seed of [1, 2, 3, 4]) {
        const catches = inventedFills({ fills: 12, catches: 3, spread: 0.03, scatter: 0.01 }, seed);
        const model = fitModel(catches, {}, { borrowing: { ...usualBorrowing, library } });
        const meter = present(model.meters[0]);
        expect(meter.withAll).toBeNull();
        const history = historyWith(present(metersOf(catches)[0]), meter.spreadVote);
        expect(history.steps).toEqual(meter.history.steps);
        expect(togetherBy(history, meter.spreadVote).nextFill).toEqual(meter.across.nextFill);
      }
  });

  it("has a library that is not centred on the meter", () => {
    const ratios = over({ library: twoByNine, own: "drawn", scatter: 0 }, 400, 6, (season) => ({
      drawn: Math.log(season.spread / 0.02),
      told: present(season.outside).center / 2 - Math.log(0.02),
    }));
    const variance = (list: readonly number[]) => {
      const mean = list.reduce((sum, one) => sum + one / list.length, 0);
      return list.reduce((sum, one) => sum + (one - mean) ** 2 / list.length, 0);
    };
    // The meter's own about the middle: 0.5². The mean of two others about it: (0.5² + ψ′(4)/4)/2 = 0.160.
    expect(Math.abs(variance(ratios.map(({ drawn }) => drawn)) - 0.25)).toBeLessThan(0.07);
    expect(Math.abs(variance(ratios.map(({ told }) => told)) - 0.16)).toBeLessThan(0.06);
    const apart = variance(ratios.map(({ drawn, told }) => drawn - told));
    expect(Math.abs(apart - 0.41)).toBeLessThan(0.12);
  });

  it("misses a claim only beyond the error of the simulation", () => {
    expect(verdictOn(0.69, { from: 0.7 }, 4000)).toBe("met");
    expect(verdictOn(0.68, { from: 0.7 }, 4000)).toBe("missed");
    expect(verdictOn(0.06, { from: 0.04, to: 0.055 }, 4000)).toBe("met");
    expect(verdictOn(0.07, { from: 0.04, to: 0.055 }, 4000)).toBe("missed");
    expect(verdictOn(1, { to: 0.99 }, 50)).toBe("met");
  });
});

describe("the decision after every fill, in simulated seasons", () => {
  // Simulated in R, 40,000 series: test/reference/generate/seasons.R. Three catches a fill, catch scatter 1.5 %, spread 2 %.
  it.each([
    ["by itself", null, [0.006, 0.015, 0.03, 0.05]],
    ["with two other meters of nine fills", twoByNine, [null, null, null, 0.048]],
  ] as const)(
    "finds something in a steady season as seldom as elsewhere, %s",
    (_, library, wanted) => {
      const [cell] = alarmTable([{ library }], [4, 6, 9, 12], seasons, 41);
      present(cell).by.forEach(({ share, fills }, i) => {
        const rate = present(wanted)[i] ?? null;
        if (rate !== null)
          expect(Math.abs(share - rate), `${fills} fills`).toBeLessThan(simulationError(rate));
      });
    },
  );

  // Simulated in R, 40,000 seasons a cell: test/reference/generate/seasons.R; with a library, of a meter in the middle of it.
  it.each([
    [0.05, 4, 0.447, 0.533],
    [0.05, 7, 0.642, 0.725],
    [0.08, 3, 0.611, 0.746],
    [0.08, 4, 0.872, 0.933],
    [0.08, 7, 0.971, 0.989],
  ])("finds a change of %d from fill %d on as often as elsewhere", (shift, from, own, lent) => {
    const library = { ...twoByNine, timesAsWild: 1 };
    const cells = foundTable(
      [
        { shift, from },
        { shift, from, library },
      ],
      600,
      42,
    );
    [own, lent].forEach((rate, i) => {
      const { found, placed } = present(cells[i]);
      expect(Math.abs(found - rate)).toBeLessThan(simulationError(rate, elsewhere, 600));
      expect(placed).toBeGreaterThan(0.85);
    });
  });

  it("leaves a band for the next fill that holds what it says", () => {
    const plans = nextFillRows.filter(({ claim }) => claim !== null).map(({ plan }) => plan);
    const cells = nextFillTable(plans, 400, 43);
    expect(cells).toHaveLength(10);
    // Claimed: .93 to .975. Three standard errors of .95 with 400 seasons are .033.
    for (const { covered } of cells) expect(covered).toBeGreaterThan(0.93 - 0.033);
    const last = present(cells.at(-1));
    expect(last.halfWidth).toBeLessThan(last.allHalfWidth / 2 + 0.005);
  });

  it("is asked of bins that lend each other, and finds in them what they all do", () => {
    const [steady, moved] = togetherTable(
      [
        { bins: 3, shared: 0 },
        { bins: 3, shared: 0, shift: 0.05, from: 7 },
      ],
      60,
      44,
    );
    expect(present(steady).found).toBeLessThan(0.051 + 0.05);
    // .733 in R: test/reference/generate/seasons.R; four standard errors with 180 meters are .14.
    expect(Math.abs(present(moved).found - 0.733)).toBeLessThan(0.14);
    expect(present(moved).onTheDay).toBeLessThanOrEqual(present(moved).found);
  });

  it("reassures with a lent spread no more than is found", () => {
    const plan = { fills: 9, spread: 0.02, shift: 0.05, library: twoByNine };
    const [cell] = statedPowerTable([plan], 400, 45);
    const { stated, happened, said } = present(cell);
    expect(said).toBeGreaterThan(0.9);
    expect(stated).toBeLessThan(happened + 3 * Math.sqrt(0.25 / 400));
    expect(stated).toBeGreaterThan(0.2);
  });
});

describe("the study that is kept", () => {
  const file = new URL("../../../reports/drift-study.json", import.meta.url);
  const study: DriftStudy = JSON.parse(readFileSync(file, "utf8"));
  const byTwelve = (name: string) =>
    present(
      present(study.alarms.find((cell) => cell.name === name)).by.find(
        ({ fills }) => fills === falseAlarms.own.fills,
      ),
    ).share;

  it("has the false alarms that every report states, by itself and with a lent spread", () => {
    for (const [name, { season, alike, fills }] of [
      ["by itself", falseAlarms.own],
      ["2 × 9", falseAlarms.lent],
    ] as const) {
      expect(fills).toBe(falseAlarms.own.fills);
      expect(Math.abs(byTwelve(name) - season)).toBeLessThan(0.006);
      expect(alike.correlation).toBe(0.6);
      expect(
        Math.abs(byTwelve(`${name}, neighbours alike, correlation 0.6`) - alike.season),
      ).toBeLessThan(0.015);
    }
    const { times, season } = falseAlarms.lent.wilder;
    const wild = byTwelve(`2 × 9, fills differ ${times} times as much as the library's`);
    expect(Math.abs(wild - season)).toBeLessThan(0.01);
  });

  it("has findings of any of several meters as if they were independent, as every report reckons", () => {
    const steady = study.together.filter(
      ({ shift, shared }) => shift === undefined && shared === 0,
    );
    expect(steady.map(({ bins }) => bins)).toEqual([2, 3, 5]);
    for (const { bins, found, anyOfLog, logs } of steady) {
      const independent = 1 - (1 - found) ** bins;
      const error = Math.sqrt((independent * (1 - independent)) / logs);
      expect(Math.abs(anyOfLog - independent)).toBeLessThan(4 * error);
      expect(found).toBeLessThan(0.055 + 2 * Math.sqrt((0.05 * 0.95) / (bins * logs)));
    }
  });

  it("is of the rows there are, and keeps their claims but one", () => {
    const rows = [...steadyRows, ...lastingRows, ...nextFillRows];
    const cells = [...study.alarms, ...study.lasting, ...study.nextFills];
    expect(cells.map(({ name, claim }) => [name, claim])).toEqual(
      rows.map(({ name, claim }) => [name, claim]),
    );
    const missed = cells.filter(({ verdict }) => verdict === "missed");
    // A meter that may be anywhere about the middle of its library is found less often than one that is in it.
    expect(missed).toEqual([expect.objectContaining({ name: "2 × 9", shift: 0.08, from: 4 })]);
    expect(present(missed[0])).toMatchObject({ claim: { from: 0.92 } });
  });

  it("finds more with a lent spread than without", () => {
    const found = (name: string) => study.lasting.filter((cell) => cell.name === name);
    const [own, lent] = [found("by itself"), found("2 × 9")];
    expect(own).toHaveLength(9);
    own.forEach((cell, i) => {
      const other = present(lent[i]);
      expect([other.shift, other.from]).toEqual([cell.shift, cell.from]);
      expect(other.withinThree).toBeGreaterThan(cell.withinThree);
    });
  });

  it("states no more than happens where it says at least", () => {
    const lent = study.stated.filter(({ library }) => library != null);
    expect(lent).toHaveLength(9);
    for (const { stated, happened } of lent) expect(stated).toBeLessThan(happened + 0.02);
  });
});

/** Simulated in R, 40,000 seasons a row: test/reference/generate/seasons.R. Three catches a fill, catch scatter 1.5 %, spread 2 %. */
const independent: readonly {
  fills: number;
  shift: number;
  rates: Partial<Record<Way, number>>;
}[] = [
  {
    fills: 6,
    shift: 0,
    rates: { "trend alone": 0.052, "shift alone": 0.051, "Mann–Kendall": 0.017 },
  },
  {
    fills: 12,
    shift: 0,
    rates: {
      "trend alone": 0.048,
      "shift alone": 0.05,
      "Mann–Kendall": 0.042,
      "individuals chart": 0.028,
      "EWMA of scores": 0.054,
      "CUSUM of scores": 0.119,
    },
  },
  {
    fills: 8,
    shift: 0.05,
    rates: {
      "trend alone": 0.51,
      "shift alone": 0.54,
      "Mann–Kendall": 0.3,
      "individuals chart": 0.089,
      "EWMA of scores": 0.148,
      "CUSUM of scores": 0.405,
    },
  },
  {
    fills: 12,
    shift: 0.05,
    rates: { "trend alone": 0.787, "shift alone": 0.796, "Mann–Kendall": 0.66 },
  },
];

describe("tests that look once, at the end of simulated seasons", () => {
  it.each(independent)(
    "find as much as elsewhere, of $fills fills with a shift of $shift",
    (cell) => {
      const [found] = rateTable([{ fills: cell.fills, shift: cell.shift }], seasons, 31);
      for (const [way, rate] of Object.entries(cell.rates)) {
        const difference = Math.abs(present(found).rates[way as Way] - rate);
        expect(difference, way).toBeLessThan(simulationError(rate));
      }
    },
  );

  it("are the same with the same seed", () => {
    const run = () => rateTable([{ fills: 6 }], 100, 4);
    expect(run()).toEqual(run());
  });

  it("settle no more often than they say when nothing settles", () => {
    for (const { perCatch, found } of settlingTable(1000, 5).filter((one) => one.perCatch === 0)) {
      expect(perCatch).toBe(0);
      expect(found).toBeLessThan(0.05 + 0.0245);
      expect(found).toBeGreaterThan(0.05 - 0.0245);
    }
  });
});
