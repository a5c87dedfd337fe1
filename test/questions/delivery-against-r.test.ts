import { describe, expect, it } from "vitest";
import { fitModel } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { testOffset } from "../../src/statistics/constant-offset.ts";
import { lackOfFit } from "../../src/statistics/lack-of-fit.ts";
import { fitThroughOrigin } from "../../src/statistics/through-origin.ts";
import { aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

/** R computes the same to the digits a double has left after a few sums. */
const agreed = 10;

type Pair = readonly [turns: number, netKg: number];

const random = randomStream(20260401);
const randomFill = (levels: readonly number[], n: number): Pair[] =>
  Array.from({ length: n }, (_, i) => {
    const turns = levels[i % levels.length] ?? 20;
    return [turns, 0.3 * turns + 0.02 * Math.sqrt(turns) * random.normal()] as const;
  });

const fills: readonly (readonly [name: string, pairs: readonly Pair[]])[] = [
  [
    "three equal catches",
    [
      [20, 7.06],
      [20, 7.18],
      [20, 7.02],
    ],
  ],
  [
    "two catches",
    [
      [20, 6.0],
      [20, 6.2],
    ],
  ],
  ["two turn levels", randomFill([10, 40], 6)],
  ["one long catch among short ones", randomFill([10, 10, 10, 10, 50], 5)],
  ["many catches", randomFill([15, 20, 30], 40)],
  [
    "a tiny delivery",
    [
      [30, 0.0011],
      [30, 0.0012],
      [60, 0.0021],
      [60, 0.0024],
    ],
  ],
  [
    "a huge mass with little scatter",
    [
      [20, 1e6],
      [20, 1e6 + 1],
      [40, 2e6 + 1],
      [40, 2e6 - 2],
    ],
  ],
  [
    "fractional turns",
    [
      [9.5, 2.9],
      [10.25, 3.05],
      [19.75, 5.98],
      [20.5, 6.11],
    ],
  ],
];

const options = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: null,
  varianceLaw: "proportional",
} as const;

function answer(pairs: readonly Pair[]) {
  return delivery(present(fitModel(aFill(pairs), options).meters[0]), options);
}

const data = (pairs: readonly Pair[]) => ({
  turns: pairs.map(([turns]) => turns),
  net: pairs.map(([, net]) => net),
});

