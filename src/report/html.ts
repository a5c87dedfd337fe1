import type { ReportDocument, Section } from "./document.ts";
import type { Drawings } from "./drawings.ts";
import { htmlBlocks } from "./html/blocks.ts";
import { definitions } from "./html/definitions.ts";
import { escapeHtml } from "./html/escape.ts";
import { htmlPage } from "./html/page.ts";
import { checkedScript } from "./html/policy.ts";
import { styleSheet } from "./html/style-sheet.ts";
import { htmlText } from "./html/text.ts";
import { checkIds } from "./walk.ts";

export interface HtmlOptions {
  /** From `drawCharts`; one for every chart of the document. */
  readonly drawings: Drawings;
  /**
   * Text of the bundled chart runtime. Given, the page is the interactive edition: charts are drawn anew where
   * scripts run and answer the pointer. Left out, the page has no script and its policy forbids any.
   */
  readonly chartRuntime?: string;
}

/**
 * The document as one HTML file that needs nothing else: it opens offline, makes no request and enforces that by
 * its own content security policy. Light and dark by the reader's setting, for screen, phone and paper.
 *
 * The same document, drawings and runtime give the same bytes.
 *
 * @throws OptionError `bad-option` for an id that is repeated or cannot be one, a chart without a drawing, or a
 *                     runtime that cannot stand in a page
 */
export function renderHtml(document: ReportDocument, options: HtmlOptions): string {
  checkIds(document.blocks);
  const script = options.chartRuntime === undefined ? null : checkedScript(options.chartRuntime);
  return htmlPage({
    language: document.language,
    title: document.title,
    colorScheme: "light dark",
    styleSheet,
    script,
    body: body(document, options.drawings),
  });
}

function body(document: ReportDocument, drawings: Drawings): string {
  const { words } = document;
  const footer =
    document.footer === undefined ? "" : `\n<footer><p>${htmlText(document.footer)}</p></footer>`;
  return `<a class="skip" href="#report_content">${escapeHtml(words.skipToContent)}</a>
${masthead(document)}
<div class="page">
${contents(document)}
<main id="report_content" tabindex="-1">
${htmlBlocks(document.blocks, { level: 2, words, drawings })}
</main>
</div>${footer}`;
}

function masthead({ title, subtitle, meta }: ReportDocument): string {
  const below = subtitle === undefined ? "" : `\n<p class="subtitle">${escapeHtml(subtitle)}</p>`;
  const origin = meta.length === 0 ? "" : `\n${definitions(meta)}`;
  return `<header class="masthead"><h1>${escapeHtml(title)}</h1>${below}${origin}</header>`;
}

function contents({ blocks, words, hasContents = true }: ReportDocument): string {
  const sections = blocks.filter((block): block is Section => block.kind === "section");
  if (!hasContents) return "";
  const links = sections.map(
    ({ id, heading }) => `<li><a href="#${id}">${escapeHtml(heading)}</a></li>`,
  );
  const label = escapeHtml(words.contents);
  return `<nav class="contents" aria-label="${label}"><ol>${links.join("\n")}</ol></nav>`;
}
