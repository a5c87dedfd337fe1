import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { appendCatches } from "../../src/data/append/append-catches.ts";
import { importCatches } from "../../src/data/import/import-catches.ts";
import { makeCatch } from "../../src/data/make-catch.ts";
import { checkText } from "../../src/data/read-text.ts";
import { catchesToCsv, rowsToCsv } from "../../src/data/write-csv.ts";

const essentials = { fill: 1, catch: 1, turns: 20, netKg: 5.89 };

describe("names that a spreadsheet would work out", () => {
  it.each([
    "=1+1",
    "+A1",
    "-A1",
    "@SUM(A1)",
    '=cmd|"/c calc"!A0',
    "-",
    "=HYPERLINK(1)",
    "＝1+1",
    "'=1",
  ])("stand as texts in a file, and are read back as they were: %s", (name) => {
    const text = catchesToCsv([makeCatch({ bin: name, product: name, ...essentials })]);
    expect(text).not.toMatch(/(?:^|[,\n"])[=+\-@]/m);
    const read = checkText({ name: "catches.csv", text });
    expect(read.ok && read.value.catches[0]).toMatchObject({ bin: name, product: name });
  });

  it("leave figures with a sign as they are", () => {
    expect(rowsToCsv([{ a: -1.5, b: "-1.5", c: "+3,2", d: "-1e-3" }])).toBe(
      'a,b,c,d\n-1.5,-1.5,"+3,2",-1e-3\n',
    );
  });

  it("come back from an import too, which adds nothing to them", async () => {
    const one = makeCatch({ bin: "=1+1", product: "@oats", ...essentials });
    const text = catchesToCsv([one]);
    const { catches, log } = await importCatches([{ name: "catches.csv", text }]);
    expect(log?.catches[0]).toMatchObject({ bin: "=1+1", product: "@oats" });
    expect(rowsToCsv(catches)).toContain("'=1+1,'@oats");
  });

  it("are written so by what is added to a file, and found again in it", () => {
    const text = catchesToCsv([makeCatch({ bin: "=1+1", product: "@oats", ...essentials })]);
    const added = appendCatches(
      "catches.csv",
      new TextEncoder().encode(text),
      [{ turns: "20", mass: "5.9", unit: null }],
      { takenAt: "2026-03-05" },
    );
    expect(added.ok && added.value.ok && added.value.added).toBe("'=1+1,'@oats,1,2,20,5.9\n");
  });

  it("come back whatever they are", () => {
    const name = fc
      .string({ unit: fc.constantFrom("=", "+", "-", "@", "'", "a", "1", ",", '"', ";") })
      .map((text) => `${text}x`.trim());
    fc.assert(
      fc.property(name, (bin) => {
        const one = makeCatch({ bin, product: "oats", ...essentials });
        const read = checkText({ name: "catches.csv", text: catchesToCsv([one]) });
        expect(read.ok && read.value.catches[0]?.bin).toBe(one.bin);
      }),
    );
  });
});
