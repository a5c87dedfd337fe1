import type { DataIssue } from "../../errors/data-issue.ts";
import { tooManyCells } from "../csv.ts";
import { dataIssue } from "../issues.ts";
import { checkTable } from "../read-text.ts";
import { cellText, isBlank, type Table, type TableRow } from "../table.ts";
import type { Answers } from "./answers.ts";
import { askMass } from "./ask-mass.ts";
import { cleanCells } from "./clean-cells.ts";
import { cleanDates } from "./clean-dates.ts";
import { columnOrder } from "./column-order.ts";
import { columnsOf, type Use } from "./columns-of.ts";
import type { MeaningOf } from "./find-head.ts";
import { findHead, type Head } from "./find-head.ts";
import type { Grid } from "./grid.ts";
import { type Notes, notesFor } from "./notes.ts";
import { type Counted, type Counting, countUnnamed, numbered } from "./numbered.ts";
import { pointed } from "./pointed.ts";
import type { Section } from "./sections.ts";
import { isTold, type RowTexts, sheetRows } from "./sheet-rows.ts";
import { askUnits, unitColumns, withUnits } from "./unit-column.ts";

/** One sheet as rows of the clean table, with what was noted on the way. */
export interface SheetImport {
  readonly grid: Grid;
  readonly rows: readonly RowTexts[];
  /** What the sheet calls a column of the clean table. */
  readonly headerOf: ReadonlyMap<string, string>;
  readonly notes: Notes;
  /** What keeps the rows from being catches; empty: they can be read. */
  readonly problems: readonly DataIssue[];
}

/** A table that evencatch reads as it stands is taken so: nothing in it is assumed. Else it is read as somebody's own. */
export function importSheet(
  { grid, anew }: Section,
  answers: Answers,
  meaningOf: MeaningOf,
  counted: Counted,
): SheetImport {
  const notes = notesFor(grid);
  if (anew !== null) notes.assume("header-anew", { header: anew });
  if (grid.windows1252 !== null) {
    const { words, rows } = grid.windows1252;
    for (const row of rows) notes.assume("windows-1252", { words }, row);
  }
  const untold =
    answers.options.decimal === undefined &&
    answers.map.size === 0 &&
    answers.set.size === 0 &&
    answers.fillDown.size === 0;
  const counting = { grid, answers, counted, notes };
  const asIs =
    untold && !answers.options.aside?.length ? asItStands(grid, meaningOf, counting) : null;
  return asIs ?? asOwnSheet(grid, answers, meaningOf, counting);
}

function asItStands(
  grid: Grid,
  meaningOf: MeaningOf,
  counting: Omit<Counting, "fillHeader">,
): SheetImport | null {
  const { notes, answers } = counting;
  const [header, ...rest] = grid.rows;
  if (header === undefined || rest.some((row) => isTooWide(row, header.cells.length, grid)))
    return null;
  const width = grid.rows.reduce((widest, { cells }) => Math.max(widest, cells.length), 0);
  const headers = Array.from({ length: width }, (_, i) => cellText(header.cells[i]));
  if (unitColumns(headers, rest, answers, meaningOf).units.length > 0) return null;
  const table = tableOf(grid, headers, rest, header.number);
  const check = checkTable(table, grid.place.source);
  if (!check.ok) return null;
  const found = pointed(table, grid.place);
  if (check.value.cautions.some(({ code }) => code === "one-bin-taken")) {
    notes.assume("one-bin", { catches: rest.length });
    countUnnamed(found.rows, { ...counting, fillHeader: "fill" });
  }
  return { grid, rows: found.rows, headerOf: found.headerOf, notes, problems: notes.asked };
}

/** Until these are answered no row is a catch, and nothing else can be asked of any. */
const massAsked: ReadonlySet<string> = new Set(["mass-column-open", "catches-side-by-side"]);

function asOwnSheet(
  grid: Grid,
  answers: Answers,
  meaningOf: MeaningOf,
  counting: Omit<Counting, "fillHeader">,
): SheetImport {
  const { notes } = counting;
  const nothing = { grid, rows: [], headerOf: new Map<string, string>(), notes };
  const head = findHead(grid.rows, grid.merged, meaningOf);
  if (head === null) {
    const first = grid.rows[0];
    notes.ask({ problem: "header-not-found", facts: {} }, null, "", first?.number ?? 1);
    return { ...nothing, problems: notes.asked };
  }
  noteHead(grid, head, notes);
  const below = grid.rows.slice(head.last + 1);
  const wide = below.filter((row) => isTooWide(row, head.headers.length, grid));
  const width = below.reduce((widest, { cells }) => Math.max(widest, cells.length), 0);
  const headers = Array.from(
    { length: Math.max(width, head.headers.length) },
    (_, i) => head.headers[i] ?? "",
  );
  const units = unitColumns(headers, below, answers, meaningOf);
  const { rows: rowsBelow, blanks } = withUnits(below, headers, units, meaningOf, notes);
  const uses = columnsOf(headers, rowsBelow, answers, notes, grid.place);
  const open = rowsBelow.filter(({ number }) => !isTold(number, grid, answers));
  askMass(uses, open, answers, grid.sheet !== null, notes);
  if (notes.asked.some(({ problem }) => massAsked.has(problem)))
    return { ...nothing, problems: notes.asked };
  const told = namesOfPlace(grid, answers, uses, notes);
  const all = { ...answers, set: new Map([...answers.set, ...told]) };
  const kept = sheetRows(
    { ...grid, rows: [...grid.rows.slice(0, head.last + 1), ...rowsBelow] },
    head,
    uses,
    all,
    notes,
  );
  askUnits(blanks, kept, notes);
  const cells = kept.map((row) => cleanCells(row, uses, answers, notes));
  const fillHeader = uses.find(({ name }) => name === "fill")?.header ?? "fill";
  const rows = numbered(cleanDates(cells, uses, answers, notes), { ...counting, fillHeader });
  askColumns(rows, uses, grid.sheet !== null, notes);
  const headerOf = headersOf(rows, uses);
  const tooWide = wide.map((row) =>
    tooManyCells(grid.place, row, head.headers.length, grid.separator ?? ","),
  );
  const blocking = notes.asked.filter(({ problem }) => problem !== "dates-two-ways");
  if (blocking.length + tooWide.length > 0)
    return { ...nothing, problems: [...blocking, ...tooWide] };
  if (rows.length === 0) return { ...nothing, problems: [] };
  // What was told is written with a point by now.
  const marked =
    answers.options.decimal === undefined ? grid : { ...grid, decimalMark: "point" as const };
  return { ...nothing, ...checkedRows(marked, head, rows, headerOf) };
}

