import * as XLSX from "@e965/xlsx";
import type { CatchSource } from "../../src/data/source.ts";
import { randomStream } from "../../src/numeric/random.ts";
import type { CautionCode } from "../../src/results/caution.ts";
import { bytesOf, csv, type SheetCell } from "./catch-files.ts";

/** A file of catches and the setup beside it, as a person has them. */
export interface Given {
  readonly source: CatchSource;
  /** null: none. */
  readonly setup: object | null;
}

/** What can be read and answered, and was not meant. */
export interface WrongButAccepted {
  /** What is asked about it. */
  readonly code: CautionCode;
  readonly wrong: Given;
  /** The same as it was meant; nothing is asked about it under this code. */
  readonly meant: Given;
}

/** One catch of a table, as somebody writes it. */
export interface Row {
  readonly bin: string;
  readonly product: string;
  readonly fill: number;
  readonly catch: number;
  readonly turns: number;
  readonly net: number;
  readonly date: string;
}

const header = "bin,product,fill,catch,turns,net_kg,taken_at";

export function fileOf(rows: readonly Row[], head = header): CatchSource {
  const lines = rows.map((row) =>
    [row.bin, row.product, row.fill, row.catch, row.turns, row.net, row.date].join(","),
  );
  return csv(head, ...lines);
}

interface Plan {
  readonly bin?: string;
  readonly product?: string;
  readonly fills?: number;
  readonly firstFill?: number;
  readonly catches?: number;
  /** kg a turn. */
  readonly delivery?: number;
  readonly seed?: number;
}

/** Fills a week apart that differ by 1 %, catches of 20 and 40 turns that scatter by 1 %, on a scale that shows 10 g. */
export function rowsOf(plan: Plan = {}): readonly Row[] {
  const { bin = "1", product = "wheat", fills = 3, firstFill = 1, catches = 4 } = plan;
  const stream = randomStream(plan.seed ?? 20_260_401);
  return Array.from({ length: fills }, (_, f) => {
    const ofFill = (plan.delivery ?? 0.3) * (1 + 0.01 * stream.normal());
    return Array.from({ length: catches }, (_, c): Row => {
      const turns = c % 2 === 0 ? 20 : 40;
      return {
        bin,
        product,
        fill: firstFill + f,
        catch: c + 1,
        turns,
        net: hundredths(ofFill * turns * (1 + 0.01 * stream.normal())),
        date: new Date(Date.UTC(2026, 2, 2 + 7 * (firstFill + f), 7, 5 * c))
          .toISOString()
          .slice(0, 16),
      };
    });
  }).flat();
}

export function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}

/** Rows with some of their fields changed. */
export function changed(
  rows: readonly Row[],
  change: (row: Row, index: number) => Partial<Row>,
): readonly Row[] {
  return rows.map((row, i) => ({ ...row, ...change(row, i) }));
}

function given(rows: readonly Row[], setup: object | null = null): Given {
  return { source: fileOf(rows), setup };
}

/** The newest fill of some rows changed, each catch with those of its fill before it. */
function lastFill(
  rows: readonly Row[],
  change: (row: Row, before: readonly Row[]) => Partial<Row>,
): readonly Row[] {
  const last = Math.max(...rows.map(({ fill }) => fill));
  return changed(rows, (row) =>
    row.fill === last
      ? change(
          row,
          rows.filter((one) => one.fill === last && one.catch < row.catch),
        )
      : {},
  );
}

const sum = (figures: readonly number[]) => figures.reduce((one, other) => one + other, 0);

function turnsCountedOn(): WrongButAccepted {
  const rows = changed(rowsOf(), (row) => ({
    turns: 20,
    net: row.turns === 20 ? row.net : hundredths(row.net / 2),
  }));
  const wrong = lastFill(rows, (row, before) => ({
    turns: row.turns + sum(before.map(({ turns }) => turns)),
  }));
  return { code: "counter-not-reset", wrong: given(wrong), meant: given(rows) };
}

function turnsCountedOnOverTwoLevels(): WrongButAccepted {
  const rows = rowsOf({ fills: 1 });
  const wrong = lastFill(rows, (row, before) => ({
    turns: row.turns + sum(before.map(({ turns }) => turns)),
  }));
  return { code: "counter-not-reset", wrong: given(wrong), meant: given(rows) };
}

