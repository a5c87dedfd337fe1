import type { ReportDocument } from "../document.ts";
import { htmlBlocks } from "../html/blocks.ts";
import { definitions } from "../html/definitions.ts";
import { escapeHtml } from "../html/escape.ts";
import { htmlPage } from "../html/page.ts";
import { checkIds } from "../walk.ts";
import { styleSheet } from "./style-sheet.ts";

/**
 * A sheet to print as one HTML file, under the same policy as a report: it needs nothing else and asks for nothing. Dark ink
 * on light ground on a screen too, since it is there for paper.
 *
 * @throws OptionError `bad-option` for an id that is repeated or cannot be one
 */
export function renderSheet(sheet: ReportDocument): string {
  const { title, subtitle, language, words, meta, blocks } = sheet;
  checkIds(blocks);
  const below = subtitle === undefined ? "" : `<p class="subtitle">${escapeHtml(subtitle)}</p>`;
  return htmlPage({
    language,
    title,
    colorScheme: "light",
    styleSheet,
    script: null,
    body: `<header><h1>${escapeHtml(title)}</h1>${below}${definitions(meta)}</header>
<main>
${htmlBlocks(blocks, { level: 2, words, drawings: {} })}
</main>`,
  });
}
