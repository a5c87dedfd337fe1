import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  type AlarmCell,
  alarmTable,
  type FoundCell,
  foundTable,
  type NextFillCell,
  nextFillTable,
} from "../../../bench/study/drift/decision.ts";
import { rateTable, type Way } from "../../../bench/study/drift/rates.ts";
import { settlingTable } from "../../../bench/study/drift/settling.ts";
import { falseAlarms } from "../../../src/questions/drift/rates.ts";
import { present } from "../../support/reference.ts";

const seasons = 1500;
const elsewhere = 6000;
/** Four standard errors of the difference of two simulated rates: some forty are compared. */
const simulationError = (rate: number, others = elsewhere, own = seasons) =>
  4 * Math.sqrt((rate * (1 - rate) + 0.002) * (1 / own + 1 / others));

describe("the decision after every fill, in simulated seasons", () => {
  // By an independent program (numpy, 200,000 series): three catches a fill, catch scatter 1.5 %, spread 2 %.
  it("finds something in a steady season as seldom as elsewhere", () => {
    const [{ by }] = alarmTable([{}], [4, 6, 9, 12], seasons, 41) as [AlarmCell];
    const wanted = [0.007, 0.015, 0.032, 0.051];
    by.forEach(({ share, fills }, i) => {
      const rate = present(wanted[i]);
      expect(Math.abs(share - rate), `${fills} fills`).toBeLessThan(simulationError(rate, 2e5));
    });
  });

  // By another independent program, 4,000 seasons a cell.
  it.each([
    [0.05, 4, 0.444],
    [0.05, 7, 0.639],
    [0.08, 3, 0.61],
    [0.08, 4, 0.869],
    [0.08, 7, 0.967],
  ])("finds a change of %d from fill %d on as often as elsewhere", (shift, from, rate) => {
    const [{ found, placed }] = foundTable([{ shift, from }], 600, 42) as [FoundCell];
    expect(Math.abs(found - rate)).toBeLessThan(simulationError(rate, 4000, 600));
    expect(placed).toBeGreaterThan(0.85);
  });

  it("leaves a band for the next fill that holds what it says", () => {
    const cells = nextFillTable(
      [{}, ...[0.05, 0.08].flatMap((shift) => [4, 7].map((from) => ({ shift, from })))],
      400,
      43,
    );
    // Claimed: .93 to .975. Three standard errors of .95 with 400 seasons are .033.
    for (const { covered } of cells) expect(covered).toBeGreaterThan(0.93 - 0.033);
    const [, , , , last] = cells;
    expect(present(last).halfWidth).toBeLessThan(present(last).allHalfWidth / 2 + 0.005);
  });
});

describe("the study that is kept", () => {
  interface Study {
    readonly seasons: number;
    readonly alarms: readonly AlarmCell[];
    readonly lasting: readonly FoundCell[];
    readonly nextFills: readonly NextFillCell[];
  }
  const file = new URL("../../../reports/drift-study.json", import.meta.url);
  const study: Study = JSON.parse(readFileSync(file, "utf8"));
  const byTwelve = (cell: AlarmCell | undefined) =>
    present(present(cell).by.find(({ fills }) => fills === falseAlarms.fills)).share;

  it("has the false alarms that every report states", () => {
    const alike = study.alarms.find(({ correlation }) => correlation === 0.6);
    expect(byTwelve(study.alarms[0])).toBeLessThanOrEqual(0.055);
    expect(Math.round(1 / byTwelve(study.alarms[0]))).toBeGreaterThanOrEqual(18);
    expect(Math.abs(byTwelve(study.alarms[0]) - falseAlarms.season)).toBeLessThan(0.006);
    expect(Math.abs(byTwelve(alike) - falseAlarms.alike.season)).toBeLessThan(0.015);
    expect(present(alike).correlation).toBe(falseAlarms.alike.correlation);
  });

  it("finds a shift of 5 % from fill 7 in three of five seasons, one of 8 % from fill 4 in six of seven", () => {
    const found = (shift: number, from: number) =>
      present(study.lasting.find((cell) => cell.shift === shift && cell.from === from)).found;
    expect(found(0.05, 7)).toBeGreaterThanOrEqual(0.6);
    expect(found(0.08, 4)).toBeGreaterThanOrEqual(0.85);
  });

  it("holds the next fill in 93 to 97.5 % of seasons, steady or moved", () => {
    const claimed = study.nextFills.slice(0, 5);
    expect(claimed.map(({ shift }) => shift ?? 0)).toEqual([0, 0.05, 0.05, 0.08, 0.08]);
    for (const { covered } of claimed) {
      expect(covered).toBeGreaterThanOrEqual(0.93);
      expect(covered).toBeLessThanOrEqual(0.975);
    }
  });
});

/** By an independent program (numpy, R = 6,000): three catches a fill, catch scatter 1.5 %, spread 2 %. */
const independent: readonly {
  fills: number;
  shift: number;
  rates: Partial<Record<Way, number>>;
}[] = [
  {
    fills: 6,
    shift: 0,
    rates: { "trend alone": 0.046, "shift alone": 0.046, "Mann–Kendall": 0.018 },
  },
  {
    fills: 12,
    shift: 0,
    rates: {
      "trend alone": 0.048,
      "shift alone": 0.047,
      "Mann–Kendall": 0.045,
      "individuals chart": 0.03,
      "EWMA of scores": 0.05,
      "CUSUM of scores": 0.13,
    },
  },
  {
    fills: 8,
    shift: 0.05,
    rates: {
      "trend alone": 0.51,
      "shift alone": 0.54,
      "Mann–Kendall": 0.31,
      "individuals chart": 0.09,
      "EWMA of scores": 0.15,
      "CUSUM of scores": 0.4,
    },
  },
  {
    fills: 12,
    shift: 0.05,
    rates: { "trend alone": 0.78, "shift alone": 0.81, "Mann–Kendall": 0.66 },
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
