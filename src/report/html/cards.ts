import type { FrameWords } from "../../wording/frame.ts";
import type { Call, KeyFigure, KeyFigures } from "../document.ts";
import { definitions } from "./definitions.ts";
import { escapeHtml } from "./escape.ts";
import { toneIcon } from "./icons.ts";
import { spanScale } from "./span-scale.ts";
import { htmlText } from "./text.ts";

export function keyFigures(block: KeyFigures, level: number, words: FrameWords): string {
  const cards = block.cards.map((card) => `<li>${keyFigure(card, level, words)}</li>`);
  return `<ul class="cards" role="list" aria-label="${escapeHtml(block.label)}">${cards.join("\n")}</ul>`;
}

/** Every card has the same five parts, empty or not: neighbours line their parts up by this. */
function keyFigure(card: KeyFigure, level: number, words: FrameWords): string {
  const tone = card.action?.tone ?? "neutral";
  return `<article class="card ${tone}">
<div class="card-head"><h${level}>${escapeHtml(card.title)}</h${level}>${optional("card-subtitle", card.subtitle && escapeHtml(card.subtitle))}</div>
<div class="card-action">${card.action === undefined ? "" : call(card.action)}</div>
<div class="card-figure">${figure(card, words)}${optional("card-interval", card.interval && htmlText(card.interval))}</div>
<div class="card-span">${card.span === undefined ? "" : spanScale(card.span)}</div>
<div class="card-why">${(card.reasons ?? []).map((text) => `<p>${htmlText(text)}</p>`).join("")}${card.facts === undefined ? "" : definitions(card.facts)}</div>
</article>`;
}

function figure(card: KeyFigure, words: FrameWords): string {
  if (card.value === null) {
    return `<p class="figure unknown">${escapeHtml(words.notKnown)}</p>`;
  }
  const unit = card.unit === undefined ? "" : ` <span class="unit">${escapeHtml(card.unit)}</span>`;
  return `<p class="figure"><span class="value">${escapeHtml(card.value)}</span>${unit}</p>`;
}

export function call({ tone, words }: Call): string {
  return `<p class="call ${tone}">${toneIcon(tone)}<span>${escapeHtml(words)}</span></p>`;
}

function optional(className: string, html: string | undefined): string {
  return html ? `<p class="${className}">${html}</p>` : "";
}
