import {
  columnByName,
  keyColumns,
  type PlainColumn,
  recordedColumns,
} from "../data/column-kinds.ts";
import type { FoundColumns } from "../data/headers.ts";
import {
  figureColumn,
  type ReadColumn,
  type Rule,
  readUnless,
  type SourceColumn,
  type Term,
  textColumn,
} from "./cells-sql.ts";
import { allOf, anyOf, type Dialect, named, never } from "./dialect.ts";
import { readMasses } from "./masses-sql.ts";
import { asChecked, asDate, leavingOut } from "./recorded-sql.ts";

/** How the catches of one table are read. */
export interface Reading {
  /** SELECT of the catches, every column as one type, with what is wrong with a row. */
  readonly select: string;
  readonly rules: readonly Rule[];
}

/** A table as it stands in the database. */
export interface ReadTable {
  readonly columns: FoundColumns;
  /** How the value under a header is had as text. */
  readonly source: (index: number, header: string) => SourceColumn;
  /** What is read from. */
  readonly from: string;
  /** Columns that are handed on as they are. */
  readonly kept: readonly Term[];
  /** How a problem is named where it is found. */
  readonly problem: (rule: Rule, index: number) => string;
  /** Of the row's figures; left out: points part decimals, and a comma is none. */
  readonly withMarks: boolean;
}

/** What a catch has, and one that was spilled or missed has not. */
const ofCatch: ReadonlySet<PlainColumn> = new Set([
  "turns",
  ...recordedColumns.map(({ name }) => name),
]);

/** Names of the columns that tell catches and fills apart, in every statement. */
export const catchKeys = [...keyColumns, "bin", "product", "fill"] as const;

/** What makes a fill of any product, as `fillKey` has it. */
export const fillKeys = [...keyColumns, "bin", "fill"].join(", ");

/** Whether a row can be told from the others. */
export const isTold = `bin IS NOT NULL AND product IS NOT NULL AND fill IS NOT NULL AND "catch" IS NOT NULL`;

/**
 * SQL that reads catches by the rules of the in-memory reader, made from the same table of columns: names tidied, masses in kg,
 * net worked out on the digits as written. Farm, machine and season that a table lacks are empty texts, so that rows can be
 * joined by them.
 */
export function readingOf(table: ReadTable, to: Dialect): Reading {
  const { columns } = table;
  const texts: Term[] = [];
  // The table's own names may be those of later steps.
  const source = (index: number, header: string): SourceColumn => {
    const column = table.source(index, header);
    const name = `given_${index}`;
    texts.push({ name, sql: column.text });
    return { ...column, text: name };
  };
  const plain = new Map(
    [...columns.plain].map(([name, { index, header }]) => [
      name,
      readPlain(name, source(index, header), to),
    ]),
  );
  const headerOf = (name: PlainColumn) => columns.plain.get(name)?.header ?? null;
  const leaving = leavingOut(headerOf("exclude"), headerOf("reason"));
  // Spilled or missed: nothing but its place in the log is read.
  const missed = leaving.isReasoned === never ? never : "missed";
  const masses = readMasses(
    columns.mass.map(({ index, header, kind, unit }) => ({ ...source(index, header), kind, unit })),
    { counts: "counts", missed },
    to,
  );
  const read = [
    ...[...plain].map(([name, column]) =>
      ofCatch.has(name) ? readUnless(missed, column) : column,
    ),
    ...masses.columns.map((column) => readUnless(missed, column)),
  ];
  const rules = [...read.flatMap((one) => one.rules), ...leaving.rules, ...masses.rules];
  const marks = table.withMarks ? read.flatMap(({ mark }) => mark ?? []) : [];
  const given = [...table.kept, ...texts];
  const steps: readonly (readonly Term[])[] = [
    read.map(({ plain: isPlain }) => isPlain),
    read.map(({ cell }) => cell),
    read.map(({ value }) => value),
    [
      { name: "counts", sql: leaving.counts },
      ...(missed === never
        ? []
        : [{ name: missed, sql: allOf([masses.isBlank, leaving.isReasoned]) }]),
    ],
    marks,
    ...masses.steps,
    rules.map(({ when }, i) => ({ name: wrong(i), sql: when })),
  ];
  const out: readonly Term[] = [
    ...table.kept.map(({ name }) => ({ name, sql: named(name) })),
    ...catchKeys.map((name) => ({ name, sql: keyOf(name, plain.has(name)) })),
    { name: "catch", sql: wholeOf("catch", plain.has("catch")) },
    { name: "outlet", sql: plain.has("outlet") ? "outlet" : "CAST(NULL AS TEXT)" },
    { name: "turns", sql: plain.has("turns") ? "turns" : "CAST(NULL AS DOUBLE PRECISION)" },
    { name: "net_kg", sql: masses.netKg },
    { name: "division_kg", sql: masses.divisionKg },
    { name: "taken_at", sql: to.byCodePoint(plain.has("taken_at") ? "taken_at" : "NULL") },
    { name: "counts", sql: "counts" },
    { name: "problems", sql: problemsOf(rules, table, to) },
    ...(table.withMarks
      ? [{ name: "marks", sql: ["0", ...marks.map(({ name }) => name)].join(" | ") }]
      : []),
  ];
  return { select: inSteps(table.from, [given, ...steps], out), rules };
}

/** Each step reads from the one before, and keeps what that had. */
function inSteps(from: string, steps: readonly (readonly Term[])[], out: readonly Term[]): string {
  const terms = (step: readonly Term[]) => step.map(asTerm).join(",\n  ");
  const written = steps
    .filter((step) => step.length > 0)
    .map((step, i) => {
      const before =
        i === 0
          ? `SELECT ${terms(step)}\n  FROM ${from}`
          : `SELECT *,\n  ${terms(step)}\n  FROM step_${i}`;
      return `step_${i + 1} AS (\n  ${before})`;
    });
  return `WITH ${written.join(",\n")}\nSELECT ${terms(out)}\nFROM step_${written.length}`;
}

const wrong = (rule: number) => `wrong_${rule}`;

function asTerm({ name, sql }: Term): string {
  return `${sql} AS ${named(name)}`;
}

function readPlain(name: PlainColumn, source: SourceColumn, to: Dialect): ReadColumn {
  const rules = columnByName[name];
  if (rules.type === "number" || rules.type === "integer")
    return figureColumn(name, rules, source, to);
  const text = textColumn(name, source, to);
  if (rules.type === "date") return asDate(text, source.header);
  return name === "checked" ? asChecked(text, source.header) : text;
}

function keyOf(name: (typeof catchKeys)[number], isThere: boolean): string {
  if (name === "fill") return wholeOf(name, isThere);
  if (keyColumns.some((key) => key === name))
    return isThere ? `coalesce(${name}, '')` : "CAST('' AS TEXT)";
  return isThere ? name : "CAST(NULL AS TEXT)";
}

/** A number that is refused where it is not whole need not fit. */
function wholeOf(name: "fill" | "catch", isThere: boolean): string {
  const { minimum, maximum } = columnByName[name];
  return isThere
    ? `CASE WHEN ${name} BETWEEN ${minimum} AND ${maximum} AND ${name} = floor(${name}) THEN CAST(${name} AS INTEGER) END`
    : "CAST(NULL AS INTEGER)";
}

function problemsOf(rules: readonly Rule[], { problem }: ReadTable, to: Dialect): string {
  const found = rules.map((rule, i) => `CASE WHEN ${wrong(i)} THEN ${problem(rule, i)} END`);
  return `CASE WHEN ${anyOf(rules.map((_, i) => wrong(i)))} THEN ${to.list(found)} END`;
}
