import type { Catch } from "./types.ts";

/** One column of a file of catches: which field it fills, which values it may have, and where it is shown. */
export interface CatchColumn {
  readonly name: string;
  /** Null where it only tells how another column is meant. */
  readonly field: Exclude<keyof Catch, "row" | "extra"> | null;
  /** "date" is an ISO 8601 date, or date and time. "boolean" is yes or no. */
  readonly type: "string" | "number" | "integer" | "date" | "boolean";
  readonly unit: string | null;
  readonly required: boolean;
  /** Smallest and largest value; null where there is none. */
  readonly minimum: number | null;
  readonly maximum: number | null;
  /** Noted beside the weighing: read as its type says, with no rule that holds it against other columns. */
  readonly recorded: boolean;
  /** A header that begins so and is not the name lacks its unit, and is asked for it; null: none. */
  readonly quantity: string | null;
  /** What a sheet kept in German calls it, which is read as well; null: it has no German name. */
  readonly german: string | null;
  /** Whether the empty sheet has it. */
  readonly inSheet: boolean;
  /** Whether the tidy table of catches has it. */
  readonly inCatchTable: boolean;
  readonly description: string;
  readonly example: string;
}
