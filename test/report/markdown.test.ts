import { describe, expect, test } from "vitest";
import type { Block, ReportDocument } from "../../src/report/document.ts";
import { renderMarkdown } from "../../src/report/markdown.ts";
import { frame } from "../../src/wording/en/frame.ts";
import { sampleReport } from "../support/sample-report.ts";

function documentOf(...blocks: Block[]): ReportDocument {
  return { title: "One", language: "en", words: frame, meta: [], blocks };
}

describe("renderMarkdown", () => {
  test("writes the sample report as it is stored", async () => {
    await expect(renderMarkdown(sampleReport())).toMatchFileSnapshot("golden/sample-report.md");
  });

  test("shows a name that looks like markup as words, everywhere", () => {
    const text = renderMarkdown(sampleReport("<script>alert(1)</script>|*_"));
    expect(text).not.toContain("<script");
    const escaped = String.raw`&lt;script&gt;alert(1)&lt;/script&gt;\|\*\_`;
    expect(text.split("alert(1)")).toHaveLength(text.split(escaped).length);
    expect(text).toContain(`### ${escaped} · Spring wheat, fill 9`);
  });

  test("keeps every row of a table in as many cells as it has columns", () => {
    const table = renderMarkdown(
      documentOf({
        kind: "table",
        id: "one",
        caption: "One",
        columns: [{ heading: "a|b" }, { heading: "c", align: "end" }],
        rows: [{ cells: ["x|y", [{ kind: "code", text: "p|q`" }]] }, { cells: ["line\nbreak"] }],
      }),
    );
    const rows = table.split("\n").filter((line) => line.startsWith("|"));
    expect(rows).toHaveLength(4);
    for (const row of rows) expect(row.match(/(?<!\\)\|/g)).toHaveLength(3);
  });

  test("names a chart's file and tells what it shows", () => {
    const text = renderMarkdown(
      documentOf({
        kind: "chart",
        id: "one",
        title: "Mass",
        description: "It rises.",
        spec: {},
        specFile: "charts/one.vl.json",
      }),
    );
    expect(text).toContain(
      "**Chart: Mass.** It rises. (specification: [charts/one.vl.json](<charts/one.vl.json>))",
    );
  });

  test("says what to do before any figure", () => {
    const action = { tone: "fine", words: "Set 0.42 kg/turn" } as const;
    const card = { title: "Starter bin", action, value: "0.42", unit: "kg/turn" };
    const text = renderMarkdown(documentOf({ kind: "key-figures", label: "Bins", cards: [card] }));
    expect(text).toContain("## Starter bin\n\n**Set 0.42 kg/turn**\n\n**0.42 kg/turn**\n");
  });

  test("says so where a value is not known", () => {
    const card = { title: "Starter bin", value: null, unit: "kg/turn" };
    const text = renderMarkdown(documentOf({ kind: "key-figures", label: "Bins", cards: [card] }));
    expect(text).toContain("### Starter bin\n\n**not known**\n".replace("###", "##"));
  });
});
