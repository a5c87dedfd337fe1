import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { fleetDeliveryChart, fleetFunnelChart, fleetSpreadChart } from "../../src/charts/fleet.ts";
import { rowsToDraw } from "../../src/charts/fleet-rows.ts";
import { renderSvg } from "../../src/report/svg.ts";
import { keyWords, layersIn } from "../support/chart-keys.ts";
import { inventedFleet, threePlanted } from "../support/fleets.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english, wordsBy } from "../support/words.ts";

const fleetOf = (plan: Parameters<typeof inventedFleet>[1]) =>
  present(analyse(inventedFleet(3, plan)).fleet);
const fleet = fleetOf({ planted: threePlanted });
const long = "</script><b>A very long & hostile name \"'` of a bin";
const hostile = fleetOf({
  meters: 12,
  products: [long],
  nameOf: (place) => `${long} ${place}`,
});

describe("the pictures of a fleet", () => {
  it.each(["en", "de"] as const)("are sound in %s", async (language) => {
    const words = wordsBy[language];
    const specs = [
      fleetDeliveryChart(fleet, "oats", words),
      fleetSpreadChart(fleet, "scatter", "peas", words),
      fleetSpreadChart(fleet, "spread", null, words),
      fleetFunnelChart(fleet, words),
      fleetDeliveryChart(hostile, long, words),
      fleetSpreadChart(hostile, "scatter", null, words),
    ];
    for (const spec of specs) expect(await faultsOf(present(spec))).toEqual([]);
  });

  it("show every meter of the product, the largest on top, and mark what is unlike the others", () => {
    const spec = JSON.stringify(fleetDeliveryChart(fleet, "oats", english()));
    const own = fleet.meters.filter(({ product }) => product === "oats");
    const largestFirst = own
      .toSorted((a, b) => (b.delivery?.ratio.value ?? 0) - (a.delivery?.ratio.value ?? 0))
      .map(({ bin }) => bin);
    expect(spec).toContain(`"domain":${JSON.stringify(largestFirst)}`);
    expect(largestFirst[0]).toBe("8");
    expect(spec).toContain('"style":"flagged"');
    expect(JSON.stringify(fleetDeliveryChart(fleet, "wheat", english()))).not.toContain(
      '"style":"flagged"',
    );
  });

  it("name points, intervals and lines in a key, and what a point says in words", () => {
    for (const words of Object.values(wordsBy)) {
      const { chart } = words.fleet;
      const ofDelivery = present(fleetDeliveryChart(fleet, "oats", words));
      const interval = words.charts.interval(0.95);
      expect(keyWords(ofDelivery)).toEqual([chart.meter, chart.unlike, interval, chart.level]);
      const ofScatter = present(fleetSpreadChart(fleet, "scatter", "wheat", words));
      expect(keyWords(ofScatter)).toEqual([chart.meter, interval, chart.typical]);
      const funnel = present(fleetFunnelChart(fleet, words));
      const { inner, outer } = chart.limits;
      expect(keyWords(funnel)).toEqual([chart.meter, chart.unlike, chart.level, inner, outer]);
      for (const spec of [ofDelivery, ofScatter, funnel]) {
        const layers = layersIn(spec);
        expect(layers.filter(({ mark }) => mark.type === "text")).toEqual([]);
        for (const { encoding, data } of layers.filter(({ mark }) => mark.type === "point")) {
          expect(JSON.stringify(encoding.description)).toContain(`${chart.bin}: `);
          expect(JSON.stringify(encoding.tooltip)).not.toContain("quantitative");
          expect(data.values[0]?.said).toMatch(/^[\d.,]+\s?%$/);
        }
      }
    }
  });

  it("draw nothing where there is nothing", () => {
    expect(fleetDeliveryChart(fleet, "no such product", english())).toBeNull();
    expect(fleetFunnelChart({ ...fleet, funnel: null }, english())).toBeNull();
  });

  it("have room on a phone for as many meters as there are: the marked and the outermost, which is said", async () => {
    const many = fleetOf({ meters: 80, products: ["wheat"], planted: threePlanted });
    for (const language of ["en", "de"] as const) {
      const spec = present(fleetSpreadChart(many, "scatter", "wheat", wordsBy[language]));
      expect(spec.description).toMatch(/(5[89]|60) \S+ 80/);
      const svg = await renderSvg(spec, { id: "narrow", width: 360 });
      const [, height] = /viewBox="0 0 360 (\d+)"/.exec(svg) ?? [];
      expect(Number(height)).toBeLessThan(1300);
    }
  });
});

describe("rows that are too many", () => {
  it("leave out the middle, never one that is marked", () => {
    const standing = present(fleet.meters[0]);
    const rows = Array.from({ length: 100 }, (_, i) => ({
      standing,
      value: i,
      interval: null,
      unlike: i === 50 || i === 99,
    }));
    const drawn = rowsToDraw(rows).map(({ value }) => value);
    expect(drawn).toContain(50);
    expect(drawn.length).toBeLessThanOrEqual(60);
    expect(drawn[0]).toBe(99);
    expect(drawn.at(-1)).toBe(0);
    expect(rowsToDraw(rows.slice(0, 60))).toHaveLength(60);
  });
});
