import { describe, expect, it } from "vitest";
import { answersOf } from "../../../src/data/import/answers.ts";
import type { ImportOptions } from "../../../src/data/import/result.ts";
import { OptionError } from "../../../src/errors/errors.ts";

/** Answers that are none, and the option that each is an answer to. */
const none: readonly (readonly [string, unknown])[] = [
  ["dates", "dym"],
  ["dates", null],
  ["decimal", "dot"],
  ["decimal", null],
  ["map", { Tank: "tonk" }],
  ["map", { Tank: "" }],
  ["set", { tonk: "1" }],
  ["set", { "-": "1" }],
  ["fillDown", ["tonk"]],
];

describe("answers about a file", () => {
  it.each(none)("to %s: %j is refused by its option", (option, value) => {
    const asked = () => answersOf({ [option]: value } as ImportOptions);
    expect(asked).toThrow(OptionError);
    expect(asked).toThrow(`Option "${option}"`);
  });

  it("under a name that is none are refused by it", () => {
    expect(() => answersOf({ date: "dmy" } as ImportOptions)).toThrow('Option "date"');
  });

  it("are taken in every form that there is", () => {
    for (const dates of ["dmy", "mdy", "ymd"] as const)
      expect(answersOf({ dates }).options.dates).toBe(dates);
    for (const decimal of ["comma", "point"] as const)
      expect(answersOf({ decimal }).options.decimal).toBe(decimal);
    const { map, set, fillDown } = answersOf({
      map: { "Tank Nr.": "bin", Gewicht: "Net (g)", Schuppen: " - ", brutto: "gross" },
      set: { product: " oats ", tare_kg: " 0.4 ", net: "6" },
      fillDown: ["turns", "tare_kg"],
    });
    expect([...map]).toEqual([
      ["tanknr", { name: "bin", unit: null }],
      ["gewicht", { name: "net", unit: "g" }],
      ["schuppen", null],
      ["brutto", { name: "gross", unit: null }],
    ]);
    expect([...set]).toEqual([
      ["product", "oats"],
      ["tare", "0.4 kg"],
      ["net", "6"],
    ]);
    expect([...fillDown]).toEqual(["turns", "tare"]);
  });

  it("that nobody gave are empty", () => {
    const { map, set, fillDown } = answersOf({});
    expect([map.size, set.size, fillDown.size]).toEqual([0, 0, 0]);
  });
});
