import type { DataIssue } from "../errors/data-issue.ts";
import type { Caution } from "../results/caution.ts";
import { firstOf, tooMany } from "./budget.ts";
import { readCsv } from "./csv.ts";
import { decodeText } from "./decode.ts";
import { type GivenKeys, withKeys } from "./given-keys.ts";
import { findColumns, massHeader } from "./headers.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { readJson } from "./json.ts";
import { limits } from "./limits.ts";
import { missedCautions } from "./missed.ts";
import { asOneBin } from "./one-bin.ts";
import { readRows } from "./rows.ts";
import { type CatchSource, type FileFormat, formatOf, largestBytes, tooLarge } from "./source.ts";
import { type Suspecting, suspicions, suspicionsOfTyped } from "./suspicions.ts";
import type { Cell, Table } from "./table.ts";
import { checkTogether } from "./together.ts";
import type { Catch, CatchLog, MassUnit, MissedCatch, WrittenWeights } from "./types.ts";

/** A file whose text is the table itself: everything but a workbook. */
export type TextFormat = Exclude<FileFormat, "xlsx">;

/**
 * Catches from text at once, for where nothing may be waited for and no workbook can come: the twin of `checkCatches`.
 *
 * @param source  name and content; by an ending .json a list, else a table
 */
export function checkText(source: CatchSource): Checked<CatchLog> {
  const table = readTextTable(source, formatOf(source.name) === "json" ? "json" : "csv");
  return table.ok ? checkTable(table.value, source.name) : table;
}

/** The same of separated values under the names that are read, of which less is suspected than of a file with columns of its own. */
export function checkTyped(source: CatchSource): Checked<CatchLog> {
  const table = readSeparated(source);
  return table.ok ? checkedWith(suspicionsOfTyped, table.value, source.name, {}) : table;
}

/** The same of one row that is in no file: its cells by the names that are read. */
export function checkEntered(
  cells: Readonly<Record<string, Cell>>,
  source: string,
): Checked<CatchLog> {
  const row = { number: 1, cells: Object.values(cells) };
  const headers = Object.keys(cells);
  const table: Table = {
    headers,
    headerRow: null,
    rows: [row],
    issues: [],
    rowKind: "entry",
    decimalMark: "point",
  };
  return checkedWith(suspicionsOfTyped, table, source, {});
}

/** The table in a text file. */
export function readTextTable(source: CatchSource, format: TextFormat): Checked<Table> {
  if (format === "csv") return readSeparated(source);
  const text = textOf(source, format);
  return text.ok ? readJson(source.name, text.value) : text;
}

/** Apart, so that where no list comes nothing is carried that reads one. */
function readSeparated(source: CatchSource): Checked<Table> {
  const text = textOf(source, "csv");
  return text.ok ? readCsv(source.name, text.value) : text;
}

/** What is written in a text file, unless it is too large. */
export function textOf(source: CatchSource, format: TextFormat): Checked<string> {
  const size = "bytes" in source ? source.bytes.length : source.text.length;
  return size > largestBytes[format]
    ? failed([tooLarge(source.name, format, size)])
    : decodeText(source, format === "csv" ? "table" : "list");
}

/**
 * The catches of a table, or everything that is wrong with it.
 *
 * @param keys    farm, machine or season of all its rows
 * @throws        OptionError for a key that does not apply
 */
export function checkTable(table: Table, source: string, keys: GivenKeys = {}): Checked<CatchLog> {
  return checkedWith(suspicions, table, source, keys);
}

function checkedWith(
  suspected: Suspecting,
  table: Table,
  source: string,
  keys: GivenKeys,
): Checked<CatchLog> {
  return checkedPart(readPart(table, source, keys), suspected);
}

/** What one file brings as a log of its own. */
function checkedPart(part: Checked<LogPart>, suspected: Suspecting): Checked<CatchLog> {
  if (!part.ok) return part;
  const unweighed = nothingWeighed([part.value]);
  return unweighed.length > 0 ? failed(unweighed) : passed(logOf(part.value, suspected));
}

/** What one file brings to a log, which may have others beside it. */
export interface LogPart {
  readonly source: string;
  readonly catches: readonly Catch[];
  readonly written: readonly WrittenWeights[];
  readonly missed: readonly MissedCatch[];
  /** What is said of the file as it stands, whatever lies beside it. */
  readonly findings: readonly Caution[];
  /** Where a mass would stand. */
  readonly massAt: Place;
}

/** What a table brings to a log; it may be no catch that was weighed. */
export function readPart(table: Table, source: string, keys: GivenKeys = {}): Checked<LogPart> {
  const place: Place = { source, rowKind: table.rowKind };
  const { length: width } = table.headers;
  if (width > limits.columns) return failed([tooMany(place, "columns", width, limits.columns)]);
  if (table.rows.length === 0) {
    return failed(table.issues.length === 0 ? [noRows(place)] : table.issues);
  }
  const oneBin = asOneBin(table);
  const whole = withKeys(oneBin?.table ?? table, keys);
  const { columns, issues: headerIssues } = findColumns(whole, place);
  const rows = readRows(whole, columns, place);
  const rowIssues = [
    ...table.issues,
    ...rows.issues,
    ...checkTogether(rows.identities, columns, place),
  ].sort((one, other) => (one.row ?? 0) - (other.row ?? 0));
  const issues = [...headerIssues, ...rowIssues];
  if (issues.length > 0) return failed(issues);
  const { catches, written, missed } = rows;
  return passed({
    source,
    catches,
    written,
    missed,
    findings: [...(table.findings ?? []), ...(oneBin === null ? [] : [oneBin.note])],
    massAt: { ...place, column: massHeader(columns) },
  });
}

/** What is wrong where no part has a catch that was weighed: a log of catches that all were spilled answers no question. */
export function nothingWeighed(parts: readonly LogPart[]): readonly DataIssue[] {
  if (parts.some(({ catches }) => catches.length > 0)) return [];
  return parts.flatMap(({ missed, massAt }) =>
    firstOf(missed, ({ row }) =>
      dataIssue({ ...massAt, row }, { problem: "mass-missing", facts: {} }),
    ),
  );
}

/** The log of what was read, of which at least one catch was weighed, with what is suspected of it. */
export function logOf(
  { source, catches, written, missed, findings }: Omit<LogPart, "massAt">,
  suspected: Suspecting,
): CatchLog {
  const massUnit = usualUnit(written);
  return {
    source,
    massUnit,
    catches,
    written,
    ...(missed.length > 0 ? { missed } : {}),
    cautions: [
      ...findings,
      ...suspected(catches, massUnit, written),
      ...missedCautions(missed, catches),
    ],
  };
}

function usualUnit(written: readonly WrittenWeights[]): MassUnit {
  const counts = new Map<MassUnit, number>();
  for (const { unit } of written) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  const [most] = [...counts].reduce((one, other) => (other[1] > one[1] ? other : one));
  return most;
}

/** The issue for a table with nothing below its header. */
export function noRows(place: Place): DataIssue {
  const problem = place.rowKind === "entry" ? "no-entries" : "no-rows";
  return dataIssue(place, { problem, facts: {} });
}
