import { describe, expect, it } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import type { ModelOptions } from "../../src/model/model.ts";
import { catchesNeededOptions } from "../../src/questions/catches-needed/options.ts";
import { costOptions } from "../../src/questions/cost/options.ts";
import { explainingVariablesOptions } from "../../src/questions/explaining-variables/options.ts";
import { fieldCheckOptions } from "../../src/questions/field-check/options.ts";
import { outletsOptions } from "../../src/questions/outlets/options.ts";
import { outliersOptions } from "../../src/questions/outliers/options.ts";
import { productComparisonOptions } from "../../src/questions/product-comparison/options.ts";
import { settingOptions } from "../../src/questions/setting/options.ts";
import { skippingOptions } from "../../src/questions/skipping/options.ts";
import { trialPlanOptions } from "../../src/questions/trial-plan/options.ts";
import { uncertaintyBudgetOptions } from "../../src/questions/uncertainty-budget/options.ts";

const model: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const nan = Number.NaN;
const infinite = Number.POSITIVE_INFINITY;

/** What may be meant and what may not, at the edges of each domain. */
interface Domain {
  readonly good: readonly unknown[];
  readonly bad: readonly unknown[];
}

const domain = (good: readonly unknown[], bad: readonly unknown[]): Domain => ({ good, bad });
const fraction = domain([1e-9, 0.5, 0.999], [0, 1, -0.1, 95, nan, infinite, "0.5", null]);
const orNull = ({ good, bad }: Domain) =>
  domain(
    [...good, null],
    bad.filter((one) => one !== null),
  );
const positive = domain([1e-9, 40], [0, -1, nan, infinite, "4", null]);
const notNegative = domain([0, 40], [-1e-9, nan, infinite, "4", null]);
const counted = (least: number) =>
  domain([least, least + 1], [least - 1, least + 0.5, nan, infinite, `${least}`, null]);
const text = domain(["a"], [1, null, {}]);
const oneOf = (...names: readonly string[]) => domain(names, ["none of them", 1, null]);
/** A domain of a part, its value put into what holds it. */
const within = (put: (value: unknown) => unknown, { good, bad }: Domain) =>
  domain(good.map(put), bad.map(put));
/** The same with null among the values, where a part may be null and the whole too. */
const measured = {
  value: (domainOfValue: Domain) =>
    within((value) => ({ value, standardUncertainty: null }), domainOfValue),
  uncertainty: within(
    (standardUncertainty) => ({ value: 0.5, standardUncertainty }),
    orNull(notNegative),
  ),
};
const share = domain([0.01, 1], [0, 1.001, -0.5, nan, "1"]);
const rate = (kind: string, name: string) => within((value) => ({ kind, [name]: value }), positive);
const response = [
  within(
    (heavyCostPerHectarePerPercent) => ({
      kind: "linear",
      heavyCostPerHectarePerPercent,
      lightCostPerHectarePerPercent: 1,
    }),
    notNegative,
  ),
  within(
    (lightCostPerHectarePerPercent) => ({
      kind: "linear",
      heavyCostPerHectarePerPercent: 1,
      lightCostPerHectarePerPercent,
    }),
    notNegative,
  ),
  within(
    (curvaturePerHectarePerPercentSquared) => ({
      kind: "quadratic",
      curvaturePerHectarePerPercentSquared,
    }),
    notNegative,
  ),
  domain([], [{ kind: "cubic" }, 5]),
];