describe("delivery against R's lm(net ~ 0 + turns, weights = 1/turns)", () => {
  it.each(fills)("agrees on value, standard error and interval of %s", async (_, pairs) => {
    const [slope, error, lower, upper, sigma] = await evalR(
      `fit <- lm(net ~ 0 + turns, weights = 1/turns)
       c(coef(fit), sqrt(vcov(fit)), confint(fit, level = 0.95), summary(fit)$sigma)`,
      data(pairs),
    );
    const fit = fitThroughOrigin(pairs.map(([x, y]) => ({ x, y })));
    const result = answer(pairs);
    expect(digits(result.estimate.value, present(slope))).toBeGreaterThan(agreed);
    expect(digits(present(fit.modelStandardError), present(error))).toBeGreaterThan(agreed - 2);
    expect(digits(Math.sqrt(present(fit.residualVariance)), present(sigma))).toBeGreaterThan(
      agreed - 2,
    );
    if (result.standardErrorFrom !== "model") return;
    const interval = present(result.estimate.interval);
    expect(digits(present(interval.lower), present(lower))).toBeGreaterThan(agreed);
    expect(digits(present(interval.upper), present(upper))).toBeGreaterThan(agreed);
  });

  it.each(fills)("agrees on the interval for one more catch of %s", async (_, pairs) => {
    const result = answer(pairs);
    if (result.standardErrorFrom !== "model") return;
    const { turns, estimate } = result.nextCatch;
    const [fit, lower, upper] = await evalR(
      `predict(lm(net ~ 0 + turns, weights = 1/turns), data.frame(turns = at),
               interval = "prediction", weights = 1/at)`,
      { ...data(pairs), at: turns },
    );
    expect(digits(estimate.value, present(fit))).toBeGreaterThan(agreed);
    expect(digits(present(present(estimate.interval).lower), present(lower))).toBeGreaterThan(
      agreed,
    );
    expect(digits(present(present(estimate.interval).upper), present(upper))).toBeGreaterThan(
      agreed,
    );
  });

  it.each(fills)(
    "agrees on the HC3 standard error, leverages and residuals of %s",
    async (_, pairs) => {
      const expected = await evalR(
        `fit <- lm(net ~ 0 + turns, weights = 1/turns)
       h <- hatvalues(fit); r <- residuals(fit)
       c(sqrt(sum((r / (1 - h))^2)) / sum(turns), h, r)`,
        data(pairs),
      );
      const fit = fitThroughOrigin(pairs.map(([x, y]) => ({ x, y })));
      const ours = [
        present(fit.robustStandardError),
        ...fit.points.map(({ leverage }) => leverage),
        ...fit.points.map(({ residual }) => residual),
      ];
      const scale = Math.max(...pairs.map(([, net]) => net));
      ours.forEach((value, i) => {
        expect(Math.abs(value - present(expected[i]))).toBeLessThan(1e-12 * scale);
      });
    },
  );

  it.each(["constant", "squared"] as const)("agrees under the law %s", async (law) => {
    const power = law === "constant" ? 0 : 2;
    const pairs = randomFill([10, 40], 7);
    const [slope, error] = await evalR(
      "fit <- lm(net ~ 0 + turns, weights = turns^-power); c(coef(fit), sqrt(vcov(fit)))",
      { ...data(pairs), power },
    );
    const fit = fitThroughOrigin(
      pairs.map(([x, y]) => ({ x, y })),
      law,
    );
    expect(digits(fit.slope, present(slope))).toBeGreaterThan(agreed);
    expect(digits(present(fit.modelStandardError), present(error))).toBeGreaterThan(agreed);
  });

  it("agrees on lack of fit, by anova of the line against the level means", async () => {
    const pairs = randomFill([10, 20, 40], 9);
    const [statistic, pValue] = await evalR(
      `a <- anova(lm(net ~ 0 + turns, weights = 1/turns), lm(net ~ 0 + factor(turns), weights = 1/turns))
       c(a$F[2], a$"Pr(>F)"[2])`,
      data(pairs),
    );
    const test = present(lackOfFit(fitThroughOrigin(pairs.map(([x, y]) => ({ x, y })))));
    expect(digits(test.statistic, present(statistic))).toBeGreaterThan(agreed - 2);
    expect(digits(test.pValue, present(pValue))).toBeGreaterThan(agreed - 2);
    expect([test.dfLackOfFit, test.dfPureError]).toEqual([2, 6]);
  });

  it("agrees on the constant mass, by the line with intercept", async () => {
    const pairs = randomFill([10, 20, 40], 8).map(([t, m]) => [t, m + 0.2] as const);
    const [offset, error, statistic, pValue] = await evalR(
      'summary(lm(net ~ turns, weights = 1/turns))$coefficients["(Intercept)", ]',
      data(pairs),
    );
    const fit = present(
      testOffset(
        pairs.map(([x, y]) => ({ x, y })),
        null,
      ),
    );
    expect(digits(fit.offset, present(offset))).toBeGreaterThan(agreed);
    expect(digits(fit.standardError, present(error))).toBeGreaterThan(agreed);
    expect(digits(fit.statistic, present(statistic))).toBeGreaterThan(agreed);
    expect(digits(fit.pValue, present(pValue))).toBeGreaterThan(agreed);
  });

  it("agrees with power.t.test's noncentral t on the power of the constant-mass check", async () => {
    const pairs = randomFill([10, 40], 6);
    const result = delivery(
      present(fitModel(aFill(pairs, { tareKg: 0.1, grossKg: 1 }), options).meters[0]),
      options,
    );
    const check = present(result.constantMass);
    const [power] = await evalR(
      "crit <- qt(0.975, df); 1 - pt(crit, df, ncp) + pt(-crit, df, ncp)",
      { df: present(check.constant.df), ncp: 0.1 / present(check.constant.standardError) },
    );
    expect(digits(present(check.powerForTare), present(power))).toBeGreaterThan(9);
  });
});
