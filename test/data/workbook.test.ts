import * as XLSX from "@e965/xlsx";
import { describe, expect, it } from "vitest";
import { readCatches } from "../../src/data/read-catches.ts";
import {
  bytesOf,
  csv,
  logOf,
  problemsOf,
  type SheetCell,
  workbook,
} from "../support/catch-files.ts";

const header = [
  "bin",
  "product",
  "fill",
  "catch",
  "turns",
  "net_kg",
  "taken_at",
  "exclude",
  "reason",
];
const first: readonly SheetCell[] = [1, "wheat", 1, 1, 20, 5.89, null, false, null];

describe("a workbook", () => {
  it("gives the same catches as the same table in CSV", async () => {
    const rows = [
      [1, "wheat", 1, 1, 20, 5.89, "2026-04-12", "no", ""],
      [1, "wheat", 1, 2, 40, 11.8, "2026-04-12T07:30", "x", "bag tore"],
    ];
    const sheet = await logOf(workbook({ Catches: [header, ...rows] }));
    const text = await logOf(csv(header.join(","), ...rows.map((row) => row.join(","))));
    expect(sheet.catches).toEqual(text.catches);
  });

  it("has the column that says a catch was looked at, as the table in CSV has", async () => {
    const sheet = await logOf(
      workbook({
        A: [
          [...header, "Checked"],
          [...first, "weighed again"],
        ],
      }),
    );
    expect(sheet.catches[0]?.checked).toBe("weighed again");
  });

  it("numbers rows as the sheet does, with blank rows and rows above the header", async () => {
    const log = await logOf(workbook({ A: [[], header, [], first] }));
    expect(log.catches[0]?.row).toBe(4);
  });

  it("reads from the first sheet, or from the one that is named", async () => {
    const file = workbook({
      April: [header, first],
      May: [header, first.with(5, 6.02)],
    });
    expect((await logOf(file)).catches[0]?.netKg).toBe(5.89);
    expect((await logOf(file, { sheet: "May" })).catches[0]?.netKg).toBe(6.02);
  });

  it("takes dates as ISO 8601, whatever their format shows", async () => {
    const log = await logOf(
      workbook({
        A: [
          header,
          first.with(6, new Date(Date.UTC(2026, 3, 12, 7, 30))),
          first.with(3, 2).with(6, new Date(Date.UTC(2026, 1, 28))),
        ],
      }),
    );
    expect(log.catches.map(({ takenAt }) => takenAt)).toEqual([
      "2026-04-12T07:30:00",
      "2026-02-28",
    ]);
  });

  it("counts dates from 1904 where the workbook does", async () => {
    const book = XLSX.utils.book_new();
    const sheet = XLSX.utils.aoa_to_sheet([header, [...first]]);
    sheet.G2 = { t: "n", v: 44662, z: "yyyy-mm-dd" };
    XLSX.utils.book_append_sheet(book, sheet, "A");
    book.Workbook = { WBProps: { date1904: true } };
    const log = await logOf({ name: "old.xlsx", bytes: bytesOf(book) });
    expect(log.catches[0]?.takenAt).toBe("2026-04-12");
  });

  it("takes a time of day for what it is, without the day that the workbook counts from", async () => {
    for (const date1904 of [false, true]) {
      const book = XLSX.utils.book_new();
      const sheet = XLSX.utils.aoa_to_sheet([
        [...header, "clock"],
        [...first, 0],
      ]);
      // 0.285 of 24 hours are 6 hours, 50 minutes and 24 seconds.
      const cell = XLSX.utils.encode_cell({ r: 1, c: header.length });
      sheet[cell] = { t: "n", v: 0.285, z: "hh:mm" };
      XLSX.utils.book_append_sheet(book, sheet, "A");
      book.Workbook = { WBProps: { date1904 } };
      const log = await logOf({ name: "clock.xlsx", bytes: bytesOf(book) });
      expect(log.catches[0]?.extra).toEqual({ clock: "06:50:24" });
    }
  });

  it("drops the dust that formulas leave in the sixteenth digit", async () => {
    const log = await logOf(workbook({ A: [header, first.with(5, 6.01 - 0.44)] }));
    expect(6.01 - 0.44).not.toBe(5.57);
    expect(log.catches[0]?.netKg).toBe(5.57);
  });

  it("reads true and false, and keeps columns of its own as text", async () => {
    const log = await logOf(
      workbook({
        A: [
          [...header, "lot", null],
          [...first.with(7, true).with(8, "tore"), 7, "seen"],
          [...first.with(3, 2), 7, "seen"],
        ],
      }),
    );
    expect(log.catches[0]).toMatchObject({
      leftOut: "tore",
      extra: { lot: "7", "column K": "seen" },
    });
  });

  it("reads decimal commas in text cells", async () => {
    const log = await logOf(workbook({ A: [header, first.with(5, "5,89")] }));
    expect(log.catches[0]?.netKg).toBe(5.89);
  });
});

