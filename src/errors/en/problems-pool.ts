import type { Phrases } from "../issue-text.ts";
import type { PoolProblems } from "../problems/pool.ts";

const textFound = {
  "utf-16": "text in UTF-16",
  "carriage-returns": "lines that end in a carriage return alone",
  "mixed-line-ends": "lines that end in two different ways",
};

/** What is said of a file that is to be pooled. */
export const poolProblems: Phrases<PoolProblems> = {
  "pool-ending": {
    found: (f) => (f.ending === null ? "a name without an ending" : `the ending "${f.ending}"`),
    expected: "a file that ends in .csv, .tsv, .txt or .parquet",
    remedy: "Save the table as CSV, and pool that.",
  },
  "pool-text": {
    found: (f) => textFound[f.found],
    expected: "text in UTF-8 whose lines all end alike",
    remedy: 'Save the file as "CSV UTF-8", and pool that.',
  },
  "pool-not-parquet": {
    found: (f) => `what is no Parquet file (${f.said})`,
    expected: "a Parquet file",
    remedy:
      "Write it again with the program that made it; renaming alone does not change the kind.",
  },
  "pool-unreadable": {
    found: (f) => `what the database cannot read (${f.said})`,
    expected: "rows that each hold one catch",
    remedy: "Look for the problem with `evencatch check`, which reads the file in another way.",
  },
  "too-few-cells": {
    found: (f) => `${f.cells} cells`,
    expected: (f) => `${f.columns}, one for each column of the header`,
    remedy: "Write the separators of empty cells too; saving from a spreadsheet program does so.",
  },
};
