import { describe, expect, it } from "vitest";
import { catchWords, degrees, fillWords } from "../../../src/wording/english/counted.ts";
import { english } from "../../../src/wording/english/english.ts";

describe("counted things", () => {
  const { format } = english();

  it("stand in the singular when there is one", () => {
    expect([1, 2].map(catchWords)).toEqual(["1 catch", "2 catches"]);
    expect([1, 2].map(fillWords)).toEqual(["1 fill", "2 fills"]);
    expect(degrees(1, format)).toBe("1 degree of freedom");
  });

  it("are no longer than they are known: degrees of freedom may be broken", () => {
    expect(degrees(7.333333, format)).toBe("7.33 degrees of freedom");
  });
});
