import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { browserTest } from "../../support/browser.ts";
import { launchChromium } from "../../support/chromium.ts";
import { present } from "../../support/reference.ts";
import { sampleFiles, samples } from "../samples/samples.ts";
import { budgets, type Counted } from "./budgets.ts";
import { countPage } from "./measure.ts";

const kept: readonly Counted[] = JSON.parse(readFileSync("reports/counts.json", "utf8"));
const short = (name: string) =>
  present(kept.find((one) => one.name === name && one.edition === "short"));

describe.each(Object.entries(budgets))("the short report on %s", (name, budget) => {
  it("keeps to its words, screens of a phone and printed pages, by the counts that are kept", () => {
    const { words, screens, pages, firstAction } = short(name);
    expect(words).toBeLessThanOrEqual(budget.words);
    expect(screens).toBeLessThanOrEqual(budget.screens);
    expect(pages).toBeLessThanOrEqual(budget.pages);
    expect(firstAction).toBeLessThanOrEqual(844);
  });
});

describe("the counts that are kept", () => {
  it("tell every demo report in both editions", () => {
    expect(kept.map(({ name, edition }) => `${name} ${edition}`)).toEqual(
      expect.arrayContaining(samples.flatMap(({ name }) => [`${name} full`, `${name} short`])),
    );
  });

  it("tell the page in each language and both sheets, the cab's on one page of paper", () => {
    expect(
      kept.filter(({ name }) => name.startsWith("page")).map(({ edition }) => edition),
    ).toEqual(["en", "de"]);
    expect(kept.find(({ edition }) => edition === "cab-sheet.html")?.pages).toBe(1);
    expect(kept.find(({ edition }) => edition === "catch-sheet.html")).toBeDefined();
  });

  // Heights go with the fonts of a machine; words do not.
  browserTest("are what is counted now; `npm run counts` counts anew", async () => {
    const browser = await launchChromium();
    const now: Record<string, number> = {};
    for (const sample of samples) {
      const html = present((await sampleFiles(sample, "short"))["report.html"]);
      const about = { name: sample.name, edition: "short" };
      now[sample.name] = (await countPage(browser, html, about)).words;
    }
    await browser.close();
    expect(now).toEqual(Object.fromEntries(samples.map(({ name }) => [name, short(name).words])));
  });
});
