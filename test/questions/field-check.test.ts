import { mean, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import type { FieldCheckSetup } from "../../src/data/setup.ts";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel } from "../../src/model/model.ts";
import {
  type FieldCheckChoices,
  fieldCheckOptions,
} from "../../src/questions/field-check/options.ts";
import { fieldCheck } from "../../src/questions/field-check.ts";
import { aFill } from "../support/catches.ts";
import { demo } from "../support/demo.ts";
import { digits, present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { evalR } from "../support/webr.ts";

const model = { level: 0.95, tolerance: 0.05, scaleDivisionKg: 0.01 };
const exact = (value: number) => ({ value, standardUncertainty: null });
const measured = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });

/** 0.4 kg/turn. */
const fill = aFill([
  [20, 8.05],
  [20, 7.9],
  [20, 8.05],
]);

function check(given: Partial<FieldCheckSetup> = {}): FieldCheckSetup {
  return {
    bin: "1",
    product: "wheat",
    fill: 1,
    date: null,
    filledKg: measured(3000, 5),
    leftKg: measured(240, 5),
    areaHectares: measured(22.7, 0.1),
    intendedRateKgPerHectare: 120,
    assumedDeliveryKgPerTurn: 0.4,
    ...given,
  };
}

function ask(given: Partial<FieldCheckChoices>, catches: readonly Catch[] = fill) {
  const meter = present(fitModel(catches, model).meters[0]);
  return fieldCheck(meter, fieldCheckOptions(model, given));
}

const only = (given: Partial<FieldCheckSetup> = {}, rest: Partial<FieldCheckChoices> = {}) => {
  const result = present(ask({ checks: [check(given)], ...rest }));
  return { result, one: present(result.checks[0]) };
};

const codes = ({ result }: ReturnType<typeof only>) => result.cautions.map(({ code }) => code);

describe("the rate found in the field", () => {
  it("by hand: (3000 − 240) kg on 22.7 ha, uncertain by √50 kg and 0.1 ha", () => {
    const { one } = only();
    const rate = 2760 / 22.7;
    expect(one.usedKg).toBe(2760);
    expect(one.rate.value).toBeCloseTo(rate, 10);
    const error = rate * Math.hypot(Math.sqrt(50) / 2760, 0.1 / 22.7);
    expect(one.rate.standardError).toBeCloseTo(error, 6);
    expect(one.rate.interval?.upper).toBeCloseTo(rate + 1.959964 * error, 5);
    expect(one.rateError?.value).toBeCloseTo(rate / 120 - 1, 12);
    expect(one.rateError?.interval?.about).toBe("rate error in the field");
  });

  it("has no interval when an uncertainty is not given, and names which", () => {
    const asked = only({ leftKg: exact(240), areaHectares: exact(22.7) });
    expect(asked.one.rate).toMatchObject({ standardError: null, interval: null, method: "none" });
    expect(asked.one.withoutUncertainty).toEqual(["left", "area"]);
    expect(asked.one).toMatchObject({ agreement: null, best: null });
    expect(codes(asked)).toContain("field-check-without-uncertainty");
    // The catches' own interval can still be looked at.
    expect(asked.one.withinPrediction).toBe(true);
  });

  it("is nothing without checks", () => {
    expect(ask({})).toBeNull();
  });
});

