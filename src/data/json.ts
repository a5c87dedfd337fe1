import type { DataIssue } from "../errors/data-issue.ts";
import { restNotRead, tooMany } from "./budget.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { limits } from "./limits.ts";
import type { Cell, Table } from "./table.ts";

/** The value a JSON text stands for, or an issue that says where it breaks off. */
export function parseJson(name: string, text: string): Checked<unknown> {
  try {
    return passed(JSON.parse(text));
  } catch (error) {
    return failed([notJson(name, text, error)]);
  }
}

/** A table from an array of objects, or from an object whose `catches` is one. Rows are numbered as entries from 1. */
export function readJson(name: string, text: string): Checked<Table> {
  const parsed = parseJson(name, text);
  if (!parsed.ok) return parsed;
  const place: Place = { source: name, rowKind: "entry" };
  const entries = isRecord(parsed.value) ? parsed.value.catches : parsed.value;
  if (!Array.isArray(entries)) return failed([dataIssue(place, { problem: "no-list", facts: {} })]);
  if (entries.length > limits.rows)
    return failed([tooMany(place, "entries", entries.length, limits.rows)]);
  const { objects, issues } = objectsOf(entries, place);
  const names = new Set<string>();
  for (const { entry } of objects) for (const name of Object.keys(entry)) names.add(name);
  // Every entry has a cell under every name, so that a few entries with many names are too much for all of them.
  if (names.size > limits.columns)
    return failed([tooMany(place, "columns", names.size, limits.columns)]);
  const cells = names.size * objects.length;
  if (cells > limits.cells) return failed([tooMany(place, "cells", cells, limits.cells)]);
  const headers = [...names];
  const rows = objects.map(({ entry, number }) => ({
    number,
    cells: headers.map((header) => toCell(entry, header)),
  }));
  return passed({
    headers,
    headerRow: null,
    rows,
    issues,
    rowKind: "entry",
    decimalMark: "point",
  });
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function toCell(entry: Readonly<Record<string, unknown>>, header: string): Cell {
  return Object.hasOwn(entry, header) ? (entry[header] as Cell) : null;
}

/** An entry that has a place in a table. */
interface NumberedEntry {
  readonly entry: Readonly<Record<string, unknown>>;
  readonly number: number;
}

/** The entries that can be rows, and what is wrong with the others, up to as many problems as are named of one file. */
function objectsOf(
  entries: readonly unknown[],
  place: Place,
): { readonly objects: readonly NumberedEntry[]; readonly issues: readonly DataIssue[] } {
  const objects: NumberedEntry[] = [];
  const issues: DataIssue[] = [];
  for (const [index, entry] of entries.entries()) {
    const number = index + 1;
    const stray = strayValues(entry, { ...place, row: number }, limits.problems - issues.length);
    issues.push(...stray);
    if (isRecord(entry) && stray.length === 0) objects.push({ entry, number });
    const left = entries.length - number;
    if (issues.length < limits.problems || left === 0) continue;
    issues.push(restNotRead({ ...place, row: number }, left));
    break;
  }
  return { objects, issues };
}

/** Entries that are no objects, and the first fields that hold lists or objects: neither has a place in a table. */
function strayValues(entry: unknown, place: Place, most: number): readonly DataIssue[] {
  if (!isRecord(entry)) return [dataIssue(place, { problem: "entry-no-object", facts: {} })];
  return Object.entries(entry)
    .filter(([, value]) => typeof value === "object" && value !== null)
    .slice(0, most)
    .map(([column]) => dataIssue({ ...place, column }, { problem: "value-no-cell", facts: {} }));
}

function notJson(name: string, text: string, error: unknown): DataIssue {
  const { line, near } = breakIn(text, error);
  return dataIssue(
    { source: name, rowKind: "line", ...(line === null ? {} : { row: line }) },
    { problem: "not-json", facts: { near: near === "" ? null : near } },
    near,
  );
}

/** Line and surroundings of a syntax error, where the engine tells its position. */
function breakIn(text: string, error: unknown): { line: number | null; near: string } {
  const told = /at position (\d+)/.exec(error instanceof Error ? error.message : "")?.[1];
  if (told === undefined) return { line: null, near: "" };
  const position = Number(told);
  const near = text.slice(Math.max(0, position - 12), position + 12);
  return { line: text.slice(0, position).split("\n").length, near: near.replace(/\s+/g, " ") };
}
