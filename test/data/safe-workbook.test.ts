import { describe, expect, it } from "vitest";
import { archiveEntries, plainArchive, unpacked } from "../../src/data/archive.ts";
import { checkCatches } from "../../src/data/read-catches.ts";
import { problemsOf } from "../support/catch-files.ts";
import {
  claiming,
  goodWorkbook,
  packedArchive,
  sheetPart,
  withCells,
  withPart,
} from "../support/hostile-files.ts";

async function refused(bytes: Uint8Array): Promise<string> {
  const [first = ""] = await problemsOf({ name: "catches.xlsx", bytes });
  return first;
}

const whole = goodWorkbook();

describe("a workbook that is cut short", () => {
  it("is refused at once, wherever it breaks off", async () => {
    for (let cut = 1; cut < whole.length; cut += cut < 300 ? 1 : 97) {
      const text = await refused(whole.slice(0, -cut));
      expect(text).toMatch(/breaks off or was damaged|not a whole \.xlsx workbook/);
    }
  });

  it("says what to do", async () => {
    expect(await refused(whole.slice(0, -100))).toBe(
      "catches.xlsx: found a workbook that breaks off or was damaged on its way; needed a whole .xlsx workbook. Copy or send it again from where it was saved, or save the table as CSV there.",
    );
  });

  it("is refused where a single bit of what is read differs, since a figure may have changed", async () => {
    const [sheet] = (archiveEntries(whole) ?? []).filter(({ name }) => name === sheetPart);
    if (sheet === undefined) throw new Error("there is no sheet");
    const at = sheet.packed.byteOffset - whole.byteOffset;
    for (let byte = 0; byte < sheet.packed.length; byte += 7) {
      const changed = whole.slice();
      changed[at + byte] = (changed[at + byte] ?? 0) ^ 4;
      expect(await refused(changed)).toContain("breaks off or was damaged");
    }
  });
});

describe("a workbook that is more than it seems", () => {
  const types = new TextEncoder().encode("<Types/>");

  it("is refused by the size it states, before it is unpacked", async () => {
    expect(await refused(claiming(300_000_000))).toBe(
      "catches.xlsx: found a workbook that unpacks to 301 MB; needed at most 100 MB. Save the sheet with the catches alone as CSV, and give that file.",
    );
  });

  it("is unpacked no further than the size it states", async () => {
    const files = { "[Content_Types].xml": types, [sheetPart]: new Uint8Array(300_000_000) };
    const bytes = packedArchive(files);
    expect(bytes.length).toBeLessThan(500_000);
    expect(await refused(bytes)).toContain("unpacks to 301 MB");
    expect(await refused(claiming(1_000, bytes))).toContain("breaks off or was damaged");
  });

  it("is refused by the cells it has", async () => {
    const row = `<row>${"<c><v>1</v></c>".repeat(1000)}</row>`;
    expect(await refused(await withCells(row.repeat(1_001)))).toBe(
      "catches.xlsx: found 1001000 cells; needed at most 1000000 cells. Delete the empty rows and columns; if there are that many catches, split the file by season or by bin.",
    );
  });

  it("is refused by the columns it has", async () => {
    const cells = (text: string) => `<c t="str"><v>${text}</v></c>`.repeat(1_000);
    expect(
      await refused(await withCells(`<row>${cells("bin")}</row><row>${cells("1")}</row>`)),
    ).toContain("found 1000 columns; needed at most 500 columns");
  });

  it("is not led by links and formulas over whole sheets", async () => {
    const link = '<hyperlinks><hyperlink ref="A1:XFD1048576" location="A1"/></hyperlinks>';
    const linked = await withPart((xml) => xml.replace("</sheetData>", `</sheetData>${link}`));
    const array = await withPart((xml) =>
      xml.replace(
        "</c></row></sheetData>",
        '<f t="array" ref="A1:XFD1048576">1</f></c></row></sheetData>',
      ),
    );
    for (const bytes of [linked, array]) {
      const check = await checkCatches({ name: "catches.xlsx", bytes });
      expect(check.ok && check.log.catches.length).toBe(6);
    }
    const long = `<f t="shared" si="0">${"A1+".repeat(5_000)}1</f>`;
    expect(await refused(await withCells(`<row><c>${long}<v>1</v></c></row>`))).toContain(
      "breaks off or was damaged",
    );
  });
});

describe("an archive", () => {
  it("is refused where two files have one name, since programs disagree on which counts", async () => {
    const twice = Buffer.from(
      plainArchive(
        new Map([
          ["[Content_Types].xml", new Uint8Array(1)],
          ["[Content_Types].xmk", new Uint8Array(2)],
        ]),
      ),
    )
      .toString("latin1")
      .replaceAll("xmk", "XML");
    expect(archiveEntries(Uint8Array.from(Buffer.from(twice, "latin1")))).toBeNull();
  });

  it("is read back as it was written, and where its figures have 64 bits", async () => {
    const content = new TextEncoder().encode("123456789");
    const plain = plainArchive(new Map([["a/b.xml", content]]));
    const [entry] = archiveEntries(plain) ?? [];
    // The check value of CRC-32 that ITU-T V.42 leads to.
    expect(entry?.crc).toBe(0xcbf43926);
    expect(entry && (await unpacked(entry))).toEqual(content);
    const [wide] = archiveEntries(in64Bits(plain, content.length)) ?? [];
    expect(wide && (await unpacked(wide))).toEqual(content);
  });

  it("is none where more is said than there is room for", () => {
    const plain = plainArchive(new Map([["a", new Uint8Array(3)]]));
    const end = plain.length - 22;
    for (const offset of [10, 16, 17]) {
      const changed = plain.slice();
      changed[end + offset] = 0xf0;
      expect(archiveEntries(changed)).toBeNull();
    }
  });
});

/** The same archive of one file with every figure in its 64 bit field. */
function in64Bits(plain: Uint8Array, length: number): Uint8Array {
  const end = plain.length - 22;
  const view = new DataView(plain.buffer);
  const directory = view.getUint32(end + 16, true);
  const entry = Buffer.from(plain.slice(directory, end));
  for (const at of [20, 24, 42]) entry.writeUInt32LE(0xffffffff, at);
  entry.writeUInt16LE(28, 30);
  const extra = Buffer.alloc(28);
  extra.writeUInt16LE(1, 0);
  extra.writeUInt16LE(24, 2);
  extra.writeBigUInt64LE(BigInt(length), 4);
  extra.writeBigUInt64LE(BigInt(length), 12);
  const end64 = Buffer.alloc(56);
  end64.writeUInt32LE(0x06064b50, 0);
  end64.writeBigUInt64LE(1n, 32);
  end64.writeBigUInt64LE(BigInt(directory), 48);
  const locator = Buffer.alloc(20);
  locator.writeUInt32LE(0x07064b50, 0);
  locator.writeBigUInt64LE(BigInt(end + 28), 8);
  const last = Buffer.from(plain.slice(end));
  last.writeUInt32LE(0xffffffff, 16);
  return Uint8Array.from(
    Buffer.concat([plain.slice(0, directory), entry, extra, end64, locator, last]),
  );
}
