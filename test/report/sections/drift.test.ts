import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { driftChart } from "../../../src/charts/drift.ts";
import { readCatches } from "../../../src/data/read-catches.ts";
import type { CatchLog } from "../../../src/data/types.ts";
import { fitModel } from "../../../src/model/model.ts";
import { type Drift, type DriftOptions, drift } from "../../../src/questions/drift.ts";
import { repeatability } from "../../../src/questions/repeatability.ts";
import type { Block } from "../../../src/report/document.ts";
import { driftSection } from "../../../src/report/sections/drift.ts";
import { repeatabilitySection } from "../../../src/report/sections/repeatability.ts";
import { chartsIn, checkIds } from "../../../src/report/walk.ts";
import { english } from "../../../src/wording/english/english.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { faultsOf } from "../../support/vega-lite.ts";

const options: DriftOptions = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.02,
  shiftOfInterest: 0.05,
  productChange: "starts afresh",
};
const words = english();
const logs = new Map<string, CatchLog>();

beforeAll(async () => {
  for (const set of ["season", "first-morning", "product-trial"]) {
    const file = new URL(`../../../data-demo/${set}/catches.csv`, import.meta.url);
    logs.set(set, await readCatches({ name: "catches.csv", text: readFileSync(file, "utf8") }));
  }
});

function sectionsOf(catches: CatchLog["catches"]): readonly Block[] {
  const model = fitModel(catches, options);
  return model.meters.flatMap((meter, i) => [
    ...driftSection(drift(meter, options, model.meters), words, `m${i}`),
    ...repeatabilitySection(repeatability(meter, options), words, `m${i}`),
  ]);
}

/** Every word of a section, as a reader sees it. */
function textOf(blocks: readonly Block[]): string {
  return JSON.stringify(blocks, (key, value) => (key === "spec" ? undefined : value));
}

function driftOfBin(bin: string): Drift {
  const model = fitModel(present(logs.get("season")).catches, options);
  return drift(present(model.meters.find((meter) => meter.bin === bin)), options, model.meters);
}

describe("sections on drift and repeatability", () => {
  it.each(["season", "first-morning", "product-trial"])(
    "have sound charts, sound ids and whole sentences for the %s",
    async (set) => {
      const blocks = sectionsOf(present(logs.get(set)).catches);
      checkIds(blocks);
      expect(textOf(blocks)).not.toMatch(/NaN|undefined|Infinity|null %/);
      for (const { spec } of chartsIn(blocks)) expect(await faultsOf(spec)).toEqual([]);
    },
  );

  it("have sound charts for one fill, for fills of one catch, and for a log with gaps", async () => {
    const season = present(logs.get("season")).catches;
    const cases = [
      inventedFills({ fills: 1, catches: 1, spread: 0, scatter: 0 }, 1),
      inventedFills({ fills: 7, catches: 1, spread: 0.02, scatter: 0.01 }, 2),
      season.filter(({ fill }) => fill !== 4 && fill !== 7),
    ];
    for (const catches of cases) {
      const blocks = sectionsOf(catches);
      expect(textOf(blocks)).not.toMatch(/NaN|undefined|Infinity/);
      for (const { spec } of chartsIn(blocks)) expect(await faultsOf(spec)).toEqual([]);
    }
  });

  it("say of the rear bin since when, how much and what to do", () => {
    const blocks = driftSection(driftOfBin("rear"), words, "rear");
    const [lead, steps] = blocks;
    expect(lead).toMatchObject({ kind: "paragraph", role: "lead" });
    expect(textOf([present(lead)])).toMatch(/since fill 6 .* the meter delivers 5\.\d\s% less/);
    expect(steps).toMatchObject({ kind: "list" });
    expect(textOf([present(steps)])).toMatch(/Since the shift the fills average/);
  });

  it("say of a steady bin what would have been found", () => {
    const text = textOf(driftSection(driftOfBin("front"), words, "front"));
    expect(text).toMatch(/no sign that the meter has moved over 9 fills/);
    expect(text).toMatch(
      /A 5\s% shift halfway would have been found in about \d+\s% of such seasons/,
    );
    expect(text).toMatch(/asked after every fill, in about \d+\s%/);
  });

  it("draw every fill, the tolerance lines and both levels with the result's own numbers", () => {
    const result = driftOfBin("rear");
    const spec = JSON.stringify(driftChart(result, words));
    const shift = present(result.shift);
    for (const number of [
      ...result.fills.map(({ estimate }) => estimate.value),
      ...result.fills.flatMap(({ asItCame }) => asItCame?.interval.lower ?? []),
      result.toleranceLines.lower,
      result.toleranceLines.upper,
      shift.before,
      shift.after,
    ])
      expect(spec).toContain(`:${number}`);
  });

  it("give a gap in the log a place on the axis", () => {
    const catches = present(logs.get("season")).catches.filter(({ fill }) => fill !== 4);
    const model = fitModel(catches, options);
    const result = drift(present(model.meters[0]), options, model.meters);
    expect(JSON.stringify(driftChart(result, words))).toContain('"4 missing"');
    expect(textOf(driftSection(result, words, "x"))).toContain("one fill missing before it");
  });
});

describe("cautions on drift and repeatability", () => {
  const nowhere = { bin: null, product: null, fill: null, catches: [] };
  const say = words.cautions;

  it("each say what was found and what to do", () => {
    const sentences = [
      say["no-trend-yet"]({ fills: 3, needed: 5 }, nowhere),
      say["no-change-point-yet"]({ fills: 5, needed: 6 }, nowhere),
      say["fills-agree-exactly"]({ fills: 6 }, nowhere),
      say["product-changed"]({ otherProducts: ["pea"], fillsSetAside: 4 }, nowhere),
      say["product-changed"]({ otherProducts: ["pea"], fillsSetAside: 0 }, nowhere),
      say["product-order-unknown"]({}, nowhere),
      say["fill-numbers-against-dates"]({}, nowhere),
      say["gaps-between-fills"]({ missingFills: 2, longestPauseDays: 30 }, nowhere),
      say["trend-or-wander"]({ pValue: 0.01 }, nowhere),
      say["delivery-settles"](
        { scope: "within fills", against: "catch order", change: -0.01, pValue: 0.01 },
        nowhere,
      ),
      say["delivery-settles"](
        { scope: "between fills", against: "bin level", change: 0.08, pValue: 0.01 },
        nowhere,
      ),
      say["scatter-unusual"]({ ratio: 2.5, pValue: 0.01 }, nowhere),
      say["no-scatter-to-compare"]({ catches: 1, earlierDf: 4 }, nowhere),
      say["no-scatter-to-compare"]({ catches: 3, earlierDf: 0 }, nowhere),
      say["no-scatter-to-compare"]({ catches: 3, earlierDf: 4 }, nowhere),
    ];
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
    expect(sentences).toMatchSnapshot();
  });
});
