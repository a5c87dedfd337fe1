import type { Phrases } from "../issue-text.ts";
import type { TableProblems, Wanted } from "../problems/table.ts";
import { rowProblems } from "./problems-rows.ts";

const emptySheet = "`evencatch template` writes an empty sheet with the right names.";
const aDate = "a date that exists, year first: 2026-04-12 or 2026-04-12T07:30";

const inUnit = (unit: string | null) => (unit === null ? "" : `, in ${unit}`);

/** What a column may hold. */
function wanted(f: Wanted): string {
  if (f.kind === "text") return "a text";
  return f.kind === "whole"
    ? `a whole number from ${f.from} to ${f.to}${inUnit(f.unit)}`
    : `a number from ${f.from} to ${f.to}${inUnit(f.unit)}`;
}

/** What is said of the columns of a table and of its rows. */
export const tableProblems: Phrases<TableProblems> = {
  "columns-unknown": {
    expected: (f) =>
      `columns named ${f.names.join(", ")} and net_kg (or gross_kg and tare_kg; g, lb and oz also)`,
    remedy: `Name the columns in the first row. ${emptySheet}`,
  },
  "fields-unknown": {
    expected: (f) =>
      `fields named ${f.names.join(", ")} and net_kg (or gross_kg and tare_kg; g, lb and oz also)`,
    remedy: "Use these names in each entry.",
  },
  "column-missing": {
    expected: (f) => `a column named ${f.name}`,
    remedy: (_, at) => `Add ${at.theColumn}. ${emptySheet}`,
  },
  "mass-column-missing": {
    expected: "a mass column with its unit in the name: net_kg, or gross_kg and tare_kg",
    remedy: `Use kg, g, lb or oz in the name, as the scale shows it. ${emptySheet}`,
  },
  "gross-or-tare-missing": {
    expected: (f) => `a ${f.absent} column beside ${f.there}, in the same unit, or a net column`,
    remedy: (f) =>
      `Add ${f.absent}_kg, ${f.absent}_g, ${f.absent}_lb or ${f.absent}_oz; without it the net mass cannot be worked out.`,
  },
  "column-repeated": {
    found: (f) => `"${f.header}" beside "${f.first}", which is the same name`,
    expected: "each name once",
    remedy: (_, at) => `Delete one of the two ${at.column}s, or give it another name.`,
  },
  "column-unit": {
    expected: (f) =>
      f.names.length === 1
        ? `the name ${f.names.join(", ")}`
        : `one of the names ${f.names.join(", ")}`,
    remedy: (_, at) =>
      `Put the unit of the figures in ${at.theColumn}'s name; figures in any other unit must be converted first.`,
  },
  "column-misspelt": {
    expected: (f) => `a known column, and "${f.meant}" is the nearest`,
    remedy: (f, at) =>
      `Rename it to ${f.meant} if that is meant; if it is a ${at.column} of your own, choose a name that is less like it.`,
  },
  "value-missing": {
    expected: wanted,
    remedy: (_, at) => `Fill ${at.theCell} in, or delete ${at.theRow}.`,
  },
  "formula-failed": {
    expected: "a text",
    remedy: (_, at) =>
      `The formula of this ${at.cell} failed: write the text itself, or empty ${at.theCell}.`,
  },
  "not-a-number": {
    expected: wanted,
    remedy: (f, at) =>
      f.required
        ? `Write the figure alone, without unit, spaces or thousands separators, or delete ${at.theRow}.`
        : `Write the figure alone, without unit, spaces or thousands separators, or leave ${at.theCell} empty.`,
  },
  "not-finite": {
    expected: wanted,
    remedy: (f, at) =>
      f.required
        ? `Write the figure itself, or delete ${at.theRow} if it is not known.`
        : `Write the figure itself, or leave ${at.theCell} empty if it is not known.`,
  },
  "out-of-range": {
    expected: wanted,
    remedy: (f, at) =>
      f.required
        ? `Correct the figure, or delete ${at.theRow}.`
        : `Correct the figure, or leave ${at.theCell} empty.`,
  },
  "not-whole": {
    expected: wanted,
    remedy: "Number fills and catches 1, 2, 3 and so on.",
  },
  "decimal-ambiguous": {
    expected: "a number that can be read in one way only",
    remedy: (f) =>
      `Write ${f.decimal} or ${f.thousands}, whichever is meant.${f.settles ? ` One such figure as ${f.decimal} settles the others too.` : ""}`,
  },
  "not-a-date": {
    expected: aDate,
    remedy: (_, at) =>
      `Write it so, or leave ${at.theCell} empty. In a spreadsheet, format ${at.theCell} as a date.`,
  },
  "not-yes-no": {
    expected: "yes, no, true, false, 1, 0, x or nothing",
    remedy: "Write yes to leave the catch out, with the reason beside it; otherwise no.",
  },
  "exclude-missing": {
    expected: "yes or no beside the reason",
    remedy: "Write yes to leave the catch out, or no to keep it.",
  },
  "reason-missing": {
    expected: "the reason why this catch is left out",
    remedy: "Write the reason, such as bag slipped, or let exclude be no.",
  },
  "checked-denied": {
    expected: "what was looked at, in words, or nothing",
    remedy: (_, at) =>
      `Write it, such as weighed again, bag empty; leave ${at.theCell} empty where nobody looked.`,
  },
  "mass-missing": {
    expected: "a net mass, or gross and tare",
    remedy: (_, at) => `Fill in the mass, or delete ${at.theRow}.`,
  },
  "gross-missing": {
    expected: (f) => `the gross mass in ${f.unit} beside the tare mass, or the net mass`,
    remedy: "Write the mass with the container, or the net mass.",
  },
  "tare-missing": {
    expected: (f) => `the tare mass in ${f.unit} beside the gross mass, or the net mass`,
    remedy: "Write the mass of the empty container; 0 if the scale was set to zero with it.",
  },
  "masses-in-two-units": {
    found: (f) => `figures in ${f.units.join(" and ")}`,
    expected: "all masses of a catch in one unit",
    remedy: (_, at) =>
      `Keep what was read off the scale, and empty the ${at.cell}s in the other unit.`,
  },
  "divisions-in-two-units": {
    found: (f) => `figures in ${f.units.join(" and ")}`,
    expected: "one scale division",
    remedy: (_, at) =>
      `Keep what was read off the scale, and empty the ${at.cell}s in the other unit.`,
  },
  "gross-below-tare": {
    expected: (f) => `at least the tare, ${f.tare} ${f.unit}`,
    remedy:
      "Gross is weighed with the container, tare without product: look whether the two were swapped.",
  },
  "net-disagrees": {
    expected: (f) =>
      `${f.worked} ${f.unit}, which is gross ${f.gross} less tare ${f.tare}, give or take ${f.rounding} for rounding`,
    remedy: "Compare the three with what was written down; if net is right, empty gross and tare.",
  },
  "net-not-above-0": {
    found: (f) =>
      f.left === null
        ? `a net mass of ${f.written}`
        : `gross ${f.written}, which leaves a net mass of ${f.left}`,
    expected: "a net mass above 0",
    remedy: (_, at) =>
      `Fill in the mass, or delete ${at.theRow}, or write yes under exclude with the reason.`,
  },
  ...rowProblems,
};