const drive = {
  workingWidthM: [measured.value(positive), measured.uncertainty, domain([null], [6])],
  wheelTravelM: [measured.value(positive), measured.uncertainty],
  slip: [
    measured.value(domain([-0.05, 0, 0.99], [1, 3, nan, Number.NEGATIVE_INFINITY])),
    measured.uncertainty,
  ],
  turnsPerHectare: [orNull(positive)],
  drive: [
    within((ratio) => ({ kind: "ground-wheel", ratio, steps: null }), orNull(positive)),
    within((step) => ({ kind: "ground-wheel", ratio: null, steps: [0.5, step] }), positive),
    within((from) => ({ kind: "motor", meterSpeedTurnsPerMin: { from, to: 90 } }), positive),
    within((to) => ({ kind: "motor", meterSpeedTurnsPerMin: { from: 10, to } }), positive),
    domain([{ kind: "motor", meterSpeedTurnsPerMin: null }, null], [{ kind: "hand" }]),
  ],
};

const rule = (of: string, name: string, value: unknown) => ({
  own: { fewest: 3, phi: 1.08 },
  withOtherBins: { fewest: 2, phi: 1.05 },
  withOtherFills: { fewest: 1, phi: 1 },
  [of]: { fewest: 3, phi: 1.08, [name]: value },
});
const phi = domain([1, 1.5], [0.999, 0, nan, infinite]);
const time = {
  minutes: 30,
  minutesPerCatch: 2,
  turnsPerMinute: 60,
  longestTurns: 100,
  proportionalScatter: 0,
};
const trial = { budget: 600, perFill: 30, perCatch: 3, perTurn: 0.02, perExtraLevel: 5 };
const prices = { currency: "€", response: null, hectares: 10, perCatch: 2, toSetUp: 1 };
const linear = {
  kind: "linear",
  heavyCostPerHectarePerPercent: 1,
  lightCostPerHectarePerPercent: 1,
};
const check = {
  date: null,
  fill: null,
  filledKg: { value: 900, standardUncertainty: 2 },
  leftKg: { value: 100, standardUncertainty: 2 },
  areaHectares: { value: 5, standardUncertainty: 0.02 },
  intendedRateKgPerHectare: 160,
  assumedDeliveryKgPerTurn: null,
};
const checked = (name: string, { good, bad }: Domain) =>
  within((value) => [check, { ...check, [name]: value }], domain(good, bad));

/** Seed of which nothing is known, and rates that nothing limits. */
const noSeed = { thousandKernelMassG: null, germination: null, emergence: null };
const noLaw = { targetKgPerHa: null, lowestKgPerHa: null, highestKgPerHa: null };

type Domains = Readonly<Record<string, readonly Domain[]>>;
type Choose = (given: object) => unknown;

