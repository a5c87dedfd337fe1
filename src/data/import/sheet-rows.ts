import { cellText, type TableRow } from "../table.ts";
import type { Answers } from "./answers.ts";
import { type Carried, carriedAfter, carriedDown, filled, naming, titleValues } from "./carried.ts";
import type { Use } from "./columns-of.ts";
import { type Head, namesColumns, textsOf } from "./find-head.ts";
import type { Grid } from "./grid.ts";
import { meaningOf } from "./header-meaning.ts";
import { aboveAfter, likeThoseAbove, nothingAbove } from "./like-those-above.ts";
import { type MergedAbove, mergedAbove } from "./merged-above.ts";
import type { Notes } from "./notes.ts";
import {
  isDitto,
  isStroke,
  saysSpilled,
  workedOutByFormula,
  workedOutByWord,
} from "./row-kinds.ts";
import { sameColumns } from "./sections.ts";
import { wordsOf } from "./synonyms/all.ts";

/** A row that is a catch: texts by name in the clean table, a mass under its kind. */
export interface RowTexts {
  readonly number: number;
  readonly texts: ReadonlyMap<string, string>;
}

/** Columns that hold names, in which a stroke may be one. */
const names: ReadonlySet<string> = new Set(carriedDown);
const yes = wordsOf("yes");
const no = wordsOf("no");

/** The catches below a head, as texts, every blank filled that can mean one thing only; all other rows are set aside. */
export function sheetRows(
  grid: Grid,
  head: Head,
  uses: readonly Use[],
  answers: Answers,
  notes: Notes,
): readonly RowTexts[] {
  const heads = grid.rows.slice(head.first, head.last + 1).map(textOf);
  let carried: ReadonlyMap<string, Carried> = new Map();
  for (const title of grid.rows.slice(0, head.first)) {
    carried = carriedAfter(carried, titleValues(title), answers);
    if (title.number > 0) notes.setAside(title.number, "title", textOf(title));
  }
  const merged = mergedAbove(grid);
  const found: RowTexts[] = [];
  const written = new Map<string, number>();
  let above = nothingAbove;
  const below = grid.rows.slice(head.last + 1);
  for (const [i, row] of below.entries()) {
    const aside = (why: Parameters<Notes["setAside"]>[1]) =>
      notes.setAside(row.number, why, textOf(row));
    if (isTold(row.number, grid, answers)) {
      aside("told");
      continue;
    }
    if (heads.includes(textOf(row)) || namesAgain(row, head)) {
      aside("header-again");
      continue;
    }
    const worked = workedOutByWord(row, uses) ?? workedOutByFormula(row, uses, grid.formulas);
    if (worked !== null) {
      aside(worked);
      above = nothingAbove;
      continue;
    }
    const own = ownTexts(row, merged, uses, found.at(-1), notes);
    carried = carriedAfter(carried, saidIn(own, row.number, answers), answers);
    const kept = withSpilled(own, uses, row.number, notes);
    if (kept === null) {
      const labels = own.has("turns") ? new Map<string, Carried>() : titleValues(row);
      carried = carriedAfter(carried, labels, answers);
      const named = labels.size > 0 || carriedDown.some((name) => own.has(name));
      aside(own.has("turns") ? "no-mass" : named ? "heading" : "no-figures");
      continue;
    }
    const mass = massTexts(kept, uses)[0] ?? "";
    const like = likeThoseAbove(row, { own, mass, next: below[i + 1] }, above, uses);
    if (like?.is === "worked-out") {
      aside(like.figure);
      above = nothingAbove;
      continue;
    }
    const texts = filled(kept, row.number, carried, answers, notes);
    const header = massHeader(uses);
    if (like?.is === "open")
      notes.ask(
        { problem: "catch-or-mean", facts: { figure: like.figure } },
        header,
        mass,
        row.number,
      );
    else {
      if (like !== null)
        notes.assume("catch-like-mean", { column: header, figure: like.figure }, row.number);
      askBlanks(texts, row.number, written, uses, notes);
    }
    const before = found.at(-1)?.texts;
    const renamed = naming.some((name) => own.has(name) && own.get(name) !== before?.get(name));
    above = aboveAfter(above, mass, own, renamed);
    for (const name of texts.keys()) written.set(name, row.number);
    found.push({ number: row.number, texts });
  }
  return found;
}

/** In other words, such as without its unit's brackets. */
function namesAgain(row: TableRow, { headers }: Head): boolean {
  return namesColumns(row, meaningOf) && sameColumns(textsOf(row), headers, meaningOf);
}

