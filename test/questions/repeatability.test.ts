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
    // F(3, 9) of a ratio of 3 is 9: one-sided p = 0.0045; of a ratio of 5 it is 25: 0.0001 (R 4.6, pf).
    const threefold = usual.map((error) => 3 * error);
    const some = of(log([usual, usual, usual, threefold]));
    expect(some.cautions.map(({ code }) => code)).toEqual(["scatter-unusual"]);
    const more = of(log([usual, usual, usual, wild]));
    expect(more.cautions.map(({ code, asks }) => [code, asks])).toEqual([
      ["scatter-beyond-usual", "look-first"],
    ]);
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

describe("what limits the fill", () => {
  it("is the scatter of catches where reading the scale makes up less than half of the variance", () => {
    const result = of(log([usual]));
    expect(result.limitedBy).toBe("scatter");
    // d²/6·(n/T)² against that and the scatter's s²/T, both over the delivery's square.
    const reading = (0.02 ** 2 / 6) * (4 / 80) ** 2;
    const sumOfSquares = usual.reduce((sum, error) => sum + (8 * error) ** 2 / 20, 0);
    expect(result.scale.shareOfFill).toBeCloseTo(reading / (reading + sumOfSquares / 3 / 80), 12);
  });

  it("is the scale where reading it makes up more, which more catches of the same turns leave so", () => {
    for (const catches of [calm, [...calm, ...calm]]) {
      const coarse = of(log([catches]), { scaleDivisionKg: 0.25 });
      expect(coarse.scale.shareOfFill).toBeGreaterThan(0.5);
      expect(coarse.limitedBy).toBe("scale");
    }
    const longer = of(log([usual], 200), { scaleDivisionKg: 0.25 });
    expect(longer.limitedBy).toBe("scatter");
  });

  it("turns over at half of the variance", () => {
    const shares = [0.02, 0.05, 0.1, 0.15, 0.2, 0.3].map((scaleDivisionKg) => {
      const { scale, limitedBy } = of(log([usual]), { scaleDivisionKg });
      expect(limitedBy).toBe(present(scale.shareOfFill) > 0.5 ? "scale" : "scatter");
      return present(scale.shareOfFill) > 0.5;
    });
    expect(shares[0]).toBe(false);
    expect(shares.at(-1)).toBe(true);
  });

  it("is not known of a lone catch, nor without a division", () => {
    expect(of(log([[0]])).limitedBy).toBeNull();
    expect(of(log([usual]), { scaleDivisionKg: null }).limitedBy).toBeNull();
    expect(of(log([usual, [0]])).limitedBy).toBe("scatter");
  });

  it("comes without advice: how many more catches is for another question to say", () => {
    const text = JSON.stringify(of(log([usual, usual])));
    expect(text).not.toMatch(/advice|remed|recommend/);
  });
});

describe("the answer", () => {
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
