import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSpreadLibrary, readSpreadLibrary } from "../../../src/data/spreads/read.ts";
import {
  estimatedConstants,
  type SpreadLibrary,
  spreadLibraryJsonSchema,
} from "../../../src/data/spreads/schema.ts";
import { spreadLibraryText } from "../../../src/data/spreads/write.ts";
import { DataError } from "../../../src/errors/errors.ts";
import { aSpreadLibrary } from "../../support/spread-libraries.ts";

const name = "spreads.json";
const file = () => JSON.parse(spreadLibraryText(aSpreadLibrary));
const problems = (content: unknown) => {
  const check = checkSpreadLibrary({ name, text: JSON.stringify(content) });
  if (check.ok) throw new Error("the library was not refused");
  return check.issues;
};
const texts = (content: unknown) => problems(content).map(({ text }) => text);

const word = fc.stringMatching(/^[a-z]{1,8}( [a-z]{1,8})?$/);
const whole = fc.integer({ min: 1, max: 1_000_000 });
const figure = fc.option(
  fc.record({
    variance: fc.double({ min: 1e-24, max: 1000, noNaN: true }),
    df: fc.double({ min: 1, max: 1e6, noNaN: true }),
  }),
);
const size = fc.double({ min: 0, max: 1e6, noNaN: true });
const library: fc.Arbitrary<SpreadLibrary> = fc.record({
  made: fc.record({
    by: word,
    day: fc.constantFrom("2026-04-12", "2028-02-29"),
    how: word,
    catches: whole,
    fills: whole,
    meters: whole,
    metersLeftOut: fc.nat(1000),
    fewestBins: whole,
    tablesSha256: fc.option(fc.array(fc.stringMatching(/^[0-9a-f]{64}$/), { maxLength: 3 })),
  }),
  records: fc.array(
    fc.record({
      productClass: fc.option(word),
      meterType: fc.option(word),
      spread: figure,
      scatter: figure,
      fills: whole,
      catches: whole,
    }),
    { maxLength: 6 },
  ),
  estimates: fc.option(
    fc.record({
      level: fc.double({ min: 0.5, max: 0.9999, noNaN: true }),
      constants: fc.array(
        fc.record({
          name: fc.constantFrom(...estimatedConstants),
          declared: size,
          estimate: size,
          from: size,
          to: size,
          sources: whole,
          differs: fc.boolean(),
          said: fc.option(word),
        }),
        { maxLength: 5 },
      ),
    }),
  ),
});

describe("a library of spreads", () => {
  it("comes back from its file as it was written, to the last digit", () => {
    fc.assert(
      fc.property(library, (one) => {
        expect(readSpreadLibrary({ name, text: spreadLibraryText(one) })).toEqual(
          // JSON has no negative zero.
          JSON.parse(JSON.stringify(one)),
        );
      }),
      { numRuns: 200 },
    );
  });

  it("names what it is, its version, its units and what it is about, and no key that its schema lacks", () => {
    expect(file()).toMatchObject({
      kind: "evencatch-spreads",
      version: 1,
      units: { spread: "1", scatter: "turns" },
    });
    const { properties } = spreadLibraryJsonSchema();
    expect(Object.keys(Object(properties))).toEqual(expect.arrayContaining(Object.keys(file())));
    expect(spreadLibraryJsonSchema()).toMatchObject({
      additionalProperties: false,
      properties: { version: { const: 1 } },
      required: expect.arrayContaining(["kind", "version", "units", "made", "records"]),
    });
  });

  it("is refused with file, field, what was found, what is needed and what to do", () => {
    const meter = { fills: 3, catches: 9 };
    const records = [
      { ...meter, spread: { variance: 0, df: 8 } },
      { ...meter, scatter: { variance: 0.004, df: "8" } },
      { ...meter, product: "wheat" },
      { fills: 2.5, catches: 9 },
    ];
    expect(texts({ ...file(), records })).toMatchInlineSnapshot(`
      [
        "spreads.json, at records[0].spread.variance: found 0; needed a number from 1e-24 to 1000. Write it like this: "variance": 0.0004.",
        "spreads.json, at records[1].scatter.df: found the text "8"; needed a number from 1 to 1000000. Write it like this: "df": 8.",
        "spreads.json, at records[2].product: found the key "product"; needed one of the keys product_class, meter_type, spread, scatter, fills, catches. Rename it to product_class if that is meant, or delete it.",
        "spreads.json, at records[3].fills: found 2.5; needed a whole number from 1. Write it like this: "fills": 5.",
      ]
    `);
    expect(new Set(problems({ ...file(), records }).map(({ code }) => code))).toEqual(
      new Set(["spreads-invalid"]),
    );
  });

  it("says nothing but that of a file of another kind, version or unit", () => {
    expect(texts({ tolerance_percent: 3 })).toHaveLength(2);
    expect(texts({ ...file(), kind: "evencatch-manifest", colour: "red" })).toMatchInlineSnapshot(`
      [
        "spreads.json, at kind: found "evencatch-manifest"; needed one of "evencatch-spreads". Write it like this: "kind": "evencatch-spreads".",
      ]
    `);
    expect(texts({ ...file(), version: 2, colour: "red" })).toMatchInlineSnapshot(`
      [
        "spreads.json, at version: found 2; needed version 1 of the format. Update evencatch if the file is newer, or have it written anew.",
      ]
    `);
    expect(texts({ ...file(), units: { spread: "%", scatter: "turns" } })).toMatchInlineSnapshot(`
      [
        "spreads.json, at units.spread: found "%"; needed one of "1". Write it like this: "spread": "1".",
      ]
    `);
  });

  it("is refused as a whole where it is no JSON, nothing, or another file", () => {
    const refused =
      (text: string, as = name) =>
      () =>
        readSpreadLibrary({ name: as, text });
    expect(refused("{")).toThrow(DataError);
    expect(refused("")).toThrow("a library of spreads, as `evencatch spreads` writes it");
    expect(refused("{}", "spreads.csv")).toThrow("a library of spreads that ends in .json");
    for (const value of [null, [], 7, "x"]) expect(() => texts(value)).not.toThrow();
  });

  it("never throws anything but a list of what is wrong, whatever JSON it is given", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(...Object.keys(file())), (value, key) => {
        const check = checkSpreadLibrary({
          name,
          text: JSON.stringify({ ...file(), [key]: value }),
        });
        expect(check.ok || check.issues.length > 0).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
