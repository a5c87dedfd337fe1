import { betweenRows } from "../../data/between-rows.ts";
import { blankCatch } from "../../data/blank-catch.ts";
import { type CatchField, catchFields, valueProblem } from "../../data/catch-values.ts";
import { unnamed } from "../../data/identity.ts";
import { logNames } from "../../data/log-names.ts";
import { type ProgramIssue, programError, programIssue } from "../../data/program-issues.ts";
import { smallestMass } from "../../data/smallest-mass.ts";
import { suspicionsOfPlain } from "../../data/suspicions/of-plain.ts";
import { tidyText } from "../../data/table.ts";
import type { Catch, CatchLog } from "../../data/types.ts";
import { OptionError } from "../../errors/errors.ts";
import { caution } from "../../results/caution.ts";
import { refuseUnknownOptions } from "../../results/options.ts";

/** Catches as a program has them at hand, in the order they were caught. */
export interface PlainCatches {
  /** Meter turns: one number for all catches, or one each. */
  readonly turns: number | readonly number[];
  /** Net masses in kg, one a catch. */
  readonly netKg: readonly number[];
  /** Number of the fill, for all catches or one each; default 1. */
  readonly fill?: number | readonly number[];
  /** Name of the bin, for all catches or one each; default "1". */
  readonly bin?: string | readonly string[];
  /** Name of the product, likewise; default "–", none. */
  readonly product?: string | readonly string[];
}

const source = "catches";
const place = { source, rowKind: "entry" } as const;

/**
 * The log of these catches, judged as those of a file are.
 *
 * @throws DataError with every value that no catch can have; OptionError for an unknown name, and for lists of another length
 */
export function logOfCatches(catches: PlainCatches): CatchLog {
  refuseUnknownOptions(catches, ["turns", "netKg", "fill", "bin", "product"]);
  const { netKg, fill, bin, product } = catches;
  if (!Array.isArray(netKg)) throw new OptionError("netKg", netKg, "a list of masses in kg");
  const named = fill !== undefined || bin !== undefined || product !== undefined;
  const rows = numbered(rowsOf(catches));
  const issues = rows.length === 0 ? [programIssue(place, noCatches)] : issuesIn(rows);
  if (issues.length > 0) throw programError(source, issues);
  const written = rows.map(({ row, netKg: kg }) => ({
    row,
    unit: "kg" as const,
    gross: null,
    tare: null,
    net: String(kg),
  }));
  return {
    source,
    massUnit: "kg",
    catches: rows,
    written,
    cautions: [
      ...(named ? [] : [caution("one-bin-taken", {}, { catches: rows.length })]),
      ...suspicionsOfPlain(rows, "kg", written),
    ],
  };
}

const noCatches = { problem: "no-catches", facts: {} } as const;

function rowsOf({ turns, netKg, fill = 1, bin = "1", product = unnamed }: PlainCatches) {
  const each = <T>(name: string, given: T | readonly T[], none: T): ((i: number) => T) => {
    if (!isList(given)) return () => given;
    if (given.length === netKg.length) return (i) => given[i] ?? none;
    throw new OptionError(name, given.length, `one for all, or as many as netKg: ${netKg.length}`);
  };
  const [turnsOf, fillOf] = [each("turns", turns, Number.NaN), each("fill", fill, Number.NaN)];
  const [binOf, productOf] = [each("bin", bin, ""), each("product", product, "")];
  return netKg.map((kg, i) => ({
    ...blankCatch,
    row: i + 1,
    bin: tidied(binOf(i)),
    product: tidied(productOf(i)),
    fill: fillOf(i),
    turns: turnsOf(i),
    netKg: kg,
  }));
}

function isList<T>(given: T | readonly T[]): given is readonly T[] {
  return Array.isArray(given);
}

/** What is no text is left as it is, to be told. */
function tidied(name: string): string {
  return typeof name === "string" ? tidyText(name) : name;
}

/** Catches counted within their fill. */
function numbered(rows: readonly Catch[]): readonly Catch[] {
  const counts = new Map<string, number>();
  return rows.map((row) => {
    const key = JSON.stringify([row.bin, row.product, row.fill]);
    const next = (counts.get(key) ?? 0) + 1;
    counts.set(key, next);
    return { ...row, catch: next };
  });
}

/** What is known of each catch, and what it may be. */
const known: readonly CatchField[] = catchFields
  .filter(({ essential, field }) => essential && field !== "catch")
  .map((one) => (one.field === "netKg" ? { ...one, minimum: smallestMass } : one));

function issuesIn(rows: readonly Catch[]): readonly ProgramIssue[] {
  const issues = rows.flatMap((row) => known.flatMap((field) => valueIssues(row, field)));
  return issues.length > 0
    ? issues
    : betweenRows(rows, logNames(rows)).map(({ row, column, problem, received }) =>
        programIssue({ ...place, row, column }, problem, received),
      );
}

function valueIssues(one: Catch, asked: CatchField): readonly ProgramIssue[] {
  const value: unknown = one[asked.field];
  const problem =
    value === undefined || value === null || value === ""
      ? ({ problem: "field-missing", facts: {} } as const)
      : valueProblem(asked, value, "catch");
  if (problem === null) return [];
  const where = { ...place, row: one.row, column: asked.column };
  return [programIssue(where, problem, String(value ?? ""))];
}
