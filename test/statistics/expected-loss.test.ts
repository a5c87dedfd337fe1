import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { randomStream } from "../../src/numeric/random.ts";
import {
  chanceBeyond,
  type ErrorLaw,
  errorDensity,
  expectedAbsolute,
  expectedSquare,
  lawAtScaleLimit,
  meanAbsoluteT,
} from "../../src/statistics/expected-loss.ts";
import { expectedExcess, expectedShortfall } from "../support/expected-sides.ts";
import { integratePanels } from "../support/quadrature.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const laws: readonly ErrorLaw[] = [
  { location: 0, scale: 0.02, df: 3 },
  { location: 0.03, scale: 0.02, df: 3 },
  { location: -0.05, scale: 0.01, df: 4.5 },
  { location: 0.012, scale: 0.04, df: 8 },
  { location: 0.012, scale: 0.04, df: Number.POSITIVE_INFINITY },
];

/** ∫ g(e) f(e) de from `from` upwards, by x = from + scale·(e^y − 1): panels that keep up with a heavy tail. */
function integralAbove(law: ErrorLaw, from: number, g: (e: number) => number): number {
  const edges = Array.from({ length: 61 }, (_, i) => i / 2);
  const at = (y: number) => from + law.scale * Math.expm1(y);
  const lastEdge = law.df === Number.POSITIVE_INFINITY ? 10 : 60;
  return integratePanels(
    (y) => g(at(y)) * errorDensity(law, at(y)) * law.scale * Math.exp(y),
    edges.filter((edge) => edge <= lastEdge),
    20,
  );
}

const mirrored = (law: ErrorLaw): ErrorLaw => ({ ...law, location: -law.location });

describe("closed forms against numerical integration of the density", () => {
  it.each(laws)("%o", (law) => {
    const excess = integralAbove(law, 0, (e) => e);
    const shortfall = integralAbove(mirrored(law), 0, (e) => e);
    expect(digits(present(expectedExcess(law)), excess)).toBeGreaterThan(9);
    expect(digits(present(expectedShortfall(law)), shortfall)).toBeGreaterThan(9);
    expect(digits(present(expectedAbsolute(law)), excess + shortfall)).toBeGreaterThan(9);
    const square =
      integralAbove(law, 0, (e) => e * e) + integralAbove(mirrored(law), 0, (e) => e * e);
    expect(digits(present(expectedSquare(law)), square)).toBeGreaterThan(8);
    for (const limit of [0, 0.02, 0.05, 0.1]) {
      const { above, below, either } = chanceBeyond(law, limit);
      expect(
        digits(
          above,
          integralAbove(law, limit, () => 1),
        ),
      ).toBeGreaterThan(9);
      expect(
        digits(
          below,
          integralAbove(mirrored(law), limit, () => 1),
        ),
      ).toBeGreaterThan(9);
      expect(either).toBeCloseTo(Math.min(1, above + below), 15);
    }
  });
});

describe("closed forms against Monte Carlo", () => {
  it.each(laws)("%o", (law) => {
    const stream = randomStream(31);
    const trials = 200_000;
    let [excess, shortfall, beyond] = [0, 0, 0];
    for (let i = 0; i < trials; i++) {
      const s =
        law.df === Number.POSITIVE_INFINITY ? 1 : Math.sqrt(stream.chiSquared(law.df) / law.df);
      const e = law.location + (law.scale * stream.normal()) / s;
      excess += Math.max(e, 0);
      shortfall += Math.max(-e, 0);
      if (Math.abs(e) > 0.05) beyond++;
    }
    expect(excess / trials).toBeCloseTo(present(expectedExcess(law)), 3);
    expect(shortfall / trials).toBeCloseTo(present(expectedShortfall(law)), 3);
    expect(Math.abs(beyond / trials - chanceBeyond(law, 0.05).either)).toBeLessThan(0.0045);
  });
});

describe("what has no mean is not given one", () => {
  it("one degree of freedom: no expected error; two: no expected square", () => {
    const law = { location: 0.01, scale: 0.02 };
    expect(expectedExcess({ ...law, df: 1 })).toBeNull();
    expect(expectedShortfall({ ...law, df: 1 })).toBeNull();
    expect(expectedAbsolute({ ...law, df: 1 })).toBeNull();
    expect(expectedSquare({ ...law, df: 2 })).toBeNull();
    expect(expectedExcess({ ...law, df: 1.01 })).toBeGreaterThan(0);
    expect(expectedSquare({ ...law, df: 2.01 })).toBeGreaterThan(0);
  });

  it("a scale of zero, or a df of none, is refused", () => {
    for (const law of [
      { location: 0, scale: 0, df: 3 },
      { location: 0, scale: 1, df: 0 },
      { location: Number.NaN, scale: 1, df: 3 },
    ])
      for (const ask of [expectedExcess, expectedAbsolute, expectedSquare])
        expect(() => ask(law)).toThrow(NumericalError);
  });
});

