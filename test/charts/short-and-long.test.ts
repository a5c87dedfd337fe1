import { describe, expect, it } from "vitest";
import { shortAndLongChart } from "../../src/charts/short-and-long.ts";
import type { Catch } from "../../src/data/types.ts";
import { fitModel } from "../../src/model/model.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import { keyWords } from "../support/chart-keys.ts";
import { expectFromResult } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const asked = (log: readonly Catch[]) =>
  acrossFills(present(fitModel(log, options).meters[0]), options);
const alike = inventedFills({ fills: 5, catches: 4, spread: 0.02, scatter: 0.005 }, 9);
/** Every second catch three times as long; a bag of so much left in all of them. */
const log = (bag: number) =>
  alike.map((row, i) => {
    const times = i % 2 === 0 ? 1 : 3;
    return { ...row, turns: row.turns * times, netKg: row.netKg * times + bag };
  });

describe("short catches against long ones, drawn", () => {
  it("is sound and plots the result's own numbers", async () => {
    const result = asked(log(0));
    const spec = present(shortAndLongChart(result, words));
    expect(await faultsOf(spec)).toEqual([]);
    expectFromResult(spec, result, ...Array.from({ length: 49 }, (_, i) => i));
    expect(keyWords(spec)).toEqual(["fill", "short as long", "chance alone, 95\u00a0%"]);
  });

  it("is not drawn of catches of one length, or of two fills", () => {
    expect(shortAndLongChart(asked(alike), words)).toBeNull();
    expect(shortAndLongChart(asked(log(0).filter(({ fill }) => fill <= 2)), words)).toBeNull();
  });
});

describe("short and long", () => {
  it("put what is left in every catch off the diagonal, by its mass over the turns", () => {
    const [none, some] = [0, 0.2].map((bag) => present(asked(log(bag)).shortAndLong));
    for (const [i, fill] of present(none).fills.entries()) {
      const other = present(present(some).fills[i]);
      expect(other.short - fill.short).toBeCloseTo(0.2 / 20, 10);
      expect(other.long - fill.long).toBeCloseTo(0.2 / 60, 10);
    }
  });
});
