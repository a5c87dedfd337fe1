import { describe, expect, it } from "vitest";
import {
  checkedLines,
  readCsv,
  separatorOf,
  splitCells,
  toldSeparator,
} from "../../src/data/csv.ts";
import type { Place } from "../../src/data/issues.ts";

const place: Place = { source: "a.csv", rowKind: "row" };

function table(text: string) {
  const read = readCsv("a.csv", text);
  if (!read.ok) return { issues: read.issues.map(({ problem, row }) => `${problem} ${row}`) };
  const { headers, headerRow, rows, issues, decimalMark, rowKind } = read.value;
  return {
    headers,
    headerRow,
    rows: [...rows].map(({ number, cells }) => [number, ...cells]),
    length: rows.length,
    issues: issues.map(({ problem, row }) => `${problem} ${row}`),
    decimalMark,
    rowKind,
  };
}

describe("a table of text", () => {
  it("has the first row with anything in it for its header, and rows numbered as a spreadsheet does", () => {
    expect(table("\n , \nbin , turns\n\n1,20\n ,\n2,40\n")).toEqual({
      headers: ["bin", "turns"],
      headerRow: 3,
      rows: [
        [5, "1", "20"],
        [7, "2", "40"],
      ],
      length: 2,
      issues: [],
      decimalMark: "only point",
      rowKind: "row",
    });
  });

  it("with quotation marks has the same rows", () => {
    const { rows, decimalMark, headerRow } = table('\n"bin",turns\n"1, left",20\n,\n"2 ""b""",40');
    expect([rows, decimalMark, headerRow]).toEqual([
      [
        [3, "1, left", "20"],
        [5, '2 "b"', "40"],
      ],
      "point",
      2,
    ]);
  });

  it("tells nothing of decimal marks where semicolons or tabs part its cells", () => {
    expect(table("bin;turns\n1;20").decimalMark).toBe("unknown");
    expect(table("bin\tturns\n1\t20").decimalMark).toBe("unknown");
  });

  it("with a cell behind its header is told, unless the cell is blank", () => {
    expect(table("bin,turns\n1,20,,\n1,20,5\n1,20,,6").issues).toEqual([
      "too-many-cells 3",
      "too-many-cells 4",
    ]);
    expect(table("bin,turns\n1,20,,").rows).toEqual([[2, "1", "20", "", ""]]);
    // Also where nothing stands between the separators.
    expect(table("bin,turns\n1,,6").issues).toEqual(["too-many-cells 2"]);
  });

  it("with a cell behind its header may have had a figure cut by a comma, and by no other separator", () => {
    const factsOf = (text: string) => {
      const read = readCsv("a.csv", text);
      return read.ok ? read.value.issues.map(({ facts }) => facts) : null;
    };
    expect(factsOf("bin,turns\n1,20,5")).toEqual([{ cells: 3, columns: 2, comma: true }]);
    expect(factsOf("bin;turns\n1;20;5;6")).toEqual([{ cells: 4, columns: 2, comma: false }]);
  });

  it("names a thousand rows that are too wide, and no more", () => {
    const wide = (count: number) => table(`bin,turns\n${"1,20,5\n".repeat(count)}`).issues?.length;
    expect([wide(999), wide(1_000), wide(1_001)]).toEqual([999, 1_000, 1_000]);
  });

  it("with a stray quotation mark is refused by its row", () => {
    expect(table('bin,turns\n1,20\n"1,20').issues).toEqual(["quote-stray 3"]);
    // The first of several, and beside a guard against formulas too.
    expect(table('bin,turns\n"1"x",20\n"2"x",20').issues).toEqual(["quote-stray 2"]);
    expect(table("bin,note,turns\n1,'=SUM(A1),20\n\"1,x,20").issues).toEqual(["quote-stray 3"]);
  });

  it("with a line that is too long is refused by it", () => {
    expect(table(`bin,turns\n${"1".repeat(1_000_001)},20`).issues).toEqual(["line-too-long 2"]);
  });

  it("of nothing has no header and no rows", () => {
    expect(table(" \n")).toMatchObject({ headers: [], headerRow: 1, rows: [], length: 0 });
  });

  it.each(["\r\n", "\r", "\n"])("may end its lines in %j", (end) => {
    expect(table(["bin,turns", "1,20", "2,40"].join(end)).rows).toEqual([
      [2, "1", "20"],
      [3, "2", "40"],
    ]);
  });

  it("has its guards against formulas taken off", () => {
    expect(table("bin,note,turns\n1,'=SUM(A1),20").rows).toEqual([[2, "1", "=SUM(A1)", "20"]]);
    expect(table('bin,note,turns\n1,"\'=SUM(A1)",20').rows).toEqual([[2, "1", "=SUM(A1)", "20"]]);
  });

  it("keeps rows that begin with any sign but a space, and with a separator where something follows", () => {
    for (const first of ["!", "+", ",20", ":", "-", "~", "é", " 1", "\u00a01"])
      expect(table(`bin,turns\n${first}`).length, first).toBe(1);
    for (const blank of ["", " ", ",", " , ", ",,,"])
      expect(table(`bin,turns\n${blank}`).length, blank).toBe(0);
  });
});

