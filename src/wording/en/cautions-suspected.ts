import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts } from "./facts.ts";

const against = {
  "other-bins": "what other bins give of this product",
  "other-fills": "what the other fills of this bin give",
  "book-value": "its book value in the setup",
  target: "what the target takes at the drive's setting in the setup",
};

const differ = {
  letter: () => "is one letter from",
  hyphen: () => "differs by a hyphen or a space from",
  number: () => "is the same number as",
  invisible: (signs: string) => `differs by a sign that nobody sees (${signs}) from`,
  "look-alike": (signs: string) => `differs by letters that only look alike (${signs}) from`,
};

const fills = (count: number) => (count === 1 ? "1 fill" : `${count} fills`);

interface NamesAlike extends Facts<"name" | "other" | "signs">, Counts<"fills" | "otherFills"> {
  readonly what: "bin" | "product" | "machine" | "farm";
  readonly differBy: keyof typeof differ;
}

interface Pasted extends Counts<"catches" | "fill" | "catch" | "asCatch">, Facts<never, "asBin"> {
  readonly asFill: FillName;
}

/** Cautions about slips that are suspected: what was found, what it may be, and that nobody changed anything. */
export const cautionsSuspected = {
  "counter-not-reset": (f: Counts<"catches" | "countedOn"> & Facts<"turns">) =>
    `Turns ${f.turns} for about the same mass each time: in ${f.countedOn} of ${f.catches} catches the counter seems to run on from the catch before. If so, write the turns of each catch alone. Nothing was changed.`,
  "bag-not-emptied": (f: Counts<"catches" | "countedOn"> & Facts<"masses">) =>
    `Masses ${f.masses} add up from catch to catch: in ${f.countedOn} of ${f.catches} catches the bag seems to hold the catch before too. If so, write the mass of each catch alone. Nothing was changed.`,
  "net-and-turns-swapped": (f: Counts<"catches"> & Facts<"turns" | "net">) =>
    `Net masses look counted (${f.net}) and turns look weighed (${f.turns}) in all ${f.catches} catches: are the two columns swapped? If so, swap their headers. Nothing was changed.`,
  "delivery-far-off": (
    f: Facts<"times" | "read", "meant"> & { readonly heldAgainst: keyof typeof against },
  ) =>
    `Read as ${f.read}, this delivers ${f.times} times ${against[f.heldAgainst]}.${f.meant === null ? " Check the masses, their unit, the turns, and that figure." : ` Masses in ${f.meant} would do that: are they in ${f.meant}, or is that figure in another unit?`} Nothing was changed.`,
  "name-nearly-another": (f: NamesAlike) =>
    `The ${f.what} "${f.name}" (${fills(f.fills)}) ${differ[f.differBy](f.signs)} "${f.other}" (${fills(f.otherFills)}): the same ${f.what}? If so, spell it in one way; so far they count as two. Nothing was changed.`,
  "pasted-again": (f: Pasted) =>
    `${f.catches === 1 ? "1 catch" : `${f.catches} catches`}, from catch ${f.catch} of fill ${f.fill} on, have the turns and masses of others in the same order, from catch ${f.asCatch} of fill ${f.asFill}${f.asBin === null ? "" : ` of bin ${f.asBin}`} on. Chance hardly does that: were they pasted twice? If so, take one set out. Nothing was changed.`,
  "bins-swapped": (f: Facts<"other" | "here" | "there" | "usual"> & Counts<"fill">) =>
    `In fill ${f.fill} this bin gave ${f.here}, as bin ${f.other} does in its other fills, and bin ${f.other} gave ${f.there}, as this one does (${f.usual}): are the two bins swapped there? Nothing was changed.`,
  "year-looks-wrong": (f: Facts<"year"> & Counts<"fill">) =>
    `Catches of fill ${f.fill} are dated ${f.year}, a year in which none was likely made: is it mistyped? Fills follow one another by their dates, so it may be taken for another than the one in the bin. Nothing was changed.`,
  "fill-spans-seasons": (f: Facts<"first" | "last" | "days"> & Counts<"fill">) =>
    `The catches of fill ${f.fill} lie ${f.days} days apart (${f.first} to ${f.last}): did the numbers of fills begin again? If so, name the season of each catch in a column season. So far all count as one fill. Nothing was changed.`,
  "percent-looks-fraction": (
    f: Facts<"largest" | "times100"> & { readonly column: "moisture" | "bin-level" },
  ) =>
    `Every figure for ${f.column === "moisture" ? "moisture" : "the level of the bin"} is read as ${f.largest} % or less: is ${f.times100} % meant? Then write percent. Nothing was changed.`,
  "share-looks-fraction": (
    f: Facts<"percent" | "times100"> & { readonly seedShare: "germination" | "emergence" },
  ) =>
    `The setup has ${f.percent} % for ${f.seedShare}: is ${f.times100} % meant? Nothing was changed.`,
  "exclusion-not-read": (f: Facts<"header"> & Counts<"catches">) =>
    `The column "${f.header}" marks ${f.catches === 1 ? "1 catch" : `${f.catches} catches`}, and is not read: are they to be left out? If so, call it exclude and give each a reason in a column reason. So far they count. Nothing was changed.`,
  "sheet-hidden": (f: Facts<"sheet">) =>
    `The sheet "${f.sheet}" was read, since it is the first, and it is hidden in the workbook: is it the one that is meant? If not, name the right one (--sheet).`,
  "catches-on-other-sheets": (f: Facts<"sheet" | "others">) =>
    `Only the sheet "${f.sheet}" was read; ${f.others} look like catches too: do they belong to them? If so, read them together with this one (--sheet).`,
  "sheets-passed-over": (f: Facts<"sheet" | "others">) =>
    `Only the sheet "${f.sheet}" was read, and ${f.others} passed over. Name another with --sheet.`,
  "rows-hidden": (f: Counts<"rows" | "first">) =>
    `${f.rows === 1 ? "1 row of the sheet is" : `${f.rows} rows of the sheet are`} hidden (row ${f.first} first), by a filter perhaps, and count all the same: are they meant to? If not, leave them out with a reason (exclude, reason).`,
  "percent-cells": (f: Facts<"header" | "first" | "shown" | "read"> & Counts<"cells">) =>
    `${f.cells === 1 ? "1 cell" : `${f.cells} cells`} under "${f.header}" (${f.first} first) show a percentage: ${f.shown} is read as ${f.read}. If the column is in percent, format it as plain numbers. Nothing was changed.`,
  "formulas-without-value": (f: Facts<"header" | "first"> & Counts<"cells">) =>
    `${f.cells === 1 ? "1 cell" : `${f.cells} cells`} under "${f.header}" (${f.first} first) hold a formula without a value and are read as blank: let a spreadsheet work them out, and save the workbook.`,
  "json-keys-repeated": (f: Facts<"first"> & Counts<"keys" | "line">) =>
    `${f.keys === 1 ? "1 key stands" : `${f.keys} keys stand`} twice in one entry ("${f.first}" first, in line ${f.line}), and the last value counts: which is meant? Nothing was changed.`,
};
