import { max, min } from "simple-statistics";
import type { DataIssue } from "../errors/data-issue.ts";
import { type Caution, caution } from "../results/caution.ts";
import { convert } from "../units/convert.ts";
import { powerOfTen } from "../units/power-of-ten.ts";
import { readEach } from "./budget.ts";
import { columnByName } from "./column-kinds.ts";
import { complain, figureField, type RowReading, textField } from "./fields.ts";
import { type GivenKeys, withKeys } from "./given-keys.ts";
import { spelled } from "./header-names.ts";
import { type FoundColumn, type FoundColumns, findColumns, headerIn } from "./headers.ts";
import { type MeterPlace, unnamed } from "./identity.ts";
import { type Checked, failed, type Place, passed } from "./issues.ts";
import { decimalMarks } from "./numbers.ts";
import { type Cell, cellText, isBlank, type Table, type TableRow } from "./table.ts";

/** Meter turns over a hectare, as the meter was driven for its catches. */
export interface TurnsPerHectare {
  readonly value: number;
  /** Worked out with something that nobody measured. */
  readonly assumed: boolean;
}

/** What is known of them for a meter; null: nothing. */
export type TurnsPerHectareOf = (meter: MeterPlace) => TurnsPerHectare | null;

/** Headers of the area that a catch stands for, as they are compared. */
const unitsByHeader: ReadonlyMap<string, "ha" | "ac"> = new Map(
  (["ha", "ac"] as const).flatMap((unit) =>
    ["area", "Fläche", "Flaeche"].map((name) => [spelled(`${name}_${unit}`).spelling, unit]),
  ),
);

const areaRules = {
  ...columnByName.turns,
  required: false,
  unit: "ha",
  minimum: 1e-6,
  maximum: 1_000,
};
const fraction = /^(\d+)\s*\/\s*(\d+)$/;

/** Counted turns and the drive's own seldom agree nearer than this share. Chosen by us. */
const agree = 0.01;

/**
 * The table with the turns that belong to the areas its catches stand for: N = T·A. Where turns are written too they count,
 * and must agree with the area to half a unit of their last digit or 1 %, whichever is more. The areas stay as a column of
 * the user's own.
 *
 * @param perHectare  T of each meter
 * @returns           the table itself where it has no such column; every row whose area tells no turns, as a problem
 */
export function areaAsTurns(
  table: Table,
  source: string,
  perHectare: TurnsPerHectareOf,
  keys: GivenKeys = {},
): Checked<Table> {
  const area = areaColumn(table);
  if (area === null) return passed(table);
  const place: Place = { source, rowKind: table.rowKind };
  const { columns } = findColumns(withKeys(table, keys), place);
  const turns = columns.plain.get("turns");
  const headers = turns === undefined ? [...table.headers, "turns"] : table.headers;
  const at = turns?.index ?? table.headers.length;
  const issues: DataIssue[] = [];
  const turnsIn = turnsReader(table, { area, columns, place, issues, perHectare }, keys);
  const used: TurnsPerHectare[] = [];
  const rows: TableRow[] = [];
  readEach(table.rows, { place, issues }, (row) => {
    const found = turnsIn(row);
    if (found !== null) used.push(found.perHectare);
    rows.push(found === null ? row : withCell(row, headers.length, at, found.turns));
  });
  if (issues.length > 0) return failed(issues);
  const findings = [...(table.findings ?? []), ...notesOn(used)];
  return passed({ ...table, headers, rows, findings });
}

interface AreaColumn extends FoundColumn {
  readonly unit: "ha" | "ac";
}

function areaColumn({ headers }: Table): AreaColumn | null {
  for (const [index, header] of headers.entries()) {
    const unit = unitsByHeader.get(spelled(header).spelling);
    if (unit !== undefined) return { index, header, unit };
  }
  return null;
}

