import { describe, expect, test } from "vitest";
import { baseSpec } from "../../src/charts/theme.ts";
import { DrawingError } from "../../src/errors/errors.ts";
import { renderSvg, renderSvgs } from "../../src/report/svg.ts";
import { sampleDeliveryChart, sampleFillsChart } from "../support/sample-charts.ts";

const spec = sampleDeliveryChart("Wheat bin");

describe("renderSvg", () => {
  test("gives the same text for the same spec, whatever was drawn in between", async () => {
    const first = await renderSvg(spec, { id: "one" });
    await renderSvg(sampleFillsChart(), { id: "other" });
    expect(await renderSvg(spec, { id: "one" })).toBe(first);
  });

  test("begins every id with its own and points only at these", async () => {
    const svg = await renderSvg(spec, { id: "one" });
    const ids = [...svg.matchAll(/\sid="([^"]*)"/g)].map((match) => match[1]);
    const links = [...svg.matchAll(/url\(#([^)]*)\)/g)].map((match) => match[1]);
    expect(links.length).toBeGreaterThan(0);
    expect(ids).toEqual(expect.arrayContaining(links));
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^one_/);
  });

  test("names and describes itself once, at the root", async () => {
    const svg = await renderSvg(spec, { id: "one" });
    expect(svg).toMatch(
      /^<svg [^>]*role="img" aria-label="Net mass against turns, Wheat bin" aria-describedby="one_description"><desc id="one_description">Six catches /,
    );
    expect(svg.match(/\srole=/g)).toHaveLength(1);
    expect(svg.match(/\saria-/g)).toHaveLength(2);
  });

  test("scales with its place and has no style attribute, class or font to fetch", async () => {
    const svg = await renderSvg(spec, { id: "one" });
    expect(svg).toMatch(/^<svg [^>]*viewBox="0 0 720 \d+" width="100%"/);
    expect(svg).not.toMatch(/\s(style|class|height="340")[=\s]/);
    expect(svg).not.toMatch(/font-face|href=/);
  });

  test("drops a blend mode, which only a style attribute could carry", async () => {
    const layered = {
      ...spec,
      layer: [{ mark: { type: "rule", blend: "multiply" }, encoding: { y: { datum: 1 } } }],
    };
    expect(await renderSvg(layered, { id: "one" })).not.toContain("style");
  });

  test("has no ground of its own unless asked for one", async () => {
    expect(await renderSvg(spec, { id: "one" })).not.toMatch(/<desc[^>]*>[^<]*<\/desc><rect/);
    expect(await renderSvg(spec, { id: "one", background: "#ffffff" })).toMatch(
      /<\/desc><rect width="720" height="\d+" fill="#ffffff"\/>/,
    );
  });

  test("can leave the title to the page", async () => {
    const title = ">Net mass against turns, Wheat bin</text>";
    expect(await renderSvg(spec, { id: "one" })).toContain(title);
    const untitled = await renderSvg(spec, { id: "one", title: false });
    expect(untitled).not.toContain(title);
    expect(untitled).toContain('aria-label="Net mass against turns, Wheat bin"');
  });

  test("gives single points a hint that needs no script", async () => {
    const svg = await renderSvg(spec, { id: "one" });
    expect(
      svg.match(
        /<path [^>]*><title>Meter turns: 10; Net mass \(kg\): 4.05; Bin: Wheat bin<\/title><\/path>/g,
      ),
    ).toHaveLength(1);
    expect(svg.match(/<title>/g)).toHaveLength(6);
  });

  test("breaks a legend into columns where one row would be cut off", async () => {
    const rightmost = (svg: string, labels: readonly string[]) =>
      Math.max(...labels.map((label) => placeOf(svg, label)));
    const labels = ["Wheat bin", "Pea bin", "Starter bin"];
    const wide = await renderSvg(sampleFillsChart(), { id: "one" });
    const narrow = await renderSvg(sampleFillsChart(), { id: "one", width: 330 });
    expect(narrow).toMatch(/viewBox="0 0 330 \d+"/);
    expect(rowsOf(wide, labels)).toBe(1);
    expect(rowsOf(narrow, labels)).toBe(2);
    expect(rightmost(narrow, labels)).toBeLessThan(330 - 60);
  });

  test("leaves the plot its width where a long legend had to be laid out again, and wide or narrow first is the same", async () => {
    const named = JSON.stringify(sampleFillsChart());
    const long = JSON.parse(named.replaceAll("Starter bin", "Starter fertiliser, behind the seed"));
    const narrow = await renderSvg(long, { id: "one", width: 330 });
    const [, width = "0"] = /<path d="M0,0h(\d+)v/.exec(narrow) ?? [];
    expect(Number(width)).toBeGreaterThan(200);
    const further = [{ id: "one", width: 330 }];
    const [, afterWide] = await renderSvgs(long, { id: "one", width: 720 }, further);
    expect(afterWide).toBe(narrow);
  });

  test("shows markup in a name as words", async () => {
    const name = `<script>alert("1")</script>|*_`;
    const hostile = {
      ...baseSpec({ title: name, description: name }),
      data: { values: [{ name }] },
      mark: "text",
      encoding: { text: { field: "name" } },
    };
    const svg = await renderSvg(hostile, { id: "one" });
    expect(svg).not.toMatch(/<script/i);
    expect(svg.match(/&lt;script&gt;alert/g)?.length).toBeGreaterThanOrEqual(4);
  });

  test("does not change the spec", async () => {
    const before = structuredClone(spec);
    await renderSvg(spec, { id: "one", title: false, width: 300 });
    expect(spec).toEqual(before);
  });

  test("passes on what vega-lite warns of", async () => {
    const warnings: string[] = [];
    const odd = {
      ...spec,
      layer: [{ mark: "bar", encoding: { shape: { field: "a", type: "nominal" } } }],
    };
    await renderSvg(odd, { id: "one", onWarning: (message) => warnings.push(message) });
    expect(warnings.join("\n")).toContain("shape dropped");
  });

  test("refuses data from elsewhere", async () => {
    const remote = {
      ...baseSpec({ title: "Remote", description: "Remote." }),
      data: { url: "https://example.org/catches.csv" },
      mark: "point",
    };
    await expect(renderSvg(remote, { id: "one" })).rejects.toThrow(DrawingError);
    await expect(renderSvg(remote, { id: "one" })).rejects.toThrow(
      /"one" could not be drawn.*not loaded/,
    );
  });

  test("refuses what is no chart", async () => {
    await expect(renderSvg({ title: "nothing" }, { id: "one" })).rejects.toThrow(DrawingError);
  });
});

/** Horizontal place of a legend label: the sum of the translations around it. */
function placeOf(svg: string, label: string): number {
  return translationOf(svg, label, 0);
}

function rowsOf(svg: string, labels: readonly string[]): number {
  // Symbols of different shape move their label by a pixel or two.
  return new Set(labels.map((label) => Math.round(translationOf(svg, label, 1) / 10))).size;
}

function translationOf(svg: string, label: string, axis: 0 | 1): number {
  const open: number[] = [];
  for (const token of svg.match(/<[^>]*>|[^<]+/g) ?? []) {
    if (token === label) return open.reduce((sum, shift) => sum + shift, 0);
    if (token.startsWith("</")) open.pop();
    else if (token.startsWith("<") && !token.endsWith("/>")) {
      const shift = /translate\((-?[\d.]+),(-?[\d.]+)\)/.exec(token)?.[axis + 1];
      open.push(Number(shift ?? 0));
    }
  }
  throw new Error(`no label ${label}`);
}
