import type { PlainColumn } from "../column-kinds.ts";
import { checkedLines, separatorOf, splitCells } from "../csv.ts";
import { decodeText } from "../decode.ts";
import { type FoundColumns, findColumns } from "../headers.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "../issues.ts";
import { decimalMarks, markOf } from "../numbers.ts";
import { checkText } from "../read-text.ts";
import { cellText, type Table, type TableRow } from "../table.ts";

/** A file of text as it is written, to which rows can be added. */
export interface OpenTable {
  readonly table: Table & { readonly rows: readonly TableRow[] };
  readonly columns: FoundColumns;
  readonly text: string;
  readonly separator: string;
  readonly lineEnd: string;
  /** What the file has before decimals; a point where nothing tells. */
  readonly mark: "," | ".";
}

/** The table of a file that is in order; a header and nothing below it is. */
export function openTable(name: string, bytes: Uint8Array): Checked<OpenTable> {
  const place: Place = { source: name, rowKind: "row" };
  const wide = bytes[0] === 0xff || bytes[0] === 0xfe;
  if (wide) return failed([dataIssue(place, { problem: "not-utf8", facts: {} })]);
  const text = decodeText({ name, bytes }, "table");
  if (!text.ok) return text;
  const lines = checkedLines(place, text.value);
  if (!lines.ok) return lines;
  const { separator, body } = separatorOf(lines.value);
  const cells = splitCells(place, body, separator);
  if (!cells.ok) return cells;
  const [header, ...rows] = cells.value;
  const table = {
    headers: header?.cells.map(cellText) ?? [],
    headerRow: header?.number ?? 1,
    rows,
    issues: [],
    rowKind: "row",
    decimalMark: separator === "," ? "point" : "unknown",
  } as const;
  const { columns, issues } = findColumns(table, place);
  const inOrder = rows.length === 0 ? null : checkText({ name, text: text.value });
  if (inOrder !== null && !inOrder.ok) return inOrder;
  if (inOrder === null && issues.length > 0) return failed(issues);
  return passed({
    table,
    columns,
    text: text.value,
    separator,
    lineEnd: /\r\n|\n|\r/.exec(text.value)?.[0] ?? "\n",
    mark: markOf(decimalMarks(figures(table, columns), table.decimalMark)) ?? ".",
  });
}

function* figures({ rows }: Table, { plain, mass }: FoundColumns) {
  const indices = [...mass.map(({ index }) => index), plain.get("turns")?.index ?? -1];
  for (const { cells } of rows) for (const index of indices) yield cells[index] ?? null;
}

/** Text of a row under a plain column; "" where there is none. */
export function textIn(
  row: TableRow | undefined,
  columns: FoundColumns,
  name: PlainColumn,
): string {
  const index = columns.plain.get(name)?.index;
  return index === undefined ? "" : cellText(row?.cells[index]);
}
