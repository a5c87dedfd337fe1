import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { DuckDBConnection, DuckDBInstance } from "@duckdb/node-api";
import { PackageError } from "../errors/errors.ts";

/** What is needed of an `AbortSignal`, which programs without the types of a browser or of Node cannot name. */
export interface StopSignal {
  readonly throwIfAborted: () => void;
  readonly addEventListener: (type: "abort", listener: () => void) => void;
  readonly removeEventListener: (type: "abort", listener: () => void) => void;
}

/** How much of a machine may be taken. */
export interface EngineOptions {
  /** Most memory of the engine, as it writes it; what does not fit goes to disk. */
  readonly memory: string;
  /** null: every core. */
  readonly threads: number | null;
  /** Folder for what does not fit into memory. */
  readonly folder: string;
  readonly signal: StopSignal | null;
}

export type EngineRow = Readonly<Record<string, unknown>>;

/** A database of its own for one run, on disk and gone afterwards. */
export interface Engine {
  readonly run: (sql: string) => Promise<void>;
  readonly rows: (sql: string) => Promise<readonly EngineRow[]>;
  /** The same, no more of them in memory than one batch. */
  readonly stream: (sql: string) => AsyncGenerator<readonly EngineRow[]>;
  /** Share of the statement that runs, from 0 to 1; null: not known. */
  readonly share: () => number | null;
  readonly close: () => Promise<void>;
}

export const usualEngine: EngineOptions = {
  memory: "2GB",
  threads: null,
  folder: tmpdir(),
  signal: null,
};

/**
 * @throws PackageError where the optional package is not installed; the signal's reason once it is aborted
 */
export async function openEngine({
  memory,
  threads,
  folder,
  signal,
}: EngineOptions): Promise<Engine> {
  signal?.throwIfAborted();
  const { DuckDBInstance } = await loaded();
  const own = await mkdtemp(join(folder, "evencatch-pool-"));
  let instance: DuckDBInstance | null = null;
  let connection: DuckDBConnection;
  try {
    instance = await DuckDBInstance.create(join(own, "pool.duckdb"), {
      memory_limit: memory,
      temp_directory: join(own, "spilled"),
      ...(threads === null ? {} : { threads: String(threads) }),
    });
    connection = await instance.connect();
    await connection.run("SET enable_progress_bar = true");
    await connection.run("SET enable_progress_bar_print = false");
  } catch (error) {
    instance?.closeSync();
    await rm(own, { recursive: true, force: true });
    throw error;
  }
  const interrupt = () => connection.interrupt();
  signal?.addEventListener("abort", interrupt);
  const unlessAborted = async <T>(work: () => Promise<T>): Promise<T> => {
    signal?.throwIfAborted();
    try {
      return await work();
    } catch (error) {
      signal?.throwIfAborted();
      throw error;
    }
  };
  return {
    run: (sql) =>
      unlessAborted(async () => {
        await connection.run(sql);
      }),
    rows: (sql) =>
      unlessAborted(async () => {
        const result = await connection.run(sql);
        return result.getRowObjectsJS();
      }),
    async *stream(sql) {
      const result = await unlessAborted(() => connection.stream(sql));
      const names = result.columnNames();
      for (;;) {
        const chunk = await unlessAborted(() => result.fetchChunk());
        if (chunk === null || chunk.rowCount === 0) return;
        yield rowsOf(names, chunk.getColumns(), chunk.rowCount);
      }
    },
    share: () => {
      const { percentage } = connection.progress;
      return percentage < 0 ? null : percentage / 100;
    },
    close: async () => {
      signal?.removeEventListener("abort", interrupt);
      connection.closeSync();
      instance.closeSync();
      await rm(own, { recursive: true, force: true });
    },
  };
}

/** Written out, since objects made of pairs take twice as long, and there are millions. */
function rowsOf(
  names: readonly string[],
  columns: readonly (readonly unknown[])[],
  count: number,
): readonly EngineRow[] {
  const rows: EngineRow[] = [];
  for (let at = 0; at < count; at++) {
    const row: Record<string, unknown> = {};
    for (let i = 0; i < names.length; i++) row[names[i] ?? ""] = columns[i]?.[at];
    rows.push(row);
  }
  return rows;
}

async function loaded() {
  try {
    return await import("@duckdb/node-api");
  } catch (cause) {
    throw new PackageError("@duckdb/node-api", "npm install @duckdb/node-api", cause);
  }
}
