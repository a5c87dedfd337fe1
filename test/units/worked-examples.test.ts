import { mean, sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { coefficientOfVariation } from "../../src/statistics/coefficient-of-variation.ts";
import { convert } from "../../src/units/convert.ts";
import {
  areaOfCourse,
  gramsPerMetreOfRow,
  kernelsPerKg,
  massRateOfPlants,
  massRateOfSeeds,
  rateOfTurns,
  rateOverArea,
  wheelTurnsPerHectare,
} from "../../src/units/rates.ts";
import reference from "../reference/trade/worked-examples.json" with { type: "json" };
import { present, printedTolerance } from "../support/reference.ts";

type Input = Readonly<Record<string, number | readonly number[]>>;

const feet = (value: number) => convert(value, "ft", "m");
const inches = (value: number) => convert(value, "in", "m");
const pounds = (value: number) => convert(value, "lb", "kg");
const inFeet = (metres: number) => convert(metres, "m", "ft");
const inPoundsPerAcre = (rate: number) => convert(rate, "kg/ha", "lb/ac");
const inSquareFeet = (hectares: number) =>
  convert(hectares, "ha", "m²") / convert(1, "ft", "m") ** 2;
/** Thousand-kernel mass in g of seed that has so many kernels in a pound. */
const kernelMassOf = (seedsPerPound: number) => (1e6 * pounds(1)) / seedsPerPound;
const plantsPerFt2 = (plants: number) => convert(plants, "plants/ft²", "plants/m²");

/** The answers of each example in the order of its rows, from its inputs by the formulas under test. */
const answers: Readonly<Record<string, (input: Reader) => readonly number[]>> = {
  "drill-calibration-textbook": (input) => {
    const caught = input.all("caught_g");
    const width = input.one("outlets") * input.one("spacing_m");
    const travel = Math.PI * input.one("wheel_diameter_m");
    const turns = input.one("turns");
    const center = mean([...caught]);
    return [
      sum([...caught]),
      10_000 * areaOfCourse(width, turns * travel),
      rateOfTurns(sum([...caught]) / 1000 / turns, wheelTurnsPerHectare(width, travel)),
      center,
      center * 1.05,
      center * 0.95,
      100 * coefficientOfVariation(caught, 0.95).value,
    ];
  },
  "dry-applicator-course": (input) => {
    const area = areaOfCourse(feet(input.one("width_ft")), feet(input.one("course_ft")));
    const rate = inPoundsPerAcre(rateOverArea(pounds(input.one("used_lb")), area));
    return [rate, rate * input.one("active_share")];
  },
  "dry-applicator-turns": (input) => {
    const perTurn = pounds(input.one("used_lb")) / input.one("wheel_turns");
    const turns = wheelTurnsPerHectare(
      feet(input.one("width_ft")),
      feet(input.one("circumference_ft")),
    );
    return [inPoundsPerAcre(rateOfTurns(perTurn, turns))];
  },
  "twentieth-of-an-acre": (input) => {
    const width = input.one("openers") * inches(input.one("spacing_in"));
    const area = convert(input.one("acre_share"), "ac", "ha");
    const course = area / areaOfCourse(width, 1);
    return [inFeet(width), inSquareFeet(area), inFeet(course), inFeet(course) / input.one("turns")];
  },
  "wheat-seed-count": (input) => [
    feet(input.one("course_ft")) / inches(input.one("circumference_in")),
    kernelsPerKg(1000 * input.one("sample_g")) * pounds(1),
  ],
  "wheat-seed-size": (input) =>
    input
      .all("seeds_per_lb")
      .map((perPound) =>
        inPoundsPerAcre(
          massRateOfSeeds(
            convert(input.one("seeds_per_ft2"), "seeds/ft²", "seeds/m²"),
            kernelMassOf(perPound),
          ),
        ),
      ),
  "grams-in-150-ft-of-row": (input) =>
    input
      .all("spacing_in")
      .map(
        (spacing) =>
          gramsPerMetreOfRow(convert(1, "lb/ac", "kg/ha"), inches(spacing)) *
          feet(input.one("row_ft")),
      ),
  "hundred-and-twenty-eighth": (input) =>
    input
      .all("spacing_in")
      .map((spacing) =>
        inFeet(convert(input.one("acre_share"), "ac", "ha") / areaOfCourse(inches(spacing), 1)),
      ),
  "one-row-twenty-turns": (input) => {
    const spacing = inches(input.one("spacing_in"));
    const course = input.one("turns") * feet(input.one("travel_ft"));
    const rate = convert(input.one("rate_lb_per_ac"), "lb/ac", "kg/ha");
    return [
      inSquareFeet(areaOfCourse(spacing, course)),
      gramsPerMetreOfRow(rate, spacing) * course,
    ];
  },
  "pea-rate": rateOfPlants,
  "prairie-rule": rateOfPlants,
  "barley-rate": (input) => [
    massRateOfPlants(
      input.one("plants_per_m2"),
      input.one("thousand_kernel_mass_g"),
      input.one("establishment"),
    ),
  ],
  "canola-seed-cost": (input) =>
    input
      .all("plants_per_ft2")
      .map(
        (plants) =>
          input.one("dollars_per_lb") *
          inPoundsPerAcre(
            massRateOfPlants(
              plantsPerFt2(plants),
              input.one("thousand_kernel_mass_g"),
              input.one("establishment"),
            ),
          ),
      ),
  "ten-metres-of-row": (input) => {
    const area = areaOfCourse(input.one("spacing_m"), input.one("course_m"));
    return [rateOverArea(input.one("caught_g") / 1000, area)];
  },
  "twenty-fifth-of-a-hectare": (input) => [
    wheelTurnsPerHectare(input.one("width_m"), Math.PI * input.one("wheel_diameter_m")) / 25,
  ],
  "soybean-seed-cost": (input) =>
    input
      .all("dollars_per_50_lb")
      .map(
        (price) =>
          (price / 50) *
          inPoundsPerAcre(
            massRateOfSeeds(
              input.one("seeds_per_ac") / convert(1, "ac", "m²"),
              kernelMassOf(input.one("seeds_per_lb")),
            ),
          ),
      ),
};

function rateOfPlants(input: Reader): readonly number[] {
  return [
    inPoundsPerAcre(
      massRateOfPlants(
        plantsPerFt2(input.one("plants_per_ft2")),
        input.one("thousand_kernel_mass_g"),
        input.one("establishment"),
      ),
    ),
  ];
}

interface Reader {
  one(name: string): number;
  all(name: string): readonly number[];
}

function reader(input: Input): Reader {
  return {
    one: (name) => present([input[name]].flat()[0]),
    all: (name) => present([input[name]].flat()).map((value) => present(value)),
  };
}

const rows = reference.examples.flatMap(({ id, input, rows: printed }) => {
  const found = present(answers[id])(reader(input as unknown as Input));
  return printed.map((row, i) => ({ ...row, id, found: present(found[i]), rows: found.length }));
});

describe("worked examples of the trade", () => {
  it("answers every row of every example", () => {
    expect(rows.length).toBe(sum(reference.examples.map((example) => example.rows.length)));
    for (const example of reference.examples) {
      const own = rows.filter(({ id }) => id === example.id);
      expect(own[0]?.rows).toBe(example.rows.length);
    }
  });

  it.each(rows)("$id: $what is $recomputed", ({ found, recomputed }) => {
    // The recomputed column is itself rounded to its last digit.
    const lastDigit = printedTolerance(String(recomputed));
    expect(Math.abs(found - recomputed)).toBeLessThanOrEqual(
      Math.max(lastDigit * 1.0001, 1e-4 * recomputed),
    );
  });

  it.each(rows.filter(({ printed, reproduces }) => printed !== null && reproduces))(
    "$id: $what rounds to the printed $printed",
    ({ found, printed }) => {
      const text = present(printed);
      expect(Math.abs(found - Number(text))).toBeLessThanOrEqual(printedTolerance(text));
    },
  );

  const misprints = rows.filter(({ reproduces }) => !reproduces);

  it.each(misprints)("$id: $what is not the printed $printed", ({ found, printed }) => {
    const text = present(printed);
    expect(Math.abs(found - Number(text))).toBeGreaterThan(printedTolerance(text));
  });

  it("knows eight figures that were misprinted, truncated or rounded on the way", () => {
    expect(misprints.map(({ id }) => id)).toEqual([
      "drill-calibration-textbook",
      "dry-applicator-turns",
      "wheat-seed-size",
      "pea-rate",
      "canola-seed-cost",
      "canola-seed-cost",
      "soybean-seed-cost",
      "soybean-seed-cost",
    ]);
  });
});
