import { execFileSync } from "node:child_process";
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Beside } from "./growth.ts";
import { inventedLines } from "./invented-log.ts";
import type { Pooled } from "./pooled.ts";

/**
 * Pools an invented log that is written for it and removed again, and sums it up by the database alone.
 *
 * @throws Error where the two do not find the same fills with the same deliveries
 */
export function measurePooled(rows: number, seed: number, library: string): Pooled {
  const folder = mkdtempSync(join(tmpdir(), "evencatch-scale-"));
  const file = join(folder, "log.csv");
  try {
    write(file, inventedLines(rows, seed));
    const alone = measured(["bench/scale/duckdb.mjs", file]);
    const pool = measured(["bench/scale/pool.mjs", library, file]);
    if (alone.fills !== pool.fills || Math.abs(alone.deliveries / pool.deliveries - 1) > 1e-9)
      throw new Error("The pool and the database alone found other fills.");
    return { rows, pool, alone };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function measured(args: readonly string[]): Beside {
  return JSON.parse(execFileSync(process.execPath, args, { encoding: "utf8" }));
}

const linesAtOnce = 10_000;

function write(path: string, lines: Iterable<string>): void {
  const file = openSync(path, "w");
  let held: string[] = [];
  for (const line of lines) {
    held.push(line);
    if (held.length < linesAtOnce) continue;
    writeSync(file, held.join(""));
    held = [];
  }
  writeSync(file, held.join(""));
  closeSync(file);
}
