import { deflateRawSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { archiveEntries, plainArchive, unpacked } from "../../src/data/archive.ts";
import { crc32 } from "../../src/data/crc32.ts";
import { present } from "../support/reference.ts";

/*
 * Archives are put together here byte by byte from the tables of PKWARE's .ZIP File Format Specification (APPNOTE) 6.3.10:
 * 4.3.7 local file header, 4.3.12 central directory, 4.3.14 to 4.3.16 end records, 4.5.3 ZIP64 extra field.
 */

const text = (value: string) => new TextEncoder().encode(value);
const field = (bytes: number, value: number) =>
  Array.from({ length: bytes }, (_, i) => Math.floor(value / 256 ** i) % 256);

/** What is put into a record in place of what belongs there. */
interface Oddities {
  readonly flags?: number;
  readonly method?: number;
  readonly crc?: number;
  readonly unpackedBytes?: number;
  readonly packedBytes?: number;
  /** Of the directory alone. */
  readonly extra?: readonly number[];
  readonly fileAt?: number;
  readonly comment?: string;
  readonly localExtra?: readonly number[];
}

interface Member extends Oddities {
  readonly name: string;
  readonly content: string;
  readonly deflated?: boolean;
}

interface EndOddities {
  readonly entries?: number;
  readonly at?: number;
  readonly comment?: string;
  readonly zip64?: boolean;
}

function zipped(members: readonly Member[], end: EndOddities = {}): Uint8Array {
  const files: number[] = [];
  const directory: number[] = [];
  for (const member of members) {
    const name = text(member.name);
    const content = text(member.content);
    const packed = member.deflated ? new Uint8Array(deflateRawSync(content)) : content;
    const at = files.length;
    const common = [
      ...field(2, member.flags ?? 0),
      ...field(2, member.method ?? (member.deflated ? 8 : 0)),
      ...field(4, 0),
      ...field(4, member.crc ?? crc32(content)),
      ...field(4, member.packedBytes ?? packed.length),
      ...field(4, member.unpackedBytes ?? content.length),
      ...field(2, name.length),
    ];
    const localExtra = member.localExtra ?? [];
    files.push(0x50, 0x4b, 3, 4, ...field(2, 20), ...common, ...field(2, localExtra.length));
    files.push(...name, ...localExtra, ...packed);
    const extra = member.extra ?? [];
    const comment = text(member.comment ?? "");
    directory.push(0x50, 0x4b, 1, 2, ...field(2, 20), ...field(2, 20), ...common);
    directory.push(...field(2, extra.length), ...field(2, comment.length));
    directory.push(
      ...field(2, 0),
      ...field(2, 0),
      ...field(4, 0),
      ...field(4, member.fileAt ?? at),
    );
    directory.push(...name, ...extra, ...comment);
  }
  const entries = end.entries ?? members.length;
  const at = end.at ?? files.length;
  const comment = text(end.comment ?? "");
  const end64At = files.length + directory.length;
  const end64 = [
    ...[0x50, 0x4b, 6, 6, ...field(8, 44), ...field(2, 45), ...field(2, 45), ...field(4, 0)],
    ...[...field(4, 0), ...field(8, entries), ...field(8, entries)],
    ...[...field(8, directory.length), ...field(8, at)],
    ...[0x50, 0x4b, 6, 7, ...field(4, 0), ...field(8, end64At), ...field(4, 1)],
  ];
  const last = [
    ...[0x50, 0x4b, 5, 6, ...field(4, 0)],
    ...(end.zip64
      ? [...field(2, 0xffff), ...field(2, 0xffff), ...field(4, 0xffffffff), ...field(4, 0xffffffff)]
      : [
          ...field(2, entries),
          ...field(2, entries),
          ...field(4, directory.length),
          ...field(4, at),
        ]),
    ...field(2, comment.length),
    ...comment,
  ];
  return Uint8Array.from([...files, ...directory, ...(end.zip64 ? end64 : []), ...last]);
}

async function contents(bytes: Uint8Array) {
  const entries = archiveEntries(bytes);
  if (entries === null) return null;
  const found: [string, string | null][] = [];
  for (const entry of entries) {
    const content = await unpacked(entry);
    found.push([entry.name, content === null ? null : new TextDecoder().decode(content)]);
  }
  return found;
}

const two: readonly Member[] = [
  { name: "a.txt", content: "twenty turns" },
  { name: "sheets/b.txt", content: "turns ".repeat(200), deflated: true },
];
const meant = two.map(({ name, content }) => [name, content]);

describe("crc32", () => {
  it("is that of the published check value, and of nothing", () => {
    // CRC-32/ISO-HDLC of the catalogue of parametrised CRC algorithms: check 0xcbf43926.
    expect(crc32(text("123456789")).toString(16)).toBe("cbf43926");
    expect(crc32(text(""))).toBe(0);
  });
});

describe("an archive", () => {
  it("is read as stored and as deflated", async () => {
    expect(await contents(zipped(two))).toEqual(meant);
    const entries = present(archiveEntries(zipped(two)));
    expect(entries.map(({ deflated, unpackedBytes }) => [deflated, unpackedBytes])).toEqual([
      [false, 12],
      [true, 1200],
    ]);
  });

  it("is read from the middle of a larger buffer", async () => {
    const bytes = zipped(two);
    const larger = new Uint8Array(bytes.length + 20).fill(7);
    larger.set(bytes, 10);
    expect(await contents(larger.subarray(10, 10 + bytes.length))).toEqual(meant);
  });

  it("may carry comments and extra fields of any kind", async () => {
    const extra = [...field(2, 0x5455), ...field(2, 5), 1, 2, 3, 4, 5];
    const dressed = two.map((one) => ({
      ...one,
      extra,
      localExtra: extra,
      comment: "from a tablet",
    }));
    expect(await contents(zipped(dressed, { comment: "kept by A" }))).toEqual(meant);
    // A comment of the greatest length there is.
    expect(await contents(zipped(two, { comment: "x".repeat(65_535) }))).toEqual(meant);
  });

  it("is found by the end record that closes the file, and not by one in its comment", async () => {
    const inside = String.fromCharCode(0x50, 0x4b, 5, 6) + "\0".repeat(10);
    expect(await contents(zipped(two, { comment: `${inside} and more words behind it` }))).toEqual(
      meant,
    );
  });

  it("may have its figures in 64 bit, the unpacked length first, then the packed one, then the place", async () => {
    const sixtyFour = two.map((one) => {
      const packed = one.deflated ? deflateRawSync(one.content).length : one.content.length;
      const other = [...field(2, 0x5455), ...field(2, 1), 0];
      return {
        ...one,
        unpackedBytes: 0xffffffff,
        packedBytes: 0xffffffff,
        extra: [
          ...other,
          ...field(2, 1),
          ...field(2, 16),
          ...field(8, one.content.length),
          ...field(8, packed),
        ],
      };
    });
    expect(await contents(zipped(sixtyFour))).toEqual(meant);
    expect(await contents(zipped(two, { zip64: true }))).toEqual(meant);
    const [first] = sixtyFour;
    const placed = {
      ...present(first),
      fileAt: 0xffffffff,
      extra: [...field(2, 1), ...field(2, 24), ...field(8, 12), ...field(8, 12), ...field(8, 0)],
    };
    expect(await contents(zipped([placed]))).toEqual(meant.slice(0, 1));
    // Two of three figures, where the extra field says that no more belong to it.
    const short = [
      ...field(2, 1),
      ...field(2, 16),
      ...field(8, 12),
      ...field(8, 12),
      ...field(8, 0),
    ];
    expect(archiveEntries(zipped([{ ...placed, extra: short }]))).toBeNull();
  });

  it("has names with slashes one way, and none in front", async () => {
    const odd = { name: "/xl\\sheet1.xml", content: "x" };
    expect(await contents(zipped([odd]))).toEqual([["xl/sheet1.xml", "x"]]);
  });

  it("may be empty", async () => {
    expect(await contents(zipped([]))).toEqual([]);
  });

  const a: Member = { name: "a.txt", content: "twenty turns" };
  it.each<[string, Uint8Array]>([
    ["is encrypted", zipped([{ ...a, flags: 1 }])],
    ["is packed another way", zipped([{ ...a, method: 9 }])],
    ["has two files of one name", zipped([a, a])],
    ["has two files whose names differ in case alone", zipped([a, { ...a, name: "A.TXT" }])],
    ["claims one entry more than there is", zipped([a], { entries: 2 })],
    ["claims more entries than have room", zipped([a], { entries: 60_000 })],
    ["has its directory elsewhere", zipped([a], { at: 3 })],
    ["has a file elsewhere", zipped([{ ...a, fileAt: 4 }])],
    ["reaches beyond its end", zipped([{ ...a, packedBytes: 9_999 }])],
    [
      "says that a figure stands beside it, where none does",
      zipped([{ ...a, unpackedBytes: 0xffffffff }]),
    ],
    ["is cut short", zipped([a]).slice(0, -1)],
    ["is followed by something", Uint8Array.from([...zipped([a]), 0])],
    ["is none", text("bin,product,fill")],
    ["is nothing", new Uint8Array()],
  ])("that %s is refused", (_, bytes) => {
    expect(archiveEntries(bytes)).toBeNull();
  });

  it("with another flag is read, as names in UTF-8 are", async () => {
    expect(await contents(zipped([{ ...a, flags: 0x0800, name: "Füllung.txt" }]))).toEqual([
      ["Füllung.txt", "twenty turns"],
    ]);
  });

  it.each<[string, Member]>([
    ["whose checksum is not its own", { ...a, crc: 1 }],
    ["that is shorter than said", { ...a, deflated: true, unpackedBytes: 13 }],
    ["that is longer than said", { ...a, deflated: true, unpackedBytes: 11 }],
    ["stored that is shorter than said", { ...a, unpackedBytes: 13 }],
    ["that is no deflated data", { ...a, method: 8 }],
  ])("has no content of a file %s", async (_, member) => {
    expect(await contents(zipped([member]))).toEqual([["a.txt", null]]);
  });
});

describe("an archive that is written", () => {
  const files = new Map([
    ["Füllung.xml", text("<a/>")],
    ["b/c.xml", text("twenty")],
  ]);

  it("is that of the specification to the byte: stored, names in UTF-8, no time, no attributes", () => {
    const members = [...files].map(([name, content]) => ({
      name,
      content: new TextDecoder().decode(content),
      flags: 0x0800,
    }));
    // "Version made by" of the directory is 2.0 of MS-DOS as is "version needed to extract".
    expect([...plainArchive(files)]).toEqual([...zipped(members)]);
  });

  it("is read back", async () => {
    expect(await contents(plainArchive(files))).toEqual([
      ["Füllung.xml", "<a/>"],
      ["b/c.xml", "twenty"],
    ]);
    expect(await contents(plainArchive(new Map()))).toEqual([]);
  });
});
