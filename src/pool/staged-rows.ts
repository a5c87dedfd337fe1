import type { TableRow } from "../data/table.ts";
import type { Engine } from "./engine.ts";
import { rowsAt } from "./rows-at.ts";
import type { PooledFile } from "./sources.ts";

/** A row as it stands in its file. */
export interface StagedRow {
  readonly file: PooledFile;
  readonly row: TableRow;
}

/** Staged rows as they stand in their files, by their place. */
export async function stagedRows(
  places: Iterable<number>,
  files: ReadonlyMap<string, PooledFile>,
  engine: Engine,
): Promise<ReadonlyMap<number, StagedRow>> {
  const wanted = [...new Set(places)];
  const starts = await engine.rows(
    "SELECT file, min(rowid) AS start, max(rowid) AS stop FROM staged GROUP BY file",
  );
  const read = new Map<number, StagedRow>();
  for (const { file, start, stop } of starts) {
    const [from, to] = [Number(start), Number(stop)];
    const own = wanted.filter((place) => place >= from && place <= to);
    const known = files.get(String(file));
    if (own.length === 0 || known === undefined) continue;
    const rows = await rowsAt(
      known,
      own.map((place) => place - from),
      engine,
    );
    for (const [place, row] of rows) read.set(from + place, { file: known, row });
  }
  return read;
}
