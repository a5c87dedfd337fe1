import type { Phrases } from "../issue-text.ts";
import type { FileProblems } from "../problems/file.ts";

const table = "a first row that names the columns and one row for each catch";
const oldWorkbook = "an old .xls workbook or one with a password";
const asTable = "Save the table as CSV or .xlsx and give that file.";
const isItSaved = "Check that the file was saved, and that it is the right one.";
const saveWorkbook =
  "Open it in a spreadsheet program and save it as .xlsx without a password, or as CSV.";
const writeThemIn = "Write the catches in, and save the file.";

const contents = {
  table,
  list: "a list of catches",
  setup: "a setup in braces, {}, which may hold nothing else",
  spreads: "a library of spreads, as `evencatch spreads` writes it",
};

const quoted = (names: readonly string[]) => names.map((name) => `"${name}"`).join(", ");

/** What is said of a file that cannot be opened, or is no table or setup at all. */
export const fileProblems: Phrases<FileProblems> = {
  "file-not-found": {
    found: (f) => `no file of that name in ${f.folder}`,
    expected: "a file that exists",
    remedy: "Check the spelling and the ending, and that the folder is the right one.",
  },
  "is-folder": {
    found: "a folder",
    expected: "a file that can be read",
    remedy: "Give the name of the file in it.",
  },
  "is-device": {
    found: "a device or a pipe",
    expected: "a file that can be read",
    remedy: "Save the table to a file and give its name.",
  },
  "may-not-open": {
    found: "a file that may not be opened",
    expected: "a file that can be read",
    remedy: "Ask for permission to read it, or copy it to a folder of your own.",
  },
  "cannot-open": {
    found: (f) =>
      `a file that cannot be opened${f.systemCode === null ? "" : ` (${f.systemCode})`}`,
    expected: "a file that can be read",
    remedy: "Check that the name is right and that the file opens in the program that made it.",
  },
  "ending-unknown": {
    found: (f) => (f.ending === null ? "a name without an ending" : `the ending "${f.ending}"`),
    expected: "a file that ends in .csv, .tsv, .txt, .xlsx or .json",
    remedy:
      "Save the table as .xlsx or CSV from the program that made it, and give that file; renaming alone does not change the kind.",
  },
  "setup-not-json": {
    expected: "a setup file that ends in .json",
    remedy: "`evencatch template` writes an empty one.",
  },
  "spreads-not-json": {
    expected: "a library of spreads that ends in .json",
    remedy: "`evencatch spreads` writes one.",
  },
  "classes-column-missing": {
    expected: (f) => `a column named ${f.name}`,
    remedy: "A table of classes has two columns, product and class.",
  },
  "classes-product-twice": {
    expected: (f) => `one class for a product, as "${f.first}" was given before`,
    remedy: "Delete one of the two rows.",
  },
  "spreads-too-few": {
    found: (f) =>
      f.bins === 1 ? "1 bin in the largest class" : `${f.bins} bins in the largest class`,
    expected: (f) =>
      `at least ${f.least} bins in a class, so that nobody's meter is told by itself`,
    remedy: "Pool more logs, or make the classes wider.",
  },
  "file-too-large": {
    found: (f) => `a file of ${f.megabytes} MB`,
    expected: (f) => `at most ${f.most} MB for this kind of file`,
    remedy: "Check that it is the file of catches; if it is, split it by season or by bin.",
  },
  "too-many": {
    found: (f) => `${f.count} ${f.what}`,
    expected: (f) => `at most ${f.most} ${f.what}`,
    remedy: (f) =>
      f.what === "columns"
        ? "Delete the empty columns, and those that have nothing to do with the catches."
        : "Delete the empty rows and columns; if there are that many catches, split the file by season or by bin.",
  },
  "rest-not-read": {
    found: (f) => `${f.rows === 1 ? "1 more row" : `${f.rows} more rows`} after so many problems`,
    expected: "a file whose first rows can be read",
    remedy: "Mend what is named above, and read the file again.",
  },
  "setup-too-long": {
    found: (f) => `${f.count} ${f.what}`,
    expected: (f) => `at most ${f.most} ${f.what}`,
    remedy: "Check that it is the setup; if it is, take out what is no longer needed.",
  },
  "file-empty": {
    found: "an empty file",
    expected: (f) => contents[f.wanted],
    remedy: isItSaved,
  },
  "zip-archive": {
    found: "a zip archive, such as an .xlsx workbook",
    expected: "plain text",
    remedy:
      "If it is a workbook, let its name end in .xlsx; if not, unpack it and give the table inside.",
  },
  "old-workbook": {
    found: oldWorkbook,
    expected: "plain text",
    remedy: "Save it as .xlsx without a password, or as CSV.",
  },
  image: { found: (f) => `a ${f.format} image`, expected: "plain text", remedy: asTable },
  "pdf-document": { found: "a PDF document", expected: "plain text", remedy: asTable },
  "gzip-archive": {
    found: "a gzip archive",
    expected: "plain text",
    remedy: "Unpack it and give the table inside.",
  },
  "utf16-unmarked": {
    found: "what looks like UTF-16 text without its mark",
    expected: "plain text",
    remedy: "Save the file as UTF-8.",
  },
  "binary-file": {
    found: "a binary file",
    expected: "plain text",
    remedy: "Give the table itself, saved as CSV, .xlsx or .json from the program that shows it.",
  },
  "not-utf8": {
    found: "letters that are not UTF-8",
    expected: "a file saved as UTF-8",
    remedy:
      'Open it in the program that made it and save it as "CSV UTF-8" (or as UTF-8 text), or save it as .xlsx.',
  },
  "line-too-long": {
    found: (f) => `a line of more than ${f.most} characters`,
    expected: "lines that each hold one catch",
    remedy: "Check that it is the file of catches, saved as CSV with a line break after each row.",
  },
  "quote-stray": {
    found: "a quotation mark that is not closed, or text behind a closing one",
    expected: "quotation marks in pairs around a whole cell",
    remedy:
      'Look for the mark in this row; delete it, or write it twice ("") if it belongs to the text.',
  },
  "too-many-cells": {
    found: (f) => `${f.cells} cells`,
    expected: (f) => `at most ${f.columns}, one for each column of the header`,
    remedy: (f) =>
      f.comma
        ? "A comma inside a number or a text splits it in two: put the cell in quotation marks, or use a decimal point."
        : "Put a text that holds the separator in quotation marks.",
  },
  "no-rows": {
    found: "a header and nothing below it",
    expected: "one row for each catch",
    remedy: writeThemIn,
  },
  "all-excluded": {
    found: "every catch excluded",
    expected: "at least one catch that counts",
    remedy: "Take the mark off one that was caught as it should be, or catch once more.",
  },
  "not-json": {
    found: (f) =>
      f.near === null
        ? "JSON that breaks off or has a slip"
        : `a slip in the JSON near "${f.near}"`,
    expected: "valid JSON",
    remedy:
      "Look there for a comma, quotation mark or bracket that is missing or one too many; JSON has no comments.",
  },
  "no-list": {
    found: "no list of catches",
    expected: 'a list [{"bin": "1", …}, …], or an object with such a list as "catches"',
    remedy: "Write one object for each catch, with the same names as the fields of a sheet.",
  },
  "no-entries": {
    found: "an empty list",
    expected: "one entry for each catch",
    remedy: writeThemIn,
  },
  "entry-no-object": {
    found: "something else than an object",
    expected: 'an object with the names of the columns, {"bin": "1", …}',
    remedy: "Write one object for each catch, or delete the entry.",
  },
  "value-no-cell": {
    found: "a list or an object",
    expected: "a text, a number, true, false or null",
    remedy: "Give each figure a field of its own.",
  },
  "not-a-workbook": {
    found: "a file that is not a whole .xlsx workbook",
    expected: "an .xlsx workbook",
    remedy: saveWorkbook,
  },
  "workbook-damaged": {
    found: "a workbook that breaks off or was damaged on its way",
    expected: "a whole .xlsx workbook",
    remedy: "Copy or send it again from where it was saved, or save the table as CSV there.",
  },
  "workbook-too-large": {
    found: (f) => `a workbook that unpacks to ${f.megabytes} MB`,
    expected: (f) => `at most ${f.most} MB`,
    remedy: "Save the sheet with the catches alone as CSV, and give that file.",
  },
  "workbook-old": { found: oldWorkbook, expected: "an .xlsx workbook", remedy: saveWorkbook },
  "sheet-not-found": {
    found: (f) => (f.sheet === null ? "a workbook without a sheet" : `no sheet named "${f.sheet}"`),
    expected: (f) =>
      f.sheets.length === 0 ? "a sheet of catches" : `one of the sheets ${quoted(f.sheets)}`,
    remedy: "Give the name of the sheet as its tab shows it, or none for the first sheet.",
  },
  "area-without-drive": {
    expected: (f) =>
      `turns, or a setup that tells the meter turns per hectare of bin ${f.bin} (${f.product})`,
    remedy: (_, at) =>
      `Give turns_per_hectare in the setup, or working_width, wheel_circumference and the drive's ratio; or write the turns and empty ${at.theCell}.`,
  },
  "area-disagrees": {
    expected: (f) => `about ${f.turns}, the turns that ${f.area} ${f.unit} take by the setup`,
    remedy: (_, at) =>
      `Look which of turns, area and drive is wrong. If the turns are right, empty ${at.theCell} of the area.`,
  },
  "sheet-empty": {
    found: (f) => `an empty sheet "${f.sheet}"`,
    expected: table,
    remedy: (f) =>
      f.others.length === 0
        ? "Check that the workbook was saved, and that it is the right one."
        : `The workbook has other sheets, ${quoted(f.others)}; name the one with the catches.`,
  },
};
