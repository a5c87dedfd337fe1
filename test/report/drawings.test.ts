import { describe, expect, test } from "vitest";
import { composedSpec, stackedSpec } from "../../src/charts/theme.ts";
import type { Chart, ReportDocument } from "../../src/report/document.ts";
import { drawCharts } from "../../src/report/drawings.ts";
import { renderHtml } from "../../src/report/html.ts";
import { frame } from "../../src/wording/en/frame.ts";
import { sampleDeliveryChart } from "../support/sample-charts.ts";

function documentOf(...charts: Chart[]): ReportDocument {
  const details = { kind: "details", summary: "More", blocks: charts } as const;
  return { title: "One", language: "en", words: frame, meta: [], blocks: [details] };
}

const chart = (id: string, spec: Chart["spec"]): Chart => ({
  kind: "chart",
  id,
  title: "Page title",
  description: "Page description.",
  spec,
});

describe("drawCharts", () => {
  test("draws each chart wide and narrow, under ids that differ, named as on the page", async () => {
    const spec = sampleDeliveryChart("Wheat bin");
    const drawings = await drawCharts(documentOf(chart("a", spec), chart("b", spec)));
    expect(Object.keys(drawings)).toEqual(["a", "b"]);
    expect(drawings.a?.wide).toMatch(
      /viewBox="0 0 720 \d+".*aria-label="Page title".*id="a_wide_1"/,
    );
    expect(drawings.a?.narrow).toMatch(/viewBox="0 0 360 \d+".*id="a_narrow_1"/);
    expect(drawings.b?.wide).toContain('id="b_wide_1"');
    expect(drawings.a?.wide).not.toContain(">Page title</text>");
  });

  test("draws views one above the other wide and narrow too", async () => {
    const view = {
      height: 50,
      layer: [
        {
          data: { values: [{ a: 1 }, { a: 2 }] },
          mark: "point",
          encoding: { x: { field: "a", type: "quantitative" } },
        },
      ],
    };
    const spec = stackedSpec({ title: "Two", description: "Two." }, [view, view]);
    const { a } = await drawCharts(documentOf(chart("a", spec)));
    const widthOf = (svg: string | null | undefined) =>
      Number(/viewBox="0 0 (\d+)/.exec(svg ?? "")?.[1]);
    expect(widthOf(a?.wide)).toBeLessThanOrEqual(720);
    expect(widthOf(a?.narrow)).toBeLessThanOrEqual(360);
    expect(widthOf(a?.narrow)).toBeGreaterThan(240);
  });

  test("draws a chart of several views once, and the page lets it scroll", async () => {
    const view = {
      data: { values: [{ a: 1 }] },
      mark: "point",
      encoding: { x: { field: "a", type: "quantitative" } },
    };
    const spec = { ...composedSpec({ title: "Two", description: "Two." }), hconcat: [view, view] };
    const document = documentOf(chart("a", spec));
    const drawings = await drawCharts(document);
    expect(drawings.a?.narrow).toBeNull();
    expect(renderHtml(document, { drawings })).toContain(
      '<div class="drawing scroll" role="region" tabindex="0" aria-label="Page title">',
    );
  });

  test("says which chart could not be drawn", async () => {
    await expect(drawCharts(documentOf(chart("a", { mark: 1 })))).rejects.toThrow(/Chart "a_wide"/);
  });
});
