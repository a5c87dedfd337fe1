import type { DataIssue } from "../errors/data-issue.ts";
import type { Wanted, WantedFigure } from "../errors/problems/table.ts";
import type { Problem } from "../errors/problems.ts";
import { columnByName, type PlainColumn, type RecordedColumn } from "./column-kinds.ts";
import type { CatchColumn } from "./columns.ts";
import { readDate } from "./dates.ts";
import { type FoundColumn, type FoundColumns, headerIn } from "./headers.ts";
import { dataIssue, type Place } from "./issues.ts";
import {
  clearSpellings,
  type DecimalMarks,
  markOf,
  type NumberRead,
  type PrintedNumber,
} from "./numbers.ts";
import { remembered } from "./remembered.ts";
import { type Cell, cellText, isBlank, type TableRow, tidyText } from "./table.ts";

/** One row being read. Problems are gathered here, so that a row tells all of its own. */
export interface RowReading {
  readonly row: TableRow;
  readonly columns: FoundColumns;
  readonly marks: DecimalMarks;
  /** `readNumber` with these marks. */
  readonly numberIn: (cell: Cell) => NumberRead;
  readonly place: Place;
  readonly issues: DataIssue[];
}

/** Notes a problem of the row under a header. Returns null, so that a field can be answered with it. */
export function complain(
  { issues, place, row }: RowReading,
  header: string,
  problem: Problem,
  received = "",
): null {
  issues.push(dataIssue({ ...place, row: row.number, column: header }, problem, received));
  return null;
}

/** What spreadsheets show, and export, where a formula failed. */
export const failedFormula = /^#(?:N\/A|REF!|DIV\/0!|VALUE!|NAME\?|NUM!|NULL!)$/;

/** A column noted beside the weighing, as its type says; null when blank, wrong, or when the file has no such column. */
export function recordedField(
  reading: RowReading,
  { name, type }: RecordedColumn,
): string | number | null {
  if (name === "checked") return checkedField(reading);
  if (type === "date") return dateField(reading, name);
  return type === "string" ? textField(reading, name) : numberField(reading, name);
}

/** Text of a plain column; null when blank or when the file has no such column. Inner runs of space become one. */
export function textField(reading: RowReading, name: PlainColumn): string | null {
  const column = reading.columns.plain.get(name);
  if (column === undefined) return null;
  const text = tidyText(cellText(reading.row.cells[column.index]));
  if (failedFormula.test(text)) {
    return complain(reading, column.header, { problem: "formula-failed", facts: {} }, text);
  }
  if (text !== "") return text;
  const rules = columnByName[name];
  return rules.required ? missing(reading, column, rules) : null;
}

/** Number of a plain column, within the limits of the column table; null when blank or wrong. */
export function numberField(reading: RowReading, name: PlainColumn): number | null {
  const column = reading.columns.plain.get(name);
  if (column === undefined) return null;
  const rules = columnByName[name];
  const found = printedNumber(reading, column, rules);
  if (found === null) return null;
  if (rules.type === "integer" && !Number.isInteger(found.value)) {
    const written = cellText(reading.row.cells[column.index]);
    const problem: Problem = { problem: "not-whole", facts: wanted(rules) };
    return complain(reading, column.header, problem, written);
  }
  return found.value;
}

/** A number as written, checked against the limits of its column; null when blank or wrong. */
export function printedNumber(
  reading: RowReading,
  column: FoundColumn,
  rules: CatchColumn,
): PrintedNumber | null {
  const cell = reading.row.cells[column.index] ?? null;
  if (isBlank(cell)) return rules.required ? missing(reading, column, rules) : null;
  const read = reading.numberIn(cell);
  const problem = read.ok
    ? outOfRange(read.value, rules)
    : unreadable(cell, read.why, rules, reading.marks);
  if (problem !== null) return complain(reading, column.header, problem, cellText(cell));
  return read.ok ? read : null;
}

const dateIn = remembered((text) => ({ date: readDate(text) }));

/** Date of a plain column; null when blank, or when it is no date that exists. */
function dateField(reading: RowReading, name: PlainColumn): string | null {
  const text = textField(reading, name);
  if (text === null) return null;
  return (
    dateIn(text).date ??
    complain(reading, headerIn(reading.columns, name), { problem: "not-a-date", facts: {} }, text)
  );
}

export const yes = new Set(["yes", "y", "true", "1", "x"]);
export const no = new Set(["no", "n", "false", "0", ""]);

/**
 * Why the person leaves a catch out: undefined when it counts, null when it is left out for a reason that is not told.
 * A reason alone is refused too: nobody can say whether leaving out was meant.
 */
export function leftOutField(reading: RowReading): string | null | undefined {
  const reason = textField(reading, "reason");
  const answer = textField(reading, "exclude")?.toLowerCase() ?? "";
  const header = headerIn(reading.columns, "exclude");
  if (yes.has(answer))
    return (
      reason ??
      complain(reading, headerIn(reading.columns, "reason"), {
        problem: "reason-missing",
        facts: {},
      })
    );
  if (answer === "" && reason !== null) {
    complain(reading, header, { problem: "exclude-missing", facts: {} });
  } else if (!no.has(answer)) {
    complain(reading, header, { problem: "not-yes-no", facts: {} }, answer);
  }
  return undefined;
}

/** What was looked at. A bare no is refused: it would pass for a text, and the catch for one that was looked at. */
function checkedField(reading: RowReading): string | null {
  const text = textField(reading, "checked");
  if (text === null || !no.has(text.toLowerCase())) return text;
  const header = headerIn(reading.columns, "checked");
  return complain(reading, header, { problem: "checked-denied", facts: {} }, text);
}

function missing(reading: RowReading, column: FoundColumn, rules: CatchColumn): null {
  return complain(reading, column.header, { problem: "value-missing", facts: wanted(rules) });
}

function wanted(rules: CatchColumn): Wanted {
  return rules.type === "string" ? { kind: "text" } : wantedFigure(rules);
}

function wantedFigure({ type, minimum, maximum, unit, required }: CatchColumn): WantedFigure {
  const kind = type === "integer" ? "whole" : "number";
  return { kind, from: minimum, to: maximum, unit, required };
}

function outOfRange(value: number, rules: CatchColumn): Problem | null {
  const low = rules.minimum !== null && value < rules.minimum;
  const high = rules.maximum !== null && value > rules.maximum;
  return low || high ? { problem: "out-of-range", facts: wantedFigure(rules) } : null;
}

function unreadable(
  cell: Cell,
  why: "not-a-number" | "not-finite" | "decimal-ambiguous",
  rules: CatchColumn,
  marks: DecimalMarks,
): Problem {
  if (why !== "decimal-ambiguous") return { problem: why, facts: wantedFigure(rules) };
  const [decimal, thousands] = clearSpellings(cellText(cell), marks);
  const settles = !marks.comma && !marks.point && markOf(marks) === null;
  return { problem: why, facts: { decimal, thousands, settles } };
}
