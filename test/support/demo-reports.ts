import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { readCatchesFile, readSetupFile } from "../../src/node.ts";
import type { ReportDocument } from "../../src/report/document.ts";
import { drawCharts } from "../../src/report/drawings.ts";
import type { Edition } from "../../src/report/editions/edition.ts";
import { renderHtml } from "../../src/report/html.ts";
import { renderMarkdown } from "../../src/report/markdown.ts";
import { reportDocument } from "../../src/report/report.ts";
import { chartsIn as chartsInBlocks } from "../../src/report/walk.ts";
import { wordsFor } from "../../src/wording/languages.ts";
import { demo } from "./command.ts";

/** Everything a report on a demo set is made of. */
export interface DemoReport {
  readonly analysis: Analysis;
  readonly document: ReportDocument;
  readonly html: string;
  readonly markdown: string;
}

export async function demoReport(
  name: string,
  edition: Edition = "full",
  language = "en",
): Promise<DemoReport> {
  const log = await readCatchesFile(demo(`${name}/catches.csv`));
  const setup = await readSetupFile(demo(`${name}/setup.json`));
  const analysis = analyse(log, setup);
  const meta = {
    title: setup.title,
    setupSource: "setup.json",

    version: "0",
    edition,
  } as const;
  const document = reportDocument(analysis, meta, await wordsFor(language, "metric"));
  const warnings: string[] = [];
  const drawings = await drawCharts(document, { onWarning: (warning) => warnings.push(warning) });
  if (warnings.length > 0) throw new Error(warnings.join("\n"));
  return {
    analysis,
    document,
    html: renderHtml(document, { drawings }),
    markdown: renderMarkdown(document),
  };
}

export function chartsIn({ document }: DemoReport): readonly { id: string; spec: ChartSpec }[] {
  return chartsInBlocks(document.blocks);
}
