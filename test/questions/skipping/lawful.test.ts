import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { type LawfulAim, skippingOptions } from "../../../src/questions/skipping/options.ts";
import { skipping } from "../../../src/questions/skipping.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { evalR } from "../../support/webr.ts";

const model = { level: 0.95, tolerance: 0.05, scaleDivisionKg: 0.02 };
const fillsOf = (fills: number) =>
  inventedFills({ fills, catches: 3, spread: 0.025, scatter: 0.015 }, 11);
const book = { source: "book value", kgPerTurn: 0.3 } as const;
const aim: LawfulAim = { targetKgPerHa: 120, lowestKgPerHa: 110, highestKgPerHa: 135 };

function ask(lawful: LawfulAim | null, catches = fillsOf(7)) {
  const meter = present(fitModel(catches, model).meters[0]);
  return skipping(meter, skippingOptions(model, { lawful, assumed: book }));
}

describe("label or law where a fill is skipped", () => {
  it("is not spoken of where neither sets a rate", () => {
    expect(ask(null).lawful).toBeNull();
  });

  it("is broken with the chance of the next fill's rate error, as R has it (pt)", async () => {
    const { lawful, distribution, leastChance } = ask(aim);
    const { location, scale, df } = present(distribution);
    expect(leastChance).toBeNull();
    const [below, above] = await evalR(
      "c(pt((110/120 - 1 - m) / s, v), pt((135/120 - 1 - m) / s, v, lower.tail = FALSE))",
      { m: location, s: scale, v: df },
    );
    expect(lawful?.below?.chance).toBeCloseTo(present(below), 9);
    expect(lawful?.above?.chance).toBeCloseTo(present(above), 9);
    expect(lawful?.either?.chance).toBeCloseTo(present(below) + present(above), 9);
  });

  it("has the bound of R's noncentral t at 95 % for each end, and the chance where that is larger", async () => {
    const { lawful, distribution } = ask(aim);
    const { location, scale, df } = present(distribution);
    const n = 7;
    // scale = spread·√(1 + 1/n): the fills' own mean and spread stand behind it.
    const [below, above] = await evalR(
      `spread <- s / sqrt(1 + 1/n)
       bound <- function(K) {
         ncp <- uniroot(function(d) pt(K * sqrt(n), v, d) - 0.95, c(-20, 20), tol = 1e-12)$root
         pnorm(ncp / sqrt(n), lower.tail = FALSE)
       }
       c(bound((m - (110/120 - 1)) / spread), bound((135/120 - 1 - m) / spread))`,
      { m: location, s: scale, v: df, n },
    );
    const low = present(lawful?.below);
    const high = present(lawful?.above);
    expect(low.upperBound).toBeCloseTo(Math.max(low.chance, present(below)), 6);
    expect(high.upperBound).toBeCloseTo(Math.max(high.chance, present(above)), 6);
  });

  it("is, with ends as far as a limit on either side, what the chance of that limit is", () => {
    const result = ask({ targetKgPerHa: 100, lowestKgPerHa: 95, highestKgPerHa: 105 });
    const limit = present(result.chances.find((one) => one.limit === 0.05));
    expect(result.lawful?.below?.chance).toBeCloseTo(limit.light, 12);
    expect(result.lawful?.above?.chance).toBeCloseTo(limit.heavy, 12);
    expect(result.lawful?.either?.chance).toBeCloseTo(limit.either, 12);
    expect(result.lawful?.either?.upperBound).toBeCloseTo(limit.upperBound, 9);
  });

  it("is told of the end that is given", () => {
    const { lawful } = ask({ ...aim, lowestKgPerHa: null });
    expect(lawful?.below).toBeNull();
    expect(lawful?.either).toEqual(lawful?.above);
  });

  it("has no chance without a target, without limits in mass, or of too few fills; but is kept to say that no fill is skipped", () => {
    const nothing = { below: null, above: null, either: null };
    expect(ask({ ...aim, targetKgPerHa: null }).lawful).toMatchObject(nothing);
    expect(ask({ ...aim, lowestKgPerHa: null, highestKgPerHa: null }).lawful).toMatchObject(
      nothing,
    );
    const two = [0.3, 0.31].flatMap((delivery, i) => aFill([[20, 20 * delivery]], { fill: i + 1 }));
    expect(ask(aim, two).lawful).toEqual({ ...aim, ...nothing });
  });

  it("states no chance below 5 % from three to five fills", () => {
    const { lawful, leastChance } = ask({ ...aim, lowestKgPerHa: 20 }, fillsOf(4));
    expect(leastChance).toBe(0.05);
    expect(lawful?.below?.chance).toBe(0.05);
    expect(lawful?.below?.upperBound).toBeGreaterThanOrEqual(0.05);
  });

  it("is broken less likely the wider it is, and never less likely than reckoned at the bound", () => {
    const share = fc.double({ min: 0.005, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (down, up, further) => {
        const at = (below: number, above: number) =>
          present(
            ask({
              targetKgPerHa: 120,
              lowestKgPerHa: 120 * (1 - below),
              highestKgPerHa: 120 * (1 + above),
            }).lawful,
          );
        const [near, far] = [at(down, up), at(down + further, up + further)];
        for (const end of ["below", "above", "either"] as const) {
          const [wide, narrow] = [present(far[end]), present(near[end])];
          expect(wide.chance).toBeLessThan(narrow.chance);
          expect(wide.upperBound).toBeLessThanOrEqual(narrow.upperBound);
          expect(narrow.upperBound).toBeGreaterThanOrEqual(narrow.chance);
        }
      }),
      { seed: 5, numRuns: 40 },
    );
  });
});
