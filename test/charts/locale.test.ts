import { describe, expect, it } from "vitest";
import { chartLocale } from "../../src/charts/locale.ts";
import { baseSpec } from "../../src/charts/theme.ts";
import { renderSvg } from "../../src/report/svg.ts";
import type { Words } from "../../src/wording/words.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english, german } from "../support/words.ts";

const chart = ({ format: { marks } }: Words) => ({
  ...baseSpec({ title: "a", description: "b", marks }),
  data: {
    values: [
      { a: 1000, b: 0.1 },
      { a: 9000, b: 0.15 },
    ],
  },
  mark: "point",
  encoding: {
    x: { field: "a", type: "quantitative", scale: { zero: false } },
    y: { field: "b", type: "quantitative", scale: { zero: false } },
  },
});

describe("numbers on axes", () => {
  it("are written as the language writes them", async () => {
    const drawing = await renderSvg(chart(german()), { id: "c" });
    expect(drawing).toContain(">0,12<");
    expect(drawing).toContain(">5.000<");
    expect(await renderSvg(chart(english()), { id: "c" })).toContain(">0.12<");
  });

  it("need no locale in English, and one that the chart's schema knows in German", async () => {
    expect(chartLocale(english().format.marks)).toBeNull();
    expect(baseSpec({ title: "a", description: "b" }).config).not.toHaveProperty("locale");
    expect(await faultsOf(chart(german()))).toEqual([]);
  });
});
