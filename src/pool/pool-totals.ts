import { noRows } from "../data/read-text.ts";
import { dataError } from "../errors/data-error.ts";
import { OptionError } from "../errors/errors.ts";
import type { FillRecord } from "../model/fill-record.ts";
import { type Engine, type EngineOptions, openEngine, usualEngine } from "./engine.ts";
import { problemsIn } from "./found-problems.ts";
import { nothingCounts } from "./nothing-counts.ts";
import { fillRecord } from "./records.ts";
import { type FileGroup, filesOf } from "./sources.ts";
import { stage, stagedCatches } from "./staging.ts";
import { recordsSql, scatterSql, sumsSql, weighingsSql } from "./totals-sql.ts";

/** What a pool is doing. */
export type PoolStep = "reading" | "checking" | "adding up" | "handing out";

export interface PoolProgress {
  readonly step: PoolStep;
  /** Of this step, from 0 to 1; null: not known. */
  readonly share: number | null;
  /** Rows read; null: not known yet. */
  readonly rows: number | null;
}

export interface PoolOptions extends Partial<EngineOptions> {
  /** Hears of progress, several times a second. */
  readonly onProgress?: (progress: PoolProgress) => void;
}

const millisecondsBetween = 200;

/**
 * The totals of every fill in files too long for memory, for `analyseTotals`: what `fillTotals` gives of the same catches, to
 * twelve digits, in the same order.
 *
 * Files are read by a database in this process (DuckDB) into a folder of its own, which is removed at the end; every row is
 * checked by the rules of `readCatches`, all files being one log. Nothing is screened and nothing suspicious told, which takes
 * single catches. Sums are made in two passes, deliveries first; their last digits may differ from run to run, as threads
 * add in another order.
 *
 * @param patterns  files or patterns such as logs/*.parquet: .csv, .tsv, .txt and .parquet
 * @param options   memory: most the database takes, 2GB; what does not fit goes to disk. threads: all cores. folder: for what is
 *                  kept on disk, that for temporary files. signal: ends it early, as does ending the loop.
 * @returns         one record a fill, handed out as they are asked for
 * @throws          DataError with every problem found, equal ones counted; PackageError where the optional package
 *                  @duckdb/node-api is not installed; OptionError without a pattern; the reason of the signal
 */
export async function* poolTotals(
  patterns: string | readonly string[],
  options: PoolOptions = {},
): AsyncGenerator<FillRecord, void, undefined> {
  const given = typeof patterns === "string" ? [patterns] : patterns;
  if (given.length === 0) throw new OptionError("patterns", "none", "one file or pattern at least");
  const { onProgress, ...engineOptions } = options;
  const engine = await openEngine({ ...usualEngine, ...engineOptions });
  const progress = followed(engine, onProgress);
  try {
    progress.begin("reading");
    const groups = await groupsOf(given, engine);
    const rules = await stage(groups, engine);
    progress.begin("checking", await rowsRead(engine));
    const wrong = [
      ...(await emptyFiles(groups, engine)),
      ...(await problemsIn(groups, rules, engine)),
    ];
    const issues = wrong.length > 0 ? wrong : await nothingCounts(groups, engine);
    const [first] = issues;
    if (first !== undefined) throw dataError(first.source, issues);
    progress.begin("adding up");
    await addUp(engine);
    progress.begin("handing out");
    for await (const rows of engine.stream(orderedRecords))
      for (const row of rows) yield fillRecord(row);
  } finally {
    progress.end();
    await engine.close();
  }
}

async function groupsOf(
  patterns: readonly string[],
  engine: Engine,
): Promise<readonly FileGroup[]> {
  const sources = await filesOf(patterns, engine);
  if (sources.ok) return sources.groups;
  throw dataError(sources.issues[0]?.source ?? "", sources.issues);
}

async function rowsRead(engine: Engine): Promise<number> {
  const [row] = await engine.rows(`SELECT count(*) AS rows FROM ${stagedCatches}`);
  return Number(row?.rows);
}

async function emptyFiles(groups: readonly FileGroup[], engine: Engine) {
  const filled = new Set(
    (await engine.rows(`SELECT DISTINCT file FROM ${stagedCatches}`)).map(({ file }) => file),
  );
  return groups
    .flatMap(({ files }) => files)
    .filter(({ source }) => !filled.has(source))
    .map(({ source, rowKind }) => noRows({ source, rowKind }));
}

async function addUp(engine: Engine): Promise<void> {
  const [row] = await engine.rows(`SELECT count(outlet) AS outlets FROM ${stagedCatches}`);
  const weighings = weighingsSql(stagedCatches, Number(row?.outlets) > 0, "place");
  await engine.run(`CREATE VIEW weighings AS ${weighings}`);
  await engine.run(`CREATE TABLE fills AS ${sumsSql("weighings", "place")}`);
  await engine.run(`CREATE TABLE scatter AS ${scatterSql("weighings", "fills")}`);
}

/** Meters in the order in which the files first name them, fills by season and number. */
const orderedRecords = `${recordsSql("fills", "scatter")}
JOIN (SELECT farm, machine, bin, product, min(place) AS meter FROM fills GROUP BY farm, machine, bin, product) AS m
  ON m.farm = f.farm AND m.machine = f.machine AND m.bin = f.bin AND m.product = f.product
ORDER BY meter, f.place`;

/** Tells of progress until it ends; the statements themselves do not. */
function followed(engine: Engine, onProgress: PoolOptions["onProgress"]) {
  let step: PoolStep = "reading";
  let rows: number | null = null;
  const tell = () => onProgress?.({ step, share: engine.share(), rows });
  const timer = onProgress === undefined ? null : setInterval(tell, millisecondsBetween);
  return {
    begin: (next: PoolStep, read: number | null = rows) => {
      step = next;
      rows = read;
      onProgress?.({ step, share: null, rows });
    },
    end: () => {
      if (timer !== null) clearInterval(timer);
    },
  };
}
