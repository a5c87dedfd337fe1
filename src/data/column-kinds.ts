import { type CatchColumn, catchColumns } from "./columns.ts";
import type { MassUnit } from "./types.ts";

export type Column = (typeof catchColumns)[number];
type ListedName = Column["name"];

export type MassKind = "net" | "gross" | "tare" | "division";

export const massKinds: readonly MassKind[] = ["net", "gross", "tare", "division"];
export const massUnits: readonly MassUnit[] = ["kg", "g", "lb", "oz"];

/** Columns whose name has no mass unit in it. */
export type PlainColumn = Exclude<ListedName, `${MassKind}_kg`>;

export const plainColumns: readonly PlainColumn[] = catchColumns
  .map(({ name }) => name)
  .filter((name): name is PlainColumn => !massKinds.some((kind) => name === `${kind}_kg`));

/** Columns that tell meters and fills apart where a log holds several machines, farms or seasons. */
export const keyColumns = ["farm", "machine", "season"] as const;
export type KeyColumn = (typeof keyColumns)[number];

/** What a column holds, by its listed name. */
export const columnByName = Object.fromEntries(
  catchColumns.map((column: CatchColumn) => [column.name, column]),
) as Readonly<Record<ListedName, CatchColumn>>;

/** The same of any name; undefined: it is none of theirs. */
export function columnNamed(name: string): CatchColumn | undefined {
  return listed.get(name);
}

const listed: ReadonlyMap<string, CatchColumn> = new Map(
  catchColumns.map((column) => [column.name, column]),
);

/** Columns of which a catch always has the value: a net mass that the file lacks is worked out. */
type Essential = Extract<Column, { readonly required: true } | { readonly name: "net_kg" }>;

export function isEssential({ name, required }: CatchColumn): boolean {
  return required || name === "net_kg";
}

/** Columns noted beside the weighing. */
export type RecordedColumn = Extract<Column, { readonly recorded: true }>;

export const recordedColumns: readonly RecordedColumn[] = catchColumns.filter(
  (column) => column.recorded,
);

type Value<One extends Column> =
  | (One["type"] extends "number" | "integer" ? number : string)
  | (One extends Essential ? never : null);

/** The fields that columns fill, with the values the table gives them. */
export type FieldsOf<Some extends Column> = {
  readonly [One in Some as NonNullable<One["field"]>]: Value<One>;
};