/** The rows as the reader of catches finds them, with their figures pointed; or what it finds wrong, as the sheet calls it. */
function checkedRows(
  grid: Grid,
  head: Head,
  rows: readonly RowTexts[],
  headerOf: ReadonlyMap<string, string>,
): Pick<SheetImport, "rows" | "headerOf" | "problems"> {
  const names = columnOrder(rows.flatMap(({ texts }) => [...texts.keys()]));
  const cells = rows.map(({ number, texts }) => ({
    number,
    cells: names.map((name) => texts.get(name) ?? null),
  }));
  const table = tableOf(grid, names, cells, grid.rows[head.last]?.number ?? 1);
  const check = checkTable(table, grid.place.source);
  if (check.ok) return { rows: pointed(table, grid.place).rows, headerOf, problems: [] };
  const problems = check.issues.map((issue) => {
    const { row, column, received } = issue;
    const place = { ...grid.place, ...(row === null ? {} : { row }) };
    const named = column === null ? place : { ...place, column: headerOf.get(column) ?? column };
    return dataIssue(named, issue.problem === "decimal-ambiguous" ? decimalOpen : issue, received);
  });
  return { rows: [], headerOf, problems };
}

/** Here an answer will do, and no figure has to be written anew. */
const decimalOpen = { problem: "decimal-two-ways", facts: {} } as const;

function tableOf(
  { decimalMark, place }: Grid,
  headers: readonly string[],
  rows: readonly TableRow[],
  headerRow: number,
): Table {
  const rowKind = place.rowKind === "entry" ? "entry" : "row";
  return {
    headers,
    headerRow: rowKind === "entry" ? null : headerRow,
    rows,
    issues: [],
    rowKind,
    decimalMark,
  };
}

/** A row that goes on behind the last header has had a figure or a text cut in two; a sheet cannot. */
function isTooWide({ cells }: TableRow, width: number, { separator }: Grid): boolean {
  return separator !== null && !cells.slice(width).every(isBlank);
}

function noteHead({ rows, place }: Grid, { first, last }: Head, notes: Notes): void {
  const [above, below] = [rows[first]?.number ?? 1, rows[last]?.number ?? 1];
  if (place.rowKind === "entry") return;
  if (last > first) notes.assume("two-line-head", { first: above, second: below });
  else if (first > 0) notes.assume("header-below", { header: above });
}

/** What the names of sheet, file and folder were told to be; where there is no such name and no column for it, it is asked. */
function namesOfPlace(
  { sheet, source }: Grid,
  { map }: Answers,
  uses: readonly Use[],
  notes: Notes,
): readonly (readonly [string, string])[] {
  const [name = "", folder] = source.split(/[\\/]/).toReversed();
  return [
    { target: map.get("sheet"), value: sheet },
    { target: map.get("file"), value: name.replace(/\.[^.]*$/, "") },
    { target: map.get("folder"), value: /^\.{0,2}$/.test(folder ?? "") ? null : (folder ?? null) },
  ].flatMap(({ target, value }) => {
    if (target === undefined || target === null) return [];
    if (value !== null) return [[target.name, value] as const];
    if (!uses.some((use) => use.name === target.name)) askColumn(target.name, uses, false, notes);
    return [];
  });
}

/** Asks for what every catch must have and no column has. */
function askColumns(
  rows: readonly RowTexts[],
  uses: readonly Use[],
  sheets: boolean,
  notes: Notes,
): void {
  if (rows.length === 0) return;
  const has = (name: string) => rows.some(({ texts }) => texts.has(name));
  const open = (name: string) => {
    if (!has(name)) askColumn(name, uses, sheets, notes);
  };
  const names = ["bin", "product", "fill"];
  const own = uses.some(({ kind }) => kind === "own");
  if (names.some(has) || has("catch") || own) names.forEach(open);
  const asked = notes.asked.some(({ problem }) => problem === "blank-below");
  if (!asked) open("turns");
}

function askColumn(name: string, uses: readonly Use[], sheets: boolean, notes: Notes): void {
  const headers = uses.flatMap(({ kind, header }) => (kind === "own" ? header : []));
  const twice = notes.asked.some((one) => one.problem === "column-open" && one.column === name);
  if (!twice) notes.ask({ problem: "column-open", facts: { name, headers, sheets } }, name, "");
}

function headersOf(rows: readonly RowTexts[], uses: readonly Use[]): ReadonlyMap<string, string> {
  const names = new Set(rows.flatMap(({ texts }) => [...texts.keys()]));
  return new Map(
    [...names].map((name) => {
      const use = uses.find((one) => one.name === name || name.startsWith(`${one.name}_`));
      return [name, use?.header ?? name];
    }),
  );
}
