import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { augment } from "../../../src/analysis/tables/catches.ts";
import { aCatch, aFill, aLog } from "../../support/catches.ts";
import { demo } from "../../support/demo.ts";
import { present } from "../../support/reference.ts";
import { evalR } from "../../support/webr.ts";

const unequal = [
  [20, 6.36],
  [20, 6.48],
  [40, 12.71],
  [10, 3.31],
  [40, 13.02],
] as const;
const turns = unequal.map(([one]) => one);
const masses = unequal.map(([, kg]) => kg);

describe("one row a catch", () => {
  it("has every catch, with residuals that add up to nothing and leverages to one in every fill", async () => {
    const { log, setup } = await demo("product-trial");
    const rows = augment(log, analyse(log, setup), setup);
    expect(rows).toHaveLength(80);
    for (let fill = 1; fill <= 20; fill++) {
      const own = rows.filter((row) => row.fill === fill);
      const total = (column: string) => own.reduce((sum, row) => sum + Number(row[column]), 0);
      expect(Math.abs(total("residual_kg"))).toBeLessThan(1e-12);
      expect(total("leverage")).toBeCloseTo(1, 12);
    }
  });

  it("says of the newest fill what the delivery and the outlier question say", async () => {
    const { log, setup } = await demo("season");
    const analysis = analyse(log, setup);
    const rows = augment(log, analysis, setup);
    for (const { bin, product, delivery, outliers } of analysis.meters) {
      const own = rows.filter(
        (row) => row.bin === bin && row.product === product && row.fill === delivery.fill,
      );
      delivery.points.forEach(({ fittedKg, residualKg, leverage }, i) => {
        expect(own[i]?.fitted_kg).toBeCloseTo(fittedKg, 14);
        expect(own[i]?.residual_kg).toBeCloseTo(residualKg, 14);
        expect(own[i]?.leverage).toBeCloseTo(leverage, 14);
      });
      present(outliers).influence.forEach(({ relativeChange }, i) => {
        expect(own[i]?.influence).toBeCloseTo(relativeChange, 12);
      });
      const judged = present(outliers).catches.filter(({ fill }) => fill === delivery.fill);
      expect(own.map((row) => row.judgement)).toEqual(judged.map(({ verdict }) => verdict));
      expect(own.map((row) => row.deleted_residual)).toEqual(judged.map((one) => one.statistic));
    }
  });

  // Weights 1/turns, 1 and 1/turns² of a line through the origin, in R: rstandard, hatvalues, cooks.distance, dfbeta.
  it.each([
    ["proportional", 1],
    ["constant", 0],
    ["squared", 2],
  ] as const)(
    "has R's residuals, leverages and influences where scatter grows as %s",
    async (law, power) => {
      const log = aLog(aFill(unequal));
      const rows = augment(log, analyse(log, null, { varianceLaw: law, borrow: "none" }));
      const inR = (expression: string) =>
        evalR(`fit <- lm(kg ~ 0 + turns, weights = turns^-${power}); ${expression}`, {
          kg: masses,
          turns,
        });
      const wanted = {
        fitted_kg: await inR("fitted(fit)"),
        residual_kg: await inR("resid(fit)"),
        standardised_residual: await inR("rstandard(fit)"),
        leverage: await inR("hatvalues(fit)"),
        cooks_distance: await inR("cooks.distance(fit)"),
        influence: await inR("-dfbeta(fit)[, 1] / coef(fit)"),
      };
      for (const [column, values] of Object.entries(wanted))
        values.forEach((value, i) => {
          expect(rows[i]?.[column], `${column} ${i}`).toBeCloseTo(value, 10);
        });
    },
  );

  it("shows a catch that was left out, with the reason and without what counting gives", () => {
    const left = aCatch({ catch: 3, turns: 20, netKg: 9, leftOut: "bag slipped" });
    const log = aLog([
      ...aFill([
        [20, 6],
        [20, 6.2],
      ]),
      left,
    ]);
    const rows = augment(log, analyse(log));
    expect(rows[2]).toMatchObject({
      catch: 3,
      leverage: null,
      standardised_residual: null,
      influence: null,
      judgement: null,
      left_out: "bag slipped",
      set_aside: false,
    });
    expect(rows[2]?.residual_kg).toBeCloseTo(9 - 6.1, 12);
  });

  it("has catches in their order, left out or not", () => {
    const rows = [
      aCatch({ catch: 1, turns: 20, netKg: 9, leftOut: "bag slipped" }),
      aCatch({ catch: 2, turns: 20, netKg: 6 }),
      aCatch({ catch: 3, turns: 20, netKg: 6.1 }),
    ];
    const log = aLog(rows);
    expect(augment(log, analyse(log)).map((row) => row.catch)).toEqual([1, 2, 3]);
  });

  it("has no standardised residual of a lone catch, nor where catches agree exactly", () => {
    const lone = aLog(aFill([[20, 6]]));
    expect(augment(lone, analyse(lone))[0]).toMatchObject({
      leverage: 1,
      standardised_residual: null,
      influence: null,
    });
    const alike = aLog(aFill([[20, 6], [20, 6], [20, 6]])); // biome-ignore format: three alike
    expect(augment(alike, analyse(alike))[0]).toMatchObject({ standardised_residual: null });
  });

  it("keeps the columns of the person's own, and takes broom's names when asked", () => {
    const log = aLog(aFill(unequal, { extra: { tkw_g: "41.5" } }));
    const [own] = augment(log, analyse(log));
    const [broom] = augment(log, analyse(log), null, { names: "broom" });
    expect(own?.["extra.tkw_g"]).toBe("41.5");
    expect(broom).toMatchObject({
      ".fitted": present(own).fitted_kg,
      ".resid": present(own).residual_kg,
      ".std.resid": present(own).standardised_residual,
      ".hat": present(own).leverage,
      ".cooksd": present(own).cooks_distance,
      "extra.tkw_g": "41.5",
    });
  });
});
