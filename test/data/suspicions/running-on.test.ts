import { describe, expect, it } from "vitest";
import { catchesRunOn } from "../../../src/data/suspicions/running-on.ts";
import { aFill } from "../../support/catches.ts";

type Pairs = readonly (readonly [turns: number, netKg: number])[];
const ranOn = (figure: "netKg" | "turns", ...pairs: Pairs) => catchesRunOn(aFill(pairs), figure);

describe("turns that run on", () => {
  it("are as many as begin where the catch before ended", () => {
    expect(ranOn("turns", [20, 6.02], [40, 5.95], [60, 6.1])).toBe(2);
    expect(ranOn("turns", [20, 6.02], [60, 12.1], [80, 6.1])).toBe(2);
    expect(ranOn("turns", [20, 6], [40, 6.1], [20, 5.9], [40, 6])).toBe(2);
  });

  it("are none where turns and masses grow together, whatever the scatter", () => {
    expect(ranOn("turns", [20, 6.02], [40, 12.4], [60, 17.1])).toBe(0);
    expect(ranOn("turns", [20, 6.02], [20, 6.6], [20, 5.6])).toBe(0);
  });

  it("are one in a pair, and a catch that stands out among more", () => {
    expect(ranOn("turns", [20, 6], [40, 6.1])).toBe(1);
    expect(ranOn("turns", [20, 6], [20, 6.1], [40, 6.05])).toBe(0);
  });

  it("are none where another catch fits neither way", () => {
    expect(ranOn("turns", [20, 6], [40, 6.1], [60, 2])).toBe(0);
  });
});

describe("masses that run on", () => {
  it("are as many as hold the catch before too", () => {
    expect(ranOn("netKg", [20, 6], [20, 12.1], [20, 18], [20, 6])).toBe(2);
    expect(ranOn("netKg", [20, 6], [40, 18.2], [20, 24])).toBe(2);
  });

  it("are none where only the delivery falls", () => {
    expect(ranOn("netKg", [20, 6], [20, 3], [20, 1.5])).toBe(0);
  });
});
