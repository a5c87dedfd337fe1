import { describe, expect, it } from "vitest";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { costChart } from "../../src/charts/cost.ts";
import { inlined } from "../support/chart-keys.ts";
import { aLog, priced } from "../support/planning-answers.ts";
import { expectFromResult, plotted } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const log = aLog(6, 2);

describe("the cost of errors and catches, drawn", () => {
  it.each(["metric", "us"] as const)("is sound in %s units", async (units) => {
    expect(await faultsOf(present(costChart(priced(log), english(units))))).toEqual([]);
  });

  it("plots the result's own numbers", () => {
    expectFromResult(present(costChart(priced(log), words)), priced(log));
  });

  it("has a bar for each number of catches that is priced", () => {
    const few = priced(aLog(1, 2));
    const catches = (spec: ChartSpec) =>
      new Set(plotted((inlined(spec).layer as object[])[0]).filter(Number.isInteger)).size;
    // Skipping cannot be priced with two fills, so its bar is missing.
    expect(catches(present(costChart(priced(log), words)))).toBe(9);
    expect(catches(present(costChart(few, words)))).toBe(8);
  });

  it("is not drawn without prices", () => {
    expect(costChart(priced(log, { response: null }), words)).toBeNull();
  });
});
