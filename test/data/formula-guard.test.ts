import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCatch } from "../../src/data/make-catch.ts";
import { checkText } from "../../src/data/read-text.ts";
import { catchesToCsv, rowsToCsv } from "../../src/data/write-csv.ts";

const essentials = { fill: 1, catch: 1, turns: 20, netKg: 5.89 };

describe("names that a spreadsheet would work out", () => {
  it.each(["=1+1", "+A1", "-A1", "@SUM(A1)", '=cmd|"/c calc"!A0', "-", "=HYPERLINK(1)"])(
    "stand as texts in a file, and are read back as they were: %s",
    (name) => {
      const text = catchesToCsv([makeCatch({ bin: name, product: name, ...essentials })]);
      expect(text).not.toMatch(/(?:^|[,\n"])[=+\-@]/m);
      const read = checkText({ name: "catches.csv", text });
      expect(read.ok && read.value.catches[0]).toMatchObject({ bin: name, product: name });
    },
  );

  it("leave figures with a sign as they are", () => {
    expect(rowsToCsv([{ a: -1.5, b: "-1.5", c: "+3,2" }])).toBe('a,b,c\n-1.5,-1.5,"+3,2"\n');
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
