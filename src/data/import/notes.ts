import type { DataIssue } from "../../errors/data-issue.ts";
import type { Problem } from "../../errors/problems.ts";
import { dataIssue } from "../issues.ts";
import type { Grid } from "./grid.ts";
import type { AsideReason, Assumed, AssumedFacts, AssumedKind, SetAside } from "./result.ts";

/** What is noted while one sheet is read: the same thing once, with all the rows it was said of. */
export interface Notes {
  readonly assume: <K extends AssumedKind>(kind: K, facts: AssumedFacts[K], row?: number) => void;
  readonly ask: (problem: Problem, column: string | null, received: string, row?: number) => void;
  readonly setAside: (row: number, why: AsideReason, text: string) => void;
  readonly assumed: () => readonly Assumed[];
  readonly asked: readonly DataIssue[];
  readonly aside: readonly SetAside[];
}

export function notesFor({ source, sheet, place }: Grid): Notes {
  const found = new Map<string, { assumed: Assumed; rows: number[]; count: number }>();
  const asked: DataIssue[] = [];
  const aside: SetAside[] = [];
  return {
    assume: (kind, facts, row) => {
      const key = JSON.stringify([kind, facts]);
      // A kind goes with its own facts, which the signature holds and a union cannot.
      const assumed = { kind, facts, source, sheet, count: 0, rows: [] } as unknown as Assumed;
      const one = found.get(key) ?? { assumed, rows: [], count: 0 };
      one.count += 1;
      if (row !== undefined && one.rows.at(-1) !== row) one.rows.push(row);
      found.set(key, one);
    },
    ask: (problem, column, received, row) => {
      const at = { ...place, ...(row === undefined ? {} : { row }) };
      asked.push(dataIssue(column === null ? at : { ...at, column }, problem, received));
    },
    setAside: (row, why, text) => {
      aside.push({ source, sheet, row, why, text });
    },
    assumed: () =>
      [...found.values()].map(({ assumed, rows, count }) => ({ ...assumed, rows, count })),
    asked,
    aside,
  };
}