/** Every question that has options of its own, with every one of them. */
const questions: Readonly<Record<string, readonly [Choose, Domains]>> = {
  catchesNeeded: [
    (given) => catchesNeededOptions(model, given),
    {
      assurance: [fraction],
      fill: [oneOf("newest", "next")],
      turnsPerCatch: [orNull(positive)],
      // Not below the fewest catches that a width may be stopped on, which are three.
      mostCatches: [counted(3)],
      stopping: [
        within((fewest) => rule("own", "fewest", fewest), counted(2)),
        within((fewest) => rule("withOtherBins", "fewest", fewest), counted(1)),
        within((fewest) => rule("withOtherFills", "fewest", fewest), counted(1)),
        ...["own", "withOtherBins", "withOtherFills"].map((of) =>
          within((value) => rule(of, "phi", value), phi),
        ),
      ],
      heaviestCatchKg: [orNull(positive)],
      settingError: [domain([-0.99, 0, 0.99], [-1, 1, 3, nan, infinite])],
      phi: [domain([...phi.good, null], phi.bad)],
      typicalScatter: [
        within((relative) => ({ relative, turns: 20 }), fraction),
        within((turns) => ({ relative: 0.02, turns }), positive),
      ],
      typicalSpread: [fraction],
      assumedKgPerTurn: [orNull(positive)],
      prices: [
        ...(["hectares"] as const).map((name) =>
          within((value) => ({ ...prices, response: linear, [name]: value }), positive),
        ),
        ...(["perCatch", "toSetUp"] as const).map((name) =>
          within((value) => ({ ...prices, response: linear, [name]: value }), notNegative),
        ),
        within((currency) => ({ ...prices, response: linear, currency }), orNull(text)),
        ...response.map((one) => within((given) => ({ ...prices, response: given }), one)),
        domain([null], []),
      ],
      toleranceFrom: [oneOf("option", "setup", "default")],
      assumed: [
        within(
          (source) => ({ source, kgPerTurn: 0.3, fill: 1 }),
          oneOf("book value", "last fill", "fill", "average of fills"),
        ),
      ],
      lawfulRates: [oneOf("given", "not given")],
      time: [
        within((minutes) => ({ ...time, minutes }), positive),
        within((minutesPerCatch) => ({ ...time, minutesPerCatch }), notNegative),
        within((turnsPerMinute) => ({ ...time, turnsPerMinute }), positive),
        within((longestTurns) => ({ ...time, longestTurns }), counted(1)),
        within((proportionalScatter) => ({ ...time, proportionalScatter }), notNegative),
        domain([null], []),
      ],
      trial: [
        ...(["budget", "perCatch"] as const).map((name) =>
          within((value) => ({ ...trial, [name]: value }), positive),
        ),
        ...(["perFill", "perTurn", "perExtraLevel"] as const).map((name) =>
          within((value) => ({ ...trial, [name]: value }), notNegative),
        ),
        domain([null], []),
      ],
    },
  ],
  cost: [
    (given) => costOptions(model, given),
    {
      assumed: [
        within(
          (source) => ({ source }),
          oneOf("book value", "last fill", "fill", "average of fills"),
        ),
      ],
      mostCatches: [counted(1)],
      prices: [
        ...(
          ["pricePerKg", "targetKgPerHectare", "areaHectares", "areaPerFillHectares"] as const
        ).map((name) => within((value) => ({ [name]: value }), orNull(positive))),
        ...(
          [
            "valueOfHour",
            "minutesPerCatch",
            "minutesToSetUp",
            "costPerCatch",
            "costToSetUp",
          ] as const
        ).map((name) => within((value) => ({ [name]: value }), orNull(notNegative))),
        within((currency) => ({ currency }), orNull(text)),
        ...response.map((one) => within((given) => ({ response: given }), one)),
        domain([{}], [{ priceOfKg: 1 }]),
      ],
    },
  ],
  explainingVariables: [
    (given) => explainingVariablesOptions(model, given),
    {
      variables: [domain([["moisture"], ["a", "b"], null], [["a", "a"], ["a", 1], "moisture"])],
      newDensityKgPerM3: [orNull(positive)],
      spread: [oneOf("by design", "separate", "common")],
      blocks: [orNull(text)],
    },
  ],
  fieldCheck: [
    (given) => fieldCheckOptions(model, given),
    {
      ...drive,
      checks: [
        checked("filledKg", measured.value(domain([100.001, 900], [100, 99, 0, -1, nan]))),
        checked("areaHectares", measured.value(positive)),
        checked("leftKg", measured.value(domain([0, 899.999], [900, 901, -1, nan]))),
        checked("intendedRateKgPerHectare", orNull(positive)),
        checked("assumedDeliveryKgPerTurn", orNull(positive)),
        ...["filledKg", "areaHectares", "leftKg"].map((name) =>
          checked(
            name,
            within(
              (standardUncertainty) => ({
                value: name === "leftKg" ? 100 : 900,
                standardUncertainty,
              }),
              orNull(notNegative),
            ),
          ),
        ),
        domain([[]], [5]),
      ],
      checksInLog: [domain([null, 0, 1, 5], [-1, 0.5, nan, "1"])],
    },
  ],
  outlets: [
    (given) => outletsOptions(model, given),
    { band: [fraction], targetKgPerTurn: [orNull(positive)] },
  ],
  outliers: [(given) => outliersOptions(model, given), { massUnit: [oneOf("kg", "g", "lb")] }],
  productComparison: [
    (given) => productComparisonOptions(model, given),
    {
      products: [domain([["a", "b"], null], [["a", 1], "a"])],
      order: [oneOf("as listed", "by size")],
      reference: [orNull(text)],
      pairs: [oneOf("all", "sharing a bin")],
      spread: [oneOf("by design", "separate", "common")],
      scale: [oneOf("by design", "as measured", "log")],
      blocks: [orNull(text)],
      equivalenceMargin: [orNull(fraction)],
    },
  ],
  setting: [
    (given) => settingOptions(model, given),
    {
      ...drive,
      ...Object.fromEntries(
        ["target", "lowestRate", "highestRate"].map((name) => [
          name,
          [
            rate("mass", "kgPerHectare"),
            rate("seeds", "seedsPerM2"),
            rate("plants", "plantsPerM2"),
            domain([null], [{ kind: "rows", perM2: 4 }, 160]),
          ],
        ]),
      ),
      seed: [
        within(
          (thousandKernelMassG) => ({ ...noSeed, thousandKernelMassG }),
          measured.value(positive),
        ),
        ...["germination", "emergence"].map((name) =>
          within((value) => ({ ...noSeed, [name]: value }), measured.value(share)),
        ),
        domain([noSeed, null], []),
      ],
      speedKmPerH: [
        within((from) => ({ from, to: 9 }), positive),
        within((to) => ({ from: 6, to }), positive),
        domain([null], [8]),
      ],
    },
  ],
  skipping: [
    (given) => skippingOptions(model, given),
    {
      assumed: [
        within(
          (source) => ({ source }),
          oneOf("book value", "last fill", "fill", "average of fills"),
        ),
      ],
      limits: [within((limit) => [0.02, limit], fraction), domain([[]], [0.05])],
      acceptedRisk: [fraction],
      content: [fraction],
      lawful: [
        ...["targetKgPerHa", "lowestKgPerHa", "highestKgPerHa"].map((name) =>
          within((value) => ({ ...noLaw, [name]: value }), orNull(positive)),
        ),
        domain([null], []),
      ],
    },
  ],
  trialPlan: [
    (given) => trialPlanOptions({ products: ["a", "b"], ...given }),
    {
      level: [fraction],
      bin: [domain(["rear"], ["", "  ", 1, null])],
      fills: [counted(2)],
      turnLevels: [within((turns) => [20, turns], positive), domain([[20]], [[], 20])],
      catchesPerLevel: [counted(1)],
      meterSpeeds: [within((speed) => [30, speed], positive), domain([[]], [30])],
      massUnit: [oneOf("kg", "g", "lb")],
      seed: [counted(0)],
      analysis: [oneOf("fills", "blocks")],
      spread: [oneOf("by design", "separate", "common")],
      reference: [domain(["a", null], ["c", 1])],
      fillSpread: [fraction],
      catchScatter: [
        within((relative) => ({ relative, turns: 20 }), fraction),
        within((turns) => ({ relative: 0.02, turns }), positive),
      ],
      difference: [fraction],
      equivalenceMargin: [orNull(fraction)],
      products: [domain([["a", "b"]], [["a"], [], ["a", " a"], ["a", ""], ["a", 1], "ab"])],
    },
  ],
  uncertaintyBudget: [
    (given) => uncertaintyBudgetOptions(model, given),
    {
      ...drive,
      scaleTestedError: [domain([-0.99, 0, 0.99, null], [-1, 1, nan])],
      turnCountStandardUncertainty: [orNull(notNegative)],
      valueFor: [oneOf("this fill", "next fills")],
      response: [...response, domain([null], [])],
      currency: [orNull(text)],
      draws: [counted(20_000)],
      seed: [counted(0)],
    },
  ],
};

