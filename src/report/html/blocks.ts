import type { FrameWords } from "../../wording/frame.ts";
import type {
  Block,
  CautionItem,
  CautionList,
  Details,
  List,
  Paragraph,
  Section,
} from "../document.ts";
import type { Drawings } from "../drawings.ts";
import { keyFigures } from "./cards.ts";
import { chart } from "./chart.ts";
import { definitions } from "./definitions.ts";
import { escapeHtml } from "./escape.ts";
import { hazardIcon, toneIcon, toneOfSeverity } from "./icons.ts";
import { table } from "./table.ts";
import { htmlText } from "./text.ts";

/** What blocks need from their surroundings. */
export interface BlockContext {
  /** Level of the next heading, 2 right under the title. */
  readonly level: number;
  readonly words: FrameWords;
  readonly drawings: Drawings;
}

export function htmlBlocks(blocks: readonly Block[], context: BlockContext): string {
  return blocks.map((block) => htmlBlock(block, context)).join("\n");
}

function htmlBlock(block: Block, context: BlockContext): string {
  switch (block.kind) {
    case "section":
      return section(block, context);
    case "paragraph":
      return paragraph(block);
    case "key-figures":
      return keyFigures(block, context.level, context.words);
    case "table":
      return table(block);
    case "chart":
      return chart(block, context.drawings);
    case "cautions":
      return cautions(block, context.words);
    case "list":
      return list(block);
    case "details":
      return details(block, context);
    case "definitions":
      return definitions(block.entries);
  }
}

const deepest = 6;

function section(block: Section, context: BlockContext): string {
  const { level } = context;
  const inside = htmlBlocks(block.blocks, { ...context, level: Math.min(level + 1, deepest) });
  const heading = `<h${level} id="${block.id}_heading">${block.sign === undefined ? "" : hazardIcon}${escapeHtml(block.heading)}</h${level}>`;
  return `<section id="${block.id}" aria-labelledby="${block.id}_heading">\n${heading}\n${inside}\n</section>`;
}

function paragraph({ text, role = "body" }: Paragraph): string {
  return `<p${role === "body" ? "" : ` class="${role}"`}>${htmlText(text)}</p>`;
}

function cautions(block: CautionList, words: FrameWords): string {
  const items = block.items.map((item) => caution(item, words));
  return `<ul class="cautions" role="list">${items.join("\n")}</ul>`;
}

function caution({ severity, where, text }: CautionItem, words: FrameWords): string {
  const tone = toneOfSeverity[severity];
  const place = !where ? "" : ` <span class="where">${escapeHtml(where)}</span>`;
  return `<li class="${tone}">${toneIcon(tone)}<div><p class="caution-head"><strong>${escapeHtml(words.severity[severity])}</strong>${place}</p><p>${htmlText(text)}</p></div></li>`;
}

function list({ ordered = false, items }: List): string {
  const tag = ordered ? "ol" : "ul";
  return `<${tag}>${items.map((item) => `<li>${htmlText(item)}</li>`).join("\n")}</${tag}>`;
}

function details(block: Details, context: BlockContext): string {
  const id = block.id === undefined ? "" : ` id="${block.id}"`;
  return `<details${id}><summary>${escapeHtml(block.summary)}</summary>\n<div class="details">${htmlBlocks(block.blocks, context)}</div></details>`;
}
