import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { driftChart } from "../../../src/charts/drift.ts";
import { readCatches } from "../../../src/data/read-catches.ts";
import type { CatchLog } from "../../../src/data/types.ts";
import { type Borrow, usualBorrowing } from "../../../src/model/lenders.ts";
import { fitModel } from "../../../src/model/model.ts";
import { type Drift, type DriftOptions, drift } from "../../../src/questions/drift.ts";
import { repeatability } from "../../../src/questions/repeatability.ts";
import type { Block } from "../../../src/report/document.ts";
import { reportDocument } from "../../../src/report/report.ts";
import { driftSection } from "../../../src/report/sections/drift.ts";
import { repeatabilitySection } from "../../../src/report/sections/repeatability.ts";
import { chartsIn, checkIds } from "../../../src/report/walk.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { faultsOf } from "../../support/vega-lite.ts";
import { english } from "../../support/words.ts";

const options: DriftOptions = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.02,
  shiftOfInterest: 0.05,
};
const words = english();
/** Deliveries of a calm meter, and of one whose fills rise by about 1 % each. */
const calm = [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011];
const rising = Array.from({ length: 9 }, (_, i) => 0.3 * (1 + 0.01 * i) + 0.0004 * (i % 2));
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
    ...driftSection(drift(meter, options, model.meters), words, `m${i}-drift`),
    ...repeatabilitySection(repeatability(meter, options), words, `m${i}-repeatability`),
  ]);
}

/** Every word of a section, as a reader sees it. */
function textOf(blocks: readonly Block[]): string {
  return JSON.stringify(blocks, (key, value) => (key === "spec" ? undefined : value));
}

