import { crc32 } from "./crc32.ts";

/** A file in a zip archive, as its directory describes it. */
export interface ArchiveEntry {
  readonly name: string;
  readonly unpackedBytes: number;
  readonly crc: number;
  readonly deflated: boolean;
  readonly packed: Uint8Array;
}

/**
 * The files of a zip archive from the directory at its end, or null where it is cut short, damaged, encrypted or ambiguous.
 * Only what the directory says is looked at: nothing is unpacked, so that any archive is answered at once.
 *
 * Source: PKWARE .ZIP File Format Specification (APPNOTE) 6.3.10, sections 4.3.7, 4.3.12 to 4.3.16 and 4.5.3.
 */
export function archiveEntries(bytes: Uint8Array): readonly ArchiveEntry[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const directory = directoryIn(view);
    return directory === null ? null : entriesOf(view, directory);
  } catch (error) {
    // Something is said to lie outside the file.
    if (error instanceof RangeError) return null;
    throw error;
  }
}

interface Directory {
  readonly at: number;
  readonly entries: number;
}

const signatures = {
  file: 0x04034b50,
  entry: 0x02014b50,
  end: 0x06054b50,
  end64: 0x06064b50,
  locator64: 0x07064b50,
};
const endBytes = 22;
const locatorBytes = 20;
/** What a 16 or 32 bit field holds when the figure stands in its 64 bit twin. */
const elsewhere16 = 0xffff;
const elsewhere32 = 0xffffffff;

function directoryIn(view: DataView): Directory | null {
  const end = endRecord(view);
  if (end === null) return null;
  const entries = view.getUint16(end + 10, true);
  const at = view.getUint32(end + 16, true);
  if (entries !== elsewhere16 && at !== elsewhere32) return { at, entries };
  const locator = end - locatorBytes;
  if (view.getUint32(locator, true) !== signatures.locator64) return null;
  const end64 = figure64(view, locator + 8);
  if (view.getUint32(end64, true) !== signatures.end64) return null;
  return { at: figure64(view, end64 + 48), entries: figure64(view, end64 + 32) };
}

/** Where the record at the very end begins; a comment of at most 64 kB may follow it. */
function endRecord(view: DataView): number | null {
  const last = view.byteLength - endBytes;
  for (let at = last; at >= Math.max(0, last - elsewhere16); at--) {
    const closes = at + endBytes + view.getUint16(at + 20, true) === view.byteLength;
    if (view.getUint32(at, true) === signatures.end && closes) return at;
  }
  return null;
}

/** Every entry takes this many bytes at least, so that a number of entries can be held against the file's length. */
const leastEntryBytes = 46;

function entriesOf(view: DataView, directory: Directory): readonly ArchiveEntry[] | null {
  if (directory.entries * leastEntryBytes > view.byteLength) return null;
  const found = new Map<string, ArchiveEntry>();
  let at = directory.at;
  for (let count = 0; count < directory.entries; count++) {
    if (view.getUint32(at, true) !== signatures.entry) return null;
    const nameBytes = view.getUint16(at + 28, true);
    const extraBytes = view.getUint16(at + 30, true);
    const entry = entryAt(view, at, nameBytes, extraBytes);
    // Of two files of one name, programs disagree on which counts.
    if (entry === null || found.has(entry.name.toLowerCase())) return null;
    found.set(entry.name.toLowerCase(), entry);
    at += leastEntryBytes + nameBytes + extraBytes + view.getUint16(at + 32, true);
  }
  return [...found.values()];
}

