import { describe, expect, it } from "vitest";
import { randomStream } from "../../../src/numeric/random.ts";
import { againstEarlier, normalScore } from "../../../src/questions/drift/as-they-came.ts";
import { mean, sampleStandardDeviation } from "../../../src/statistics/summary.ts";
import { present } from "../../support/reference.ts";
import { evalR } from "../../support/webr.ts";

const fills = [0.412, 0.418, 0.409, 0.421, 0.415, 0.398];

describe("againstEarlier", () => {
  it("judges each fill by the prediction interval of those before it", () => {
    const judged = againstEarlier(fills, 0.95);
    expect(judged.slice(0, 2)).toEqual([null, null]);
    const last = present(judged[5]);
    const earlier = fills.slice(0, 5);
    const error = sampleStandardDeviation(earlier) * Math.sqrt(1 + 1 / 5);
    expect(last.mean).toBeCloseTo(mean(earlier), 14);
    expect(last.statistic).toBeCloseTo((0.398 - mean(earlier)) / error, 10);
    expect(last.df).toBe(4);
    // t(0.975, 4) = 2.776445, as printed in any table.
    expect(present(last.interval.upper) - last.mean).toBeCloseTo(2.776445 * error, 7);
    expect(last.outside).toBe(true);
  });

  it("calls a fill outside exactly when its p is below the level", () => {
    const random = randomStream(8);
    for (let i = 0; i < 300; i++) {
      const season = Array.from({ length: 7 }, () => 1 + 0.02 * random.normal());
      for (const one of againstEarlier(season, 0.9))
        if (one !== null) expect(one.outside).toBe(one.pValue < 0.1);
    }
  });

  it("has nothing to say where the earlier fills agree exactly", () => {
    const judged = againstEarlier([0.4, 0.4, 0.4, 0.5], 0.95);
    expect(judged).toEqual([null, null, null, null]);
  });

  it("makes scores that are the normal quantiles of t probabilities, as R has them", async () => {
    const judged = againstEarlier(fills, 0.95).flatMap((one) => one ?? []);
    const wanted = await evalR("qnorm(pt(t, df))", {
      t: judged.map(({ statistic }) => statistic),
      df: judged.map(({ df }) => df),
    });
    judged.forEach((one, i) => {
      expect(normalScore(one)).toBeCloseTo(present(wanted[i]), 9);
    });
  });

  it("keeps scores finite however far a fill is off", () => {
    expect(normalScore({ statistic: -1e200, df: 30 })).toBeLessThan(-30);
    expect(Number.isFinite(normalScore({ statistic: 1e300, df: 300 }))).toBe(true);
    expect(normalScore({ statistic: 0, df: 5 })).toBe(0);
  });
});
