import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel } from "../../src/model/model.ts";
import { type OutletsChoices, outletsOptions } from "../../src/questions/outlets/options.ts";
import { outlets } from "../../src/questions/outlets.ts";
import { vangelInterval } from "../../src/statistics/coefficient-of-variation.ts";
import reference from "../reference/trade/worked-examples.json" with { type: "json" };
import { aCatch } from "../support/catches.ts";
import { present } from "../support/reference.ts";

const model = { level: 0.95, tolerance: 0.05, scaleDivisionKg: 0.001 };

function caught(rows: readonly (readonly [outlet: string | null, netKg: number])[], fill = 1) {
  return rows.map(([outlet, netKg], i) =>
    aCatch({ row: i + 2, catch: i + 1, fill, turns: 10, netKg, outlet }),
  );
}

function ask(catches: readonly Catch[], given: Partial<OutletsChoices> = {}) {
  const meter = present(fitModel(catches, model).meters[0]);
  return outlets(meter, outletsOptions(model, given));
}

const codes = (catches: readonly Catch[], given: Partial<OutletsChoices> = {}) =>
  ask(catches, given)?.cautions.map(({ code }) => code);

const spreadBy = (relative: readonly number[]) =>
  caught(relative.map((size, i) => [`${i + 1}`, 4 * (1 + size)]));

describe("outlets", () => {
  it("finds the textbook's twelve outlets even to 1.32 %, all within its limits", () => {
    const example = present(
      reference.examples.find(({ id }) => id === "drill-calibration-textbook"),
    );
    const grams = present((example.input as { caught_g?: readonly number[] }).caught_g);
    const result = present(
      ask(
        grams.map((g, i) =>
          aCatch({ turns: 50, netKg: g / 1000, outlet: `${i + 1}`, catch: i + 1 }),
        ),
      ),
    );
    expect(100 * result.coefficientOfVariation.value).toBeCloseTo(1.324, 3);
    expect(result.band.upperKgPerTurn * 50_000).toBeCloseTo(23.704, 3);
    expect(result.band.lowerKgPerTurn * 50_000).toBeCloseTo(21.446, 3);
    expect(result.outlets.every(({ insideBand }) => insideBand)).toBe(true);
    const { lower, upper } = vangelInterval(result.coefficientOfVariation.value, 12, 0.95);
    expect(result.coefficientOfVariation.interval).toEqual({
      lower,
      upper,
      level: 0.95,
      about: "outlet to outlet",
    });
  });

  it("names the outlets outside the band, about their mean or about a target", () => {
    const rows = spreadBy([-0.08, 0.01, 0.02, 0.02, 0.03]);
    const byMean = present(ask(rows));
    expect(byMean.band.about).toBe("mean of outlets");
    expect(byMean.outlets.filter(({ insideBand }) => !insideBand).map((one) => one.outlet)).toEqual(
      ["1"],
    );
    // 0.38 kg/turn wanted: every outlet but the lightest delivers more than 5 % too much.
    const byTarget = present(ask(rows, { targetKgPerTurn: 0.38 }));
    expect(byTarget.outlets.map(({ insideBand }) => insideBand)).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
    expect(codes(rows)).toContain("outlets-outside-band");
    expect(codes(rows, { band: 0.2 })).not.toContain("outlets-outside-band");
  });

  it("keeps catch scatter apart: repeats of an outlet do not make outlets differ", () => {
    const once = caught([
      ["a", 4],
      ["b", 4.2],
      ["c", 4.1],
    ]);
    const twice = caught([
      ["a", 3.8],
      ["b", 4.0],
      ["c", 3.9],
      ["a", 4.2],
      ["b", 4.4],
      ["c", 4.3],
    ]);
    const single = present(ask(once));
    const double = present(ask(twice));
    expect(double.coefficientOfVariation.value).toBeCloseTo(
      single.coefficientOfVariation.value,
      12,
    );
    expect(single.catchScatter).toBeNull();
    // Two catches 0.2 kg either side of each mean: standard deviation 0.2·√2 of 4.1 kg.
    expect(double.catchScatter).toEqual({
      relative: expect.closeTo((0.2 * Math.SQRT2) / 4.1, 12),
      turns: 10,
      df: 3,
    });
    expect(codes(once)).toEqual(["few-outlets", "outlets-caught-once"]);
    expect(codes(twice)).not.toContain("outlets-caught-once");
  });

  it("takes the newest fill that names two outlets, and is nothing where none does", () => {
    const first = spreadBy([0, 0.01, 0.02]);
    const later = caught(
      [
        ["x", 4],
        [null, 4.1],
      ],
      2,
    );
    expect(present(ask([...first, ...later])).fill).toBe(1);
    expect(ask(later)).toBeNull();
  });

  it("gives no interval to outlets that agree exactly", () => {
    const same = spreadBy([0, 0, 0, 0, 0]);
    expect(ask(same)).toMatchObject({ coefficientOfVariation: { interval: null } });
    expect(codes(same)).toEqual(["outlets-agree-exactly", "outlets-caught-once"]);
  });

  it("is plain data that survives JSON", () => {
    const result = ask(spreadBy([-0.1, 0, 0.1]));
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it.each([
    [{ band: 0 }, "band"],
    [{ targetKgPerTurn: -1 }, "targetKgPerTurn"],
    [{ tolerance: 0.05 } as never, "tolerance"],
  ] satisfies [Partial<OutletsChoices>, string][])("refuses %j", (given, option) => {
    expect(() => outletsOptions(model, given)).toThrow(OptionError);
    expect(() => outletsOptions(model, given)).toThrow(`"${option}"`);
  });
});
