import { standingFor } from "../data/issues.ts";
import { logNames } from "../data/log-names.ts";
import { type DecimalMarks, markOf } from "../data/numbers.ts";
import { type CatchIdentity, readRows } from "../data/rows.ts";
import { checkTogether } from "../data/together.ts";
import { at } from "../errors/at.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import { NumericalError } from "../errors/errors.ts";
import type { ProblemKey } from "../errors/problems.ts";
import { markBits, type Rule } from "./cells-sql.ts";
import { disagreements } from "./disagreements-sql.ts";
import type { Engine } from "./engine.ts";
import { type FileGroup, filesBySource, type PooledFile, tableOf } from "./sources.ts";
import { type StagedRow, stagedRows } from "./staged-rows.ts";
import { stagedCatches } from "./staging.ts";

/** A problem as the database finds it: how often, and the first row that has it. */
interface Found {
  readonly problem: ProblemKey;
  /** Null where the row itself tells it. */
  readonly header: string | null;
  readonly file: string;
  readonly rows: number;
  readonly place: number;
  /** Of a problem between rows: the one it disagrees with. */
  readonly first: number | null;
}

/** Files of which problems are told; of more nobody could read them. */
const mostFiles = 20;

/**
 * Everything that is wrong with the staged rows: each problem of a file and column once, for its first row, with the number of
 * rows in which it is the same. The database finds them; the in-memory reader, given that row, says what they are.
 */
export async function problemsIn(
  groups: readonly FileGroup[],
  rules: readonly Rule[],
  engine: Engine,
): Promise<readonly DataIssue[]> {
  const files = filesBySource(groups);
  const marks = await marksOf([...files.values()], engine);
  const found = [
    ...(await brokenRules(rules, engine)),
    ...(await doubtfulFigures(marks, engine)),
    ...(await rowsThatDisagree(engine)),
  ];
  if (found.length === 0) return [];
  const told = new Set([...new Set(found.map(({ file }) => file))].slice(0, mostFiles));
  const shown = found.filter(({ file }) => told.has(file));
  const places = shown.flatMap(({ place, first }) => (first === null ? place : [place, first]));
  const rows = await stagedRows(places, files, engine);
  const names = logNames(await namesIn(engine));
  const issues = shown.map((one) => {
    const { file, row } = at(
      [rows.get(one.place)].flatMap((it) => it ?? []),
      0,
    );
    const first = one.first === null ? null : rows.get(one.first);
    const place = { source: file.source, rowKind: file.rowKind };
    const issue =
      first === null || first === undefined
        ? ownProblem(
            one,
            readRows(tableOf(file, [row]), file.columns, place, marks.get(file.source)).issues,
          )
        : checkTogether(
            [identityIn(first), identityIn({ file, row })],
            // A file without the column has no header for what another file names.
            one.problem === "key-missing" ? first.file.columns : file.columns,
            first.file === file ? place : { ...place, firstSource: first.file.source },
            names,
          ).find(({ problem }) => problem === one.problem);
    if (issue === undefined)
      throw new NumericalError(
        `The database finds ${one.problem} in ${file.source}, row ${row.number}, where the reader finds nothing.`,
      );
    return standingFor(issue, one.rows - 1);
  });
  return issues.toSorted((a, b) => order(a, told) - order(b, told) || (a.row ?? 0) - (b.row ?? 0));

  function identityIn({ file, row }: StagedRow): CatchIdentity {
    const place = { source: file.source, rowKind: file.rowKind };
    return at(
      readRows(tableOf(file, [row]), file.columns, place, marks.get(file.source)).identities,
      0,
    );
  }
}

function order({ source }: DataIssue, files: ReadonlySet<string>): number {
  return [...files].indexOf(source);
}

/** A row may have told of a graver thing in the same column, after which the reader looks no further. */
function ownProblem(
  { problem, header }: Found,
  issues: readonly DataIssue[],
): DataIssue | undefined {
  return (
    issues.find((one) => one.problem === problem && one.column === header) ??
    issues.find((one) => one.problem === problem) ??
    issues[0]
  );
}

async function brokenRules(rules: readonly Rule[], engine: Engine): Promise<readonly Found[]> {
  const rows = await engine.rows(
    `SELECT file, rule, count(*) AS rows, min(place) AS place
FROM (SELECT file, place, unnest(problems) AS rule FROM ${stagedCatches} WHERE problems IS NOT NULL)
GROUP BY file, rule ORDER BY min(place), rule`,
  );
  return rows.map(({ file, rule, rows: count, place }) => {
    const { problem, header } = at(rules, Number(rule));
    return {
      problem,
      header,
      file: String(file),
      rows: Number(count),
      place: Number(place),
      first: null,
    };
  });
}

async function marksOf(
  files: readonly PooledFile[],
  engine: Engine,
): Promise<ReadonlyMap<string, DecimalMarks>> {
  const rows = await engine.rows(
    `SELECT file, bit_or(marks) AS marks FROM ${stagedCatches} GROUP BY file`,
  );
  const bits = new Map(rows.map(({ file, marks }) => [String(file), Number(marks)]));
  return new Map(
    files.map((file) => {
      const own = bits.get(file.source) ?? 0;
      const ofFormat = tableOf(file, []).decimalMark === "unknown" ? "unknown" : "point";
      return [
        file.source,
        {
          comma: (own & markBits.comma) > 0,
          point: (own & markBits.point) > 0,
          ofFormat,
        },
      ];
    }),
  );
}

/** Figures such as 1,234 in files whose other figures do not settle what their mark is. */
async function doubtfulFigures(
  marks: ReadonlyMap<string, DecimalMarks>,
  engine: Engine,
): Promise<readonly Found[]> {
  const rows = await engine.rows(
    `SELECT file, marks & 12 AS kind, count(*) AS rows, min(place) AS place
FROM ${stagedCatches} WHERE marks & 12 > 0 GROUP BY file, kind ORDER BY min(place)`,
  );
  return rows.flatMap(({ file, kind, rows: count, place }) => {
    const own = marks.get(String(file));
    const mark = own === undefined ? null : markOf(own);
    const comma = (Number(kind) & markBits.doubtfulComma) > 0 && mark !== ",";
    const point = (Number(kind) & markBits.doubtfulPoint) > 0 && mark !== ".";
    return comma || point
      ? {
          problem: "decimal-ambiguous" as const,
          header: null,
          file: String(file),
          rows: Number(count),
          place: Number(place),
          first: null,
        }
      : [];
  });
}

async function rowsThatDisagree(engine: Engine): Promise<readonly Found[]> {
  const found: Found[] = [];
  for (const { problem, column, any, where } of disagreements(stagedCatches)) {
    if ((await engine.rows(any)).length === 0) continue;
    for (const row of await engine.rows(where))
      found.push({
        problem,
        header: column,
        file: String(row.file),
        rows: Number(row.rows),
        place: Number(row.place),
        first: Number(row.first),
      });
  }
  return found;
}

async function namesIn(engine: Engine) {
  const rows = await engine.rows(
    `SELECT farm, machine, season FROM ${stagedCatches} GROUP BY farm, machine, season ORDER BY min(place)`,
  );
  const orNull = (text: unknown) => (text === "" ? null : String(text));
  return rows.map(({ farm, machine, season }) => ({
    farm: orNull(farm),
    machine: orNull(machine),
    season: orNull(season),
  }));
}
