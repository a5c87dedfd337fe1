import { describe, expect, it } from "vitest";
import { divisionOfReading, readingVariance } from "../../src/model/reading.ts";
import { randomStream } from "../../src/numeric/random.ts";

describe("reading a scale", () => {
  it("errs with a variance of d²/6: gross and tare are each rounded, d²/12 apiece", () => {
    const stream = randomStream(12);
    const round = (kg: number) => Math.round(kg / 0.05) * 0.05;
    const draws = 200_000;
    let squares = 0;
    for (let i = 0; i < draws; i++) {
      const [tare, net] = [0.3 + stream.uniform(), 6 + stream.uniform()];
      squares += (round(tare + net) - round(tare) - net) ** 2;
    }
    // A standard error of a variance of this law (triangular, kurtosis 2.4) from so many draws is 0.26 %.
    expect(Math.abs(squares / draws / readingVariance(0.05) - 1)).toBeLessThan(0.01);
    expect(readingVariance(0.05)).toBeCloseTo(0.0025 / 6, 18);
    expect(readingVariance(0)).toBe(0);
  });

  it("has the division that makes a variance", () => {
    for (const division of [0, 0.001, 0.02, 3])
      expect(divisionOfReading(readingVariance(division))).toBeCloseTo(division, 15);
  });
});