function bagFilledOn(): WrongButAccepted {
  const rows = rowsOf();
  const wrong = lastFill(rows, (row, before) => ({
    net: hundredths(row.net + sum(before.map(({ net }) => net))),
  }));
  return { code: "bag-not-emptied", wrong: given(wrong), meant: given(rows) };
}

function bagFilledOnAtEqualTurns(): WrongButAccepted {
  const rows = changed(rowsOf({ fills: 1, catches: 3, delivery: 0.12 }), (row) =>
    row.turns === 20 ? {} : { turns: 20, net: hundredths(row.net / 2) },
  );
  const wrong = lastFill(rows, (row, before) => ({
    net: hundredths(row.net + sum(before.map(({ net }) => net))),
  }));
  return { code: "bag-not-emptied", wrong: given(wrong), meant: given(rows) };
}

const pound = 0.453_592_37;

/** The setup of bin 1 with some more of its fields. */
function bin1(fields: object, machine: object = {}): object {
  return { ...machine, bins: [{ bin: "1", ...fields }] };
}

function inUnit(rows: readonly Row[], kg: number, decimals = 2): readonly Row[] {
  return changed(rows, ({ net }) => ({ net: Number((net / kg).toFixed(decimals)) }));
}

function poundsBesideBookValue(): WrongButAccepted {
  const rows = rowsOf();
  const setup = bin1({ book_value: { value: 0.34, unit: "kg/turn" } });
  return {
    code: "delivery-far-off",
    wrong: given(inUnit(rows, pound), setup),
    meant: given(rows, setup),
  };
}

function poundsBesideTargetAndDrive(): WrongButAccepted {
  const rows = rowsOf();
  const setup = bin1({ target_rate: { value: 120, unit: "kg/ha" }, turns_per_hectare: 390 });
  return {
    code: "delivery-far-off",
    wrong: given(inUnit(rows, pound), setup),
    meant: given(rows, setup),
  };
}

function poundsBesideTargetAndRatio(): WrongButAccepted {
  const rows = rowsOf();
  const setup = bin1(
    {
      target_rate: { value: 120, unit: "kg/ha" },
      drive: { kind: "ground-wheel", ratio: 0.77 },
    },
    {
      cart: {
        working_width: { value: 9, unit: "m" },
        wheel_circumference: { value: 2.2, unit: "m" },
      },
    },
  );
  return {
    code: "delivery-far-off",
    wrong: given(inUnit(rows, pound), setup),
    meant: given(rows, setup),
  };
}

function oneBinInPounds(): WrongButAccepted {
  const bins = ["1", "2", "3"].map((bin, i) => rowsOf({ bin, seed: i + 1 }));
  const wrong = bins.map((rows, i) => (i === 1 ? inUnit(rows, pound) : rows));
  return { code: "delivery-far-off", wrong: given(wrong.flat()), meant: given(bins.flat()) };
}

function oneFillInPounds(): WrongButAccepted {
  const rows = rowsOf({ fills: 4 });
  const wrong = lastFill(rows, ({ net }) => ({ net: hundredths(net / pound) }));
  return { code: "delivery-far-off", wrong: given(wrong), meant: given(rows) };
}

function gramsAsKilograms(): WrongButAccepted {
  const rows = rowsOf({ product: "canola", delivery: 0.008 });
  return {
    code: "unit-looks-wrong",
    wrong: given(inUnit(rows, 0.001, 0)),
    meant: given(rows),
  };
}

function kilogramsAsGrams(): WrongButAccepted {
  const rows = rowsOf({ delivery: 0.55 });
  const inGrams = (some: readonly Row[]): Given => ({
    source: fileOf(some, header.replace("net_kg", "net_g")),
    setup: null,
  });
  return {
    code: "unit-looks-wrong",
    wrong: inGrams(rows),
    meant: inGrams(inUnit(rows, 0.001, 0)),
  };
}

function columnsSwapped(): WrongButAccepted {
  const rows = rowsOf();
  const wrong = changed(rows, ({ turns, net }) => ({ turns: net, net: turns }));
  return { code: "net-and-turns-swapped", wrong: given(wrong), meant: given(rows) };
}

