import type { DataIssue } from "../errors/data-issue.ts";
import { betweenRows } from "./between-rows.ts";
import { firstOf } from "./budget.ts";
import { keyColumns } from "./column-kinds.ts";
import { groupsOf } from "./groups.ts";
import { type FoundColumns, headerIn } from "./headers.ts";
import { dataIssue, type Place } from "./issues.ts";
import { type LogNames, logNames } from "./log-names.ts";
import type { CatchIdentity } from "./rows.ts";

/** What is wrong between the rows of a table that are right one by one. */
export function checkTogether(
  rows: readonly CatchIdentity[],
  columns: FoundColumns,
  place: Place,
  names: LogNames = logNames(rows),
): readonly DataIssue[] {
  const keys = keyColumns.filter((name) => columns.plain.has(name));
  const found = betweenRows(rows, names, keys, (name) => headerIn(columns, name));
  return groupsOf(found, ({ problem, column }) => `${problem.problem} ${column}`).flatMap((alike) =>
    firstOf(alike, ({ row, column, problem, received }) =>
      dataIssue({ ...place, row, column: headerIn(columns, column) }, problem, received),
    ),
  );
}
