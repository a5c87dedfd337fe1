import { describe, expect, it } from "vitest";
import { csv, logOf, problemsOf } from "../support/catch-files.ts";

const names = ["bin", "product", "fill", "catch", "turns", "net_kg", "note"];

function joined(separator: string, ...rows: readonly (readonly string[])[]) {
  return csv(...[names, ...rows].map((row) => row.join(separator)));
}

describe("separators", () => {
  it.each([",", ";", "\t"])("finds %j", async (separator) => {
    const log = await logOf(joined(separator, ["1", "wheat", "1", "1", "20", "5.89", "dry"]));
    expect(log.catches[0]).toMatchObject({ netKg: 5.89, note: "dry" });
  });

  it("finds the semicolon even where texts hold commas", async () => {
    const log = await logOf(joined(";", ["1", "wheat, old", "1", "1", "20", "5,89", "dry, warm"]));
    expect(log.catches[0]).toMatchObject({ product: "wheat, old", netKg: 5.89, note: "dry, warm" });
  });

  it("follows the line that spreadsheets write for one another, and does not count it", async () => {
    const log = await logOf(csv("sep=;", names.join(";"), "1;wheat;1;1;20;5,89;"));
    expect(log.catches[0]?.row).toBe(2);
  });

  it("reads quoted fields with separators, line breaks and marks in them", async () => {
    const log = await logOf(
      csv(
        names.join(","),
        '1,"wheat, old",1,1,20,"5.89","said ""dry""\nand warm"',
        "1,oats,2,1,20,5.9,",
      ),
    );
    expect(log.catches[0]).toMatchObject({ product: "wheat, old", note: 'said "dry" and warm' });
    expect(log.catches[1]?.row).toBe(3);
  });
});

describe("line ends and blank lines", () => {
  it.each(["\n", "\r\n", "\r"])("reads lines that end in %j", async (end) => {
    const text = `${names.join(",")}${end}1,wheat,1,1,20,5.89,dry${end}`;
    const log = await logOf({ name: "catches.csv", text });
    expect(log.catches[0]).toMatchObject({ row: 2, note: "dry" });
  });

  it("counts blank lines as a spreadsheet does", async () => {
    const log = await logOf(
      csv("", names.join(","), "", "1,wheat,1,1,20,5.89,", ",,,,,,", "1,wheat,1,2,20,5.93,"),
    );
    expect(log.catches.map(({ row }) => row)).toEqual([4, 6]);
  });
});

describe("decimal commas", () => {
  it.each([";", "\t"])("are read in files separated by %j", async (separator) => {
    const log = await logOf(joined(separator, ["1", "wheat", "1", "1", "20,5", "5,89", ""]));
    expect(log.catches[0]).toMatchObject({ turns: 20.5, netKg: 5.89 });
  });

  it("are read in quotation marks in comma separated files", async () => {
    const log = await logOf(csv(names.join(","), '1,wheat,1,1,"20,5","5,89",'));
    expect(log.catches[0]).toMatchObject({ turns: 20.5, netKg: 5.89 });
  });

  it("settle what 5,890 means in another row", async () => {
    const log = await logOf(
      joined(
        ";",
        ["1", "wheat", "1", "1", "20", "5,890", ""],
        ["1", "wheat", "1", "2", "20", "5,9", ""],
      ),
    );
    expect(log.catches.map(({ netKg }) => netKg)).toEqual([5.89, 5.9]);
  });

  it("are settled by a leading zero, which no thousands have", async () => {
    const log = await logOf(
      joined(
        ";",
        ["1", "wheat", "1", "1", "20", "5,890", ""],
        ["1", "wheat", "1", "2", "2", "0,589", ""],
      ),
    );
    expect(log.catches.map(({ netKg }) => netKg)).toEqual([5.89, 0.589]);
  });

  it("are not guessed at where nothing settles them", async () => {
    expect(
      await problemsOf(joined(";", ["1", "wheat", "1", "1", "20", "5,890", ""])),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column net_kg: found "5,890"; needed a number that can be read in one way only. Write 5,8900 or 5890, whichever is meant. One such figure as 5,8900 settles the others too.",
      ]
    `);
  });

  it("are not taken for thousands in a file of decimal points", async () => {
    const texts = await problemsOf(csv(names.join(","), '1,wheat,1,1,"1,234",5.89,'));
    expect(texts[0]).toContain("Write 1.234 or 1234, whichever is meant.");
  });

  it("make a point before three digits doubtful too", async () => {
    const texts = await problemsOf(
      joined(
        ";",
        ["1", "wheat", "1", "1", "20", "5,89", ""],
        ["1", "wheat", "1", "2", "1.234", "5,9", ""],
      ),
    );
    expect(texts).toHaveLength(1);
    expect(texts[0]).toContain('found "1.234"');
  });

  it("could be what a point before three digits means, where commas do not separate the cells", async () => {
    for (const separator of [";", "\t"])
      expect(
        await problemsOf(joined(separator, ["1", "wheat", "1", "1", "20", "5.890", ""])),
      ).toEqual([
        'catches.csv, row 2, column net_kg: found "5.890"; needed a number that can be read in one way only. Write 5.8900 or 5890, whichever is meant. One such figure as 5.8900 settles the others too.',
      ]);
  });

  it("do not make 42.050 grams of 42 kg and 50 g where a spreadsheet separates thousands by a point", async () => {
    const rows = [
      "bin;product;fill;catch;turns;net_g",
      "1;wheat;1;1;20;42.050",
      "1;wheat;1;2;20;41.900",
    ];
    const texts = await problemsOf(csv(...rows));
    expect(texts).toHaveLength(2);
    expect(texts[0]).toContain('row 2, column net_g: found "42.050"');
    expect(texts[0]).toContain("Write 42.0500 or 42050, whichever is meant.");
    expect(await problemsOf(csv(...rows, "1;wheat;1;3;20;41870,5"))).toHaveLength(2);
    expect(await problemsOf(csv(...rows, "1;wheat;1;3;20;1.234,5"))).toHaveLength(3);
  });

  it("are not meant by a point that no thousands have, whatever separates the cells", async () => {
    for (const separator of [";", "\t"]) {
      const log = await logOf(
        joined(
          separator,
          ["1", "wheat", "1", "1", "20", "6.42", ""],
          ["1", "wheat", "1", "2", "20", "6.405", ""],
        ),
      );
      expect(log.catches.map(({ netKg }) => netKg)).toEqual([6.42, 6.405]);
    }
  });

  it("are not meant by a point where commas separate the cells", async () => {
    const log = await logOf(joined(",", ["1", "wheat", "1", "1", "20", "5.890", ""]));
    expect(log.catches[0]?.netKg).toBe(5.89);
  });
});
