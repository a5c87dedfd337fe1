import { describe, expect, it } from "vitest";
import { allCautions } from "../../src/analysis/all-cautions.ts";
import { analyse } from "../../src/analysis/analyse.ts";
import type { Catch, CatchLog } from "../../src/data/types.ts";
import { remlAcrossFills } from "../../src/model/across-fills.ts";
import { fitModel } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: null };
const logOf = (catches: readonly Catch[]): CatchLog => ({
  source: "catches.csv",
  massUnit: "kg",
  catches,
  cautions: [],
});

function remlOf(catches: readonly Catch[]) {
  return fitModel(catches, options).meters.map(({ fills }) => remlAcrossFills(fills));
}

/** Two fills of four catches, calm beside a scale that shows 0.1 kg: most catches of a fill read alike. */
function coarseLog(seed: number): Catch[] {
  const stream = randomStream(seed);
  const delivery = 0.2 + 0.5 * stream.uniform();
  const plan = { fills: 2, catches: 4, turns: 10, spread: 0.03, scatter: 0.002, delivery };
  return inventedFills(plan, stream).map((one) => ({
    ...one,
    netKg: Math.round(one.netKg * 10) / 10,
  }));
}

describe("an analysis of repeated readings of a coarse scale", () => {
  it("answers two fills of four equal weights each", () => {
    const four = (weight: number, fill: number) =>
      aFill(
        Array.from({ length: 4 }, () => [20, weight] as const),
        { fill },
      );
    const catches = [...four(6.3, 1), ...four(6.4, 2)];
    expect(remlOf(catches)).toEqual([null]);
    expect(present(present(analyse(logOf(catches)).meters[0]).acrossFills).reml).toBeNull();
  });

  it("fits random effects to 500 such logs, or says that there is nothing to compare with", () => {
    const fits = Array.from({ length: 500 }, (_, seed) => remlOf(coarseLog(seed))).flat();
    expect(fits).toHaveLength(500);
    const found = fits.filter((fit) => fit !== null);
    // Both happen often, or the logs would not be coarse.
    expect(found.length).toBeGreaterThan(50);
    expect(found.length).toBeLessThan(450);
    for (const fit of found) {
      expect(fit.withinVariance).toBeGreaterThan(0);
      expect(Number.isFinite(fit.betweenVariance) && fit.betweenVariance >= 0).toBe(true);
      expect(fit.adjustedStandardError).toBeGreaterThan(0);
      expect(fit.df).toBeGreaterThan(0);
    }
  });

  it("answers every question of 300 such logs", () => {
    for (let seed = 0; seed < 300; seed++) {
      const analysis = analyse(logOf(coarseLog(seed)));
      expect(analysis.meters).toHaveLength(1);
      // A question that failed would leave the others answered, and say so.
      const failed = allCautions(analysis).filter(({ code }) => code.endsWith("not-computed"));
      expect(failed, `seed ${seed}`).toEqual([]);
    }
  });
});
