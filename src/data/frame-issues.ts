import type { DataIssue } from "../errors/data-issue.ts";
import type { Problem } from "../errors/problems.ts";
import { type CatchField, catchFields, valueProblem } from "./catch-values.ts";
import { dataIssue, type Place } from "./issues.ts";
import type { Cell } from "./table.ts";

export const frameSource = "data frame";

/** Columns without which a frame holds no catches. */
export const alwaysInFrame: ReadonlySet<string> = new Set([
  "row",
  ...catchFields.filter(({ essential }) => essential).map(({ column }) => column),
]);

const place: Place = { source: frameSource, rowKind: "row" };

/** One issue for each column that every frame of catches has and this one lacks. */
export function missingColumns(columns: readonly string[]): readonly DataIssue[] {
  return [...alwaysInFrame]
    .filter((name) => !columns.includes(name))
    .map((column) =>
      dataIssue({ ...place, column }, { problem: "frame-column-missing", facts: {} }),
    );
}

/** What keeps a cell from being a catch's: empty, of another kind, or out of range. */
export function cellIssues(row: number, known: CatchField, cell: Cell): readonly DataIssue[] {
  const { column } = known;
  const problem = cell === null ? emptyProblem(column) : valueProblem(known, cell, "frame");
  if (problem === null) return [];
  return [dataIssue({ ...place, row, column }, problem, String(cell ?? ""))];
}

function emptyProblem(column: string): Problem | null {
  return alwaysInFrame.has(column) ? { problem: "cell-missing", facts: {} } : null;
}
