import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { normalLowerTail } from "../../src/numeric/distributions/normal.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { howeToleranceFactor } from "../../src/statistics/tolerance-interval.ts";
import { digits, present, printedTolerance, recomputed, reference } from "../support/reference.ts";

const sample = (n: number) => ({ n, df: n - 1 });
const aim = { content: 0.95, confidence: 0.95 };

// Odeh & Owen (1980): from memory, agree with R.
const twoSided = reference("tables/tolerance-two-sided-95-95.json");
// NIST/SEMATECH e-Handbook 7.2.6.3, silicon wafers.
const wafers = reference("tolerance/handbook-wafers.json");

const sizesOf = (set: typeof twoSided) =>
  Object.keys(set.certified).map((name) => Number(name.slice(1)));

function expectPrinted(value: number, printed: string) {
  expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(printedTolerance(printed));
}

describe("two-sided tolerance factors for 95 % content with 95 % confidence", () => {
  it.each(sizesOf(twoSided))("n = %i: Howe's approximation as R computes it", (n) => {
    const factor = howeToleranceFactor(sample(n), aim);
    expect(digits(factor, recomputed(twoSided, `howe_n${n}`))).toBeGreaterThan(11);
  });

  it("by Howe are 5 % off the exact ones printed at n = 2, 2.1 % at n = 3, and within 1 % from n = 4", () => {
    const off = (n: number) =>
      Math.abs(howeToleranceFactor(sample(n), aim) / Number(twoSided.certified[`n${n}`]) - 1);
    expect(off(2)).toBeLessThan(0.05);
    expect(off(3)).toBeLessThan(0.021);
    for (const n of sizesOf(twoSided)) if (n >= 4) expect(off(n)).toBeLessThan(0.01);
  });
});

describe("the handbook's wafers, n = 43, 90 % content with 99 % confidence", () => {
  const wanted = { content: 0.9, confidence: 0.99 };

  it("two-sided by Howe", () => {
    const howe = howeToleranceFactor(sample(43), wanted);
    expectPrinted(howe, present(wafers.certified.k2_howe));
    expect(digits(howe, recomputed(wafers, "k2_howe"))).toBeGreaterThan(11);
  });
});

describe("confidence of holding 90 % of a population, spread borrowed from elsewhere", () => {
  it.each([
    [1, 4],
    [1, 9],
    [3, 2],
    [6, 5],
  ])("n = %i, df = %i: close to the 95 % promised", (n, df) => {
    const stream = randomStream(20_261_126, 100 * n + df);
    const factor = howeToleranceFactor({ n, df }, { content: 0.9, confidence: 0.95 });
    const trials = 20_000;
    let held = 0;
    for (let i = 0; i < trials; i++) {
      const center = stream.normal() / Math.sqrt(n);
      const reach = factor * Math.sqrt(stream.chiSquared(df) / df);
      if (normalLowerTail(center + reach) - normalLowerTail(center - reach) >= 0.9) held++;
    }
    // The approximation itself is good to about ± 0.01; with a mean of one value it gives a little more away.
    expect(held / trials).toBeGreaterThan(0.935);
    expect(held / trials).toBeLessThan(0.965);
  });
});

describe("properties", () => {
  const size = fc.integer({ min: 2, max: 40 });
  const share = fc.double({ min: 0.5, max: 0.99, noNaN: true });

  it("factors grow with content and confidence and shrink with the sample", () => {
    fc.assert(
      fc.property(size, share, share, (n, content, confidence) => {
        const at = (m: number, p: number, c: number) =>
          howeToleranceFactor(sample(m), { content: p, confidence: c });
        const base = at(n, content, confidence);
        expect(at(n, content + (1 - content) / 3, confidence)).toBeGreaterThan(base);
        expect(at(n, content, confidence + (1 - confidence) / 3)).toBeGreaterThan(base);
        if (confidence > 0.8) expect(at(n + 1, content, confidence)).toBeLessThan(base);
      }),
      { numRuns: 20 },
    );
  });

  it("refuse an empty sample and shares that are none", () => {
    expect(() => howeToleranceFactor({ n: 0, df: 1 }, aim)).toThrow(NumericalError);
    expect(() => howeToleranceFactor(sample(1), aim)).toThrow(NumericalError);
    expect(() => howeToleranceFactor(sample(5), { content: 1, confidence: 0.9 })).toThrow(
      NumericalError,
    );
  });
});
