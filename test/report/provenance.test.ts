import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { reportJson } from "../../src/report/json.ts";
import { renderMarkdown } from "../../src/report/markdown.ts";
import { baseName } from "../../src/report/provenance.ts";
import { reportDocument } from "../../src/report/report.ts";
import { aFill, aLog } from "../support/catches.ts";
import { wordsBy } from "../support/words.ts";

const folder = "/home/somebody/farm";
const log = { ...aLog(aFill([[20, 6], [20, 6.2]])), source: `${folder}/catches.xlsx` }; // biome-ignore format: two
const analysis = analyse(log, null, { level: 0.9 });
const inputs = {
  catches: [{ name: "catches.xlsx", sheet: "spring", sha256: "a".repeat(64) }],
  setup: { name: "setup.json", sheet: null, sha256: "b".repeat(64) },
  library: null,
};
const meta = { title: null, setupSource: `${folder}/setup.json`, version: "1.2.3", inputs };

describe("where a report comes from", () => {
  it.each([
    ["en", "short", "sheet spring"],
    ["de", "full", "Blatt spring"],
  ] as const)(
    "is told in %s, %s: files, sheet, hashes, options and version",
    (language, edition, sheet) => {
      const text = renderMarkdown(
        reportDocument(analysis, { ...meta, edition }, wordsBy[language]),
      );
      expect(text).toContain(`catches.xlsx, ${sheet}, SHA-256 ${"a".repeat(64)}`);
      expect(text).toContain(`setup.json, SHA-256 ${"b".repeat(64)}`);
      expect(text).toMatch(/level 0\.9; tolerance 0\.05; .*varianceLaw proportional/);
      expect(text).toContain("evencatch 1.2.3");
    },
  );

  it("names no folder, on no surface", () => {
    for (const edition of ["short", "full"] as const)
      expect(
        renderMarkdown(reportDocument(analysis, { ...meta, edition }, wordsBy.en)),
      ).not.toContain(folder);
    expect(reportJson(analysis, meta, wordsBy.en)).not.toContain(folder);
    expect(JSON.parse(reportJson(analysis, meta, wordsBy.en))).toMatchObject({
      source: "catches.xlsx",
      setup: "setup.json",
      inputs,
    });
  });

  it.each([
    ["a/b/c.csv", "c.csv"],
    ["C:\\farm\\c.csv", "c.csv"],
    ["c.csv", "c.csv"],
  ])("takes %s for %s", (path, name) => {
    expect(baseName(path)).toBe(name);
  });
});
