import { type FoundColumns, headerIn, massHeader } from "../data/headers.ts";
import { dataIssue, standingFor } from "../data/issues.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import type { Problem } from "../errors/problems.ts";
import type { Engine } from "./engine.ts";
import { type FileGroup, filesBySource } from "./sources.ts";
import { stagedRows } from "./staged-rows.ts";
import { stagedCatches } from "./staging.ts";

/**
 * What is wrong with files of which every catch was spilled, missed or left out: told of the first row of each, with how many
 * more there are. Asked of rows in which nothing else is wrong.
 */
export async function nothingCounts(
  groups: readonly FileGroup[],
  engine: Engine,
): Promise<readonly DataIssue[]> {
  if (await hasRows(`${weighed} AND counts`, engine)) return [];
  const isWeighed = await hasRows(weighed, engine);
  const counted = await engine.rows(
    `SELECT count(*) AS rows, min(place) AS place FROM ${stagedCatches} WHERE ${isWeighed ? weighed : "true"} GROUP BY file ORDER BY min(place)`,
  );
  const { problem, header } = isWeighed ? excluded : unweighed;
  const places = counted.map(({ place }) => Number(place));
  const read = await stagedRows(places, filesBySource(groups), engine);
  return counted.flatMap(({ rows, place }) => {
    const found = read.get(Number(place));
    if (found === undefined) return [];
    const { file, row } = found;
    const { source, rowKind, columns } = file;
    const issue = dataIssue({ source, rowKind, row: row.number, column: header(columns) }, problem);
    return standingFor(issue, Number(rows) - 1);
  });
}

const weighed = "net_kg IS NOT NULL";

interface Wrong {
  readonly problem: Problem;
  /** Under which it stands. */
  readonly header: (columns: FoundColumns) => string;
}

const unweighed: Wrong = { problem: { problem: "mass-missing", facts: {} }, header: massHeader };

const excluded: Wrong = {
  problem: { problem: "all-excluded", facts: {} },
  header: (columns) => headerIn(columns, "exclude"),
};

async function hasRows(condition: string, engine: Engine): Promise<boolean> {
  const found = await engine.rows(`SELECT 1 FROM ${stagedCatches} WHERE ${condition} LIMIT 1`);
  return found.length > 0;
}
