import { massHeader } from "../data/headers.ts";
import { dataIssue, standingFor } from "../data/issues.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import type { Engine } from "./engine.ts";
import { type FileGroup, filesBySource } from "./sources.ts";
import { stagedRows } from "./staged-rows.ts";
import { stagedCatches } from "./staging.ts";

/**
 * What is wrong with files of which every catch was spilled or missed: told of the first row of each, with how many more there
 * are. Asked of rows in which nothing else is wrong.
 */
export async function nothingWeighed(
  groups: readonly FileGroup[],
  engine: Engine,
): Promise<readonly DataIssue[]> {
  const any = `SELECT 1 FROM ${stagedCatches} WHERE net_kg IS NOT NULL LIMIT 1`;
  if ((await engine.rows(any)).length > 0) return [];
  const counted = await engine.rows(
    `SELECT count(*) AS rows, min(place) AS place FROM ${stagedCatches} GROUP BY file ORDER BY min(place)`,
  );
  const places = counted.map(({ place }) => Number(place));
  const read = await stagedRows(places, filesBySource(groups), engine);
  return counted.flatMap(({ rows, place }) => {
    const found = read.get(Number(place));
    if (found === undefined) return [];
    const { file, row } = found;
    const issue = dataIssue(
      {
        source: file.source,
        rowKind: file.rowKind,
        row: row.number,
        column: massHeader(file.columns),
      },
      { problem: "mass-missing", facts: {} },
    );
    return standingFor(issue, Number(rows) - 1);
  });
}
