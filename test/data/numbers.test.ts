import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  clearSpellings,
  decimalMarks,
  paperDifference,
  readNumber,
  roundingOf,
} from "../../src/data/numbers.ts";

const neither = { comma: false, point: false, ofFormat: "unknown" } as const;
const byFormat = { ...neither, ofFormat: "point" } as const;
const commas = { ...neither, comma: true };
const points = { ...neither, point: true };
const both = { ...neither, comma: true, point: true };

describe("readNumber", () => {
  it.each([
    ["5.890", 5.89, 3],
    ["5,89", 5.89, 2],
    ["+12", 12, 0],
    ["-.5", -0.5, 1],
    ["5.", 5, 0],
    ["1.5e-3", 0.0015, 4],
    ["2E3", 2000, 0],
    [" 7 ", 7, 0],
    ["\u22123", -3, 0],
    ["-0", 0, 0],
    ["1e-400", 0, 100],
  ])("reads %j as %d with %d decimals", (text, value, decimals) => {
    expect(readNumber(text, byFormat)).toEqual({ ok: true, value, decimals });
  });

  it("reads numbers as they are", () => {
    expect(readNumber(5.89, neither)).toEqual({ ok: true, value: 5.89, decimals: 2 });
    expect(readNumber(1e-7, neither)).toEqual({ ok: true, value: 1e-7, decimals: 7 });
    expect(readNumber(1e21, neither)).toEqual({ ok: true, value: 1e21, decimals: 0 });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, "nan", "∞", "-Infinity", "1e999"])(
    "refuses %s as not finite",
    (cell) => {
      expect(readNumber(cell, neither)).toEqual({ ok: false, why: "not-finite" });
    },
  );

  it.each([true, "", "five", "1.234,5", "1,234.5", "1'000", "5 kg", "1".repeat(65)])(
    "refuses %j as no number",
    (cell) => {
      expect(readNumber(cell, neither)).toEqual({ ok: false, why: "not-a-number" });
    },
  );

  it.each([
    ["1,234", neither, null],
    ["1,234", points, null],
    ["1,234", both, null],
    ["1,234", commas, 1.234],
    ["1.234", neither, null],
    ["42.050", neither, null],
    ["42.050", byFormat, 42.05],
    ["1,234", byFormat, null],
    ["1.234", { ...commas, ofFormat: "point" }, null],
    ["1,234", { ...commas, ofFormat: "point" }, 1.234],
    ["6.42", neither, 6.42],
    ["0.420", commas, 0.42],
    ["1.234", points, 1.234],
    ["1.234", commas, null],
    ["1.234", both, null],
    ["0,234", points, 0.234],
    ["1234,567", neither, 1234.567],
  ] as const)("reads %s beside %j as %s", (text, marks, value) => {
    const read = readNumber(text, marks);
    expect(read.ok ? read.value : null).toBe(value);
  });
});

describe("decimalMarks", () => {
  it("counts only what can be read in one way", () => {
    const cells = ["1,234", "12.345", "7", "a,b", 5.5, null];
    expect(decimalMarks(cells, "unknown")).toEqual(neither);
    expect(decimalMarks(cells, "point")).toEqual(byFormat);
    expect(decimalMarks(["0,5"], "unknown")).toEqual(commas);
    expect(decimalMarks(["5.89", "1,234"], "unknown")).toEqual(points);
    expect(decimalMarks(["5.89", "5,8"], "unknown")).toEqual(both);
  });

  it("looks no further than a point where no cell can hold a comma", () => {
    function* cells() {
      yield* ["7", "42.050", "5.89"];
      throw new Error("looked further");
    }
    expect(decimalMarks(cells(), "only point")).toEqual({ ...points, ofFormat: "point" });
  });
});

describe("clearSpellings", () => {
  it.each(["1,234", "12.345"])("of %s are no longer ambiguous, whatever the file has", (text) => {
    for (const marks of [neither, byFormat, commas, points, both]) {
      const values = clearSpellings(text, marks).map((spelling) => {
        const inFile = decimalMarks([spelling], marks.ofFormat);
        return readNumber(spelling, {
          ...inFile,
          comma: marks.comma || inFile.comma,
          point: marks.point || inFile.point,
        });
      });
      const whole = Number(text.replace(/[.,]/, ""));
      expect(values).toMatchObject([{ value: whole / 1000 }, { value: whole }]);
    }
  });
});

describe("paperDifference", () => {
  it("is that of whole thousandths", () => {
    const thousandths = fc.integer({ min: 0, max: 10_000_000 });
    fc.assert(
      fc.property(thousandths, thousandths, (one, other) => {
        const printed = (whole: number) => ({ value: Number(`${whole}e-3`), decimals: 3 });
        const found = paperDifference(printed(one), printed(other));
        expect(found.value).toBe(Number(`${one - other}e-3`));
      }),
    );
  });

  it("keeps the finer decimals of the two", () => {
    expect(paperDifference({ value: 6.3, decimals: 1 }, { value: 0.425, decimals: 3 })).toEqual({
      value: 5.875,
      decimals: 3,
    });
  });
});

describe("roundingOf", () => {
  it("is half a unit in the last digit", () => {
    expect(roundingOf({ value: 5.89, decimals: 2 })).toBe(0.005);
    expect(roundingOf({ value: 589, decimals: 0 })).toBe(0.5);
  });
});
