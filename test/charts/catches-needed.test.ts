import { describe, expect, it } from "vitest";
import { catchesNeededChart } from "../../src/charts/catches-needed.ts";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { english } from "../../src/wording/english/english.ts";
import { aLog, needed, priced } from "../support/planning-answers.ts";
import { expectFromResult } from "../support/plotted.ts";
import { faultsOf } from "../support/vega-lite.ts";

const words = english();
const log = aLog(6, 2);

describe("what each catch buys, drawn", () => {
  const cost = priced(log);
  const specs: readonly (readonly [string, ChartSpec])[] = [
    ["with cost", catchesNeededChart(needed(log), words, cost)],
    ["without cost", catchesNeededChart(needed(log), words)],
    ["before any catch", catchesNeededChart(needed(null), words)],
    ["one catch alone", catchesNeededChart(needed(aLog(0, 1)), words)],
    ["in US units", catchesNeededChart(needed(log), english("us"), cost)],
  ];

  it.each(specs)("is sound: %s", async (_, spec) => {
    expect(await faultsOf(spec)).toEqual([]);
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
  });

  it("plots the results' own numbers", () => {
    expectFromResult(catchesNeededChart(needed(log), words, cost), needed(log), cost);
  });

  it("puts the cost below the curve only where there is one", () => {
    const views = (spec: ChartSpec) => (spec.vconcat as unknown[]).length;
    expect(views(catchesNeededChart(needed(log), words, cost))).toBe(2);
    expect(views(catchesNeededChart(needed(log), words))).toBe(1);
    const unpriced = priced(log, { valueOfHour: null });
    expect(views(catchesNeededChart(needed(log), words, unpriced))).toBe(1);
  });
});
