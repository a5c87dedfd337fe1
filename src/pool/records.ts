import { OptionError } from "../errors/errors.ts";
import type { FillRecord } from "../model/fill-record.ts";
import type { Row } from "./engine.ts";

/**
 * Totals of fills from the rows of a database, as the statements of `poolSql` return them; for `analyseTotals`.
 *
 * @param rows  with every column of the last statement under its name; numbers may be texts, as drivers return large ones
 * @throws      OptionError for a row that lacks one, or has something else in it
 */
export function fillRecords(rows: readonly Row[]): readonly FillRecord[] {
  return rows.map(fillRecord);
}

export function fillRecord(row: Row): FillRecord {
  return {
    farm: nameOrNull(row, "farm"),
    machine: nameOrNull(row, "machine"),
    bin: name(row, "bin"),
    product: name(row, "product"),
    season: nameOrNull(row, "season"),
    fill: figure(row, "fill"),
    takenAt: nameOrNull(row, "taken_at"),
    sums: {
      catches: figure(row, "catches"),
      turns: figure(row, "turns"),
      massKg: figure(row, "mass_kg"),
      scatterSum: figure(row, "scatter_sum"),
      divisionsKg: figure(row, "divisions_kg"),
      withoutDivision: figure(row, "without_division"),
      fewestTurns: figure(row, "fewest_turns"),
      mostTurns: figure(row, "most_turns"),
    },
  };
}

function nameOrNull(row: Row, column: string): string | null {
  const value = row[column];
  return value === null || value === "" ? null : name(row, column);
}

function name(row: Row, column: string): string {
  const value = row[column];
  if (typeof value === "string" && value !== "") return value;
  throw new OptionError(column, value, "a text in every row");
}

function figure(row: Row, column: string): number {
  const value = row[column];
  const number = typeof value === "string" && value.trim() !== "" ? Number(value) : value;
  const found = typeof number === "bigint" ? Number(number) : number;
  if (typeof found === "number" && Number.isFinite(found)) return found;
  throw new OptionError(column, value, "a finite number in every row");
}
