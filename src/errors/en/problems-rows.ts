import type { Phrases } from "../issue-text.ts";
import type { RowProblems } from "../problems/rows.ts";

/** What is said of rows that do not go together. */
export const rowProblems: Phrases<RowProblems> = {
  "catch-repeated": {
    found: (f, at) =>
      `catch ${f.catch} of bin ${f.bin}, ${f.product}, fill ${f.fill}${f.outlet === null ? "" : `, outlet ${f.outlet}`} again, first in ${at.row} ${f.firstRow}`,
    expected: "each catch once",
    remedy:
      "Two machines, or two seasons? Name them in a column machine or season. Otherwise give the catch a number of its own.",
  },
  "two-products-in-fill": {
    found: (f) => `"${f.product}" in bin ${f.bin}, fill ${f.fill}`,
    expected: (f, at) =>
      `"${f.first}" as in ${at.row} ${f.firstRow}, since a fill holds one product`,
    remedy: "Correct the product or the bin, or number the new filling as the next fill.",
  },
  "key-missing": {
    expected: (f, at) =>
      `a ${f.header} in every row, since ${at.row} ${f.firstRow} names "${f.named}"`,
    remedy: (f) => `Fill in ${f.header} in every row, or in none.`,
  },
  "key-spelt-twice": {
    expected: (f, at) =>
      `"${f.first}" as in ${at.row} ${f.firstRow}, or a name that differs in more than capitals`,
    remedy: (f) => `Spell each ${f.header} in one way throughout.`,
  },
  "bin-spelt-twice": {
    expected: (f, at) =>
      `"${f.first}" as in ${at.row} ${f.firstRow}, or a name that differs in more than capitals`,
    remedy: "Spell each bin in one way throughout.",
  },
  "product-spelt-twice": {
    expected: (f, at) =>
      `"${f.first}" as in ${at.row} ${f.firstRow}, or a name that differs in more than capitals`,
    remedy: "Spell each product in one way throughout.",
  },
};
