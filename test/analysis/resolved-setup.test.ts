import { describe, expect, it } from "vitest";
import { resolveOptions } from "../../src/analysis/options.ts";
import {
  modelChoices,
  planningOptions,
  questionOptions,
} from "../../src/analysis/resolved-setup.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import type { Setup } from "../../src/data/setup.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { costOptions } from "../../src/questions/cost/options.ts";
import { fieldCheckOptions } from "../../src/questions/field-check/options.ts";
import { settingOptions } from "../../src/questions/setting/options.ts";
import { skippingOptions } from "../../src/questions/skipping/options.ts";
import { uncertaintyBudgetOptions } from "../../src/questions/uncertainty-budget/options.ts";
import { demo } from "../support/demo.ts";

const model = {
  level: 0.95,
  tolerance: 0.05,
  scaleDivisionKg: null,
  varianceLaw: "proportional",
} as const;

function read(setup: object): Setup {
  return readSetup({ name: "setup.json", text: JSON.stringify(setup) });
}

function meterIn(bin: string, product = "wheat") {
  return { place: { farm: null, machine: null, bin }, product };
}

function asked(setup: Setup | null, bin = "1", product = "wheat") {
  const options = resolveOptions({}, setup);
  const toleranceFrom = setup?.tolerance == null ? "default" : "setup";
  return questionOptions({ options, toleranceFrom, setup, massUnit: "kg" }, meterIn(bin, product));
}

describe("what a setup tells the questions about drive and field", () => {
  it("is nothing without a setup", () => {
    expect(asked(null)).toMatchObject({
      cost: costOptions(model),
      fieldCheck: fieldCheckOptions(model),
      setting: settingOptions(model),
      skipping: skippingOptions(model),
      uncertaintyBudget: uncertaintyBudgetOptions(model),
    });
  });

  it("is nothing for a bin the setup does not name, but for the cart", () => {
    const setup = read({ cart: { working_width: { value: 12, unit: "m" } } });
    const workingWidthM = { value: 12, standardUncertainty: null };
    expect(asked(setup).setting).toEqual(settingOptions(model, { workingWidthM }));
  });

  it("is the demo season's drive, rate and seed, in order for each question", async () => {
    const { setup } = await demo("season");
    const rear = asked(setup, "3", "starter fertiliser");
    const drive = {
      wheelTravelM: { value: 2.2 },
      drive: { kind: "ground-wheel", ratio: 0.88 },
      slip: null,
    };
    expect(rear.setting).toMatchObject({
      ...drive,
      target: { kind: "mass", kgPerHectare: 60 },
      speedKmPerH: { from: 7, to: 9 },
    });
    expect(rear.uncertaintyBudget).toMatchObject(drive);
    expect(rear.fieldCheck).toMatchObject(drive);
    expect(rear.cost.prices.targetKgPerHectare).toBe(60);
    const front = asked(setup, "1", "wheat");
    expect(front.setting.seed?.thousandKernelMassG?.value).toBe(42);
    for (const { bin, product } of setup.bins)
      expect(() => asked(setup, bin, product ?? "")).not.toThrow();
  });

  it("hands each bin its own field checks, in order of time, undated ones last", () => {
    const check = (bin: string, date: string | null, filled: number, product?: string) => ({
      bin,
      ...(product === undefined ? {} : { product }),
      ...(date === null ? {} : { date }),
      filled: { value: filled, unit: "kg" },
      left: { value: 0, unit: "kg" },
      area: { value: 1, unit: "ha" },
    });
    const setup = read({
      field_checks: [
        check("1", null, 1),
        check("1", "2026-04-20", 2, "wheat"),
        check("1", "2026-04-10", 3),
        check("1", "2026-04-01", 4, "pea"),
        check("2", "2026-04-01", 5),
      ],
    });
    const { checks, checksInLog } = asked(setup).fieldCheck;
    expect(checks.map(({ filledKg }) => filledKg.value)).toEqual([3, 2, 1]);
    expect(checksInLog).toBe(5);
  });
});

