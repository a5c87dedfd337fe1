import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { TableName } from "../../analysis/tables/table-names.ts";
import { type DecimalMark, delimiters, type PlainRow } from "../../data/write-csv.ts";
import type { Words } from "../../wording/words.ts";
import type { DescribedColumn } from "./described.ts";

/** A table as it was written into a file of its own, or as a sheet of a workbook. */
export interface WrittenTable {
  readonly name: TableName;
  readonly rows: readonly PlainRow[];
  readonly columns: readonly DescribedColumn[];
  /** Beside the descriptor. */
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** What a data package is about. */
export interface PackageAbout {
  readonly title: string;
  /** Version of evencatch. */
  readonly version: string;
  /** Base names of the files it was made from. */
  readonly sources: readonly string[];
}

/** Formats that a data package can describe, by what they are called there. */
export const packageFormats = {
  csv: "text/csv",
  json: "application/json",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
} as const;

export type PackageFormat = keyof typeof packageFormats;

/**
 * The descriptor of tables after the open Data Package standard, version 2, as JSON: each column with name, type, unit and
 * meaning. Of CSV it is a tabular data package of version 1 too.
 *
 * Source  datapackage.org, Data Package 2.0; specs.frictionlessdata.io, Tabular Data Package 1.0
 */
export function dataPackage(
  tables: readonly WrittenTable[],
  format: PackageFormat,
  decimal: DecimalMark,
  about: PackageAbout,
  { tables: say, format: { language } }: Pick<Words, "tables" | "format">,
): string {
  const isCsv = format === "csv";
  const descriptor = {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    ...(isCsv ? { profile: "tabular-data-package" } : {}),
    name: "evencatch-tables",
    title: about.title,
    description: say.title,
    language,
    ...(about.sources.length === 0 ? {} : { sources: about.sources.map((title) => ({ title })) }),
    evencatch: about.version,
    resources: tables.map(({ name, rows, columns, path, content }) => ({
      name,
      ...(isCsv ? { profile: "tabular-data-resource" } : {}),
      type: "table",
      path,
      title: say.rows[name],
      format,
      mediatype: packageFormats[format],
      ...(format === "xlsx" ? {} : { encoding: "utf-8" }),
      ...fileFacts(content),
      ...dialectOf(format, decimal, name),
      schema: {
        fields: columns.map((column) => fieldOf(column, isCsv ? decimal : "point")),
        missingValues: [""],
        ...keyOf(name, columns, rows),
      },
    })),
  };
  return `${JSON.stringify(descriptor, null, 2)}\n`;
}

function fileFacts(content: string | Uint8Array) {
  const bytes = typeof content === "string" ? utf8ToBytes(content) : content;
  return { bytes: bytes.length, hash: `sha256:${bytesToHex(sha256(bytes))}` };
}

function dialectOf(format: PackageFormat, decimal: DecimalMark, sheetName: string) {
  if (format === "xlsx") return { dialect: { sheetName } };
  return format === "csv" ? { dialect: { delimiter: delimiters[decimal], doubleQuote: true } } : {};
}

function fieldOf({ name, type, format, unit, meaning }: DescribedColumn, decimal: DecimalMark) {
  return {
    name,
    type,
    ...(format === undefined ? {} : { format }),
    description: meaning,
    ...(unit === null ? {} : { unit }),
    ...(decimal === "comma" && type === "number" ? { decimalChar: "," } : {}),
  };
}

/** Columns that tell the rows of a table apart, where it has one row for each. */
const keys: Partial<Readonly<Record<TableName, readonly string[]>>> = {
  bins: ["farm", "machine", "bin", "product"],
  catches: ["farm", "machine", "season", "bin", "product", "fill", "catch"],
  fills: ["farm", "machine", "season", "bin", "product", "fill"],
  drift_steps: ["farm", "machine", "season", "bin", "product", "fill"],
  drift_stretches: ["farm", "machine", "bin", "product", "stretch"],
  products: ["product"],
};

/** A key with a gap in it, or with the same value twice, is none. */
function keyOf(
  table: TableName,
  columns: readonly DescribedColumn[],
  rows: readonly PlainRow[],
): { readonly primaryKey?: readonly string[] } {
  const key = keys[table]?.filter((name) => columns.some((column) => column.name === name)) ?? [];
  const found = rows.map((row) => key.map((name) => row[name] ?? null));
  const isKey =
    key.length > 0 &&
    found.every((cells) => !cells.includes(null)) &&
    new Set(found.map((cells) => JSON.stringify(cells))).size === rows.length;
  return isKey ? { primaryKey: key } : {};
}