describe("against what the catches said", () => {
  it("predicts intended × delivery ÷ assumed delivery", () => {
    const { one } = only({ assumedDeliveryKgPerTurn: 0.39 });
    expect(one.predicted?.rate.value).toBeCloseTo((120 / 0.39) * 0.4, 9);
    expect(one.predicted).toMatchObject({ basis: "assumed delivery", deliveryOf: "this fill" });
    expect(one.bias?.value).toBeCloseTo(2760 / 22.7 / ((120 / 0.39) * 0.4) - 1, 12);
    // Corrected delivery = assumed × used ÷ what the drive believes it put out.
    expect(one.fieldDeliveryKgPerTurn).toBeCloseTo((0.39 * 2760) / (120 * 22.7), 12);
  });

  it("judges agreement by the normalised error of both expanded uncertainties, by hand", () => {
    const { one } = only();
    const agreement = present(one.agreement);
    const predicted = present(one.predicted).rate;
    const reach = ({ interval, value }: typeof predicted) => present(interval?.upper) - value;
    expect(agreement.expandedField).toBeCloseTo(reach(one.rate), 12);
    expect(agreement.normalisedError).toBeCloseTo(
      (one.rate.value - predicted.value) / Math.hypot(reach(one.rate), reach(predicted)),
      12,
    );
    expect(agreement.agrees).toBe(true);
    const [a, b] = [present(one.rate.standardError), present(predicted.standardError)];
    const best = present(one.best);
    expect(best.value).toBeCloseTo(
      (one.rate.value / a ** 2 + predicted.value / b ** 2) / (1 / a ** 2 + 1 / b ** 2),
      9,
    );
    expect(best.standardError).toBeCloseTo(1 / Math.hypot(1 / a, 1 / b), 9);
  });

  it("stops a person only where a difference this large happens in one log of a hundred, over all its field checks", async () => {
    const [clear, slight] = [
      only({ leftKg: measured(900, 5) }),
      only({ leftKg: measured(480, 5) }),
    ];
    for (const { one } of [clear, slight]) {
      const bias = present(one.bias);
      const [pValue = 0] = await evalR("2 * pt(-abs(b / se), df)", {
        b: [bias.value],
        se: [present(bias.standardError)],
        df: [present(bias.df)],
      });
      expect(one.agreement?.agrees).toBe(false);
      expect(one.agreement?.pValue).toBeCloseTo(pValue, 10);
    }
    expect(clear.one.agreement?.pValue).toBeLessThan(0.01);
    expect(codes(clear)).toContain("field-disagrees");
    expect(slight.one.agreement?.pValue).toBeGreaterThan(0.01);
    expect(codes(slight)).toContain("field-differs");
    const shared = only({ leftKg: measured(900, 5) }, { checksInLog: 50 });
    expect(shared.one.agreement?.pValue).toBeCloseTo(
      Math.min(1, 50 * present(clear.one.agreement).pValue),
      10,
    );
    expect(() => only({}, { checksInLog: 0 })).toThrow(OptionError);
  });

  it("says when they disagree, and then makes no mean of the two", () => {
    const asked = only({ leftKg: measured(600, 5) });
    expect(asked.one.agreement?.agrees).toBe(false);
    expect(asked.one.best).toBeNull();
    expect(codes(asked)).toContain("field-disagrees");
  });

  it("knows the turns by the drive as it stands, and counts width and slip into the prediction", () => {
    const unknownAssumed = { assumedDeliveryKgPerTurn: null };
    expect(only(unknownAssumed).one).toMatchObject({ predicted: null, bias: null });
    expect(codes(only(unknownAssumed))).toContain("predicted-rate-unknown");
    const byTurns = only(unknownAssumed, { turnsPerHectare: 300 }).one;
    expect(byTurns.predicted?.rate.value).toBeCloseTo(120, 9);
    expect(byTurns.predicted?.basis).toBe("turns per hectare");
    const wheel = {
      workingWidthM: measured(12, 0.12),
      wheelTravelM: exact(2),
      slip: exact(0.04),
      drive: { kind: "ground-wheel", ratio: 0.75, steps: null, stepNames: null },
    } as const;
    const byRatio = present(only(unknownAssumed, wheel).one.predicted);
    expect(byRatio.basis).toBe("drive ratio");
    expect(byRatio.rate.value).toBeCloseTo((0.4 * 0.75 * 10_000 * 0.96) / 24, 9);
    expect(byRatio.rate.method).toBe("GUM propagation");
    const widthToo = present(only({}, { workingWidthM: measured(12, 0.12) }).one.predicted).rate;
    const without = present(only().one.predicted).rate;
    expect(present(widthToo.standardError)).toBeCloseTo(
      Math.hypot(present(without.standardError), 0.01 * without.value),
      6,
    );
  });

  it("takes any fill's delivery, with the spread of fills, for a fill that was not caught", () => {
    const season = inventedFills({ fills: 5, catches: 3, spread: 0.03, scatter: 0.01 }, 8);
    const asked = (number: number | null) =>
      present(present(ask({ checks: [check({ fill: number })] }, season)).checks[0]).predicted;
    expect(asked(2)?.deliveryOf).toBe("this fill");
    expect(asked(null)?.deliveryOf).toBe("any fill");
    const width = (number: number | null) => present(asked(number)?.rate.standardError);
    expect(width(null)).toBeGreaterThan(2 * width(2));
    const unknownFill = present(ask({ checks: [check({ fill: 9 })] }, season));
    expect(unknownFill.cautions.map(({ code }) => code)).toContain("field-check-fill-unknown");
  });
});

describe("several checks", () => {
  const left = [240, 210, 290, 255];
  const checks = left.map((kg) => check({ leftKg: measured(kg, 5) }));

  it("give a running correction, each check one observation, as R's t interval", async () => {
    const correction = present(present(ask({ checks })).correction);
    const factors = left.map((kg) => (3000 - kg) / 22.7 / 120);
    const [lower = 0, upper = 0] = await evalR("t.test(x)$conf.int", { x: factors });
    const { factor, running } = correction;
    expect(factor.value).toBeCloseTo(mean(factors), 10);
    expect(factor.df).toBe(3);
    expect(digits(present(factor.interval?.lower), lower)).toBeGreaterThan(9);
    expect(digits(present(factor.interval?.upper), upper)).toBeGreaterThan(9);
    expect(running.map((one) => one.factor.value)).toEqual(
      left.map((_, i) => expect.closeTo(mean(factors.slice(0, i + 1)), 10)),
    );
    expect(running.map(({ checks }) => checks)).toEqual([1, 2, 3, 4]);
    expect(running[0]?.factor.interval).toBeNull();
    expect(running.at(-1)?.factor).toEqual(factor);
  });

  it("do not narrow with more catches: field and catch scatter are kept apart", () => {
    const many = Array.from({ length: 20 }, (_, i): readonly [number, number] => [
      20,
      8 + 0.05 * (-1) ** i,
    ]);
    const wide = present(present(ask({ checks })).correction).factor;
    const after = present(present(ask({ checks }, aFill(many))).correction).factor;
    expect(present(after.standardError) / after.value).toBeCloseTo(
      present(wide.standardError) / wide.value,
      9,
    );
    const factors = left.map((kg) => 3000 - kg);
    expect(present(wide.standardError) / wide.value).toBeCloseTo(
      sampleStandardDeviation(factors) / 2 / mean(factors),
      9,
    );
  });

  it("say how little one and two of them tell", () => {
    expect(codes(only())).toContain("one-field-check");
    expect(ask({ checks: checks.slice(0, 2) })?.cautions.map(({ code }) => code)).toContain(
      "two-field-checks",
    );
  });
});