describe("a workbook that is refused", () => {
  it("does not guess what a point before three digits of a text cell is", async () => {
    const text = [1, "wheat", 1, 1, 20, "42.050", null, false, null] as const;
    const problems = await problemsOf(workbook({ A: [header, text] }));
    expect(problems[0]).toContain("Write 42.0500 or 42050, whichever is meant.");
  });

  it("names the sheets there are", async () => {
    expect(
      await problemsOf(workbook({ April: [header, first], May: [] }), { sheet: "June" }),
    ).toMatchInlineSnapshot(`
      [
        "catches.xlsx: found no sheet named "June"; needed one of the sheets "April", "May". Give the name of the sheet as its tab shows it, or none for the first sheet.",
      ]
    `);
  });

  it("points to the other sheets when the first is empty", async () => {
    expect(
      await problemsOf(workbook({ Cover: [], April: [header, first] })),
    ).toMatchInlineSnapshot(`
      [
        "catches.xlsx: found an empty sheet "Cover"; needed a first row that names the columns and one row for each catch. The workbook has other sheets, "April"; name the one with the catches.",
      ]
    `);
  });

  it("says that an empty workbook is empty", async () => {
    expect(await problemsOf(workbook({ Sheet1: [] }))).toMatchInlineSnapshot(`
      [
        "catches.xlsx: found an empty sheet "Sheet1"; needed a first row that names the columns and one row for each catch. Check that the workbook was saved, and that it is the right one.",
      ]
    `);
  });

  it("names every kind of formula that failed, and reads yes and no", async () => {
    const failures = [
      [0x00, "#NULL!"],
      [0x07, "#DIV/0!"],
      [0x0f, "#VALUE!"],
      [0x17, "#REF!"],
      [0x1d, "#NAME?"],
      [0x24, "#NUM!"],
      [0x2a, "#N/A"],
    ] as const;
    for (const [v, told] of failures) {
      const book = XLSX.utils.book_new();
      const sheet = XLSX.utils.aoa_to_sheet([header, [...first]]);
      sheet.F2 = { t: "e", v };
      XLSX.utils.book_append_sheet(book, sheet, "A");
      const [problem] = await problemsOf({ name: "catches.xlsx", bytes: bytesOf(book) });
      expect(problem).toContain(`column net_kg: found "${told}"`);
    }
    const left = workbook({
      A: [header, first.with(7, true).with(8, "spilled"), first.with(3, 2)],
    });
    const { catches } = await readCatches(left);
    expect(catches.map(({ leftOut }) => leftOut)).toEqual(["spilled", null]);
  });

  it("refuses a number that the spreadsheet took for a date", async () => {
    const turned = first.with(4, new Date(Date.UTC(2026, 4, 10)));
    expect(await problemsOf(workbook({ A: [header, turned] }))).toMatchInlineSnapshot(`
      [
        "catches.xlsx, row 2, column turns: found "2026-05-10"; needed a number from 0.001 to 1000000, in turns. Write the figure alone, without unit, spaces or thousands separators, or delete the row.",
      ]
    `);
  });

  it("refuses a number where a date is needed", async () => {
    expect(
      await problemsOf(workbook({ A: [header, first.with(6, 46124)] })),
    ).toMatchInlineSnapshot(`
      [
        "catches.xlsx, row 2, column taken_at: found "46124"; needed a date that exists, year first: 2026-04-12 or 2026-04-12T07:30. Write it so, or leave the cell empty. In a spreadsheet, format the cell as a date.",
      ]
    `);
  });

  it("refuses a cell whose formula failed", async () => {
    const book = XLSX.utils.book_new();
    const sheet = XLSX.utils.aoa_to_sheet([header, [...first]]);
    sheet.A2 = { t: "e", v: 0x2a };
    sheet.F2 = { t: "e", v: 0x07 };
    XLSX.utils.book_append_sheet(book, sheet, "A");
    expect(await problemsOf({ name: "catches.xlsx", bytes: bytesOf(book) })).toMatchInlineSnapshot(`
      [
        "catches.xlsx, row 2, column bin: found "#N/A"; needed a text. The formula of this cell failed: write the text itself, or empty the cell.",
        "catches.xlsx, row 2, column net_kg: found "#DIV/0!"; needed a number from 0 to 1000000, in kg. Write the figure alone, without unit, spaces or thousands separators, or delete the row.",
      ]
    `);
  });

  it.each(['r="F2000000000"', 'r="ZZZZZ2"'])(
    "refuses a damaged one that speaks of the cell %s, at once",
    async (address) => {
      const whole = workbook({ A: [header, first] }).bytes;
      const archive = XLSX.CFB.read(whole, { type: "buffer" });
      const sheet = XLSX.CFB.find(archive, "/xl/worksheets/sheet1.xml");
      const xml = new TextDecoder().decode(sheet.content).replace('r="F2"', address);
      sheet.content = new TextEncoder().encode(xml);
      sheet.size = sheet.content.length;
      const bytes = new Uint8Array(XLSX.CFB.write(archive, { fileType: "zip", type: "buffer" }));
      expect(await problemsOf({ name: "catches.xlsx", bytes })).toEqual([
        "catches.xlsx: found a file that is not a whole .xlsx workbook; needed an .xlsx workbook. Open it in a spreadsheet program and save it as .xlsx without a password, or as CSV.",
      ]);
    },
  );
});
