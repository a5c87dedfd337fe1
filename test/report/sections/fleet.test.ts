import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { OptionError } from "../../../src/errors/errors.ts";
import type { Section } from "../../../src/report/document.ts";
import { editions } from "../../../src/report/editions/edition.ts";
import { reportFiles } from "../../../src/report/files.ts";
import { reportJson } from "../../../src/report/json.ts";
import { renderMarkdown } from "../../../src/report/markdown.ts";
import { reportDocument } from "../../../src/report/report.ts";
import { inventedFleet, threePlanted } from "../../support/fleets.ts";
import { present } from "../../support/reference.ts";
import { english, wordsBy } from "../../support/words.ts";

const meta = { title: null, setupSource: null, version: "0" };
const analysis = analyse(inventedFleet(3, { planted: threePlanted }));
const fleet = present(analysis.fleet);

function sectionsOf(more: object = {}): readonly string[] {
  return reportDocument(analysis, { ...meta, ...more }, english())
    .blocks.filter((block): block is Section => block.kind === "section")
    .map(({ id }) => id);
}

describe.each(editions)("the %s report of a fleet", (edition) => {
  it("opens with the strip about safety and all meters together", () => {
    expect(sectionsOf({ edition }).slice(0, 3)).toEqual(["safety-strip", "fleet", "summary"]);
  });

  it("has chapters of those that need attention, and of those asked for", () => {
    const chapters = (more: object = {}) =>
      sectionsOf({ edition, ...more }).filter((one) => one.startsWith("bin-"));
    const needing = fleet.meters.filter(({ why }) => why.length > 0);
    expect(chapters()).toHaveLength(needing.length);
    expect(needing.length).toBeLessThan(10);
    expect(chapters()).toEqual(
      expect.arrayContaining(["bin-8-oats", "bin-23-peas", "bin-42-barley"]),
    );
    expect(chapters({ bins: ["1", "2"] })).toHaveLength(needing.length + 2);
  });

  it("refuses a bin that nobody caught", () => {
    expect(() => sectionsOf({ edition, bins: ["no such bin"] })).toThrow(OptionError);
  });
});

describe.each(["en", "de"] as const)("what is said of a fleet in %s", (language) => {
  const words = wordsBy[language];
  const document = reportDocument(analysis, meta, words);
  const text = renderMarkdown(document);

  it("counts, names with a link to the chapter, states the false discoveries, and says what is left out", () => {
    expect(text).toContain(words.fleet.counts(fleet));
    expect(JSON.stringify(document)).toContain(
      JSON.stringify({
        kind: "reference",
        to: "bin-8-oats",
        text: words.fleet.who({ bin: "8", product: "oats" }),
      }),
    );
    expect(text).toContain(words.fleet.falseDiscoveries(fleet).slice(0, 30));
    expect(words.fleet.falseDiscoveries(fleet)).toMatch(/180[\s\S]*3[\s\S]*5.%/);
    const shown = fleet.counts.attention;
    expect(words.fleet.chapters(shown, fleet)).toContain(`${60 - shown}`);
  });
});

describe("a fleet without faults", () => {
  it("says that none needs attention, and that all are in the table", () => {
    const clean = analyse(inventedFleet(7, { meters: 12, products: ["wheat"], fills: () => 3 }));
    const text = renderMarkdown(reportDocument(clean, meta, english()));
    if (present(clean.fleet).counts.attention > 0) throw new Error("choose another seed");
    expect(text).toContain("None of them needs attention");
    expect(text).toContain("No meter has a chapter");
    expect(text).not.toContain("At a glance");
  });
});

describe("hostile names in a fleet", () => {
  it("stay words in every file", async () => {
    const name = "</script><img src=x onerror=alert(1)>|[a](javascript:1)";
    const hostile = analyse(
      inventedFleet(3, {
        meters: 10,
        products: [name],
        planted: { 2: { delivery: 2 } },
        nameOf: (place) => `${name} ${place}`,
        beside: (place) => ({ operator: place < 5 ? name : "Ben", machine: name }),
      }),
    );
    const files = await reportFiles(hostile, meta, english());
    expect(files["report.html"]).not.toContain("<img");
    expect(files["report.html"]).not.toMatch(/<script(?! type="application\/json")/);
    expect(files["report.md"]).not.toMatch(/[^\\]\]\(javascript/);
    expect(files["report.md"]).not.toContain("<img");
  });
});

describe("the JSON of a fleet", () => {
  it("carries all of it", () => {
    const { fleet: carried } = JSON.parse(reportJson(analysis, meta, english()));
    expect(carried).toEqual(JSON.parse(JSON.stringify(fleet)));
  });
});
