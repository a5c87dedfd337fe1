import { describe, expect, it } from "vitest";
import { rowsToCsv } from "../../src/data/write-csv.ts";
import { fitModel, type Model } from "../../src/model/model.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { explainingVariablesOptions } from "../../src/questions/explaining-variables/options.ts";
import { explainingVariables } from "../../src/questions/explaining-variables.ts";
import { productComparisonOptions } from "../../src/questions/product-comparison/options.ts";
import { productComparison } from "../../src/questions/product-comparison.ts";
import {
  catchTable,
  contrastTable,
  type DeliveryOfFill,
  effectTable,
  estimateTable,
  productTable,
} from "../../src/questions/tidy-tables.ts";
import { aCatch, aFill } from "../support/catches.ts";
import { productTrialModel, trialOptions } from "../support/product-trial.ts";
import { present } from "../support/reference.ts";

const deliveryOf: DeliveryOfFill = (meter, fill) =>
  delivery(meter, { ...trialOptions, varianceLaw: "proportional" }, fill);
const catchesOf = (model: Model) => catchTable(model, deliveryOf);
const estimatesOf = (model: Model) => estimateTable(model, deliveryOf);

describe("one row a catch", () => {
  it("has every catch, with residuals that add up to nothing and leverages to one in every fill", async () => {
    const rows = catchesOf(await productTrialModel());
    expect(rows).toHaveLength(80);
    for (let fill = 1; fill <= 20; fill++) {
      const own = rows.filter((row) => row.fill === fill);
      const total = (column: string) => own.reduce((sum, row) => sum + Number(row[column]), 0);
      expect(Math.abs(total("residual_kg"))).toBeLessThan(1e-12);
      expect(total("leverage")).toBeCloseTo(1, 12);
    }
  });

  it("says of a fill what the delivery question says", async () => {
    const model = await productTrialModel();
    const meter = present(model.meters[0]);
    const fill = present(meter.fills[0]);
    const answer = delivery(meter, { ...trialOptions, varianceLaw: "proportional" }, fill);
    const rows = catchesOf(model).filter((row) => row.fill === fill.fill);
    answer.points.forEach(({ fittedKg, residualKg, leverage }, i) => {
      expect(rows[i]?.fitted_kg).toBeCloseTo(fittedKg, 14);
      expect(rows[i]?.residual_kg).toBeCloseTo(residualKg, 14);
      expect(rows[i]?.leverage).toBeCloseTo(leverage, 14);
    });
  });

  it("shows a catch that was left out, with the reason and without leverage", () => {
    const catches = [
      ...aFill([
        [20, 6],
        [20, 6.2],
      ]),
      aCatch({ catch: 3, turns: 20, netKg: 9, leftOut: "bag slipped" }),
    ];
    const rows = catchesOf(fitModel(catches, trialOptions));
    expect(rows[2]).toMatchObject({ catch: 3, leverage: null, left_out: "bag slipped" });
    expect(rows[2]?.residual_kg).toBeCloseTo(9 - 6.1, 12);
  });
});

describe("one row an estimate", () => {
  it("has mean, next fill and spread of every bin and product, and every fill", async () => {
    const rows = estimatesOf(await productTrialModel());
    expect(rows).toHaveLength(4 * 3 + 20);
    const abouts = new Set(rows.map((row) => row.about));
    expect([...abouts].sort()).toEqual([
      "fill-to-fill spread",
      "mean over fills",
      "next fill",
      "this fill's delivery",
    ]);
  });

  it("leaves cells empty where nothing can be known", () => {
    const rows = estimatesOf(fitModel(aFill([[20, 6]]), trialOptions));
    expect(rows[0]).toMatchObject({ value: 0.3, standard_error: null, lower: null, level: null });
  });
});

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
    const rows = estimatesOf(await productTrialModel());
    expect(JSON.parse(JSON.stringify(rows))).toEqual(rows);
    expect(rowsToCsv(rows).trimEnd().split("\n")).toHaveLength(rows.length + 1);
  });
});