interface AreaReading {
  readonly area: AreaColumn;
  readonly columns: FoundColumns;
  readonly place: Place;
  readonly issues: DataIssue[];
  readonly perHectare: TurnsPerHectareOf;
}

interface TurnsFound {
  readonly turns: number;
  readonly perHectare: TurnsPerHectare;
}

/** Reads the turns of a row that has an area and none written; null: its turns stand as they are, or a problem was noted. */
function turnsReader(
  table: Table,
  { area, columns, place, issues, perHectare }: AreaReading,
  keys: GivenKeys,
): (row: TableRow) => TurnsFound | null {
  const turnsColumn = columns.plain.get("turns");
  const reading: RowReading = {
    row: { number: 0, cells: [] },
    columns,
    place,
    issues,
    marks: decimalMarks(
      figuresOf(table, [area.index, ...(turnsColumn === undefined ? [] : [turnsColumn.index])]),
      table.decimalMark,
    ),
  };
  // What is wrong with a name or with written turns is told by whoever reads the whole row.
  const quietly: RowReading = { ...reading, issues: [] };
  const areaIn = figureField(reading, area, areaRules);
  const writtenIn =
    turnsColumn === undefined ? null : figureField(quietly, turnsColumn, columnByName.turns);
  const names = (["farm", "machine", "bin", "product"] as const).map(
    (name) => [name, textField(quietly, name)] as const,
  );
  const meterAt = (): MeterPlace => {
    const read = Object.fromEntries(names.map(([name, textIn]) => [name, textIn()]));
    return {
      farm: read.farm ?? keys.farm ?? null,
      machine: read.machine ?? keys.machine ?? null,
      bin: read.bin ?? "1",
      product: read.product ?? unnamed,
    };
  };
  return (row) => {
    const written = row.cells[area.index];
    if (isBlank(written)) return null;
    reading.row = quietly.row = { ...row, cells: row.cells.with(area.index, divided(written)) };
    const found = areaIn();
    if (found === null) return null;
    const meter = meterAt();
    const known = perHectare(meter);
    const counted = writtenIn?.() ?? null;
    if (known === null) {
      if (counted !== null) return null;
      const { bin, product } = meter;
      const facts = { bin, product };
      return complain(
        reading,
        area.header,
        { problem: "area-without-drive", facts },
        cellText(written),
      );
    }
    const turns = known.value * convert(found.value, area.unit, "ha");
    if (counted === null) return { turns, perHectare: known };
    const allowed = Math.max(0.5 * powerOfTen(-counted.decimals), agree * turns);
    if (Math.abs(counted.value - turns) <= allowed) return null;
    return complain(
      reading,
      headerIn(columns, "turns"),
      {
        problem: "area-disagrees",
        facts: { area: cellText(written), unit: area.unit, turns: Number(turns.toPrecision(4)) },
      },
      counted.written,
    );
  };
}

function withCell(row: TableRow, width: number, at: number, cell: Cell): TableRow {
  const cells = Array.from({ length: width }, (_, i) => row.cells[i] ?? null);
  return { ...row, cells: cells.with(at, cell) };
}

/** 1/100 as a figure; anything else as it is. */
function divided(cell: Cell | undefined): Cell {
  const [, above, below] = fraction.exec(cellText(cell)) ?? [];
  return above === undefined || below === undefined
    ? (cell ?? null)
    : Number(above) / Number(below);
}

function* figuresOf(table: Table, indices: readonly number[]): Generator<Cell> {
  for (const { cells } of table.rows) for (const index of indices) yield cells[index] ?? null;
}

/** What is said of turns that were not counted. */
function notesOn(used: readonly TurnsPerHectare[]): readonly Caution[] {
  if (used.length === 0) return [];
  const values = used.map(({ value }) => value);
  return [
    caution(
      "turns-from-area",
      {},
      {
        catches: used.length,
        lowest: min(values),
        highest: max(values),
        assumed: used.some(({ assumed }) => assumed),
      },
    ),
  ];
}
