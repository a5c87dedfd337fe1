import { type ColumnNames, namedAs, tableNames } from "../../analysis/tables/table-names.ts";
import type { TidyTables } from "../../analysis/tables/tidy-tables.ts";
import { type DecimalMark, rowsToCsv } from "../../data/write-csv.ts";
import type { Words } from "../../wording/words.ts";
import { rowsToLatex, rowsToMarkdown } from "../plain-tables.ts";
import {
  dataPackage,
  type PackageAbout,
  type PackageFormat,
  packageFormats,
  type WrittenTable,
} from "./data-package.ts";
import { describedColumns } from "./described.ts";
import { type TableFormat, tableFormats, usualTableFormats } from "./table-formats.ts";
import { type SheetTable, workbookOf } from "./workbook.ts";

/** How tables are written; everything optional. */
export interface TableFilesOptions {
  /** Default CSV, JSON, Markdown and LaTeX. */
  readonly formats?: readonly TableFormat[];
  /** Names of columns. Default "own". */
  readonly names?: ColumnNames;
  /** Decimal mark of CSV. Default "point". */
  readonly decimal?: DecimalMark;
}

const folder = "tables";
const workbookName = "tables.xlsx";

/**
 * Tidy tables as files by name: CSV and JSON with every digit, Markdown and LaTeX for a paper, all tables in one workbook; and
 * beside them `datapackage.json`, which says of every column its type, unit and meaning. An empty table has no file.
 *
 * @param tables   under their own names, as `tidyTables` makes them
 * @param about    what the data package says it is about
 * @param words    of the language columns are described in
 * @returns        texts, and bytes of a workbook, by file name relative to the report
 */
export async function tableFiles(
  tables: TidyTables,
  about: PackageAbout,
  words: Words,
  { formats = usualTableFormats, names = "own", decimal = "point" }: TableFilesOptions = {},
): Promise<Readonly<Record<string, string | Uint8Array>>> {
  const filled = tableNames
    .filter((name) => tables[name].length > 0)
    .map((name) => ({
      name,
      rows: namedAs(tables[name], names),
      columns: describedColumns(tables[name], words, names),
    }));
  const workbook = formats.includes("xlsx") ? await workbookOf(filled, words) : null;
  const texts = filled.flatMap((table) =>
    textFormats
      .filter((format) => formats.includes(format))
      .map((format) => [`${table.name}.${format}`, textOf(format, table, decimal)] as const),
  );
  const files: Readonly<Record<string, string | Uint8Array>> = {
    ...Object.fromEntries(texts),
    ...(workbook === null ? {} : { [workbookName]: workbook }),
  };
  const described = tableFormats.find(
    (format): format is PackageFormat => formats.includes(format) && format in packageFormats,
  );
  const written =
    described === undefined ? [] : filled.map((table) => writtenAs(described, table, files));
  return Object.fromEntries(
    Object.entries({
      ...files,
      ...(described === undefined || written.length === 0
        ? {}
        : { "datapackage.json": dataPackage(written, described, decimal, about, words) }),
    }).map(([name, content]) => [`${folder}/${name}`, content]),
  );
}

const textFormats = ["csv", "json", "md", "tex"] as const;

function textOf(
  format: (typeof textFormats)[number],
  { rows }: SheetTable,
  decimal: DecimalMark,
): string {
  switch (format) {
    case "csv":
      return rowsToCsv(rows, { decimal });
    case "json":
      return `${JSON.stringify(rows, null, 2)}\n`;
    case "md":
      return rowsToMarkdown(rows);
    case "tex":
      return rowsToLatex(rows);
  }
}

function writtenAs(
  format: PackageFormat,
  table: SheetTable,
  files: Readonly<Record<string, string | Uint8Array>>,
): WrittenTable {
  const path = format === "xlsx" ? workbookName : `${table.name}.${format}`;
  return { ...table, path, content: files[path] ?? "" };
}