describe("the law with its scale at a confidence limit", () => {
  it("has the χ² limits of a standard deviation: factors 0.52 and 6.3 on 2 df, 0.69 and 1.8 on 9", async () => {
    const factor = (confidence: number, df: number) =>
      lawAtScaleLimit({ location: 0.01, scale: 1, df }, confidence).scale;
    const [low2, high2, low9, high9] = await evalR(
      "df <- c(2, 2, 9, 9); sqrt(df / qchisq(1 - c(0.025, 0.975), df))",
    );
    expect(factor(0.025, 2)).toBeCloseTo(present(low2), 10);
    expect(factor(0.975, 2)).toBeCloseTo(present(high2), 10);
    expect(factor(0.025, 9)).toBeCloseTo(present(low9), 10);
    expect(factor(0.975, 9)).toBeCloseTo(present(high9), 10);
    const law = lawAtScaleLimit({ location: 0.01, scale: 1, df: 9 }, 0.9);
    expect(law).toMatchObject({ location: 0.01, df: Number.POSITIVE_INFINITY });
    expect(lawAtScaleLimit(law, 0.9)).toEqual(law);
  });
});

describe("properties", () => {
  const law = fc.record({
    location: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
    scale: fc.double({ min: 1e-3, max: 0.2, noNaN: true }),
    df: fc.double({ min: 1.2, max: 200, noNaN: true }),
  });

  it("excess minus shortfall is the mean, whatever the distribution", () => {
    fc.assert(
      fc.property(law, (one) => {
        const gap = present(expectedExcess(one)) - present(expectedShortfall(one));
        expect(Math.abs(gap - one.location)).toBeLessThan(1e-12);
      }),
    );
  });

  it("chances do not grow with the limit; expectations do not fall with the scale", () => {
    fc.assert(
      fc.property(law, fc.double({ min: 0.001, max: 0.3, noNaN: true }), (one, limit) => {
        const wider = { ...one, scale: one.scale * 1.5 };
        expect(chanceBeyond(one, limit * 1.1).either).toBeLessThanOrEqual(
          chanceBeyond(one, limit).either + 1e-12,
        );
        expect(present(expectedAbsolute(wider))).toBeGreaterThanOrEqual(
          present(expectedAbsolute(one)) - 1e-12,
        );
      }),
    );
  });
});

describe("the mean absolute value of Student's t", () => {
  it("on two degrees of freedom is √2", () => {
    expect(meanAbsoluteT(2)).toBeCloseTo(Math.SQRT2, 14);
  });

  it("is R's integral of 2·x·dt(x, df), for degrees of freedom that are not whole too", async () => {
    for (const df of [1.2, 1.589712306, 2.5, 3, 3.589712306, 7, 10, 30, 400]) {
      // In x = e^y − 1: in x itself the tail of few degrees of freedom is too long to integrate.
      const [truth] = await evalR(
        `g <- function(y) 2 * expm1(y) * dt(expm1(y), df) * exp(y)
         sum(sapply(0:49, function(i) integrate(g, 4 * i, 4 * i + 4, rel.tol = 1e-12, abs.tol = 1e-14)$value))`,
        { df },
      );
      expect(digits(meanAbsoluteT(df), present(truth)), `${df}`).toBeGreaterThan(9);
    }
  });

  it("falls to √(2/π) of a known scale, and has no bound on one degree of freedom", () => {
    expect(meanAbsoluteT(Number.POSITIVE_INFINITY)).toBeCloseTo(Math.sqrt(2 / Math.PI), 14);
    expect(meanAbsoluteT(1e7)).toBeCloseTo(Math.sqrt(2 / Math.PI), 6);
    expect(meanAbsoluteT(1)).toBe(Number.POSITIVE_INFINITY);
    expect(meanAbsoluteT(0.4)).toBe(Number.POSITIVE_INFINITY);
    expect(meanAbsoluteT(1.0001)).toBeGreaterThan(1000);
  });
});
