import { describe, expect, it } from "vitest";
import { readSetup } from "../../src/data/read-setup.ts";
import { binSetup } from "../../src/data/setup.ts";

function read(setup: unknown) {
  return readSetup({ name: "setup.json", text: JSON.stringify(setup) });
}

describe("a setup", () => {
  it("may be empty, and then says nothing", () => {
    expect(read({})).toEqual({
      source: "setup.json",
      title: null,
      tolerance: null,
      confidence: null,
      assurance: null,
      borrow: null,
      assumedSpread: null,
      assumedScatter: null,
      library: null,
      scale: { divisionKg: null, capacityKg: null, testedError: null },
      cart: {
        workingWidthM: null,
        speedKmPerH: null,
        wheelCircumferenceM: null,
        slip: null,
        turnCountStandardUncertainty: null,
      },
      bins: [],
      money: {
        currency: null,
        valueOfHour: null,
        minutesPerCatch: null,
        minutesToSetUp: null,
        costPerCatch: null,
        costToSetUp: null,
        areaHectares: null,
        areaPerFillHectares: null,
      },
      fieldChecks: [],
      trial: null,
      answered: [],
      cautions: [],
    });
  });

  it("is read into kg, m, ha, km/h and fractions", () => {
    const setup = read({
      title: " North  farm ",
      tolerance_percent: 5,
      confidence_percent: 95,
      assurance_percent: 80,
      borrow: "none",
      assumed_spread_percent: 3,
      assumed_scatter_percent: 1.5,
      scale: {
        division: { value: 10, unit: "g" },
        capacity: { value: 40, unit: "lb" },
        tested_error_percent: -0.1,
      },
      cart: {
        working_width: { value: 40, unit: "ft", standard_uncertainty: 0.5 },
        speed: { from: { value: 4, unit: "mph" }, to: { value: 9, unit: "km/h" } },
        wheel_circumference: { value: 90, unit: "in" },
        slip_percent: 3,
        slip_standard_uncertainty_percent: 1,
        turn_count_standard_uncertainty: 0.1,
      },
    });
    expect(setup).toMatchObject({
      title: "North farm",
      tolerance: 0.05,
      confidence: 0.95,
      assurance: 0.8,
      borrow: "none",
      assumedSpread: 0.03,
      assumedScatter: 0.015,
      scale: { divisionKg: 0.01, capacityKg: 18.1436948, testedError: -0.001 },
      cart: {
        workingWidthM: { value: 12.192, standardUncertainty: 0.1524 },
        speedKmPerH: { from: 6.437376, to: 9 },
        wheelCircumferenceM: { value: 2.286, standardUncertainty: null },
        slip: { value: 0.03, standardUncertainty: 0.01 },
        turnCountStandardUncertainty: 0.1,
      },
    });
  });

  it.each(["high", 0.9])("is read for each bin, with the step that was caught as %s", (step) => {
    const [bin] = read({
      bins: [
        {
          bin: 1,
          product: "wheat",
          target_rate: { value: 30, unit: "plants/ft2" },
          lowest_rate: { value: 100, unit: "kg/ha" },
          book_value: { value: 400, unit: "g/turn", standard_uncertainty: 8 },
          assumed: "book value",
          turns_per_hectare: 300,
          starts_afresh: 6,
          drive: {
            kind: "ground-wheel",
            ratio: 0.85,
            steps: [0.8, 0.9],
            step_names: ["low", "high"],
            caught_step: step,
          },
          seed: {
            thousand_kernel_mass_g: 38,
            thousand_kernel_mass_standard_uncertainty_g: 0.5,
            germination_percent: 95,
            germination_standard_uncertainty_percent: 1,
            emergence_percent: 85,
          },
          money: {
            price_per_kg: 0.6,
            response: {
              kind: "linear",
              heavy_cost_per_ha_per_percent: 0.7,
              light_cost_per_ha_per_percent: 1.2,
            },
            area_ha: 250,
          },
        },
      ],
    }).bins;
    expect(bin).toEqual({
      bin: "1",
      product: "wheat",
      targetRate: { kind: "plants", plantsPerM2: 322.9173125012917 },
      lowestRate: { kind: "mass", kgPerHectare: 100 },
      highestRate: null,
      bookValueKgPerTurn: { value: 0.4, standardUncertainty: 0.008 },
      assumed: "book value",
      turnsPerHectare: 300,
      startsAfresh: 6,
      drive: {
        kind: "ground-wheel",
        ratio: 0.85,
        steps: [0.8, 0.9],
        stepNames: ["low", "high"],
        caughtRatio: 0.9,
      },
      seed: {
        thousandKernelMassG: { value: 38, standardUncertainty: 0.5 },
        germination: { value: 0.95, standardUncertainty: 0.01 },
        emergence: { value: 0.85, standardUncertainty: null },
      },
      money: {
        pricePerKg: 0.6,
        response: {
          kind: "linear",
          heavyCostPerHectarePerPercent: 0.7,
          lightCostPerHectarePerPercent: 1.2,
        },
        areaHectares: 250,
      },
    });
  });

  it.each([
    [
      { value: 100, unit: "lb/ac" },
      { kind: "mass", kgPerHectare: 112.0851156194456 },
    ],
    [
      { value: 30, unit: "seeds/ft²" },
      { kind: "seeds", seedsPerM2: 322.9173125012917 },
    ],
    [
      { value: 300, unit: "plants/m²" },
      { kind: "plants", plantsPerM2: 300 },
    ],
  ])("reads the target rate %j", (target_rate, wanted) => {
    const found = read({ bins: [{ bin: "1", target_rate }] }).bins[0]?.targetRate;
    expect(found).toEqual(wanted);
  });

  it("reads a motor and a quadratic response", () => {
    const [bin] = read({
      bins: [
        {
          bin: "1",
          drive: {
            kind: "motor",
            meter_speed: {
              from: { value: 5, unit: "turns/min" },
              to: { value: 90, unit: "turns/min" },
            },
          },
          money: { response: { kind: "quadratic", curvature_per_ha_per_percent_squared: 0.04 } },
        },
      ],
    }).bins;
    expect(bin?.drive).toEqual({ kind: "motor", meterSpeedTurnsPerMin: { from: 5, to: 90 } });
    expect(bin?.money?.response).toEqual({
      kind: "quadratic",
      curvaturePerHectarePerPercentSquared: 0.04,
    });
  });

  it("reads money and field checks", () => {
    const setup = read({
      money: { currency: "EUR", value_of_hour: 90, minutes_per_catch: 4, area_per_fill_ha: 25 },
      field_checks: [
        {
          bin: "1",
          fill: 2,
          date: "2026-04-14",
          filled: { value: 3, unit: "t" },
          left: { value: 0, unit: "kg" },
          area: { value: 50, unit: "ac", standard_uncertainty: 0.5 },
          intended_rate: { value: 120, unit: "kg/ha" },
          assumed_delivery: { value: 400, unit: "g/turn" },
        },
      ],
    });
    expect(setup.money).toMatchObject({ currency: "EUR", valueOfHour: 90, areaHectares: null });
    expect(setup.fieldChecks).toEqual([
      {
        bin: "1",
        product: null,
        fill: 2,
        date: "2026-04-14",
        filledKg: { value: 3000, standardUncertainty: null },
        leftKg: { value: 0, standardUncertainty: null },
        areaHectares: { value: 20.234282112, standardUncertainty: 0.20234282112 },
        intendedRateKgPerHectare: 120,
        assumedDeliveryKgPerTurn: 0.4,
        rows: null,
        rowsShut: null,
        tramlineShare: null,
        overlap: null,
      },
    ]);
  });

  it("reads findings that were answered, of one fill or of every fill of a bin", () => {
    const setup = read({
      answered: [
        { code: "field-disagrees", bin: 1, note: " area  measured again " },
        { code: "constant-mass", bin: "rear", fill: 3, note: "bag weighed" },
      ],
    });
    expect(setup.answered).toEqual([
      { code: "field-disagrees", bin: "1", fill: null, note: "area measured again" },
      { code: "constant-mass", bin: "rear", fill: 3, note: "bag weighed" },
    ]);
  });

  it.each([
    [{ code: "field-disagree", bin: "1", note: "x" }, "answered[0].code"],
    [{ code: "field-disagrees", note: "x" }, "answered[0].bin"],
    [{ code: "field-disagrees", bin: "1" }, "answered[0].note"],
    [{ code: "field-disagrees", bin: "1", note: " " }, "answered[0].note"],
    [{ code: "field-disagrees", bin: "1", fill: 0, note: "x" }, "answered[0].fill"],
    [{ code: "field-disagrees", bin: "1", note: "x", row: 2 }, "answered[0].row"],
  ])("refuses the answer %j at %s", (answer, place) => {
    expect(() => read({ answered: [answer] })).toThrow(place);
  });

  it.each([
    [{ value: 0, unit: "kg" }],
    [{ value: 20, unit: "m" }],
    [{ value: 20, unit: "kg", standard_uncertainty: 1 }],
    [20],
  ])("refuses the capacity %j", (capacity) => {
    expect(() => read({ scale: { capacity } })).toThrow("scale.capacity");
  });

  it("survives being written to JSON and back", () => {
    const setup = read({ bins: [{ bin: "1" }] });
    expect(JSON.parse(JSON.stringify(setup))).toEqual(setup);
  });
});

