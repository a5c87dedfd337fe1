import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../src/data/types.ts";
import { DataError, OptionError } from "../src/errors/errors.ts";
import { catchesToFrame, frameToCatches, frameToRows, rowsToFrame } from "../src/frames.ts";
import { aCatch } from "./support/catches.ts";

const anyNumber = fc.double({ noNaN: true, noDefaultInfinity: true });
const anyCell = fc.oneof(anyNumber, fc.integer(), fc.string(), fc.boolean(), fc.constant(null));
// A data frame answers to these itself, and the empty name is none.
const anyName = fc.string({ unit: "grapheme", minLength: 1 }).map((name) => `c ${name}`);

const orNull = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value);
const text = fc.oneof(fc.string(), fc.constantFrom("007", "1e3", "NaN", "", "a-b", "true"));
const mass = fc.double({ min: 0, max: 1e6, noNaN: true });
const share = fc.double({ min: 0, max: 100, noNaN: true });
const count = fc.integer({ min: 1, max: 1e6 });

const anyCatch: fc.Arbitrary<Catch> = fc.record(
  {
    row: count,
    farm: orNull(text),
    machine: orNull(text),
    season: orNull(text),
    bin: text,
    product: text,
    fill: count,
    catch: count,
    turns: fc.double({ min: 0.001, max: 1e6, noNaN: true }),
    netKg: mass,
    grossKg: orNull(mass),
    tareKg: orNull(mass),
    divisionKg: orNull(fc.double({ min: 1e-6, max: 1e6, noNaN: true })),
    takenAt: orNull(fc.constant("2026-04-12T07:30")),
    meterRpm: orNull(fc.double({ min: 0.001, max: 10_000, noNaN: true })),
    bulkDensityKgPerM3: orNull(fc.double({ min: 1, max: 20_000, noNaN: true })),
    moisturePercent: orNull(share),
    binLevelPercent: orNull(share),
    outlet: orNull(text),
    operator: orNull(text),
    note: orNull(text),
    checked: orNull(text),
    leftOut: orNull(text),
    extra: fc.dictionary(fc.string(), text, { noNullPrototype: true }),
  },
  { noNullPrototype: true },
);

const oneCatch = aCatch({ bin: "007", turns: 20, netKg: 8.123456789012344 });

describe("rows as a data frame", () => {
  it("come back as they were, every digit and every text", async () => {
    const rows = fc
      .uniqueArray(anyName, { minLength: 1, maxLength: 5 })
      .chain((names) =>
        fc
          .array(fc.tuple(...names.map(() => anyCell)), { maxLength: 8 })
          .map((cells) =>
            cells.map((row) => Object.fromEntries(names.map((name, at) => [name, row[at]]))),
          ),
      );
    await fc.assert(
      fc.asyncProperty(rows, async (before) => {
        expect(frameToRows(await rowsToFrame(before))).toStrictEqual(before);
      }),
    );
  });

  it("keep sixteen digits, where single precision would keep eight", async () => {
    const values = [1.1234567890123457, 0.1 + 0.2, 1e-320, 2 ** 53 - 1, -0, 123456789.12345678];
    const frame = await rowsToFrame(values.map((value) => ({ value })));
    expect(frameToRows(frame).map((row) => row.value)).toStrictEqual(values);
    expect(frame.column("value").values).toStrictEqual(values);
  });

  it("keep a text that looks like a number as it is, and call it text", async () => {
    const frame = await rowsToFrame([{ bin: "007" }, { bin: "12" }]);
    expect(frame.dtypes).toEqual(["string"]);
    expect(frameToRows(frame)).toEqual([{ bin: "007" }, { bin: "12" }]);
  });

  it("are named after all they hold, not after the first rows", async () => {
    const whole = Array.from({ length: 100 }, (_, index) => ({ turns: index }));
    expect((await rowsToFrame(whole)).dtypes).toEqual(["int32"]);
    expect((await rowsToFrame([...whole, { turns: 0.5 }])).dtypes).toEqual(["float32"]);
    expect((await rowsToFrame([...whole, { turns: 2 ** 31 }])).dtypes).toEqual(["float32"]);
    expect((await rowsToFrame([...whole, { turns: null }])).dtypes).toEqual(["float32"]);
    expect((await rowsToFrame([...whole, { turns: "many" }])).dtypes).toEqual(["string"]);
    expect((await rowsToFrame([{ flagged: true }])).dtypes).toEqual(["boolean"]);
  });

  it("have a gap where a key is missing", async () => {
    const frame = await rowsToFrame([{ a: 1 }, { b: "x" }]);
    expect(frame.columns).toEqual(["a", "b"]);
    expect(frameToRows(frame)).toEqual([
      { a: 1, b: null },
      { a: null, b: "x" },
    ]);
  });

  it("keep their columns in order, numbers as names too", async () => {
    expect((await rowsToFrame([{ b: 1, a: 2 }])).columns).toEqual(["b", "a"]);
    expect(frameToRows(await rowsToFrame([{ "2": "two", "1": "one" }]))).toEqual([
      { "2": "two", "1": "one" },
    ]);
  });

  it("can be none at all", async () => {
    expect(frameToRows(await rowsToFrame([]))).toEqual([]);
  });

  it("give null for what the package marks as missing", () => {
    const frame = { columns: ["a", "b"], values: [[Number.NaN, undefined]] };
    expect(frameToRows(frame)).toEqual([{ a: null, b: null }]);
  });

  it.each([
    ["an infinite number", Number.POSITIVE_INFINITY],
    ["a number that is none", Number.NaN],
    ["a list", [1]],
    ["an object", { value: 1 }],
    ["a function", () => 1],
  ])("refuse %s", async (_, cell) => {
    await expect(rowsToFrame([{ estimate: cell }])).rejects.toThrow(OptionError);
  });

  it("refuse a column that would hide a part of the frame", async () => {
    await expect(rowsToFrame([{ values: 1 }])).rejects.toThrow(
      'Option "column" is "values"; it must be a name that is no part of a data frame itself.',
    );
    await expect(rowsToFrame([{ mean: 1 }])).rejects.toThrow(OptionError);
  });

  it("refuse an infinite number that arithmetic in the frame has made", () => {
    const frame = { columns: ["rate"], values: [[Number.NEGATIVE_INFINITY]] };
    expect(() => frameToRows(frame)).toThrow(OptionError);
  });
});

