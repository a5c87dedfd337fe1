import type { DataIssue, RowKind } from "../errors/data-issue.ts";
import { problems as english } from "../errors/en/problems.ts";
import { bounded, type IssueTemplates, saidOf, shortValue } from "../errors/issue-text.ts";
import {
  codeOf,
  type DataIssueCode,
  type Problem,
  type ProblemKey,
  type ProblemOf,
} from "../errors/problems.ts";

/** What a reading step gives: a value, or everything that is wrong. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly DataIssue[] };

/** Where in a file a problem sits. */
export interface Place {
  readonly source: string;
  readonly rowKind: RowKind;
  readonly row?: number;
  readonly column?: string;
  /** Where the first row lies that the facts name, if in another file. */
  readonly firstSource?: string;
}

/**
 * A problem at its place.
 *
 * @param received  the text or value itself; an empty text means that nothing was there
 */
export function dataIssue(place: Place, problem: Problem, received = ""): DataIssue {
  return issueSaidBy({ say: english, codeOf }, place, problem, received);
}

/** Problems that can come up somewhere: how they are said, and their codes. */
export interface Sayable<K extends ProblemKey> {
  readonly say: IssueTemplates<K>;
  readonly codeOf: (problem: K) => DataIssueCode;
}

/** The same with the sentences of some problems only. */
export function issueSaidBy<K extends ProblemKey, P extends Problem & ProblemOf<K>>(
  { say, codeOf: code }: Sayable<K>,
  place: Place,
  problem: P,
  received = "",
) {
  const found = {
    ...bounded(problem),
    source: place.source,
    rowKind: place.rowKind,
    row: place.row ?? null,
    column: place.column ?? null,
    received: shortValue(received),
    ...(place.firstSource === undefined ? {} : { firstSource: place.firstSource }),
  };
  const { expected, remedy, text } = saidOf<K>(found, say);
  return { ...found, code: code(problem.problem), expected, remedy, text };
}

/** A problem that stands for so many rows more in which the same is wrong. */
export function standingFor(issue: DataIssue, alike: number): DataIssue {
  if (alike === 0) return issue;
  const found = { ...issue, alike };
  return { ...found, text: saidOf(found, english).text };
}

export function failed(issues: readonly DataIssue[]): { ok: false; issues: readonly DataIssue[] } {
  return { ok: false, issues };
}

export function passed<T>(value: T): { ok: true; value: T } {
  return { ok: true, value };
}

/**
 * A problem between rows that were read as one table, where its rows came from.
 *
 * @param originOf  source and row of a row of that table
 */
export function whereItCameFrom(
  issue: DataIssue,
  originOf: (row: number) => Required<Pick<Place, "source" | "row">> | undefined,
  column: string | null = issue.column,
): DataIssue {
  const origin = issue.row === null ? undefined : originOf(issue.row);
  if (origin === undefined) return issue;
  const place: Place = { ...origin, rowKind: "row", ...(column === null ? {} : { column }) };
  const { facts, received, alike = 0 } = issue;
  if (!("firstRow" in facts)) return standingFor(dataIssue(place, issue, received), alike);
  const first = originOf(facts.firstRow) ?? origin;
  // The same facts but for the row, which counts in the file it lies in.
  const moved = { ...issue, facts: { ...facts, firstRow: first.row } } as DataIssue;
  const elsewhere = first.source === origin.source ? {} : { firstSource: first.source };
  return standingFor(dataIssue({ ...place, ...elsewhere }, moved, received), alike);
}
