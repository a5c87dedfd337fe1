import { mean, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { monteCarloCheck } from "../../src/statistics/monte-carlo-check.ts";
import { type Input, propagateUncertainty } from "../../src/statistics/propagation.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const normal = (name: string, value: number, standardUncertainty: number): Input => ({
  name,
  value,
  standardUncertainty,
  law: "normal",
  df: null,
});

describe("monteCarloCheck", () => {
  it("agrees with the linear budget of a nearly linear product, and with itself for one seed", async () => {
    const inputs: Input[] = [
      { ...normal("delivery", 0.3, 0.003), law: "t", df: 8 },
      { ...normal("width", 12, 0.05), law: "rectangular" },
      normal("speed", 8, 0.1),
    ];
    const rate = ([k = 0, w = 1, v = 1]: readonly number[]) => (600 * k * 50) / (w * v);
    const budget = propagateUncertainty(rate, inputs, 0.95);
    const draw = () => monteCarloCheck(rate, inputs, 0.95, 100_000, randomStream(5), 5);
    const check = draw();
    expect(check.mean / budget.value).toBeCloseTo(1, 3);
    // The scaled t has a variance df/(df − 2) times that of its standard uncertainty.
    const withT = Math.sqrt(
      budget.combined ** 2 + (present(budget.contributions[0]).contribution ** 2 * 2) / 6,
    );
    expect(Math.abs(check.standardDeviation / withT - 1)).toBeLessThan(0.01);
    const [deviation = 0, half = 0] = await evalR(
      `set.seed(1); n <- 1e6
       k <- 0.3 + 0.003 * rt(n, 8); w <- 12 + 0.05 * sqrt(3) * runif(n, -1, 1); v <- 8 + 0.1 * rnorm(n)
       rate <- 600 * k * 50 / (w * v)
       c(sd(rate), diff(quantile(rate, c(0.025, 0.975))) / 2)`,
    );
    // Of 100,000 draws the deviation errs by 0.25 %, the half-width by 0.4 %. The budget's is 4 % wider: Welch–Satterthwaite
    // gives the whole a t law, of which a part is.
    expect(Math.abs(check.standardDeviation / deviation - 1)).toBeLessThan(0.01);
    expect(Math.abs((check.upper - check.lower) / 2 / half - 1)).toBeLessThan(0.02);
    expect(Math.abs(budget.expanded / half - 1)).toBeLessThan(0.05);
    expect(draw()).toEqual(check);
  });

  it("knows how far chance may move its ends: √(p(1 − p)/n) over the density there", () => {
    // Normal draws: √(0.975·0.025/50,000)/0.058445 = 0.011946 standard deviations.
    const check = monteCarloCheck(
      ([x = 0]) => x,
      [normal("only", 0, 1)],
      0.95,
      50_000,
      randomStream(8),
      8,
    );
    expect(Math.abs(check.endError / 0.011946 - 1)).toBeLessThan(0.25);
    const ends = Array.from({ length: 60 }, (_, i) => {
      const one = monteCarloCheck(
        ([x = 0]) => x,
        [normal("only", 0, 1)],
        0.95,
        2000,
        randomStream(9, i),
        9,
      );
      return Math.abs(one.upper - 1.959964) <= 2 * one.endError;
    });
    expect(ends.filter(Boolean).length).toBeGreaterThanOrEqual(51);
  });

  it("draws no more than it takes to know the ends well enough, block by block as far as it is allowed", () => {
    const drawn = (most: number, enough?: number) =>
      monteCarloCheck(
        ([x = 0, y = 0]) => x * y,
        [normal("one", 3, 0.1), { ...normal("other", 2, 0.1), law: "t", df: 4 }],
        0.95,
        most,
        randomStream(6),
        6,
        enough,
      );
    const all = drawn(45_000);
    expect(all.draws).toBe(45_000);
    // Ends known to a block's error take a block; to two thirds of it more than two; to less than all have, all.
    const block = drawn(10_000);
    expect(drawn(45_000, block.endError)).toEqual(block);
    const further = drawn(45_000, 0.67 * block.endError);
    expect([20_000, 30_000]).toContain(further.draws);
    expect(further).toEqual(drawn(further.draws));
    expect(further.endError).toBeLessThanOrEqual(0.67 * block.endError);
    expect(drawn(45_000, 0.5 * all.endError)).toEqual(all);
  });

  it("draws a t whose uncertainty is known well from the normal law", () => {
    const drawn = (law: Input["law"]) =>
      monteCarloCheck(
        ([x = 0]) => x,
        [{ ...normal("only", 4, 0.5), law }],
        0.9,
        999,
        randomStream(3),
        3,
      );
    expect(drawn("t")).toEqual(drawn("normal"));
  });

  it("has the moments and the ordered draws of what it drew, and only values that a rectangle has", () => {
    const draws: number[] = [];
    const keep = ([x = 0]: readonly number[]) => {
      draws.push(x);
      return x;
    };
    const input: Input = { ...normal("only", 7, 0.2), law: "rectangular" };
    const found = monteCarloCheck(keep, [input], 0.8, 401, randomStream(4), 77);
    const sorted = draws.toSorted((a, b) => a - b);
    expect(sorted).toHaveLength(401);
    expect(found).toMatchObject({ draws: 401, seed: 77 });
    expect(found.mean).toBeCloseTo(mean(sorted), 12);
    expect(found.standardDeviation).toBeCloseTo(sampleStandardDeviation(sorted), 12);
    // A tenth and nine tenths of the way from the first of 401 to the last: the 41st and the 361st.
    expect([found.lower, found.upper]).toEqual([sorted[40], sorted[360]]);
    // √(401·0.1·0.9) is 6.007: six places to either side are two standard errors of a rank.
    const error = (place: number) => (present(sorted[place + 6]) - present(sorted[place - 6])) / 2;
    expect(found.endError).toBe(Math.max(error(40), error(360)));
    const reach = 0.2 * Math.sqrt(3);
    expect(sorted.every((x) => Math.abs(x - 7) <= reach)).toBe(true);
    expect(present(sorted[0])).toBeLessThan(7 - 0.97 * reach);
    expect(present(sorted[400])).toBeGreaterThan(7 + 0.97 * reach);
  });
});
