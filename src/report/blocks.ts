import type { ChartSpec } from "../charts/chart-spec.ts";
import { headingOf } from "./chart-heading.ts";
import type {
  Block,
  Chart,
  Column,
  Details,
  List,
  Paragraph,
  Section,
  Table,
  Text,
  Tone,
} from "./document.ts";

/** A block, or null where there is nothing to say: whatever holds blocks leaves it out. */
export type MaybeBlock = Block | null;

export function blocks(...parts: readonly MaybeBlock[]): readonly Block[] {
  return parts.filter((part) => part !== null);
}

export function section(id: string, heading: string, ...parts: readonly MaybeBlock[]): Section {
  return { kind: "section", id, heading, blocks: blocks(...parts) };
}

/** Null where nothing is left to fold away. */
export function details(
  id: string,
  summary: string,
  ...parts: readonly MaybeBlock[]
): Details | null {
  const inside = blocks(...parts);
  return inside.length === 0 ? null : { kind: "details", id, summary, blocks: inside };
}

export function paragraph(
  text: Text | null,
  role: NonNullable<Paragraph["role"]> = "body",
): Paragraph | null {
  return text === null ? null : { kind: "paragraph", role, text };
}

/** Null where no item is left. */
export function list(items: readonly (Text | null)[]): List | null {
  const said = items.filter((item) => item !== null);
  return said.length === 0 ? null : { kind: "list", items: said };
}

/**
 * A chart under the title and description of its specification; null where there is nothing to draw.
 *
 * @param name  of its file; on the page, where a section may have the same name, its id says that it is the chart
 */
export function chart(name: string, spec: ChartSpec | null): Chart | null {
  if (spec === null) return null;
  const { title, remark } = headingOf(spec);
  return {
    kind: "chart",
    id: `${name}-chart`,
    title,
    description: String(spec.description),
    ...(remark === null ? {} : { caption: remark }),
    spec,
    specFile: `charts/${name}.vl.json`,
  };
}

/** A column with what it shows of a row, so that a heading never stands over another's cells. */
export interface ColumnOf<R> extends Column {
  readonly cell: (row: R, place: number) => Text;
}

export interface Grid<R> {
  readonly rows: readonly R[];
  /** Null: a column that this table does without. */
  readonly columns: readonly (ColumnOf<NoInfer<R>> | null)[];
  /** Marks a row; some cell must say why in words. */
  readonly tone?: (row: NoInfer<R>) => Tone | null;
}

/** Columns and rows of a table, wherever it is shown. */
export function grid<R>({ rows, columns, tone }: Grid<R>): Pick<Table, "columns" | "rows"> {
  const shown = columns.filter((column) => column !== null);
  return {
    columns: shown.map(({ cell: _, ...column }) => column),
    rows: rows.map((row, place) => {
      const cells = shown.map(({ cell }) => cell(row, place));
      const mark = tone?.(row) ?? null;
      return mark === null ? { cells } : { cells, tone: mark };
    }),
  };
}

/** Null where it has no row. */
export function table<R>({
  id,
  caption,
  rowHeaders = true,
  ...content
}: Grid<R> & Pick<Table, "id" | "caption" | "rowHeaders">): Table | null {
  if (content.rows.length === 0) return null;
  return { kind: "table", id, caption, rowHeaders, ...grid(content) };
}
