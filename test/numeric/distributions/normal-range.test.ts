import { describe, expect, it } from "vitest";
import { rangeTail } from "../../../src/numeric/distributions/normal-range.ts";
import { expectDigits } from "../../support/distributions.ts";
import { integratePanels } from "../../support/quadrature.ts";

const edges = [0, 0.25, 0.5, 1, 2, 3, 4, 6, 8, 12, 16];

describe("the range of normal values", () => {
  it("has tails that add up to 1", () => {
    for (const size of [2, 3, 10, 100]) {
      const [lower, upper] = [rangeTail(size, "lower"), rangeTail(size, "upper")];
      for (const width of [0.01, 0.49, 0.51, 2, 5]) {
        expect(lower(width) + upper(width)).toBeCloseTo(1, 14);
      }
    }
  });

  it("has the mean 2/√π for two values, 3/√π for three and the tabled d₂ beyond", () => {
    // The mean is the integral of the upper tail.
    const mean = (size: number) => integratePanels(rangeTail(size, "upper"), edges);
    expectDigits(mean(2), 2 / Math.sqrt(Math.PI), 13, 2);
    expectDigits(mean(3), 3 / Math.sqrt(Math.PI), 13, 3);
    // d₂ as printed to 3 decimals: ASTM Manual on Presentation of Data and Control Chart Analysis (MNL 7).
    expect(mean(5)).toBeCloseTo(2.326, 3);
    expect(mean(10)).toBeCloseTo(3.078, 3);
    expect(mean(25)).toBeCloseTo(3.931, 3);
  });

  it("has a lower tail near 0 like √size·(width/√(2π))^(size − 1)", () => {
    const width = 1e-5;
    for (const size of [2, 3, 5]) {
      const limit = Math.sqrt(size) * (width / Math.sqrt(2 * Math.PI)) ** (size - 1);
      expectDigits(rangeTail(size, "lower")(width), limit, 9, size);
    }
  });

  it("does not jump where the narrow method takes over", () => {
    for (const size of [2, 6, 30]) {
      const lower = rangeTail(size, "lower");
      const slope = (lower(0.5 + 1e-7) - lower(0.5 - 1e-7)) / 2e-7;
      const smooth = (lower(0.51) - lower(0.49)) / 0.02;
      expect(slope / smooth).toBeCloseTo(1, 1);
    }
  });
});
