import { describe, expect, it } from "vitest";
import { explainingVariablesChart } from "../../src/charts/explaining-variables.ts";
import { keyWords } from "../support/chart-keys.ts";
import { expectFromResult } from "../support/plotted.ts";
import { explained, fillsOf, fourProducts } from "../support/product-answers.ts";
import { productTrialCatches } from "../support/product-trial.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();

describe("delivery against bulk density", () => {
  it.each([{}, { newDensityKgPerM3: 700 }, { newDensityKgPerM3: 950 }])(
    "is sound and plots the result's own numbers: %o",
    async (given) => {
      const result = explained(await productTrialCatches(), given);
      const spec = present(explainingVariablesChart(result, words));
      expect(await faultsOf(spec)).toEqual([]);
      expectFromResult(spec, result);
      expect(keyWords(spec).includes("not tried yet, at its density")).toBe(
        "newDensityKgPerM3" in given,
      );
    },
  );

  it("has no line where all products have one density, and no band with one product", async () => {
    const one = fillsOf("wheat", [0.4, 0.41], { bulkDensityKgPerM3: 770 });
    const spec = present(explainingVariablesChart(explained(one), words));
    expect(await faultsOf(spec)).toEqual([]);
    expect(JSON.stringify(spec.layer)).not.toContain("next-band");
    const wide = present(
      explainingVariablesChart(explained(one, { newDensityKgPerM3: 800 }), words),
    );
    expect(await faultsOf(wide)).toEqual([]);
    expect(JSON.stringify(wide.layer)).not.toContain("next-band");
  });

  it("is not drawn where no density is recorded", () => {
    const bare = fourProducts.map((row) => ({ ...row, bulkDensityKgPerM3: null }));
    expect(explainingVariablesChart(explained(bare), words)).toBeNull();
  });

  it("shows customary units to who asks for them", () => {
    const spec = explainingVariablesChart(explained(fourProducts), english("us"));
    expect(JSON.stringify(spec)).toContain("Bulk density (lb/ft³)");
  });
});
