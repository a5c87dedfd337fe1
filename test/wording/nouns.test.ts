import { describe, expect, it } from "vitest";
import { nouns as german } from "../../src/wording/de/nouns.ts";
import { nouns as english } from "../../src/wording/en/nouns.ts";

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
