import Papa from "papaparse";
import type { Cell } from "./table.ts";
import type { Catch } from "./types.ts";

/** A row as a plain object; null is an empty cell. */
export type PlainRow = Readonly<Record<string, Cell>>;

/**
 * Rows as comma-separated text with a header, lines ended by a line feed, numbers with every digit they have. A column
 * stands where the first row that has it puts it; a key that a row lacks is an empty cell.
 *
 * @param rows  any number; none gives an empty text
 * Source       RFC 4180
 */
export function rowsToCsv(rows: readonly PlainRow[]): string {
  if (rows.length === 0) return "";
  const fields = columnsOf(rows);
  const data = rows.map((row) => fields.map((field) => row[field] ?? null));
  return `${Papa.unparse({ fields: [...fields], data }, { newline: "\n" })}\n`;
}

/** Every column of the rows, in the order in which they first appear. */
export function columnsOf(rows: readonly PlainRow[]): readonly string[] {
  return [...new Set(rows.flatMap((row) => Object.keys(row)))];
}

/**
 * Catches as the text of a file of catches, which `readCatches` reads back to the same catches but for their row numbers.
 * Masses in kg; optional columns in which nothing is known are left out.
 */
export function catchesToCsv(catches: readonly Catch[]): string {
  const rows = catches.map(catchRow);
  const needed = new Set(["bin", "product", "fill", "catch", "turns", "net_kg"]);
  const used = columnsOf(rows).filter(
    (name) => needed.has(name) || rows.some((row) => (row[name] ?? null) !== null),
  );
  return rowsToCsv(
    rows.map((row) => Object.fromEntries(used.map((name) => [name, row[name] ?? null]))),
  );
}

/** One catch under the headers of a file of catches, in the order of an empty sheet. */
export function catchRow(row: Catch): PlainRow {
  return {
    bin: row.bin,
    product: row.product,
    fill: row.fill,
    catch: row.catch,
    turns: row.turns,
    net_kg: row.netKg,
    gross_kg: row.grossKg,
    tare_kg: row.tareKg,
    division_kg: row.divisionKg,
    taken_at: row.takenAt,
    meter_rpm: row.meterRpm,
    bulk_density_kg_m3: row.bulkDensityKgPerM3,
    moisture_pct: row.moisturePercent,
    bin_level_pct: row.binLevelPercent,
    outlet: row.outlet,
    operator: row.operator,
    note: row.note,
    checked: row.checked,
    exclude: row.leftOut === null ? null : "yes",
    reason: row.leftOut,
    ...row.extra,
  };
}
