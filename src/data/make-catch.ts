import { dataError } from "../errors/data-error.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import type { Problem } from "../errors/problems.ts";
import { refuseUnknownOptions } from "../results/options.ts";
import { type CatchField, catchFields, isObject, valueProblem } from "./catch-values.ts";
import { readDate } from "./dates.ts";
import { dataIssue } from "./issues.ts";
import type { Catch } from "./types.ts";

/** What a catch cannot be without. */
export type CatchEssentials = Pick<Catch, "bin" | "product" | "fill" | "catch" | "turns" | "netKg">;

/** What is not said is not known. */
const unknown = {
  ...Object.fromEntries(
    catchFields.filter(({ essential }) => !essential).map(({ field }) => [field, null]),
  ),
  row: 0,
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
  refuseUnknownOptions(given, [...catchFields.map(({ field }) => field), "extra"]);
  const said = Object.entries(given).filter(([, value]) => value !== undefined);
  const made = { ...unknown, ...Object.fromEntries(said) } as Catch;
  const issues = [
    ...catchFields.flatMap((known) => {
      const value: unknown = made[known.field];
      const found = problemOf(known, value, made);
      return found === null ? [] : issueOf(known.field, value, found);
    }),
    ...extraIssues(made.extra),
  ];
  if (issues.length > 0) throw dataError(source, issues);
  return made;
}

const source = "makeCatch";

function problemOf(known: CatchField, value: unknown, made: Catch): Problem | null {
  const { field, type, essential } = known;
  if (value === undefined || value === null)
    return essential ? { problem: "field-missing", facts: {} } : null;
  // A catch that comes from no file has no row in one.
  if (field === "row" && value === 0) return null;
  if (field === "netKg" && value === 0 && typeof made.leftOut !== "string")
    return { problem: "field-no-mass", facts: {} };
  if (typeof value === "string" && value.trim() === "")
    return { problem: "field-empty", facts: {} };
  if (type === "date" && typeof value === "string" && readDate(value) === null)
    return { problem: "field-no-date", facts: {} };
  return valueProblem(known, value, "catch");
}

function extraIssues(extra: unknown): readonly DataIssue[] {
  if (isObject(extra) && Object.values(extra).every((value) => typeof value === "string"))
    return [];
  const facts = { isObject: isObject(extra) };
  return [issueOf("extra", extra, { problem: "extra-no-texts", facts })];
}

function issueOf(field: string, value: unknown, problem: Problem): DataIssue {
  const received = isObject(value) ? "an object" : String(value);
  return dataIssue({ source, rowKind: "entry", column: field }, problem, received);
}
