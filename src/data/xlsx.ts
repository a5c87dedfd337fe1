import type { DataIssue } from "../errors/data-issue.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { foundInWorkbook } from "./suspicions/in-workbook.ts";
import { cellText, type Table } from "./table.ts";
import { openWorkbook } from "./workbook.ts";

/** A table from the first sheet of a workbook, or from the one named. Row numbers are the sheet's own. */
export async function readXlsx(
  name: string,
  bytes: Uint8Array,
  sheetName: string | undefined,
): Promise<Checked<Table>> {
  const place: Place = { source: name, rowKind: "row" };
  const book = await openWorkbook(name, bytes);
  if (!book.ok) return book;
  const { sheets } = book.value;
  const chosen = sheetName ?? sheets[0];
  const content = chosen === undefined ? null : book.value.content(chosen);
  if (chosen === undefined || content === null)
    return failed([noSuchSheet(place, sheetName, sheets)]);
  if (!content.ok) return content;
  const { rows } = content.value;
  const [header, ...rest] = rows;
  if (header === undefined) return failed([emptySheet(place, chosen, sheets)]);
  const width = rows.reduce((widest, { cells }) => Math.max(widest, cells.length), 0);
  const headers = Array.from({ length: width }, (_, index) => cellText(header.cells[index]));
  return passed({
    headers,
    headerRow: header.number,
    rows: rest,
    issues: [],
    rowKind: "row",
    // Numbers of a sheet have no mark; a figure typed as text has that of whoever typed it.
    decimalMark: "unknown",
    findings: foundInWorkbook({
      book: book.value,
      sheet: chosen,
      named: sheetName !== undefined,
      content: content.value,
    }),
  });
}

/** The issue for a name that no sheet has. */
export function noSuchSheet(
  place: Place,
  sheet: string | undefined,
  sheets: readonly string[],
): DataIssue {
  const facts = { sheet: sheet ?? null, sheets };
  return dataIssue(place, { problem: "sheet-not-found", facts }, sheet);
}

function emptySheet(place: Place, sheet: string, sheets: readonly string[]): DataIssue {
  const others = sheets.filter((other) => other !== sheet);
  return dataIssue(place, { problem: "sheet-empty", facts: { sheet, others } });
}