function entryAt(
  view: DataView,
  at: number,
  nameBytes: number,
  extraBytes: number,
): ArchiveEntry | null {
  const encrypted = (view.getUint16(at + 8, true) & 1) === 1;
  const method = view.getUint16(at + 10, true);
  if (encrypted || (method !== 0 && method !== 8)) return null;
  const name = new TextDecoder().decode(part(view, at + leastEntryBytes, nameBytes));
  const inExtra = figures64(view, at + leastEntryBytes + nameBytes, extraBytes);
  const figure = (offset: number) => {
    const small = view.getUint32(at + offset, true);
    return small === elsewhere32 ? inExtra.next().value : small;
  };
  // The order in which the 64 bit figures follow one another.
  const unpackedBytes = figure(24);
  const packedBytes = figure(20);
  const fileAt = figure(42);
  if (unpackedBytes === undefined || packedBytes === undefined || fileAt === undefined) return null;
  if (view.getUint32(fileAt, true) !== signatures.file) return null;
  const contentAt =
    fileAt + 30 + view.getUint16(fileAt + 26, true) + view.getUint16(fileAt + 28, true);
  return {
    name: name.replaceAll("\\", "/").replace(/^\//, ""),
    unpackedBytes,
    crc: view.getUint32(at + 16, true),
    deflated: method === 8,
    packed: part(view, contentAt, packedBytes),
  };
}

/** The 64 bit figures that an entry keeps beside its 32 bit ones. */
function* figures64(view: DataView, from: number, bytes: number): Generator<number, undefined> {
  for (let at = from; at + 4 <= from + bytes; ) {
    const size = view.getUint16(at + 2, true);
    if (view.getUint16(at, true) === 1)
      for (let each = at + 4; each + 8 <= at + 4 + size; each += 8) yield figure64(view, each);
    at += 4 + size;
  }
  return undefined;
}

function figure64(view: DataView, at: number): number {
  return Number(view.getBigUint64(at, true));
}

/** @throws RangeError when it does not lie in the file */
function part(view: DataView, at: number, bytes: number): Uint8Array {
  return new Uint8Array(view.buffer, view.byteOffset + at, checked(view, at, bytes));
}

function checked(view: DataView, at: number, bytes: number): number {
  if (at + bytes > view.byteLength) throw new RangeError("outside the archive");
  return bytes;
}

/**
 * What an entry holds; null where it is damaged. Unpacks no more than the directory says, whatever lies there.
 */
export async function unpacked(entry: ArchiveEntry): Promise<Uint8Array<ArrayBuffer> | null> {
  const content = entry.deflated
    ? await inflated(entry.packed, entry.unpackedBytes)
    : new Uint8Array(entry.packed);
  if (content === null || content.length !== entry.unpackedBytes) return null;
  return crc32(content) === entry.crc ? content : null;
}

/** Null when it comes to more bytes than this, or is no deflated data. */
async function inflated(packed: Uint8Array, most: number): Promise<Uint8Array<ArrayBuffer> | null> {
  const { readable, writable } = new DecompressionStream("deflate-raw");
  const writer = writable.getWriter();
  // What is wrong with the data is told where it is read.
  writer.write(new Uint8Array(packed)).catch(() => {});
  writer.close().catch(() => {});
  const reader = readable.getReader();
  const content = new Uint8Array(most);
  let length = 0;
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      if (length + next.value.length > most) {
        reader.cancel().catch(() => {});
        return null;
      }
      content.set(next.value, length);
      length += next.value.length;
    }
  } catch {
    return null;
  }
  return content.subarray(0, length);
}

/** An archive of these files as they are, without packing: for a library that shall read nothing else. */
export function plainArchive(files: ReadonlyMap<string, Uint8Array>): Uint8Array<ArrayBuffer> {
  const parts: Uint8Array[] = [];
  const entries: Uint8Array[] = [];
  let at = 0;
  for (const [name, content] of files) {
    const named = new TextEncoder().encode(name);
    const about = aboutFile(named, content);
    parts.push(record([[signatures.file, 4], ...about]), named, content);
    entries.push(
      record([
        [signatures.entry, 4],
        [versionNeeded, 2],
        ...about,
        [0, 2], // comment
        [0, 2], // disk
        [0, 6], // attributes
        [at, 4],
      ]),
      named,
    );
    at += 30 + named.length + content.length;
  }
  const directoryBytes = entries.reduce((sum, { length }) => sum + length, 0);
  const end = record([
    [signatures.end, 4],
    [0, 4], // disks
    [files.size, 2],
    [files.size, 2],
    [directoryBytes, 4],
    [at, 4],
    [0, 2], // comment
  ]);
  return joined([...parts, ...entries, end]);
}

const versionNeeded = 20;
const namesInUtf8 = 0x0800;

type Field = readonly [value: number, bytes: number];

/** What the record before a file and its entry in the directory have in common. */
function aboutFile(name: Uint8Array, content: Uint8Array): readonly Field[] {
  return [
    [versionNeeded, 2],
    [namesInUtf8, 2],
    [0, 2], // stored
    [0, 4], // time
    [crc32(content), 4],
    [content.length, 4],
    [content.length, 4],
    [name.length, 2],
    [0, 2], // extra
  ];
}

function record(fields: readonly Field[]): Uint8Array {
  return Uint8Array.from(
    fields.flatMap(([value, bytes]) =>
      Array.from({ length: bytes }, (_, byte) => (byte < 4 ? (value >>> (8 * byte)) & 0xff : 0)),
    ),
  );
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
