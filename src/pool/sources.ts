import { realpath, stat } from "node:fs/promises";
import { basename, dirname, extname, resolve } from "node:path";
import { longestLine } from "../data/csv.ts";
import { guardedForm } from "../data/formula-guard.ts";
import { type FoundColumns, findColumns } from "../data/headers.ts";
import { dataIssue, type Place } from "../data/issues.ts";
import { formatOf } from "../data/source.ts";
import type { Table } from "../data/table.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import { named, quoted } from "./dialect.ts";
import type { Engine } from "./engine.ts";
import { type Head, headOf } from "./head.ts";

/** A file that is pooled, with what its columns mean. */
export interface PooledFile {
  readonly source: string;
  readonly headers: readonly string[];
  readonly columns: FoundColumns;
  readonly rowKind: Table["rowKind"];
  /** Null of a Parquet file. */
  readonly head: Head | null;
  /** Whether each column holds texts. */
  readonly written: readonly boolean[];
  /** How each column of a Parquet file is had as text. */
  readonly texts: readonly string[];
}

/** Files of one kind, which one statement reads. */
export interface FileGroup {
  readonly files: readonly [PooledFile, ...PooledFile[]];
}

export function filesBySource(groups: readonly FileGroup[]): ReadonlyMap<string, PooledFile> {
  return new Map(groups.flatMap(({ files }) => files.map((one) => [one.source, one])));
}

export type Sources =
  | { readonly ok: true; readonly groups: readonly FileGroup[] }
  | { readonly ok: false; readonly issues: readonly DataIssue[] };

/** The files that patterns name, in the order of the patterns and, within one, of their names; each file once. */
export async function filesOf(patterns: readonly string[], engine: Engine): Promise<Sources> {
  const issues: DataIssue[] = [];
  const files: PooledFile[] = [];
  const seen = new Set<string>();
  for (const pattern of patterns) {
    const paths = await pathsOf(pattern, engine);
    if (paths.length === 0) issues.push(notFound(pattern));
    for (const path of paths) {
      const real = await realpath(path);
      if (seen.has(real)) continue;
      seen.add(real);
      const file = await fileOf(path, engine);
      if (Array.isArray(file)) issues.push(...file);
      else files.push(file);
    }
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, groups: grouped(files) };
}

async function pathsOf(pattern: string, engine: Engine): Promise<readonly string[]> {
  const isThere = await stat(pattern).then(
    () => true,
    () => false,
  );
  if (isThere) return [pattern];
  const rows = await engine.rows(`SELECT file FROM glob(${quoted(pattern)}) ORDER BY file`);
  return rows.map(({ file }) => String(file));
}

function notFound(pattern: string): DataIssue {
  const folder = dirname(resolve(pattern));
  return dataIssue(
    { source: pattern, rowKind: "row" },
    { problem: "file-not-found", facts: { folder } },
    basename(pattern),
  );
}

async function fileOf(source: string, engine: Engine): Promise<PooledFile | DataIssue[]> {
  const place: Place = { source, rowKind: "row" };
  const about = await stat(source);
  if (about.isDirectory()) return [dataIssue(place, { problem: "is-folder", facts: {} })];
  if (!about.isFile()) return [dataIssue(place, { problem: "is-device", facts: {} })];
  if (extname(source).toLowerCase() === ".parquet") return parquetFile(source, engine);
  if (formatOf(source) !== "csv") {
    const ending = extname(source);
    return [
      dataIssue(
        place,
        { problem: "pool-ending", facts: { ending: ending === "" ? null : ending } },
        ending,
      ),
    ];
  }
  const head = await headOf(source);
  if (!head.ok) return [...head.issues];
  const { headers } = head.value;
  return withColumns({
    source,
    headers,
    rowKind: "row",
    head: head.value,
    written: headers.map(() => true),
    texts: headers,
  });
}

