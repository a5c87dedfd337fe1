import { describe, expect, it } from "vitest";
import { consistencyChart } from "../../src/charts/consistency.ts";
import type { Catch } from "../../src/data/types.ts";
import { fitModel } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { repeatability } from "../../src/questions/repeatability.ts";
import { keyWords } from "../support/chart-keys.ts";
import { aLog } from "../support/planning-answers.ts";
import { expectFromResult } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const asked = (log: readonly Catch[]) =>
  repeatability(present(fitModel(log, options).meters[0]), options);
/** A light hand takes 4 % less in every catch. */
const withHands = aLog(6, 3).map((row, i) => ({
  ...row,
  operator: ["Ann", "Ben", "Cem"][i % 3] ?? null,
  netKg: row.netKg * (i % 3 === 1 ? 0.96 : 1),
}));

describe("fills and operators among the others, drawn", () => {
  it("is sound and plots the result's own numbers", async () => {
    const result = asked(withHands);
    for (const by of ["fills", "operators"] as const) {
      const spec = present(consistencyChart(result, by, words));
      expect(await faultsOf(spec)).toEqual([]);
      expectFromResult(spec, result, 0, 1);
      expect(keyWords(spec)).toHaveLength(3);
    }
  });

  it("is not drawn of fewer than three, nor where nobody is named", () => {
    expect(consistencyChart(asked(aLog(1, 3)), "fills", words)).toBeNull();
    expect(consistencyChart(asked(aLog(6, 3)), "operators", words)).toBeNull();
  });
});

describe("consistency", () => {
  it("finds the hand that differs, whatever its fills deliver", () => {
    const found = present(asked(withHands).consistency.find(({ by }) => by === "operators"));
    const h = Object.fromEntries(found.groups.map((one) => [one.name, one.h]));
    expect(h.Ben).toBeLessThan(-1);
    expect(Math.abs(Number(h.Ann) - Number(h.Cem))).toBeLessThan(1);
  });

  it("says nothing of hands that never caught in one fill, since a fill would be taken for the hand", () => {
    const eachOwnFill = aLog(9, 3).map((row) => ({
      ...row,
      operator: ["Ann", "Ben", "Cem"][row.fill % 3] ?? null,
    }));
    expect(asked(eachOwnFill).consistency.map(({ by }) => by)).toEqual(["fills"]);
  });

  it("says nothing of hands of which no fill leads from some to the others", () => {
    const twoPairs = aLog(8, 4).map((row, i) => ({
      ...row,
      operator: (row.fill % 2 === 0 ? ["Ann", "Ben"] : ["Cem", "Dora"])[i % 2] ?? null,
    }));
    expect(asked(twoPairs).consistency.map(({ by }) => by)).toEqual(["fills"]);
  });

  it("rarely finds a hand that is none, beyond the limit of 5 in 100", () => {
    const beyond = { h: 0, k: 0 };
    let groups = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const random = randomStream(seed);
      const log = aLog(5, 6).map((row, i) => ({
        ...row,
        netKg: row.turns * 0.32 * (1 + 0.015 * random.normal()),
        operator: ["Ann", "Ben", "Cem"][i % 3] ?? null,
      }));
      const found = present(asked(log).consistency.find(({ by }) => by === "operators"));
      for (const { h, k, kLimits } of found.groups) {
        groups += 1;
        if (Math.abs(h) > found.hLimits[0]) beyond.h += 1;
        if (Number(k) > kLimits[0]) beyond.k += 1;
      }
    }
    expect(beyond.h / groups).toBeLessThan(0.08);
    expect(beyond.k / groups).toBeLessThan(0.08);
    expect(beyond.k).toBeGreaterThan(0);
  });

  it("leaves out fills of one catch", () => {
    const found = present(asked(aLog(6, 1)).consistency.find(({ by }) => by === "fills"));
    expect(found.groups.map(({ name }) => name)).toEqual(["1", "2", "3", "4", "5", "6"]);
  });
});
