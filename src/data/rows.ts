import type { DataIssue } from "../errors/data-issue.ts";
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
import { readDivision, readMass } from "./mass.ts";
import { type DecimalMarks, decimalMarks, numberReader } from "./numbers.ts";
import { type Cell, cellText, type Table, type TableRow } from "./table.ts";
import type { Catch, WrittenWeights } from "./types.ts";

/** What tells one catch from another. Known even when the rest of the row cannot be used. */
export type CatchIdentity = Pick<
  Catch,
  "row" | "farm" | "machine" | "season" | "bin" | "product" | "fill" | "catch" | "outlet"
>;

/** What the rows of a table say, each read on its own. */
export interface ReadRows {
  /** Of every row that can be told from the others. */
  readonly identities: readonly CatchIdentity[];
  /** Of every row that is right. */
  readonly catches: readonly Catch[];
  /** Of every row whose masses are right. */
  readonly written: readonly WrittenWeights[];
  readonly issues: readonly DataIssue[];
}

/**
 * Every row of a table, read on its own.
 *
 * @param marks  of the whole file, where the table holds some of its rows
 */
export function readRows(
  table: Table,
  columns: FoundColumns,
  place: Place,
  marks: DecimalMarks = decimalMarks(numberCells(table, columns), table.decimalMark),
): ReadRows {
  const read = {
    identities: [] as CatchIdentity[],
    catches: [] as Catch[],
    written: [] as WrittenWeights[],
    issues: [] as DataIssue[],
  };
  const [first] = table.rows;
  if (first === undefined) return read;
  const reading: Filled<RowReading> = {
    row: first,
    columns,
    marks,
    numberIn: numberReader(marks),
    place,
    issues: read.issues,
  };
  const recorded = recordedColumns.filter(({ name }) => columns.plain.has(name));
  for (const row of table.rows) {
    reading.row = row;
    readRow(reading, recorded, read);
  }
  return read;
}

function readRow(
  reading: RowReading,
  recorded: readonly RecordedColumn[],
  read: { identities: CatchIdentity[]; catches: Catch[]; written: WrittenWeights[] },
): void {
  const { row, columns, issues } = reading;
  const issuesBefore = issues.length;
  const identity = readIdentity(reading);
  const turns = numberField(reading, "turns");
  const leftOut = leftOutField(reading);
  const mass = readMass(reading, leftOut !== undefined);
  const divisionKg = readDivision(reading);
  const caught = { ...blankCatch };
  for (const column of recorded) recordIn(caught, column, reading);
  if (mass !== null) read.written.push(mass.written);
  if (identity === null) return;
  if (turns === null || mass === null || issues.length > issuesBefore) {
    read.identities.push(identity);
    return;
  }
  Object.assign(caught, identity);
  caught.turns = turns;
  caught.netKg = mass.netKg;
  caught.grossKg = mass.grossKg;
  caught.tareKg = mass.tareKg;
  caught.divisionKg = divisionKg;
  caught.leftOut = leftOut ?? null;
  if (columns.extra.length > 0) caught.extra = readExtra(row, columns);
  read.catches.push(caught);
  // What tells a catch from another is in the catch: a second record of it would only take memory.
  read.identities.push(caught);
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

type Filled<T> = { -readonly [Name in keyof T]: T[Name] };

/**
 * What every catch starts from. One object copied and filled in is made eight times as fast as one put together from its
 * parts, which of a million rows a person feels.
 */
const blankCatch: Filled<Catch> = {
  row: 0,
  farm: null,
  machine: null,
  season: null,
  bin: "",
  product: "",
  fill: 0,
  catch: 0,
  outlet: null,
  turns: 0,
  netKg: 0,
  grossKg: null,
  tareKg: null,
  divisionKg: null,
  ...(Object.fromEntries(
    recordedColumns.map(({ field }) => [field, null]),
  ) as FieldsOf<RecordedColumn>),
  leftOut: null,
  extra: {},
};

function recordIn(
  caught: Record<RecordedColumn["field"], unknown>,
  column: RecordedColumn,
  reading: RowReading,
): void {
  caught[column.field] = recordedField(reading, column);
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
