import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { fitModel, type Model, type ModelOptions } from "../../src/model/model.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import { catchesNeededOptions } from "../../src/questions/catches-needed/options.ts";
import { catchesNeeded } from "../../src/questions/catches-needed.ts";
import { costOptions } from "../../src/questions/cost/options.ts";
import { cost } from "../../src/questions/cost.ts";
import { deliveryWithoutError } from "../../src/questions/delivery/without-error.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { looksOverFills } from "../../src/questions/drift/looks.ts";
import { drift } from "../../src/questions/drift.ts";
import { explainingVariablesOptions } from "../../src/questions/explaining-variables/options.ts";
import { explainingVariables } from "../../src/questions/explaining-variables.ts";
import { outletsOptions } from "../../src/questions/outlets/options.ts";
import { outlets } from "../../src/questions/outlets.ts";
import { outliersOptions } from "../../src/questions/outliers/options.ts";
import { outliers } from "../../src/questions/outliers.ts";
import { productComparisonOptions } from "../../src/questions/product-comparison/options.ts";
import { productComparison } from "../../src/questions/product-comparison.ts";
import { repeatability } from "../../src/questions/repeatability.ts";
import { skippingOptions } from "../../src/questions/skipping/options.ts";
import { skipping } from "../../src/questions/skipping.ts";
import { speedLinearity } from "../../src/questions/speed-linearity.ts";
import { uncertaintyBudgetOptions } from "../../src/questions/uncertainty-budget/options.ts";
import { uncertaintyBudget } from "../../src/questions/uncertainty-budget.ts";
import { present } from "../support/reference.ts";
import { type Dimension, notScaled, scaledCatches } from "../support/scaled.ts";
import { inventedFills } from "../support/simulated-fills.ts";

/** Seven fills of four catches at two numbers of turns and two speeds, whose level changes once. */
const season = inventedFills({ fills: 7, catches: 4, spread: 0.01, scatter: 0.008 }, 11).map(
  (row): Catch => {
    const turns = row.catch % 2 === 0 ? 40 : 20;
    const level = row.fill > 5 ? 1.05 : 1;
    return {
      ...row,
      turns,
      netKg: (row.netKg * level * turns) / 20,
      meterRpm: row.catch > 2 ? 30 : 50,
      takenAt: `2026-04-0${row.fill}`,
      moisturePercent: 12 + row.fill / 10,
      binLevelPercent: 100 - 20 * row.catch,
      bulkDensityKgPerM3: null,
    };
  },
);
const odd = season.map((row, i) => (i === 25 ? { ...row, netKg: row.netKg * 1.4 } : row));
const products = ["oats", "peas", "rye"].flatMap((product, p) =>
  inventedFills(
    { fills: 4, catches: 3, spread: 0.02, scatter: 0.01, firstFill: 1 + 4 * p },
    5 + p,
  ).map(
    (row): Catch => ({
      ...row,
      product,
      netKg: row.netKg * (1 + 0.08 * p),
      bulkDensityKgPerM3: 500 + 60 * p + row.fill,
    }),
  ),
);
const byOutlet = ["a", "b", "c", "d"].flatMap((outlet, o) =>
  inventedFills({ fills: 1, catches: 4, spread: 0, scatter: 0.02 }, 31 + o).map(
    (row): Catch => ({ ...row, outlet, netKg: (row.netKg / 4) * (o === 3 ? 1.09 : 1) }),
  ),
);

const good: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.01 };
const law = { varianceLaw: "proportional" } as const;
const meterOf = ({ meters }: Model) => present(meters[0]);

/** A question and its catches. */
interface Asked {
  readonly catches: readonly Catch[];
  readonly ask: (model: Model, options: ModelOptions, mass: number, turns: number) => unknown;
}

