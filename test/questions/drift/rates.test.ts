import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { type BorrowingChoices, usualBorrowing } from "../../../src/model/lenders.ts";
import { fitModel, type MeterModel, type ModelChoices } from "../../../src/model/model.ts";
import {
  falseAlarms,
  falseAlarmsOf,
  falseAlarmsTogether,
  powerOf,
} from "../../../src/questions/drift/rates.ts";
import { lastingShiftChance } from "../../../src/statistics/lasting-shift-power.ts";
import { typicalSpread } from "../../../src/statistics/spread-within.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

const wobble = [0.0, 0.006, -0.004, 0.003, -0.007, 0.005, -0.002, 0.004, -0.005];
const steady = wobble.map((error) => 0.4 * (1 + error));

function logOf(deliveries: readonly number[]): Catch[] {
  return deliveries.flatMap((delivery, f) =>
    aFill(
      [0.995, 1.005].map((error) => [20, 20 * delivery * error] as const),
      { fill: f + 1 },
    ),
  );
}

/** Two meters of another season, of nine fills each. */
const library: BorrowingChoices = {
  ...usualBorrowing,
  library: [0.004, 0.008].map((sd) => ({
    product: "wheat",
    spread: { variance: sd ** 2, df: 8 },
    scatter: null,
  })),
};

/** Of the study: shares of steady seasons with any finding, by what they are like and by how many fills they have. */
interface SteadySeasons {
  readonly seasons: number;
  readonly alarms: readonly {
    readonly name: string;
    readonly by: readonly { readonly fills: number; readonly share: number }[];
  }[];
}

function meterOf(deliveries: readonly number[], choices: ModelChoices = {}): MeterModel {
  return present(fitModel(logOf(deliveries), {}, choices).meters[0]);
}

describe("what would have been found by now", () => {
  it("is at least what the meter's own spread would have found, where others lend theirs", () => {
    const meter = meterOf(steady, { borrowing: library });
    const { spread } = meter.across;
    const power = present(powerOf(meter, 0.02));
    expect(spread.source).toBe("lent");
    // The middle of what is known of the spread: the moderated one on ν0 + 8 degrees of freedom.
    const relativeSpread = typicalSpread(present(spread.relative), spread.df);
    expect(spread.df).toBeCloseTo(2.002518791 + 8, 9);
    expect(power.relativeSpread).toBeCloseTo(relativeSpread, 14);
    const plan = { before: 4, after: 5, shift: 0.02 / relativeSpread };
    expect(power).toMatchObject({
      chance: present(lastingShiftChance(plan)).chance,
      bound: "at least",
      sinceFill: 5,
      fillsBefore: 4,
      fillsSince: 5,
      lentBy: { from: "other bins", meters: 2 },
    });
  });

  it("is about as much as the table has where the meter speaks by itself, whatever the shift", () => {
    const meter = meterOf(steady);
    for (const shift of [0.001, 0.005, 0.02])
      expect(powerOf(meter, shift)).toMatchObject({ bound: "about", lentBy: null });
    expect(present(powerOf(meter, 0.2)).bound).toBe("at least");
    expect(present(powerOf(meter, 0.001)).chance).toBeLessThan(0.05);
  });

  it("is at least that much too where an earlier level speaks for the spread", () => {
    const startsAfresh = [{ bin: "1", product: null, fill: 5 }];
    const cut = meterOf(steady, { startsAfresh });
    expect(powerOf(cut, 0.02)).toMatchObject({ bound: "at least", lentBy: null, sinceFill: 8 });
  });

  it("is said from the fourth fill on, and never after a change, lent or not", () => {
    const moved = [...steady.slice(0, 5), ...steady.slice(0, 5).map((one) => 1.05 * one)];
    for (const choices of [{}, { borrowing: library }]) {
      const at = (deliveries: readonly number[]) => powerOf(meterOf(deliveries, choices), 0.05);
      expect(at(steady.slice(0, 3))).toBeNull();
      expect(at(steady.slice(0, 4))).not.toBeNull();
      expect(meterOf(moved, choices).history.changes).toHaveLength(1);
      expect(at(moved)).toBeNull();
    }
  });

  it("is asked of half the fills, rounded up, and of no more than the last six", () => {
    const splitOf = (fills: number) => {
      const deliveries = Array.from({ length: fills }, (_, i) => steady[i % steady.length] ?? 0);
      const { sinceFill, fillsBefore, fillsSince } = present(powerOf(meterOf(deliveries), 0.02));
      return [fillsBefore, fillsSince, sinceFill];
    };
    expect(splitOf(7)).toEqual([3, 4, 4]);
    expect(splitOf(12)).toEqual([6, 6, 7]);
    expect(splitOf(18)).toEqual([12, 6, 13]);
  });

  it("is said of fills that agree exactly only where others tell how much fills differ", () => {
    const alike = steady.map(() => 0.4);
    expect(powerOf(meterOf(alike), 0.02)).toBeNull();
    expect(powerOf(meterOf(alike, { borrowing: library }), 0.02)).not.toBeNull();
  });
});

describe("how often a steady meter is not let be", () => {
  it("is told by who speaks for the spread", () => {
    expect(falseAlarmsOf(meterOf(steady))).toBe(falseAlarms.own);
    expect(falseAlarmsOf(meterOf(steady, { borrowing: library }))).toBe(falseAlarms.lent);
    const assumed = { ...usualBorrowing, assumed: { spread: 0.03, scatter: null } };
    expect(falseAlarmsOf(meterOf(steady, { borrowing: assumed }))).toBe(falseAlarms.lent);
  });

  it("is told as reports/drift-study.json has it, within two standard errors of its 4,000 seasons", () => {
    const file = new URL("../../../reports/drift-study.json", import.meta.url);
    const { seasons, alarms }: SteadySeasons = JSON.parse(readFileSync(file, "utf8"));
    const held = (told: number, name: string) => {
      const cell = present(alarms.find((one) => one.name === name));
      const byTwelve = present(cell.by.find(({ fills }) => fills === 12)).share;
      expect(Math.abs(byTwelve - told), name).toBeLessThan(
        2 * Math.sqrt((told * (1 - told)) / seasons),
      );
    };
    for (const [name, { fills, season, alike }] of [
      ["by itself", falseAlarms.own],
      ["2 × 9", falseAlarms.lent],
    ] as const) {
      expect(fills).toBe(12);
      held(season, name);
      held(alike.season, `${name}, neighbours alike, correlation ${alike.correlation}`);
    }
    const { times, season } = falseAlarms.lent.wilder;
    held(season, `2 × 9, fills differ ${times} times as much as the library's`);
  });

  it("is, of several meters, the chance that not all of them are", () => {
    expect(falseAlarmsTogether([])).toBeNull();
    expect(falseAlarmsTogether([falseAlarms.own])).toBeNull();
    // 1 − 0.95², and below 1 − 0.95³.
    expect(falseAlarmsTogether([falseAlarms.own, falseAlarms.lent])).toEqual({
      meters: 2,
      fills: 12,
      season: expect.closeTo(0.0975, 12),
    });
    const three = [falseAlarms.lent, falseAlarms.lent, falseAlarms.own];
    expect(falseAlarmsTogether(three)).toEqual({
      meters: 3,
      fills: 12,
      season: expect.closeTo(0.142625, 12),
    });
  });
});