describe("what a setup tells the questions about planning and money", () => {
  it("is the area of a bin before that of the farm, and a target rate that is a mass", () => {
    const setup = read({
      money: { area_ha: 800, currency: "CAD" },
      bins: [
        {
          bin: "1",
          target_rate: { value: 300, unit: "plants/m2" },
          money: { area_ha: 50, price_per_kg: 0.6 },
        },
      ],
    });
    expect(asked(setup).cost.prices).toMatchObject({
      currency: "CAD",
      areaHectares: 50,
      pricePerKg: 0.6,
      targetKgPerHectare: null,
    });
    expect(asked(setup, "2").cost.prices).toMatchObject({ areaHectares: 800, pricePerKg: null });
  });

  it("counts after an option and before a default", () => {
    const setup = read({ assurance_percent: 90, scale: { capacity: { value: 25, unit: "kg" } } });
    const plan = (given: object) =>
      planningOptions(
        { options: resolveOptions(given, setup), toleranceFrom: "default", setup },
        meterIn("1"),
      );
    expect(plan({})).toMatchObject({
      assurance: 0.9,
      heaviestCatchKg: 25,
      stopping: {
        own: { fewest: 3, phi: 1.08 },
        withOtherBins: { fewest: 2, phi: 1.05 },
        withOtherFills: { fewest: 1, phi: 1 },
      },
    });
    expect(plan({ planning: { assurance: 0.7 } })).toMatchObject({
      assurance: 0.7,
      heaviestCatchKg: 25,
    });
  });
});

describe("what a setup tells the planning of catches about money", () => {
  const response = {
    kind: "linear",
    heavy_cost_per_ha_per_percent: 0.6,
    light_cost_per_ha_per_percent: 1,
  };
  const money = { currency: "CAD", cost_per_catch: 4, cost_to_set_up: 8, area_per_fill_ha: 40 };
  const setup = read({
    money,
    bins: [
      { bin: "1", book_value: { value: 0.3, unit: "kg/turn" }, money: { response } },
      { bin: "2" },
    ],
  });

  it("is what errors and catches of a fill cost, and what the drive is left at", () => {
    expect(asked(setup).catchesNeeded).toMatchObject({
      toleranceFrom: "default",
      assumed: { source: "book value", kgPerTurn: 0.3 },
      prices: {
        currency: "CAD",
        response: { kind: "linear", heavyCostPerHectarePerPercent: 0.6 },
        hectares: 40,
        perCatch: 4,
        toSetUp: 8,
      },
    });
  });

  it("is nothing where the cost of an error, the area or the price of a catch is missing", () => {
    expect(asked(setup, "2").catchesNeeded.prices).toBeNull();
    for (const missing of ["area_per_fill_ha", "cost_per_catch"] as const) {
      const { [missing]: _, ...rest } = money;
      const poorer = read({ money: rest, bins: [{ bin: "1", money: { response } }] });
      expect(asked(poorer).catchesNeeded.prices).toBeNull();
    }
    const ground = { options: resolveOptions({}, setup), toleranceFrom: "default", setup } as const;
    expect(planningOptions(ground, null)).toMatchObject({ prices: null, toleranceFrom: "default" });
  });

  it("is the price of a catch by its minutes where none is given", () => {
    const timed = read({
      money: { value_of_hour: 90, minutes_per_catch: 4, area_per_fill_ha: 25 },
      bins: [{ bin: "1", money: { response } }],
    });
    expect(asked(timed).catchesNeeded.prices).toMatchObject({ perCatch: 6, toSetUp: 0 });
  });
});

describe("how the order of fills is to be read", () => {
  it("is from the fill before which the setup says a meter was opened", () => {
    const setup = read({ bins: [{ bin: "1" }, { bin: "2", starts_afresh: 4 }] });
    const options = resolveOptions({ drift: "never" }, setup);
    expect(modelChoices(options, setup)).toEqual({
      asked: "never",
      startsAfresh: [{ bin: "2", product: null, fill: 4 }],
      borrowing: usualBorrowing,
    });
    expect(modelChoices(options, null)).toEqual({
      asked: "never",
      startsAfresh: [],
      borrowing: usualBorrowing,
    });
  });
});

describe("who speaks for how much catches and fills scatter", () => {
  const borrowingOf = (setup: Setup | null, given: object = {}) =>
    modelChoices(resolveOptions(given, setup), setup).borrowing;

  it("is the other bins, with nothing assumed, unless the setup says otherwise", () => {
    expect(borrowingOf(null)).toEqual(usualBorrowing);
    expect(borrowingOf(read({}))).toEqual(usualBorrowing);
    expect(
      borrowingOf(
        read({ borrow: "none", assumed_spread_percent: 2.5, assumed_scatter_percent: 1 }),
      ),
    ).toEqual({ borrow: "none", library: [], assumed: { spread: 0.025, scatter: 0.01 } });
  });

  it("is told by an option before the setup", () => {
    const setup = read({ borrow: "none", assumed_spread_percent: 2.5 });
    const library = [{ product: "pea", spread: { variance: 4e-4, df: 5 }, scatter: null }];
    expect(
      borrowingOf(setup, {
        borrow: "other bins",
        assumedSpread: 0.04,
        assumedScatter: 0.02,
        library,
      }),
    ).toEqual({ borrow: "other bins", library, assumed: { spread: 0.04, scatter: 0.02 } });
  });
});
