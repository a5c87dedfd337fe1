import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { resolveOptions } from "../../src/analysis/options.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel, type MeterModel, type ModelOptions } from "../../src/model/model.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import { catchesNeededOptions } from "../../src/questions/catches-needed/options.ts";
import { catchesNeeded, catchesNeededInBrief } from "../../src/questions/catches-needed.ts";
import { costOptions } from "../../src/questions/cost/options.ts";
import { cost } from "../../src/questions/cost.ts";
import { deliveryInBrief } from "../../src/questions/delivery/in-brief.ts";
import { type DeliveryOptions, delivery } from "../../src/questions/delivery.ts";
import { driftOfOneFill } from "../../src/questions/drift/one-fill.ts";
import { drift, driftInBrief } from "../../src/questions/drift.ts";
import { explainingVariablesOptions } from "../../src/questions/explaining-variables/options.ts";
import { explainingVariables } from "../../src/questions/explaining-variables.ts";
import { fieldCheckOptions } from "../../src/questions/field-check/options.ts";
import { fieldCheck } from "../../src/questions/field-check.ts";
import { outletsOptions } from "../../src/questions/outlets/options.ts";
import { outlets } from "../../src/questions/outlets.ts";
import { outliersOptions } from "../../src/questions/outliers/options.ts";
import { outliers } from "../../src/questions/outliers.ts";
import { productComparisonOptions } from "../../src/questions/product-comparison/options.ts";
import { productComparison } from "../../src/questions/product-comparison.ts";
import { repeatability } from "../../src/questions/repeatability.ts";
import { settingOfNothing } from "../../src/questions/setting/nothing-told.ts";
import { settingOptions } from "../../src/questions/setting/options.ts";
import { setting } from "../../src/questions/setting.ts";
import { skippingOptions } from "../../src/questions/skipping/options.ts";
import { skipping } from "../../src/questions/skipping.ts";
import { speedLinearity } from "../../src/questions/speed-linearity.ts";
import { trialPlanOptions } from "../../src/questions/trial-plan/options.ts";
import { trialPlan } from "../../src/questions/trial-plan.ts";
import { uncertaintyBudgetOptions } from "../../src/questions/uncertainty-budget/options.ts";
import { uncertaintyBudget } from "../../src/questions/uncertainty-budget.ts";
import { defaults } from "../../src/results/defaults.ts";
import { type VarianceLaw, variancePowers } from "../../src/statistics/through-origin.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";

const catches = [1, 2, 3].flatMap((fill) =>
  aFill(
    [
      [20, 6 + 0.1 * fill],
      [20, 6.05],
      [40, 12.1 - 0.1 * fill],
    ],
    { fill, meterRpm: 20 + fill },
  ),
);
const model = fitModel(catches);
const meter: MeterModel = present(model.meters[0]);
const good: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const law = { varianceLaw: "proportional" } as const;
const answer = delivery(meter, { ...good, ...law });
const moves = { shiftOfInterest: 0.05, productChange: "starts afresh" } as const;

/** Every question that takes level, tolerance and scale, asked directly with options nobody resolved. */
const questions: Readonly<Record<string, (options: ModelOptions) => unknown>> = {
  acrossFills: (options) => acrossFills(meter, options),
  catchesNeeded: (options) => catchesNeeded(null, { ...catchesNeededOptions(good), ...options }),
  cost: (options) => cost(meter, { ...costOptions(good), ...options }),
  delivery: (options) => delivery(meter, { ...options, ...law }),
  drift: (options) => drift(meter, { ...options, ...moves }),
  explainingVariables: (options) =>
    explainingVariables(model, { ...explainingVariablesOptions(good), ...options }),
  fieldCheck: (options) => fieldCheck(meter, { ...fieldCheckOptions(good), ...options }),
  outlets: (options) => outlets(meter, { ...outletsOptions(good), ...options }),
  outliers: (options) => outliers(meter, { ...outliersOptions(good), ...options }),
  productComparison: (options) =>
    productComparison(model, { ...productComparisonOptions(good), ...options }),
  uncertaintyBudget: (options) =>
    uncertaintyBudget(meter, answer, {
      ...uncertaintyBudgetOptions(good),
      ...options,
    }),
  repeatability: (options) => repeatability(meter, options),
  setting: (options) => setting(meter, answer, { ...settingOptions(good), ...options }),
  skipping: (options) => skipping(meter, { ...skippingOptions(good), ...options }),
  speedLinearity: (options) => speedLinearity(meter, options),
  fitModel: (options) => fitModel(catches, options),
};

