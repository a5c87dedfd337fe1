import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import {
  effectiveDivision,
  estimateFill,
  estimateFromSums,
  turnsDiffer,
} from "../../src/model/fill-estimate.ts";
import { fillTotals, summedMeters } from "../../src/model/fill-record.ts";
import { nothingLent } from "../../src/model/lent-scatter.ts";
import { newestFill } from "../../src/model/meters.ts";
import { estimateOf, fitModel, type ModelOptions } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const options: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };

function newest(catches: readonly Catch[], given: Partial<ModelOptions> = {}) {
  const meter = present(fitModel(catches, { ...options, ...given }).meters[0]);
  return { meter, fill: newestFill(meter) };
}

function estimated(catches: readonly Catch[], given: Partial<ModelOptions> = {}) {
  const { meter, fill } = newest(catches, given);
  return { fill, ...estimateOf(meter, fill, { ...options, ...given }) };
}

const masses = [6.02, 5.91, 6.1];
const fillOf = (some: readonly number[]) => aFill(some.map((mass) => [20, mass] as const));

describe("a fill's delivery with its uncertainty", () => {
  // Catches of one bin of a morning by themselves, weighed in steps of 20 g: test/reference/generate/one-morning.R.
  it.each([
    [3, 0.02, 0.03951936341],
    [3, null, 0.03942955649],
    [2, 0.02, 0.1184409092],
  ])("of %i catches, division %s: ± %s", (catches, scaleDivisionKg, half) => {
    const { halfWidth, estimate } = estimated(fillOf(masses.slice(0, catches)), {
      scaleDivisionKg,
    });
    expect(digits(present(halfWidth), half)).toBeGreaterThan(9);
    const { lower, upper } = present(estimate.interval);
    expect(present(upper) / estimate.value - 1).toBeCloseTo(half, 10);
    expect(1 - present(lower) / estimate.value).toBeCloseTo(half, 10);
  });

  it("takes the HC3 error where turns differ much and it is the larger, as R's residuals have it", async () => {
    const [turns, net] = [
      [10, 40, 40, 10],
      [3.3, 12, 12.5, 2.9],
    ];
    const [half] = await evalR(
      `w <- 1 / t; f <- lm(m ~ t - 1, weights = w); e <- resid(f); h <- hatvalues(f)
       hc3 <- sum((w * t * e / (1 - h))^2) / sum(w * t^2)^2
       model <- summary(f)$coefficients[2]^2
       d2 <- (0.02 * length(t) / sum(t))^2 / 6
       sqrt(qt(0.975, 3)^2 * max(hc3, model) + qnorm(0.975)^2 * d2) / coef(f)`,
      { t: turns ?? [], m: net ?? [] },
    );
    const { halfWidth } = estimated(
      aFill((turns ?? []).map((one, i) => [one, net?.[i] ?? 0] as const)),
    );
    expect(digits(present(halfWidth), present(half))).toBeGreaterThan(9);
  });

  it("has a half-width only where it has an interval", () => {
    for (const [catches, given] of [
      [fillOf([6]), {}],
      [fillOf([6, 6, 6]), { scaleDivisionKg: null }],
    ] as const) {
      const { halfWidth, estimate } = estimated(catches, given);
      expect(halfWidth).toBeNull();
      expect(estimate.interval).toBeNull();
    }
  });

  it("is not widened by a catch that lies exactly on its mean", () => {
    const mass = fc.double({ min: 5.5, max: 6.5, noNaN: true });
    const division = fc.constantFrom(null, 0.01, 0.1);
    fc.assert(
      fc.property(
        fc.array(mass, { minLength: 2, maxLength: 6 }),
        division,
        (some, scaleDivisionKg) => {
          const mean = some.reduce((sum, one) => sum + one, 0) / some.length;
          fc.pre(some.some((one) => Math.abs(one - mean) > 1e-6));
          const width = (catches: readonly number[]) => {
            const { meter, fill } = newest(fillOf(catches), { scaleDivisionKg });
            return present(
              estimateFill(fill, meter.scatter, { ...options, scaleDivisionKg }).halfWidth,
            );
          };
          expect(width([...some, mean])).toBeLessThan(width(some));
        },
      ),
    );
  });

  it("has of several scales the division that reads as they do together", () => {
    const own = fillOf(masses).map((row, i) => ({
      ...row,
      divisionKg: [0.01, 0.05, 0.03][i] ?? 0,
    }));
    const { fill, variance } = estimated(own);
    expect(effectiveDivision(fill, variance)).toBeCloseTo((0.01 + 0.05 + 0.03) / 3, 12);
    const plain = estimated(fillOf(masses));
    expect(effectiveDivision(plain.fill, plain.variance)).toBeCloseTo(0.02, 12);
    const unknown = estimated(fillOf(masses), { scaleDivisionKg: null });
    expect(effectiveDivision(unknown.fill, unknown.variance)).toBeNull();
  });
});

describe("turns that differ", () => {
  const uneven = (longest: number) =>
    aFill([
      [20, 6.1],
      [longest, longest * 0.3],
      [20, 5.8],
      [20, 6.05],
    ]);

  it("matter beyond one and a half times the shortest, and not at it", () => {
    expect(turnsDiffer({ catches: uneven(30) })).toBe(false);
    expect(turnsDiffer({ catches: uneven(30.1) })).toBe(true);
    expect(estimated(uneven(30)).variance.robust).toBeNull();
    expect(estimated(uneven(30.1)).variance.robust).not.toBeNull();
  });

  it("leave a fill known by its sums alone without an answer where its own scatter would speak", () => {
    const ofSums = (longest: number) =>
      estimateFromSums(
        present(present(summedMeters(fillTotals(uneven(longest)))[0]).fills[0]),
        nothingLent,
        { level: 0.95, scaleDivisionKg: 0.02 },
      );
    expect(ofSums(30.1)).toBeNull();
    const whole = estimated(uneven(30));
    const found = present(ofSums(30));
    expect(found.estimate.value).toBeCloseTo(whole.estimate.value, 12);
    expect(found.halfWidth).toBeCloseTo(present(whole.halfWidth), 10);
    expect(present(found.estimate.interval).lower).toBeCloseTo(
      present(present(whole.estimate.interval).lower),
      10,
    );
    expect(found.variance.model).toBeCloseTo(present(whole.variance.model), 12);
    expect(found.variance.division).toBeCloseTo(present(whole.variance.division), 12);
    expect(found.variance.total).toBeCloseTo(present(whole.variance.total), 12);
  });
});

it("knows nothing of the reading where one catch names no division and the setup neither", () => {
  const rows = fillOf(masses).map((row, i) => (i === 1 ? row : { ...row, divisionKg: 0.01 }));
  expect(estimated(rows, { scaleDivisionKg: null }).variance.division).toBeNull();
  const known = estimated(rows, { scaleDivisionKg: 0.05 });
  expect(effectiveDivision(known.fill, known.variance)).toBeCloseTo(0.07 / 3, 12);
});

it("trusts the law of scatter that it is told, and then nobody else's scatter", () => {
  const other = aFill(
    [
      [20, 7],
      [20, 7.1],
      [20, 6.8],
    ],
    { bin: "2" },
  );
  const { meter, fill } = newest([...fillOf(masses), ...other]);
  const of = (varianceLaw: "proportional" | "constant") =>
    estimateFill(fill, meter.scatter, { level: 0.95, scaleDivisionKg: null, varianceLaw });
  expect(of("proportional").scatter.source).toBe("lent");
  expect(of("constant").scatter).toMatchObject({ source: "own", df: 2 });
});
