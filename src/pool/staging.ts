import { lineTooLong } from "../data/csv.ts";
import { dataIssue, type Place } from "../data/issues.ts";
import { dataError } from "../errors/data-error.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import type { Rule } from "./cells-sql.ts";
import { dialects } from "./dialect.ts";
import type { Engine, EngineRow } from "./engine.ts";
import { readingOf } from "./read-sql.ts";
import { type FileGroup, firstLineOf, rowsFrom } from "./sources.ts";

/** The view of all rows with anything in them, in the order of the files, with their place in it. */
export const stagedCatches = "catches";

/**
 * Reads every file once into a table of the database, each row with what is wrong with it, so that all that follows needs
 * neither text nor files.
 *
 * @returns the rules, by the numbers that rows name them by
 * @throws  DataError for lines that are no rows of cells
 */
export async function stage(
  groups: readonly FileGroup[],
  engine: Engine,
): Promise<readonly Rule[]> {
  const rules: Rule[] = [];
  for (const [i, group] of groups.entries()) {
    const [{ columns, written, headers }] = group.files;
    const offset = rules.length;
    const reading = readingOf(
      {
        columns,
        source: (index, header) => ({ header, text: `c${index}`, written: written[index] ?? true }),
        from: rowsFrom(group),
        kept: [
          { name: "file", sql: "file" },
          {
            name: "blank",
            sql: `coalesce(${headers.map((_, at) => `nullif(trim(c${at}), '')`).join(", ")}) IS NULL`,
          },
        ],
        problem: (_, index) => String(offset + index),
        withMarks: true,
      },
      dialects.duckdb,
    );
    rules.push(...reading.rules);
    const before = i === 0 ? "CREATE TABLE staged AS" : "INSERT INTO staged";
    try {
      await engine.run(`${before} ${reading.select}`);
    } catch (error) {
      throw refusedBy(error, group);
    }
  }
  await engine.run(
    `CREATE VIEW ${stagedCatches} AS SELECT *, rowid AS place FROM staged WHERE NOT blank`,
  );
  const malformed = await malformedLines(groups, engine);
  const [first] = malformed;
  if (first !== undefined) throw dataError(first.source, malformed);
  return rules;
}

/** What the database says where a file breaks off; a fault of another kind stays what it is. */
function refusedBy(error: unknown, { files }: FileGroup): unknown {
  const said = firstLineOf(error);
  if (!/^(Invalid Input|IO|Parameter Not Allowed|Conversion|Serialization) Error/.test(said))
    return error;
  const { source, rowKind } = files.find((file) => said.includes(file.source)) ?? files[0];
  return dataError(source, [
    dataIssue({ source, rowKind }, { problem: "pool-unreadable", facts: { said } }),
  ]);
}

async function malformedLines(
  groups: readonly FileGroup[],
  engine: Engine,
): Promise<readonly DataIssue[]> {
  const texts = groups.flatMap(({ files }) => files.filter(({ head }) => head !== null));
  if (texts.length === 0) return [];
  const rows = await engine.rows(
    `SELECT file_path, CAST(line AS INTEGER) AS line, arg_max(CAST(error_type AS TEXT), column_idx) AS kind, CAST(max(column_idx) AS INTEGER) AS cells, first(csv_line) AS text, first(error_message) AS said
FROM reject_errors JOIN reject_scans USING (scan_id, file_id) GROUP BY file_path, line ORDER BY file_path, line`,
  );
  return rows.map((row) => {
    const file = texts.find(({ source }) => source === row.file_path);
    return malformed(row, file?.headers.length ?? 0, file?.head?.separator === ",");
  });
}

function malformed(row: EngineRow, columns: number, comma: boolean): DataIssue {
  const place: Place = { source: String(row.file_path), rowKind: "line", row: Number(row.line) };
  const cells = Number(row.cells);
  const said = String(row.said);
  const counted = `${cells} cells`;
  switch (row.kind) {
    case "TOO MANY COLUMNS":
      return dataIssue(
        place,
        { problem: "too-many-cells", facts: { cells, columns, comma } },
        counted,
      );
    case "MISSING COLUMNS":
      return dataIssue(
        place,
        { problem: "too-few-cells", facts: { cells: cells, columns } },
        counted,
      );
    case "UNQUOTED VALUE":
      return dataIssue(place, { problem: "quote-stray", facts: {} }, '"');
    case "INVALID ENCODING":
      return dataIssue(place, { problem: "not-utf8", facts: {} });
    case "LINE SIZE OVER MAXIMUM":
      return lineTooLong(place);
    default:
      return dataIssue(place, { problem: "pool-unreadable", facts: { said } });
  }
}
