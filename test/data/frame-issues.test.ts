import { describe, expect, it } from "vitest";
import { catchFields } from "../../src/data/catch-values.ts";
import { cellIssues, missingColumns } from "../../src/data/frame-issues.ts";
import type { Cell } from "../../src/data/table.ts";
import { present } from "../support/reference.ts";

/** What is wrong with the cell of a column in row 3 of a frame: problem, row, column and what was found. */
function wrongWith(column: string, cell: Cell) {
  const known = present(catchFields.find((field) => field.column === column));
  return cellIssues(3, known, cell).map((issue) => [
    issue.problem,
    `${issue.source}, ${issue.rowKind} ${issue.row}, ${issue.column}`,
    issue.received,
  ]);
}

describe("a cell of a data frame", () => {
  it.each([
    ["bin", "1"],
    ["turns", 20],
    ["fill", 2],
    ["net_kg", 6.31],
  ])("is a catch's: %s %j", (column, cell) => {
    expect(wrongWith(column, cell)).toEqual([]);
  });

  it.each(["left_out", "taken_at", "gross_kg", "moisture_pct"])(
    "may be empty where a catch can be without it: %s",
    (column) => {
      expect(wrongWith(column, null)).toEqual([]);
    },
  );

  it.each<[string, Cell, string, string]>([
    ["turns", null, "cell-missing", ""],
    ["row", null, "cell-missing", ""],
    ["turns", "twenty", "value-no-number", "twenty"],
    ["bin", 1, "value-no-text", "1"],
    ["fill", 1.5, "value-not-whole", "1.5"],
    ["turns", -20, "value-out-of-range", "-20"],
    ["moisture_pct", 101, "value-out-of-range", "101"],
  ])("is none, and named by row and column: %s %j", (column, cell, problem, received) => {
    expect(wrongWith(column, cell)).toEqual([[problem, `data frame, row 3, ${column}`, received]]);
  });
});

it("names each column that every frame of catches has and this one lacks", () => {
  const all = ["row", "bin", "product", "fill", "catch", "turns", "net_kg"];
  expect(missingColumns(all)).toEqual([]);
  expect(
    missingColumns(all.filter((name) => name !== "turns")).map(({ problem, row, column }) => [
      problem,
      row,
      column,
    ]),
  ).toEqual([["frame-column-missing", null, "turns"]]);
});
