import { describe, expect, it } from "vitest";
import { nouns as german, withTurns } from "../../src/wording/de/nouns.ts";
import { nouns as english } from "../../src/wording/en/nouns.ts";
import { numbered } from "../../src/wording/sayings/numbered.ts";
import { wordsBy } from "../support/words.ts";

const inEnglish = (value: number) => numbered(value, wordsBy.en.format);
const inGerman = (value: number) => numbered(value, wordsBy.de.format);

describe("counted things", () => {
  it("stand in the singular when there is one", () => {
    expect([1, 2].map(english.catches)).toEqual(["1 catch", "2 catches"]);
    expect([1, 2].map(english.fills)).toEqual(["1 fill", "2 fills"]);
    expect([1, 6].map(english.earlierFills)).toEqual([
      "the earlier fill of its level",
      "the 6 earlier fills of its level",
    ]);
    expect(english.degrees(inEnglish(1))).toBe("1 degree of freedom");
    expect([1, 2].map(german.catches)).toEqual(["1 Probe", "2 Proben"]);
    expect([1, 2].map(german.fills)).toEqual(["1 Füllung", "2 Füllungen"]);
    expect([1, 6].map(german.earlierFills)).toEqual([
      "der früheren Füllung ihres Niveaus",
      "der 6 früheren Füllungen ihres Niveaus",
    ]);
    expect(german.degrees(inGerman(1))).toBe("1 Freiheitsgrad");
  });

  it("are no longer than they are known: degrees of freedom may be broken", () => {
    expect(english.degrees(inEnglish(7.333333))).toBe("7.33 degrees of freedom");
    expect(german.degrees(inGerman(7.333333))).toBe("7,33 Freiheitsgrade");
  });

  it("take the dative after a German mit", () => {
    expect([1, 7.5].map((df) => german.onDegrees(inGerman(df)))).toEqual([
      "mit 1 Freiheitsgrad",
      "mit 7,5 Freiheitsgraden",
    ]);
    expect([1, 20].map((turns) => withTurns(inGerman(turns)))).toEqual([
      "mit 1 Umdrehung",
      "mit 20 Umdrehungen",
    ]);
  });
});

describe("catches still to take", () => {
  it("are told with their turns, and are more where some are taken", () => {
    const plan = (further: number) => ({ further, turns: inGerman(20) });
    expect(english.catchesOfTurns(plan(1))).toBe("1 catch of 20 turns");
    expect([1, 2].map((further) => english.moreCatches(plan(further)))).toEqual([
      "1 more catch of 20 turns",
      "2 more catches of 20 turns",
    ]);
    expect(german.catchesOfTurns(plan(1))).toBe("1 Probe mit 20 Umdrehungen");
    expect([1, 2].map((further) => german.moreCatches(plan(further)))).toEqual([
      "1 weitere Probe mit 20 Umdrehungen",
      "2 weitere Proben mit 20 Umdrehungen",
    ]);
  });
});

describe("a recorded variable on paper", () => {
  it("has a German name where evencatch knows it", () => {
    expect(german.variable("moisture")).toBe("Feuchte");
    expect(english.variable("moisture")).toBe("moisture");
  });

  it("keeps the name it has in the file otherwise, even one that every object knows", () => {
    for (const name of ["tkw_g", "constructor"]) {
      expect([english.variable(name), german.variable(name)]).toEqual([name, name]);
    }
  });
});

describe("counted nouns", () => {
  it("stand in the singular when there is one, in the case of what is before them", () => {
    const [one, more] = [
      { words: "1", one: true },
      { words: "7.3", one: false },
    ];
    expect([one, more].map(english.onDegrees)).toEqual([
      "on 1 degree of freedom",
      "on 7.3 degrees of freedom",
    ]);
    expect([one, more].map(german.onDegrees)).toEqual([
      "mit 1 Freiheitsgrad",
      "mit 7.3 Freiheitsgraden",
    ]);
    expect([1, 6].map(german.earlierFills)).toEqual([
      "der früheren Füllung ihres Niveaus",
      "der 6 früheren Füllungen ihres Niveaus",
    ]);
  });

  it("name one fill by its number, and several by the first and the last", () => {
    expect(english.fillsFromTo({ from: 3, to: 3 })).toBe("Fill 3");
    expect(english.fillsFromTo({ from: 3, to: 5 })).toBe("Fills 3 to 5");
  });
});
