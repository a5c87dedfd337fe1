import { describe, expect, it } from "vitest";
import { keyed, keyLayer, seriesLook } from "../../src/charts/key.ts";
import { darkCounterparts } from "../../src/charts/palette.ts";
import { baseSpec, type ChartRole, chartStyles } from "../../src/charts/theme.ts";
import { renderSvg } from "../../src/report/svg.ts";
import { faultsOf } from "../support/vega-lite.ts";

const points = {
  data: { values: [{ a: 1, b: 1 }] },
  mark: { type: "point", style: "observation" },
  encoding: { x: { field: "a", type: "quantitative" }, y: { field: "b", type: "quantitative" } },
};
const roles = (Object.keys(chartStyles) as ChartRole[]).filter((role) => role !== "remark");
const entries = roles.flatMap((role) => keyed(role, `words of ${role}`));
const spec = {
  ...baseSpec({ title: "One", description: "One thing." }),
  layer: [points, ...keyLayer(entries)],
};

/** The sample beside words: the last path before them. */
function sampleBefore(svg: string, words: string): string {
  return (
    svg
      .slice(0, svg.indexOf(`>${words}<`))
      .match(/<path [^>]*\/>/g)
      ?.at(-1) ?? ""
  );
}

describe("the key of a chart", () => {
  it("is sound, and shows every role in its colours", async () => {
    expect(await faultsOf(spec)).toEqual([]);
    const svg = await renderSvg(spec, { id: "one" });
    for (const role of roles) {
      const sample = sampleBefore(svg, `words of ${role}`);
      const { color } = chartStyles[role];
      expect(sample, role).toMatch(new RegExp(`(fill|stroke)="${color}([0-9a-f]{2})?"`));
    }
  });

  it("has only colours that a dark page has counterparts for", async () => {
    const svg = await renderSvg(spec, { id: "one" });
    const used = [...svg.matchAll(/(?:fill|stroke)="(#[0-9a-f]+)"/g)].map(([, color]) => color);
    const known = darkCounterparts();
    expect(used.length).toBeGreaterThan(roles.length);
    expect(used.filter((color) => !known.has(color ?? ""))).toEqual([]);
  });

  it("is no layer where there is nothing to be named", () => {
    expect(keyLayer([])).toEqual([]);
    expect(keyed("band", "a band", false)).toEqual([]);
  });

  it("tells six series apart, and begins again", () => {
    const looks = Array.from({ length: 6 }, (_, i) => seriesLook(i));
    expect(new Set(looks.map(({ shape }) => shape)).size).toBe(6);
    expect(new Set(looks.map(({ fill }) => fill.expr)).size).toBe(6);
    expect(seriesLook(6)).toEqual(looks[0]);
  });
});
