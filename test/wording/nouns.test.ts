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
