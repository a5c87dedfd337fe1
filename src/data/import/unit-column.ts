import { spelled } from "../header-names.ts";
import { cellText, type TableRow } from "../table.ts";
import type { Answers } from "./answers.ts";
import { figureIn } from "./figures.ts";
import type { MeaningOf } from "./find-head.ts";
import { isMass, massUnitOf } from "./header-meaning.ts";
import type { Notes } from "./notes.ts";
import { isDitto } from "./row-kinds.ts";
import { unitIn } from "./units-in-text.ts";

/** Columns of a mass, and those beside them that give its unit row by row. */
interface UnitColumns {
  readonly masses: readonly number[];
  readonly units: readonly number[];
}

/** Columns of no other meaning in which most cells are a unit of mass and nothing else, whatever they are called. */
export function unitColumns(
  headers: readonly string[],
  rows: readonly TableRow[],
  { map }: Answers,
  meaningOf: MeaningOf,
): UnitColumns {
  const masses: number[] = [];
  const units: number[] = [];
  headers.forEach((header, index) => {
    const meaning = meaningOf(header);
    if (meaning !== null && isMass(meaning.concept) && meaning.concept !== "division")
      masses.push(index);
    else if (meaning === null && !map.has(spelled(header).spelling) && holdsUnits(rows, index))
      units.push(index);
  });
  return { masses, units: masses.length === 0 ? [] : units };
}

function holdsUnits(rows: readonly TableRow[], index: number): boolean {
  const texts = rows.map(({ cells }) => cellText(cells[index])).filter((text) => text !== "");
  const units = texts.filter((text) => massUnit(text) !== null || isDitto(text));
  return units.some((text) => massUnit(text) !== null) && 2 * units.length > texts.length;
}

function massUnit(text: string): string | null {
  const unit = unitIn(text);
  return unit?.of === "mass" ? unit.unit : null;
}

/** A mass without a unit in its row, where other rows differ. */
export interface UnitBlank {
  readonly row: number;
  readonly header: string;
  readonly text: string;
  readonly units: readonly string[];
}

export interface RowsWithUnits {
  readonly rows: readonly TableRow[];
  /** Of rows that may turn out to be no catches. */
  readonly blanks: readonly UnitBlank[];
}

/**
 * Rows whose masses carry the unit that stands beside them, as if it stood in their own cells. A mass takes it from the column
 * behind it, else from the one before.
 */
export function withUnits(
  rows: readonly TableRow[],
  headers: readonly string[],
  { masses, units }: UnitColumns,
  meaningOf: MeaningOf,
  notes: Notes,
): RowsWithUnits {
  const nothing: RowsWithUnits = { rows, blanks: [] };
  return masses.reduce((done, mass) => {
    const at = units.find((index) => index > mass) ?? units.at(-1);
    if (at === undefined) return done;
    const [header = "", column = ""] = [headers[at], headers[mass]];
    const meaning = meaningOf(column);
    const own = meaning === null ? null : massUnitOf(meaning);
    notes.assume("unit-column", { header, column });
    const more = withUnitsOf(done.rows, { mass, at, own, header });
    return { rows: more.rows, blanks: [...done.blanks, ...more.blanks] };
  }, nothing);
}

interface Pair {
  readonly mass: number;
  readonly at: number;
  /** Unit that the head of the mass names. */
  readonly own: string | null;
  readonly header: string;
}

function withUnitsOf(rows: readonly TableRow[], { mass, at, own, header }: Pair): RowsWithUnits {
  const units = [...new Set(rows.flatMap(({ cells }) => massUnit(cellText(cells[at])) ?? []))];
  const forAll = units.length === 1 && (own === null || units.includes(own));
  const blanks: UnitBlank[] = [];
  let above: string | null = null;
  const full = rows.map((row) => {
    const text = cellText(row.cells[at]);
    const unit: string | null = isDitto(text) ? above : massUnit(text);
    above = unit ?? above;
    const figure = figureIn(cellText(row.cells[mass]));
    if (figure === null || figure.unit !== null) return row;
    if (unit !== null) {
      const cells = [...row.cells];
      cells[mass] = `${cellText(row.cells[mass])} ${unit}`;
      return { ...row, cells };
    }
    if (!forAll || text !== "") blanks.push({ row: row.number, header, text, units });
    return row;
  });
  return { rows: full, blanks };
}

export function askUnits(
  blanks: readonly UnitBlank[],
  catches: readonly { readonly number: number }[],
  notes: Notes,
): void {
  const numbers = new Set(catches.map(({ number }) => number));
  for (const { row, header, text, units } of blanks)
    if (numbers.has(row)) notes.ask({ problem: "unit-blank", facts: { units } }, header, text, row);
}
