import * as XLSX from "@e965/xlsx";
import { checkCatches, type ReadOptions } from "../../src/data/read-catches.ts";
import type { CatchSource } from "../../src/data/source.ts";
import type { CatchLog } from "../../src/data/types.ts";

/** The log of a file that must be fine; the test fails with the problems when it is not. */
export async function logOf(source: CatchSource, options: ReadOptions = {}): Promise<CatchLog> {
  const check = await checkCatches(source, options);
  if (!check.ok) throw new Error(check.issues.map(({ text }) => text).join("\n"));
  return check.log;
}

/** The messages of a file that must be refused; the test fails when it is not. */
export async function problemsOf(
  source: CatchSource,
  options: ReadOptions = {},
): Promise<string[]> {
  const check = await checkCatches(source, options);
  if (check.ok) throw new Error(`${source.name} was not refused`);
  return check.issues.map(({ text }) => text);
}

export function csv(...lines: readonly string[]): CatchSource {
  return { name: "catches.csv", text: lines.join("\n") };
}

export type SheetCell = string | number | boolean | Date | null;

/** An .xlsx file in memory with one sheet of plain cells for each name. */
export function workbook(sheets: Readonly<Record<string, readonly (readonly SheetCell[])[]>>) {
  const book = XLSX.utils.book_new();
  for (const [name, rows] of Object.entries(sheets)) {
    const sheet = XLSX.utils.aoa_to_sheet(
      rows.map((row) => [...row]),
      { UTC: true },
    );
    XLSX.utils.book_append_sheet(book, sheet, name);
  }
  return { name: "catches.xlsx", bytes: bytesOf(book) };
}

export function bytesOf(book: XLSX.WorkBook): Uint8Array {
  return new Uint8Array(XLSX.write(book, { type: "array", bookType: "xlsx" }) as ArrayBuffer);
}
