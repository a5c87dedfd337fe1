import { describe, expect, it } from "vitest";
import { percentage } from "../../../src/data/setup/values.ts";

describe("a percentage", () => {
  const share = percentage(0.1, 100);

  it("is read as the fraction that is so many hundredths", () => {
    expect(share.parse(95)).toBe(0.95);
    expect(share.parse(12.5)).toBe(0.125);
    expect(percentage(-50, 50).parse(-0.1)).toBe(-0.001);
  });

  it("may be its lowest and its highest figure, and none beyond", () => {
    expect([0.1, 100].map((percent) => share.parse(percent))).toEqual([0.001, 1]);
    expect([0.09, 100.1, 150].map((percent) => share.safeParse(percent).success)).toEqual([
      false,
      false,
      false,
    ]);
  });
});
