import { OptionError } from "../../errors/errors.ts";
import type { Chart } from "../document.ts";
import type { Drawings } from "../drawings.ts";
import { embeddedJson, escapeHtml } from "./escape.ts";
import { htmlText } from "./text.ts";

/**
 * A chart as drawings for wide and narrow screens, with its specification beside them as data: the page keeps its
 * own numbers, and the interactive edition draws from it.
 *
 * @throws OptionError `bad-option` when the chart was not drawn
 */
export function chart(block: Chart, drawings: Drawings): string {
  const drawing = drawings[block.id];
  if (drawing === undefined) throw new OptionError("drawings", null, `given for "${block.id}"`);
  const caption =
    block.caption === undefined
      ? ""
      : `<span class="chart-caption">${htmlText(block.caption)}</span>`;
  return `<figure class="chart" id="${block.id}">
<figcaption><span class="chart-title">${escapeHtml(block.title)}</span>${caption}</figcaption>
${drawing.narrow === null ? onlyWide(drawing.wide, block.title) : both(drawing.wide, drawing.narrow)}
<script type="application/json">${embeddedJson(block.spec)}</script>
</figure>`;
}

const both = (wide: string, narrow: string): string =>
  `<div class="drawing wide">${inline(wide)}</div><div class="drawing narrow">${inline(narrow)}</div>`;

const onlyWide = (wide: string, title: string): string =>
  `<div class="drawing scroll" role="region" tabindex="0" aria-label="${escapeHtml(title)}">${inline(wide)}</div>`;

/** Inside HTML the parser knows SVG; the name space would be the only address in the page. */
const inline = (svg: string): string => svg.replace(' xmlns="http://www.w3.org/2000/svg"', "");
