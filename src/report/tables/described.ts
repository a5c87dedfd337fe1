import { type OwnColumn, ownColumns, type TableColumn } from "../../analysis/tables/columns.ts";
import { type ColumnNames, columnNameIn, isOwnColumn } from "../../analysis/tables/table-names.ts";
import { extraPrefix } from "../../data/catch-values.ts";
import { type Column, columnByName } from "../../data/column-kinds.ts";
import type { CatchColumn } from "../../data/columns.ts";
import type { Cell } from "../../data/table.ts";
import { columnsOf, type PlainRow } from "../../data/write-csv.ts";
import type { Words } from "../../wording/words.ts";

/** A column of a tidy table as a person or a program is told of it. */
export interface DescribedColumn {
  /** As the table calls it. */
  readonly name: string;
  readonly type: "string" | "number" | "integer" | "boolean" | "date" | "datetime";
  /** How a time is written, as strptime has it; left out: as the type says. */
  readonly format?: string;
  /** Null: it has none. */
  readonly unit: string | null;
  /** In the language of the words. */
  readonly meaning: string;
}

export type TableWords = Pick<Words, "tables" | "template">;

/** Every column of a table, in its order; the only way by which type, unit and meaning reach a file. */
export function describedColumns(
  rows: readonly PlainRow[],
  words: TableWords,
  names: ColumnNames = "own",
): readonly DescribedColumn[] {
  return columnsOf(rows).map((name) => {
    const cells = rows.flatMap((row) => row[name] ?? []);
    return { ...describedColumn(name, cells, words), name: columnNameIn(name, names) };
  });
}

function describedColumn(
  name: string,
  cells: readonly Cell[],
  { tables: say, template }: TableWords,
): Omit<DescribedColumn, "name"> {
  if (name.startsWith(extraPrefix))
    return { type: "string", unit: null, meaning: say.extra(name.slice(extraPrefix.length)) };
  if (isOwnColumn(name)) return ofOwn(name, cells, say.columns[name]);
  const column: CatchColumn = columnByName[name as Column["name"]];
  const type = column.type === "date" ? typeOfTimes(cells) : { type: column.type };
  const { meaning } = template.column(column as Column);
  return { ...type, unit: column.unit, meaning };
}

function ofOwn(name: OwnColumn, cells: readonly Cell[], meaning: string) {
  const { type, unit }: TableColumn = ownColumns[name];
  const isNumber = cells.every((cell) => typeof cell === "number");
  return {
    type: type !== "fill" ? type : isNumber ? ("integer" as const) : ("string" as const),
    unit,
    meaning,
  };
}

/** Times as a file gives them are text where they are of no kind, or of several. */
function typeOfTimes(
  cells: readonly Cell[],
): Pick<DescribedColumn, "type"> & { readonly format?: string } {
  return (
    timeKinds.find(
      ({ written }) => cells.length > 0 && cells.every((cell) => written.test(String(cell))),
    )?.is ?? { type: "string" }
  );
}

const timeKinds = [
  { written: /^\d{4}-\d\d-\d\d$/, is: { type: "date" } },
  {
    written: /^\d{4}-\d\d-\d\dT\d\d:\d\d$/,
    is: { type: "datetime", format: "%Y-%m-%dT%H:%M" },
  },
  {
    written: /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d$/,
    is: { type: "datetime", format: "%Y-%m-%dT%H:%M:%S" },
  },
] as const;
