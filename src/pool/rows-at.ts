import { createReadStream } from "node:fs";
import Papa from "papaparse";
import { max } from "simple-statistics";
import { withoutGuard } from "../data/formula-guard.ts";
import { type Cell, isBlank, type TableRow } from "../data/table.ts";
import { quoted } from "./dialect.ts";
import type { Engine } from "./engine.ts";
import { escapedPath, type PooledFile } from "./sources.ts";

/**
 * Rows of a file, by their place among its rows from 0, with the number a spreadsheet shows: a database drops blank lines
 * without counting them. Reads the file once more, which is done only where something is wrong with it.
 */
export async function rowsAt(
  file: PooledFile,
  places: readonly number[],
  engine: Engine,
): Promise<ReadonlyMap<number, TableRow>> {
  return file.head === null ? entriesAt(file, places, engine) : linesAt(file, places);
}

async function entriesAt(
  { source, headers, texts }: PooledFile,
  places: readonly number[],
  engine: Engine,
) {
  const columns = texts.map((text, i) => `${text} AS c${i}`);
  const rows = await engine.rows(
    `SELECT file_row_number AS place, ${columns.join(", ")} FROM read_parquet(${quoted(escapedPath(source))}, file_row_number = true) WHERE file_row_number IN (${places.join(", ")})`,
  );
  return new Map(
    rows.map((row): [number, TableRow] => {
      const place = Number(row.place);
      const cells = headers.map((_, i): Cell => {
        const cell = row[`c${i}`];
        return typeof cell === "string" ? cell : null;
      });
      return [place, { number: place + 1, cells }];
    }),
  );
}

function linesAt({ source, head }: PooledFile, places: readonly number[]) {
  const wanted = new Set(places);
  const last = max(places);
  const found = new Map<number, TableRow>();
  const skipped = head?.rowsBefore ?? 1;
  let record = 0;
  let place = 0;
  return new Promise<ReadonlyMap<number, TableRow>>((fulfil, reject) => {
    const stream = createReadStream(source, "utf8");
    const options: Papa.ParseLocalConfig<string[], NodeJS.ReadableStream> = {
      delimiter: head?.separator ?? ",",
      step: ({ data }, parser) => {
        record += 1;
        if (record <= skipped || (data.length === 1 && data.every(isBlank))) return;
        if (wanted.has(place))
          found.set(place, {
            number: record - (head?.separatorTold ? 1 : 0),
            cells: data.map(withoutGuard),
          });
        place += 1;
        if (place <= last) return;
        parser.abort();
        stream.destroy();
      },
      complete: () => fulfil(found),
      error: reject,
    };
    Papa.parse(stream, options);
  });
}
