import { describe, expect, it } from "vitest";
import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import { acrossFillsChart } from "../../src/charts/across-fills.ts";
import { deliveryChart, deliveryPerTurnChart } from "../../src/charts/delivery.ts";
import { driftChart } from "../../src/charts/drift.ts";
import { influenceChart, residualsChart } from "../../src/charts/outliers.ts";
import { repeatabilityChart } from "../../src/charts/repeatability.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { at } from "../../src/errors/at.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { reportFiles } from "../../src/report/files.ts";
import { version } from "../../src/version.ts";
import { wordsFor } from "../../src/wording/languages.ts";
import { inlined } from "../support/chart-keys.ts";

const words = await wordsFor("en", "metric");

/** Fills of so many catches of 20 or 30 turns; of catches named bad, three parts too much came. */
async function logOf(fills: number, catches: number, bad: readonly number[] = []) {
  const random = randomStream(fills + catches);
  const rows = Array.from({ length: fills }, (_, f) => {
    const level = 0.3 * (1 + 0.015 * random.normal());
    return Array.from({ length: catches }, (_, c) => {
      const turns = random.integer(2, 3) * 10;
      const net = level * turns * (1 + 0.01 * random.normal()) * (bad.includes(c + 1) ? 4 : 1);
      return `1,wheat,${f + 1},${c + 1},${turns},${net.toFixed(2)}`;
    });
  });
  const text = ["bin,product,fill,catch,turns,net_kg", ...rows.flat()].join("\n");
  return readCatches({ name: "extreme.csv", text });
}

async function drawnIn(analysis: Analysis) {
  const files = await reportFiles(
    analysis,
    { title: null, setupSource: null, version, edition: "full" },
    words,
    null,
  );
  return { html: files["report.html"] ?? "", names: Object.keys(files) };
}

/** How many values each layer of a chart draws at most. */
function mostMarks(spec: object | null): number {
  const layers = (
    inlined(spec as never) as { layer: readonly { data?: { values: readonly object[] } }[] }
  ).layer;
  return Math.max(...layers.map(({ data }) => data?.values.length ?? 0));
}

describe("one fill of 10,000 catches", () => {
  it("is answered and drawn within seconds, its bad catches among what is drawn", async () => {
    const bad = [17, 5000, 9999];
    const analysis = analyse(await logOf(1, 10_000, bad));
    const meter = at(analysis.meters, 0);
    const { delivery, outliers } = meter;
    expect(delivery.input.catches).toBe(10_000);
    // Two of a fill are named, and that there are more.
    expect(outliers?.today.standingOut).toHaveLength(2);
    expect(outliers?.today.moreThanCanBeTold).toBe(true);
    for (const one of outliers?.today.standingOut ?? []) expect(bad).toContain(one);
    expect(outliers?.influence).toHaveLength(200);
    const found = new Set(outliers?.influence.map((one) => one.catch));
    for (const one of bad) expect(found).toContain(one);

    const suspects = outliers?.today.standingOut ?? [];
    const charts = [
      deliveryChart(delivery, words, suspects),
      deliveryPerTurnChart(delivery, words, suspects),
      ...(outliers === null
        ? []
        : [residualsChart(outliers, words), influenceChart(outliers, words)]),
    ];
    for (const chart of charts) {
      expect(mostMarks(chart)).toBeLessThanOrEqual(1005);
      expect(JSON.stringify(chart?.title)).toMatch(/of 10,000 catches/);
    }
    const { html } = await drawnIn(analysis);
    expect(html).toMatch(/<span class="chart-caption">[\d,]+ of 10,000 catches are drawn/);
    expect(html).not.toMatch(/\[object|\bNaN\b|\bundefined\b/);
    expect(html.length).toBeLessThan(10_000_000);
  }, 60_000);
});

describe("one meter of many fills", () => {
  it("is answered and drawn within seconds: 1,000 fills", async () => {
    const analysis = analyse(await logOf(1000, 3));
    expect(analysis.input.fills).toBe(1000);
    const { html, names } = await drawnIn(analysis);
    expect(names.some((name) => name.includes("drift"))).toBe(true);
    expect(html.length).toBeLessThan(20_000_000);
  }, 60_000);

  it("says that it draws some of its fills where all would run together: 2,500", async () => {
    const { drift, acrossFills, repeatability } = at(analyse(await logOf(2500, 2)).meters, 0);
    if (drift === null || acrossFills === null || repeatability === null)
      throw new Error("not answered");
    for (const chart of [
      driftChart(drift, words),
      acrossFillsChart(acrossFills, words),
      repeatabilityChart(repeatability, words),
    ]) {
      expect(mostMarks(chart)).toBeLessThanOrEqual(1100);
      expect(JSON.stringify(chart.title)).toMatch(/of 2,500 fills/);
    }
  }, 60_000);
});