/** Bin or product called by one name, and by another in the newest fill; meant: always by the first. */
function calledTwice(what: "bin" | "product", name: string, other: string): WrongButAccepted {
  const rows = changed(rowsOf({ fills: 6 }), () => ({ [what]: name }));
  const wrong = lastFill(rows, () => ({ [what]: other }));
  return { code: "name-nearly-another", wrong: given(wrong), meant: given(rows) };
}

/** One row of the newest fill under a misspelt name, the others under the right one. */
function misspeltInOneRow(): WrongButAccepted {
  const rows = changed(rowsOf(), () => ({ bin: "front" }));
  const wrong = lastFill(rows, (row) => (row.catch === 3 ? { bin: "frnt" } : {}));
  return { code: "name-nearly-another", wrong: given(wrong), meant: given(rows) };
}

/** Rows again, as fills that come after. */
function again(rows: readonly Row[], later: number): readonly Row[] {
  return changed(rows, ({ fill }) => ({ fill: fill + later }));
}

function fillPastedAgain(): WrongButAccepted {
  const rows = rowsOf({ fills: 4 });
  const second = rows.filter(({ fill }) => fill === 2);
  return {
    code: "pasted-again",
    wrong: given([...rows, ...again(second, 3)]),
    meant: given(rows),
  };
}

function catchesPastedAgain(): WrongButAccepted {
  const rows = rowsOf({ fills: 1, catches: 5 });
  const wrong = [...rows, ...changed(rows, (row) => ({ catch: row.catch + 5 }))];
  return { code: "pasted-again", wrong: given(wrong), meant: given(rows) };
}

function filePastedAgain(): WrongButAccepted {
  const rows = ["1", "2", "3"].flatMap((bin, i) => rowsOf({ bin, fills: 1, catches: 3, seed: i }));
  return {
    code: "pasted-again",
    wrong: given([...rows, ...again(rows, 1)]),
    meant: given(rows),
  };
}

/** As many bins as deliveries, each with four fills. */
function bins(...deliveries: readonly number[]): readonly Row[] {
  return deliveries.flatMap((delivery, i) =>
    rowsOf({ bin: `${i + 1}`, fills: 4, delivery, seed: i + 1 }),
  );
}

function twoBinsSwapped(): WrongButAccepted {
  const rows = bins(0.3, 0.36);
  const wrong = lastFill(rows, ({ bin }) => ({ bin: bin === "1" ? "2" : "1" }));
  return { code: "bins-swapped", wrong: given(wrong), meant: given(rows) };
}

/** An early fill dated in another year. */
function datedIn(year: string): WrongButAccepted {
  const rows = rowsOf();
  const wrong = changed(rows, ({ fill, date }) =>
    fill === 2 ? { date: date.replace("2026", year) } : {},
  );
  return { code: "year-looks-wrong", wrong: given(wrong), meant: given(rows) };
}

/** Last year's fills and this year's, both numbered from 1, and no season named. */
function numbersBeginAgain(): WrongButAccepted {
  const rows = rowsOf({ fills: 2, catches: 3 });
  const wrong = [
    ...changed(rows, ({ date }) => ({ date: date.replace("2026", "2025") })),
    ...changed(rowsOf({ fills: 2, catches: 3, seed: 7 }), (row) => ({ catch: row.catch + 3 })),
  ];
  return { code: "fill-spans-seasons", wrong: given(wrong), meant: given(rows) };
}

/** Rows with one more column. */
function withColumn(
  rows: readonly Row[],
  name: string,
  cell: (row: Row, index: number) => string,
): CatchSource {
  const lines = rows.map((row, i) => [...Object.values(row), cell(row, i)].join(","));
  return csv(`${header},${name}`, ...lines);
}

function columnAsFraction(name: string, fraction: number): WrongButAccepted {
  const rows = rowsOf();
  const file = (value: number) => ({
    source: withColumn(rows, name, () => `${value}`),
    setup: null,
  });
  return {
    code: "percent-looks-fraction",
    wrong: file(fraction),
    meant: file(100 * fraction),
  };
}

