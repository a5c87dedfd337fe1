import { describe, expect, it } from "vitest";
import { constantsFrom } from "../../src/analysis/spread-estimates.ts";
import type { EstimatedConstant } from "../../src/data/spreads/schema.ts";
import { dfOf, relativeSquares } from "../../src/model/catch-scatter.ts";
import { fitModel, type Model } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { mean } from "../../src/statistics/summary.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { evalR } from "../support/webr.ts";

/** A season of bins, their scatter and spread about 1.5 % and 3 % with so much between meters and between fills. */
function season(meters: number, seed: number, h = 0.5, betweenFills = 0.2): Model {
  const stream = randomStream(seed);
  const catches = Array.from({ length: meters }, (_, bin) => {
    const scatter = 0.015 * Math.exp(h * stream.normal());
    const spread = 0.03 * Math.exp(h * stream.normal());
    return Array.from({ length: 5 }, (_fill, fill) =>
      inventedFills(
        {
          fills: 1,
          catches: 5,
          spread,
          scatter: scatter * Math.exp(betweenFills * stream.normal()),
          bin: String(bin + 1),
          firstFill: fill + 1,
        },
        stream,
      ),
    ).flat();
  }).flat();
  return fitModel(
    catches.map((one, i) => ({ ...one, row: i + 2 })),
    {},
    { asked: "never" },
  );
}

const byName = (models: readonly Model[]) =>
  new Map(present(constantsFrom(models, 0.95)).constants.map((one) => [one.name, one]));

describe("declared constants estimated anew", () => {
  const model = season(34, 1);

  it("are those of R's restricted likelihood on what the meters lend, beside what is declared", async () => {
    const constants = byName([model]);
    const remlInR = `
      e <- log(s2) - digamma(d / 2) + log(d / 2); v <- trigamma(d / 2)
      dev <- function(tau) sum(sapply(unique(g), function(j) {
        w <- 1 / (tau^2 + v[g == j]); y <- e[g == j]; m <- sum(w * y) / sum(w)
        -sum(log(w)) + log(sum(w)) + sum(w * (y - m)^2) }))
      tau <- optimize(dev, c(0, 6), tol = 1e-12)$minimum
      w <- 1 / (tau^2 + v)
      c(tau / 2, exp(sum(w * e) / sum(w) / 2))`;
    for (const kind of ["spread", "scatter"] as const) {
      const records = model.meters.map(({ record }) => present(record[kind]));
      const [h, typical] = await evalR(remlInR, {
        s2: records.map(({ variance }) => variance),
        d: records.map(({ df }) => df),
        g: records.map(() => 1),
      });
      const turns = kind === "scatter" ? 20 : 1;
      expect(constants.get(`between_meters_${kind}`)?.estimate).toBeCloseTo(present(h), 6);
      expect(constants.get(`typical_${kind}`)?.estimate).toBeCloseTo(
        present(typical) / Math.sqrt(turns),
        7,
      );
    }
    const fills = model.meters.flatMap((meter, g) =>
      meter.fills.map(({ scatterTotals: totals }) => ({
        g,
        d: dfOf(totals),
        s2: relativeSquares(totals) / dfOf(totals),
      })),
    );
    const [h] = await evalR(remlInR, {
      s2: fills.map(({ s2 }) => s2),
      d: fills.map(({ d }) => d),
      g: fills.map(({ g }) => g),
    });
    expect(constants.get("between_fills_scatter")).toMatchObject({
      declared: 0.2,
      estimate: expect.closeTo(present(h), 6),
      sources: 34 * 5,
    });
  });

  it("fit what is declared where it is true, and are said to differ where it is not", () => {
    const declared: Partial<Record<EstimatedConstant, number>> = {
      between_meters_spread: 0.5,
      between_meters_scatter: 0.5,
      between_fills_scatter: 0.2,
      typical_spread: 0.03,
      typical_scatter: 0.015,
    };
    const constants = [...byName([model]).values()];
    expect(Object.fromEntries(constants.map((one) => [one.name, one.declared]))).toEqual(declared);
    for (const one of constants) {
      expect(one.from).toBeLessThanOrEqual(one.estimate);
      expect(one.to).toBeGreaterThanOrEqual(one.estimate);
      expect(one.differs).toBe(one.declared < one.from || one.declared > one.to);
    }
    const alike = byName([season(40, 2, 0.05, 0)]);
    expect(alike.get("between_meters_scatter")).toMatchObject({ declared: 0.5, differs: true });
    expect(present(alike.get("between_meters_scatter")).to).toBeLessThan(0.5);
  });

  it("are left out below thirty meters, of one log or several together", () => {
    expect(constantsFrom([season(29, 3)], 0.95)).toBeNull();
    expect(byName([season(20, 4), season(10, 5)]).get("between_meters_spread")?.sources).toBe(30);
  });

  it("find a true .5 and .2 from whole logs, but for what few fills and small samples do to them", () => {
    const seasons = Array.from({ length: 24 }, (_, i) => byName([season(30, 100 + i)]));
    const found = (name: EstimatedConstant) =>
      seasons.map((constants) => present(constants.get(name)).estimate);
    const within = (values: readonly number[], wanted: number, off: number) => {
      const middle = mean(values);
      const error = Math.sqrt(mean(values.map((x) => (x - middle) ** 2)) / values.length);
      expect(Math.abs(middle - wanted)).toBeLessThan(3 * error + off);
    };
    // Of 30 meters the root of the unbiased 4h² lies up to .02 low.
    within(found("between_meters_scatter"), 0.5, 0.02);
    within(found("between_meters_spread"), 0.5, 0.02);
    within(found("between_fills_scatter"), 0.2, 0.02);
    within(found("typical_scatter").map(Math.log), Math.log(0.015), 0.02);
    within(found("typical_spread").map(Math.log), Math.log(0.03), 0.05);
  });
});
