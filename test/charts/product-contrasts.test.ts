import { describe, expect, it } from "vitest";
import { productContrastsChart } from "../../src/charts/product-contrasts.ts";
import type { ProductComparisonChoices } from "../../src/questions/product-comparison/options.ts";
import { expectFromResult } from "../support/plotted.ts";
import { compared, fillsOf } from "../support/product-answers.ts";
import { productTrialCatches } from "../support/product-trial.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();

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

  it("draws what equivalence is read off, and the pair with spreads not assumed alike, where there are such", async () => {
    const linesOf = async (given: Partial<ProductComparisonChoices>) => {
      const result = compared(await productTrialCatches(), given);
      const spec = JSON.stringify(productContrastsChart(result, words));
      return [spec.includes('"size":7'), spec.includes('strokeDash":[4,3]')];
    };
    expect(await linesOf({})).toEqual([false, false]);
    expect(await linesOf({ equivalenceMargin: 0.02 })).toEqual([true, false]);
    expect(await linesOf({ blocks: "day" })).toEqual([false, true]);
    expect(await linesOf({ blocks: "day", equivalenceMargin: 0.02 })).toEqual([true, true]);
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
