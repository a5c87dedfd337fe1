import { massHeader } from "../data/headers.ts";
import { dataIssue, standingFor } from "../data/issues.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import type { Engine } from "./engine.ts";
import { rowsAt } from "./rows-at.ts";
import type { FileGroup } from "./sources.ts";
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
  const files = new Map(groups.flatMap((group) => group.files.map((one) => [one.source, one])));
  const counted = await engine.rows(
    `SELECT file, count(*) AS rows, min(c.place) - min(s.start) AS first FROM ${stagedCatches} AS c
JOIN (SELECT file, min(rowid) AS start FROM staged GROUP BY file) AS s USING (file) GROUP BY file ORDER BY min(c.place)`,
  );
  const issues: DataIssue[] = [];
  for (const { file: source, rows, first } of counted) {
    const file = files.get(String(source));
    if (file === undefined) continue;
    const [row] = (await rowsAt(file, [Number(first)], engine)).values();
    const place = { source: file.source, rowKind: file.rowKind, column: massHeader(file.columns) };
    const issue = dataIssue(row === undefined ? place : { ...place, row: row.number }, {
      problem: "mass-missing",
      facts: {},
    });
    issues.push(standingFor(issue, Number(rows) - 1));
  }
  return issues;
}
