import { describe, expect, it } from "vitest";
import { effectTable } from "../../../src/analysis/tables/explaining.ts";
import { contrastTable, productTable } from "../../../src/analysis/tables/products.ts";
import { rowsToCsv } from "../../../src/data/write-csv.ts";
import { explainingVariablesOptions } from "../../../src/questions/explaining-variables/options.ts";
import { explainingVariables } from "../../../src/questions/explaining-variables.ts";
import { productComparisonOptions } from "../../../src/questions/product-comparison/options.ts";
import { productComparison } from "../../../src/questions/product-comparison.ts";
import { productTrialModel, trialOptions } from "../../support/product-trial.ts";
import { present } from "../../support/reference.ts";

describe("tables of a comparison", () => {
  it("hold the numbers of the comparison, contrast by contrast and product by product", async () => {
    const options = productComparisonOptions(trialOptions, { equivalenceMargin: 0.02 });
    const result = productComparison(await productTrialModel(), options);
    const contrasts = contrastTable(result);
    expect(contrasts).toHaveLength(6);
    result.contrasts.forEach((contrast, i) => {
      expect(contrasts[i]).toMatchObject({
        first: contrast.first,
        second: contrast.second,
        difference_kg_per_turn: present(contrast.difference).value,
        difference_lower: present(contrast.difference?.interval).lower,
        p_adjusted: contrast.pValue,
        p_equivalence: present(contrast.equivalence).pValue,
        equivalence_level: 0.9,
        paired_verdict: null,
        verdict: contrast.verdict,
        margin: 0.02,
      });
    });
    const products = productTable(result);
    result.products.forEach((product, i) => {
      expect(products[i]).toMatchObject({
        product: product.product,
        value: product.estimate.value,
      });
    });
  });

  it("hold what the same pairs come to with spreads not assumed alike, where one is pooled", async () => {
    const options = productComparisonOptions(trialOptions, { blocks: "day" });
    const result = productComparison(await productTrialModel(), options);
    const rows = contrastTable(result);
    result.contrasts.forEach(({ notAlike, ratio }, i) => {
      const [own, beside] = [ratio.set, present(notAlike).ratio.set];
      expect(rows[i]).toMatchObject({
        scale: "log",
        method: "tukey-blocks",
        ratio_lower: own?.shape === "interval" ? own.lower : null,
        paired_ratio_upper: beside?.shape === "interval" ? beside.upper : null,
        paired_df: 4,
        paired_verdict: notAlike?.verdict,
      });
    });
  });

  it("hold every effect of the explaining variables, and the level at which it was found", async () => {
    const result = explainingVariables(
      await productTrialModel(),
      explainingVariablesOptions(trialOptions),
    );
    const rows = effectTable(result);
    expect(rows.map((row) => [row.variable, row.between, row.together_with])).toEqual([
      ["bulk density", "products", null],
      ["moisture", "products", null],
      ["bulk density", "products", "moisture"],
      ["moisture", "products", "bulk density"],
      ["bulk density", "fills within products", "moisture"],
      ["moisture", "fills within products", "bulk density"],
      ["meter speed", "catches within fills", null],
    ]);
  });

  it("are the same through JSON, and a line longer than their rows as CSV", async () => {
    const options = productComparisonOptions(trialOptions);
    const rows = contrastTable(productComparison(await productTrialModel(), options));
    expect(JSON.parse(JSON.stringify(rows))).toEqual(rows);
    expect(rowsToCsv(rows).trimEnd().split("\n")).toHaveLength(rows.length + 1);
  });
});