function germinationAsFraction(): WrongButAccepted {
  const rows = rowsOf();
  const setup = (percent: number) =>
    bin1({ seed: { thousand_kernel_mass_g: 38, germination_percent: percent } });
  return {
    code: "share-looks-fraction",
    wrong: given(rows, setup(0.95)),
    meant: given(rows, setup(95)),
  };
}

function excludedUnder(name: string): WrongButAccepted {
  const rows = rowsOf();
  const file = (mark: string) => ({
    source: withColumn(rows, name, (_, i) => (i === 5 ? mark : "")),
    setup: null,
  });
  return { code: "exclusion-not-read", wrong: file("yes"), meant: file("no") };
}

/** The newest fill with every catch left out; one that was spilled has no mass. */
function newestFillExcluded(mass: "weighed" | "spilled"): WrongButAccepted {
  const rows = rowsOf();
  const file = (out: boolean) => {
    const lines = rows.map((row) => {
      const left = out && row.fill === 3;
      const cells = left && mass === "spilled" ? { ...row, net: "" } : row;
      return [...Object.values(cells), ...(left ? ["yes", "spilled"] : ["", ""])].join(",");
    });
    return { source: csv(`${header},exclude,reason`, ...lines), setup: null };
  };
  return { code: "newest-fill-left-out", wrong: file(true), meant: file(false) };
}

/** A workbook of these sheets, and what is done to it before it is written. */
function bookOf(
  sheets: Readonly<Record<string, readonly (readonly SheetCell[])[]>>,
  change: (book: XLSX.WorkBook) => void = () => undefined,
): Given {
  const book = XLSX.utils.book_new();
  for (const [name, rows] of Object.entries(sheets))
    XLSX.utils.book_append_sheet(book, XLSX.utils.aoa_to_sheet(rows.map((row) => [...row])), name);
  change(book);
  return { source: { name: "catches.xlsx", bytes: bytesOf(book) }, setup: null };
}

function sheetOf(rows: readonly Row[]): readonly (readonly SheetCell[])[] {
  return [header.split(","), ...rows.map((row) => Object.values(row))];
}

const notes = [["Sheet of notes"], ["nothing else"]];

function hiddenFirstSheet(): WrongButAccepted {
  const sheets = { old: sheetOf(rowsOf()), notes };
  const hide = (book: XLSX.WorkBook) => {
    book.Workbook = { Sheets: [{ Hidden: 1 }, { Hidden: 0 }] };
  };
  return { code: "sheet-hidden", wrong: bookOf(sheets, hide), meant: bookOf(sheets) };
}

function moreCatchesOnOtherSheet(): WrongButAccepted {
  const sheet = sheetOf(rowsOf());
  return {
    code: "catches-on-other-sheets",
    wrong: bookOf({ March: sheet, April: sheetOf(rowsOf({ firstFill: 4, seed: 5 })) }),
    meant: bookOf({ March: sheet, notes }),
  };
}

function sheetsPassedOver(): WrongButAccepted {
  const sheet = sheetOf(rowsOf());
  return {
    code: "sheets-passed-over",
    wrong: bookOf({ March: sheet, notes }),
    meant: bookOf({ March: sheet }),
  };
}

function filteredRows(): WrongButAccepted {
  const sheets = { March: sheetOf(rowsOf()) };
  const filter = ({ Sheets: { March } }: XLSX.WorkBook) => {
    if (March !== undefined) March["!rows"] = [{}, {}, { hidden: true }, {}, { hidden: true }];
  };
  return { code: "rows-hidden", wrong: bookOf(sheets, filter), meant: bookOf(sheets) };
}

function percentCells(): WrongButAccepted {
  const sheet = (value: number) => {
    const [head = [], ...rows] = sheetOf(rowsOf());
    return { March: [[...head, "moisture_pct"], ...rows.map((row) => [...row, value])] };
  };
  const format = ({ Sheets: { March } }: XLSX.WorkBook) => {
    for (let row = 2; row < 14; row++) {
      const cell: XLSX.CellObject | undefined = March?.[`H${row}`];
      if (cell !== undefined) cell.z = "0.0%";
    }
  };
  return {
    code: "percent-cells",
    wrong: bookOf(sheet(0.135), format),
    meant: bookOf(sheet(13.5)),
  };
}

