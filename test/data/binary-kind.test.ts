import { describe, expect, it } from "vitest";
import { binaryProblem, isCompoundFile, isZip } from "../../src/data/binary-kind.ts";
import { decodeText } from "../../src/data/decode.ts";

const bytes = (...values: readonly number[]) => Uint8Array.from(values);
const letters = (count: number) => new Uint8Array(count).fill(0x61);
const withZeros = (count: number, zeros: number) => letters(count).fill(0, 0, zeros);

describe("a file that is not text", () => {
  // Signatures of the formats' own specifications: APPNOTE, MS-CFB, PNG, JFIF, GIF89a, PDF and RFC 1952.
  it.each([
    [[0x50, 0x4b, 3, 4], "zip-archive"],
    [[0xd0, 0xcf, 0x11, 0xe0], "old-workbook"],
    [[0x89, 0x50, 0x4e, 0x47], "image"],
    [[0xff, 0xd8, 0xff], "image"],
    [[0x47, 0x49, 0x46, 0x38], "image"],
    [[0x25, 0x50, 0x44, 0x46], "pdf-document"],
    [[0x1f, 0x8b], "gzip-archive"],
  ] as const)("that begins with %j is known by it, and by all of it", (start, problem) => {
    expect(binaryProblem(bytes(...start, 0x61))?.problem).toBe(problem);
    start.forEach((_, place) => {
      const other = start.map((byte, i) => (i === place ? 0x21 : byte));
      expect(binaryProblem(bytes(...other, 0x61))).toBeNull();
    });
  });

  it("is told a workbook or an archive by the first bytes alone", () => {
    expect([isZip(bytes(0x50, 0x4b, 3, 4)), isZip(bytes(0x50, 0x4b, 3))]).toEqual([true, false]);
    expect(isCompoundFile(bytes(0xd0, 0xcf, 0x11, 0xe0))).toBe(true);
    expect(isCompoundFile(bytes(0x50, 0x4b, 3, 4))).toBe(false);
  });

  it("is text in 16 bits without a mark where two to three of five bytes are zero", () => {
    const kind = (zeros: number) => binaryProblem(withZeros(100, zeros))?.problem ?? null;
    expect([0, 1, 39, 40, 60, 61].map(kind)).toEqual([
      null,
      "binary-file",
      "binary-file",
      "utf16-unmarked",
      "utf16-unmarked",
      "binary-file",
    ]);
  });

  it("is looked at in its first 8 KiB", () => {
    const late = letters(9_000);
    late[8_191] = 0;
    expect(binaryProblem(late)?.problem).toBe("binary-file");
    late[8_191] = 0x61;
    late[8_192] = 0;
    expect(binaryProblem(late)).toBeNull();
  });
});

describe("a text", () => {
  const read = (content: Uint8Array) => {
    const text = decodeText({ name: "a.csv", bytes: content }, "table");
    return text.ok ? text.value : text.issues.map(({ problem, row }) => `${problem} ${row}`);
  };

  it("is read with its mark taken off, in UTF-8 and in UTF-16 of either order", () => {
    expect(read(bytes(0xef, 0xbb, 0xbf, 0xc3, 0xa9))).toBe("é");
    expect(read(bytes(0xff, 0xfe, 0x61, 0, 0xe9, 0))).toBe("aé");
    expect(read(bytes(0xfe, 0xff, 0, 0x61, 0, 0xe9))).toBe("aé");
    expect(decodeText({ name: "a.csv", text: "\uFEFFa" }, "table")).toMatchObject({ value: "a" });
  });

  it("in another code page is refused by its line", () => {
    expect(read(bytes(0xe9, 0x0a, 0x61))).toEqual(["not-utf8 1"]);
    expect(read(bytes(0x61, 0x0a, 0x61, 0x0a, 0xe9))).toEqual(["not-utf8 3"]);
    expect(read(bytes(0x61, 0x0a, 0xe9, 0x0a, 0x61, 0x0a))).toEqual(["not-utf8 2"]);
  });

  it("with nothing in it is refused", () => {
    expect(read(bytes(0x20, 0x0a))).toEqual(["file-empty null"]);
    expect(read(bytes())).toEqual(["file-empty null"]);
    expect(decodeText({ name: "a.csv", text: " \n" }, "table").ok).toBe(false);
  });
});
