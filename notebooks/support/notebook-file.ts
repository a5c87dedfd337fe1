import { readFileSync, writeFileSync } from "node:fs";

/** One output as it goes to a viewer: MIME type to content, best last. */
export type MimeBundle = Readonly<Record<string, unknown>>;

/** What nbformat 4.5 says of a notebook, as far as it is used here. */
export interface Notebook {
  readonly cells: readonly Cell[];
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly nbformat: number;
  readonly nbformat_minor: number;
}

export type Cell = MarkdownCell | CodeCell;

export interface MarkdownCell {
  readonly cell_type: "markdown";
  readonly id: string;
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly source: Lines;
}

export interface CodeCell {
  readonly cell_type: "code";
  readonly id: string;
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly source: Lines;
  readonly execution_count: number | null;
  readonly outputs: readonly Output[];
}

export interface Output {
  readonly output_type: string;
  readonly data?: MimeBundle;
  readonly metadata?: Readonly<Record<string, unknown>>;
}

/** Text may be kept whole or as lines, each with its line feed. */
type Lines = string | readonly string[];

export function readNotebook(path: string): Notebook {
  return JSON.parse(readFileSync(path, "utf8"));
}

/** Writes a notebook as Jupyter's own tools do, so that both give the same bytes. */
export function writeNotebook(path: string, notebook: Notebook): void {
  writeFileSync(path, `${JSON.stringify(withSortedKeys(notebook), null, 1)}\n`);
}

export function codeCells(notebook: Notebook): readonly CodeCell[] {
  return notebook.cells.filter((cell) => cell.cell_type === "code");
}

export function wholeText(lines: Lines): string {
  return typeof lines === "string" ? lines : lines.join("");
}

/** What was shown by each code cell, by cell id. */
export type ShownByCell = Readonly<Record<string, readonly MimeBundle[]>>;

/** The outputs that are stored in a notebook, with their texts whole. */
export function storedOutputs(notebook: Notebook): ShownByCell {
  return Object.fromEntries(
    codeCells(notebook).map((cell) => [cell.id, cell.outputs.map(({ data }) => wholeTexts(data))]),
  );
}

/** The same notebook with other outputs, its code cells numbered in order. */
export function withOutputs(notebook: Notebook, shown: ShownByCell): Notebook {
  let count = 0;
  const cells = notebook.cells.map((cell): Cell => {
    if (cell.cell_type !== "code") {
      return cell;
    }
    count += 1;
    const outputs = (shown[cell.id] ?? []).map(displayOf);
    return { ...cell, execution_count: count, outputs };
  });
  return { ...notebook, cells };
}

function displayOf(bundle: MimeBundle): Output {
  const data = Object.entries(bundle).map(([mime, content]) => [
    mime,
    mime.startsWith("text/") && typeof content === "string" ? content.split(/(?<=\n)/) : content,
  ]);
  return { output_type: "display_data", data: Object.fromEntries(data), metadata: {} };
}

function wholeTexts(bundle: MimeBundle = {}): MimeBundle {
  const isText = (content: unknown): content is readonly string[] =>
    Array.isArray(content) && content.every((line) => typeof line === "string");
  return Object.fromEntries(
    Object.entries(bundle).map(([mime, content]) => [
      mime,
      isText(content) ? content.join("") : content,
    ]),
  );
}

function withSortedKeys(value: unknown): unknown {
  if (Array.isArray(value)) {
    return value.map(withSortedKeys);
  }
  if (typeof value !== "object" || value === null) {
    return value;
  }
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, content]) => [key, withSortedKeys(content)]));
}
