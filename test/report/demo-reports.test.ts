import { beforeAll, describe, expect, it } from "vitest";
import { seriousFindings } from "../support/accessibility.ts";
import { browserTest, noFindings } from "../support/browser.ts";
import { chartsIn, type DemoReport, demoReport } from "../support/demo-reports.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";

const names = ["season", "first-morning", "product-trial"] as const;
const reports = new Map<string, DemoReport>();
const report = (name: string) => present(reports.get(name));

beforeAll(async () => {
  for (const name of names) reports.set(name, await demoReport(name));
});

describe.each(names)("the report on %s", (name) => {
  it("has charts that are valid, compile without a warning and are left as they are", async () => {
    for (const chart of chartsIn(report(name)))
      expect(await faultsOf(chart.spec), chart.id).toEqual([]);
  });

  it("plots only numbers of its results: as they are, mirrored, in percent or in another unit", () => {
    const known = numbersOf(report(name).analysis)
      .map(Math.abs)
      .sort((a, b) => a - b);
    const strangers = chartsIn(report(name)).flatMap(({ id, spec }) =>
      plottedNumbers(spec)
        .filter((value) => !Number.isInteger(value))
        .filter((value) =>
          [1, 1 / 100, 1 / 1000].every((unit) => !holds(known, Math.abs(value) * unit)),
        )
        .map((value) => `${id}: ${value}`),
    );
    expect(strangers).toEqual([]);
  });

  it("has no NaN, no undefined and no empty sentence in words", () => {
    const { markdown } = report(name);
    expect(markdown).not.toMatch(/NaN|undefined|Infinity|\[object/);
    expect(markdown).not.toMatch(/ null[ .,]/);
    expect(markdown).not.toMatch(/\.\.\s|, \.|\( *\)/);
  });

  it("ends with the cautions of the work and gives way to manual, label and law", () => {
    const { markdown } = report(name);
    expect(markdown).toContain("Cautions of the work");
    expect(markdown.trimEnd()).toMatch(/operator's manual.*come first.*follow them\.\**$/s);
  });
});

for (const name of names)
  browserTest(
    `the report on ${name} opens without network, without complaint and for everybody`,
    async (open) => {
      for (const colorScheme of ["light", "dark"] as const) {
        const { page, findings } = await open(report(name).html, { colorScheme });
        await page.evaluate(() => {
          for (const details of document.querySelectorAll("details")) details.open = true;
        });
        expect(findings).toEqual(noFindings);
        expect(await seriousFindings(page)).toEqual([]);
        const drawn = await page.evaluate(
          () =>
            [
              ...document.querySelectorAll("svg[role=img] path, svg[role=graphics-document] path"),
            ].filter((path) => (path as SVGGraphicsElement).getBBox().width > 0).length,
        );
        expect(drawn).toBeGreaterThan(10);
      }
      const { page } = await open(report(name).html, { width: 390, height: 800 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        390,
      );
    },
  );

function plottedNumbers(value: unknown, insideData = false): number[] {
  if (typeof value === "number") return insideData ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((item) => plottedNumbers(item, insideData));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, item]) =>
    plottedNumbers(item, insideData || key === "values" || key === "datasets"),
  );
}

function numbersOf(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

/** Whether a sorted list holds a number, to eleven digits. */
function holds(sorted: readonly number[], value: number): boolean {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  const near = (found: number | undefined) =>
    found !== undefined && Math.abs(found - value) <= 1e-11 * Math.max(Math.abs(value), 1e-9);
  return near(sorted[low]) || near(sorted[low - 1]);
}
