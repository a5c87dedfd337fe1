import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
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
  const place: Place = { source: name, rowWord: "entry" };
  const entries = isRecord(parsed.value) ? parsed.value.catches : parsed.value;
  if (!Array.isArray(entries)) return failed([notAList(place)]);
  const numbered = entries.map((entry: unknown, index) => ({ entry, number: index + 1 }));
  const issues = numbered.flatMap(({ entry, number }) =>
    strayValues(entry, { ...place, row: number }),
  );
  const wrong = new Set(issues.map(({ row }) => row));
  const objects = numbered.flatMap(({ entry, number }) =>
    isRecord(entry) && !wrong.has(number) ? { entry, number } : [],
  );
  const headers = [...new Set(objects.flatMap(({ entry }) => Object.keys(entry)))];
  const rows = objects.map(({ entry, number }) => ({
    number,
    cells: headers.map((header) => toCell(entry, header)),
  }));
  return passed({ headers, headerRow: null, rows, issues, rowWord: "entry", decimalMark: "point" });
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function toCell(entry: Readonly<Record<string, unknown>>, header: string): Cell {
  return Object.hasOwn(entry, header) ? (entry[header] as Cell) : null;
}

/** Entries that are no objects, and fields that hold lists or objects: neither has a place in a table. */
function strayValues(entry: unknown, place: Place) {
  const field = { code: "file-malformed", received: "" } as const;
  if (!isRecord(entry)) {
    return [
      dataIssue(place, {
        ...field,
        found: "something else than an object",
        expected: 'an object with the names of the columns, {"bin": "1", …}',
        remedy: "Write one object for each catch, or delete the entry.",
      }),
    ];
  }
  return Object.entries(entry)
    .filter(([, value]) => typeof value === "object" && value !== null)
    .map(([column]) =>
      dataIssue(
        { ...place, column },
        {
          ...field,
          found: "a list or an object",
          expected: "a text, a number, true, false or null",
          remedy: "Give each figure a field of its own.",
        },
      ),
    );
}

function notAList(place: Place) {
  return dataIssue(place, {
    code: "file-malformed",
    received: "",
    found: "no list of catches",
    expected: 'a list [{"bin": "1", …}, …], or an object with such a list as "catches"',
    remedy: "Write one object for each catch, with the same names as the columns of a sheet.",
  });
}

function notJson(name: string, text: string, error: unknown) {
  const { line, near } = breakIn(text, error);
  return dataIssue(
    { source: name, rowWord: "line", ...(line === null ? {} : { row: line }) },
    {
      code: "file-malformed",
      received: near,
      found:
        near === "" ? "JSON that breaks off or has a slip" : `a slip in the JSON near "${near}"`,
      expected: "valid JSON",
      remedy:
        "Look there for a comma, quotation mark or bracket that is missing or one too many; JSON has no comments.",
    },
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
