import { describe, expect, it } from "vitest";
import { chanceToReachChart } from "../../src/charts/chance-to-reach.ts";
import { layersIn } from "../support/chart-keys.ts";
import { aLog, needed } from "../support/planning-answers.ts";
import { expectFromResult } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();

describe("how likely so many catches reach the tolerance, drawn", () => {
  it.each([
    ["a fill of a season", needed(aLog(6, 2))],
    ["a first morning", needed(aLog(0, 3))],
    ["before any catch", needed(null)],
  ])("is sound and plots the result's own numbers: %s", async (_, result) => {
    const spec = present(chanceToReachChart(result, words));
    expect(await faultsOf(spec)).toEqual([]);
    expectFromResult(spec, result);
  });

  it("has a point for every number of catches whose chance is known", () => {
    const result = needed(aLog(6, 2));
    const points = layersIn(present(chanceToReachChart(result, words))).at(-1);
    expect(present(points).data.values.map(({ catches }) => catches)).toEqual(
      result.curve.points.flatMap(({ catches, chance }) => (chance === null ? [] : [catches])),
    );
  });

  it("is not drawn where the catches made are enough", () => {
    expect(chanceToReachChart(needed(aLog(6, 4), {}, 0.2), words)).toBeNull();
  });

  it("is not drawn where no chance is known", () => {
    const result = needed(aLog(6, 2));
    const points = result.curve.points.map((point) => ({ ...point, chance: null }));
    expect(chanceToReachChart({ ...result, curve: { ...result.curve, points } }, words)).toBeNull();
  });
});
