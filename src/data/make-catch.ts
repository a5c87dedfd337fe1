import type { DataIssue } from "../errors/data-issue.ts";
import { DataError } from "../errors/errors.ts";
import { refuseUnknownOptions } from "../results/options.ts";
import { type CatchField, catchFields, valueProblem } from "./catch-values.ts";
import { readDate } from "./dates.ts";
import { dataIssue, type Problem } from "./issues.ts";
import type { Catch } from "./types.ts";

/** What a catch cannot be without. */
export type CatchEssentials = Pick<Catch, "bin" | "product" | "fill" | "catch" | "turns" | "netKg">;

type Found = Pick<Problem, "code" | "expected">;

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
  if (issues.length > 0) throw new DataError(source, issues);
  return made;
}

const source = "makeCatch";

function problemOf(known: CatchField, value: unknown, made: Catch): Found | null {
  const { field, type, essential } = known;
  if (value === undefined || value === null)
    return essential ? { code: "value-missing", expected: "a value" } : null;
  // A catch that comes from no file has no row in one.
  if (field === "row" && value === 0) return null;
  if (field === "netKg" && value === 0 && typeof made.leftOut !== "string")
    return { code: "out-of-range", expected: "a mass above 0, or leftOut with the reason" };
  if (typeof value === "string" && value.trim() === "")
    return { code: "value-missing", expected: "a text with something in it, or null" };
  if (type === "date" && typeof value === "string" && readDate(value) === null)
    return { code: "not-a-date", expected: "a date that exists, year first, or null" };
  return valueProblem(known, value);
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
