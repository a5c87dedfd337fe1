import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel } from "../../src/model/model.ts";
import {
  type ExplainingVariablesChoices,
  explainingVariablesOptions,
} from "../../src/questions/explaining-variables/options.ts";
import { explainingVariables } from "../../src/questions/explaining-variables.ts";
import { compareGroups } from "../../src/statistics/group-comparison.ts";
import { aFill } from "../support/catches.ts";
import { plainDesign } from "../support/comparisons.ts";
import { productTrialCatches, trialOptions } from "../support/product-trial.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

function explain(catches: readonly Catch[], given: Partial<ExplainingVariablesChoices> = {}) {
  const model = fitModel(catches, trialOptions);
  return explainingVariables(model, explainingVariablesOptions(trialOptions, given));
}

/** One fill of two catches that agree on its delivery to 1 %. */
function fill(product: string, number: number, delivery: number, given: Partial<Catch>) {
  const mass = (factor: number) => 20 * delivery * factor;
  return aFill(
    [
      [20, mass(1.01)],
      [20, mass(0.99)],
    ],
    { product, fill: number, ...given },
  );
}

const volumes = [0.00054, 0.000543, 0.000538, 0.000541];

/** Products of unlike density whose volume per turn is the same but for the spread of fills. */
const sameVolume = [770, 790, 630, 700].flatMap((density, p) =>
  volumes.flatMap((_, f) =>
    fill(`product ${p + 1}`, f + 1, density * (present(volumes[(f + p) % 4]) + p * 1e-7), {
      bulkDensityKgPerM3: density,
    }),
  ),
);

