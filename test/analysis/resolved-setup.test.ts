import { describe, expect, it } from "vitest";
import {
  fieldCheckChoices,
  settingChoices,
  uncertaintyBudgetChoices,
} from "../../src/analysis/resolved-setup.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { fieldCheckDefaults, fieldCheckOptions } from "../../src/questions/field-check/options.ts";
import { settingDefaults, settingOptions } from "../../src/questions/setting/options.ts";
import {
  uncertaintyBudgetDefaults,
  uncertaintyBudgetOptions,
} from "../../src/questions/uncertainty-budget/options.ts";
import { demo } from "../support/demo.ts";

const model = { level: 0.95, tolerance: 0.05, scaleDivisionKg: null };

describe("what a setup tells the questions about drive and field", () => {
  it("is nothing without a setup", () => {
    expect(settingChoices(null, "1", "wheat")).toEqual(settingDefaults);
    expect(uncertaintyBudgetChoices(null, "1", "wheat")).toEqual(uncertaintyBudgetDefaults);
    expect(fieldCheckChoices(null, "1", "wheat")).toEqual(fieldCheckDefaults);
  });

  it("is null for a bin the setup does not name, but for the cart", () => {
    const setup = readSetup({
      name: "setup.json",
      text: JSON.stringify({ cart: { working_width: { value: 12, unit: "m" } } }),
    });
    expect(settingChoices(setup, "1", "wheat")).toEqual({
      ...settingDefaults,
      workingWidthM: { value: 12, standardUncertainty: null },
    });
  });

  it("is the demo season's drive, rate and seed, in order for each question", async () => {
    const { setup } = await demo("season");
    const rear = settingChoices(setup, "rear", "starter fertiliser");
    expect(rear).toMatchObject({
      target: { kind: "mass", kgPerHectare: 60 },
      wheelTravelM: { value: 2.2 },
      drive: { kind: "ground-wheel", ratio: 0.88 },
      speedKmPerH: { from: 7, to: 9 },
      slip: null,
    });
    expect(settingChoices(setup, "front", "wheat").seed?.thousandKernelMassG?.value).toBe(42);
    for (const { bin, product } of setup.bins) {
      const named = [bin, product ?? ""] as const;
      expect(() => settingOptions(model, settingChoices(setup, ...named))).not.toThrow();
      expect(() =>
        uncertaintyBudgetOptions(model, uncertaintyBudgetChoices(setup, ...named)),
      ).not.toThrow();
      expect(() => fieldCheckOptions(model, fieldCheckChoices(setup, ...named))).not.toThrow();
    }
  });

  it("hands each bin its own field checks, in order of time, undated ones last", () => {
    const check = (bin: string, date: string | null, filled: number, product?: string) => ({
      bin,
      ...(product === undefined ? {} : { product }),
      ...(date === null ? {} : { date }),
      filled: { value: filled, unit: "kg" },
      left: { value: 0, unit: "kg" },
      area: { value: 1, unit: "ha" },
    });
    const setup = readSetup({
      name: "setup.json",
      text: JSON.stringify({
        field_checks: [
          check("1", null, 1),
          check("1", "2026-04-20", 2, "wheat"),
          check("1", "2026-04-10", 3),
          check("1", "2026-04-01", 4, "pea"),
          check("2", "2026-04-01", 5),
        ],
      }),
    });
    const filled = fieldCheckChoices(setup, "1", "wheat").checks.map(
      ({ filledKg }) => filledKg.value,
    );
    expect(filled).toEqual([3, 2, 1]);
  });
});
