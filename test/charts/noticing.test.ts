import { describe, expect, it } from "vitest";
import { noticingChart } from "../../src/charts/noticing.ts";
import { fitModel } from "../../src/model/model.ts";
import { drift } from "../../src/questions/drift.ts";
import { keyWords, layersIn } from "../support/chart-keys.ts";
import { aLog } from "../support/planning-answers.ts";
import { expectFromResult } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const model = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };

function driftOf(fills: number, tolerance = model.tolerance) {
  const options = { ...model, tolerance };
  const meter = present(fitModel(aLog(fills, 3), options).meters[0]);
  return drift(meter, { ...options, shiftOfInterest: 0.05 });
}

describe("how surely a shift would be noticed, drawn", () => {
  const result = driftOf(5);

  it("is sound and plots the result's own numbers", async () => {
    const spec = present(noticingChart(result, words));
    expect(await faultsOf(spec)).toEqual([]);
    expectFromResult(spec, result);
    expect(keyWords(spec).slice(0, 4)).toEqual(
      ["1 fill", "2 fills", "3 fills", "6 fills"].map((fills) => `after ${fills}`),
    );
  });

  it("tells every curve by more than its colour", () => {
    const lines = layersIn(present(noticingChart(result, words))).filter(
      ({ mark }) => mark.type === "line",
    );
    expect(new Set(lines.map(({ mark }) => mark.style)).size).toBe(lines.length);
  });

  it("marks the tolerance only where the curves reach it", () => {
    const marked = (tolerance: number) =>
      keyWords(present(noticingChart(driftOf(5, tolerance), words))).some((one) =>
        one.startsWith("tolerance"),
      );
    expect([marked(0.03), marked(0.9)]).toEqual([true, false]);
  });

  it("is not drawn where the chances are not known", () => {
    expect(noticingChart(driftOf(1), words)).toBeNull();
  });
});
