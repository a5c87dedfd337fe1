import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import * as XLSX from "@e965/xlsx";

/**
 * Four invented files of four habits, none of which evencatch reads as it stands. Every figure is made up; the catches in
 * them are those of `catchesMeant`, by which a test tells whether they were read right.
 */
type Cell = string | number | null;
const folder = join(import.meta.dirname, "../data/import/sheets");

/** A page of a book kept in German: titles, two lines of heads, merged cells, means and totals as formulas. */
function book(): Uint8Array {
  const rows: Cell[][] = [
    ["Abdrehbuch Herbst"],
    ["Maschine: Nordlicht", null, null, "Tank: 1"],
    [],
    ["Produkt", "Füllung", "Probe", "Umdr.", "Wägung", null, "Datum", "Bemerkung"],
    [null, null, "Nr.", null, "brutto [kg]", "Tara [kg]", null, null],
    ["Dinkel", 1, 1, 20, 6.72, 0.42, "12.09.2026 7:30 Uhr", null],
    [null, null, 2, 20, 6.78, 0.42, null, "nach Regen"],
    [null, null, 3, 20, "verschüttet", 0.42, null, null],
    [null, null, "Mittel", null, 6.75, null, null, null],
    [null, 2, 1, 20, 6.7, 0.42, "14. September 2026", null],
    [null, null, 2, 40, 13.02, 0.42, null, null],
    ["Summe", null, null, null, 19.72, null, null, null],
  ];
  const sheet = XLSX.utils.aoa_to_sheet(rows);
  sheet["!merges"] = [
    { s: { r: 3, c: 4 }, e: { r: 3, c: 5 } },
    { s: { r: 5, c: 0 }, e: { r: 10, c: 0 } },
    { s: { r: 5, c: 1 }, e: { r: 7, c: 1 } },
  ];
  sheet.E9 = { t: "n", v: 6.75, f: "AVERAGE(E6:E7)" };
  sheet.E12 = { t: "n", v: 19.72, f: "SUM(E10:E11)" };
  return written({
    Tank1: sheet,
    Adressen: XLSX.utils.aoa_to_sheet([
      ["Wer", "Telefon"],
      ["A", "0"],
    ]),
  });
}

/** A workbook with a sheet for each bin, in English, in pounds, with weights that do not say of what. */
function sheetForEachBin(): Uint8Array {
  const head = ["Date", "Crop", "Fill", "Rep", "Revs", "Weight (lb)", "By"];
  const barley: Cell[][] = [
    ["Bin 1, spring"],
    head,
    ["03/04/2026", "barley", "A", 1, 20, 14.1, "K"],
    ['"', "ditto", "A", 2, 20, 14.3, '"'],
    ["05/04/2026", "barley", "B", 1, 20, 14.2, "K"],
    [null, null, null, "Average", null, 14.2, null],
  ];
  const peas: Cell[][] = [
    head,
    ["03/04/2026", "peas", "A", 1, 20, 18.8, "M"],
    ["whenever", "peas", "A", 2, 20, 18.9, "M"],
    head,
    ["04/04/2026", "peas", "A", 3, 40, 37.6, "M"],
  ];
  return written({
    "1": XLSX.utils.aoa_to_sheet(barley),
    "2": XLSX.utils.aoa_to_sheet(peas),
  });
}

/** A workbook with a sheet for each season: two drills whose tanks have the same numbers, figures with their units, and a price. */
function sheetForEachSeason(): Uint8Array {
  const head = ["Drill", "Hopper", "Seed", "Load", "Cranks", "Net wt", "When", "Comments"];
  const merged = (top: number, bottom: number) => ({
    s: { r: top, c: 0 },
    e: { r: bottom, c: 0 },
  });
  const earlier = XLSX.utils.aoa_to_sheet([
    ["Catch tests 2025", null, null, null, null, null, "seed 412 $/t"],
    head,
    ["North", 1, "canola", 1, "30", "1,212 g", "after the rain", null],
    [null, null, null, null, "30", "1,218 g", null, null],
    [null, null, null, 2, "30", "1,240 g", "Apr 30, 2025", null],
    ["South", 1, "canola", 1, "30", "1,315 g", "Apr 28, 2025", null],
    [null, null, null, null, "30", "spilled", null, "wind"],
    [null, null, null, null, "30", "1,309 g", null, null],
    [null, null, null, null, "avg", "1,312 g", null, null],
  ]);
  earlier["!merges"] = [merged(2, 4), merged(5, 7)];
  const later = XLSX.utils.aoa_to_sheet([
    head,
    ["South", 1, "canola", 1, "30", "1,331 g", "May 2, 2026", null],
    ["ditto", '"', '"', '"', "60", "2,655 g", '"', null],
    ["North", 1, "canola", 1, "30", "1,203 g", "May 3, 2026", null],
  ]);
  return written({ "2025": earlier, "2026": later });
}

