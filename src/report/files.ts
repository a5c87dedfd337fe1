import type { Analysis } from "../analysis/analyse.ts";
import type { Words } from "../wording/words.ts";
import { drawCharts } from "./drawings.ts";
import { renderHtml } from "./html.ts";
import { reportJson } from "./json.ts";
import { renderMarkdown } from "./markdown.ts";
import { type ReportMeta, reportDocument } from "./report.ts";
import { chartsIn } from "./walk.ts";

/**
 * Everything a report consists of, as texts by file name: report.html, report.md, report.json and charts/*.vl.json.
 *
 * @param chartRuntime  text of the bundled chart runtime for the interactive edition; null: the static edition
 * @throws              DrawingError naming the chart that could not be drawn
 */
export async function reportFiles(
  analysis: Analysis,
  meta: ReportMeta,
  words: Words,
  chartRuntime: string | null = null,
): Promise<Readonly<Record<string, string>>> {
  const document = reportDocument(analysis, meta, words);
  const drawings = await drawCharts(document);
  const charts = chartsIn(document.blocks).map(({ id, spec, specFile }) => [
    specFile ?? `charts/${id}.vl.json`,
    `${JSON.stringify(spec, null, 2)}\n`,
  ]);
  return {
    "report.html": renderHtml(document, {
      drawings,
      ...(chartRuntime === null ? {} : { chartRuntime }),
    }),
    "report.md": renderMarkdown(document),
    "report.json": reportJson(analysis, meta, words),
    ...Object.fromEntries(charts),
  };
}
