import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../src/numeric/random.ts";
import {
  chanceOfWidth,
  sampleSizeAssured,
  sampleSizeByNormal,
  sampleSizeByT,
  sampleSizePooled,
} from "../../src/statistics/sample-size.ts";

const level = 0.95;
const fraction = (min: number, max: number) => fc.double({ min, max, noNaN: true });

// Computed by an independent program (numpy and scipy): smallest n for a 95 % interval of ± w, scatter s, by the normal
// formula, by t, and by t with an assurance of 80 %.
const table: readonly (readonly [s: number, w: number, z: number, t: number, assured: number])[] = [
  [0.01, 0.01, 4, 7, 8],
  [0.01, 0.015, 2, 5, 6],
  [0.01, 0.02, 1, 4, 4],
  [0.01, 0.03, 1, 3, 4],
  [0.015, 0.01, 9, 12, 14],
  [0.015, 0.015, 4, 7, 8],
  [0.015, 0.02, 3, 5, 6],
  [0.015, 0.03, 1, 4, 4],
  [0.02, 0.01, 16, 18, 22],
  [0.02, 0.015, 7, 10, 12],
  [0.02, 0.02, 4, 7, 8],
  [0.02, 0.03, 2, 5, 6],
  [0.03, 0.01, 35, 38, 44],
  [0.03, 0.015, 16, 18, 22],
  [0.03, 0.02, 9, 12, 14],
  [0.03, 0.03, 4, 7, 8],
];

describe("sample size for the width of an interval", () => {
  it.each(table)("scatter %s, width %s", (scatter, halfWidth, z, t, assured) => {
    const aim = { scatter, halfWidth, level };
    expect(sampleSizeByNormal(aim)).toBe(z);
    expect(sampleSizeByT(aim)).toBe(t);
    expect(sampleSizeAssured(aim, 0.8)).toBe(assured);
  });

  it("reaches its width about as often as the assurance says, while the bare t formula does not", () => {
    const aim = { scatter: 0.02, halfWidth: 0.02, level };
    const often = (n: number) => {
      const stream = randomStream(20_261_125, n);
      const t = studentTQuantile(0.975, n - 1);
      const trials = 20_000;
      let reached = 0;
      for (let i = 0; i < trials; i++) {
        const s = aim.scatter * Math.sqrt(stream.chiSquared(n - 1) / (n - 1));
        if ((t * s) / Math.sqrt(n) <= aim.halfWidth) reached++;
      }
      return reached / trials;
    };
    // ± 0.011 is four standard errors of a chance near 0.8 with 20,000 trials.
    expect(Math.abs(often(8) - chanceOfWidth(8, aim))).toBeLessThan(0.011);
    expect(Math.abs(often(7) - chanceOfWidth(7, aim))).toBeLessThan(0.014);
    expect(chanceOfWidth(8, aim)).toBeGreaterThan(0.8);
    expect(chanceOfWidth(7, aim)).toBeLessThan(0.7);
  });

  it("gives the smallest number: one fewer misses the width or the assurance", () => {
    fc.assert(
      fc.property(
        fraction(0.002, 0.08),
        fraction(0.004, 0.08),
        fraction(0.5, 0.95),
        (scatter, halfWidth, assurance) => {
          const aim = { scatter, halfWidth, level };
          const n = sampleSizeAssured(aim, assurance);
          fc.pre(n !== null);
          expect(chanceOfWidth(n, aim)).toBeGreaterThanOrEqual(assurance);
          if (n > 2) expect(chanceOfWidth(n - 1, aim)).toBeLessThan(assurance);
        },
      ),
    );
  });

  it("asks for more observations with more scatter, less width, a higher level or more assurance", () => {
    fc.assert(
      fc.property(fraction(0.005, 0.05), fraction(0.005, 0.05), (scatter, halfWidth) => {
        const n = (
          change: Partial<{ scatter: number; halfWidth: number; level: number }>,
          a = 0.8,
        ) => sampleSizeAssured({ scatter, halfWidth, level, ...change }, a) ?? Number.MAX_VALUE;
        expect(n({ scatter: scatter * 1.3 })).toBeGreaterThanOrEqual(n({}));
        expect(n({ halfWidth: halfWidth / 1.3 })).toBeGreaterThanOrEqual(n({}));
        expect(n({ level: 0.99 })).toBeGreaterThanOrEqual(n({}));
        expect(n({}, 0.9)).toBeGreaterThanOrEqual(n({}));
      }),
    );
  });

  it("stops at ten thousand observations instead of naming a sample nobody takes", () => {
    expect(sampleSizeByT({ scatter: 1, halfWidth: 1e-4, level })).toBeNull();
    expect(sampleSizeAssured({ scatter: 1, halfWidth: 1e-4, level }, 0.8)).toBeNull();
    expect(sampleSizePooled({ scatter: 1, halfWidth: 1e-4, level }, 10)).toBeNull();
  });
});

describe("sample size with a scatter from elsewhere", () => {
  it("is the normal formula when the scatter is known", () => {
    for (const [scatter, halfWidth, z] of table)
      expect(sampleSizePooled({ scatter, halfWidth, level }, Number.POSITIVE_INFINITY)).toBe(z);
  });

  it("keeps t·√(s²/n + c²) within the width, and one fewer does not", () => {
    fc.assert(
      fc.property(
        fraction(0.002, 0.05),
        fraction(0.01, 0.05),
        fc.integer({ min: 2, max: 40 }),
        fraction(0, 0.004),
        (scatter, halfWidth, df, common) => {
          const n = sampleSizePooled({ scatter, halfWidth, level }, df, common);
          const width = (m: number) =>
            studentTQuantile(0.975, df) * Math.sqrt(scatter ** 2 / m + common ** 2);
          if (n === null)
            expect(studentTQuantile(0.975, df) * common).toBeGreaterThanOrEqual(halfWidth);
          else {
            expect(width(n)).toBeLessThanOrEqual(halfWidth * (1 + 1e-12));
            if (n > 1) expect(width(n - 1)).toBeGreaterThan(halfWidth);
          }
        },
      ),
    );
  });

  it("has no answer when the common error alone is too wide", () => {
    expect(sampleSizePooled({ scatter: 0.01, halfWidth: 0.01, level }, 10, 0.005)).toBeNull();
  });
});

describe("what is not an aim", () => {
  it.each([
    { scatter: 0, halfWidth: 0.02, level },
    { scatter: 0.02, halfWidth: -1, level },
    { scatter: 0.02, halfWidth: 0.02, level: 1 },
    { scatter: Number.NaN, halfWidth: 0.02, level },
  ])("is refused: %o", (aim) => {
    for (const ask of [
      () => sampleSizeByNormal(aim),
      () => sampleSizeByT(aim),
      () => sampleSizeAssured(aim, 0.8),
      () => sampleSizePooled(aim, 5),
      () => chanceOfWidth(5, aim),
    ])
      expect(ask).toThrow(NumericalError);
  });
});
