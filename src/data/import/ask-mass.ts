import { cellText, type TableRow } from "../table.ts";
import type { Answers } from "./answers.ts";
import type { Use } from "./columns-of.ts";
import { readLocalDate } from "./local-dates.ts";
import type { Notes } from "./notes.ts";
import { unitIn } from "./units-in-text.ts";

const weighing: ReadonlySet<string> = new Set(["net", "gross"]);

/** Asks for the mass of the catches where no column is known for it: without one all rows would seem to be no catches. */
export function askMass(
  uses: readonly Use[],
  rows: readonly TableRow[],
  { set }: Answers,
  ofSheets: boolean,
  notes: Notes,
): void {
  if (rows.length === 0) return;
  if (uses.some(({ name }) => weighing.has(name)) || [...weighing].some((name) => set.has(name)))
    return;
  const own = uses.filter(({ kind }) => kind === "own");
  const figures = own.filter((use) => holdsFigures(use, rows)).map(({ header }) => header);
  // A sheet of something else beside those of catches may well have no mass.
  if (ofSheets && figures.length === 0) return;
  const alike = figures.filter((header) =>
    figures.some((other) => other !== header && stem(other) === stem(header)),
  );
  if (alike.length > 0) {
    notes.ask({ problem: "catches-side-by-side", facts: { headers: alike } }, null, "");
    return;
  }
  const likely = figures.find((header) => unitOf(header) !== null) ?? figures[0] ?? null;
  const unit = likely === null ? null : unitOf(likely);
  const headers = own.map(({ header }) => header);
  notes.ask({ problem: "mass-column-open", facts: { headers, likely, unit } }, null, "");
}

function holdsFigures({ index }: Use, rows: readonly TableRow[]): boolean {
  const texts = rows.map(({ cells }) => cellText(cells[index])).filter((text) => text !== "");
  const figures = texts.filter(
    (text) => /^[+-]?[.,]?\d/.test(text) && readLocalDate(text, null).is === "no-date",
  );
  return figures.length > 0 && 2 * figures.length > texts.length;
}

/** "Catch 1" and "Catch 2" number what one column could hold. */
function stem(header: string): string {
  return header
    .toLowerCase()
    .replace(/[\d\s]+/g, " ")
    .trim();
}

function unitOf(header: string): string | null {
  const units = header.split(/[^\p{L}]+/u).flatMap((word) => {
    const unit = unitIn(word);
    return unit?.of === "mass" ? unit.unit : [];
  });
  return units[0] ?? null;
}
