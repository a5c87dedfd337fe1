import type { IssueOf } from "./data-issue.ts";
import type { ProblemKey } from "./problems.ts";

/** Rows that have the same problem, and whether something else was found in some of them. */
export interface Rows {
  readonly rows: readonly number[];
  readonly others: boolean;
}

export const alone: Rows = { rows: [], others: false };

/** Problems that are the same but for their row. */
export interface Alike<Issue> extends Rows {
  readonly first: Issue;
  readonly count: number;
}

/** Every problem once, in the order in which they first come. Those of a whole file are never the same. */
export function groupsOf<Issue extends IssueOf<ProblemKey>>(
  issues: readonly Issue[],
): readonly Alike<Issue>[] {
  const groups = new Map<string, Alike<Issue> & { readonly rows: number[] }>();
  issues.forEach((issue, i) => {
    const { problem, facts, source, column, row, firstSource } = issue;
    const key = JSON.stringify([
      problem,
      facts,
      source,
      column,
      firstSource,
      row === null ? i : "",
    ]);
    const group = groups.get(key) ?? { first: issue, rows: [], others: false, count: 0 };
    const { first, rows, others, count } = group;
    if (row !== null && rows.at(-1) !== row) rows.push(row);
    groups.set(key, {
      first,
      rows,
      others: others || issue.received !== first.received,
      count: count + 1,
    });
  });
  return [...groups.values()];
}

const rangesShown = 6;

/** Rows as one writes them: 5, 7–9; the first of many. */
export function rowRanges(rows: readonly number[]): string {
  const ranges: [number, number][] = [];
  for (const row of rows.toSorted((a, b) => a - b)) {
    const last = ranges.at(-1);
    if (last !== undefined && row <= last[1] + 1) last[1] = row;
    else ranges.push([row, row]);
  }
  const texts = ranges.map(([from, to]) => (from === to ? `${from}` : `${from}–${to}`));
  return [...texts.slice(0, rangesShown), ...(texts.length > rangesShown ? ["…"] : [])].join(", ");
}
