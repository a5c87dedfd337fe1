import { describe, expect, it } from "vitest";
import { checkCatches } from "../../src/data/read-catches.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { csv, logOf, problemsOf, workbook } from "../support/catch-files.ts";

const header = "bin,product,fill,catch,turns,net_kg";
const good = `${header}\n1,wheat,1,1,20,5.89\n`;

function bytes(...parts: readonly (string | readonly number[])[]): Uint8Array {
  const encoder = new TextEncoder();
  return Uint8Array.from(
    parts.flatMap((part) => (typeof part === "string" ? [...encoder.encode(part)] : [...part])),
  );
}

function utf16(text: string, bigEndian: boolean, mark: boolean): Uint8Array {
  const codes = [...(mark ? "\uFEFF" : ""), ...text].map((letter) => letter.charCodeAt(0));
  return Uint8Array.from(
    codes.flatMap((code) => (bigEndian ? [code >> 8, code & 255] : [code & 255, code >> 8])),
  );
}

describe("files that hold nothing", () => {
  it("refuses an empty file", async () => {
    expect(await problemsOf({ name: "catches.csv", bytes: bytes() })).toMatchInlineSnapshot(`
      [
        "catches.csv: found an empty file; needed a first row that names the columns and one row for each catch. Check that the file was saved, and that it is the right one.",
      ]
    `);
  });

  it("refuses a file of blank lines", async () => {
    expect(await problemsOf(csv("", "  ", ""))).toMatchInlineSnapshot(`
      [
        "catches.csv: found an empty file; needed a first row that names the columns and one row for each catch. Check that the file was saved, and that it is the right one.",
      ]
    `);
  });

  it("refuses a header and nothing else", async () => {
    expect(await problemsOf(csv(header, ""))).toMatchInlineSnapshot(`
      [
        "catches.csv: found a header and nothing below it; needed one row for each catch. Write the catches in, and save the file.",
      ]
    `);
  });

  it("refuses rows of separators only", async () => {
    expect(await problemsOf(csv(header, ",,,,,", ",,,,,"))).toHaveLength(1);
  });

  it("refuses an empty list", async () => {
    expect(await problemsOf({ name: "catches.json", text: "[]" })).toMatchInlineSnapshot(`
      [
        "catches.json: found an empty list; needed one entry for each catch. Write the catches in, and save the file.",
      ]
    `);
  });
});

