import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import * as library from "../../src/index.ts";
import type { MeterModel, ModelOptions } from "../../src/model/model.ts";
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
const model = library.fitModel(catches);
const meter: MeterModel = present(model.meters[0]);
const good: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const law = { varianceLaw: "proportional" } as const;
const answer = library.delivery(meter, { ...good, ...law });
const drift = { shiftOfInterest: 0.05, productChange: "starts afresh" } as const;

/** Every question that takes level, tolerance and scale, asked directly with options nobody resolved. */
const questions: Readonly<Record<string, (options: ModelOptions) => unknown>> = {
  acrossFills: (options) => library.acrossFills(meter, options),
  catchesNeeded: (options) =>
    library.catchesNeeded(null, { ...library.catchesNeededOptions(good), ...options }),
  cost: (options) => library.cost(meter, { ...library.costOptions(good), ...options }),
  delivery: (options) => library.delivery(meter, { ...options, ...law }),
  drift: (options) => library.drift(meter, { ...options, ...drift }),
  explainingVariables: (options) =>
    library.explainingVariables(model, { ...library.explainingVariablesOptions(good), ...options }),
  fieldCheck: (options) =>
    library.fieldCheck(meter, { ...library.fieldCheckOptions(good), ...options }),
  outlets: (options) => library.outlets(meter, { ...library.outletsOptions(good), ...options }),
  outliers: (options) => library.outliers(meter, { ...library.outliersOptions(good), ...options }),
  productComparison: (options) =>
    library.productComparison(model, { ...library.productComparisonOptions(good), ...options }),
  uncertaintyBudget: (options) =>
    library.uncertaintyBudget(meter, answer, {
      ...library.uncertaintyBudgetOptions(good),
      ...options,
    }),
  repeatability: (options) => library.repeatability(meter, options),
  setting: (options) =>
    library.setting(meter, answer, { ...library.settingOptions(good), ...options }),
  skipping: (options) => library.skipping(meter, { ...library.skippingOptions(good), ...options }),
  speedLinearity: (options) => library.speedLinearity(meter, options),
  fitModel: (options) => library.fitModel(catches, options),
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

describe.each(Object.entries(questions))("%s, asked directly", (_, ask) => {
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
    expect(() =>
      library.trialPlan({ ...library.trialPlanOptions({ products: ["a", "b"] }), level: 95 }),
    ).toThrow(OptionError);
  });

  it("refuses a weighting that is none, and takes every one that there is", () => {
    for (const [name, ask] of Object.entries(questions)) {
      // delivery is asked with a law of its own.
      if (name === "delivery") continue;
      const asked = { ...good, varianceLaw: "cubed" } as unknown as ModelOptions;
      expect(() => ask(asked), name).toThrow("proportional or constant or squared");
    }
    for (const varianceLaw of Object.keys(variancePowers) as VarianceLaw[])
      expect(() => library.delivery(meter, { ...good, varianceLaw })).not.toThrow();
    const cubed = { ...good, varianceLaw: "cubed" } as unknown as library.DeliveryOptions;
    expect(() => library.delivery(meter, cubed)).toThrow("proportional");
    const { estimate } = library.delivery(meter, good as library.DeliveryOptions);
    expect(estimate).toEqual(answer.estimate);
  });
});

describe("fitModel", () => {
  it("has defaults for all of its options, and for each", () => {
    const { level, tolerance } = library.defaults;
    expect(library.fitModel(catches).options).toEqual({ level, tolerance, scaleDivisionKg: null });
    expect(library.fitModel(catches, { level: 0.9 }).options).toEqual({
      level: 0.9,
      tolerance,
      scaleDivisionKg: null,
    });
  });

  it("refuses a misspelt name, which a default would hide", () => {
    const asked = { levl: 0.9 } as Partial<ModelOptions>;
    expect(() => library.fitModel(catches, asked)).toThrow('"levl"');
  });

  it("takes the options of an analysis as they are", () => {
    const options = library.resolveOptions({ level: 0.9 }, null);
    expect(library.fitModel(catches, options).options.level).toBe(0.9);
  });
});
