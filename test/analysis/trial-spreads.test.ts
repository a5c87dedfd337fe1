import { describe, expect, it } from "vitest";
import { spreadsForTrial } from "../../src/analysis/trial-spreads.ts";
import type { Catch } from "../../src/data/types.ts";
import { fitModel } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { trialCatches } from "../support/trials.ts";
import { evalR } from "../support/webr.ts";

const model = (catches: readonly Catch[]) => fitModel(catches, {}, { asked: "never" });

/** Two products over many fills, the fills of one block alike. */
function simulated(fills: number, spread: number, scatter: number, blockSpread = 0) {
  const random = randomStream(4);
  return Array.from({ length: fills }, (_, block) => {
    const shared = 1 + blockSpread * random.normal();
    return ["wheat", "pea"].flatMap((product, i) => {
      const delivery = (0.4 - 0.05 * i) * shared * (1 + spread * random.normal());
      const net = () => 20 * delivery * (1 + scatter * random.normal());
      return aFill(
        [
          [20, net()],
          [20, net()],
          [20, net()],
        ],
        { product, fill: 2 * block + i + 1, extra: { block: String(block + 1) } },
      );
    });
  }).flat();
}

describe("spreads of a log for a plan", () => {
  it("are those that the log was made with", () => {
    const found = spreadsForTrial(
      model(simulated(150, 0.02, 0.015)),
      ["wheat", "pea"],
      null,
      "a.csv",
    );
    expect(present(found.fillSpread).value).toBeCloseTo(0.02, 2.6);
    expect(present(found.catchScatter)).toMatchObject({ turns: 20 });
    expect(present(found.catchScatter).relative).toBeCloseTo(0.015, 2.9);
    expect(found).toMatchObject({
      source: "a.csv",
      speaking: "planned products",
      products: 2,
      fills: 300,
      untold: null,
    });
  });

  it("are what aov leaves beside products and blocks, without what catch scatter adds", async () => {
    const fitted = model(trialCatches());
    const found = spreadsForTrial(fitted, [], "block", "a.csv");
    const y = fitted.meters.flatMap(({ fills }) => fills.map(({ delivery }) => Math.log(delivery)));
    const [variance, df] = await evalR(
      `r <- aov(y ~ factor(rep(1:5, 4)) + factor(rep(1:4, each = 5))); c(deviance(r) / df.residual(r), df.residual(r))`,
      { y },
    );
    // Two catches of 20 turns 0.8 % apart in every fill: s_w² of a turn is 20·2·0.004², and 40 turns are caught.
    const ofCatches = (20 * 2 * 0.004 ** 2) / 40;
    const { value, df: own } = present(found.fillSpread);
    expect(digits(value, Math.sqrt(present(variance) - ofCatches))).toBeGreaterThanOrEqual(10);
    expect(own).toBe(df);
    expect(found.withinBlocks).toBe(true);
  });

  it("take catch scatter out of fills that told the spread, and of no other fill", () => {
    const deliveries = [0.4, 0.41, 0.395, 0.405];
    const wheat = deliveries.flatMap((delivery, i) =>
      aFill(
        [
          [20, 20 * delivery * 1.004],
          [20, 20 * delivery * 0.996],
        ],
        { product: "wheat", fill: i + 1 },
      ),
    );
    // Of one fill, a quarter as long; s_w² of a turn is 20·2·0.004² = 5·2·0.008² in both products.
    const pea = aFill(
      [
        [5, 5 * 0.3 * 1.008],
        [5, 5 * 0.3 * 0.992],
      ],
      { product: "pea", fill: 5 },
    );
    const found = spreadsForTrial(model([...wheat, ...pea]), [], null, "a.csv");
    // About their mean of 0.4025 the fills of wheat have squares of 0.000125 on 3 df; 40 turns are caught in each.
    const variance = 0.000125 / 3 / 0.4025 ** 2 - (20 * 2 * 0.004 ** 2) / 40;
    expect(digits(present(found.fillSpread).value, Math.sqrt(variance))).toBeGreaterThan(10);
    expect(found).toMatchObject({ products: 2, fills: 5, fillSpread: { df: 3 } });
  });

  it("leave out of a log in blocks what blocks share", () => {
    const log = model(simulated(150, 0.01, 0.01, 0.04));
    const inBlocks = spreadsForTrial(log, ["wheat", "pea"], "block", "a.csv");
    expect(present(inBlocks.fillSpread).value).toBeCloseTo(0.01, 2.6);
    const without = spreadsForTrial(log, ["wheat", "pea"], null, "a.csv");
    expect(present(without.fillSpread).value).toBeGreaterThan(0.035);
  });

  it("come from products of the plan, and from every product where none of them is in the log", () => {
    const log = model(trialCatches());
    expect(spreadsForTrial(log, ["pea", "oats"], null, "a.csv")).toMatchObject({
      speaking: "planned products",
      products: 1,
      fills: 5,
    });
    expect(spreadsForTrial(log, ["oats", "maize"], null, "a.csv")).toMatchObject({
      speaking: "every product",
      products: 4,
      fills: 20,
    });
  });

  it("are not told where fills differ by no more than catches scatter, or there is one fill", () => {
    const level = trialCatches().map((row, i) => ({
      ...row,
      netKg: 8 * (1 + (i % 2 === 0 ? 0.02 : -0.02) + 0.0001 * (i % 7)),
    }));
    const within = spreadsForTrial(model(level), [], null, "a.csv");
    expect([within.fillSpread, within.untold]).toEqual([null, "within catch scatter"]);
    const single = trialCatches().filter(({ fill }) => fill <= 4);
    const few = spreadsForTrial(model(single), [], null, "a.csv");
    expect([few.fillSpread, few.untold]).toEqual([null, "too few fills"]);
    expect(few.catchScatter).not.toBeNull();
  });
});
