import { describe, expect, it } from "vitest";
import { samePairs, strangeSigns } from "../../../src/data/suspicions/same-names.ts";

const difference = (one: string, other: string) =>
  samePairs([one, other]).map((pair) => pair.difference);

describe("names that a slip may have made two of one", () => {
  it.each([
    ["front", "frnt", "letter"],
    ["front", "fornt", "letter"],
    ["front", "frontt x", null],
    ["canola", "cannola", "letter"],
    ["tank links 1", "tank lnks 1", "letter"],
    ["front-left", "front left", "hyphen"],
    ["front-left", "frontleft", "hyphen"],
    ["B-1", "B1", "hyphen"],
    ["1", "01", "number"],
    ["1", "1.0", "number"],
    ["lot 7", "lot 007", "number"],
    ["front", "front\u200b", "invisible"],
    ["front", "fr\u00adont", "invisible"],
    ["B1", "\u04121", "look-alike"],
    ["oats", "o\u0430ts", "look-alike"],
  ])("%s and %s: %s", (one, other, found) => {
    expect(difference(one, other)).toEqual(found === null ? [] : [found]);
    expect(difference(other, one)).toEqual(found === null ? [] : [found]);
  });

  it.each([
    ["B1", "B2"],
    ["lot A", "lot B"],
    ["A north", "B north"],
    ["rye", "pea"],
    ["oat", "goat"],
    ["front", "fronts"],
    ["front", "frond"],
    ["front 1", "front 2"],
    ["1-1", "11"],
    ["1", "10"],
    ["NPK 15-15", "NPK 1515"],
    ["1.1", "1.10"],
    ["7.05", "7.5"],
    ["front", "rear"],
    ["wheat treated", "wheat untreated"],
  ])("not %s and %s", (one, other) => {
    expect(difference(one, other)).toEqual([]);
  });

  it("are found among many in time that grows with their number", () => {
    const names = Array.from({ length: 200_000 }, (_, i) => `meter number ${i}`);
    expect(samePairs([...names, "meter nmber 77"])).toHaveLength(1);
  });

  it("are found where every name has its twin, in time that grows with their number", () => {
    const names = Array.from({ length: 200_000 }, (_, i) => [`${i + 1}`, `0${i + 1}`]).flat();
    expect(samePairs(names)).toHaveLength(200_000);
  });

  it("are not looked for further where thousands are one letter apart, nor among texts that are no names", () => {
    const letters = Array.from({ length: 3_000 }, (_, i) => String.fromCharCode(0x4e00 + i));
    expect(samePairs(letters.map((one) => `abc${one}def`))).toHaveLength(1_000);
    const long = "a".repeat(30_000);
    expect(samePairs([`${long}bcd`, `${long}bbcd`])).toEqual([]);
  });
});

describe("signs that nobody sees", () => {
  it("are named by their code points", () => {
    expect(strangeSigns("front\u200b")).toEqual(["U+200B"]);
    expect(strangeSigns("o\u0430ts")).toEqual(["\u0430 (U+0430)"]);
    expect(strangeSigns("Möhre")).toEqual([]);
  });
});
