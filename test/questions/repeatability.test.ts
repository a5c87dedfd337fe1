import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { fitModel, type ModelOptions } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { type Repeatability, repeatability } from "../../src/questions/repeatability.ts";
import { defaults } from "../../src/results/defaults.ts";
import { aCatch } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

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

  it("compares a fill with the others of its meter, before and after it", () => {
    const meter = present(fitModel(log([usual, usual, wild]), options).meters[0]);
    const newest = repeatability(meter, options);
    expect(newest.practice).toBe("more than usual");
    expect(present(newest.usual).lentBy).toEqual({ fills: 2, meters: 0, assumed: false });
    const second = repeatability(meter, options, present(meter.fills[1]));
    expect(second.practice).toBe("as usual");
    expect(second.input.earlierFills).toBe(1);
    expect(present(second.usual).lentBy).toEqual({ fills: 2, meters: 0, assumed: false });
  });

  it("compares a first fill with what the other bins tell", () => {
    const others = ["2", "3"].flatMap((bin) => log([usual]).map((row) => ({ ...row, bin })));
    const first = of([...log([usual.map((error) => 15 * error)]), ...others]);
    expect(first.practice).toBe("more than usual");
    expect(present(first.usual).lentBy).toEqual({ fills: 0, meters: 2, assumed: false });
    const alike = of([...log([usual]), ...others]);
    expect(alike.practice).toBe("as usual");
    expect(alike.cautions).toEqual([]);
  });

  it("warns of unusual scatter, and not of unusual calm, by the F law as R has it", async () => {
    const threefold = usual.map((error) => 3 * error);
    const some = of(log([usual, usual, usual, threefold]));
    expect(some.cautions.map(({ code }) => code)).toEqual(["scatter-unusual"]);
    const more = of(log([usual, usual, usual, wild]));
    expect(more.cautions.map(({ code, asks }) => [code, asks])).toEqual([
      ["scatter-beyond-usual", "look-first"],
    ]);
    const [nu, someTail, moreTail, lessTail, middle] = await evalR(
      `${votesInR}
       vote <- vote.of.own.fills(s2, 9, 3)
       prior <- prior.of(vote)
       up <- function(times) pf(times^2 * s2 / prior[2], 3, prior[1], lower.tail = FALSE)
       c(prior[1], up(3), up(5), 1 - up(1 / 40), sqrt(exp(vote[1]) / s2))`,
      { s2: usual.reduce((sum, error) => sum + error ** 2, 0) / 3 },
    );
    const comparison = present(more.comparison);
    expect(digits(comparison.dfUsual, present(nu))).toBeGreaterThan(10);
    expect(comparison.dfToday).toBe(3);
    expect(digits(comparison.upperTail, present(moreTail))).toBeGreaterThan(8);
    expect(comparison.pValue).toBeCloseTo(2 * present(moreTail), 10);
    // Five times the standard deviation of the others, over the middle of what they leave likely.
    expect(comparison.ratio).toBeCloseTo(5 / present(middle), 9);
    expect(present(some.comparison).upperTail).toBeCloseTo(present(someTail), 9);
    expect(present(someTail)).toBeGreaterThan(0.002);
    expect(present(moreTail)).toBeLessThan(0.002);
    const less = of(log([usual, usual, usual, calm]));
    expect(present(less.comparison).pValue).toBeCloseTo(2 * present(lessTail), 9);
    expect(less.practice).toBe("less than usual");
    expect(less.cautions).toEqual([]);
  });

  it("asks for one more where three catches disagree short of what is beyond doubt", () => {
    const three = (times: number) =>
      of(log([usual, usual, usual, [0.01, -0.01, 0].map((error) => times * error)]));
    const stages = [1, 2.5, 12].map((times) => three(times).cautions.map(({ code }) => code));
    // Beyond doubt there is no interval, and the delivery says so.
    expect(stages).toEqual([[], ["few-scatter-apart"], []]);
    // R, as above, of F(2, 5.25).
    expect(present(three(2.5).comparison).upperTail).toBeCloseTo(0.0209434471842, 9);
    expect(present(three(12).comparison).upperTail).toBeCloseTo(0.0000105839186578, 9);
  });

  it("cannot compare one catch, exact agreement, or a first fill", () => {
    for (const fills of [[usual, [0.01]], [usual, [0.01, 0.01, 0.01]], [usual]]) {
      const result = of(log(fills));
      expect(result.comparison).toBeNull();
      expect(result.practice).toBe("cannot be told");
      expect(result.cautions.map(({ code }) => code)).toEqual(["no-scatter-to-compare"]);
    }
  });

  it("is false as often as it says where fills are as unlike as is declared, less where they are alike", () => {
    const found = (unlike: number, fills: number) => {
      const random = randomStream(21);
      const draws = (n: number) => {
        const ofFill = 0.015 * Math.exp(unlike * random.normal());
        return Array.from({ length: n }, () => ofFill * random.normal());
      };
      let count = 0;
      for (let i = 0; i < fills; i++) {
        const { comparison } = of(log([draws(3), draws(4), draws(4)]));
        if (present(comparison).pValue <= 0.05) count++;
      }
      return count / fills;
    };
    // 2,000 fills, three standard errors are 0.0146.
    expect(Math.abs(found(defaults.betweenFills, 2000) - 0.05)).toBeLessThan(0.0146);
    expect(found(0, 800)).toBeLessThan(0.05);
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
