import { describe, expect, it } from "vitest";
import { varianceStaircaseChart } from "../../src/charts/variance-staircase.ts";
import { keyWords, layersIn } from "../support/chart-keys.ts";
import { budgetOf, log, wheelDrive } from "../support/field-answers.ts";
import { plotted } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const response = {
  kind: "linear",
  heavyCostPerHectarePerPercent: 0.8,
  lightCostPerHectarePerPercent: 1.6,
} as const;
const result = budgetOf({ ...wheelDrive, response, currency: "CAD" });

describe("the staircase of variance, drawn", () => {
  it("is sound and plots the result's own shares", async () => {
    const spec = present(varianceStaircaseChart(result, words));
    expect(await faultsOf(spec)).toEqual([]);
    const { steps } = present(result.staircase);
    const drawn = steps.filter(({ share }) => share > 0);
    expect(plotted(spec)).toEqual([
      ...drawn.flatMap(({ from, to }) => [100 * from, 100 * to]),
      ...[0, 100],
    ]);
    expect(keyWords(spec)).toEqual(["added by this stage", "all together"]);
  });

  it("begins each step where the one before ends, and ends at the whole", () => {
    const [steps] = layersIn(present(varianceStaircaseChart(result, words)));
    const rows = present(steps).data.values;
    for (const [i, { from }] of rows.entries()) expect(from).toBe(i === 0 ? 0 : rows[i - 1]?.to);
    expect(rows.at(-1)?.to).toBeCloseTo(100, 10);
  });

  it("says what half of a step would buy, in money where a response is given", () => {
    const said = (chart: unknown) => JSON.stringify(chart).match(/halved: [^"\]]*/g) ?? [];
    const withMoney = said(varianceStaircaseChart(result, words));
    expect(withMoney.length).toBeGreaterThan(3);
    for (const one of withMoney) expect(one).toMatch(/saves [\d.]+\u00a0CAD\/ha/);
    const without = said(varianceStaircaseChart(budgetOf(wheelDrive), words));
    for (const one of without) expect(one).not.toContain("saves");
  });

  it("names a stage of which nothing is given, without a step", () => {
    const chart = present(varianceStaircaseChart(budgetOf({}), words));
    expect(JSON.stringify(chart)).toContain("Width, wheel, slip: not given");
    expect(present(layersIn(chart)[0]).data.values.map(({ place }) => place)).not.toContain(
      "ground",
    );
  });

  it("is not drawn without a catch scatter", () => {
    expect(varianceStaircaseChart(budgetOf({}, log.slice(0, 1)), words)).toBeNull();
  });
});