/** The same in brief, for a decision. */
const inBrief: typeof questions = {
  catchesNeededInBrief: (options) =>
    catchesNeededInBrief(meter, { ...catchesNeededOptions(good), ...options }),
  deliveryInBrief: (options) => deliveryInBrief(meter, { ...options, ...law }),
  driftInBrief: (options) => driftInBrief(meter, { ...options, ...moves }),
  driftOfOneFill: (options) => driftOfOneFill(meter, { ...options, ...moves }, [], 1),
  settingOfNothing: (options) => settingOfNothing(meter, answer, options),
};

const wrong: readonly (readonly [Partial<Record<keyof ModelOptions, unknown>>, string])[] = [
  [{ level: 95 }, "level"],
  [{ level: "0.95" }, "level"],
  [{ level: undefined }, "level"],
  [{ tolerance: 3 }, "tolerance"],
  [{ tolerance: 0 }, "tolerance"],
  [{ tolerance: Number.NaN }, "tolerance"],
  [{ scaleDivisionKg: 0 }, "scaleDivisionKg"],
  [{ scaleDivisionKg: -0.02 }, "scaleDivisionKg"],
  [{ scaleDivisionKg: undefined }, "scaleDivisionKg"],
];

describe.each(Object.entries({ ...questions, ...inBrief }))("%s, asked directly", (_, ask) => {
  it("answers good options", () => {
    expect(() => ask(good)).not.toThrow();
    expect(() => ask({ ...good, scaleDivisionKg: null })).not.toThrow();
  });

  it.each(wrong)("refuses %j and names what is wrong", (given, option) => {
    const asked = () => ask({ ...good, ...given } as ModelOptions);
    expect(asked).toThrow(OptionError);
    expect(asked).toThrow(`Option "${option}"`);
  });
});

describe("the list of questions asked directly", () => {
  it("holds every question of the library but the plan of a trial", () => {
    const index = readFileSync(new URL("../../src/index.ts", import.meta.url), "utf8");
    const fromQuestions = [
      ...index.matchAll(/export \{([^}]*)\} from "\.\/questions\/[\w-]+\.ts"/g),
    ]
      .flatMap(([, names = ""]) => names.split(",").map((name) => name.trim()))
      .filter((name) => /^[a-z]\w*$/.test(name));
    expect(fromQuestions.length).toBeGreaterThan(10);
    expect(fromQuestions.filter((name) => !(name in questions))).toEqual(["trialPlan"]);
  });

  it("is kept to by the plan of a trial too", () => {
    expect(() => trialPlan({ ...trialPlanOptions({ products: ["a", "b"] }), level: 95 })).toThrow(
      OptionError,
    );
  });

  it("refuses a weighting that is none, and takes every one that there is", () => {
    for (const [name, ask] of Object.entries(questions)) {
      // delivery is asked with a law of its own.
      if (name === "delivery") continue;
      const asked = { ...good, varianceLaw: "cubed" } as unknown as ModelOptions;
      expect(() => ask(asked), name).toThrow("proportional or constant or squared");
    }
    for (const varianceLaw of Object.keys(variancePowers) as VarianceLaw[])
      expect(() => delivery(meter, { ...good, varianceLaw })).not.toThrow();
    const cubed = { ...good, varianceLaw: "cubed" } as unknown as DeliveryOptions;
    expect(() => delivery(meter, cubed)).toThrow("proportional");
    const { estimate } = delivery(meter, good as DeliveryOptions);
    expect(estimate).toEqual(answer.estimate);
  });
});

describe("fitModel", () => {
  it("has defaults for all of its options, and for each", () => {
    const { level, tolerance } = defaults;
    expect(fitModel(catches).options).toEqual({ level, tolerance, scaleDivisionKg: null });
    expect(fitModel(catches, { level: 0.9 }).options).toEqual({
      level: 0.9,
      tolerance,
      scaleDivisionKg: null,
    });
  });

  it("refuses a misspelt name, which a default would hide", () => {
    const asked = { levl: 0.9 } as Partial<ModelOptions>;
    expect(() => fitModel(catches, asked)).toThrow('"levl"');
  });

  it("takes the options of an analysis as they are", () => {
    const options = resolveOptions({ level: 0.9 }, null);
    expect(fitModel(catches, options).options.level).toBe(0.9);
  });
});
