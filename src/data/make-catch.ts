import type { DataIssue } from "../errors/data-issue.ts";
import { DataError } from "../errors/errors.ts";
import { refuseUnknownOptions } from "../results/options.ts";
import { columnOfField, valueProblem } from "./catch-values.ts";
import { readDate } from "./dates.ts";
import { dataIssue, type Problem } from "./issues.ts";
import type { Catch } from "./types.ts";

/** What a catch cannot be without. */
export type CatchEssentials = Pick<Catch, "bin" | "product" | "fill" | "catch" | "turns" | "netKg">;

type Found = Pick<Problem, "code" | "expected">;

const essentials: readonly string[] = ["bin", "product", "fill", "catch", "turns", "netKg"];

/** What is not said is not known. */
const unknown: Omit<Catch, keyof CatchEssentials> = {
  row: 0,
  grossKg: null,
  tareKg: null,
  divisionKg: null,
  takenAt: null,
  meterRpm: null,
  bulkDensityKgPerM3: null,
  moisturePercent: null,
  binLevelPercent: null,
  outlet: null,
  operator: null,
  note: null,
  checked: null,
  leftOut: null,
  extra: {},
};

/**
 * A catch made in a program instead of read from a file: what is not said is not known. Each value is checked by itself as
 * one of a file is; whether catches agree with one another is not.
 *
 * @param given  bin, product, fill, catch, turns, net mass in kg, and whatever else is known
 * @throws       DataError with every field that cannot be a catch's: what was found, and what is needed; OptionError for a
 *               name that is no field of a catch
 * @example
 * makeCatch({ bin: "1", product: "wheat", fill: 1, catch: 1, turns: 20, netKg: 6.1 }).tareKg // -> null
 */
export function makeCatch(given: CatchEssentials & Partial<Catch>): Catch {
  refuseUnknownOptions(given, [...Object.keys(columnOfField), "extra"]);
  const said = Object.entries(given).filter(([, value]) => value !== undefined);
  const made = { ...unknown, ...Object.fromEntries(said) } as Catch;
  const issues = [
    ...Object.entries(columnOfField).flatMap(([field, column]) => {
      const value: unknown = made[field as keyof Catch];
      const found = problemOf(field, column, value, made);
      return found === null ? [] : issueOf(field, value, found);
    }),
    ...extraIssues(made.extra),
  ];
  if (issues.length > 0) throw new DataError(source, issues);
  return made;
}

const source = "makeCatch";

function problemOf(field: string, column: string, value: unknown, made: Catch): Found | null {
  if (value === undefined || value === null)
    return essentials.includes(field) ? { code: "value-missing", expected: "a value" } : null;
  // A catch that comes from no file has no row in one.
  if (field === "row" && value === 0) return null;
  if (field === "netKg" && value === 0 && typeof made.leftOut !== "string")
    return { code: "out-of-range", expected: "a mass above 0, or leftOut with the reason" };
  if (typeof value === "string" && value.trim() === "")
    return { code: "value-missing", expected: "a text with something in it, or null" };
  if (field === "takenAt" && typeof value === "string" && readDate(value) === null)
    return { code: "not-a-date", expected: "a date that exists, year first, or null" };
  return valueProblem(column, value);
}

function extraIssues(extra: unknown): readonly DataIssue[] {
  const texts =
    typeof extra === "object" &&
    extra !== null &&
    Object.values(extra).every((value) => typeof value === "string");
  const expected = "an object of texts by header";
  return texts ? [] : [issueOf("extra", extra, { code: "not-a-text", expected })];
}

function issueOf(field: string, value: unknown, found: Found): DataIssue {
  const received = typeof value === "object" && value !== null ? "an object" : String(value);
  return dataIssue(
    { source, rowWord: "entry", column: field },
    { ...found, received, remedy: "Correct the value, or leave the catch out." },
  );
}
