import { beforeAll, describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import type { ReportDocument } from "../../src/report/document.ts";
import { drawCharts } from "../../src/report/drawings.ts";
import { renderHtml } from "../../src/report/html.ts";
import { renderMarkdown } from "../../src/report/markdown.ts";
import { reportDocument } from "../../src/report/report.ts";
import { chartsIn } from "../../src/report/walk.ts";
import { wordsFor } from "../../src/wording/languages.ts";
import { references } from "../../src/wording/references.ts";
import { englishIn } from "../support/bilingual.ts";
import { demo } from "../support/demo.ts";
import { faultsOf } from "../support/vega-lite.ts";

const meta = {
  title: "Frühjahr",
  setupSource: "setup.json",
  version: "1",
  edition: "full",
} as const;

describe("a report in German", () => {
  let document: ReportDocument;
  beforeAll(async () => {
    const { log, setup } = await demo("season");
    document = reportDocument(analyse(log, setup), meta, await wordsFor("de", "metric"));
  });

  it("is a page in German, with its frame", async () => {
    const html = renderHtml(document, { drawings: await drawCharts(document) });
    expect(html).toContain('<html lang="de">');
    expect(html).toContain(">Zum Inhalt springen</a>");
    expect(html).toContain('aria-label="Inhalt"');
    expect(html).toMatch(/einstellen|Erst nachsehen|weitere Prob|Noch eine Probe/);
    expect(html).toMatch(/<text[^>]*>0,\d+<\/text>/);
    expect(html).not.toMatch(/<text[^>]*>\d+\.\d{1,2}<\/text>/);
  });

  it("is Markdown in German", () => {
    const markdown = renderMarkdown(document);
    expect(markdown).toMatch(/^# Frühjahr\n/);
    expect(markdown).toMatch(/\*\*Diagramm: .* \(Spezifikation: \[charts\//);
    const files = /\(<[^)]*>\)|\[[^\]]*\.vl\.json\]|\w+\.csv/g;
    // Sources stand as they were published.
    const own = Object.values(references).reduce(
      (text, one) => text.replaceAll(one, " "),
      markdown,
    );
    expect(englishIn(own.replaceAll(files, " ").replaceAll("\\_", "_"))).toEqual([]);
  });

  it("has charts with a decimal comma on every axis", async () => {
    const charts = chartsIn(document.blocks);
    expect(charts.length).toBeGreaterThan(20);
    for (const { spec, id } of charts) {
      expect(spec, id).toMatchObject({ config: { locale: { number: { decimal: "," } } } });
      expect(await faultsOf(spec), id).toEqual([]);
    }
  });

  it("compares products with a decimal comma as well", async () => {
    const { log, setup } = await demo("product-trial");
    const trial = reportDocument(analyse(log, setup), meta, await wordsFor("de", "metric"));
    for (const { spec, id } of chartsIn(trial.blocks))
      expect(spec, id).toMatchObject({ config: { locale: { number: { decimal: "," } } } });
  });
});
