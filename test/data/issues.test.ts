import { describe, expect, it } from "vitest";
import { checkCatches, readCatches } from "../../src/data/read-catches.ts";
import { DataError } from "../../src/errors/errors.ts";
import { csv, problemsOf } from "../support/catch-files.ts";

const header = "bin,product,fill,catch,turns,net_kg";

function problems(...rows: readonly string[]): Promise<string[]> {
  return problemsOf(csv(header, ...rows));
}

describe("the problems of a file", () => {
  it("lists every problem of the file in order of rows", async () => {
    const rows = ["1,wheat,1,1,0,5.89", "1,wheat,1,2,20,", "1,wheat,1,2,20,5.89"];
    const check = await checkCatches(csv(header, ...rows));
    expect(check.ok ? [] : check.issues.map(({ row, code }) => `${row} ${code}`)).toEqual([
      "2 out-of-range",
      "3 value-missing",
      "4 duplicate-catch",
    ]);
  });

  it("prints those that are the same but for their row as one, with all its rows", async () => {
    const rows = Array.from({ length: 25 }, (_, index) => `1,wheat,1,1,20,${6 + index / 100}`);
    const problems = await readCatches(csv(header, "1,wheat,1,1,20,5.89", ...rows)).catch(String);
    expect(problems).toContain(
      "25 problems\ncatches.csv, rows 3–27 (25 times), column catch: found catch 1 of bin 1, wheat, fill 1 again, first in row 2;",
    );
  });

  it("prints twenty kinds of problem, says how many more there are, and keeps them all", async () => {
    const rows = Array.from(
      { length: 25 },
      (_, index) => `1,wheat,1,${index + 1},20,5.89\n1,wheat,1,${index + 1},20,5.89`,
    );
    const error = await readCatches(csv(header, ...rows)).catch((thrown: unknown) => thrown);
    if (!(error instanceof DataError)) throw new Error("no DataError");
    const lines = error.message.split("\n");
    expect(lines[0]).toBe("catches.csv: 25 problems");
    expect(lines).toHaveLength(22);
    expect(lines.at(-1)).toBe("and 5 more");
    expect(error.issues).toHaveLength(25);
  });

  it("gives row, column, received, expected and remedy apart as well, and the facts for other languages", async () => {
    const check = await checkCatches(
      csv("Bin,Product,Fill,Catch,Turns,Net KG", "1,wheat,1,1,-2,5"),
    );
    expect(check.ok ? null : check.issues[0]).toMatchInlineSnapshot(`
      {
        "code": "out-of-range",
        "column": "Turns",
        "expected": "a number from 0.001 to 1000000, in turns",
        "facts": {
          "from": 0.001,
          "kind": "number",
          "required": true,
          "to": 1000000,
          "unit": "turns",
        },
        "problem": "out-of-range",
        "received": "-2",
        "remedy": "Correct the figure, or delete the row.",
        "row": 2,
        "rowKind": "row",
        "source": "catches.csv",
        "text": "catches.csv, row 2, column Turns: found "-2"; needed a number from 0.001 to 1000000, in turns. Correct the figure, or delete the row.",
      }
    `);
  });

  it("keeps no more of a long name in the facts than a sentence can show", async () => {
    const long = "x".repeat(10_000);
    const check = await checkCatches(csv(header, `1,${long},1,1,20,5.89`, "1,oats,1,2,20,5.89"));
    const [mixed] = check.ok ? [] : check.issues;
    expect(mixed).toMatchObject({
      problem: "two-products-in-fill",
      facts: { product: "oats", first: `${"x".repeat(300)}…` },
    });
  });

  it("does not let a file write to the screen of the reader", async () => {
    const texts = await problems("1,wheat,1,1,\u001b[31m\u202e20,5.89");
    expect(texts[0]).toContain("\\u001b[31m\\u202e20");
  });

  it("shortens what is long", async () => {
    const [text = ""] = await problems(`1,wheat,1,1,${"x".repeat(500)},5.89`);
    expect(text).toContain(`"${"x".repeat(40)}…"`);
    expect(text.length).toBeLessThan(300);
  });
});