describe("files of another kind", () => {
  it("refuses an ending it does not know", async () => {
    expect(await problemsOf({ name: "catches.pdf", text: good })).toMatchInlineSnapshot(`
      [
        "catches.pdf: found the ending ".pdf"; needed a file that ends in .csv, .tsv, .txt, .xlsx or .json. Save the table as .xlsx or CSV from the program that made it, and give that file; renaming alone does not change the kind.",
      ]
    `);
  });

  it("refuses a name without an ending", async () => {
    expect(await problemsOf({ name: "folder.d/catches", text: good })).toMatchInlineSnapshot(`
      [
        "folder.d/catches: found a name without an ending; needed a file that ends in .csv, .tsv, .txt, .xlsx or .json. Save the table as .xlsx or CSV from the program that made it, and give that file; renaming alone does not change the kind.",
      ]
    `);
  });

  it("says that a .csv is really a picture", async () => {
    const png = bytes([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13], "IHDR");
    expect(await problemsOf({ name: "catches.csv", bytes: png })).toMatchInlineSnapshot(`
      [
        "catches.csv: found a PNG image; needed plain text. Save the table as CSV or .xlsx and give that file.",
      ]
    `);
  });

  it("says that a .csv is really a workbook", async () => {
    const book = workbook({ Sheet1: [["bin"], [1]] });
    expect(await problemsOf({ name: "catches.csv", bytes: book.bytes })).toMatchInlineSnapshot(`
      [
        "catches.csv: found a zip archive, such as an .xlsx workbook; needed plain text. If it is a workbook, let its name end in .xlsx; if not, unpack it and give the table inside.",
      ]
    `);
  });

  it("refuses any other binary file", async () => {
    const binary = bytes([7, 1, 0, 2, 9], "some letters", [0, 5]);
    expect(await problemsOf({ name: "catches.csv", bytes: binary })).toMatchInlineSnapshot(`
      [
        "catches.csv: found a binary file; needed plain text. Give the table itself, saved as CSV, .xlsx or .json from the program that shows it.",
      ]
    `);
  });

  it("says that an .xlsx is no workbook", async () => {
    expect(await problemsOf({ name: "catches.xlsx", text: good })).toMatchInlineSnapshot(`
      [
        "catches.xlsx: found a file that is not a whole .xlsx workbook; needed an .xlsx workbook. Open it in a spreadsheet program and save it as .xlsx without a password, or as CSV.",
      ]
    `);
  });

  it("says that an .xlsx has a password or is an old workbook", async () => {
    const old = bytes([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
    expect(await problemsOf({ name: "catches.xlsx", bytes: old })).toMatchInlineSnapshot(`
      [
        "catches.xlsx: found an old .xls workbook or one with a password; needed an .xlsx workbook. Open it in a spreadsheet program and save it as .xlsx without a password, or as CSV.",
      ]
    `);
  });

  it("refuses a workbook that was cut off", async () => {
    const whole = workbook({ Sheet1: [["bin"], [1]] }).bytes;
    const cut = whole.slice(0, whole.length / 2);
    expect(await problemsOf({ name: "catches.xlsx", bytes: cut })).toMatchInlineSnapshot(`
      [
        "catches.xlsx: found a workbook that breaks off or was damaged on its way; needed a whole .xlsx workbook. Copy or send it again from where it was saved, or save the table as CSV there.",
      ]
    `);
  });
});

describe("letters", () => {
  it("refuses text that is not UTF-8 and names the line", async () => {
    const latin1 = bytes(`${header}\n1,bl`, [0xe9], " dur,1,1,20,5.89\n");
    expect(await problemsOf({ name: "catches.csv", bytes: latin1 })).toMatchInlineSnapshot(`
      [
        "catches.csv, line 2: found letters that are not UTF-8; needed a file saved as UTF-8. Open it in the program that made it and save it as "CSV UTF-8" (or as UTF-8 text), or save it as .xlsx.",
      ]
    `);
  });

  it("reads UTF-8 with a byte order mark", async () => {
    const log = await logOf({ name: "catches.csv", bytes: bytes([0xef, 0xbb, 0xbf], good) });
    expect(log.catches).toHaveLength(1);
    expect(await logOf({ name: "catches.csv", text: `\uFEFF${good}` })).toEqual(log);
  });

  it.each([true, false])("reads UTF-16 with its mark (big-endian: %s)", async (bigEndian) => {
    const text = good.replace("wheat", "blé dur");
    const log = await logOf({ name: "catches.csv", bytes: utf16(text, bigEndian, true) });
    expect(log.catches[0]?.product).toBe("blé dur");
  });

  it("refuses UTF-16 without its mark", async () => {
    expect(
      await problemsOf({ name: "catches.csv", bytes: utf16(good, false, false) }),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv: found what looks like UTF-16 text without its mark; needed plain text. Save the file as UTF-8.",
      ]
    `);
  });
});

describe("size", () => {
  it("refuses a line of more than a million characters and names it", async () => {
    expect(
      await problemsOf({ name: "catches.csv", text: `${good}${"1".repeat(1_000_001)}\n` }),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, line 3: found a line of more than 1000000 characters; needed lines that each hold one catch. Check that it is the file of catches, saved as CSV with a line break after each row.",
      ]
    `);
  });

  it("reads many lines that end in carriage returns only", async () => {
    const note = "x".repeat(1000);
    const rows = Array.from(
      { length: 1200 },
      (_, index) => `1,wheat,1,${index + 1},20,5.89,${note}`,
    );
    const text = [`${header},note`, ...rows].join("\r");
    expect(text.length).toBeGreaterThan(1_000_000);
    expect((await logOf({ name: "catches.csv", text })).catches).toHaveLength(1200);
  });

  it("refuses a file above the limit of its kind", async () => {
    expect(
      await problemsOf({ name: "catches.xlsx", bytes: new Uint8Array(20_000_001) }),
    ).toMatchInlineSnapshot(`
      [
        "catches.xlsx: found a file of 21 MB; needed at most 20 MB for this kind of file. Check that it is the file of catches; if it is, split it by season or by bin.",
      ]
    `);
  });
});

describe("the shape of a CSV", () => {
  it("refuses more cells than columns, guessing at a decimal comma, and reads the rest", async () => {
    expect(
      await problemsOf(csv(header, "1,wheat,1,1,20,5,89", "1,wheat,1,2,0,5.89")),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2: found 7 cells; needed at most 6, one for each column of the header. A comma inside a number or a text splits it in two: put the cell in quotation marks, or use a decimal point.",
        "catches.csv, row 3, column turns: found "0"; needed a number from 0.001 to 1000000, in turns. Correct the figure, or delete the row.",
      ]
    `);
  });

  it("refuses a quotation mark that is not closed", async () => {
    expect(
      await problemsOf(csv(header, "1,wheat,1,1,20,5.89", '1,"wheat,1,2,20,5.93')),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 3: found a quotation mark that is not closed, or text behind a closing one; needed quotation marks in pairs around a whole cell. Look for the mark in this row; delete it, or write it twice ("") if it belongs to the text.",
      ]
    `);
  });

  it("refuses text behind a closing quotation mark", async () => {
    expect(await problemsOf(csv(header, '1,"wheat" old,1,1,20,5.89'))).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2: found a quotation mark that is not closed, or text behind a closing one; needed quotation marks in pairs around a whole cell. Look for the mark in this row; delete it, or write it twice ("") if it belongs to the text.",
      ]
    `);
  });
});

describe("options", () => {
  it("refuses a sheet for a file that has none", async () => {
    await expect(checkCatches(csv(good), { sheet: "May" })).rejects.toThrow(
      new OptionError("sheet", "May", { need: "sheet-of-workbook", facts: {} }),
    );
  });

  it("refuses an option nobody knows", async () => {
    const options: object = { sheeet: "May" };
    await expect(checkCatches(csv(good), options)).rejects.toThrow(
      'Option "sheeet" is "given"; it must be one of sheet, keys, turnsPerHectare.',
    );
  });
});