describe("catches as a data frame", () => {
  it("come back as they were, every digit and every text", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyCatch, { maxLength: 8 }), async (before) => {
        expect(frameToCatches(await catchesToFrame(before))).toStrictEqual(before);
      }),
    );
  });

  it("are named as in a file of catches, without the columns in which nothing is known", async () => {
    const frame = await catchesToFrame([
      { ...oneCatch, extra: { day: "01" } },
      { ...oneCatch, row: 3, moisturePercent: 13.5 },
    ]);
    expect(frame.columns).toEqual([
      "row",
      "bin",
      "product",
      "fill",
      "catch",
      "turns",
      "net_kg",
      "moisture_pct",
      "extra.day",
    ]);
    expect(frame.column("extra.day").values).toEqual(["01", null]);
  });

  it("come from a frame that the package itself has filtered", async () => {
    const both = [oneCatch, { ...oneCatch, row: 3, turns: 30 }];
    const frame = await catchesToFrame(both);
    const long = frame.query(frame.column("turns").gt(20));
    expect(frameToCatches(long)).toStrictEqual([both[1]]);
  });

  it("can be none at all", async () => {
    const frame = await catchesToFrame([]);
    expect(frame.columns).toContain("net_kg");
    expect(frameToCatches(frame)).toEqual([]);
  });

  it("are refused with every column that is missing", () => {
    expect(issuesOf({ columns: ["row", "bin", "turns"], values: [] })).toEqual([
      ["column-missing", null, "product"],
      ["column-missing", null, "fill"],
      ["column-missing", null, "catch"],
      ["column-missing", null, "net_kg"],
    ]);
  });

  it("are refused with every cell that cannot be one", () => {
    const columns = ["row", "bin", "product", "fill", "catch", "turns", "net_kg", "note"];
    const values = [
      [1, "1", "wheat", 1, 1, 20, 8.4, null],
      [2, 7, "wheat", 1.5, 2, 0, "8.4", 3],
      [3, null, "wheat", 1, 3, 20, Number.NaN, null],
    ];
    expect(issuesOf({ columns, values })).toEqual([
      ["not-a-text", 2, "bin"],
      ["not-whole", 2, "fill"],
      ["out-of-range", 2, "turns"],
      ["not-a-number", 2, "net_kg"],
      ["not-a-text", 2, "note"],
      ["value-missing", 3, "bin"],
      ["value-missing", 3, "net_kg"],
    ]);
  });

  it("say where, what was found, what was needed and what to do", () => {
    const columns = ["row", "bin", "product", "fill", "catch", "turns", "net_kg"];
    const read = () => frameToCatches({ columns, values: [[1, "1", "wheat", 1, 1, -2, 8.4]] });
    expect(read).toThrow(
      'data frame, row 1, column turns: found "-2"; needed a number from 0.001 to 1000000. Correct the cell.',
    );
  });
});

function issuesOf(frame: { columns: string[]; values: unknown[][] }): unknown[] {
  try {
    frameToCatches(frame);
  } catch (error) {
    if (error instanceof DataError) {
      return error.issues.map(({ code, row, column }) => [code, row, column]);
    }
    throw error;
  }
  throw new Error("The frame was taken.");
}
