import type { CellObject, WorkSheet } from "@e965/xlsx";
import type { TableName } from "../../analysis/tables/table-names.ts";
import type { Cell } from "../../data/table.ts";
import { columnsOf, type PlainRow } from "../../data/write-csv.ts";
import type { DescribedColumn, TableWords } from "./described.ts";

/** A table and what its columns are. */
export interface SheetTable {
  readonly name: TableName;
  readonly rows: readonly PlainRow[];
  readonly columns: readonly DescribedColumn[];
}

type Library = typeof import("@e965/xlsx");

/**
 * Tables as one workbook (.xlsx): a sheet a table, and before them one that says of every column what it means. Numbers with every
 * digit; text as text, whatever it begins with, so that none of it is worked out as a formula. The same tables give the same
 * bytes. The library is loaded only when a workbook is asked for.
 *
 * @returns the bytes of the file
 */
export async function workbookOf(
  tables: readonly SheetTable[],
  { tables: say }: Pick<TableWords, "tables">,
): Promise<Uint8Array> {
  const library = await import("@e965/xlsx");
  const book = library.utils.book_new();
  const dictionary = tables.flatMap(({ name, columns }) =>
    columns.map(
      (column): PlainRow => ({
        [say.dictionary.table]: name,
        [say.dictionary.column]: column.name,
        [say.dictionary.type]: column.type,
        [say.dictionary.unit]: column.unit === null ? null : say.unit(column.unit),
        [say.dictionary.meaning]: column.meaning,
      }),
    ),
  );
  library.utils.book_append_sheet(book, sheetOf(dictionary, library), say.dictionary.sheet);
  for (const { name, rows } of tables)
    library.utils.book_append_sheet(book, sheetOf(rows, library), name);
  return new Uint8Array(
    library.write(book, { type: "array", bookType: "xlsx", compression: true }),
  );
}

function sheetOf(rows: readonly PlainRow[], { utils }: Library): WorkSheet {
  const columns = columnsOf(rows);
  const lines: readonly (readonly Cell[])[] = [
    columns,
    ...rows.map((row) => columns.map((name) => row[name] ?? null)),
  ];
  const cells = lines.flatMap((line, r) =>
    line.flatMap((cell, c): (readonly [string, CellObject])[] =>
      cell === null ? [] : [[utils.encode_cell({ r, c }), cellObject(cell)]],
    ),
  );
  const last = { r: lines.length - 1, c: Math.max(0, columns.length - 1) };
  return {
    ...Object.fromEntries(cells),
    "!ref": utils.encode_range({ s: { r: 0, c: 0 }, e: last }),
  };
}

/** A sheet takes no longer text. */
const longestText = 32_767;

function cellObject(cell: Exclude<Cell, null>): CellObject {
  if (typeof cell === "number") return { t: "n", v: cell };
  if (typeof cell === "boolean") return { t: "b", v: cell };
  // The format of text keeps it text also where somebody edits the cell.
  return { t: "s", v: cell.slice(0, longestText), z: "@" };
}
