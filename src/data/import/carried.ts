import { keyColumns, massKinds } from "../column-kinds.ts";
import { cellText, type TableRow } from "../table.ts";
import type { Answers } from "./answers.ts";
import { meaningOf } from "./header-meaning.ts";
import type { Notes } from "./notes.ts";

/** What a cell means where it is left blank: what stood above it, or in a title. */
export interface Carried {
  readonly value: string;
  readonly row: number;
  readonly from: "above" | "title";
}

/** From the widest to the narrowest: a new one of these says nothing of the narrower ones. */
export const naming = [...keyColumns, "bin", "product", "fill"] as const;
/** Written once a day, and the narrower ones with it but for the fill, which may stay in the tank overnight or not. */
const day = "taken_at";

/** Columns whose blank cells take what stands above. */
export const carriedDown: readonly string[] = [...naming, day];

/** What may stand above a table and hold for all of it. */
const inTitles: ReadonlySet<string> = new Set([
  ...naming,
  day,
  "turns",
  "operator",
  "outlet",
  "meter_rpm",
]);

/**
 * What is carried after a row that says something of its own: its values, without those narrower than one that has changed, but
 * for columns of which it was answered that a blank cell is always the same.
 */
export function carriedAfter(
  carried: ReadonlyMap<string, Carried>,
  said: ReadonlyMap<string, Carried>,
  { fillDown }: Answers,
): ReadonlyMap<string, Carried> {
  const next = new Map(carried);
  const changed = (name: string) => {
    const [before, now] = [carried.get(name), said.get(name)];
    return now !== undefined && before !== undefined && before.value !== now.value;
  };
  const widest = naming.findIndex(changed);
  // Which of a machine and a season holds the other differs from sheet to sheet.
  const narrower =
    widest === -1 ? [] : naming.slice(widest + 1).filter((name) => name !== "season");
  for (const name of changed(day) ? [...narrower, "fill"] : narrower)
    if (next.get(name)?.from === "above" && !fillDown.has(name)) next.delete(name);
  for (const [name, value] of said) next.set(name, value);
  return next;
}

/** Fills blank cells of a row: with what is carried, then with what was answered for all. */
export function filled(
  cells: ReadonlyMap<string, string>,
  row: number,
  carried: ReadonlyMap<string, Carried>,
  { set, fillDown }: Answers,
  notes: Notes,
): ReadonlyMap<string, string> {
  const whole = new Map(cells);
  // A catch that was spilled has no mass, whatever was answered.
  const missed = cells.get("exclude") === "yes" && !cells.has("net") && !cells.has("gross");
  const blank = (name: string) =>
    (whole.get(name) ?? "") === "" && !(missed && massKinds.some((kind) => kind === name));
  for (const [column, { value, from }] of carried) {
    const goesDown = from === "title" || carriedDown.includes(column) || fillDown.has(column);
    if (!goesDown || !blank(column)) continue;
    whole.set(column, column === day ? dayOf(value) : value);
    if (from === "title") notes.assume("taken-from-title", { column, value }, row);
    else notes.assume("filled-down", { column }, row);
  }
  for (const [column, value] of set) {
    if (!blank(column)) continue;
    whole.set(column, value);
    notes.assume("set-for-all", { column, value }, row);
  }
  return whole;
}

/** The hour of one catch is not that of the next. */
function dayOf(text: string): string {
  return text.replace(/(?:T|,?\s+)\d{1,2}[:.]\d\d(?:[:.]\d\d)?(?:\s*\p{L}+)?$/u, "");
}

/** What a line of text says of all catches below it: "Tank: 2", or "Tank" with its value in the next cell. */
export function titleValues(row: TableRow): ReadonlyMap<string, Carried> {
  const texts = Array.from({ length: row.cells.length }, (_, i) => cellText(row.cells[i]));
  const found = new Map<string, Carried>();
  const keep = (label: string, value: string) => {
    const concept = meaningOf(label)?.concept;
    if (concept !== undefined && value !== "" && inTitles.has(concept) && meaningOf(value) === null)
      found.set(concept, { value, row: row.number, from: "title" });
  };
  texts.forEach((text, i) => {
    for (const part of text.split(/[;,|]\s+|\s{2,}/)) {
      const [, label, value] = /^([^:=]+)\s*[:=]\s*(.+)$/.exec(part) ?? [];
      if (label !== undefined && value !== undefined) keep(label, value.trim());
    }
    const next = texts.slice(i + 1).find((one) => one !== "");
    if (text !== "" && next !== undefined) keep(text.replace(/[:=]\s*$/, ""), next);
  });
  return found;
}
