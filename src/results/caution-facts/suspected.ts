import type { FillName } from "../fill-name.ts";
import type { Standing } from "../severity.ts";

/** What is possible in catches and a setup but rarely meant, with the cause that is suspected. */
export interface SuspectedCautionFacts {
  // slips that are suspected
  /** Turns of so many of the catches go on where the catch before had ended. */
  readonly "counter-not-reset": {
    readonly catches: number;
    readonly countedOn: number;
    /** As written, in the order of the catches. */
    readonly turnsWritten: readonly number[];
  };
  /** Masses of so many of the catches hold those of the catch before. */
  readonly "bag-not-emptied": {
    readonly catches: number;
    readonly countedOn: number;
    /** Net, as written, in the order of the catches. */
    readonly massesKg: readonly number[];
  };
  /** The net masses look counted and the turns weighed; those of the first catch as read. */
  readonly "net-and-turns-swapped": {
    readonly catches: number;
    readonly turns: number;
    readonly net: number;
    readonly unit: string;
  };
  /** What is delivered is so many times what else is known of it. */
  readonly "delivery-far-off": {
    readonly heldAgainst: "other-bins" | "other-fills" | "book-value" | "target";
    readonly times: number;
    readonly read: string;
    /** Masses in this unit would give that; null: no mix-up of two units would. */
    readonly meant: string | null;
  };
  /** Two names that a slip may have made of one, the one with fewer fills first. */
  readonly "name-nearly-another": {
    readonly what: "bin" | "product" | "machine" | "farm";
    readonly name: string;
    readonly fills: number;
    readonly other: string;
    readonly otherFills: number;
    readonly differBy: "letter" | "hyphen" | "number" | "invisible" | "look-alike";
    /** Signs of both that nobody sees, or that pass for others, with their code points. */
    readonly signs: readonly string[];
  };
  /** So many catches have turns and masses of others in the same order; the first of them, and what it repeats. */
  readonly "pasted-again": {
    readonly catches: number;
    readonly fill: FillName;
    readonly catch: number;
    /** Null: of the same bin. */
    readonly asBin: string | null;
    readonly asFill: FillName;
    readonly asCatch: number;
  };
  /** What this bin delivered in the fill is what the other bin delivers in its fills, and the other way round. */
  readonly "bins-swapped": {
    readonly other: string;
    /** In kg a turn: both in this fill, and this bin's in its other fills. */
    readonly here: number;
    readonly there: number;
    readonly usual: number;
  };
  /** No catch is made in such a year, or in none near it. */
  readonly "year-looks-wrong": { readonly year: number; readonly fill: FillName };
  /** Catches of one fill, from the first day to the last. */
  readonly "fill-spans-seasons": {
    readonly first: string;
    readonly last: string;
    readonly days: number;
  };
  /** Every figure of the column is small enough to be a fraction; the largest, in percent as read. */
  readonly "percent-looks-fraction": {
    readonly column: "moisture" | "bin-level";
    readonly largest: number;
  };
  /** In percent, as read. */
  readonly "share-looks-fraction": {
    readonly seedShare: "germination" | "emergence";
    readonly percent: number;
  };
  /** So many catches are marked in a column that is not read, by its name as ones that do not count. */
  readonly "exclusion-not-read": { readonly header: string; readonly catches: number };
  // what a file shows otherwise than it is read
  /** The first sheet was read, and its tab is hidden. */
  readonly "sheet-hidden": { readonly sheet: string };
  /** The first sheet was read; these look like catches too, and count for nothing. */
  readonly "catches-on-other-sheets": {
    readonly sheet: string;
    readonly others: readonly string[];
  };
  /** The same of sheets that hold something else. */
  readonly "sheets-passed-over": { readonly sheet: string; readonly others: readonly string[] };
  /** So many rows that a filter or a hand hides were read with the others; the first by its number. */
  readonly "rows-hidden": { readonly rows: number; readonly first: number };
  /** Cells show a percentage and were read as its hundredth; the first by its name, and as read. */
  readonly "percent-cells": {
    readonly header: string;
    readonly cells: number;
    readonly first: string;
    readonly readAs: number;
  };
  /** Formulas that nobody worked out, read as blank; the first by its name. */
  readonly "formulas-without-value": {
    readonly header: string;
    readonly cells: number;
    readonly first: string;
  };
  /** So many keys stand twice in one object, and the last value counts; the first of them, and its line. */
  readonly "json-keys-repeated": {
    readonly keys: number;
    readonly first: string;
    readonly line: number;
  };
}

/** Each changes what is set, and the person who wrote the file says whether it is so. */
const asked = {
  severity: "serious",
  asks: "look-first",
  endedBy: ["corrected", "answered"],
} as const satisfies Standing;

export const suspectedStandings = {
  "counter-not-reset": asked,
  "bag-not-emptied": asked,
  "net-and-turns-swapped": asked,
  "delivery-far-off": asked,
  "name-nearly-another": asked,
  "pasted-again": asked,
  "bins-swapped": asked,
  "year-looks-wrong": asked,
  "fill-spans-seasons": asked,
  "percent-looks-fraction": { severity: "doubt", asks: "to-know" },
  "share-looks-fraction": asked,
  "sheet-hidden": asked,
  "catches-on-other-sheets": asked,
  "sheets-passed-over": { severity: "note", asks: "to-know" },
  "rows-hidden": asked,
  "percent-cells": { severity: "doubt", asks: "to-know" },
  "formulas-without-value": asked,
  "json-keys-repeated": asked,
  "exclusion-not-read": asked,
} as const satisfies Readonly<Record<keyof SuspectedCautionFacts, Standing>>;