function driftOfBin(bin: string, borrow: Borrow = "other bins"): Drift {
  const choices = { borrowing: { ...usualBorrowing, borrow } };
  const model = fitModel(present(logs.get("season")).catches, options, choices);
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

  it("say of bin 3 since when, how much and what to do", () => {
    const blocks = driftSection(driftOfBin("3"), words, "3");
    const [lead, steps] = blocks;
    expect(lead).toMatchObject({ kind: "paragraph", role: "lead" });
    expect(textOf([present(lead)])).toMatch(
      /this meter has given about 5\.\d\s% less since fill 6/,
    );
    expect(steps).toMatchObject({ kind: "list" });
    expect(textOf([present(steps)])).toMatch(/Today's value is the one that counts\. Since fill 6/);
    expect(textOf(blocks)).not.toMatch(/would have shown by now/);
    expect(textOf(blocks)).toMatch(/Fills 1 to 5: .* Fills 6 to 9: .* the level in force/);
  });

  it("say of a steady bin by itself what would have been found, and how often a steady meter is not let be", () => {
    const text = textOf(driftSection(driftOfBin("1", "none"), words, "1"));
    expect(text).toMatch(/steady so far, over 9 fills/);
    expect(text).toMatch(
      /A lasting shift of 5\s% since fill 5 would have shown by now in about \d of 10 such logs/,
    );
    expect(text).toMatch(/called moved or different once in 20 seasons of 12 fills/);
    expect(text).toMatch(/one in 4 at a likeness of 0\.6/);
    expect(text).toMatch(/rests on a typical spread of [\d.]+\s% between this meter's fills/);
  });

  it("say where other bins lend who told the spread, and that their help is not counted on", () => {
    expect(textOf(driftSection(driftOfBin("1"), words, "1"))).toMatch(
      /told by this meter's own and by 2 other bins; it is worked out as if its own spoke alone/,
    );
  });

  it("say of a report of several bins once how often any of them is not let be", () => {
    const { catches } = present(logs.get("season"));
    const textIn = (rows: CatchLog["catches"]) =>
      textOf(
        reportDocument(
          analyse({ ...present(logs.get("season")), catches: rows }),
          { title: null, setupSource: null, version: "0.0.0", edition: "full" },
          words,
        ).blocks,
      );
    const once = /one or another is called moved or different once in (\d+) seasons/g;
    // Three bins at 0.05 each: 1 − 0.95³ = 0.143.
    expect([...textIn(catches).matchAll(once)].map(([, oneIn]) => oneIn)).toEqual(["7"]);
    expect(textIn(catches.filter(({ bin }) => bin === "1"))).not.toMatch(once);
  });

  it("keep what looks once, at the end, to the detail, and say that it decides nothing", () => {
    const blocks = driftSection(driftOfBin("1"), words, "1");
    const detail = blocks.filter(({ kind }) => kind === "details");
    const rest = blocks.filter(({ kind }) => kind !== "details");
    expect(textOf(detail)).toMatch(
      /None of this changes the verdict.*Trend: .*Shift: .*Mann–Kendall/,
    );
    expect(textOf(rest)).not.toMatch(/Mann|Holm|Trend: /);
  });

  it.each([
    ["a fill that differs", [...calm, 0.34], /fill 7 stands apart.*One clean fill in 500/],
    [
      "a fill that stood apart",
      [...calm, 0.34, 0.2995],
      /Fill 7 is left out of the mean and of the spread/,
    ],
    ["a rise", rising, /each fill gives more than the last, about 1\.\d\s% a fill/],
    ["too few fills", calm.slice(0, 2), /2 fills so far; whether .* from the fourth fill on/],
  ])("draw and tell %s", async (_, deliveries, wanted) => {
    const catches = deliveries.flatMap((delivery, i) =>
      aFill(
        [
          [20, 20 * delivery * 0.995],
          [20, 20 * delivery * 1.005],
        ],
        { fill: i + 1 },
      ),
    );
    const blocks = sectionsOf(catches);
    expect(textOf(blocks)).toMatch(wanted);
    for (const { spec } of chartsIn(blocks)) expect(await faultsOf(spec)).toEqual([]);
  });

  it("draw every fill, the tolerance lines and the level of each stretch with the result's own numbers", () => {
    const result = driftOfBin("3");
    const spec = JSON.stringify(driftChart(result, words));
    expect(result.stretches).toHaveLength(2);
    for (const number of [
      ...result.fills.map(({ estimate }) => estimate.value),
      result.toleranceLines.lower,
      result.toleranceLines.upper,
      ...result.stretches.map(({ mean }) => mean),
    ])
      expect(spec).toContain(`:${number}`);
    expect(spec).toContain('"level in force"');
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
      say["product-changed"]({ otherProducts: ["pea"], beforeFills: [4] }, nowhere),
      say["product-changed"]({ otherProducts: ["pea", "oat"], beforeFills: [4, 7] }, nowhere),
      say["fill-differs"](
        { difference: 0.056, earlierFills: 6, pValue: 0.0013, limit: 0.002 },
        nowhere,
      ),
      say["fill-differs"](
        { difference: -0.056, earlierFills: 1, pValue: 0.0013, limit: 0.002 },
        nowhere,
      ),
      say["fill-differs-confirmed"](
        { difference: 0.056, earlierFills: 6, pValue: 0.0013, catches: 8, usualCatches: 3 },
        nowhere,
      ),
      say["moved-since"](
        {
          sinceFill: 7,
          fillsSince: 2,
          change: 0.06,
          lower: 0.03,
          upper: 0.09,
          evidence: 5.8,
          limit: 5.38,
        },
        nowhere,
      ),
      say.trending({ perFill: 0.004, fills: 8, evidence: 9, limit: 5.38 }, nowhere),
      say["stood-apart"]({ difference: 0.12, backWith: 8 }, nowhere),
      say["fills-since-change"]({ sinceFill: 6, fills: 4, spreadFills: 9 }, nowhere),
      say["fills-since-change"]({ sinceFill: 9, fills: 1, spreadFills: 1 }, nowhere),
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
      say["few-scatter-apart"]({ ratio: 2.5, pValue: 0.03 }, nowhere),
      say["no-scatter-to-compare"]({ catches: 1, usualKnown: true }, nowhere),
      say["no-scatter-to-compare"]({ catches: 3, usualKnown: false }, nowhere),
      say["no-scatter-to-compare"]({ catches: 3, usualKnown: true }, nowhere),
    ];
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
    expect(sentences).toMatchSnapshot();
  });
});
