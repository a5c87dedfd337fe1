import { markdownTable } from "markdown-table";
import type { FrameWords } from "../wording/frame.ts";
import type {
  Block,
  CautionList,
  Chart,
  Entry,
  KeyFigure,
  List,
  ReportDocument,
  Table,
} from "./document.ts";
import { escapeMarkdown, markdownText } from "./markdown/text.ts";
import { checkIds } from "./walk.ts";

/**
 * The document as Markdown with tables (GitHub flavour), every word escaped. Charts are named with their
 * description and the file of their specification; folded details are unfolded.
 *
 * @throws OptionError `bad-option` for an id that is repeated or cannot be one
 */
export function renderMarkdown(document: ReportDocument): string {
  checkIds(document.blocks);
  const { title, subtitle, meta, words, blocks, footer } = document;
  const parts = [
    heading(1, title),
    subtitle === undefined ? "" : escapeMarkdown(subtitle),
    entries(meta),
    ...markdownBlocks(blocks, 2, words),
    footer === undefined ? "" : `---\n\n${markdownText(footer)}`,
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function markdownBlocks(blocks: readonly Block[], level: number, words: FrameWords): string[] {
  return blocks.flatMap((block) => markdownBlock(block, level, words));
}

function markdownBlock(block: Block, level: number, words: FrameWords): string[] {
  switch (block.kind) {
    case "section":
      return [heading(level, block.heading), ...markdownBlocks(block.blocks, level + 1, words)];
    case "details":
      return [heading(level, block.summary), ...markdownBlocks(block.blocks, level + 1, words)];
    case "paragraph":
      return [markdownText(block.text)];
    case "key-figures":
      return block.cards.flatMap((card) => keyFigure(card, level, words));
    case "table":
      return table(block);
    case "chart":
      return [chart(block, words)];
    case "cautions":
      return [cautions(block, words)];
    case "list":
      return [list(block)];
    case "definitions":
      return [entries(block.entries)];
  }
}

const heading = (level: number, text: string): string =>
  `${"#".repeat(Math.min(level, 6))} ${escapeMarkdown(text)}`;

const entries = (all: readonly Entry[]): string =>
  all.map((entry) => labelled(entry.term, markdownText(entry.description))).join("\n");

const labelled = (label: string, text: string): string => `- **${escapeMarkdown(label)}:** ${text}`;

function keyFigure(card: KeyFigure, level: number, words: FrameWords): string[] {
  const title = [card.title, card.subtitle].filter((part) => part !== undefined).join(" · ");
  const value = [card.value ?? words.notKnown, card.value === null ? undefined : card.unit];
  const figure = `**${escapeMarkdown(value.filter((part) => part !== undefined).join(" "))}**`;
  const lines = [
    card.span === undefined ? "" : `- ${escapeMarkdown(card.span.caption)}`,
    ...(card.reasons ?? []).map((text) => `- ${markdownText(text)}`),
    card.facts === undefined ? "" : entries(card.facts),
  ];
  return [
    heading(level, title),
    ...(card.action === undefined ? [] : [`**${escapeMarkdown(card.action.words)}**`]),
    card.interval === undefined ? figure : `${figure}  \n${markdownText(card.interval)}`,
    lines.filter((line) => line !== "").join("\n"),
  ];
}

const alignments = { start: "l", center: "c", end: "r" } as const;

function table(block: Table): string[] {
  const head = block.columns.map(({ heading }) => escapeMarkdown(heading));
  const rows = block.rows.map(({ cells }) =>
    block.columns.map((_, i) => markdownText(cells[i] ?? "")),
  );
  const align = block.columns.map(({ align = "start" }) => alignments[align]);
  return [
    `**${escapeMarkdown(block.caption)}**`,
    markdownTable([head, ...rows], { align }),
    block.note === undefined ? "" : markdownText(block.note),
  ];
}

function chart(block: Chart, words: FrameWords): string {
  const file =
    block.specFile === undefined
      ? ""
      : ` (${escapeMarkdown(words.specification)}: [${escapeMarkdown(block.specFile)}](<${encodeURI(block.specFile)}>))`;
  const caption = block.caption === undefined ? "" : ` ${markdownText(block.caption)}`;
  return `**${escapeMarkdown(words.chart)}: ${escapeMarkdown(block.title)}.** ${escapeMarkdown(block.description)}${caption}${file}`;
}

function cautions(block: CautionList, words: FrameWords): string {
  const items = block.items.map(({ severity, where, text }) => {
    const place = !where ? "" : ` (${escapeMarkdown(where)})`;
    return `- **${escapeMarkdown(words.severity[severity])}**${place}: ${markdownText(text)}`;
  });
  return items.join("\n");
}

function list({ ordered = false, items }: List): string {
  return items.map((item, i) => `${ordered ? `${i + 1}.` : "-"} ${markdownText(item)}`).join("\n");
}
