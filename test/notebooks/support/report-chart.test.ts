import { expect, it } from "vitest";
import { chartIn } from "../../../notebooks/support/report-chart.ts";
import { analyse, reportDocument } from "../../../src/index.ts";
import { readCatchesFile } from "../../../src/node.ts";
import { demo } from "../../support/command.ts";
import { english } from "../../support/words.ts";

const analysis = analyse(await readCatchesFile(demo("season/catches.csv")));
const meta = { title: null, setupSource: null, version: "0.0.0" };
const report = reportDocument(analysis, meta, english());

it("a chart is found however deep it lies in the report", () => {
  expect(chartIn(report, "bin-2-pea--drift-chart").$schema).toContain("vega-lite");
});

it("one that is not there is refused, with those that are", () => {
  expect(() => chartIn(report, "fleet-funnel-chart")).toThrow("bin-2-pea--drift-chart");
});
