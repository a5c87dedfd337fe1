import { describe, expect, test } from "vitest";
import { lightPalette, lightSeries } from "../../src/charts/palette.ts";
import { baseSpec, composedSpec, theme } from "../../src/charts/theme.ts";
import { renderSvg } from "../../src/report/svg.ts";
import { sampleDeliveryChart, sampleFillsChart } from "../support/sample-charts.ts";
import { faultsOf } from "../support/vega-lite.ts";

const frame = { title: "One", description: "One thing." };
const data = { values: [{ a: 1, b: 2 }] };
const encoding = {
  x: { field: "a", type: "quantitative" },
  y: { field: "b", type: "quantitative" },
};

async function drawn(mark: object): Promise<string> {
  return await renderSvg({ ...baseSpec(frame), data, mark, encoding }, { id: "c" });
}

describe("baseSpec", () => {
  test.each([
    ["bands, a line and points", sampleDeliveryChart("Front bin")],
    ["series with a legend", sampleFillsChart()],
  ])("makes a sound chart of %s", async (_, spec) => {
    expect(await faultsOf(spec)).toEqual([]);
  });

  test("makes a sound chart of several views when composed", async () => {
    const view = { data, mark: "point", encoding };
    expect(await faultsOf({ ...composedSpec(frame), hconcat: [view, view] })).toEqual([]);
  });

  test("fixes the outer width, whatever the axes need", async () => {
    const spec = {
      ...baseSpec({ ...frame, width: 500, height: 200 }),
      data,
      mark: "point",
      encoding,
    };
    expect(await renderSvg(spec, { id: "c" })).toMatch(/viewBox="0 0 500 \d+"/);
  });

  test("is plain data", () => {
    const spec = baseSpec(frame);
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
  });
});

describe("the named styles", () => {
  test.each([
    ["band", "area", `fill="${lightPalette.band}"`],
    ["next-band", "area", `fill="${lightPalette.nextBand}"`],
    ["fan-wide", "bar", `fill="${lightPalette.nextBand}"`],
    ["fan-middle", "bar", `fill="${lightPalette.nextBand}"`],
    ["fan-narrow", "bar", `fill="${lightPalette.nextBand}"`],
    ["next-edge", "line", `stroke="${lightPalette.nextBand}"`],
    ["estimate", "line", `stroke="${lightPalette.estimate}"`],
    ["observation", "point", `fill="${lightPalette.point}"`],
    ["flagged", "point", `stroke="${lightPalette.flagged}"`],
    ["earlier", "point", `stroke="${lightPalette.earlier}"`],
    ["interval", "rule", `stroke="${lightPalette.earlier}"`],
    ["reference", "rule", `stroke="${lightPalette.reference}"`],
    ["remark", "text", `fill="${lightPalette.muted}"`],
    ["line-1", "line", `stroke="${lightSeries[0]}"`],
    ["line-2", "line", `stroke="${lightSeries[1]}"`],
    ["line-3", "line", `stroke="${lightSeries[2]}"`],
    ["line-4", "line", `stroke="${lightSeries[3]}"`],
  ])("%s gives a %s its colour", async (style, type, attribute) => {
    const svg = await drawn({ type, style, ...(type === "text" ? { text: "word" } : {}) });
    expect(svg).toContain(attribute);
  });

  test("are all tried above", () => {
    expect(Object.keys(theme.style ?? {})).toHaveLength(17);
  });

  test("tell a doubted point from a good one by shape as well", async () => {
    const outline = (svg: string) => /<path transform[^>]* d="([^"]*)"/.exec(svg)?.[1];
    const good = outline(await drawn({ type: "point", style: "observation" }));
    const doubted = outline(await drawn({ type: "point", style: "flagged" }));
    expect(good).toContain("A");
    expect(doubted).toMatch(/^M[^A]*Z$/);
  });
});
