import type { DataIssue } from "../../errors/data-issue.ts";
import type { CatchLog } from "../types.ts";
import type { PlainRow } from "../write-csv.ts";

/** Order of day, month and year in a date of numbers alone. */
export type DateOrder = "dmy" | "mdy" | "ymd";
export const dateOrders: readonly DateOrder[] = ["dmy", "mdy", "ymd"];

/** Answers to what a file leaves open. A file that leaves nothing open needs none. */
export interface ImportOptions {
  /**
   * What a header means: column by header, such as `{ revs: "turns", Weight: "net_kg" }`; "-" leaves the column out. The
   * headers "sheet", "file" and "folder" are the names of sheet, file and its folder themselves; "-" for "sheet" or "file": a fill goes on from one to the next.
   */
  readonly map?: Readonly<Record<string, string>>;
  /** The value of a column wherever the file has none, such as `{ product: "wheat" }`. */
  readonly set?: Readonly<Record<string, string>>;
  /** Order of dates that are numbers alone; left out: only dates with one reading are read. */
  readonly dates?: DateOrder;
  /** What stands before decimals; left out: as the file itself settles it. */
  readonly decimal?: "comma" | "point";
  /** Sheets of workbooks that are read; left out: all. */
  readonly sheets?: readonly string[];
  /** Columns, besides those that name the catch, whose blank cells mean the same as the cell above. */
  readonly fillDown?: readonly string[];
  /** Rows that are no catches. */
  readonly aside?: readonly { readonly sheet?: string; readonly row: number }[];
}

/** What each kind of assumption says of the cells it was made for. Values are as the file has them. */
export interface AssumedFacts {
  readonly "header-below": { readonly header: number };
  readonly "two-line-head": { readonly first: number; readonly second: number };
  /** A row lower down names the columns otherwise. */
  readonly "header-anew": { readonly header: number };
  /** A column that gives the unit of another one, row by row. */
  readonly "unit-column": { readonly header: string; readonly column: string };
  readonly "column-read": { readonly header: string; readonly column: string };
  readonly "column-kept": { readonly header: string };
  readonly "column-left-out": { readonly header: string };
  readonly "filled-merged": { readonly column: string };
  readonly "filled-down": { readonly column: string };
  readonly "ditto-read": { readonly column: string };
  readonly "taken-from-title": { readonly column: string; readonly value: string };
  readonly "set-for-all": { readonly column: string; readonly value: string };
  readonly "catches-numbered": { readonly by: "order" };
  readonly "fill-goes-on": { readonly bin: string; readonly fill: string };
  readonly "fills-numbered": { readonly names: readonly string[] };
  readonly "number-in-text": { readonly column: string };
  readonly "unit-in-cells": { readonly column: string; readonly unit: string };
  readonly "unit-written-once": { readonly column: string; readonly unit: string };
  readonly "unit-converted": {
    readonly column: string;
    readonly from: string;
    readonly to: string;
  };
  readonly "thousands-read": { readonly column: string };
  readonly "decimal-told": { readonly mark: "comma" | "point" };
  /** `by`: the date that settles it; null: the answer that was given. */
  readonly "dates-ordered": { readonly order: DateOrder; readonly by: string | null };
  readonly "dates-read": { readonly example: string; readonly date: string };
  readonly "dates-left-out": { readonly texts: readonly string[]; readonly column: string };
  /** `why`: it is none that can be read, its date has one already, or there is no date for it. */
  readonly "times-left-out": {
    readonly texts: readonly string[];
    readonly column: string;
    readonly why: "unread" | "second" | "no-day";
  };
  readonly "time-joined": { readonly header: string };
  readonly "windows-1252": { readonly words: readonly string[] };
  readonly "spilled-read": { readonly text: string };
  readonly "word-read": { readonly column: string; readonly text: string; readonly as: string };
  /** A catch that is the mean or the sum of those above it. */
  readonly "catch-like-mean": { readonly column: string; readonly figure: "mean" | "total" };
  readonly "one-bin": { readonly catches: number };
}

export type AssumedKind = keyof AssumedFacts;

export interface AssumedOf<K extends AssumedKind> {
  readonly kind: K;
  readonly facts: AssumedFacts[K];
  readonly source: string;
  /** Null: the file has no sheets. */
  readonly sheet: string | null;
  /** How many cells or rows it was assumed for. */
  readonly count: number;
  /** Their rows; empty where the whole sheet is meant. */
  readonly rows: readonly number[];
}

/** Something that was assumed: once, however many cells it was assumed for. */
export type Assumed = { readonly [K in AssumedKind]: AssumedOf<K> }[AssumedKind];

/** Why a row of a file is no catch. */
export type AsideReason =
  | "title"
  | "header-again"
  | "heading"
  | "mean"
  | "total"
  | "other-figure"
  | "no-mass"
  | "no-figures"
  | "told"
  | "other-sheet";

/** A row that stands in the file and not among the catches. */
export interface SetAside {
  readonly source: string;
  readonly sheet: string | null;
  readonly row: number;
  readonly why: AsideReason;
  /** What stands in it. */
  readonly text: string;
}

/** What was read from somebody's own files, and how. */
export interface Imported {
  /** The clean table: under the headers evencatch reads itself, figures as they were written, with a decimal point. */
  readonly catches: readonly PlainRow[];
  /** The same, read and checked; null: something is asked that must be answered first. */
  readonly log: CatchLog | null;
  readonly assumed: readonly Assumed[];
  /** What could be read two ways, or not at all. Where `log` is not null, it is about what a catch may lack. */
  readonly asked: readonly DataIssue[];
  readonly setAside: readonly SetAside[];
}
