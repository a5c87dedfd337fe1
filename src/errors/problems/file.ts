import type { NoFacts } from "./facts.ts";

/** What keeps a file from being opened, or from being a table or a setup at all. */
export interface FileProblems {
  // the file as a whole
  readonly "file-not-found": { readonly folder: string };
  readonly "is-folder": NoFacts;
  readonly "is-device": NoFacts;
  readonly "may-not-open": NoFacts;
  /** What the system calls it; null: nothing. */
  readonly "cannot-open": { readonly systemCode: string | null };
  /** null: a name without an ending. */
  readonly "ending-unknown": { readonly ending: string | null };
  readonly "setup-not-json": NoFacts;
  readonly "spreads-not-json": NoFacts;
  readonly "file-too-large": { readonly megabytes: number; readonly most: number };
  /** More of something than is taken on. */
  readonly "too-many": { readonly what: Counted; readonly count: number; readonly most: number };
  /** Rows after the one at which enough problems were found. */
  readonly "rest-not-read": { readonly rows: number };
  /** A list of a setup, or all of it. */
  readonly "setup-too-long": {
    readonly what: "entries" | "MB";
    readonly count: number;
    readonly most: number;
  };
  readonly "file-empty": { readonly wanted: "table" | "list" | "setup" | "spreads" };
  // no text
  readonly "zip-archive": NoFacts;
  readonly "old-workbook": NoFacts;
  readonly image: { readonly format: "PNG" | "JPEG" | "GIF" };
  readonly "pdf-document": NoFacts;
  readonly "gzip-archive": NoFacts;
  readonly "utf16-unmarked": NoFacts;
  readonly "binary-file": NoFacts;
  readonly "not-utf8": NoFacts;
  // CSV
  readonly "line-too-long": { readonly most: number };
  readonly "quote-stray": NoFacts;
  /** Whether cells are parted by a comma, which may as well be a decimal mark. */
  readonly "too-many-cells": {
    readonly cells: number;
    readonly columns: number;
    readonly comma: boolean;
  };
  readonly "no-rows": NoFacts;
  /** Every catch is marked as left out. */
  readonly "all-excluded": NoFacts;
  // the area that a catch stands for
  readonly "area-without-drive": { readonly bin: string; readonly product: string };
  /** The area as written, and the turns that belong to it. */
  readonly "area-disagrees": {
    readonly area: string;
    readonly unit: "ha" | "ac";
    readonly turns: number;
  };
  // JSON
  /** null: nobody knows where. */
  readonly "not-json": { readonly near: string | null };
  readonly "no-list": NoFacts;
  readonly "no-entries": NoFacts;
  readonly "entry-no-object": NoFacts;
  readonly "value-no-cell": NoFacts;
  // a workbook
  readonly "not-a-workbook": NoFacts;
  readonly "workbook-old": NoFacts;
  readonly "workbook-damaged": NoFacts;
  /** Once it is unpacked. */
  readonly "workbook-too-large": { readonly megabytes: number; readonly most: number };
  /** null: no sheet was asked for, and there is none. */
  readonly "sheet-not-found": { readonly sheet: string | null; readonly sheets: readonly string[] };
  // classes of products, and what may be told of meters
  readonly "classes-column-missing": { readonly name: string };
  readonly "classes-product-twice": { readonly first: string };
  /** Bins in the largest class, and how many it takes. */
  readonly "spreads-too-few": { readonly bins: number; readonly least: number };
  readonly "sheet-empty": { readonly sheet: string; readonly others: readonly string[] };
}

/** What a file may hold too many of. */
export type Counted = "rows" | "entries" | "columns" | "cells";

export const fileCodes = {
  "file-not-found": "file-not-found",
  "is-folder": "file-unreadable",
  "is-device": "file-unreadable",
  "may-not-open": "file-unreadable",
  "cannot-open": "file-unreadable",
  "ending-unknown": "file-type-unknown",
  "setup-not-json": "file-type-unknown",
  "spreads-not-json": "file-type-unknown",
  "file-too-large": "file-too-large",
  "too-many": "file-too-large",
  "rest-not-read": "rest-not-read",
  "setup-too-long": "file-too-large",
  "file-empty": "file-empty",
  "zip-archive": "file-binary",
  "old-workbook": "file-binary",
  image: "file-binary",
  "pdf-document": "file-binary",
  "gzip-archive": "file-binary",
  "utf16-unmarked": "file-binary",
  "binary-file": "file-binary",
  "not-utf8": "file-not-utf8",
  "line-too-long": "line-too-long",
  "quote-stray": "file-malformed",
  "too-many-cells": "file-malformed",
  "no-rows": "no-rows",
  "all-excluded": "nothing-counts",
  "area-without-drive": "value-missing",
  "area-disagrees": "turns-disagree",
  "not-json": "file-malformed",
  "no-list": "file-malformed",
  "no-entries": "no-rows",
  "entry-no-object": "file-malformed",
  "value-no-cell": "file-malformed",
  "not-a-workbook": "file-malformed",
  "workbook-old": "file-malformed",
  "workbook-damaged": "file-malformed",
  "workbook-too-large": "file-too-large",
  "sheet-not-found": "sheet-not-found",
  "classes-column-missing": "column-missing",
  "classes-product-twice": "file-malformed",
  "spreads-too-few": "too-few-meters",
  "sheet-empty": "file-empty",
} as const satisfies Readonly<Record<keyof FileProblems, string>>;
