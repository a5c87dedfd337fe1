import { dataError } from "../errors/data-error.ts";
import { type CautionCode, caution } from "../results/caution.ts";
import { keyColumns } from "./column-kinds.ts";
import type { GivenKeys } from "./given-keys.ts";
import type { FoundColumns } from "./headers.ts";
import { whereItCameFrom } from "./issues.ts";
import { missedCautions } from "./missed.ts";
import { type CatchCheck, checkCatches, type ReadOptions } from "./read-catches.ts";
import { usualUnit } from "./read-text.ts";
import type { CatchIdentity } from "./rows.ts";
import type { CatchSource } from "./source.ts";
import { suspicions } from "./suspicions.ts";
import { checkTogether } from "./together.ts";
import { inTwoPlaces } from "./two-places.ts";
import type { Catch, CatchLog, MissedCatch, WrittenWeights } from "./types.ts";

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
  const checks: CatchCheck[] = [];
  for (const source of sources) checks.push(await checkCatches(source, optionsOf(source, options)));
  const issues = checks.flatMap((check) => (check.ok ? [] : check.issues));
  if (issues.length > 0) return { ok: false, issues };
  const logs = checks.flatMap((check) => (check.ok ? check.log : []));
  const [only] = logs;
  return only !== undefined && logs.length === 1 ? { ok: true, log: only } : joined(logs);
}

function optionsOf({ name }: CatchSource, { keys, ...options }: TogetherOptions): ReadOptions {
  const own = typeof keys === "function" ? keys(name) : keys;
  return own === undefined ? options : { ...options, keys: own };
}

/** The log of several files, or what is wrong between them. */
function joined(logs: readonly CatchLog[]): CatchCheck {
  const parts = renumbered(logs);
  const catches = parts.flatMap((part) => part.catches);
  const written = parts.flatMap((part) => part.written);
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
  const massUnit = usualUnit(written);
  const files = parts.map(({ log }) => log.source);
  const firstRows = parts.map(({ from }) => from);
  const cautions = [
    caution("files-read-together", {}, { files, firstRows }),
    ...logs.flatMap((log) => log.cautions.filter(({ code }) => ofFile.has(code))),
    ...suspicions(catches, massUnit, written),
    ...missedCautions(missed, catches),
  ];
  const source = files.join(", ");
  return {
    ok: true,
    log: { source, massUnit, catches, written, ...(missed.length > 0 ? { missed } : {}), cautions },
  };
}

/** What is said of a file as it stands, whatever lies beside it; all else is asked of the log as a whole. */
const ofFile: ReadonlySet<CautionCode> = new Set([
  "one-bin-taken",
  "sheet-hidden",
  "sheets-passed-over",
  "catches-on-other-sheets",
  "rows-hidden",
  "percent-cells",
  "formulas-without-value",
  "json-keys-repeated",
] satisfies CautionCode[]);

/** Each file has headers of its own; between files only keys may be missing. */
const keysAlone: FoundColumns = {
  plain: new Map(keyColumns.map((name) => [name, { header: name, index: -1 }])),
  mass: [],
  extra: [],
};

/** One file within a log of several. */
interface Part {
  readonly log: CatchLog;
  /** Row of the log that its first row has become, and row in the file of each row of the log. */
  readonly from: number;
  readonly rowIn: ReadonlyMap<number, number>;
  readonly catches: readonly Catch[];
  readonly written: readonly WrittenWeights[];
  readonly missed: readonly MissedCatch[];
}

/** Rows counted through all files, from 2 on, as below one header. */
function renumbered(logs: readonly CatchLog[]): readonly Part[] {
  let next = 2;
  return logs.map((log): Part => {
    const from = next;
    const missed = log.missed ?? [];
    const rows = [...log.catches, ...missed].map(({ row }) => row).toSorted((a, b) => a - b);
    const rowOf = new Map(rows.map((row) => [row, next++]));
    const moved = <R extends { readonly row: number }>(one: R): R => ({
      ...one,
      row: rowOf.get(one.row) ?? one.row,
    });
    return {
      log,
      from,
      rowIn: new Map([...rowOf].map(([row, inLog]) => [inLog, row])),
      catches: log.catches.map(moved),
      written: (log.written ?? []).map(moved),
      missed: missed.map(moved),
    };
  });
}

function placeOf(row: number, parts: readonly Part[]) {
  const part = parts.find(({ rowIn }) => rowIn.has(row));
  return { source: part?.log.source ?? "", row: part?.rowIn.get(row) ?? row };
}

/** Files by name, as one speaks of them together. */
function namesOf(sources: readonly CatchSource[]): string {
  return sources.map(({ name }) => name).join(", ");
}
