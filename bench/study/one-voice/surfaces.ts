import { type Analysis, analyse, type MeterAnswers } from "../../../src/analysis/analyse.ts";
import { answerTable } from "../../../src/cli/answer-table.ts";
import { decisionText } from "../../../src/cli/decision-text.ts";
import { readCatches } from "../../../src/data/read-catches.ts";
import { readSetup } from "../../../src/data/read-setup.ts";
import type { Block, KeyFigure, Section, Text } from "../../../src/report/document.ts";
import { renderMarkdown } from "../../../src/report/markdown.ts";
import { reportDocument } from "../../../src/report/report.ts";
import { mostUrgentFirst } from "../../../src/report/sections/summary.ts";
import * as german from "../../../src/wording/de/german.ts";
import * as english from "../../../src/wording/en/english.ts";
import { wordsIn } from "../../../src/wording/words.ts";
import { csvOf, type InventedLog } from "./log.ts";

/** What one language says of one bin, surface by surface. */
export interface Said {
  readonly language: "en" | "de";
  readonly terminal: string;
  readonly table: string;
  readonly card: string;
  /** First line of the bin's section. */
  readonly section: string;
  /** All of the bin's section, every fold open. */
  readonly everything: string;
}

/** Everything said of one bin. */
export interface Surfaces {
  readonly answers: MeterAnswers;
  readonly said: readonly Said[];
}

const languages = [
  { language: "en", words: wordsIn(english) },
  { language: "de", words: wordsIn(german) },
] as const;

export async function analysisOf(log: InventedLog): Promise<Analysis> {
  const catches = await readCatches({ name: "catches.csv", text: csvOf(log.rows) });
  const setup =
    log.setup === null ? null : readSetup({ name: "setup.json", text: JSON.stringify(log.setup) });
  return analyse(catches, setup);
}

export function surfacesOf(analysis: Analysis): readonly Surfaces[] {
  const spoken = languages.map(({ language, words }) => {
    const meta = { title: null, setupSource: null, version: "0", edition: "full" } as const;
    const document = reportDocument(analysis, meta, words);
    const cards = document.blocks
      .flatMap((block) => (block.kind === "section" ? block.blocks : []))
      .flatMap((block) => (block.kind === "key-figures" ? block.cards : []));
    const sections = document.blocks.filter(
      (block): block is Section => block.kind === "section" && block.id.startsWith("bin-"),
    );
    return { language, words, document, cards, sections };
  });
  const urgent = mostUrgentFirst(analysis.meters);
  return analysis.meters.map((answers, i) => ({
    answers,
    said: spoken.map(({ language, words, document, cards, sections }) => ({
      language,
      terminal: decisionText(answers, analysis, words),
      table: answerTable({ ...analysis, meters: [answers] }, words),
      card: cardText(cards[urgent.indexOf(answers)]),
      section: leadOf(sections[i]),
      everything: renderMarkdown({
        ...document,
        blocks: sections[i] === undefined ? [] : [sections[i]],
      }),
    })),
  }));
}

function cardText(card: KeyFigure | undefined): string {
  if (card === undefined) return "";
  return [card.action?.words ?? "", ...(card.reasons ?? []).map(plain)].join("\n");
}

function leadOf(section: Section | undefined): string {
  const [first] = section?.blocks ?? ([] as readonly Block[]);
  return first?.kind === "paragraph" ? plain(first.text) : "";
}

function plain(text: Text): string {
  if (typeof text === "string") return text;
  return text.map((part) => (typeof part === "string" ? part : part.text)).join("");
}
