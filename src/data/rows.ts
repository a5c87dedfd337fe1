import type { DataIssue } from "../errors/data-issue.ts";
import { blankCatch } from "./blank-catch.ts";
import { readEach } from "./budget.ts";
import {
  columnByName,
  plainColumns,
  type RecordedColumn,
  recordedColumns,
} from "./column-kinds.ts";
import { leftOutField, numberField, type RowReading, recordedField, textField } from "./fields.ts";
import type { FoundColumns } from "./headers.ts";
import type { Place } from "./issues.ts";
import { divisionField, massField } from "./mass.ts";
import { type DecimalMarks, decimalMarks } from "./numbers.ts";
import { keptText, rememberedCell } from "./remembered.ts";
import { type Cell, cellText, isBlank, type Table, type TableRow } from "./table.ts";
import type { Catch, MissedCatch, WrittenWeights } from "./types.ts";

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
  /** Of every row that is left out and has no mass. */
  readonly missed: readonly MissedCatch[];
  readonly issues: readonly DataIssue[];
}

/**
 * Every row of a table, read on its own; those behind as many problems as are named of one file are only counted.
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
    identities: [] as Catch[],
    catches: [] as Catch[],
    written: [] as WrittenWeights[],
    missed: [] as MissedCatch[],
    issues: [] as DataIssue[],
  };
  const reading: RowReading = { row: noRow, columns, marks, place, issues: read.issues };
  const readRow = rowReader(reading, read);
  readEach(table.rows, reading, (row) => {
    reading.row = row;
    readRow();
  });
  return read;
}

const noRow: TableRow = { number: 0, cells: [] };

/** Reads the row in hand. Each of its fields is found once for all rows. */
function rowReader(
  reading: RowReading,
  read: {
    identities: Catch[];
    catches: Catch[];
    written: WrittenWeights[];
    missed: MissedCatch[];
  },
): () => void {
  const { columns, issues } = reading;
  const farmIn = textField(reading, "farm");
  const machineIn = textField(reading, "machine");
  const seasonIn = textField(reading, "season");
  const binIn = textField(reading, "bin");
  const productIn = textField(reading, "product");
  const fillIn = numberField(reading, "fill");
  const numberIn = numberField(reading, "catch");
  const outletIn = textField(reading, "outlet");
  const turnsIn = numberField(reading, "turns");
  const leftOutIn = leftOutField(reading);
  const massIn = massField(reading);
  const missedIn = missedReason(reading);
  const divisionIn = divisionField(reading);
  const recorded = recordedColumns
    .filter(({ name }) => columns.plain.has(name))
    .map((column) => ({ field: column.field, read: recordedField(reading, column) }));
  const extraIn = extraReader(columns);
  return () => {
    const issuesBefore = issues.length;
    const caught = { ...blankCatch };
    caught.row = reading.row.number;
    caught.farm = farmIn();
    caught.machine = machineIn();
    caught.season = seasonIn();
    const [bin, product, fill, number] = [binIn(), productIn(), fillIn(), numberIn()];
    caught.outlet = outletIn();
    const missed = missedIn();
    const turns = missed === null ? turnsIn() : null;
    const leftOut = missed ?? leftOutIn();
    const mass = missed === null ? massIn(leftOut !== undefined) : null;
    if (missed === null) {
      caught.divisionKg = divisionIn();
      for (const { field, read: valueIn } of recorded) record(caught, field, valueIn());
    }
    caught.leftOut = leftOut ?? null;
    if (mass !== null) read.written.push(mass.written);
    if (bin === null || product === null || fill === null || number === null) return;
    caught.bin = bin;
    caught.product = product;
    caught.fill = fill;
    caught.catch = number;
    // What tells a catch from another is in the catch: a second record of it would only take memory.
    read.identities.push(caught);
    if (missed !== null) {
      const { row, farm, machine, season, outlet } = caught;
      const where = { row, farm, machine, season, bin, product, fill, catch: number, outlet };
      read.missed.push({ ...where, reason: missed });
    }
    if (turns === null || mass === null || issues.length > issuesBefore) return;
    caught.turns = turns;
    caught.netKg = mass.netKg;
    caught.grossKg = mass.grossKg;
    caught.tareKg = mass.tareKg;
    if (extraIn !== null) caught.extra = extraIn(reading.row);
    read.catches.push(caught);
  };
}

/** Reads why a catch without a mass is left out; null: it has a mass, or is not left out, or nobody says why. */
function missedReason(reading: RowReading): () => string | null {
  const masses = reading.columns.mass.filter(({ kind }) => kind !== "division");
  const looked: RowReading = { ...reading, issues: [] };
  const leftOutIn = leftOutField(looked);
  return () => {
    const { cells } = reading.row;
    if (masses.some(({ index }) => !isBlank(cells[index]))) return null;
    looked.row = reading.row;
    looked.issues.length = 0;
    const reason = leftOutIn();
    return looked.issues.length === 0 ? (reason ?? null) : null;
  };
}

function record(
  caught: Record<RecordedColumn["field"], unknown>,
  field: RecordedColumn["field"],
  value: string | number | null,
): void {
  caught[field] = value;
}

/** What stands in columns that only the person's file knows; null: it has none. */
function extraReader({
  extra,
}: FoundColumns): ((row: TableRow) => Readonly<Record<string, string>>) | null {
  if (extra.length === 0) return null;
  const textIn = rememberedCell((cell) => keptText(cellText(cell)));
  return ({ cells }) =>
    Object.fromEntries(extra.map(({ header, index }) => [header, textIn(cells[index] ?? null)]));
}

function* numberCells(table: Table, columns: FoundColumns): Generator<Cell> {
  const numeric = plainColumns.filter((name) =>
    ["number", "integer"].includes(columnByName[name].type),
  );
  const indices = [
    ...numeric.flatMap((name) => columns.plain.get(name)?.index ?? []),
    ...columns.mass.map(({ index }) => index),
  ];
  for (const { cells } of table.rows) {
    for (const index of indices) yield cells[index] ?? null;
  }
}
