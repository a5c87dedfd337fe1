import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError, UnitError } from "../../src/errors/errors.ts";
import { convert, parseUnit, unitsOf } from "../../src/units/convert.ts";
import {
  type CompatibleUnit,
  type ConvertibleUnit,
  type Dimension,
  factors,
} from "../../src/units/factors.ts";
import reference from "../reference/units/exact-factors.json" with { type: "json" };

const dimensions = Object.keys(factors) as Dimension[];

/** The reference file and the properties name units as plain text. */
function convertNamed(value: number, from: string, to: string): number {
  return convert(value, from as ConvertibleUnit, to as CompatibleUnit<ConvertibleUnit>);
}

describe("each factor of NIST SP 811 appendix B.8 and Handbook 44 appendix C", () => {
  it.each(reference.factors)("1 $from is $exact $to", (factor) => {
    const found = convertNamed(1, factor.from, factor.to);
    expect(Math.abs(found / Number(factor.exact) - 1)).toBeLessThan(1e-15);
  });

  it.each(reference.factors)("1 $from rounds to the printed $printed $to", (factor) => {
    const printed = Number(factor.printed);
    const decimals = factor.printed.split(".")[1]?.length ?? 0;
    const tolerance =
      "relative_tolerance_printed" in factor
        ? Number(factor.relative_tolerance_printed) * printed
        : 0.5 * 10 ** -decimals;
    expect(Math.abs(convertNamed(1, factor.from, factor.to) - printed)).toBeLessThanOrEqual(
      tolerance,
    );
  });

  it("covers every unit that is not the base of its dimension", () => {
    const tested = new Set(reference.factors.flatMap(({ from, to }) => [from, to]));
    const untested = dimensions
      .flatMap((dimension) => unitsOf<Dimension>(dimension).slice(1))
      .filter((unit) => !tested.has(unit));
    expect(untested).toEqual([]);
  });
});

describe("published roundings of the trade", () => {
  it("gives a 60 lb bushel of wheat as 772 kg/m³", () => {
    expect(convert(60, "lb/bu", "kg/m³")).toBeCloseTo(772.3115868584682, 10);
  });

  it("gives 5 plants/ft² as 53.82 plants/m²", () => {
    expect(convert(5, "plants/ft²", "plants/m²")).toBeCloseTo(53.81955, 5);
  });

  it("turns printed grams into the nearest kilograms, without floating dust", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (grams) => {
        expect(convert(grams, "g", "kg")).toBe(Number(`${grams}e-3`));
      }),
    );
  });
});

describe("round trips", () => {
  const pair = fc.constantFrom(...dimensions).chain((dimension) => {
    const unit = fc.constantFrom(...unitsOf<Dimension>(dimension));
    return fc.record({ from: unit, to: unit });
  });

  it("come back to the value within 1e-15 for any two units of a dimension", () => {
    fc.assert(
      fc.property(pair, fc.double({ min: 1e-9, max: 1e9, noNaN: true }), ({ from, to }, value) => {
        const back = convertNamed(convertNamed(value, from, to), to, from);
        expect(Math.abs(back / value - 1)).toBeLessThan(2e-15);
      }),
    );
  });

  it("keep zero and the sign", () => {
    expect(convert(0, "lb", "kg")).toBe(0);
    expect(convert(-1, "ft", "m")).toBe(-0.3048);
  });
});

describe("what cannot be converted", () => {
  it("names both units and those allowed when they measure different things", () => {
    expect(() => convertNamed(1, "kg", "ha")).toThrow(
      new UnitError("Cannot convert kg into ha; allowed: kg, g, t, lb, oz."),
    );
  });

  it("does not compile either", () => {
    // @ts-expect-error A mass is no area.
    expect(() => convert(1, "kg", "ha")).toThrow(UnitError);
    // @ts-expect-error Seeds sown are not plants standing.
    expect(() => convert(1, "seeds/m²", "plants/m²")).toThrow(UnitError);
  });

  it("does not turn seeds sown into plants standing", () => {
    expect(() => convertNamed(1, "seeds/m²", "plants/m²")).toThrow(
      "Cannot convert seeds/m² into plants/m²; allowed: seeds/m², seeds/ft², seeds/ac.",
    );
  });

  it("names every unit when the first is unknown", () => {
    expect(() => convertNamed(1, "stone", "kg")).toThrow(
      /^Cannot convert stone into kg; allowed: kg, g, t, lb, oz, m, ft, in, ha, /,
    );
  });

  it("is not misled by names every object has", () => {
    expect(() => convertNamed(1, "constructor", "kg")).toThrow(UnitError);
    expect(() => convertNamed(1, "kg", "toString")).toThrow(UnitError);
  });

  it("refuses a value that is not finite, or does not stay finite", () => {
    expect(() => convert(Number.NaN, "kg", "g")).toThrow(NumericalError);
    expect(() => convert(Number.POSITIVE_INFINITY, "kg", "kg")).toThrow(NumericalError);
    expect(() => convert(Number.MAX_VALUE, "kg", "g")).toThrow(
      "Cannot convert 1.7976931348623157e+308 kg into g: not a finite number.",
    );
  });
});

describe("parseUnit", () => {
  it.each([
    ["KG / HA", "rate", "kg/ha"],
    ["plants/m2", "plants", "plants/m²"],
    ["seeds/ft^2", "seeds", "seeds/ft²"],
    ["lb/ft3", "density", "lb/ft³"],
    ["lbs", "mass", "lb"],
    ["lbs/ac", "rate", "lb/ac"],
    ["M2", "area", "m²"],
  ] as const)("reads %j", (text, dimension, unit) => {
    expect(parseUnit(text, dimension)).toBe(unit);
  });

  it("reads every unit as it is written", () => {
    for (const dimension of dimensions) {
      for (const unit of unitsOf<Dimension>(dimension)) {
        expect(parseUnit(unit, dimension)).toBe(unit);
      }
    }
  });

  it("names what was found and what is allowed", () => {
    expect(() => parseUnit("stone", "mass")).toThrow(
      new UnitError('"stone" is not a unit of mass; allowed: kg, g, t, lb, oz.'),
    );
  });
});
