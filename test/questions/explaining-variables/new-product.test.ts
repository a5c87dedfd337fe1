import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { productGroups } from "../../../src/model/product-groups.ts";
import { explainingCautions } from "../../../src/questions/explaining-variables/cautions.ts";
import {
  densityLine,
  predictNewProduct,
} from "../../../src/questions/explaining-variables/new-product.ts";
import {
  describeVariable,
  ofFill,
  ofProduct,
  readersFor,
} from "../../../src/questions/explaining-variables/records.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

/** Products of two fills with these densities and volumes, litres a turn. */
const groupsOf = (...products: readonly (readonly [density: number, litres: number])[]) =>
  productGroups(
    fitModel(
      products.flatMap(([bulkDensityKgPerM3, litres], p) =>
        [1, 2].flatMap((fill) =>
          aFill([[20, (20 * litres * bulkDensityKgPerM3) / 1000]], {
            product: `p${p}`,
            fill: 2 * p + fill,
            bulkDensityKgPerM3,
          }),
        ),
      ),
    ),
    null,
  );

describe("a product not tried yet", () => {
  // Volumes 0.5, 0.6 and 0.7 l: mean 0.6, standard deviation 0.1; at 500 kg/m³ 0.3 kg. Error 0.1·√(1 + 1/3)·0.5 = 0.057735.
  const groups = groupsOf([400, 0.5], [600, 0.6], [800, 0.7]);

  it("has the mean volume times its density, ± t on one fewer than products", () => {
    const { proportional, lowest, highest, products, extrapolates } = predictNewProduct(
      groups,
      500,
      null,
      0.95,
    );
    expect(proportional.value).toBeCloseTo(0.3, 12);
    expect(proportional.standardError).toBeCloseTo(0.05 * Math.sqrt(4 / 3), 12);
    expect(proportional.df).toBe(2);
    // t(0.975; 2) = 4.302653 (e-Handbook, 1.3.6.7.2: 4.303).
    expect(proportional.interval?.upper).toBeCloseTo(
      0.3 + 4.302652729911275 * 0.05 * Math.sqrt(4 / 3),
      9,
    );
    expect(proportional.interval?.lower).toBeCloseTo(
      0.3 - 4.302652729911275 * 0.05 * Math.sqrt(4 / 3),
      9,
    );
    expect([lowest, highest, products, extrapolates]).toEqual([400, 800, 3, false]);
  });

  it("is beyond what was tried just below the lowest and just above the highest", () => {
    const beyond = (density: number) => predictNewProduct(groups, density, null, 0.95).extrapolates;
    expect([399.9, 400, 800, 800.1].map(beyond)).toEqual([true, false, false, true]);
  });

  it("has no interval by one product alone, and one by two", () => {
    expect(
      predictNewProduct(groupsOf([400, 0.5]), 400, null, 0.95).proportional.interval,
    ).toBeNull();
    expect(
      predictNewProduct(groupsOf([400, 0.5], [500, 0.6]), 400, null, 0.95).proportional.df,
    ).toBe(1);
  });

  it("is drawn from 15 percent of the range below the lowest density to as much above the highest", () => {
    const line = densityLine(groups, null, 0.95);
    expect(line).toHaveLength(25);
    expect(line[0]?.densityKgPerM3).toBeCloseTo(340, 9);
    expect(line[1]?.densityKgPerM3).toBeCloseTo(340 + 520 / 24, 9);
    expect(line.at(-1)?.densityKgPerM3).toBeCloseTo(860, 9);
    expect(line[0]?.fittedKgPerTurn).toBeCloseTo(0.6 * 0.34, 9);
    // 0.6 l, with t(0.975; 2) = 4.302653 times 0.1·√(1 + 1/3) l to either side, at every density.
    const half = 4.302652729911275 * 0.1 * Math.sqrt(4 / 3);
    for (const { densityKgPerM3, fittedKgPerTurn, lowerKgPerTurn, upperKgPerTurn } of line) {
      expect(fittedKgPerTurn).toBeCloseTo((0.6 * densityKgPerM3) / 1000, 9);
      expect(lowerKgPerTurn).toBeCloseTo(((0.6 - half) * densityKgPerM3) / 1000, 9);
      expect(upperKgPerTurn).toBeCloseTo(((0.6 + half) * densityKgPerM3) / 1000, 9);
    }
    const wider = densityLine(groups, 1200, 0.95);
    expect(wider.at(-1)?.densityKgPerM3).toBeCloseTo(1320, 9);
    // Never below nothing: 10 − 0.15·790 would be.
    expect(densityLine(groups, 10, 0.95)[0]?.densityKgPerM3).toBe(0);
    expect(densityLine(groupsOf([400, 0.5]), null, 0.95)).toEqual([]);
    expect(densityLine(groupsOf([400, 0.5]), 400, 0.95)).toEqual([]);
    expect(densityLine(groupsOf([400, 0.5]), 410, 0.95)).toHaveLength(25);
  });
});