const cases = Object.entries(questions).flatMap(([question, [choose, domains]]) =>
  Object.entries(domains).map(
    ([option, some]) =>
      [
        `${question}.${option}`,
        choose,
        option,
        some.flatMap(({ good }) => good),
        some.flatMap(({ bad }) => bad),
      ] as const,
  ),
);

describe.each(cases)("%s", (_, choose, option, good, bad) => {
  it("takes every value of its domain as it is given, to the edges", () => {
    for (const value of good) {
      const chosen = new Map(Object.entries(Object(choose({ [option]: value }))));
      expect(chosen.get(option), JSON.stringify(value)).toMatchObject(
        typeof value === "object" && value !== null
          ? value
          : expect.toSatisfy((is) => is === value),
      );
    }
  });

  it("refuses every other, naming the option", () => {
    for (const value of bad) {
      const told = `${JSON.stringify(value)} ${value}`;
      let error: unknown = null;
      try {
        choose({ [option]: value });
      } catch (thrown) {
        error = thrown;
      }
      expect(error, told).toBeInstanceOf(OptionError);
      if (error instanceof OptionError) {
        expect(error.message, told).toContain(`"${option}`);
        expect(error.option, told).toMatch(new RegExp(`^${option}(?![a-z])`, "i"));
      }
    }
  });
});