describe("the demo trial", () => {
  it("gives the planted answer: density explains most of the differences, not all", async () => {
    const { density } = explain(await productTrialCatches());
    const found = present(density);
    expect(found.verdict).toBe("not all");
    // Planted: ln delivery 0.4158, 0.4168, 0.3967, 0.3317 against ln filling 1, 0.987, 0.93, 0.975.
    const planted =
      1 - variance([1, 0.987, 0.93, 0.975]) / variance([0.4158, 0.4168, 0.3967, 0.3317]);
    expect(Math.abs(present(found.shareExplained) - planted)).toBeLessThan(0.05);
    const pea = found.contrasts.filter(({ first, second }) => [first, second].includes("pea"));
    expect(pea.every(({ differenceFound }) => differenceFound)).toBe(true);
    const wheat = present(
      found.contrasts.find(({ first, second }) => /wheat/.test(first) && /wheat/.test(second)),
    );
    expect(wheat.differenceFound).toBe(false);
    expect(present(found.productAfterDensity).pValue).toBeLessThan(0.001);
  });

  it("finds the planted effect of meter speed, which was changed within every fill", async () => {
    const { withinFills, variables } = explain(await productTrialCatches());
    expect(variables.find(({ name }) => name === "meter speed")?.varies).toEqual({
      withinFills: true,
      withinProducts: false,
      betweenProducts: false,
    });
    const [speed] = withinFills;
    const interval = present(speed?.perUnit.interval);
    expect(speed).toMatchObject({ variable: "meter speed", fills: 20 });
    expect(speed?.perUnit.df).toBe(19);
    expect(-0.00035).toBeGreaterThan(present(interval.lower));
    expect(-0.00035).toBeLessThan(present(interval.upper));
    expect(present(interval.upper)).toBeLessThan(0);
  });

  it("predicts a product between those tried by its density, with both prediction intervals", async () => {
    const { prediction, cautions } = explain(await productTrialCatches(), {
      newDensityKgPerM3: 700,
    });
    const found = present(prediction);
    // 0.54 litres a turn times 700 kg/m³, times fillings from 0.93 to 1.
    const truth = 0.000_54 * 700 * 0.97;
    for (const estimate of [found.proportional, present(found.line).estimate]) {
      expect(present(estimate.interval).about).toBe("new product");
      expect(truth).toBeGreaterThan(present(estimate.interval?.lower));
      expect(truth).toBeLessThan(present(estimate.interval?.upper));
    }
    expect(found.extrapolates).toBe(false);
    expect(cautions.map(({ code }) => code)).toContain("new-product-from-few");
  });

  it("says when the density lies beyond those tried", async () => {
    const result = explain(await productTrialCatches(), { newDensityKgPerM3: 1000 });
    expect(result.prediction?.extrapolates).toBe(true);
    expect(present(result.prediction?.line).leverage).toBeGreaterThan(
      present(result.prediction?.line).largestLeverage,
    );
    const caution = present(result.cautions.find(({ code }) => code === "density-outside"));
    expect(caution.severity).toBe("serious");
  });

  it("is plain JSON", async () => {
    const result = explain(await productTrialCatches(), { newDensityKgPerM3: 700, blocks: "day" });
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

describe("two routes to one answer", () => {
  it("compares volumes as Games and Howell compare anything", async () => {
    const result = explain(await productTrialCatches());
    const products = [...new Set(result.fills.map(({ product }) => product))];
    const { contrasts: textbook } = compareGroups(
      products.map((product) =>
        result.fills
          .filter((one) => one.product === product)
          .map(({ volumeM3PerTurn }) => present(volumeM3PerTurn)),
      ),
      plainDesign,
    );
    present(result.density).contrasts.forEach(({ difference, pValue }, i) => {
      expect(present(difference).value).toBeCloseTo(present(textbook[i]).difference, 16);
      expect(pValue).toBeCloseTo(present(present(textbook[i]).pValue), 12);
    });
  });

  it("judges volumes within blocks as a comparison of products does: one spread, on logarithms", async () => {
    const result = explain(await productTrialCatches(), { blocks: "day" });
    const density = present(result.density);
    expect(density.method).toBe("tukey-blocks");
    expect(density.contrasts.every(({ difference }) => difference === null)).toBe(true);
    const apart = explain(await productTrialCatches(), { blocks: "day", spread: "separate" });
    expect(present(apart.density).method).toBe("paired-bonferroni");
  });

  it("has R's lm and anova for fills within products, and for product after density", async () => {
    const result = explain(await productTrialCatches(), {
      variables: ["bulk density", "moisture"],
    });
    const products = [...new Set(result.fills.map(({ product }) => product))];
    const catches = await productTrialCatches();
    const moisture = result.fills.map(({ fill: number }) =>
      present(catches.find((row) => row.fill === number)?.moisturePercent),
    );
    const wanted = await evalR(
      `p <- factor(product)
       f <- lm(y ~ p + d + m); s <- summary(f)$coefficients[c("d", "m"), ]
       a <- anova(lm(y ~ d), lm(y ~ d + p))
       c(s[, 1], s[, 2], s[, 4], summary(f)$sigma, a$F[2], a[["Pr(>F)"]][2])`,
      {
        product: result.fills.map(({ product }) => products.indexOf(product)),
        y: result.fills.map(({ deliveryKgPerTurn }) => deliveryKgPerTurn),
        d: result.fills.map(({ bulkDensityKgPerM3 }) => present(bulkDensityKgPerM3)),
        m: moisture,
      },
    );
    const within = present(result.withinProducts);
    const after = present(result.density?.productAfterDensity);
    [
      ...within.effects.map(({ perUnit }) => perUnit.value),
      ...within.effects.map(({ perUnit }) => perUnit.standardError),
      ...within.effects.map(({ pValue }) => pValue),
      within.residualStandardDeviation,
      after.statistic,
      after.pValue,
    ].forEach((value, i) => {
      expect(Math.abs(present(value) / present(wanted[i]) - 1)).toBeLessThan(1e-9);
    });
  });

  it("predicts by R's lm over the means of the products, one product more being doubted as R doubts it", async () => {
    const { prediction, density } = explain(sameVolume, { newDensityKgPerM3: 740 });
    const products = present(density).products;
    const [value = 0, lower = 0, upper = 0, error = 0] = await evalR(
      `f <- lm(y ~ x)
       p <- predict(f, data.frame(x = 740), interval = "prediction", se.fit = TRUE)
       c(p$fit, sqrt(p$se.fit^2 + p$residual.scale^2))`,
      {
        x: products.map(({ densityKgPerM3 }) => densityKgPerM3),
        y: products.map(({ deliveryKgPerTurn }) => deliveryKgPerTurn),
      },
    );
    const { estimate } = present(present(prediction).line);
    expect(estimate).toMatchObject({ unit: "kg/turn", df: 2 });
    const found = [
      estimate.value,
      estimate.interval?.lower,
      estimate.interval?.upper,
      estimate.standardError,
    ];
    [value, lower, upper, error].forEach((wanted, i) => {
      expect(Math.abs(present(found[i]) / wanted - 1)).toBeLessThan(1e-9);
    });
  });

  it("predicts without an error where the products lie on the line exactly: a zero would stand for certainty", () => {
    const exact = [400, 600, 800].flatMap((bulkDensityKgPerM3, p) =>
      fill(`product ${p}`, p + 1, bulkDensityKgPerM3 / 2000, { bulkDensityKgPerM3 }),
    );
    const { estimate } = present(
      present(explain(exact, { newDensityKgPerM3: 500 }).prediction).line,
    );
    expect(estimate).toMatchObject({ standardError: null, df: null, interval: null });
    expect(estimate.value).toBeCloseTo(0.25, 12);
  });

  it("predicts by the same rule as for the next fill, with products in place of fills", () => {
    const { prediction, density } = explain(sameVolume, { newDensityKgPerM3: 740 });
    const means = present(density).products.map(({ volume }) => volume.value);
    const center = means.reduce((a, b) => a + b) / means.length;
    const spread = Math.sqrt(
      means.reduce((sum, value) => sum + (value - center) ** 2, 0) / (means.length - 1),
    );
    const found = present(prediction).proportional;
    expect(found.value).toBeCloseTo(740 * center, 12);
    expect(found.standardError).toBeCloseTo(740 * spread * Math.sqrt(1 + 1 / means.length), 12);
    expect(found.df).toBe(3);
  });
});

describe("whether density explains the differences", () => {
  it("finds no more than density where volumes are the same", () => {
    const { density } = explain(sameVolume);
    expect(density?.verdict).toBe("no more found");
    expect(present(density?.shareExplained)).toBeGreaterThan(0.99);
  });

  it("has nothing to explain where deliveries do not differ", () => {
    const alike = ["a", "b"].flatMap((product) =>
      [0.41, 0.42, 0.4].flatMap((delivery, i) =>
        fill(product, i + 1, delivery, { bulkDensityKgPerM3: 770 }),
      ),
    );
    expect(explain(alike).density?.verdict).toBe("nothing to explain");
  });

  it("does not know with one fill of each product", () => {
    const single = ["a", "b"].flatMap((product) =>
      fill(product, 1, 0.4, { bulkDensityKgPerM3: 770 }),
    );
    const { density } = explain(single);
    expect(density).toMatchObject({ verdict: "unknown", method: null, contrasts: [] });
    expect(density?.products[0]?.volume.interval).toBeNull();
  });

  it("passes over fills without a density and says how many", () => {
    const some = sameVolume.map((row) =>
      row.fill === 4 ? { ...row, bulkDensityKgPerM3: null } : row,
    );
    const result = explain(some);
    expect(result.density?.products.map(({ fills }) => fills)).toEqual([3, 3, 3, 3]);
    expect(result.cautions).toContainEqual(
      expect.objectContaining({
        code: "variable-missing",
        facts: { variable: "bulk density", fills: 4 },
      }),
    );
  });
});

describe("which variables", () => {
  const withWeight = sameVolume.map((row, i) => ({
    ...row,
    moisturePercent: 13,
    extra: { tkw_g: String(38 + (row.fill % 3) + (i % 2)), lot: "x" },
  }));

  it("takes what the file records, and a column of thousand-kernel weight", () => {
    const { variables } = explain(withWeight);
    expect(variables.map(({ name }) => name)).toEqual(["bulk density", "moisture", "tkw_g"]);
  });

  it("says which recorded variable never changes", () => {
    const { cautions } = explain(withWeight);
    expect(cautions).toContainEqual(
      expect.objectContaining({ code: "variable-constant", facts: { variable: "moisture" } }),
    );
  });

  it("takes only what is asked for", () => {
    const { variables, withinFills } = explain(withWeight, { variables: ["tkw_g"] });
    expect(variables.map(({ name }) => name)).toEqual(["tkw_g"]);
    expect(withinFills.map(({ fills }) => fills)).toEqual([16]);
  });

  it("says when variables change together so that neither can be told", () => {
    const together = sameVolume.map((row) => ({
      ...row,
      bulkDensityKgPerM3: 700 + row.fill,
      moisturePercent: 20 - 2 * row.fill,
    }));
    const result = explain(together);
    expect(result.withinProducts).toBeNull();
    expect(result.cautions).toContainEqual(
      expect.objectContaining({
        code: "variables-not-told-apart",
        facts: { variables: ["bulk density", "moisture"] },
      }),
    );
  });

  it("has nothing to say of a file without any, and cannot predict", () => {
    const bare = sameVolume.map((row) => ({ ...row, bulkDensityKgPerM3: null }));
    const result = explain(bare, { newDensityKgPerM3: 700 });
    expect(result).toMatchObject({ density: null, prediction: null, densityLine: [] });
    expect(result.cautions.map(({ code }) => code)).toEqual(["nothing-recorded", "no-density"]);
  });

  it("calls four products few to learn from", () => {
    expect(explain(sameVolume).cautions.map(({ code }) => code)).toContain("few-products");
  });

  it("gives effects in proportion where delivery is in proportion", async () => {
    const { betweenProducts } = explain(sameVolume);
    const [effect] = present(betweenProducts[0]).effects;
    // The line through the four products' means, density × (0.0005405 + p·10⁻⁷ for the p-th): b·x̄/ȳ.
    const [elasticity] = await evalR(
      "y <- x * (0.0005405 + (0:3) * 1e-7); coef(lm(y ~ x))[2] * mean(x) / mean(y)",
      { x: [770, 790, 630, 700] },
    );
    expect(present(effect).elasticity).toBeCloseTo(present(elasticity), 8);
    expect(present(betweenProducts[0])).toMatchObject({ units: "products", points: 4, df: 2 });
  });
});

it.each([
  ["a variable that is no column", { variables: ["gloss"] }],
  ["a column of words", { variables: ["lot"] }],
  ["a variable named twice", { variables: ["moisture", "moisture"] }],
  ["a density of zero", { newDensityKgPerM3: 0 }],
  ["blocks that are no column", { blocks: "week" }],
  ["an unknown spread", { spread: "equal" as never }],
])("refuses %s", (_, given) => {
  const catches = sameVolume.map((row) => ({ ...row, extra: { lot: "x" } }));
  expect(() => explain(catches, given)).toThrow(OptionError);
});

function variance(values: readonly number[]): number {
  const logs = values.map(Math.log);
  const center = logs.reduce((a, b) => a + b) / logs.length;
  return logs.reduce((sum, value) => sum + (value - center) ** 2, 0) / (logs.length - 1);
}
