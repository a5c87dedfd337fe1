import { describe, expect, it } from "vitest";
import { productEstimatesChart } from "../../src/charts/product-comparison.ts";
import { expectFromResult, plotted } from "../support/plotted.ts";
import { compared, fillsOf, fourProducts } from "../support/product-answers.ts";
import { productTrialCatches } from "../support/product-trial.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();

describe("products side by side", () => {
  it("is sound and plots the result's own numbers", async () => {
    const result = compared(await productTrialCatches());
    const spec = productEstimatesChart(result, words);
    expect(await faultsOf(spec)).toEqual([]);
    expectFromResult(spec, result);
  });

  it("shows a product of one fill without an interval", async () => {
    const result = compared(fourProducts);
    const spec = productEstimatesChart(result, words);
    expect(await faultsOf(spec)).toEqual([]);
    expect(JSON.stringify(spec)).toContain(
      '"product":"rye","fills":1,"mean":0.36,"said":"0.3600","lower":null',
    );
  });

  it("shows light deliveries in grams", () => {
    const light = [...fillsOf("canola", [0.02, 0.021]), ...fillsOf("mustard", [0.018, 0.019])];
    const spec = productEstimatesChart(compared(light), words);
    expect(JSON.stringify(spec)).toContain("Delivery (g/turn)");
    expect(Math.max(...plotted(spec))).toBeGreaterThan(18);
  });
});
