import { catchColumns } from "../../data/columns.ts";
import type { Catch, MassUnit } from "../../data/types.ts";
import { catchRow, knownColumns, type PlainRow, rowsToCsv } from "../../data/write-csv.ts";
import { convert } from "../../units/convert.ts";

/** Cells of a catch by the header of a file of catches, in the very digits that were typed; what is empty is left out. */
export type Cells = Readonly<Record<string, string>>;

/** A catch of the page. */
export interface PageRow {
  readonly id: string;
  readonly cells: Cells;
}

export type MassKind = "net" | "gross" | "tare";

export function massHeader(kind: MassKind, unit: MassUnit): string {
  return `${kind}_${unit}`;
}

const massUnits: readonly MassUnit[] = ["kg", "g", "lb", "oz"];

/** A mass of a row, with the unit it was written in; null: it has none of this kind. */
export function massIn(
  cells: Cells,
  kind: MassKind,
): { readonly text: string; readonly unit: MassUnit } | null {
  const unit = massUnits.find((one) => cells[massHeader(kind, one)] !== undefined);
  const text = unit === undefined ? undefined : cells[massHeader(kind, unit)];
  return unit === undefined || text === undefined ? null : { text, unit };
}

/** The cells with some of them changed; an empty text takes one away. */
export function changed(cells: Cells, to: Cells): Cells {
  return Object.fromEntries(Object.entries({ ...cells, ...to }).filter(([, text]) => text !== ""));
}

/** More digits than any scale shows, and fewer than binary arithmetic adds. */
const digits = 12;

/** A catch that was read, in the cells of a file: masses in the unit of its file. */
export function cellsOf(row: Catch, unit: MassUnit): Cells {
  const inKg: ReadonlySet<string> = new Set(
    catchColumns.filter((column) => column.unit === "kg").map(({ name }) => name),
  );
  const written = (kg: number) =>
    String(unit === "kg" ? kg : Number(convert(kg, "kg", unit).toPrecision(digits)));
  return Object.fromEntries(
    Object.entries(catchRow(row)).flatMap(([name, cell]) => {
      if (cell === null || cell === "" || (name === "net_kg" && followsFromOthers(row))) return [];
      return inKg.has(name) && typeof cell === "number"
        ? [[name.replace(/kg$/, unit), written(cell)]]
        : [[name, String(cell)]];
    }),
  );
}

/** Beside gross and tare, a net that is their difference would be a figure that nobody read off a scale. */
function followsFromOthers({ netKg, grossKg, tareKg }: Catch): boolean {
  if (grossKg === null || tareKg === null) return false;
  return Number((grossKg - tareKg).toPrecision(digits)) === Number(netKg.toPrecision(digits));
}

const order: readonly string[] = catchColumns.flatMap(({ name, unit }) =>
  unit === "kg" ? massUnits.map((one) => name.replace(/kg$/, one)) : [name],
);

/** The file of catches that these rows are, as the reader reads it. */
export function csvOf(rows: readonly PageRow[]): string {
  const always = new Set(["bin", "product", "fill", "catch", "turns"]);
  const plain: readonly PlainRow[] = rows.map(({ cells }) => cells);
  const known = knownColumns(plain, always);
  const place = (name: string) => (order.includes(name) ? order.indexOf(name) : order.length);
  const columns = [...known].sort((a, b) => place(a) - place(b));
  return rowsToCsv(
    rows.map(({ cells }) => Object.fromEntries(columns.map((name) => [name, cells[name] ?? null]))),
  );
}