describe("the separator", () => {
  it.each([
    ["bin,turns", ","],
    ["bin;turns", ";"],
    ["bin\tturns", "\t"],
    // By known columns before their number.
    ["bin;turns;a,b,c,d,e", ";"],
    ["a,b;bin", ";"],
    // By their number where none is known, and the comma where nothing tells.
    ["x;y;z,a", ";"],
    ["x", ","],
    ["x,a;y", ","],
    ["\n\n bin;turns", ";"],
  ])("of %j is %j", (text, separator) => {
    expect(separatorOf(text)).toEqual({ separator, body: text });
    // The header of the file before is remembered, and not taken for another's.
    expect(separatorOf("bin\tfill").separator).toBe("\t");
    expect(separatorOf(text).separator).toBe(separator);
  });

  it("may be told in a first line, which is no row", () => {
    expect(toldSeparator("sep=;\nbin;turns")).toEqual({ separator: ";", body: "bin;turns" });
    expect(separatorOf("sep=,\nbin;turns").separator).toBe(",");
    expect(toldSeparator("bin;turns\nsep=;")).toBeNull();
    expect(table("sep=;\nbin;turns\n1;20").rows).toEqual([[2, "1", "20"]]);
  });
});

describe("lines", () => {
  it("are no longer than a million letters", () => {
    const whole = checkedLines(place, `bin\n${"1".repeat(1_000_000)}\nx`);
    expect(whole.ok).toBe(true);
    const long = checkedLines(place, `bin\n${"1".repeat(1_000_001)}\nx`);
    expect(long.ok ? [] : long.issues).toMatchObject([{ problem: "line-too-long", row: 2 }]);
    const last = checkedLines(place, `bin\r\n1\r\n${"1".repeat(1_000_001)}`);
    expect(last.ok ? [] : last.issues).toMatchObject([{ problem: "line-too-long", row: 3 }]);
    const below = checkedLines(place, `\n${"1".repeat(1_000_001)}`);
    expect(below.ok ? [] : below.issues).toMatchObject([{ problem: "line-too-long", row: 2 }]);
  });

  it("may be many, each of them short, where they end in carriage returns only", () => {
    const many = checkedLines(place, "1234567,20\r".repeat(100_000));
    expect(many.ok && many.value === "1234567,20\n".repeat(100_000)).toBe(true);
    const [whole, long] = [1_000_000, 1_000_001].map((letters) =>
      checkedLines(place, `bin\r${"1".repeat(letters)}\r1`),
    );
    expect([whole?.ok, long?.ok]).toEqual([true, false]);
  });

  it("are cut into cells with their numbers, those with nothing in them left out", () => {
    const cut = splitCells(place, "a;b\n;\n\nc", ";");
    expect(cut.ok && cut.value).toEqual([
      { number: 1, cells: ["a", "b"] },
      { number: 4, cells: ["c"] },
    ]);
  });

  it("with a stray quotation mark are cut into nothing, and it is named by its row", () => {
    const cut = splitCells(place, 'a;b\n1;2\n"3;4', ";");
    expect(cut.ok ? [] : cut.issues).toMatchObject([
      { problem: "quote-stray", row: 3, received: '"' },
    ]);
  });
});