describe("what was recorded", () => {
  const recorded = productGroups(
    fitModel([
      ...aFill(
        [
          [20, 6],
          [20, 6.1],
        ],
        { fill: 1, moisturePercent: 12, extra: { tkw_g: "40", shed: "A", note: " " } },
      ),
      ...aFill([[20, 6]], { fill: 2, moisturePercent: 14, extra: { tkw_g: " 42 ", shed: "3" } }),
      ...aFill([[20, 6]], { fill: 3, product: "rye", extra: { tkw_g: "", shed: "B" } }),
    ]),
    null,
  );
  const names = (asked: readonly string[] | null) =>
    readersFor(recorded, asked).map(({ name }) => name);

  it("is what is known and filled in, and thousand-kernel weight", () => {
    expect(names(null)).toEqual(["moisture", "tkw_g"]);
    expect(names(["shed", "bulk density"])).toEqual(["shed", "bulk density"]);
    for (const other of ["tgw", "colour", "note"])
      expect(() => names([other]), other).toThrow('Option "variables"');
  });

  it("is the mean of a fill's catches, of a product's fills, and null where none has a number", () => {
    const [moisture, weight] = readersFor(recorded, null);
    const [wheat, rye] = recorded;
    const fills = present(wheat).fills.map(({ fill }) => fill);
    expect(fills.map((fill) => ofFill(fill, present(weight)))).toEqual([40, 42]);
    expect([wheat, rye].map((group) => ofProduct(present(group), present(moisture)))).toEqual([
      13,
      null,
    ]);
  });

  it("is told to vary within fills, within products and between them", () => {
    const [moisture] = readersFor(recorded, ["moisture"]);
    expect(describeVariable(recorded, present(moisture))).toEqual({
      name: "moisture",
      unit: "%",
      fills: 2,
      lowest: 12,
      highest: 14,
      varies: { withinFills: false, withinProducts: true, betweenProducts: false },
    });
    const within = productGroups(
      fitModel([
        ...[10, 12].flatMap((meterRpm) => aFill([[20, 6]], { meterRpm, catch: meterRpm })),
        ...aFill([[20, 6]], { meterRpm: 20, product: "rye", fill: 2 }),
      ]),
      null,
    );
    const [speed] = readersFor(within, ["meter speed"]);
    expect(describeVariable(within, present(speed))?.varies).toEqual({
      withinFills: true,
      withinProducts: false,
      betweenProducts: true,
    });
    const [density] = readersFor(within, ["bulk density"]);
    expect(describeVariable(within, present(density))).toBeNull();
  });

  it("does not vary by the dust of arithmetic", () => {
    const dusty = productGroups(
      fitModel([
        ...aFill([[20, 6]], { fill: 1, moisturePercent: -0.3 }),
        ...aFill([[20, 6]], { fill: 2, moisturePercent: -(0.1 + 0.2) }),
      ]),
      null,
    );
    const [moisture] = readersFor(dusty, ["moisture"]);
    expect(describeVariable(dusty, present(moisture))?.varies.withinProducts).toBe(false);
  });
});

describe("what is said of explaining variables", () => {
  const base = {
    groups: groupsOf([400, 0.5], [500, 0.5], [600, 0.5], [700, 0.5], [800, 0.5]),
    variables: [
      {
        name: "bulk density",
        unit: "kg/m³",
        fills: 10,
        lowest: 400,
        highest: 800,
        varies: { withinFills: false, withinProducts: false, betweenProducts: true },
      },
    ],
    betweenProducts: [],
    withinProducts: null,
    prediction: null,
    predictionAsked: false,
  } as const;
  const codes = (given: object) =>
    explainingCautions({ ...base, ...given }).map(({ code }) => code);
  const regression = {} as never;

  it("is nothing where nothing is missing", () => {
    expect(codes({})).toEqual([]);
  });

  it.each<[string, object, readonly string[]]>([
    ["nothing was recorded", { variables: [] }, ["nothing-recorded"]],
    [
      "one fill has no record",
      { variables: [{ ...base.variables[0], fills: 9 }] },
      ["variable-missing"],
    ],
    [
      "all is alike",
      { variables: [{ ...base.variables[0], highest: 400 }] },
      ["variable-constant"],
    ],
    [
      "four products are regressed",
      {
        groups: base.groups.slice(1),
        betweenProducts: [regression],
        variables: [{ ...base.variables[0], fills: 8 }],
      },
      ["few-products"],
    ],
    ["five products are regressed", { betweenProducts: [regression] }, []],
    ["no density is there to predict by", { predictionAsked: true }, ["no-density"]],
    [
      "a prediction goes beyond",
      { prediction: predictNewProduct(base.groups, 900, null, 0.95) },
      ["density-outside"],
    ],
    [
      "it rests on four products",
      { prediction: predictNewProduct(base.groups.slice(1), 600, null, 0.95) },
      ["new-product-from-few"],
    ],
    ["it rests on five", { prediction: predictNewProduct(base.groups, 600, null, 0.95) }, []],
  ])("where %s", (_, given, expected) => {
    expect(codes(given)).toEqual(expected);
  });
});