function textOf({ cells }: TableRow): string {
  return Array.from({ length: cells.length }, (_, i) => cellText(cells[i]))
    .filter((text) => text !== "")
    .join(" | ");
}

/** Whether it was answered that a row is no catch. */
export function isTold(row: number, { sheet }: Grid, { options }: Answers): boolean {
  return (options.aside ?? []).some(
    (one) => one.row === row && (one.sheet === undefined || one.sheet === sheet),
  );
}

/** What stands in a row itself, with merged cells and signs for the same as above read out. */
function ownTexts(
  row: TableRow,
  merged: MergedAbove,
  uses: readonly Use[],
  above: RowTexts | undefined,
  notes: Notes,
): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  for (const { index, name, header } of uses) {
    let text = cellText(row.cells[index]);
    const mergedWith = text === "" ? merged(row.number, index) : "";
    if (mergedWith !== "") {
      text = mergedWith;
      notes.assume("filled-merged", { column: header }, row.number);
    } else if (text !== "" && name !== "note" && isDitto(text)) {
      const same = above?.texts.get(name);
      if (same !== undefined) {
        text = same;
        notes.assume("ditto-read", { column: header }, row.number);
      }
    } else if (!names.has(name) && isStroke(text)) text = "";
    else if (name === "exclude") text = yesOrNo(text, header, row.number, notes);
    if (text !== "") texts.set(name, text);
  }
  return texts;
}

function yesOrNo(text: string, column: string, row: number, notes: Notes): string {
  const word = text.toLowerCase();
  const as = yes.has(word) ? "yes" : no.has(word) ? "no" : text;
  if (as !== text && as !== word) notes.assume("word-read", { column, text, as }, row);
  return as;
}

function saidIn(
  texts: ReadonlyMap<string, string>,
  row: number,
  { fillDown }: Answers,
): ReadonlyMap<string, Carried> {
  const said = [...texts].filter(([name]) => names.has(name) || fillDown.has(name));
  return new Map(said.map(([name, value]) => [name, { value, row, from: "above" as const }]));
}

function massHeader(uses: readonly Use[]): string {
  return uses.find(({ name }) => name === "net" || name === "gross")?.header ?? "net";
}

function massTexts(texts: ReadonlyMap<string, string>, uses: readonly Use[]): readonly string[] {
  return ["net", "gross", "tare"].flatMap((name) =>
    uses.some((use) => use.name === name) ? (texts.get(name) ?? []) : [],
  );
}

/**
 * The row as a catch: with its mass, or left out and without one where somebody says that nothing could be weighed; null: it
 * has no mass and nobody says so.
 */
function withSpilled(
  texts: ReadonlyMap<string, string>,
  uses: readonly Use[],
  row: number,
  notes: Notes,
): ReadonlyMap<string, string> | null {
  const masses = massTexts(texts, uses);
  const instead = masses.find(saysSpilled);
  // A bag may have been weighed before it tore: its tare alone is no mass of a catch.
  const weighed = texts.has("net") || texts.has("gross");
  if (instead === undefined && weighed) return texts;
  if (texts.get("exclude") === "yes" && texts.has("reason") && instead === undefined) return texts;
  const reason =
    instead ?? ["note", "reason"].map((name) => texts.get(name) ?? "").find(saysSpilled);
  if (reason === undefined) return null;
  notes.assume("spilled-read", { text: reason }, row);
  const rest = [...texts].filter(([name]) => !["net", "gross", "tare"].includes(name));
  return new Map([...rest, ["exclude", "yes"], ["reason", texts.get("reason") ?? reason]]);
}

/** What a catch must have and was written further up and not here: whether it was the same nobody can see. */
function askBlanks(
  texts: ReadonlyMap<string, string>,
  row: number,
  written: ReadonlyMap<string, number>,
  uses: readonly Use[],
  notes: Notes,
): void {
  const weighed = texts.get("exclude") !== "yes";
  const needed = [
    ...naming,
    ...(weighed ? ["turns"] : []),
    ...(weighed && texts.has("gross") && !texts.has("net") ? ["tare"] : []),
  ];
  for (const name of needed) {
    const writtenRow = written.get(name);
    if (texts.has(name) || writtenRow === undefined) continue;
    const header = uses.find((use) => use.name === name)?.header ?? name;
    notes.ask({ problem: "blank-below", facts: { name, writtenRow } }, header, "", row);
  }
}
