/** What keeps a file from being read by a database, whether or not it can be read into memory. */
export interface PoolProblems {
  /** null: a name without an ending. */
  readonly "pool-ending": { readonly ending: string | null };
  readonly "pool-text": { readonly found: "utf-16" | "carriage-returns" | "mixed-line-ends" };
  /** What the database says of it. */
  readonly "pool-not-parquet": { readonly said: string };
  readonly "pool-unreadable": { readonly said: string };
  readonly "too-few-cells": { readonly cells: number; readonly columns: number };
}

export const poolCodes = {
  "pool-ending": "file-type-unknown",
  "pool-text": "file-not-utf8",
  "pool-not-parquet": "file-malformed",
  "pool-unreadable": "file-malformed",
  "too-few-cells": "file-malformed",
} as const satisfies Readonly<Record<keyof PoolProblems, string>>;
