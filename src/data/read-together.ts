import { dataError } from "../errors/data-error.ts";
import { OptionError } from "../errors/errors.ts";
import { caution } from "../results/caution.ts";
import { keyColumns } from "./column-kinds.ts";
import type { GivenKeys } from "./given-keys.ts";
import type { FoundColumns } from "./headers.ts";
import { type Checked, whereItCameFrom } from "./issues.ts";
import { type MarkedPart, nothingCounts, readMarkedPart } from "./nothing-counts.ts";
import { type CatchCheck, checkCatches, type ReadOptions, tableIn } from "./read-catches.ts";
import { type LogPart, logOf } from "./read-text.ts";
import type { CatchIdentity } from "./rows.ts";
import type { CatchSource } from "./source.ts";
import { suspicions } from "./suspicions.ts";
import { checkTogether } from "./together.ts";
import { inTwoPlaces } from "./two-places.ts";
import type { CatchLog } from "./types.ts";

export interface TogetherOptions extends Omit<ReadOptions, "keys"> {
  /** Farm, machine or season of all rows; of a function: of the rows of the file of this name. */
  readonly keys?: GivenKeys | ((name: string) => GivenKeys);
}

/**
 * The catches of several files as one log, as if they stood one below another: names must agree across them, and a catch
 * stands in one of them only. Rows are counted through all files, and a note says where each begins.
 *
 * @param sources  one file or more, each with headers and units of its own
 * @param options  as for readCatches; keys may differ from file to file
 * @throws         DataError with every problem of every file; OptionError for an option that does not apply
 */
export async function readCatchesTogether(
  sources: readonly CatchSource[],
  options: TogetherOptions = {},
): Promise<CatchLog> {
  const check = await checkCatchesTogether(sources, options);
  if (!check.ok) throw dataError(namesOf(sources), check.issues);
  return check.log;
}

/** The twin of readCatchesTogether that returns the problems instead of throwing them. */
export async function checkCatchesTogether(
  sources: readonly CatchSource[],
  options: TogetherOptions = {},
): Promise<CatchCheck> {
  const [only, ...others] = sources;
  if (only === undefined) throw new OptionError("sources", "none", "one file or more");
  if (others.length === 0) return checkCatches(only, optionsOf(only, options));
  const checks: Checked<MarkedPart>[] = [];
  for (const source of sources) checks.push(await partIn(source, optionsOf(source, options)));
  const issues = checks.flatMap((check) => (check.ok ? [] : check.issues));
  if (issues.length > 0) return { ok: false, issues };
  const parts = checks.flatMap((check) => (check.ok ? check.value : []));
  const uncounted = nothingCounts(parts);
  return uncounted.length > 0 ? { ok: false, issues: uncounted } : joined(parts);
}

async function partIn(source: CatchSource, options: ReadOptions): Promise<Checked<MarkedPart>> {
  const table = await tableIn(source, options);
  return table.ok ? readMarkedPart(table.value, source.name, options.keys) : table;
}

function optionsOf({ name }: CatchSource, { keys, ...options }: TogetherOptions): ReadOptions {
  const own = typeof keys === "function" ? keys(name) : keys;
  return own === undefined ? options : { ...options, keys: own };
}

/** The log of several files, or what is wrong between them. */
function joined(files: readonly LogPart[]): CatchCheck {
  const parts = renumbered(files);
  const catches = parts.flatMap((part) => part.catches);
  const missed = parts.flatMap((part) => part.missed);
  const identities: readonly CatchIdentity[] = [...catches, ...missed].toSorted(
    (one, other) => one.row - other.row,
  );
  const issues = checkTogether(identities, keysAlone, { source: "", rowKind: "row" });
  if (issues.length > 0)
    return {
      ok: false,
      issues: issues.map((issue) =>
        inTwoPlaces(
          whereItCameFrom(issue, (row) => placeOf(row, parts)),
          "--key",
        ),
      ),
    };
  const names = parts.map(({ source }) => source);
  const firstRows = parts.map(({ from }) => from);
  const log = logOf(
    {
      source: names.join(", "),
      catches,
      written: parts.flatMap((part) => part.written),
      missed,
      findings: [
        caution("files-read-together", {}, { files: names, firstRows }),
        ...parts.flatMap(({ findings }) => findings),
      ],
    },
    suspicions,
  );
  return { ok: true, log };
}

/** Each file has headers of its own; between files only keys may be missing. */
const keysAlone: FoundColumns = {
  plain: new Map(keyColumns.map((name) => [name, { header: name, index: -1 }])),
  mass: [],
  extra: [],
};

/** One file within a log of several, its rows counted through it. */
interface Part extends LogPart {
  /** Row of the log that its first row has become, and row in the file of each row of the log. */
  readonly from: number;
  readonly rowIn: ReadonlyMap<number, number>;
}

/** Rows counted through all files, from 2 on, as below one header. */
function renumbered(files: readonly LogPart[]): readonly Part[] {
  let next = 2;
  return files.map((file): Part => {
    const { catches, written, missed } = file;
    const from = next;
    const rows = [...catches, ...missed].map(({ row }) => row).toSorted((a, b) => a - b);
    const rowOf = new Map(rows.map((row) => [row, next++]));
    const moved = <R extends { readonly row: number }>(one: R): R => ({
      ...one,
      row: rowOf.get(one.row) ?? one.row,
    });
    return {
      ...file,
      from,
      rowIn: new Map([...rowOf].map(([row, inLog]) => [inLog, row])),
      catches: catches.map(moved),
      written: written.map(moved),
      missed: missed.map(moved),
    };
  });
}

function placeOf(row: number, parts: readonly Part[]) {
  const part = parts.find(({ rowIn }) => rowIn.has(row));
  return { source: part?.source ?? "", row: part?.rowIn.get(row) ?? row };
}

/** Files by name, as one speaks of them together. */
function namesOf(sources: readonly CatchSource[]): string {
  return sources.map(({ name }) => name).join(", ");
}
