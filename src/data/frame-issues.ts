import type { DataIssue } from "../errors/data-issue.ts";
import { type CatchColumn, catchColumns } from "./columns.ts";
import { dataIssue, type Place, type Problem } from "./issues.ts";
import type { Cell } from "./table.ts";

export const frameSource = "data frame";

/** Columns without which a frame holds no catches. */
export const alwaysInFrame: ReadonlySet<string> = new Set([
  "row",
  "bin",
  "product",
  "fill",
  "catch",
  "turns",
  "net_kg",
]);

const place: Place = { source: frameSource, rowWord: "row" };

type Rules = Pick<CatchColumn, "type" | "minimum" | "maximum">;

const textRules: Rules = { type: "string", minimum: null, maximum: null };

const rulesOf: ReadonlyMap<string, Rules> = new Map<string, Rules>([
  ...catchColumns.map((column): [string, Rules] => [column.name, column]),
  ["row", { type: "integer", minimum: 1, maximum: null }],
]);

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
export function cellIssues(row: number, column: string, cell: Cell): readonly DataIssue[] {
  const rules = rulesOf.get(column) ?? textRules;
  const problem = problemOf(cell, rules, alwaysInFrame.has(column));
  if (problem === null) return [];
  const received = String(cell ?? "");
  return [
    dataIssue({ ...place, row, column }, { ...problem, received, remedy: "Correct the cell." }),
  ];
}

function problemOf(
  cell: Cell,
  rules: Rules,
  required: boolean,
): Pick<Problem, "code" | "expected"> | null {
  if (cell === null) {
    return required ? { code: "value-missing", expected: "a value in every row" } : null;
  }
  if (rules.type === "string" || rules.type === "date") {
    return typeof cell === "string" ? null : { code: "not-a-text", expected: "a text" };
  }
  if (typeof cell !== "number") {
    return { code: "not-a-number", expected: "a number, not a text" };
  }
  const whole = rules.type === "integer";
  if (whole && !Number.isInteger(cell)) {
    return { code: "not-whole", expected: "a whole number" };
  }
  const low = rules.minimum ?? Number.NEGATIVE_INFINITY;
  const high = rules.maximum ?? Number.POSITIVE_INFINITY;
  return cell >= low && cell <= high
    ? null
    : { code: "out-of-range", expected: `a number from ${low} to ${high}` };
}
