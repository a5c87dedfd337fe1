import { describe, expect, it } from "vitest";
import { countsOf, differentAmong, figureOf, lastPlace, numberOf } from "../../src/data/figure.ts";
import { present } from "../support/reference.ts";

const figure = (text: string) => figureOf(text, 6);

describe("a number as it is written", () => {
  it.each([
    ["6.10", 610n, 2],
    ["6.1", 61n, 1],
    ["0.430", 430n, 3],
    [".5", 5n, 1],
    ["6.", 6n, 0],
    ["+13", 13n, 0],
    ["6020", 602n, -1],
    ["6000", 6n, -3],
    ["1e-2", 1n, 2],
    ["6.1e3", 61n, -2],
    ["6.020000", 6020000n, 6],
  ])("%s", (text, digits, decimals) => {
    expect(figure(text)).toEqual({ digits, decimals });
  });

  it.each(["0", "0.00", "", ".", "-6.1", "6,1", "6.1 kg", "NaN", "1e-300", "1e300"])(
    "%s is none above zero",
    (text) => {
      expect(figure(text)).toBeNull();
    },
  );

  it("is none with more digits than asked for; noughts at its ends are not counted", () => {
    expect(figure("6.083333")).toBeNull();
    expect(figure("0.0608330")).not.toBeNull();
    expect(figure("608333000")).not.toBeNull();
  });
});

describe("numbers side by side", () => {
  const some = ["6.10", "6.1", "13"].map((text) => present(figure(text)));

  it("are counted in the last place of any, and are the same whatever they are written with", () => {
    expect(lastPlace(some)).toBe(2);
    expect(countsOf(some, 2)).toEqual([610n, 610n, 1300n]);
    expect(countsOf(some, 0)).toEqual([6n, 6n, 13n]);
    expect(differentAmong(some)).toBe(2);
    expect(differentAmong([])).toBe(0);
  });

  it("come back as the nearest number", () => {
    expect(numberOf(5n, 2)).toBe(0.05);
    expect(numberOf(2n, -1)).toBe(20);
  });
});
