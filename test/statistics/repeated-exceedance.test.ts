import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { chanceBeyond } from "../../src/statistics/expected-loss.ts";
import { chanceAnyBeyond, type RepeatedLaw } from "../../src/statistics/repeated-exceedance.ts";

const law = fc.record({
  location: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
  spread: fc.double({ min: 0.004, max: 0.08, noNaN: true }),
  df: fc.double({ min: 2, max: 60, noNaN: true }),
  sharedVariance: fc.double({ min: 0.05, max: 1, noNaN: true }),
});

describe("chance that any of several cases is beyond the limit", () => {
  it("is the t chance for one case", () => {
    fc.assert(
      fc.property(law, (one) => {
        const scale = one.spread * Math.sqrt(1 + one.sharedVariance);
        const expected = chanceBeyond({ location: one.location, scale, df: one.df }, 0.05).either;
        expect(Math.abs(chanceAnyBeyond(one, 0.05)(1) - expected)).toBeLessThan(1e-6);
      }),
      { numRuns: 30 },
    );
  });

  it("grows with the number of cases, but never as fast as if they were unrelated", () => {
    fc.assert(
      fc.property(law, fc.integer({ min: 2, max: 20 }), (one, count) => {
        const chance = chanceAnyBeyond(one, 0.05);
        expect(chance(count)).toBeGreaterThanOrEqual(chance(count - 1));
        expect(chance(count)).toBeLessThanOrEqual(1 - (1 - chance(1)) ** count + 1e-12);
      }),
      { numRuns: 30 },
    );
  });

  it.each([
    [{ location: 0, spread: 0.025, df: 3, sharedVariance: 0.25 }, 4],
    [{ location: 0.02, spread: 0.02, df: 8, sharedVariance: 1 }, 6],
    [{ location: 0, spread: 0.02, df: Number.POSITIVE_INFINITY, sharedVariance: 0.5 }, 3],
  ] as const)("agrees with Monte Carlo: %o, %i cases", (one: RepeatedLaw, count) => {
    const stream = randomStream(77, count);
    const trials = 100_000;
    let any = 0;
    for (let i = 0; i < trials; i++) {
      const s =
        one.df === Number.POSITIVE_INFINITY ? 1 : Math.sqrt(stream.chiSquared(one.df) / one.df);
      const sigma = one.spread / s;
      const shared = one.location + sigma * Math.sqrt(one.sharedVariance) * stream.normal();
      let beyond = false;
      for (let j = 0; j < count; j++)
        if (Math.abs(shared + sigma * stream.normal()) > 0.05) beyond = true;
      if (beyond) any++;
    }
    expect(Math.abs(any / trials - chanceAnyBeyond(one, 0.05)(count))).toBeLessThan(0.0065);
  });

  it("refuses no cases, no spread, and a limit of zero", () => {
    const good = { location: 0, spread: 0.02, df: 4, sharedVariance: 0.25 };
    expect(() => chanceAnyBeyond(good, 0.05)(0)).toThrow(NumericalError);
    expect(() => chanceAnyBeyond({ ...good, spread: 0 }, 0.05)).toThrow(NumericalError);
    expect(() => chanceAnyBeyond(good, 0)).toThrow(NumericalError);
  });
});