describe("options that hold together", () => {
  it("are named by a name nobody knows, in every question", () => {
    for (const [choose] of Object.values(questions))
      expect(() => choose({ levl: 0.9 })).toThrow('"levl"');
  });

  it("have no default where they are asked for by every question and missing in this list", () => {
    for (const [name, [choose, domains]] of Object.entries(questions)) {
      const own = Object.keys(Object(choose({}))).filter(
        (option) => !["level", "tolerance", "scaleDivisionKg", "varianceLaw"].includes(option),
      );
      // What a log says of spreads is told and never judged.
      expect(
        own.filter((option) => option !== "found" && !(option in domains)),
        name,
      ).toEqual([]);
    }
  });

  it("take a margin of equivalence with a level above one half only", () => {
    const margin = { equivalenceMargin: 0.03 };
    const products = ["a", "b"];
    for (const level of [0.5, 0.4]) {
      expect(() => productComparisonOptions({ ...model, level }, margin)).toThrow('"level"');
      expect(() => trialPlanOptions({ products, level, ...margin })).toThrow('"level"');
      expect(productComparisonOptions({ ...model, level }).level).toBe(level);
      expect(trialPlanOptions({ products, level }).level).toBe(level);
    }
    expect(productComparisonOptions({ ...model, level: 0.51 }, margin).level).toBe(0.51);
    expect(trialPlanOptions({ products, level: 0.51, ...margin }).level).toBe(0.51);
  });

  it("let no trial be longer than 20,000 rows", () => {
    // 2 products × 2 turn levels × 2 catches make 8 rows a fill of each; × 2 speeds 16.
    const products = ["a", "b"];
    expect(trialPlanOptions({ products, fills: 2_500 }).fills).toBe(2_500);
    expect(() => trialPlanOptions({ products, fills: 2_501 })).toThrow('"fills"');
    const speeds = { products, meterSpeeds: [30, 40] };
    expect(trialPlanOptions({ ...speeds, fills: 1_250 }).fills).toBe(1_250);
    expect(() => trialPlanOptions({ ...speeds, fills: 1_251 })).toThrow('"fills"');
  });

  it("tell which of several field checks is wrong", () => {
    const bad = { ...check, leftKg: { value: 900, standardUncertainty: null } };
    expect(() => fieldCheckOptions(model, { checks: [check, bad] as never })).toThrow(
      '"checks[1].leftKg.value"',
    );
    expect(() =>
      fieldCheckOptions(model, { checks: [check, check] as never, checksInLog: 1 }),
    ).toThrow('"checksInLog"');
    expect(
      fieldCheckOptions(model, { checks: [check, check] as never, checksInLog: 2 }).checksInLog,
    ).toBe(2);
  });
});
