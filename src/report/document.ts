import type { ChartSpec } from "../charts/chart-spec.ts";
import type { Severity } from "../results/caution.ts";
import type { FrameWords } from "../wording/frame.ts";

/**
 * A report as a tree that knows neither HTML nor Markdown. Every number in it is already words: formatted,
 * with its unit, by the wording layer. Writers arrange; they never compute or phrase.
 */
export interface ReportDocument {
  readonly title: string;
  readonly subtitle?: string;
  /** BCP 47 tag of the language the text is written in, such as "en". */
  readonly language: string;
  /** Words of the frame around the content, in that language. */
  readonly words: FrameWords;
  /** Where the report comes from: file, date, version. Printed under the title. */
  readonly meta: readonly Entry[];
  readonly blocks: readonly Block[];
  readonly footer?: Text;
  /** False where it is short enough to be read from its cards on. Default true. */
  readonly hasContents?: boolean;
}

/** Plain words, or words with marks inside. Never markup: writers escape everything. */
export type Text = string | readonly Inline[];

export type Inline = string | Emphasis | Reference;

export interface Emphasis {
  readonly kind: "strong" | "emphasis" | "code";
  readonly text: string;
}

/** A link to a block of this document; reports carry no address of anything outside. */
export interface Reference {
  readonly kind: "reference";
  /** The `id` of a section, table, chart or details block. */
  readonly to: string;
  readonly text: string;
}

export interface Entry {
  readonly term: string;
  readonly description: Text;
}

/** How a thing stands, for colour and sign. The words beside it carry the meaning. */
export type Tone = "fine" | "attention" | "problem" | "neutral";

export type Block =
  | Section
  | Paragraph
  | KeyFigures
  | Table
  | Chart
  | CautionList
  | List
  | Details
  | Definitions;

/** Ids are letters, digits and hyphens, start with a letter, and are unique in a document. */
export interface Section {
  readonly kind: "section";
  readonly id: string;
  readonly heading: string;
  /** Before the heading, where the section is about hazards of the work. */
  readonly sign?: "hazard";
  readonly blocks: readonly Block[];
}

export interface Paragraph {
  readonly kind: "paragraph";
  readonly text: Text;
  /** lead: the answer of a section; small: a remark below something. Default body. */
  readonly role?: "lead" | "body" | "small";
}

/** A row of cards, each the answer for one bin (or product). */
export interface KeyFigures {
  readonly kind: "key-figures";
  /** Names the group for who hears the page. */
  readonly label: string;
  readonly cards: readonly KeyFigure[];
}

export interface KeyFigure {
  readonly title: string;
  readonly subtitle?: string;
  /** What to do now, the first thing read. */
  readonly action?: Call;
  /** null: it cannot be known. */
  readonly value: string | null;
  readonly unit?: string;
  readonly interval?: Text;
  readonly span?: SpanToTolerance;
  /** How sure that is, why, and what ends it. */
  readonly reasons?: readonly Text[];
  readonly facts?: readonly Entry[];
}

/** A line to act on. */
export interface Call {
  readonly tone: Tone;
  readonly words: string;
}

/** An interval laid over a tolerance band, drawn as a small scale. All numbers in one unit. */
export interface SpanToTolerance {
  readonly estimate: number;
  /** null: unbounded on this side. */
  readonly lower: number | null;
  readonly upper: number | null;
  readonly band: { readonly lower: number; readonly upper: number };
  /** The same in words: a caption for everybody. */
  readonly caption: string;
}

export interface Table {
  readonly kind: "table";
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** The first cell names its row. Default true. */
  readonly rowHeaders?: boolean;
  readonly note?: Text;
}

export interface Column {
  readonly heading: string;
  /** Numbers stand at the end. Default start. */
  readonly align?: "start" | "center" | "end";
}

export interface Row {
  readonly cells: readonly Text[];
  /** Marks the row; some cell must say why in words. */
  readonly tone?: Tone;
}

export interface Chart {
  readonly kind: "chart";
  readonly id: string;
  readonly title: string;
  /** What the chart shows and tells, for who cannot see it. */
  readonly description: string;
  readonly caption?: Text;
  readonly spec: ChartSpec;
  /** Where the specification is saved beside the report, such as "charts/delivery.vl.json". */
  readonly specFile?: string;
}

export interface CautionList {
  readonly kind: "cautions";
  readonly items: readonly CautionItem[];
}

export interface CautionItem {
  readonly severity: Severity;
  /** Bin, fill, rows. */
  readonly where?: string;
  readonly text: Text;
}

export interface List {
  readonly kind: "list";
  readonly ordered?: boolean;
  readonly items: readonly Text[];
}

/** Folded away on a screen, always open on paper. */
export interface Details {
  readonly kind: "details";
  readonly id?: string;
  readonly summary: string;
  readonly blocks: readonly Block[];
}

export interface Definitions {
  readonly kind: "definitions";
  readonly entries: readonly Entry[];
}
