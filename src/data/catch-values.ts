import type { FromProgram, ProgramProblems } from "../errors/problems/program.ts";
import type { ProblemOf } from "../errors/problems.ts";
import { type Column, type FieldsOf, isEssential } from "./column-kinds.ts";
import { type CatchColumn, catchColumns } from "./columns.ts";
import type { Catch } from "./types.ts";
import type { PlainRow } from "./write-csv.ts";

type Rules = Pick<CatchColumn, "type" | "minimum" | "maximum">;

/** A field of a catch: the column of a data frame that holds it, and what it may be. */
export interface CatchField extends Rules {
  readonly field: Exclude<keyof Catch, "extra">;
  readonly column: string;
  /** Whether a catch cannot be without it. */
  readonly essential: boolean;
}

/** Every field of a catch but `extra`, which holds what the table of columns does not know. */
export const catchFields: readonly CatchField[] = [
  // A catch that no file gave has no row in one.
  { field: "row", column: "row", type: "integer", minimum: 1, maximum: null, essential: false },
  ...catchColumns.flatMap((listed: CatchColumn): readonly CatchField[] => {
    const { name, field, type, minimum, maximum } = listed;
    if (field === null) return [];
    // Without exclude beside it, "reason" would not say what for.
    const column = name === "reason" ? "left_out" : name;
    return [{ field, column, type, minimum, maximum, essential: isEssential(listed) }];
  }),
];

/**
 * The values of these fields, as the table of columns has them. Where they are returned as a `Catch`, the compiler holds
 * the two to each other: a field that only one of them knows does not compile.
 */
export type CatchValues = Pick<Catch, "row"> & FieldsOf<Column>;

type ValueProblem = { readonly [K in keyof ProgramProblems]: ProblemOf<K> }[keyof ProgramProblems];

/** What keeps a value that is no text of a file from being a catch's: of another kind, or out of range; null: nothing. */
export function valueProblem(
  { type, minimum, maximum }: Rules,
  value: unknown,
  within: FromProgram["within"],
): ValueProblem | null {
  if (type === "string" || type === "date") {
    return typeof value === "string"
      ? null
      : { problem: "value-no-text", facts: { within, isObject: isObject(value) } };
  }
  if (typeof value !== "number") {
    return { problem: "value-no-number", facts: { within, isObject: isObject(value) } };
  }
  if (type === "integer" && !Number.isInteger(value)) {
    return { problem: "value-not-whole", facts: { within } };
  }
  const low = minimum ?? Number.NEGATIVE_INFINITY;
  const high = maximum ?? Number.POSITIVE_INFINITY;
  return value >= low && value <= high
    ? null
    : { problem: "value-out-of-range", facts: { within, from: minimum, to: maximum } };
}

export function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

/** Before the header of a column evencatch does not know, so that no header can hide a column it does. */
export const extraPrefix = "extra.";

/** What a catch has in columns evencatch does not know, for tables that have columns of their own too. */
export function extraCells({ extra }: Catch): PlainRow {
  return Object.fromEntries(
    Object.entries(extra).map(([header, text]) => [`${extraPrefix}${header}`, text]),
  );
}
