import type { DataIssue } from "../errors/data-issue.ts";
import { restNotRead } from "./budget.ts";
import {
  columnByName,
  type FieldsOf,
  plainColumns,
  type RecordedColumn,
  recordedColumns,
} from "./column-kinds.ts";
import { leftOutField, numberField, type RowReading, recordedField, textField } from "./fields.ts";
import type { FoundColumns } from "./headers.ts";
import type { Place } from "./issues.ts";
import { limits } from "./limits.ts";
import { readDivision, readMass } from "./mass.ts";
import { type DecimalMarks, decimalMarks } from "./numbers.ts";
import { type Cell, cellText, type Table, type TableRow } from "./table.ts";
import type { Catch, WrittenWeights } from "./types.ts";

/** What tells one catch from another. Known even when the rest of the row cannot be used. */
export type CatchIdentity = Pick<
  Catch,
  "row" | "farm" | "machine" | "season" | "bin" | "product" | "fill" | "catch" | "outlet"
>;

export interface ReadRow {
  readonly identity: CatchIdentity | null;
  readonly catch: Catch | null;
  readonly written: WrittenWeights | null;
  readonly issues: readonly DataIssue[];
}

/** Every row of a table, read on its own. */
export function readRows(table: Table, columns: FoundColumns, place: Place): readonly ReadRow[] {
  const marks = decimalMarks(numberCells(table, columns), table.decimalMark);
  const read: ReadRow[] = [];
  let problems = 0;
  for (const row of table.rows) {
    const one = readRow(row, columns, marks, place);
    problems += one.issues.length;
    read.push(one);
    const left = table.rows.length - read.length;
    if (problems < limits.problems || left === 0) continue;
    const issues = [...one.issues, restNotRead({ ...place, row: row.number }, left)];
    return [...read.slice(0, -1), { ...one, issues }];
  }
  return read;
}

function readRow(row: TableRow, columns: FoundColumns, marks: DecimalMarks, place: Place): ReadRow {
  const reading: RowReading = { row, columns, marks, place, issues: [] };
  const identity = readIdentity(reading);
  const turns = numberField(reading, "turns");
  const leftOut = leftOutField(reading);
  const mass = readMass(reading, leftOut !== undefined);
  const divisionKg = readDivision(reading);
  const recorded = readRecorded(reading);
  const { issues } = reading;
  const written = mass?.written ?? null;
  if (identity === null || turns === null || mass === null || issues.length > 0) {
    return { identity, catch: null, written, issues };
  }
  const { netKg, grossKg, tareKg } = mass;
  const extra = readExtra(row, columns);
  const weighed = { ...identity, turns, netKg, grossKg, tareKg, divisionKg };
  return {
    identity,
    catch: { ...weighed, ...recorded, leftOut: leftOut ?? null, extra },
    written,
    issues,
  };
}

function readIdentity(reading: RowReading): CatchIdentity | null {
  const farm = textField(reading, "farm");
  const machine = textField(reading, "machine");
  const season = textField(reading, "season");
  const bin = textField(reading, "bin");
  const product = textField(reading, "product");
  const fill = numberField(reading, "fill");
  const number = numberField(reading, "catch");
  const outlet = textField(reading, "outlet");
  if (bin === null || product === null || fill === null || number === null) return null;
  const keys = { farm, machine, season };
  return { row: reading.row.number, ...keys, bin, product, fill, catch: number, outlet };
}

function readRecorded(reading: RowReading): FieldsOf<RecordedColumn> {
  return Object.fromEntries(
    recordedColumns.map((column) => [column.field, recordedField(reading, column)]),
  ) as FieldsOf<RecordedColumn>;
}

function readExtra(row: TableRow, columns: FoundColumns): Readonly<Record<string, string>> {
  return Object.fromEntries(
    columns.extra.map(({ header, index }) => [header, cellText(row.cells[index])]),
  );
}

function* numberCells(table: Table, columns: FoundColumns): Generator<Cell> {
  const numeric = plainColumns.filter((name) =>
    ["number", "integer"].includes(columnByName[name].type),
  );
  const indices = [
    ...numeric.flatMap((name) => columns.plain.get(name)?.index ?? []),
    ...columns.mass.map(({ index }) => index),
  ];
  for (const row of table.rows) {
    for (const index of indices) yield row.cells[index] ?? null;
  }
}
