import { deflateRawSync } from "node:zlib";
import { archiveEntries, plainArchive, unpacked } from "../../src/data/archive.ts";
import { crc32 } from "../../src/data/crc32.ts";
import { type SheetCell, workbook } from "./catch-files.ts";

/** Columns and cells that are right, for files of which something else is wrong. */
export const goodHeader = ["bin", "product", "fill", "catch", "turns", "net_kg"] as const;
export const goodRow: readonly SheetCell[] = ["rear", "oats", 1, 1, 20, 5.89];

export function goodRows(count: number): readonly (readonly SheetCell[])[] {
  return Array.from({ length: count }, (_, index) =>
    goodRow.with(3, index + 1).with(5, 5.8 + ((index * 7) % 11) / 100),
  );
}

export function goodWorkbook(rows = 6): Uint8Array {
  return workbook({ Catches: [[...goodHeader], ...goodRows(rows)] }).bytes;
}

export const sheetPart = "xl/worksheets/sheet1.xml";

/** A good workbook with one of its parts changed. */
export async function withPart(
  change: (xml: string) => string,
  part = sheetPart,
  whole = goodWorkbook(),
): Promise<Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const entry of archiveEntries(whole) ?? []) {
    const content = await unpacked(entry);
    if (content === null) throw new Error(`${entry.name} is damaged`);
    files.set(entry.name, content);
  }
  const old = new TextDecoder().decode(files.get(part) ?? new Uint8Array());
  files.set(part, new TextEncoder().encode(change(old)));
  return plainArchive(files);
}

/** A good workbook with the XML of its cells in place of those it has. */
export function withCells(xml: string): Promise<Uint8Array> {
  return withPart((old) =>
    old.replace(/<sheetData>.*<\/sheetData>/s, () => `<sheetData>${xml}</sheetData>`),
  );
}

/** A good workbook whose directory says that its sheet comes to this many bytes. */
export function claiming(bytes: number, whole = goodWorkbook()): Uint8Array {
  const changed = whole.slice();
  const view = new DataView(changed.buffer);
  view.setUint32(directoryEntryOf(changed, sheetPart) + 24, bytes, true);
  return changed;
}

function directoryEntryOf(bytes: Uint8Array, name: string): number {
  const text = Buffer.from(bytes).toString("latin1");
  return text.lastIndexOf(name) - 46;
}

/** An archive of packed files: small on disk, and of any size once it is unpacked. */
export function packedArchive(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, content] of Object.entries(files)) {
    const packed = deflateRawSync(content);
    const about = Buffer.alloc(26);
    about.writeUInt16LE(20, 0);
    about.writeUInt16LE(8, 4);
    about.writeUInt32LE(crc32(content), 10);
    about.writeUInt32LE(packed.length, 14);
    about.writeUInt32LE(content.length, 18);
    about.writeUInt16LE(Buffer.byteLength(name), 22);
    const place = Buffer.alloc(14);
    place.writeUInt32LE(at, 10);
    parts.push(Buffer.from("PK\u0003\u0004", "latin1"), about, Buffer.from(name), packed);
    directory.push(
      Buffer.from("PK\u0001\u0002\u0014\u0000", "latin1"),
      about,
      place,
      Buffer.from(name),
    );
    at += 30 + Buffer.byteLength(name) + packed.length;
  }
  const end = Buffer.alloc(22);
  end.write("PK\u0005\u0006", "latin1");
  end.writeUInt16LE(Object.keys(files).length, 8);
  end.writeUInt16LE(Object.keys(files).length, 10);
  end.writeUInt32LE(Buffer.concat(directory).length, 12);
  end.writeUInt32LE(at, 16);
  return Uint8Array.from(Buffer.concat([...parts, ...directory, end]));
}
