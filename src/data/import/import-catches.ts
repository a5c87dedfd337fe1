import { dataError } from "../../errors/data-error.ts";
import type { DataIssue } from "../../errors/data-issue.ts";
import { spelled } from "../header-names.ts";
import { type Checked, failed, passed, whereItCameFrom } from "../issues.ts";
import { checkText, noRows } from "../read-text.ts";
import type { CatchSource } from "../source.ts";
import { inTwoPlaces } from "../two-places.ts";
import type { CatchLog } from "../types.ts";
import { type PlainRow, rowsToCsv } from "../write-csv.ts";
import { type Answers, answersOf } from "./answers.ts";
import { columnOrder } from "./column-order.ts";
import type { MeaningOf } from "./find-head.ts";
import { type Grid, gridsOf } from "./grid.ts";
import { meaningOf } from "./header-meaning.ts";
import { importSheet, type SheetImport } from "./import-sheet.ts";
import { nothingCounted } from "./numbered.ts";
import type { Imported, ImportOptions } from "./result.ts";
import { sectionsOf } from "./sections.ts";

/**
 * Catches from sheets as people keep them: with titles above, names of their own, cells written once, means and totals below,
 * dates and units as they are written. Everything that is assumed is listed once, with its rows; what could be read two ways is
 * asked and never guessed. The clean table is read and checked by the reader of catches like any file.
 *
 * @param sources  files in memory: .csv, .tsv, .txt, .xlsx or .json; all their sheets become one table
 * @param options  answers to what was asked
 * @returns        the clean table and its log, or what is asked first; never a log with a guess in it
 * @throws         DataError where a file cannot be opened as a table at all; OptionError for an answer that names no column
 * @example
 *   const text = "Tank;Produkt;Füllung;Probe;Umdr.;Netto (kg)\n1;Hafer;1;1;20;6,36\n;;;2;20;6,31";
 *   const { log } = await importCatches([{ name: "heft.csv", text }]);
 *   log?.catches[1]?.netKg // -> 6.31
 */
export async function importCatches(
  sources: readonly CatchSource[],
  options: ImportOptions = {},
): Promise<Imported> {
  const answers = answersOf(options);
  const meaning = answeredMeaning(answers);
  const grids: Grid[] = [];
  for (const source of sources) {
    const found = await gridsOf(source, options.sheets, meaning);
    if (!found.ok) throw dataError(source.name, found.issues);
    grids.push(...found.value);
  }
  const counted = nothingCounted();
  const sheets = withoutStrangers(
    grids
      .flatMap((grid) => sectionsOf(grid, meaning))
      .map((section) => importSheet(section, answers, meaning, counted)),
  );
  const rows = plainRows(sheets);
  const problems = sheets.flatMap((sheet) => sheet.problems);
  const whole = problems.length > 0 ? failed(problems) : readTogether(rows, sheets);
  const optional = sheets.flatMap(({ notes }) =>
    notes.asked.filter(({ problem }) => problem === "dates-two-ways"),
  );
  return {
    catches: whole.ok ? rows : [],
    log: whole.ok ? whole.value : null,
    assumed: sheets.flatMap(({ notes }) => notes.assumed()),
    asked: [
      ...(whole.ok ? [] : whole.issues.filter((issue) => !optional.includes(issue))),
      ...optional,
    ],
    setAside: sheets.flatMap(({ notes }) => notes.aside),
  };
}

/** What a header means, an answer before the table of synonyms. */
function answeredMeaning({ map }: Answers): MeaningOf {
  return (header) => {
    const told = map.get(spelled(header).spelling);
    if (told === undefined || told === null) return meaningOf(header);
    const { name, unit } = told;
    return meaningOf(unit === null ? name : `${name}_${unit}`);
  };
}

/** A sheet of something else beside sheets of catches is none that has to be read. */
function withoutStrangers(sheets: readonly SheetImport[]): readonly SheetImport[] {
  const strange = ({ grid, problems }: SheetImport) =>
    grid.sheet !== null && problems.some(({ problem }) => problem === "header-not-found");
  const known = sheets.filter((sheet) => !strange(sheet));
  if (known.length === 0) return sheets;
  for (const sheet of sheets.filter(strange)) {
    const row = sheet.grid.rows[0]?.number ?? 1;
    sheet.notes.setAside(row, "other-sheet", sheet.grid.sheet ?? "");
  }
  return sheets.map((sheet) => (strange(sheet) ? { ...sheet, problems: [] } : sheet));
}

function plainRows(sheets: readonly SheetImport[]): readonly PlainRow[] {
  const all = sheets.flatMap(({ rows }) => rows);
  const names = columnOrder(all.flatMap(({ texts }) => [...texts.keys()]));
  return all.map(({ texts }) =>
    Object.fromEntries(names.map((name) => [name, texts.get(name) ?? null])),
  );
}

/** All rows as the file they will be, read as any file is; what is wrong between them is told where they came from. */
function readTogether(
  rows: readonly PlainRow[],
  sheets: readonly SheetImport[],
): Checked<CatchLog> {
  const [first] = sheets;
  const source = [...new Set(sheets.map(({ grid }) => grid.source))].join(", ");
  if (rows.length === 0) {
    const place = first?.grid.place ?? { source, rowKind: "row" as const };
    return failed([noRows(place)]);
  }
  const read = checkText({ name: `${source}.csv`, text: rowsToCsv(rows) });
  if (read.ok) return passed({ ...read.value, source });
  const origins = sheets.flatMap((sheet) => sheet.rows.map(({ number }) => ({ sheet, number })));
  // The header of the clean table is its row 1.
  const originOf = (row: number) => {
    const origin = origins[row - 2];
    return origin === undefined
      ? undefined
      : { source: origin.sheet.grid.place.source, row: origin.number };
  };
  const headerIn = ({ row, column }: DataIssue) =>
    column === null ? null : (origins[(row ?? 0) - 2]?.sheet.headerOf.get(column) ?? column);
  const sameFile = sheets.every(({ grid }) => grid.source === source);
  return failed(
    read.issues.map((issue) =>
      inTwoPlaces(
        whereItCameFrom(issue, originOf, headerIn(issue)),
        sameFile ? "--map sheet" : "--map file",
      ),
    ),
  );
}