/** A text file in Windows-1252 with decimal commas, units in the cells, and names written once. */
function oldText(): Uint8Array {
  const lines = [
    "Saatgutprüfung;;;;;",
    "Tank;Kultur;Füllung;Umdrehungen;Nettogewicht;Füllstand",
    "groß;Ackerbohne;1;20 U;5,90 kg;80 %",
    ";;;20 U;5,95 kg;75 %",
    ";;;10 U;2980 g;",
    "Ø;;;;4,94 kg;",
    "klein;Körnermais;1;20 U;4,20 kg;60 %",
    ";;;20 U;4,25 kg;",
    "",
  ];
  return Buffer.from(lines.join("\r\n"), "latin1");
}

function written(sheets: Readonly<Record<string, XLSX.WorkSheet>>): Uint8Array {
  const made = XLSX.utils.book_new();
  for (const [name, sheet] of Object.entries(sheets))
    XLSX.utils.book_append_sheet(made, sheet, name);
  return new Uint8Array(XLSX.write(made, { type: "array", bookType: "xlsx" }) as ArrayBuffer);
}

/** Bin, product, fill, catch, turns and net mass of every catch, by file; the bin with its machine and season where there are several. */
export const catchesMeant: Readonly<
  Record<string, readonly (readonly [string, string, number, number, number, number])[]>
> = {
  "abdrehbuch.xlsx": [
    ["1", "Dinkel", 1, 1, 20, 6.3],
    ["1", "Dinkel", 1, 2, 20, 6.36],
    ["1", "Dinkel", 2, 1, 20, 6.28],
    ["1", "Dinkel", 2, 2, 40, 12.6],
  ],
  "bins.xlsx": [
    ["1", "barley", 1, 1, 20, 14.1 * 0.45359237],
    ["1", "barley", 1, 2, 20, 14.3 * 0.45359237],
    ["1", "barley", 2, 1, 20, 14.2 * 0.45359237],
    ["2", "peas", 1, 1, 20, 18.8 * 0.45359237],
    ["2", "peas", 1, 2, 20, 18.9 * 0.45359237],
    ["2", "peas", 1, 3, 40, 37.6 * 0.45359237],
  ],
  "two-drills.xlsx": [
    ["1/North/2025", "canola", 1, 1, 30, 1.212],
    ["1/North/2025", "canola", 1, 2, 30, 1.218],
    ["1/North/2025", "canola", 2, 1, 30, 1.24],
    ["1/South/2025", "canola", 1, 1, 30, 1.315],
    ["1/South/2025", "canola", 1, 3, 30, 1.309],
    ["1/South/2026", "canola", 1, 1, 30, 1.331],
    ["1/South/2026", "canola", 1, 2, 60, 2.655],
    ["1/North/2026", "canola", 1, 1, 30, 1.203],
  ],
  "saatgut.txt": [
    ["groß", "Ackerbohne", 1, 1, 20, 5.9],
    ["groß", "Ackerbohne", 1, 2, 20, 5.95],
    ["groß", "Ackerbohne", 1, 3, 10, 2.98],
    ["klein", "Körnermais", 1, 1, 20, 4.2],
    ["klein", "Körnermais", 1, 2, 20, 4.25],
  ],
};

export const ownSheets: Readonly<Record<string, () => Uint8Array>> = {
  "abdrehbuch.xlsx": book,
  "bins.xlsx": sheetForEachBin,
  "two-drills.xlsx": sheetForEachSeason,
  "saatgut.txt": oldText,
};

if (process.argv[1] === import.meta.filename)
  for (const [name, made] of Object.entries(ownSheets)) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), made());
  }
