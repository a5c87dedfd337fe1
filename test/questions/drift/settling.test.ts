import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { metersOf } from "../../../src/model/meters.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { settlingTests } from "../../../src/questions/drift/settling.ts";
import { aCatch } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

interface Plan {
  readonly fills: number;
  readonly turns: readonly number[];
  /** Relative change of the delivery from one catch to the next. */
  readonly perCatch: number;
}

function settlingCatches({ fills, turns, perCatch }: Plan, random: RandomStream): Catch[] {
  return Array.from({ length: fills }, (_, f) => {
    const delivery = 0.3 * (1 + 0.02 * random.normal());
    return turns.map((t, c) =>
      aCatch({
        fill: f + 1,
        catch: c + 1,
        turns: t,
        netKg:
          delivery * t * (1 + perCatch * c) + 0.3 * 0.015 * Math.sqrt(20 * t) * random.normal(),
      }),
    );
  }).flat();
}

function testsOf(catches: readonly Catch[]) {
  return settlingTests(present(metersOf(catches)[0]).fills, 0.95);
}

describe("settlingTests", () => {
  it("finds a delivery that falls from catch to catch, over several fills", () => {
    const catches = settlingCatches(
      { fills: 5, turns: [20, 20, 30, 15, 20], perCatch: -0.02 },
      randomStream(2),
    );
    const [test] = testsOf(catches);
    expect(test).toMatchObject({ scope: "within fills", against: "catch order", df: 19 });
    const slope = present(present(test).perCatch);
    expect(present(test).pValue).toBeLessThan(0.001);
    expect(present(slope.interval).lower).toBeLessThan(-0.02);
    expect(present(slope.interval).upper).toBeGreaterThan(-0.02);
  });

  it("needs five catches of a lone fill", () => {
    const lone = (turns: readonly number[]) =>
      testsOf(settlingCatches({ fills: 1, turns, perCatch: 0 }, randomStream(3)));
    expect(lone([20, 20, 20, 20])).toEqual([]);
    expect(lone([20, 20, 20, 20, 20])).toHaveLength(1);
    expect(lone([20, 20, 20, 20, 20])[0]).toMatchObject({ scope: "this fill", df: 3 });
  });

  it("does not take differences between fills for settling", () => {
    const far = [0.3, 0.4, 0.5].flatMap((delivery, f) =>
      [0.01, -0.02, 0.01].map((error, c) =>
        aCatch({ fill: f + 1, catch: c + 1, turns: 20, netKg: 20 * delivery * (1 + error) }),
      ),
    );
    expect(present(testsOf(far)[0]).pValue).toBeGreaterThan(0.5);
  });

  it("asks about the bin level where it is recorded, within fills and from fill to fill", () => {
    const random = randomStream(6);
    const catches = [90, 70, 50, 30, 20, 80].flatMap((full, f) =>
      [0, 1, 2].map((c) => {
        const level = full - 5 * c;
        const delivery = 0.3 * (1 + 0.1 * (level / 100 - 0.5)) * (1 + 0.002 * random.normal());
        return aCatch({
          fill: f + 1,
          catch: c + 1,
          turns: 20,
          netKg: 20 * delivery,
          binLevelPercent: level,
        });
      }),
    );
    const tests = testsOf(catches);
    expect(tests.map(({ scope, against }) => `${scope}, ${against}`)).toEqual([
      "within fills, catch order",
      "within fills, bin level",
      "between fills, bin level",
    ]);
    const between = present(present(tests[2]).emptyToFull);
    // Mean bin level of the fills 51.7 %, so planted is 0.1/1.0017. A fill of three catches is known to 0.002/√3, and Σ(x − x̄)²
    // of the levels is 0.413: the standard error is 0.0018, three of them 0.0054.
    expect(Math.abs(between.value - 0.0998)).toBeLessThan(0.0054);
    expect(present(tests[2]).adjustedPValue).toBeLessThan(0.01);
    expect(present(tests[2]).points).toBe(6);
  });

  // 4,000 meters: three standard errors of a rate of 0.05 are 0.0103. Turns are unequal on purpose, and rising with the
  // order, which is where a test on residuals about the fill's delivery goes wrong.
  it("is false as often as it says, for one fill and for several, with unequal turns", () => {
    const meters = 4000;
    for (const plan of [
      { fills: 1, turns: [10, 20, 30, 40, 50], perCatch: 0 },
      { fills: 4, turns: [15, 20, 40], perCatch: 0 },
    ]) {
      const random = randomStream(12, plan.fills);
      let found = 0;
      for (let i = 0; i < meters; i++)
        if (present(testsOf(settlingCatches(plan, random))[0]).pValue <= 0.05) found++;
      expect(Math.abs(found / meters - 0.05)).toBeLessThan(0.0103);
    }
  });
});
