import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { fitModel, type ModelOptions } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { type Repeatability, repeatability } from "../../src/questions/repeatability.ts";
import { aCatch } from "../support/catches.ts";
import { present } from "../support/reference.ts";

const options: ModelOptions = { level: 0.95, tolerance: 0.02, scaleDivisionKg: 0.02 };

/** Catches of 20 turns at 0.4 kg/turn with these relative errors, one list a fill. */
function log(fills: readonly (readonly number[])[], turns = 20): Catch[] {
  return fills.flatMap((errors, f) =>
    errors.map((error, c) =>
      aCatch({ fill: f + 1, catch: c + 1, turns, netKg: 0.4 * turns * (1 + error) }),
    ),
  );
}

function of(catches: readonly Catch[], given: Partial<ModelOptions> = {}): Repeatability {
  const resolved = { ...options, ...given };
  return repeatability(present(fitModel(catches, resolved).meters[0]), resolved);
}

const usual = [0.01, -0.01, 0.004, -0.004];
const wild = usual.map((error) => 5 * error);
const calm = usual.map((error) => error / 40);

describe("repeatability", () => {
  it("gives the scatter of a typical catch relative to its mass", () => {
    const { today, input } = of(log([usual]));
    const sumOfSquares = usual.reduce((sum, error) => sum + error ** 2, 0);
    expect(input).toEqual({ catches: 4, turns: 20, earlierFills: 0 });
    expect(present(today).relative.value).toBeCloseTo(Math.sqrt(sumOfSquares / 3), 12);
  });

  it("compares today with the fills before it, never with those after", () => {
    const catches = log([usual, usual, wild]);
    const model = fitModel(catches, options);
    const meter = present(model.meters[0]);
    expect(repeatability(meter, options).practice).toBe("more than usual");
    const second = repeatability(meter, options, present(meter.fills[1]));
    expect(second.practice).toBe("as usual");
    expect(present(second.earlier).df).toBe(3);
  });

  it("warns of unusual scatter, and not of unusual calm", () => {
    const more = of(log([usual, usual, usual, wild]));
    expect(more.cautions.map(({ code }) => code)).toEqual(["scatter-unusual"]);
    expect(present(more.comparison).ratio.value).toBeCloseTo(5, 10);
    expect(present(more.comparison).dfEarlier).toBe(9);
    const less = of(log([usual, usual, usual, calm]));
    expect(less.practice).toBe("less than usual");
    expect(less.cautions).toEqual([]);
  });

  it("cannot compare one catch, exact agreement, or a first fill", () => {
    for (const fills of [[usual, [0.01]], [usual, [0.01, 0.01, 0.01]], [usual]]) {
      const result = of(log(fills));
      expect(result.comparison).toBeNull();
      expect(result.practice).toBe("cannot be told");
      expect(result.cautions.map(({ code }) => code)).toEqual(["no-scatter-to-compare"]);
    }
  });

  it("is false as often as it says: 2,000 fills, three standard errors are 0.0146", () => {
    const random = randomStream(21);
    const draws = (n: number) => Array.from({ length: n }, () => 0.015 * random.normal());
    let found = 0;
    for (let i = 0; i < 2000; i++) {
      const { comparison } = of(log([draws(3), draws(4), draws(4)]));
      if (present(comparison).pValue <= 0.05) found++;
    }
    expect(Math.abs(found / 2000 - 0.05)).toBeLessThan(0.0146);
  });

  it("states how far two good catches may differ", () => {
    const { twoCatchesWithin, today } = of(log([usual]));
    // t(0.975, 3) = 3.182446, as printed in any table.
    const limit = 3.182446 * Math.SQRT2 * present(today).relative.value;
    expect(twoCatchesWithin).toBeCloseTo(limit, 7);
  });
});

describe("what would help most", () => {
  it("is nothing when the fill is known within the tolerance", () => {
    const result = of(log([usual]), { tolerance: 0.03 });
    expect(result).toMatchObject({ advice: "good enough", reason: "within tolerance" });
  });

  it("is another catch when one stands alone", () => {
    expect(of(log([[0]]))).toMatchObject({ advice: "catch more", reason: "scatter unknown" });
  });

  it("is a few more catches where the meter's own scatter rules", () => {
    const result = of(log([usual, [0.012, -0.012]]), { tolerance: 0.0125 });
    expect(result.advice).toBe("catch more");
    expect(result.reason).toBe("a few more catches are enough");
    expect(present(result.remedies.catches)).toBeGreaterThan(2);
  });

  it("is a longer catch where the scale rules and three times the turns cure it", () => {
    const coarse = of(log([calm, calm]), { scaleDivisionKg: 0.25, tolerance: 0.02 });
    expect(coarse.scale.shareOfFill).toBeGreaterThan(0.5);
    expect(coarse).toMatchObject({ advice: "catch longer" });
    expect(present(coarse.remedies.turnsPerCatch)).toBeLessThanOrEqual(60);
    expect(coarse.remedies.catches).toBeNull();
  });

  it("is a finer scale where even that is not enough", () => {
    const coarse = of(log([calm, calm]), { scaleDivisionKg: 1, tolerance: 0.005 });
    expect(coarse).toMatchObject({ advice: "weigh better", reason: "reading the scale dominates" });
    expect(present(coarse.remedies.divisionKg)).toBeLessThan(1);
  });

  it("is whatever needs fewer turns where the tolerance is far off", () => {
    const { advice, remedies, input } = of(log([usual, usual, usual]), { tolerance: 0.003 });
    const more = (remedies.catches ?? Number.POSITIVE_INFINITY) * input.turns;
    const longer = input.catches * present(remedies.turnsPerCatch);
    expect(advice).toBe(more < longer ? "catch more" : "catch longer");
  });

  it("is kept by its own remedies: with as many catches, or turns, the fill is known within the tolerance", () => {
    const before = of(log([usual, usual]), { tolerance: 0.006 });
    const catches = present(before.remedies.catches);
    const more = Array.from({ length: catches }, (_, i) => usual[i % 4] ?? 0);
    const after = of(log([usual, more]), { tolerance: 0.006 });
    expect(present(before.halfWidth)).toBeGreaterThan(0.006);
    expect(present(after.halfWidth)).toBeLessThan(0.0075);

    const turns = present(before.remedies.turnsPerCatch);
    // The same scatter per turn in longer catches: relative errors shrink with the root of the turns.
    const calmer = usual.map((error) => error * Math.sqrt(20 / turns));
    const longer = of(log([calmer, calmer], turns), { tolerance: 0.006 });
    expect(present(longer.halfWidth)).toBeLessThan(0.006 * 1.001);
    expect(present(longer.halfWidth)).toBeGreaterThan(0.006 * 0.97);
  });

  it("is plain data without gaps in its numbers, whatever the catches", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 1, maxLength: 5 }), {
          minLength: 1,
          maxLength: 5,
        }),
        fc.constantFrom(null, 0.001, 0.02, 1),
        (fills, scaleDivisionKg) => {
          const result = of(log(fills.map((errors) => errors.map((error) => error / 1000))), {
            scaleDivisionKg,
          });
          expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        },
      ),
    );
  });
});
