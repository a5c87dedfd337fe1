import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { tidy } from "../../../src/analysis/tables/estimates.ts";
import { aFill, aLog } from "../../support/catches.ts";
import { demo } from "../../support/demo.ts";
import { present } from "../../support/reference.ts";
import { evalR } from "../../support/webr.ts";

describe("one row an estimate", () => {
  it("has mean, next fill and spread of every bin and product, and every fill", async () => {
    const { log, setup } = await demo("product-trial");
    const rows = tidy(analyse(log, setup));
    expect(rows).toHaveLength(4 * 3 + 20);
    expect([...new Set(rows.map((row) => row.about))].sort()).toEqual([
      "fill-to-fill spread",
      "mean over fills",
      "next fill",
      "this fill's delivery",
    ]);
  });

  it("leaves cells empty where nothing can be known", () => {
    const rows = tidy(analyse(aLog(aFill([[20, 6]]))));
    expect(rows[0]).toMatchObject({ value: 0.3, standard_error: null, lower: null, level: null });
  });

  it("is what R's confint says of a fill by itself, under broom's names when asked", async () => {
    const kg = [6.36, 6.48, 6.41, 6.52];
    const log = aLog(aFill(kg.map((one) => [20, one] as const)));
    const row = present(
      tidy(analyse(log, null, { borrow: "none", scaleDivisionKg: 1e-9 }), {
        names: "broom",
      }).find(({ term }) => term === "this fill's delivery"),
    );
    const [estimate, error, lower, upper, df] = await evalR(
      `fit <- lm(kg ~ 0 + turns); s <- summary(fit)$coefficients
       c(s[1, 1:2], confint(fit), fit$df.residual)`,
      { kg, turns: kg.map(() => 20) },
    );
    expect(row.estimate).toBeCloseTo(present(estimate), 12);
    expect(row["std.error"]).toBeCloseTo(present(error), 10);
    expect(row["conf.low"]).toBeCloseTo(present(lower), 9);
    expect(row["conf.high"]).toBeCloseTo(present(upper), 9);
    expect(row.df).toBe(df);
    expect(row["conf.level"]).toBe(0.95);
  });
});
