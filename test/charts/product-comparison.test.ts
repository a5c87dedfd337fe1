import { describe, expect, it } from "vitest";
import {
  productContrastsChart,
  productEstimatesChart,
} from "../../src/charts/product-comparison.ts";
import { expectFromResult, plotted } from "../support/plotted.ts";
import { compared, fillsOf, fourProducts } from "../support/product-answers.ts";
import { productTrialCatches } from "../support/product-trial.ts";
import { present } from "../support/reference.ts";
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
    expect(JSON.stringify(spec)).toContain('"product":"rye","fills":1,"mean":0.36,"lower":null');
  });

  it("shows light deliveries in grams", () => {
    const light = [...fillsOf("canola", [0.02, 0.021]), ...fillsOf("mustard", [0.018, 0.019])];
    const spec = productEstimatesChart(compared(light), words);
    expect(JSON.stringify(spec)).toContain("Delivery (g/turn)");
    expect(Math.max(...plotted(spec))).toBeGreaterThan(18);
  });
});

describe("products against one another", () => {
  it.each([
    ["with a band of equivalence", { equivalenceMargin: 0.02 }],
    ["without one", {}],
    ["within days", { blocks: "day" }],
    ["on the log scale against a reference", { scale: "log", reference: "pea" }],
  ] as const)("is sound and plots the result's own numbers, %s", async (_, given) => {
    const result = compared(await productTrialCatches(), given);
    const spec = present(productContrastsChart(result, words));
    expect(await faultsOf(spec)).toEqual([]);
    expectFromResult(spec, result, 1);
    expect(JSON.stringify(spec).includes("equivalent within")).toBe("equivalenceMargin" in given);
  });

  it("is not drawn without a pair", () => {
    expect(productContrastsChart(compared(fillsOf("wheat", [0.4, 0.41])), words)).toBeNull();
  });

  it("draws a pair that could not be tested as a point alone", async () => {
    const still = [...fillsOf("a", [0.4, 0.4]), ...fillsOf("b", [0.5, 0.5])];
    const spec = present(productContrastsChart(compared(still), words));
    expect(await faultsOf(spec)).toEqual([]);
    expect(JSON.stringify(spec.layer)).not.toContain('"type":"rule","style":"estimate"');
  });
});
