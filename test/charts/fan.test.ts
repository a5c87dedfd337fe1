import { describe, expect, it } from "vitest";
import { fanChart } from "../../src/charts/fan.ts";
import { fitModel } from "../../src/model/model.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { drift } from "../../src/questions/drift.ts";
import { keyWords, layersIn } from "../support/chart-keys.ts";
import { aLog } from "../support/planning-answers.ts";
import { expectFromResult } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const options = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.02,
  varianceLaw: "proportional",
} as const;

function answers(fills: number, catches: number) {
  const meter = present(fitModel(aLog(fills, catches), options).meters[0]);
  return {
    across: acrossFills(meter, options),
    today: delivery(meter, options),
    moved: drift(meter, { ...options, shiftOfInterest: 0.05 }),
  };
}

describe("where next fill and next catch will lie, drawn", () => {
  it("is sound and plots the results' own numbers", async () => {
    const { across, today, moved } = answers(6, 3);
    const spec = present(fanChart(across, words, today, moved));
    expect(await faultsOf(spec)).toEqual([]);
    expectFromResult(spec, across, today, moved);
    expect(keyWords(spec)).toEqual([
      "expected",
      "50\u00a0% of cases",
      "80\u00a0% of cases",
      "95\u00a0% of cases",
      "tolerance ±\u00a03.0\u00a0%",
    ]);
  });

  it("draws the widest band first, so that the narrower ones lie upon it", () => {
    const { across, today } = answers(6, 3);
    const spec = present(fanChart(across, words, today));
    const widths = layersIn(spec)
      .filter(({ mark }) => mark.type === "bar")
      .map(({ data }) => Number(data.values[0]?.upper) - Number(data.values[0]?.lower));
    expect(widths).toHaveLength(3);
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
  });

  it("leaves out what has no band, and is not drawn where nothing has one", () => {
    const named = (fills: number, catches: number) => {
      const { across, today } = answers(fills, catches);
      const spec = fanChart(across, words, today);
      return spec === null
        ? null
        : layersIn(spec)
            .at(-1)
            ?.data.values.map(({ name }) => name);
    };
    expect(named(0, 3)).toEqual(["One more catch of fill 1"]);
    expect(named(6, 3)).toEqual(["The next fill", "One more catch of fill 7"]);
    expect(named(0, 1)).toBeNull();
  });
});

describe("bands of a fan", () => {
  it("hold the answers' own bands at their level", () => {
    const { across, today } = answers(6, 3);
    expect(across.fan.map(({ level }) => level)).toEqual([0.5, 0.8, 0.95]);
    expect(across.fan[2]).toEqual(across.nextFill.interval);
    const { turns, estimate, fan } = today.nextCatch;
    const mass = present(estimate.interval);
    expect(fan[2]?.lower).toBeCloseTo(Number(mass.lower) / turns, 12);
    expect(fan[2]?.upper).toBeCloseTo(Number(mass.upper) / turns, 12);
  });
});
