import { describe, expect, it } from "vitest";
import { fieldCheckChart } from "../../src/charts/field-check.ts";
import { outletsChart } from "../../src/charts/outlets.ts";
import { settingChart } from "../../src/charts/setting.ts";
import { speedLinearityChart } from "../../src/charts/speed-linearity.ts";
import { uncertaintyBudgetChart } from "../../src/charts/uncertainty-budget.ts";
import {
  aCheck,
  budgetOf,
  checked,
  evenness,
  log,
  motorDrive,
  set,
  speedOf,
  speeds,
  wanted,
  wheelDrive,
} from "../support/field-answers.ts";
import { expectFromResult, plotted } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const checks = [240, 205, 262].map((left, i) => aCheck(left, { fill: i + 1 }));
const uneven = [-0.08, 0.01, 0.02, 0.02, 0.03, -0.01, 0];

const drawn = {
  setting: [settingChart, set({ ...wheelDrive, ...wanted, ...speeds })],
  "speed linearity": [speedLinearityChart, speedOf()],
  "field checks": [fieldCheckChart, checked(checks)],
  outlets: [outletsChart, evenness(uneven)],
} as const;

describe("charts of drive and field", () => {
  it.each(Object.entries(drawn))(
    "%s: is sound and plots the result's own numbers",
    async (_, pair) => {
      const [chart, result] = pair;
      const spec = present(
        (chart as (result: unknown, words: unknown) => object | null)(result, words),
      );
      expect(await faultsOf(spec as never)).toEqual([]);
      expectFromResult(spec as never, result);
    },
  );

  it("the budget: is sound, and a bar for every source with its share", async () => {
    const result = budgetOf({ ...wheelDrive, turnCountStandardUncertainty: 0.1 });
    const spec = present(uncertaintyBudgetChart(result, words));
    expect(await faultsOf(spec)).toEqual([]);
    const shares = result.lines.map(({ share }) => share * 100);
    expect(plotted(spec)).toEqual(shares);
  });

  it("are not drawn where there is nothing to draw", () => {
    expect(settingChart(set({ ...motorDrive, ...wanted, ...speeds }), words)).toBeNull();
    expect(settingChart(set({ ...wheelDrive }), words)).toBeNull();
    const single = log.slice(0, 1);
    expect(uncertaintyBudgetChart(budgetOf({}, single), words)).toBeNull();
    expect(speedLinearityChart(speedOf(single), words)).toBeNull();
  });

  it("a field check without uncertainties still shows its rate", async () => {
    const exact = { value: 25, standardUncertainty: null };
    const spec = fieldCheckChart(checked([aCheck(240, { areaHectares: exact })]), words);
    expect(await faultsOf(spec)).toEqual([]);
  });

  it("outlets all within the band have none marked", async () => {
    const spec = outletsChart(evenness([0.01, -0.01, 0.02]), words);
    expect(await faultsOf(spec)).toEqual([]);
    expect(JSON.stringify(spec.layer)).not.toContain("flagged");
  });

  it("speak in customary units where words do", async () => {
    const spec = fieldCheckChart(checked(checks), english("us"));
    expect(await faultsOf(spec)).toEqual([]);
    expect(JSON.stringify(spec)).toContain("lb/ac");
    expect(Math.max(...plotted(spec))).toBeLessThan(110);
  });
});
