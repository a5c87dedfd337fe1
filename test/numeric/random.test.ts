import fc from "fast-check";
import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { chiSquaredUpperTail } from "../../src/numeric/distributions/chi-squared.ts";
import { normalLowerTail } from "../../src/numeric/distributions/normal.ts";
import { studentTLowerTail } from "../../src/numeric/distributions/student-t.ts";
import { incompleteGamma } from "../../src/numeric/incomplete-gamma.ts";
import { randomStream } from "../../src/numeric/random.ts";

/** p-value of Pearson's test that values transformed by their distribution function are uniform. */
function uniformityPValue(values: readonly number[], bins = 50): number {
  const counts = new Float64Array(bins);
  for (const value of values) {
    const bin = Math.min(bins - 1, Math.floor(value * bins));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  const expected = values.length / bins;
  const statistic = counts.reduce((total, count) => total + (count - expected) ** 2 / expected, 0);
  return chiSquaredUpperTail(statistic, bins - 1);
}

function draws(count: number, draw: () => number): number[] {
  return Array.from({ length: count }, draw);
}

describe("a random stream", () => {
  it("gives the same numbers for the same seed, today and on every machine", () => {
    const stream = randomStream(20251125);
    expect(stream.uniform()).toBe(0.3407440461759348);
    expect(stream.normal()).toBeCloseTo(0.4347158822663644, 12);
    expect(stream.integer(1, 6)).toBe(6);
    expect(stream.gamma(2.5)).toBeCloseTo(2.7878137167763155, 12);
  });

  it("gives other numbers for another seed or another stream", () => {
    const starts = [
      randomStream(0),
      randomStream(1),
      randomStream(2 ** 32),
      randomStream(0, 1),
      randomStream(1, 1),
    ].map((stream) => stream.uniform());
    expect(new Set(starts).size).toBe(starts.length);
  });

  it("is uniform on [0, 1)", () => {
    const { uniform } = randomStream(1);
    const values = draws(100_000, uniform);
    expect(Math.min(...values.slice(0, 50_000))).toBeGreaterThanOrEqual(0);
    expect(Math.max(...values.slice(0, 50_000))).toBeLessThan(1);
    expect(uniformityPValue(values)).toBeGreaterThan(1e-4);
  });

  it("is normal, and successive values do not depend on each other", () => {
    const { normal } = randomStream(2);
    const values = draws(100_000, normal);
    expect(uniformityPValue(values.map(normalLowerTail))).toBeGreaterThan(1e-4);
    // (z₁ + z₂)/√2 is standard normal only for independent neighbours.
    const sums = values.flatMap((z, i) => (i % 2 ? [] : [(z + (values[i + 1] ?? 0)) / Math.SQRT2]));
    expect(uniformityPValue(sums.map(normalLowerTail))).toBeGreaterThan(1e-4);
  });

  it.each([0.2, 0.9, 1, 2.7, 40])("is gamma of shape %d", (shape) => {
    const { gamma } = randomStream(3);
    const values = draws(50_000, () => gamma(shape));
    const chances = values.map((value) => incompleteGamma(shape, value, "lower"));
    expect(uniformityPValue(chances)).toBeGreaterThan(1e-4);
  });

  it("is chi-squared with a mean of its df", () => {
    const { chiSquared } = randomStream(4);
    const values = draws(50_000, () => chiSquared(3));
    expect(uniformityPValue(values.map((x) => 1 - chiSquaredUpperTail(x, 3)))).toBeGreaterThan(
      1e-4,
    );
  });

  it.each([0.4, 1, 2, 3.5, 12, 5e6])("is Student's t on %d degrees of freedom", (df) => {
    const values = draws(50_000, randomStream(6).studentT(df));
    expect(uniformityPValue(values.map((t) => studentTLowerTail(t, df)))).toBeGreaterThan(1e-4);
    // Neighbours have nothing to do with each other.
    const signs = values.map((t, i) => (t > 0 === (values[i + 1] ?? 1) > 0 ? 1 : 0));
    expect(Math.abs(mean(signs) - 0.5)).toBeLessThan(4 * (0.5 / Math.sqrt(50_000)));
  });

  it("draws whole numbers evenly, both ends included", () => {
    const { integer } = randomStream(5);
    const rolls = draws(60_000, () => integer(1, 6));
    expect(new Set(rolls)).toEqual(new Set([1, 2, 3, 4, 5, 6]));
    expect(
      uniformityPValue(
        rolls.map((roll) => (roll - 0.5) / 6),
        6,
      ),
    ).toBeGreaterThan(1e-4);
    expect(integer(-3, -3)).toBe(-3);
  });

  it("has streams that do not depend on each other", () => {
    const [first, second] = [randomStream(6, 0), randomStream(6, 1)];
    const sums = draws(50_000, () => (first.normal() + second.normal()) / Math.SQRT2);
    expect(uniformityPValue(sums.map(normalLowerTail))).toBeGreaterThan(1e-4);
  });

  it("has first values that are uniform over many streams and many seeds", () => {
    const overStreams = draws(20_000, () => 0).map((_, i) => randomStream(7, i).uniform());
    expect(uniformityPValue(overStreams)).toBeGreaterThan(1e-4);
    const overSeeds = draws(20_000, () => 0).map((_, i) => randomStream(i).uniform());
    expect(uniformityPValue(overSeeds)).toBeGreaterThan(1e-4);
  });

  it("shuffles without losing or repeating anything, and leaves the list it was given alone", () => {
    fc.assert(
      fc.property(fc.array(fc.integer()), fc.nat(), (items, seed) => {
        const before = [...items];
        const shuffled = randomStream(seed).shuffle(items);
        expect(items).toEqual(before);
        expect([...shuffled].sort((a, b) => a - b)).toEqual([...items].sort((a, b) => a - b));
      }),
    );
  });

  it("puts every item in every place equally often", () => {
    const { shuffle } = randomStream(8);
    const places = draws(40_000, () => shuffle(["a", "b", "c", "d"]).indexOf("a"));
    expect(
      uniformityPValue(
        places.map((place) => (place + 0.5) / 4),
        4,
      ),
    ).toBeGreaterThan(1e-4);
  });

  it("refuses seeds, bounds and shapes it cannot use", () => {
    expect(() => randomStream(-1)).toThrow(NumericalError);
    expect(() => randomStream(0.5)).toThrow("seed is 0.5; it must be a whole number of at least 0");
    expect(() => randomStream(1, -2)).toThrow("stream is -2");
    const stream = randomStream(1);
    expect(() => stream.integer(2, 1)).toThrow("upper is 1");
    expect(() => stream.integer(0.5, 1)).toThrow("lower is 0.5");
    expect(() => stream.gamma(0)).toThrow("shape is 0");
    expect(() => stream.chiSquared(Number.NaN)).toThrow("df is NaN");
    expect(() => stream.studentT(-1)).toThrow("df is -1");
  });
});