/** Dimensions of figures that neither unit nor name tells, by their paths; null: nothing is claimed of what lies there. */
const dimensions: readonly (readonly [RegExp, Dimension])[] = [
  // Options are as they were given, and whole turns and the mishaps that people make do not grow.
  [/^options|explanations$|leastTurns$|longestTurns$/, null],
  [/reml\.betweenVariance$|variance\.(?:model|robust|division|total)$/, [2, -2]],
  [
    /(?:reml\.withinVariance|scatter\.variance|scatter\.(?:before|after)\.variance|SumOfSquares)$/,
    [2, -1],
  ],
  [/basis\.variancePerTurn$/, [0, 1]],
  [/basis\.heaviestCatch\.kg$/, [1, 0]],
  [/fan\.\d+\.(?:lower|upper)$/, [1, -1]],
  [/shortAndLong\..*\.(?:short|long|x|y|radius)$|shortAndLong\.circle\.radius$/, [1, -1]],
  [/reml\.(?:mean|standardError|adjustedStandardError)$/, [1, -1]],
  [
    /(?:Lower|Upper|M3)PerTurn$|interceptSlope$|theilSenPerFill$|residualStandardDeviation$/,
    [1, -1],
  ],
  [/weightings\.\d+\.(?:delivery|modelStandardError|robustStandardError)$/, [1, -1]],
  [
    /stretches\.\d+\.mean$|toleranceLines\.\w+$|line\.(?:start|end)$|shift\.(?:before|after)$/,
    [1, -1],
  ],
  [/individuals\.(?:center|meanMovingRange|lower|upper)$/, [1, -1]],
  [/products\.\d+\.points\.\d+\.delivery$/, [1, -1]],
  [/lines\.\d+\.standardUncertainty$/, [1, -1]],
  [/lines\.\d+\.sensitivity$/, [-1, 1]],
];

const asked: Readonly<Record<string, Asked>> = {
  acrossFills: { catches: season, ask: (model, options) => acrossFills(meterOf(model), options) },
  catchesNeeded: {
    catches: season,
    ask: (model, options, mass) =>
      catchesNeeded(
        meterOf(model),
        catchesNeededOptions({ ...options, tolerance: 0.005 }, { heaviestCatchKg: 40 * mass }),
      ),
  },
  cost: {
    catches: season.filter(({ fill }) => fill < 6),
    ask: (model, options, mass, turns) =>
      cost(
        meterOf(model),
        costOptions(options, {
          assumed: { source: "book value", kgPerTurn: (0.31 * mass) / turns },
          prices: {
            response: {
              kind: "linear",
              heavyCostPerHectarePerPercent: 2,
              lightCostPerHectarePerPercent: 1,
            },
            costPerCatch: 2,
            areaPerFillHectares: 10,
            areaHectares: 100,
          },
        }),
      ),
  },
  delivery: {
    catches: season,
    ask: (model, options) => delivery(meterOf(model), { ...options, ...law }),
  },
  deliveryWithoutError: {
    catches: season,
    ask: (model, options) => deliveryWithoutError(meterOf(model), { ...options, ...law }),
  },
  drift: {
    catches: season,
    ask: (model, options) =>
      drift(meterOf(model), {
        ...options,
        shiftOfInterest: 0.05,
        productChange: "starts afresh",
      } as never),
  },
  changes: {
    catches: season,
    ask: ({ meters: [meter] }) => {
      const { fills } = present(meter);
      return looksOverFills.changesOf(looksOverFills.changeTests(fills), fills, 0.9);
    },
  },
  explainingVariables: {
    catches: products,
    ask: (model, options) =>
      explainingVariables(model, explainingVariablesOptions(options, { newDensityKgPerM3: 640 })),
  },
  outlets: {
    catches: byOutlet,
    ask: (model, options) => outlets(meterOf(model), outletsOptions(options)),
  },
  outliers: {
    catches: odd,
    ask: (model, options) => outliers(meterOf(model), outliersOptions(options)),
  },
  productComparison: {
    catches: products,
    ask: (model, options) =>
      productComparison(model, productComparisonOptions(options, { equivalenceMargin: 0.03 })),
  },
  repeatability: {
    catches: season,
    ask: (model, options) => repeatability(meterOf(model), options),
  },
  skipping: {
    catches: season,
    ask: (model, options) => skipping(meterOf(model), skippingOptions(options)),
  },
  speedLinearity: {
    catches: season,
    ask: (model, options) => speedLinearity(meterOf(model), options),
  },
  uncertaintyBudget: {
    catches: season,
    ask: (model, options) =>
      uncertaintyBudget(
        meterOf(model),
        delivery(meterOf(model), { ...options, ...law }),
        uncertaintyBudgetOptions(options, { draws: 20_000 }),
      ),
  },
};

describe.each(Object.entries(asked))("%s", (_, { catches, ask }) => {
  const answered = (mass: number, turns: number) => {
    const options = { ...good, scaleDivisionKg: 0.01 * mass };
    return ask(fitModel(scaledCatches(catches, mass, turns), options), options, mass, turns);
  };

  // Powers of two change no digit of a figure.
  it.each([
    [2, 1],
    [1, 2],
  ] as const)("answers masses times %d and turns times %d by its units alone", (mass, turns) => {
    const wrong = notScaled(
      answered(1, 1),
      answered(mass, turns),
      [mass, turns],
      (path) => dimensions.find(([pattern]) => pattern.test(path))?.[1],
    );
    expect(wrong).toEqual([]);
  });
});
