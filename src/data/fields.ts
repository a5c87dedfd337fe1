import type { DataIssue } from "../errors/data-issue.ts";
import { columnByName, type PlainColumn, type RecordedColumn } from "./column-kinds.ts";
import type { CatchColumn } from "./columns.ts";
import { readDate } from "./dates.ts";
import { type FoundColumn, type FoundColumns, headerIn } from "./headers.ts";
import { dataIssue, type Place, type Problem } from "./issues.ts";
import {
  clearSpellings,
  type DecimalMarks,
  markOf,
  type PrintedNumber,
  readNumber,
} from "./numbers.ts";
import { type Cell, cellText, isBlank, type TableRow, tidyText } from "./table.ts";

/** One row being read. Problems are gathered here, so that a row tells all of its own. */
export interface RowReading {
  readonly row: TableRow;
  readonly columns: FoundColumns;
  readonly marks: DecimalMarks;
  readonly place: Place;
  readonly issues: DataIssue[];
}

/** Notes a problem of the row under a header. Returns null, so that a field can be answered with it. */
export function complain(reading: RowReading, header: string, problem: Problem): null {
  reading.issues.push(
    dataIssue({ ...reading.place, row: reading.row.number, column: header }, problem),
  );
  return null;
}

/** What spreadsheets show, and export, where a formula failed. */
const failedFormula = /^#(?:N\/A|REF!|DIV\/0!|VALUE!|NAME\?|NUM!|NULL!)$/;

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
    return complain(reading, column.header, {
      code: "value-missing",
      received: text,
      expected: "a text",
      remedy: "The formula of this cell failed: write the text itself, or empty the cell.",
    });
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
    return complain(reading, column.header, {
      code: "not-whole",
      received: cellText(reading.row.cells[column.index]),
      expected: wanted(rules),
      remedy: "Number fills and catches 1, 2, 3 and so on.",
    });
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
  const read = readNumber(cell, reading.marks);
  const problem = read.ok
    ? outOfRange(cell, read.value, rules)
    : unreadable(cell, read.why, rules, reading.marks);
  if (problem !== null) return complain(reading, column.header, problem);
  return read.ok ? read : null;
}

/** Date of a plain column; null when blank, or when it is no date that exists. */
function dateField(reading: RowReading, name: PlainColumn): string | null {
  const text = textField(reading, name);
  if (text === null) return null;
  return (
    readDate(text) ??
    complain(reading, headerIn(reading.columns, name), {
      code: "not-a-date",
      received: text,
      expected: "a date that exists, year first: 2026-04-12 or 2026-04-12T07:30",
      remedy: "Write it so, or leave the cell empty. In a spreadsheet, format the cell as a date.",
    })
  );
}

const yes = new Set(["yes", "y", "true", "1", "x"]);
const no = new Set(["no", "n", "false", "0", ""]);

/**
 * Why the person leaves a catch out: undefined when it counts, null when it is left out for a reason that is not told.
 * A reason alone is refused too: nobody can say whether leaving out was meant.
 */
export function leftOutField(reading: RowReading): string | null | undefined {
  const reason = textField(reading, "reason");
  const answer = textField(reading, "exclude")?.toLowerCase() ?? "";
  const header = headerIn(reading.columns, "exclude");
  if (yes.has(answer))
    return reason ?? complain(reading, headerIn(reading.columns, "reason"), noReason);
  if (answer === "" && reason !== null) {
    complain(reading, header, {
      code: "value-missing",
      received: "",
      expected: "yes or no beside the reason",
      remedy: "Write yes to leave the catch out, or no to keep it.",
    });
  } else if (!no.has(answer)) {
    complain(reading, header, {
      code: "not-yes-no",
      received: answer,
      expected: "yes, no, true, false, 1, 0, x or nothing",
      remedy: "Write yes to leave the catch out, with the reason beside it; otherwise no.",
    });
  }
  return undefined;
}

/** What was looked at. A bare no is refused: it would pass for a text, and the catch for one that was looked at. */
function checkedField(reading: RowReading): string | null {
  const text = textField(reading, "checked");
  if (text === null || !no.has(text.toLowerCase())) return text;
  return complain(reading, headerIn(reading.columns, "checked"), {
    code: "value-missing",
    received: text,
    expected: "what was looked at, in words, or nothing",
    remedy: "Write it, such as weighed again, bag empty; leave the cell empty where nobody looked.",
  });
}

const noReason: Problem = {
  code: "value-missing",
  received: "",
  expected: "the reason why this catch is left out",
  remedy: "Write the reason, such as bag slipped, or let exclude be no.",
};

function missing(reading: RowReading, column: FoundColumn, rules: CatchColumn): null {
  return complain(reading, column.header, {
    code: "value-missing",
    received: "",
    expected: wanted(rules),
    remedy: "Fill the cell in, or delete the row.",
  });
}

function wanted(rules: CatchColumn): string {
  if (rules.type === "string") return "a text";
  const kind = rules.type === "integer" ? "a whole number" : "a number";
  const unit = rules.unit === null ? "" : `, in ${rules.unit}`;
  return `${kind} from ${rules.minimum} to ${rules.maximum}${unit}`;
}

function outOfRange(cell: Cell, value: number, rules: CatchColumn): Problem | null {
  const low = rules.minimum !== null && value < rules.minimum;
  const high = rules.maximum !== null && value > rules.maximum;
  if (!low && !high) return null;
  return {
    code: "out-of-range",
    received: cellText(cell),
    expected: wanted(rules),
    remedy: `Correct the figure, or ${withoutIt(rules)}.`,
  };
}

function withoutIt({ required }: CatchColumn): string {
  return required ? "delete the row" : "leave the cell empty";
}

function unreadable(
  cell: Cell,
  why: "not-a-number" | "not-finite" | "decimal-ambiguous",
  rules: CatchColumn,
  marks: DecimalMarks,
): Problem {
  const received = cellText(cell);
  if (why === "decimal-ambiguous") {
    const [decimal, thousands] = clearSpellings(received, marks);
    const unknown = !marks.comma && !marks.point && markOf(marks) === null;
    const settles = unknown ? ` One such figure as ${decimal} settles the others too.` : "";
    return {
      code: why,
      received,
      expected: "a number that can be read in one way only",
      remedy: `Write ${decimal} or ${thousands}, whichever is meant.${settles}`,
    };
  }
  const instead = withoutIt(rules);
  return {
    code: why,
    received,
    expected: wanted(rules),
    remedy:
      why === "not-finite"
        ? `Write the figure itself, or ${instead} if it is not known.`
        : `Write the figure alone, without unit, spaces or thousands separators, or ${instead}.`,
  };
}
