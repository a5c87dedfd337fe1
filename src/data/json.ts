import type { DataIssue } from "../errors/data-issue.ts";
import { tooMany } from "./budget.ts";
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
  const numbered = entries.map((entry: unknown, index) => ({ entry, number: index + 1 }));
  const issues = numbered.flatMap(({ entry, number }) =>
    strayValues(entry, { ...place, row: number }),
  );
  const wrong = new Set(issues.map(({ row }) => row));
  const objects = numbered.flatMap(({ entry, number }) =>
    isRecord(entry) && !wrong.has(number) ? { entry, number } : [],
  );
  const names = new Set<string>();
  for (const { entry } of objects) for (const name of Object.keys(entry)) names.add(name);
  // Every entry has a cell under every name, so that too many names are too much at once.
  if (names.size > limits.columns)
    return failed([tooMany(place, "columns", names.size, limits.columns)]);
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

/** Entries that are no objects, and fields that hold lists or objects: neither has a place in a table. */
function strayValues(entry: unknown, place: Place): readonly DataIssue[] {
  if (!isRecord(entry)) return [dataIssue(place, { problem: "entry-no-object", facts: {} })];
  return Object.entries(entry)
    .filter(([, value]) => typeof value === "object" && value !== null)
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
