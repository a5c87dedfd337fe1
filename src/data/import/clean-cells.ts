import { columnNamed } from "../column-kinds.ts";
import type { Answers } from "./answers.ts";
import type { Use } from "./columns-of.ts";
import { type CellFigure, figureIn, withPoint } from "./figures.ts";
import type { Notes } from "./notes.ts";
import type { RowTexts } from "./sheet-rows.ts";
import { type CellUnit, kindOfUnit } from "./units-in-text.ts";

const masses: ReadonlySet<string> = new Set(["net", "gross", "tare", "division"]);

/**
 * The row with its figures freed of units and of marks between thousands, each mass under its kind and unit. What cannot be
 * read stays as it is, for the reader of catches to say so.
 */
export function cleanCells(
  { number, texts }: RowTexts,
  uses: readonly Use[],
  answers: Answers,
  notes: Notes,
): RowTexts {
  const cells = [...texts].map(([name, text]): [string, string] => {
    const use = uses.find((one) => one.name === name);
    const cell: InColumn = { name, text, use, header: use?.header ?? name, row: number };
    if (masses.has(name)) return massCell(cell, answers, notes);
    const type = columnNamed(name)?.type;
    if (type !== "number" && type !== "integer") return [name, text];
    return [name, figureCell(cell, answers, notes)];
  });
  return { number, texts: new Map(cells) };
}

interface InColumn {
  readonly name: string;
  readonly text: string;
  readonly use: Use | undefined;
  readonly header: string;
  readonly row: number;
}

function massCell(cell: InColumn, answers: Answers, notes: Notes): [string, string] {
  const { name, text, use, header, row } = cell;
  const figure = figureIn(text);
  const own = figure?.unit?.of === "mass" ? figure.unit.unit : null;
  const unit = own ?? use?.unit ?? "kg";
  if (figure === null || (figure.unit !== null && own === null)) return [`${name}_${unit}`, text];
  if (own !== null && use !== undefined && own !== use.unit)
    notes.assume("unit-in-cells", { column: header, unit }, row);
  return [`${name}_${unit}`, numberOf(figure, cell, answers, notes)];
}

function figureCell(cell: InColumn, answers: Answers, notes: Notes): string {
  const { name, text, use, header, row } = cell;
  const figure = figureIn(text);
  if (figure === null) return numberIn(cell, notes);
  const { unit } = figure;
  if (unit !== null && unit.of !== kindOfUnit(columnNamed(name)?.unit ?? null)) return text;
  const number = numberOf(figure, cell, answers, notes);
  const density = unit ?? use?.density ?? null;
  if (density?.of !== "density" || density.factor === 1) {
    if (unit !== null) notes.assume("unit-in-cells", { column: header, unit: unitName(unit) }, row);
    return number;
  }
  const value = Number(number.replace(",", "."));
  if (!Number.isFinite(value)) return text;
  notes.assume("unit-converted", { column: header, from: density.unit, to: "kg/m³" }, row);
  return String(Number((value * density.factor).toPrecision(12)));
}

function unitName(unit: CellUnit): string {
  if (unit.of === "density" || unit.of === "mass") return unit.unit;
  return { turns: "turns", perMinute: "turns/min", percent: "%" }[unit.of];
}

function numberOf(
  { number, thousands }: CellFigure,
  { header, row }: InColumn,
  { options: { decimal } }: Answers,
  notes: Notes,
): string {
  if (thousands) notes.assume("thousands-read", { column: header }, row);
  if (decimal === undefined || !/[.,]/.test(number)) return number;
  // What is left of a grouped number has its decimal mark and no other.
  if (thousands) return number.replace(",", ".");
  notes.assume("decimal-told", { mark: decimal }, row);
  return withPoint(number, decimal);
}

/** "F2" or "2nd" numbers a fill or a catch as 2 does. */
function numberIn({ name, text, header, row }: InColumn, notes: Notes): string {
  const [, digits] = /^[^\d]{0,12}(\d{1,4})[^\d]{0,12}$/.exec(text) ?? [];
  if (digits === undefined || columnNamed(name)?.type !== "integer" || /^-/.test(text)) return text;
  notes.assume("number-in-text", { column: header }, row);
  return String(Number(digits));
}
