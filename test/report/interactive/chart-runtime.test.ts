import { beforeAll, describe, expect, test } from "vitest";
import { drawCharts } from "../../../src/report/drawings.ts";
import { renderHtml } from "../../../src/report/html.ts";
import { seriousFindings } from "../../support/accessibility.ts";
import { browserTest, noFindings, type Visit } from "../../support/browser.ts";
import { sampleReport } from "../../support/sample-report.ts";
import { bundleChartRuntime } from "../../tools/bundle-chart-runtime.ts";

let runtime = "";
let html = "";

beforeAll(async () => {
  const report = sampleReport();
  runtime = await bundleChartRuntime();
  html = renderHtml(report, { drawings: await drawCharts(report), chartRuntime: runtime });
});

const alive = async ({ page }: Visit): Promise<void> => {
  await page.waitForFunction(() => document.querySelectorAll(".chart.alive").length === 2);
};

describe("the bundled runtime", () => {
  test("opens with the licences of what it contains", () => {
    const notices = runtime.slice(0, runtime.indexOf("*/"));
    for (const name of ["vega 6.4.0", "vega-lite 6.4.3", "vega-interpreter 2.3.2", "d3-scale "]) {
      expect(notices).toContain(name);
    }
    expect(notices).toContain("Redistribution and use in source and binary forms");
  });

  test("stays below one megabyte", () => {
    expect(runtime.length).toBeGreaterThan(500_000);
    expect(runtime.length).toBeLessThan(1_000_000);
  });
});

describe("the interactive edition", () => {
  browserTest(
    "draws its charts under its own policy, without a complaint or a request",
    async (open) => {
      const visit = await open(html);
      await alive(visit);
      expect(visit.findings).toEqual(noFindings);
      const widths = await visit.page
        .locator(".drawing.live svg")
        .evaluateAll((drawings) => drawings.map((each) => each.getBoundingClientRect().width));
      expect(widths).toHaveLength(2);
      for (const width of widths) expect(width).toBeGreaterThan(600);
      expect(await visit.page.locator(".drawing.wide").first().isVisible()).toBe(false);
    },
  );

  browserTest("answers the pointer with the numbers of a point, as words", async (open) => {
    const visit = await open(html);
    await alive(visit);
    await visit.page.locator("#chart-delivery-1 .live .mark-symbol path").nth(4).hover();
    const hint = visit.page.locator(".hint");
    await hint.waitFor({ state: "visible" });
    expect(await hint.locator("div").allInnerTexts()).toEqual([
      "Bin\nWheat bin",
      "Meter turns\n30",
      "Net mass (kg)\n12.42",
    ]);
    await visit.page.keyboard.press("Escape");
    expect(await hint.isVisible()).toBe(false);
    expect(visit.findings).toEqual(noFindings);
  });

  browserTest("draws anew when the window changes", async (open) => {
    const visit = await open(html);
    await alive(visit);
    await visit.page.setViewportSize({ width: 390, height: 800 });
    await visit.page.waitForFunction(() =>
      [...document.querySelectorAll(".live svg")].every(
        (svg) => svg.getBoundingClientRect().width < 380,
      ),
    );
    const { page } = visit;
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      390,
    );
    expect(visit.findings).toEqual(noFindings);
  });

  browserTest("has no serious finding of axe-core, light and dark", async (open) => {
    for (const colorScheme of ["light", "dark"] as const) {
      const visit = await open(html, { colorScheme });
      await alive(visit);
      expect(await seriousFindings(visit.page)).toEqual([]);
    }
  });

  browserTest("prints the static drawings", async (open) => {
    const visit = await open(html);
    await alive(visit);
    await visit.page.emulateMedia({ media: "print" });
    expect(await visit.page.locator(".drawing.live").first().isVisible()).toBe(false);
    expect(await visit.page.locator(".drawing.wide").first().isVisible()).toBe(true);
  });

  browserTest("keeps the static drawings when its script is tampered with", async (open) => {
    const visit = await open(
      html.replace("</script>\n</body>", ";globalThis.harm = true</script>\n</body>"),
    );
    expect(visit.findings.policyViolations.join()).toContain("script-src");
    expect(await visit.page.evaluate(() => "harm" in globalThis)).toBe(false);
    expect(await visit.page.locator(".drawing.wide").first().isVisible()).toBe(true);
  });
});
