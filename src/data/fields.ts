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
  type PrintedNumber,
  readNumber,
} from "./numbers.ts";
import { keptText, remembered, rememberedCell } from "./remembered.ts";
import { type Cell, cellText, isBlank, type TableRow, tidyText } from "./table.ts";

/** The rows of a table, read one after the other. Problems are gathered here, so that a row tells all of its own. */
export interface RowReading {
  /** The one in hand. */
  row: TableRow;
  readonly columns: FoundColumns;
  readonly marks: DecimalMarks;
  readonly place: Place;
  readonly issues: DataIssue[];
}

/** Reads a field of the row in hand. Made once for a table, so that nothing is looked up again for every row. */
export type FieldReader<T> = () => T | null;

const noColumn = () => null;

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
): FieldReader<string | number> {
  if (name === "checked") return checkedField(reading);
  if (type === "date") return dateField(reading, name);
  return type === "string" ? textField(reading, name) : numberField(reading, name);
}

/** Text of a plain column; null when blank or when the file has no such column. Inner runs of space become one. */
export function textField(reading: RowReading, name: PlainColumn): FieldReader<string> {
  const column = reading.columns.plain.get(name);
  if (column === undefined) return noColumn;
  const { index, header } = column;
  const rules = columnByName[name];
  const textIn = rememberedCell((cell) => {
    const text = keptText(tidyText(cellText(cell)));
    return { text, failed: failedFormula.test(text) };
  });
  return () => {
    const { text, failed } = textIn(reading.row.cells[index] ?? null);
    if (failed) return complain(reading, header, { problem: "formula-failed", facts: {} }, text);
    if (text !== "") return text;
    return rules.required ? complain(reading, header, valueMissing(rules)) : null;
  };
}

/** Number of a plain column, within the limits of the column table; null when blank or wrong. */
export function numberField(reading: RowReading, name: PlainColumn): FieldReader<number> {
  const column = reading.columns.plain.get(name);
  if (column === undefined) return noColumn;
  const rules = columnByName[name];
  const figureIn = figureField(reading, column, rules);
  return () => {
    const found = figureIn();
    if (found === null) return null;
    if (rules.type === "integer" && !Number.isInteger(found.value)) {
      const problem: Problem = { problem: "not-whole", facts: wanted(rules) };
      return complain(reading, column.header, problem, found.written);
    }
    return found.value;
  };
}

/** A number with the text that says it. */
export interface WrittenNumber extends PrintedNumber {
  readonly written: string;
}

/** A number as written, checked against the limits of its column; null when blank or wrong. */
export function figureField(
  reading: RowReading,
  { index, header }: FoundColumn,
  rules: CatchColumn,
): FieldReader<WrittenNumber> {
  const numberIn = rememberedCell((cell) => checkedNumber(cell, rules, reading.marks));
  return () => {
    const { figure, problem, written } = numberIn(reading.row.cells[index] ?? null);
    return problem === null ? figure : complain(reading, header, problem, written);
  };
}

function checkedNumber(
  cell: Cell,
  rules: CatchColumn,
  marks: DecimalMarks,
): {
  readonly figure: WrittenNumber | null;
  readonly problem: Problem | null;
  readonly written: string;
} {
  const written = keptText(cellText(cell));
  if (isBlank(cell))
    return { figure: null, problem: rules.required ? valueMissing(rules) : null, written };
  const read = readNumber(cell, marks);
  const problem = read.ok
    ? outOfRange(read.value, rules)
    : unreadable(cell, read.why, rules, marks);
  if (problem !== null || !read.ok) return { figure: null, problem, written };
  const { value, decimals } = read;
  return { figure: { value, decimals, written }, problem, written };
}

/** Date of a plain column; null when blank, or when it is no date that exists. */
function dateField(reading: RowReading, name: PlainColumn): FieldReader<string> {
  const textIn = textField(reading, name);
  const header = headerIn(reading.columns, name);
  const dateIn = remembered((text) => ({ date: readDate(text) }));
  return () => {
    const text = textIn();
    if (text === null) return null;
    return (
      dateIn(text).date ?? complain(reading, header, { problem: "not-a-date", facts: {} }, text)
    );
  };
}

export const yes = new Set(["yes", "y", "ja", "j", "true", "1", "x"]);
export const no = new Set(["no", "n", "nein", "false", "0", ""]);

/**
 * Why the person leaves a catch out: undefined when it counts, null when it is left out for a reason that is not told.
 * A reason alone is refused too: nobody can say whether leaving out was meant.
 */
export function leftOutField(reading: RowReading): () => string | null | undefined {
  const { plain } = reading.columns;
  if (!plain.has("reason") && !plain.has("exclude")) return () => undefined;
  const [reasonIn, answerIn] = [textField(reading, "reason"), textField(reading, "exclude")];
  const header = headerIn(reading.columns, "exclude");
  const reasonHeader = headerIn(reading.columns, "reason");
  return () => {
    const reason = reasonIn();
    const answer = answerIn()?.toLowerCase() ?? "";
    if (yes.has(answer))
      return reason ?? complain(reading, reasonHeader, { problem: "reason-missing", facts: {} });
    if (answer === "" && reason !== null) {
      complain(reading, header, { problem: "exclude-missing", facts: {} });
    } else if (!no.has(answer)) {
      complain(reading, header, { problem: "not-yes-no", facts: {} }, answer);
    }
    return undefined;
  };
}

/** What was looked at. A bare no is refused: it would pass for a text, and the catch for one that was looked at. */
function checkedField(reading: RowReading): FieldReader<string> {
  const textIn = textField(reading, "checked");
  const header = headerIn(reading.columns, "checked");
  return () => {
    const text = textIn();
    if (text === null || !no.has(text.toLowerCase())) return text;
    return complain(reading, header, { problem: "checked-denied", facts: {} }, text);
  };
}

function valueMissing(rules: CatchColumn): Problem {
  return { problem: "value-missing", facts: wanted(rules) };
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
