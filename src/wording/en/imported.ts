import type { AsideReason, AssumedFacts, AssumedKind } from "../../data/import/result.ts";

type Assumed = {
  readonly [K in AssumedKind]: (facts: AssumedFacts[K]) => string;
};

const quoted = (texts: readonly string[]) => texts.map((text) => `"${text}"`).join(", ");
const orders = { dmy: "day first", mdy: "month first", ymd: "year first" };

const whyKept = {
  unread: "cannot be read as a time of day",
  second: "stands beside a date that has a time of its own",
  "no-day": "stands beside no date",
};

/** What was assumed of each kind, as a sentence; its rows are told behind it. */
const assumed: Assumed = {
  "header-below": (f) => `Row ${f.header} names the columns; what stands above it are titles.`,
  "two-line-head": (f) => `Rows ${f.first} and ${f.second} name the columns together.`,
  "header-anew": (f) =>
    `Row ${f.header} names the columns otherwise; the rows below it are read by it.`,
  "unit-column": (f) => `"${f.header}" gives the unit of "${f.column}", row by row.`,
  "column-read": (f) => `"${f.header}" is read as ${f.column}.`,
  "column-kept": (f) => `"${f.header}" is no column evencatch knows, and is kept as it is.`,
  "column-left-out": (f) => `"${f.header}" is left out, as you said.`,
  "filled-merged": (f) => `"${f.column}": merged cells hold for all their rows.`,
  "filled-down": (f) => `${f.column}: a blank cell is the same as the one above.`,
  "ditto-read": (f) => `"${f.column}": a ditto mark is the same as the cell above.`,
  "taken-from-title": (f) => `${f.column} is "${f.value}", as the title says.`,
  "set-for-all": (f) => `${f.column} is "${f.value}" where the file has none, as you said.`,
  "catches-numbered": () => "The catches are numbered in the order of their rows.",
  "fill-goes-on": (f) =>
    `Fill ${f.fill} of bin ${f.bin} comes again after another one: its catches are counted on, as of the same fill.`,
  "fills-numbered": (f) =>
    `The fills are numbered by the order in which their names come: ${quoted(f.names)}.`,
  "number-in-text": (f) => `"${f.column}": of a text, its number counts.`,
  "unit-in-cells": (f) => `"${f.column}": the unit ${f.unit} stands in the cells.`,
  "unit-written-once": (f) =>
    `"${f.column}": the unit ${f.unit} is written in some cells and holds for all.`,
  "unit-converted": (f) => `"${f.column}" is converted from ${f.from} into ${f.to}.`,
  "thousands-read": (f) => `"${f.column}": marks between thousands are left out.`,
  "decimal-told": (f) => `The ${f.mark} stands before decimals, as you said.`,
  "dates-ordered": (f) =>
    f.by === null
      ? `Dates have the ${orders[f.order]}, as you said.`
      : `Dates have the ${orders[f.order]}, since "${f.by}" can be read in no other way.`,
  "dates-read": (f) => `Dates are written year first: "${f.example}" as ${f.date}.`,
  "dates-left-out": (f) =>
    `"${f.column}": ${quoted(f.texts)} cannot be read as a date; the catch has none, and the text is kept beside it.`,
  "times-left-out": (f) =>
    `"${f.column}": ${quoted(f.texts)} ${whyKept[f.why]}; the text is kept beside the catch.`,
  "time-joined": (f) => `"${f.header}" is the time of day that goes with the date.`,
  "windows-1252": (f) =>
    `The file is no UTF-8 and is read as Windows-1252, as in ${quoted(f.words)}: look whether these words are right.`,
  "spilled-read": (f) =>
    `"${f.text}" in place of a mass: the catch is left out, with that as the reason.`,
  "word-read": (f) => `"${f.column}": "${f.text}" is read as ${f.as}.`,
  "catch-like-mean": (f) =>
    `"${f.column}": a figure that is the ${f.figure === "mean" ? "mean" : "sum"} of those above it is taken for a catch, since the rows go on below it.`,
  "one-bin": (f) =>
    `No bin, product or fill is named, so ${f.catches === 1 ? "the catch is" : `the ${f.catches} catches are`} taken for the first fill of one bin.`,
};

const reasons: Readonly<Record<AsideReason, string>> = {
  title: "a title",
  "header-again": "names the columns again",
  heading: "a heading",
  mean: "a mean",
  total: "a total",
  "other-figure": "worked out from other rows",
  "no-mass": "no mass",
  "no-figures": "no figures",
  told: "as you said",
  "other-sheet": "a sheet without catches",
};

/** What is told of an import: beside the clean file, and when it is made. */
export const imported = {
  assumed,
  reasons,
  title: "How the catches were read",
  headings: { assumed: "Assumed", asked: "Asked", setAside: "Set aside" },
  nothing: { assumed: "Nothing.", asked: "Nothing.", setAside: "No row." },
  place: (f: { readonly source: string; readonly sheet: string | null }) =>
    f.sheet === null ? f.source : `${f.source}, sheet "${f.sheet}"`,
  rows: (f: { readonly rows: string; readonly count: number }) =>
    f.count === 1 ? `Row ${f.rows}.` : `${f.count} times, rows ${f.rows}.`,
  asideRow: (f: { readonly row: number; readonly why: string; readonly text: string }) =>
    `Row ${f.row}, ${f.why}: ${f.text}`,
  summary: (f: {
    readonly catches: number;
    readonly assumed: number;
    readonly setAside: number;
    readonly file: string;
  }) =>
    `${f.catches === 1 ? "1 catch" : `${f.catches} catches`} written to ${f.file}; ${f.assumed === 1 ? "1 assumption" : `${f.assumed} assumptions`}, ${f.setAside === 1 ? "1 row" : `${f.setAside} rows`} set aside. Read what was assumed before you use them.`,
  notRead: (files: readonly string[]) =>
    `Not read, since no table ends so: ${files.slice(0, 6).join(", ")}${files.length > 6 ? ", …" : ""}`,
  listed: (file: string) => `Listed in ${file}`,
  notYet: (f: { readonly questions: number }) =>
    `Nothing was written: ${f.questions === 1 ? "1 question is" : `${f.questions} questions are`} unanswered. Answer and run the command again; --help names all answers.`,
};
