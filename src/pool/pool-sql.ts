import { keyColumns } from "../data/column-kinds.ts";
import { findColumns } from "../data/headers.ts";
import { dataError } from "../errors/data-error.ts";
import { dialects, named, type PoolDialect, quoted } from "./dialect.ts";
import { catchKeys, fillKeys, isTold, readingOf } from "./read-sql.ts";
import { recordsSql, scatterSql, sumsSql, weighingsSql } from "./totals-sql.ts";

/** A table of catches in somebody's database. */
export interface PoolTable {
  readonly name: string;
  /** Names of its columns; which of them hold what is told as of a file's header. */
  readonly columns: readonly string[];
}

/** One step of pooling in a database. */
export interface PoolStatement {
  /** Name of the view or table that it is kept as. */
  readonly name: string;
  /** Null: its rows are the answer. */
  readonly keptAs: "view" | "table" | null;
  readonly select: string;
}

/**
 * The SQL of `poolTotals` for a database of one's own, in the order in which it is to be run:
 *
 * 1. evencatch_catches  the table by the rules of `readCatches`, with what is wrong with each row
 * 2. evencatch_problems  what is wrong, and in how many rows; nothing may be
 * 3. evencatch_weighings  catches as they count
 * 4. evencatch_fills  first pass: the sums of each fill
 * 5. evencatch_totals  second pass: everything `fillRecords` takes
 *
 * Every SELECT can be run by itself, and 3 to 5 over tables that are spread over servers by farm. Points part decimals in a
 * database; a comma is no figure.
 *
 * @throws  DataError where the columns are none of catches
 */
export function poolStatements(dialect: PoolDialect, table: PoolTable): readonly PoolStatement[] {
  const to = dialects[dialect];
  const source = { source: table.name, rowKind: "entry" } as const;
  const { columns, issues } = findColumns(
    {
      headers: table.columns,
      headerRow: null,
      rows: [],
      issues: [],
      rowKind: "entry",
      decimalMark: "point",
    },
    source,
  );
  if (issues.length > 0) throw dataError(table.name, issues);
  const { select } = readingOf(
    {
      columns,
      source: (_, header) => ({ header, text: `CAST(${named(header)} AS TEXT)`, written: false }),
      from: tableName(table.name),
      kept: [],
      problem: ({ problem, header }) => quoted(`${problem}: ${header}`),
      withMarks: false,
    },
    to,
  );
  const fills = `(${scatterSql("evencatch_weighings", "evencatch_fills")})`;
  return [
    { name: "evencatch_catches", keptAs: "view", select },
    { name: "evencatch_problems", keptAs: null, select: problemsSql("evencatch_catches") },
    {
      name: "evencatch_weighings",
      keptAs: "table",
      select: weighingsSql("evencatch_catches", columns.plain.has("outlet"), null),
    },
    { name: "evencatch_fills", keptAs: "table", select: sumsSql("evencatch_weighings", null) },
    { name: "evencatch_totals", keptAs: null, select: recordsSql("evencatch_fills", fills) },
  ];
}

/** The same as a script. It tells the planner what the tables hold, without which joins over servers are badly planned. */
export function poolSql(dialect: PoolDialect, table: PoolTable): string {
  return poolStatements(dialect, table)
    .map(({ name, keptAs, select }) => {
      if (keptAs === null) return `-- ${name}\n${select};\n`;
      const kept = `CREATE ${keptAs.toUpperCase()} ${name} AS\n${select};\n`;
      return keptAs === "table" ? `${kept}ANALYZE ${name};\n` : kept;
    })
    .join("\n");
}

/** With its schema, where it has one. */
function tableName(name: string): string {
  return name.split(".").map(named).join(".");
}

/** Problem, column, and rows or groups of rows that have it. */
function problemsSql(from: string): string {
  const groups = (problem: string, column: string, having: string, by: string) =>
    `SELECT '${problem}', '${column}', count(*) FROM (SELECT 1 AS one FROM ${from} WHERE ${isTold} GROUP BY ${by} HAVING ${having}) AS wrong`;
  const spelt = (problem: string, column: string) =>
    groups(problem, column, `count(DISTINCT ${column}) > 1`, `lower(${column})`);
  return `SELECT problem, column_name, rows FROM (
SELECT split_part(found, ': ', 1) AS problem, split_part(found, ': ', 2) AS column_name, count(*) AS rows
FROM (SELECT unnest(problems) AS found FROM ${from} WHERE problems IS NOT NULL) AS broken GROUP BY found
UNION ALL ${groups("catch-repeated", "catch", "count(*) > 1", `${catchKeys.join(", ")}, "catch", outlet`)}
UNION ALL ${groups("two-products-in-fill", "product", "count(DISTINCT lower(product)) > 1", fillKeys)}
${keyColumns
  .map(
    (key) =>
      `UNION ALL SELECT 'key-missing', '${key}', count(*) FROM ${from} WHERE ${key} = '' AND ${isTold} AND EXISTS (SELECT 1 FROM ${from} WHERE ${key} <> '')\nUNION ALL ${spelt("key-spelt-twice", key)}`,
  )
  .join("\n")}
UNION ALL ${spelt("bin-spelt-twice", "bin")}
UNION ALL ${spelt("product-spelt-twice", "product")}) AS found WHERE rows > 0`;
}