/** A mark that a formula would have made, had anybody worked it out. */
function formulaWithoutValue(): WrongButAccepted {
  const [head = [], ...rows] = sheetOf(rowsOf());
  const sheets = {
    March: [
      [...head, "exclude", "reason"],
      ...rows.map((row, i) => [...row, i === 5 ? "yes" : "no", i === 5 ? "spilled" : ""]),
    ],
  };
  const meant = bookOf(sheets);
  const bytes = "bytes" in meant.source ? meant.source.bytes : new Uint8Array();
  const parts = XLSX.CFB.read(bytes, { type: "array" });
  const part = XLSX.CFB.find(parts, "/xl/worksheets/sheet1.xml");
  if (part === null) throw new Error("the workbook has no sheet");
  const xml = new TextDecoder().decode(Uint8Array.from(part.content as Uint8Array));
  const unworked = xml
    .replace(/<c r="H7".*?<\/c>/, '<c r="H7"><f>IF(F7&gt;9,"yes","no")</f></c>')
    .replace(/<c r="I7".*?<\/c>/, "");
  part.content = new TextEncoder().encode(unworked);
  const written = new Uint8Array(XLSX.CFB.write(parts, { type: "array", fileType: "zip" }));
  return {
    code: "formulas-without-value",
    wrong: { source: { name: "catches.xlsx", bytes: written }, setup: null },
    meant,
  };
}

function keyTwiceInJson(): WrongButAccepted {
  const rows = rowsOf().map(({ net, date, ...row }) => ({ ...row, net_kg: net, taken_at: date }));
  const text = JSON.stringify(rows, null, 1);
  const file = (json: string) => ({ source: { name: "catches.json", text: json }, setup: null });
  return {
    code: "json-keys-repeated",
    wrong: file(text.replace('"turns": 20,', '"turns": 40,\n"turns": 20,')),
    meant: file(text),
  };
}

/** Cases by name: each an input that is read without complaint, and the same as it was meant. */
export const wrongButAccepted = {
  turnsCountedOn,
  turnsCountedOnOverTwoLevels,
  bagFilledOn,
  bagFilledOnAtEqualTurns,
  poundsBesideBookValue,
  poundsBesideTargetAndDrive,
  poundsBesideTargetAndRatio,
  oneBinInPounds,
  oneFillInPounds,
  gramsAsKilograms,
  kilogramsAsGrams,
  columnsSwapped,
  misspeltInOneRow,
  fillPastedAgain,
  catchesPastedAgain,
  filePastedAgain,
  twoBinsSwapped,
  year2062: () => datedIn("2062"),
  year0000: () => datedIn("0000"),
  year9999: () => datedIn("9999"),
  yearLongBefore: () => datedIn("2006"),
  numbersBeginAgain,
  moistureAsFraction: () => columnAsFraction("moisture_pct", 0.135),
  binLevelAsFraction: () => columnAsFraction("bin_level_pct", 0.8),
  germinationAsFraction,
  newestFillWeighedAndExcluded: () => newestFillExcluded("weighed"),
  newestFillSpilled: () => newestFillExcluded("spilled"),
  hiddenFirstSheet,
  moreCatchesOnOtherSheet,
  sheetsPassedOver,
  filteredRows,
  percentCells,
  formulaWithoutValue,
  keyTwiceInJson,
  excludedUnderLeaveOut: () => excludedUnder("leave_out"),
  excludedUnderIgnore: () => excludedUnder("ignore"),
  excludedUnderAuslassen: () => excludedUnder("auslassen"),
  binMisspelt: () => calledTwice("bin", "front", "frnt"),
  productMisspelt: () => calledTwice("product", "barley", "barely"),
  zeroWidthSpace: () => calledTwice("bin", "front", "front\u200b"),
  lookAlikeLetter: () => calledTwice("product", "oats", "o\u0430ts"),
  hyphenLeftOut: () => calledTwice("bin", "front-left", "front left"),
  leadingZero: () => calledTwice("bin", "1", "01"),
  trailingPointZero: () => calledTwice("bin", "1", "1.0"),
} satisfies Readonly<Record<string, () => WrongButAccepted>>;
