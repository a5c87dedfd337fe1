import { beforeAll, describe, expect, test } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import type { Block, ReportDocument } from "../../src/report/document.ts";
import { type Drawings, drawCharts } from "../../src/report/drawings.ts";
import { renderHtml } from "../../src/report/html.ts";
import { frame } from "../../src/wording/en/frame.ts";
import { seriousFindings } from "../support/accessibility.ts";
import { browserTest, noFindings } from "../support/browser.ts";
import { sampleReport } from "../support/sample-report.ts";

const report = sampleReport();
let drawings: Drawings = {};
let html = "";

beforeAll(async () => {
  drawings = await drawCharts(report, {
    onWarning: (message) => {
      throw new Error(message);
    },
  });
  html = renderHtml(report, { drawings });
});

function documentOf(...blocks: Block[]): ReportDocument {
  return { title: "One", language: "en", words: frame, meta: [], blocks };
}

describe("renderHtml", () => {
  test("writes the same bytes each time", () => {
    expect(renderHtml(report, { drawings })).toBe(html);
  });

  test("names no address but that of the chart grammar", () => {
    const addresses = new Set(html.match(/\w+:\/\/[^\s"'<>)]*/g));
    expect([...addresses]).toEqual(["https://vega.github.io/schema/vega-lite/v6.json"]);
  });

  test("has no style attribute, no event attribute and, in the static edition, no script to run", () => {
    expect(html).not.toMatch(/<[^>]*\s(style|on\w+)=/);
    expect([...html.matchAll(/<script([^>]*)>/g)].map((match) => match[1])).toEqual([
      ' type="application/json"',
      ' type="application/json"',
    ]);
  });

  test("carries each specification unharmed", () => {
    const [first] = [...html.matchAll(/<script type="application\/json">(.*?)<\/script>/g)];
    const chart = report.blocks.flatMap((block) => (block.kind === "section" ? block.blocks : []));
    const specs = chart.filter((block) => block.kind === "chart").map((block) => block.spec);
    expect(JSON.parse(first?.[1] ?? "")).toEqual(specs[0]);
  });

  test("refuses a chart that was not drawn", () => {
    expect(() => renderHtml(report, { drawings: {} })).toThrow(/"drawings".*"chart-delivery-1"/);
  });

  test("refuses ids that are repeated or cannot be one", () => {
    const section = (id: string): Block => ({ kind: "section", id, heading: "", blocks: [] });
    const write = (...ids: string[]) => renderHtml(documentOf(...ids.map(section)), { drawings });
    expect(() => write("one", "one")).toThrow(OptionError);
    expect(() => write("one", "one")).toThrow(/unique/);
    for (const id of ["One", "1", "a b", 'a"b', "a_b", ""])
      expect(() => write(id)).toThrow(OptionError);
    expect(write("one", "one-2")).toContain('<section id="one-2"');
  });

  test("says so where a value is not known", () => {
    const unknown = documentOf({
      kind: "key-figures",
      label: "Bins",
      cards: [{ title: "Starter bin", value: null, unit: "kg/turn" }],
    });
    expect(renderHtml(unknown, { drawings })).toContain('<p class="figure unknown">not known</p>');
  });

  test("nests headings by section, never skipping a level", () => {
    const levels = [...html.matchAll(/<h([1-6])/g)].map((match) => Number(match[1]));
    expect(levels[0]).toBe(1);
    for (const [i, level] of levels.entries()) {
      if (i > 0) expect(level).toBeLessThanOrEqual((levels[i - 1] ?? 0) + 1);
    }
  });
});

describe("names that look like markup", () => {
  const name = `<script>alert(1)</script>|*_`;

  browserTest("do no harm", async (open) => {
    const hostile = sampleReport(name);
    const page = renderHtml(hostile, { drawings: await drawCharts(hostile) });
    expect(page.match(/<script/g)).toHaveLength(2);
    expect(page).not.toMatch(/<script(?! type="application\/json")/);
    const { page: tab, findings } = await open(page);
    expect(findings).toEqual(noFindings);
    expect(await tab.locator(".card h3").first().textContent()).toBe(name);
    expect(await tab.locator("figure.chart .chart-title").first().textContent()).toContain(name);
    const specs = await tab.locator('script[type="application/json"]').allTextContents();
    expect(specs).toHaveLength(2);
    expect(JSON.parse(specs[0] ?? "").title).toContain(name);
    expect(specs.join("")).not.toContain("<");
  });
});

describe("the page in a browser without network", () => {
  for (const colorScheme of ["light", "dark"] as const) {
    browserTest(`opens without a complaint or a request, ${colorScheme}`, async (open) => {
      const { findings } = await open(html, { colorScheme });
      expect(findings).toEqual(noFindings);
    });

    browserTest(`has no serious finding of axe-core, ${colorScheme}`, async (open) => {
      const { page } = await open(html, { colorScheme });
      await page.evaluate(() => {
        for (const folded of document.querySelectorAll("details")) folded.open = true;
      });
      expect(await seriousFindings(page)).toEqual([]);
    });
  }

  browserTest("has no serious finding of axe-core on a phone", async (open) => {
    const { page } = await open(html, { width: 390, height: 800 });
    expect(await seriousFindings(page)).toEqual([]);
  });

  browserTest("shows every chart with lines, points and words of some size", async (open) => {
    const { page } = await open(html);
    const boxes = await page.evaluate(() =>
      [...document.querySelectorAll(".drawing.wide > svg")].map((svg) => {
        const widest = (selector: string) =>
          Math.max(
            ...[...svg.querySelectorAll(selector)].map(
              (part) => part.getBoundingClientRect().width,
            ),
          );
        return [svg.getBoundingClientRect().width, widest("path[stroke]"), widest("text")];
      }),
    );
    expect(boxes).toHaveLength(2);
    for (const [drawing = 0, line = 0, text = 0] of boxes) {
      expect(drawing).toBeGreaterThan(600);
      expect(line).toBeGreaterThan(400);
      expect(text).toBeGreaterThan(20);
    }
  });

  browserTest("repaints charts for a dark page", async (open) => {
    const strokes = async (colorScheme: "light" | "dark") => {
      const { page } = await open(html, { colorScheme });
      const line = page.locator('.drawing.wide [stroke="#0d5c75"]').first();
      return await line.evaluate((element) => getComputedStyle(element).stroke);
    };
    expect(await strokes("light")).toBe("rgb(13, 92, 117)");
    expect(await strokes("dark")).toBe("rgb(108, 195, 220)");
  });

  browserTest(
    "fits a phone: tables scroll in their own region, the page does not",
    async (open) => {
      const { page } = await open(html, { width: 390, height: 800 });
      const widths = await page.evaluate(() => ({
        page: document.documentElement.scrollWidth,
        window: window.innerWidth,
        regions: [...document.querySelectorAll(".table .scroll")].map((region) => [
          region.scrollWidth > region.clientWidth,
          (region as HTMLElement).tabIndex,
        ]),
      }));
      expect(widths.page).toBeLessThanOrEqual(widths.window);
      expect(widths.regions).toEqual([
        [true, 0],
        [true, 0],
      ]);
    },
  );

  browserTest("gives a phone drawings with words as large as on a wide screen", async (open) => {
    const { page } = await open(html, { width: 390, height: 800 });
    expect(await page.locator(".drawing.wide").first().isVisible()).toBe(false);
    const narrow = page.locator(".drawing.narrow").first();
    expect(await narrow.isVisible()).toBe(true);
    const height = await narrow
      .locator("text")
      .first()
      .evaluate((text) => text.getBoundingClientRect().height);
    expect(height).toBeGreaterThan(11);
  });

  browserTest("tells who hears it what each chart shows", async (open) => {
    const { page } = await open(html);
    const image = page.getByRole("img", { name: "Delivery per turn over the season" });
    expect(await image.count()).toBe(1);
    const described = await image.getAttribute("aria-describedby");
    expect(await page.locator(`[id="${described}"]`).textContent()).toContain(
      "pea rises from 0.388 to 0.413 kg/turn",
    );
  });

  browserTest("can be walked by landmarks, headings and the keyboard", async (open) => {
    const { page } = await open(html);
    for (const role of ["banner", "navigation", "main", "contentinfo"] as const) {
      expect(await page.getByRole(role).count()).toBe(1);
    }
    expect(await page.getByRole("table", { name: "Catches of fill 9, Wheat bin" }).count()).toBe(1);
    expect(await page.getByRole("rowheader", { name: "1 (row 33)" }).count()).toBe(1);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("report_content");
  });

  browserTest("links only to what is there", async (open) => {
    const { page } = await open(html);
    const missing = await page.evaluate(() =>
      [...document.querySelectorAll("a")]
        .map((link) => link.getAttribute("href") ?? "")
        .filter((href) => document.getElementById(href.slice(1)) === null),
    );
    expect(missing).toEqual([]);
  });
});

describe("the page on paper", () => {
  for (const format of ["A4", "Letter"] as const) {
    browserTest(`takes a handful of ${format} pages`, async (open) => {
      const { page, findings } = await open(html);
      const pdf = await page.pdf({ format });
      const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length;
      expect(pages).toBeGreaterThanOrEqual(3);
      expect(pages).toBeLessThanOrEqual(5);
      expect(findings).toEqual(noFindings);
    });
  }

  browserTest("is light and unfolded whatever the screen shows", async (open) => {
    const { page } = await open(html, { colorScheme: "dark" });
    const heightOfFolded = () =>
      page.locator("#method-rows .details").evaluate((part) => part.getBoundingClientRect().height);
    expect(await page.evaluate(() => getComputedStyle(document.body).color)).toBe(
      "rgb(228, 234, 232)",
    );
    await page.emulateMedia({ media: "print" });
    expect(await page.evaluate(() => getComputedStyle(document.body).color)).toBe(
      "rgb(29, 42, 44)",
    );
    expect(await heightOfFolded()).toBeGreaterThan(50);
    expect(await page.locator("nav").isVisible()).toBe(false);
  });
});
