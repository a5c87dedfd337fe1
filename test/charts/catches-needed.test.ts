import { describe, expect, it } from "vitest";
import { catchesNeededChart } from "../../src/charts/catches-needed.ts";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { inlined, keyWords, layersIn } from "../support/chart-keys.ts";
import { aLog, byMoney, needed, priced } from "../support/planning-answers.ts";
import { expectFromResult } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();

interface Layer {
  readonly mark: { readonly type: string; readonly style: string };
  readonly data: { readonly values: readonly { readonly halfWidth?: number }[] };
  readonly encoding: { readonly text?: { readonly field: string } };
}

const layersOf = (spec: ChartSpec) => inlined(spec).layer as readonly Layer[];
const log = aLog(6, 2);

describe("what each catch buys, drawn", () => {
  const cost = priced(log);
  const specs: readonly (readonly [string, ChartSpec])[] = [
    ["with cost", catchesNeededChart(needed(log), words, cost)],
    ["without cost", catchesNeededChart(needed(log), words)],
    ["before any catch", catchesNeededChart(needed(null), words)],
    ["one catch alone", catchesNeededChart(needed(aLog(0, 1)), words)],
    ["two catches alone", catchesNeededChart(needed(aLog(0, 2)), words)],
    ["three catches alone", catchesNeededChart(needed(aLog(0, 3)), words)],
    ["enough", catchesNeededChart(needed(log, {}, 0.08), words)],
    ["not reachable", catchesNeededChart(needed(log, { heaviestCatchKg: 6 }, 0.002), words)],
    ["the next fill", catchesNeededChart(needed(log, { fill: "next" }), words)],
    ["with prices", catchesNeededChart(needed(log, byMoney(60)), words, cost)],
    ["in US units", catchesNeededChart(needed(log), english("us"), cost)],
  ];

  it.each(specs)("is sound: %s", async (_, spec) => {
    expect(await faultsOf(spec)).toEqual([]);
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
  });

  it("plots the results' own numbers", () => {
    expectFromResult(catchesNeededChart(needed(log), words, cost), needed(log), cost);
  });

  it("draws every catch planned, with the width of eight in ten, and names both lines in its key", () => {
    const result = needed(aLog(6, 1), {}, 0.03);
    const layers = layersOf(catchesNeededChart(result, words));
    const planned = result.curve.points.filter(({ basis }) => basis !== "earlier fills");
    const within = planned.filter(({ halfWidth }) => present(halfWidth) <= 0.12);
    const lines = layers.filter(({ mark }) => mark.type === "line");
    expect(lines.map(({ mark }) => mark.style)).toEqual(["next-edge", "estimate"]);
    expect(lines[1]?.data.values.map(({ halfWidth }) => halfWidth)).toEqual(
      within.map(({ halfWidth }) => present(halfWidth) * 100),
    );
    expect(keyWords(catchesNeededChart(result, words)).slice(0, 2)).toEqual([
      "expected",
      "with a chance of 80\u00a0%",
    ]);
  });

  it("marks the number of catches from which on another no longer pays, where that is known", () => {
    const marks = (result: ReturnType<typeof needed>) => {
      const spec = catchesNeededChart(result, words);
      const rules = layersIn(spec).filter(({ mark }) => mark.strokeDash !== undefined);
      expect(keyWords(spec).includes("another no longer pays")).toBe(rules.length > 0);
      return rules.flatMap(({ data }) => data.values.map(({ catches }) => catches));
    };
    for (const hectares of [1, 60, 100]) {
      const result = needed(log, byMoney(hectares));
      const until = present(result.worth).until;
      expect(marks(result)).toEqual(until === null ? [] : [until]);
    }
    expect(present(needed(log, byMoney(1)).worth).until).toBe(2);
    expect(marks(needed(log, byMoney(1e5)))).toEqual([]);
    expect(marks(needed(log))).toEqual([]);
  });

  it("has no layer without values, whatever is known", () => {
    for (const result of [needed(aLog(0, 1)), needed(aLog(0, 2), {}, 0.01), needed(null)])
      for (const { data } of layersIn(catchesNeededChart(result, words)))
        expect(data.values.length).toBeGreaterThan(0);
  });

  it("puts the cost below the curve only where there is one", () => {
    const views = ({ vconcat = [null] }: ChartSpec) => (vconcat as unknown[]).length;
    expect(views(catchesNeededChart(needed(log), words, cost))).toBe(2);
    expect(views(catchesNeededChart(needed(log), words))).toBe(1);
    const unpriced = priced(log, { valueOfHour: null });
    expect(views(catchesNeededChart(needed(log), words, unpriced))).toBe(1);
  });
});
