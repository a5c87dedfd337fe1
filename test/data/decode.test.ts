import { describe, expect, it } from "vitest";
import { decodeText } from "../../src/data/decode.ts";

const rows = "turns,net_kg\n20,6.36\n";
const name = "log.csv";
const utf8 = (text: string) => new TextEncoder().encode(text);
/** Little-endian or big-endian, with its mark. */
const utf16 = (text: string, big: boolean) =>
  Uint8Array.from(
    [0xfeff, ...[...text].map((letter) => letter.charCodeAt(0))].flatMap((unit) => {
      const [high, low] = [unit >> 8, unit & 0xff];
      return big ? [high, low] : [low, high];
    }),
  );

const textOf = (bytes: Uint8Array) => {
  const read = decodeText({ name, bytes }, "table");
  return read.ok ? read.value : read.issues.map(({ problem, row, facts }) => [problem, row, facts]);
};

describe("the text of a file", () => {
  it("is UTF-8 with or without a mark, or UTF-16 with one", () => {
    expect(textOf(utf8(rows))).toBe(rows);
    expect(textOf(Uint8Array.from([0xef, 0xbb, 0xbf, ...utf8(rows)]))).toBe(rows);
    expect(textOf(utf16(rows, false))).toBe(rows);
    expect(textOf(utf16(rows, true))).toBe(rows);
    const given = decodeText({ name, text: `\uFEFF${rows}` }, "table");
    expect(given).toEqual({ ok: true, value: rows });
  });

  it("is asked for where the file is of another kind, which is named", () => {
    expect(textOf(Uint8Array.from([0x25, 0x50, 0x44, 0x46, ...utf8("-1.7")]))).toEqual([
      ["pdf-document", null, {}],
    ]);
    expect(textOf(Uint8Array.from([1, 2, 0, 3, 4, 5, 6, 7]))).toEqual([["binary-file", null, {}]]);
    expect(textOf(utf16(rows, false).subarray(2))).toEqual([["utf16-unmarked", null, {}]]);
  });

  it("is refused with the line of the first letter in another code", () => {
    const bytes = Uint8Array.from([...utf8("bin,note\n1,dry\n2,na"), 0xdf, ...utf8("\n3,b"), 0xf6]);
    expect(textOf(bytes)).toEqual([["not-utf8", 3, {}]]);
  });

  it("is asked for where there is none", () => {
    expect(textOf(utf8(" \n\t"))).toEqual([["file-empty", null, { wanted: "table" }]]);
    expect(textOf(Uint8Array.from([0xff, 0xfe]))).toEqual([
      ["file-empty", null, { wanted: "table" }],
    ]);
  });
});
