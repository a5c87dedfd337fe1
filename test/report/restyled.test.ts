import { describe, expect, it } from "vitest";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { lightPalette } from "../../src/charts/palette.ts";
import { theme, themeOf } from "../../src/charts/theme.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { acrossFillsChart, catchesNeededChart, costChart } from "../../src/index.ts";
import { fitModel } from "../../src/model/model.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import { restyled } from "../../src/report/restyled.ts";
import { renderSvg } from "../../src/report/svg.ts";
import { aLog, needed, priced } from "../support/planning-answers.ts";
import { present } from "../support/reference.ts";
import { english } from "../support/words.ts";

const words = english();
const log = aLog(6, 2);
const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const meter = present(fitModel(log, options).meters[0]);
const fills = acrossFillsChart(acrossFills(meter, options), words);
const money = present(costChart(priced(log), words));
const stacked = catchesNeededChart(needed(log), words, priced(log));
const draw = (spec: ChartSpec) => renderSvg(spec, { id: "c" });

describe("a chart in another theme", () => {
  it.each([
    ["fills", fills],
    ["money", money],
    ["two views", stacked],
  ])("has no colour of its own, and its data once: %s", (_, spec) => {
    const { datasets: __, ...bare } = restyled(spec, { theme: null });
    expect(bare).not.toHaveProperty("config");
    expect(JSON.stringify(bare)).not.toMatch(/#[0-9a-f]{6}/);
    expect(JSON.stringify(bare)).not.toContain('"values":[{');
  });

  it("is drawn alike with the theme given back", async () => {
    for (const spec of [fills, money])
      expect(await draw({ ...restyled(spec, { theme: null }), config: theme })).toBe(
        await draw(spec),
      );
  });

  it("takes marks and key in the colours of the theme it is given", async () => {
    const own = themeOf({ estimate: "#123456", nextBand: "#654321" }, ["#abcdef", "#fedcba"]);
    const svg = await draw(restyled(fills, { theme: own }));
    // The line of the mean and its sample.
    expect(svg.match(/"#123456"/g)?.length).toBeGreaterThan(1);
    // The band, and its sample as it shines through.
    expect(svg).toContain('"#654321"');
    expect(svg).toContain('"#65432138"');
    expect(svg).not.toContain(lightPalette.estimate);
    const bars = await draw(restyled(money, { theme: own }));
    for (const color of ["#abcdef", "#fedcba"])
      expect(bars.split(`"${color}"`).length).toBeGreaterThan(2);
  });

  it("keeps the decimal mark of its words", () => {
    const locale = { number: { decimal: "," } };
    const german = { ...fills, config: { ...theme, locale } };
    expect(restyled(german, { theme: null }).config).toEqual({ locale });
    expect(restyled(german, { theme: { font: "serif" } }).config).toEqual({
      font: "serif",
      locale,
    });
  });
});

describe("a chart in another width", () => {
  it("is as wide as asked, or as what it stands in", async () => {
    expect(await draw(restyled(fills, { width: 400 }))).toContain('viewBox="0 0 400 ');
    const fluid = restyled(fills, { width: "container" });
    expect(fluid.width).toBe("container");
    expect(fluid.autosize).toEqual({ type: "fit-x", contains: "padding" });
    // Views one above the other are as wide as their axes leave them, to a few pixels.
    expect(await draw(restyled(stacked, { width: 500 }))).toMatch(/viewBox="0 0 (49\d|500) /);
  });

  it("cannot follow its container where views stand one above the other", () => {
    expect(() => restyled(stacked, { width: "container" })).toThrow(OptionError);
  });

  it("is left as it is where nothing is asked", () => {
    expect(restyled(fills, {})).toEqual(fills);
  });
});
