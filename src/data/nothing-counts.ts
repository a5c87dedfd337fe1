import type { DataIssue } from "../errors/data-issue.ts";
import { firstOf } from "./budget.ts";
import type { GivenKeys } from "./given-keys.ts";
import { meanings, spelled } from "./header-names.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { type LogPart, logOf, nothingWeighed, readPart } from "./read-text.ts";
import { suspicions } from "./suspicions.ts";
import type { Table } from "./table.ts";
import type { CatchLog } from "./types.ts";

/** What one file brings to a log, and where it says that a catch does not count. */
export interface MarkedPart extends LogPart {
  readonly markAt: Place;
}

/** @throws OptionError for a key that does not apply */
export function readMarkedPart(
  table: Table,
  source: string,
  keys: GivenKeys = {},
): Checked<MarkedPart> {
  const part = readPart(table, source, keys);
  if (!part.ok) return part;
  const column = table.headers.find(saysExcluded) ?? "exclude";
  return passed({ ...part.value, markAt: { source, rowKind: table.rowKind, column } });
}

function saysExcluded(header: string): boolean {
  const meaning = meanings.get(spelled(header).spelling);
  return meaning !== undefined && "plain" in meaning && meaning.plain === "exclude";
}

/**
 * What is wrong where no part has a catch that counts. Asked where a file is read to be answered and not of the page at the
 * drill, nor where catches are added: there the next catch may count.
 */
export function nothingCounts(parts: readonly MarkedPart[]): readonly DataIssue[] {
  if (parts.some(({ catches }) => catches.some(({ leftOut }) => leftOut === null))) return [];
  const unweighed = nothingWeighed(parts);
  if (unweighed.length > 0) return unweighed;
  return parts.flatMap(({ catches, markAt }) =>
    firstOf(catches, ({ row }) =>
      dataIssue({ ...markAt, row }, { problem: "all-excluded", facts: {} }),
    ),
  );
}

/** What one file brings as a log of its own, of which at least one catch counts. */
export function countingLog(part: Checked<MarkedPart>): Checked<CatchLog> {
  if (!part.ok) return part;
  const uncounted = nothingCounts([part.value]);
  return uncounted.length > 0 ? failed(uncounted) : passed(logOf(part.value, suspicions));
}
