import type { DataIssue } from "../errors/data-issue.ts";
import { type CatchField, catchFields, valueProblem } from "./catch-values.ts";
import { dataIssue, type Place, type Problem } from "./issues.ts";
import type { Cell } from "./table.ts";

export const frameSource = "data frame";

/** Columns without which a frame holds no catches. */
export const alwaysInFrame: ReadonlySet<string> = new Set([
  "row",
  ...catchFields.filter(({ essential }) => essential).map(({ column }) => column),
]);

const place: Place = { source: frameSource, rowWord: "row" };

/** One issue for each column that every frame of catches has and this one lacks. */
export function missingColumns(columns: readonly string[]): readonly DataIssue[] {
  return [...alwaysInFrame]
    .filter((name) => !columns.includes(name))
    .map((column) =>
      dataIssue(
        { ...place, column },
        {
          code: "column-missing",
          received: "",
          found: "no such column",
          expected: "it in every frame of catches",
          remedy: "Keep the columns that catchesToFrame makes.",
        },
      ),
    );
}

/** What keeps a cell from being a catch's: empty, of another kind, or out of range. */
export function cellIssues(row: number, known: CatchField, cell: Cell): readonly DataIssue[] {
  const { column } = known;
  const problem =
    cell === null ? emptyProblem(alwaysInFrame.has(column)) : valueProblem(known, cell);
  if (problem === null) return [];
  const received = String(cell ?? "");
  return [
    dataIssue({ ...place, row, column }, { ...problem, received, remedy: "Correct the cell." }),
  ];
}

function emptyProblem(required: boolean): Pick<Problem, "code" | "expected"> | null {
  return required ? { code: "value-missing", expected: "a value in every row" } : null;
}