const meterIn = (bin: string, product: string, machine: string | null = null) => ({
  farm: null,
  machine,
  bin,
  product,
});

describe("binSetup", () => {
  const setup = read({
    bins: [
      { bin: "1", turns_per_hectare: 300 },
      { bin: "1", product: "wheat", turns_per_hectare: 310 },
    ],
  });

  it("prefers the entry that names the product, then the one for the bin", () => {
    expect(binSetup(setup, meterIn("1", "wheat"))?.turnsPerHectare).toBe(310);
    expect(binSetup(setup, meterIn("1", "oats"))?.turnsPerHectare).toBe(300);
    expect(binSetup(setup, meterIn("2", "wheat"))).toBeNull();
  });

  it("prefers the entry that says most about where it holds", () => {
    const machines = read({
      bins: [
        { bin: "1", turns_per_hectare: 300 },
        { bin: "1", machine: "north", turns_per_hectare: 320 },
        { bin: "1", machine: "north", product: "wheat", turns_per_hectare: 330 },
      ],
    });
    const turns = (product: string, machine: string | null) =>
      binSetup(machines, meterIn("1", product, machine))?.turnsPerHectare;
    expect(turns("wheat", "north")).toBe(330);
    expect(turns("oats", "north")).toBe(320);
    expect(turns("wheat", "south")).toBe(300);
    expect(turns("wheat", null)).toBe(300);
  });

  it("refuses entries that leave open which counts, and takes one that settles it", () => {
    const two = [
      { bin: "1", product: "wheat" },
      { bin: "1", machine: "north" },
    ];
    expect(() => read({ bins: two })).toThrow("one entry that counts");
    expect(() => read({ bins: [two[1], two[1]] })).toThrow("one entry for each bin");
    expect(() =>
      read({
        bins: [
          { bin: "1", product: "wheat" },
          { ...two[1], product: "oats" },
        ],
      }),
    ).not.toThrow();
    expect(() => read({ bins: [...two, { ...two[0], machine: "north" }] })).not.toThrow();
  });
});

describe("rates by area and bushel", () => {
  const rateOf = (target: object) => {
    const text = JSON.stringify({ bins: [{ bin: "1", target_rate: target }] });
    return readSetup({ name: "setup.json", text }).bins[0]?.targetRate;
  };

  it("reads grams a square metre, and seeds an acre by 4046.8564224 m² (NIST Handbook 44)", () => {
    expect(rateOf({ value: 12, unit: "g/m2" })).toEqual({ kind: "mass", kgPerHectare: 120 });
    const seeds = rateOf({ value: 1_200_000, unit: "seeds/ac" });
    expect(seeds).toEqual({
      kind: "seeds",
      seedsPerM2: expect.closeTo(1_200_000 / 4046.8564224, 9),
    });
  });

  it("reads bushels an acre with the mass stated: 2 bu of 60 lb are 120 lb/ac", () => {
    const rate = rateOf({ value: 2, unit: "bu/ac", bushel: { value: 60, unit: "lb" } });
    expect(rate).toEqual({ kind: "mass", kgPerHectare: expect.closeTo(120 * 1.120851156, 6) });
  });
});
