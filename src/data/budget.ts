import type { DataIssue } from "../errors/data-issue.ts";
import type { Counted } from "../errors/problems/file.ts";
import { dataIssue, type Place, standingFor } from "./issues.ts";
import { limits } from "./limits.ts";
import type { TableRow, TableRows } from "./table.ts";

/** The issue for more of something than is taken on. */
export function tooMany(place: Place, what: Counted, count: number, most: number): DataIssue {
  return dataIssue(place, { problem: "too-many", facts: { what, count, most } }, String(count));
}

/**
 * Why a text is too much for a table, before it is made one: its rows, and its cells as its separators tell them. A
 * separator within quotation marks counts as well, which no table of catches notices. Null: it is not.
 */
export function textTooMuch(place: Place, text: string): DataIssue | null {
  let rows = 1;
  let separators = 0;
  for (let index = 0; index < text.length; index++) {
    const letter = text.charCodeAt(index);
    // Digits and letters, which is what most are.
    if (letter > slash && letter !== semicolon) continue;
    if (letter === lineFeed || letter === carriageReturn) rows++;
    else if (letter === comma || letter === semicolon || letter === tabulator) separators++;
  }
  // Where a line ends in both letters it was counted twice.
  if (rows > limits.rows) rows = text.split(/\r\n|[\r\n]/).length;
  if (rows > limits.rows) return tooMany(place, "rows", rows, limits.rows);
  const cells = rows + separators;
  return cells > limits.cells ? tooMany(place, "cells", cells, limits.cells) : null;
}

const lineFeed = 0x0a;
const carriageReturn = 0x0d;
const comma = 0x2c;
const slash = 0x2f;
const semicolon = 0x3b;
const tabulator = 0x09;

/** The issue that ends a list of problems which are not all told. */
export function restNotRead(place: Place, rows: number): DataIssue {
  return dataIssue(place, { problem: "rest-not-read", facts: { rows } }, String(rows));
}

/** Reads row after row; where more is wrong than is named of one file, says how many rows were not read, and ends. */
export function readEach(
  rows: TableRows,
  { place, issues }: { readonly place: Place; readonly issues: DataIssue[] },
  read: (row: TableRow) => void,
): void {
  let left = rows.length;
  for (const row of rows) {
    read(row);
    left -= 1;
    if (issues.length < limits.problems || left === 0) continue;
    issues.push(restNotRead({ ...place, row: row.number }, left));
    break;
  }
}

/** A problem for each of what is wrong in one way; of more than are named of a file, the first stands for the rest as well. */
export function firstOf<T>(
  wrong: readonly T[],
  issueOf: (one: T) => DataIssue,
): readonly DataIssue[] {
  const [first, ...others] = wrong.slice(0, limits.problems).map(issueOf);
  if (first === undefined) return [];
  return [standingFor(first, wrong.length - 1 - others.length), ...others];
}