async function parquetFile(source: string, engine: Engine): Promise<PooledFile | DataIssue[]> {
  const place: Place = { source, rowKind: "entry" };
  const from = `read_parquet(${quoted(escapedPath(source))})`;
  let described: Awaited<ReturnType<Engine["rows"]>>;
  try {
    described = await engine.rows(`SELECT column_name, column_type FROM (DESCRIBE FROM ${from})`);
  } catch (error) {
    return [dataIssue(place, { problem: "pool-not-parquet", facts: { said: firstLineOf(error) } })];
  }
  const types = described.map(({ column_type }) => String(column_type));
  const headers = described.map(({ column_name }) => String(column_name));
  const nested = headers.filter((_, i) =>
    /[[(]/.test((types[i] ?? "").replace(/^(DECIMAL|ENUM)\(.*\)$/, "")),
  );
  const file = withColumns({
    source,
    headers,
    rowKind: "entry",
    head: null,
    written: types.map((type) => /^(VARCHAR|ENUM)/.test(type)),
    texts: headers.map((header, i) => textOf(header, types[i] ?? "")),
  });
  if (Array.isArray(file)) return file;
  const { plain, mass } = file.columns;
  const used = new Set([...plain.values(), ...mass].map(({ header }) => header));
  const wrong = nested.filter((header) => used.has(header));
  if (wrong.length === 0) return file;
  return wrong.map((column) =>
    dataIssue({ ...place, column }, { problem: "value-no-cell", facts: {} }),
  );
}

/** A whole number is written without a point, whatever its type: bin 1 is not "1.0". */
function textOf(header: string, type: string): string {
  const text = `CAST(${named(header)} AS TEXT)`;
  return type === "DOUBLE" || type === "FLOAT" ? `regexp_replace(${text}, '\\.0$', '')` : text;
}

/** What the in-memory reader says of the same header. */
function withColumns(file: Omit<PooledFile, "columns">): PooledFile | DataIssue[] {
  const place: Place = { source: file.source, rowKind: file.rowKind };
  const { columns, issues } = findColumns(tableOf(file, []), place);
  return issues.length > 0 ? [...issues] : { ...file, columns };
}

/** Some rows of a file as the in-memory reader has them. */
export function tableOf(
  { headers, head, rowKind }: Omit<PooledFile, "columns">,
  rows: Table["rows"],
): Table {
  const decimalMark = head === null || head.separator === "," ? "point" : "unknown";
  return { headers, headerRow: head?.headerRow ?? null, rows, issues: [], rowKind, decimalMark };
}

function grouped(files: readonly PooledFile[]): readonly FileGroup[] {
  const groups = new Map<string, [PooledFile, ...PooledFile[]]>();
  for (const file of files) {
    const { headers, head, written, texts } = file;
    const key = JSON.stringify([headers, head?.separator, head?.rowsBefore, written, texts]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [file]);
    else group.push(file);
  }
  return [...groups.values()].map((group) => ({ files: group }));
}

/** Rows of the files of a group with their columns as c0, c1 …, and the file as `file`. */
export function rowsFrom({ files }: FileGroup): string {
  const [{ head, headers, texts }] = files;
  const paths = `[${files.map(({ source }) => quoted(escapedPath(source))).join(", ")}]`;
  if (head === null) {
    const columns = texts.map((text, i) => `${text} AS c${i}`);
    return `(SELECT evencatch_file AS file, ${columns.join(", ")} FROM read_parquet(${paths}, filename = 'evencatch_file'))`;
  }
  const columns = headers.map((_, i) => `'c${i}': 'VARCHAR'`).join(", ");
  const cells = headers.map((_, i) => `${unguarded(`c${i}`)} AS c${i}`).join(", ");
  return `(SELECT evencatch_file AS file, ${cells} FROM read_csv(${paths}, auto_detect = false, delim = ${quoted(head.separator)}, quote = '"', escape = '"', header = false, skip = ${head.rowsBefore}, nullstr = '', max_line_size = ${longestLine}, store_rejects = true, rejects_limit = ${mostRejects}, filename = 'evencatch_file', columns = {${columns}}))`;
}

/** A text as `withoutGuard` has it. */
function unguarded(cell: string): string {
  return `CASE WHEN starts_with(${cell}, ${quoted("'")}) THEN regexp_replace(${cell}, ${quoted(guardedForm.source)}, '\\1') ELSE ${cell} END`;
}

/** Lines that cannot be parted into cells, of which no more are told. */
const mostRejects = 1000;

/** A path that is one file, whatever signs are in its name. */
export function escapedPath(path: string): string {
  return path.replace(/[*?[]/g, "[$&]");
}

export function firstLineOf(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split("\n")[0] ?? "";
}
