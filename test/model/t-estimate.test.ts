import { describe, expect, it } from "vitest";
import {
  intervalAround,
  relativeHalfWidth,
  tEstimate,
  unknownEstimate,
} from "../../src/model/t-estimate.ts";
import type { About } from "../../src/results/estimate.ts";
import { present } from "../support/reference.ts";

describe("an estimate with Student's interval", () => {
  it("reaches t standard errors to either side", () => {
    // t(0.95, 7) = 1.894579, NIST/SEMATECH e-Handbook 1.3.6.7.2 prints 1.895.
    const found = tEstimate(0.3, "kg/turn", 0.01, 7, 0.9, "next fill");
    expect(found).toMatchObject({ value: 0.3, unit: "kg/turn", standardError: 0.01, df: 7 });
    expect(present(found.interval).lower).toBeCloseTo(0.3 - 0.01894579, 8);
    expect(present(found.interval).upper).toBeCloseTo(0.3 + 0.01894579, 8);
    expect(present(found.interval)).toMatchObject({ level: 0.9, about: "next fill" });
  });

  it("is a value alone where its error is not known, or rounding only", () => {
    const alone = unknownEstimate(0.3, "kg/turn");
    expect(alone).toEqual({
      ...{ value: 0.3, unit: "kg/turn" },
      ...{ standardError: null, df: null, interval: null },
    });
    expect(tEstimate(0.3, "kg/turn", null, 7, 0.9, "next fill")).toEqual(alone);
    expect(tEstimate(0.3, "kg/turn", 1e-14, 7, 0.9, "next fill")).toEqual(alone);
    expect(tEstimate(0.3, "kg/turn", 1e-11, 7, 0.9, "next fill").interval).not.toBeNull();
  });
});

describe("an interval", () => {
  it.each<[About, number]>([
    ["this fill's delivery", 0],
    ["mean over fills", 0],
    ["next fill", 0],
    ["next catch", 0],
    ["rate", 0],
    ["difference", -0.5],
    ["rate error today", -0.5],
    ["shift", -0.5],
  ])("about %s ends at %s below", (about, lower) => {
    expect(intervalAround(1, 1.5, 0.95, about)).toEqual({ lower, upper: 2.5, level: 0.95, about });
    expect(intervalAround(1, 0.25, 0.95, about).lower).toBe(0.75);
  });

  it("has the half-width of its upper end, which no floor cuts", () => {
    const interval = intervalAround(2, 3, 0.95, "next fill");
    const estimate = { ...unknownEstimate(2, "kg/turn"), interval };
    expect(relativeHalfWidth(estimate)).toBe(1.5);
    expect(relativeHalfWidth(unknownEstimate(2, "kg/turn"))).toBeNull();
    const open = { ...estimate, interval: { ...interval, upper: null } };
    expect(relativeHalfWidth(open)).toBeNull();
  });
});