describe("the demo season", () => {
  it("finds bin 3 9 % short after its meter had moved, as invented", async () => {
    const { log, setup } = await demo("season");
    const meters = fitModel(log.catches, model).meters;
    const rear = present(meters.find(({ bin }) => bin === "3"));
    const drive = present(setup.bins.find(({ bin }) => bin === "3")).drive;
    const options = fieldCheckOptions(model, {
      checks: setup.fieldChecks.filter(({ bin }) => bin === "3"),
      drive,
      workingWidthM: setup.cart.workingWidthM,
      wheelTravelM: setup.cart.wheelCircumferenceM,
    });
    const result = present(fieldCheck(rear, options));
    const one = present(result.checks[0]);
    // 3280 kg on 60 ha where 60 kg/ha were intended.
    expect(one.rate.value).toBeCloseTo(3280 / 60, 10);
    expect(one.rateError?.value).toBeCloseTo(3280 / 3600 - 1, 12);
    // 0.88 × 10 000 ÷ (12 × 2.2) = 333.3 turns/ha of what fill 8 delivers.
    const fill8 = present(rear.fills.find((one) => one.fill === 8));
    expect(one.predicted?.rate.value).toBeCloseTo((8800 / 26.4) * fill8.delivery, 9);
    // The field gets 1.5 % less than the yard, by invention; the catches know fill 8 to about 1 %.
    expect(present(one.bias).value).toBeGreaterThan(-0.05);
    expect(present(one.bias).value).toBeLessThan(0);
    expect(one.agreement).toBeNull();
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

describe("fieldCheckOptions", () => {
  it.each([
    [{ checks: [check({ leftKg: exact(3000) })] }, "checks[0].leftKg.value"],
    [{ checks: [check({ areaHectares: exact(0) })] }, "checks[0].areaHectares.value"],
    [{ checks: [check({ intendedRateKgPerHectare: -1 })] }, "checks[0].intendedRateKgPerHectare"],
    [{ area: 2 } as never, "area"],
  ] satisfies [Partial<FieldCheckChoices>, string][])("refuses %j", (given, option) => {
    expect(() => fieldCheckOptions(model, given)).toThrow(OptionError);
    expect(() => fieldCheckOptions(model, given)).toThrow(`"${option}"`);
  });
});

describe("the area that took product", () => {
  /** A drill of 96 rows, every third pass with 4 of them shut, and 3 % of the field drilled twice. */
  const tramlines = { rows: 96, rowsShut: 4, tramlineShare: 1 / 3, overlap: 0.03 };

  it("is the field less rows shut and plus what is drilled twice, by first principles row for row", () => {
    // Three passes of 96 rows of one length: 288 rows, of which 4 take nothing; and 3 % of them once more.
    const rowsOfThreePasses = 3 * 96;
    const took = rowsOfThreePasses - 4 + 0.03 * rowsOfThreePasses;
    const { one } = only(tramlines);
    expect(one.taken?.shut).toBeCloseTo(4 / 288, 14);
    expect(one.taken?.factor).toBeCloseTo(took / rowsOfThreePasses, 14);
    expect(one.areaHectares).toBeCloseTo((22.7 * took) / rowsOfThreePasses, 12);
    expect(one.rate.value).toBeCloseTo((2760 / 22.7) * (rowsOfThreePasses / took), 11);
  });

  it("keeps the relative uncertainty of the field's area", () => {
    const [plain, shut] = [only(), only(tramlines)].map(({ one }) => one.rate);
    const relative = (rate = plain) => (rate?.standardError ?? 0) / (rate?.value ?? 1);
    expect(relative(shut)).toBeCloseTo(relative(plain), 12);
  });

  it("is the field where nothing is given, and with rows shut in every pass where no share is", () => {
    expect(only().one).toMatchObject({ taken: null, areaHectares: 22.7 });
    const { one } = only({ rows: 24, rowsShut: 2 });
    expect(one.taken).toEqual({ shut: 2 / 24, overlap: 0, factor: 1 - 2 / 24 });
  });
});
