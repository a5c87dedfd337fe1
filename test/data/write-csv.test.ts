import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCatches } from "../../src/data/read-catches.ts";
import type { Catch } from "../../src/data/types.ts";
import { catchesToCsv, rowsToCsv } from "../../src/data/write-csv.ts";
import { aCatch } from "../support/catches.ts";
import { productTrialCatches } from "../support/product-trial.ts";

async function thereAndBack(catches: readonly Catch[]): Promise<readonly Catch[]> {
  return (await readCatches({ name: "catches.csv", text: catchesToCsv(catches) })).catches;
}

describe("rows as comma-separated text", () => {
  it("puts marks around cells that hold a comma, a mark or a line break, as RFC 4180 does", () => {
    expect(rowsToCsv([{ a: 'say "so"', b: "1,5", c: "two\nlines", d: null }])).toBe(
      'a,b,c,d\n"say ""so""","1,5","two\nlines",\n',
    );
  });

  it("has every column that some row has, and every digit", () => {
    expect(rowsToCsv([{ a: 0.1 + 0.2 }, { b: true, a: 1 }])).toBe(
      "a,b\n0.30000000000000004,\n1,true\n",
    );
  });

  it("is empty without rows", () => {
    expect(rowsToCsv([])).toBe("");
  });
});

describe("catches as a file", () => {
  it("are read back as they were, for the demo trial", async () => {
    const catches = await productTrialCatches();
    expect(await thereAndBack(catches)).toEqual(catches);
  });

  it("keep what is optional, left out or of the file's own", async () => {
    const catches = [
      aCatch({
        turns: 20.5,
        netKg: 5.9,
        grossKg: 6.32,
        tareKg: 0.42,
        divisionKg: 0.01,
        takenAt: "2026-04-12T07:30",
        outlet: "3",
        operator: "A, B",
        note: 'a "good" one',
        checked: "weighed again, bag empty",
        extra: { tkw_g: "41.5" },
      }),
      aCatch({
        row: 3,
        catch: 2,
        turns: 20,
        netKg: 5.7,
        leftOut: "bag slipped",
        extra: { tkw_g: "" },
      }),
      aCatch({ row: 4, catch: 3, turns: 20, netKg: 5.8, extra: { tkw_g: "42" } }),
    ];
    expect(await thereAndBack(catches)).toEqual(catches);
  });

  it("keep every digit of any mass and any number of turns", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.double({ min: 0.001, max: 10_000, noNaN: true }),
        fc.double({ min: 0.001, max: 10_000, noNaN: true }),
        async (turns, netKg) => {
          const [back] = await thereAndBack([aCatch({ turns, netKg })]);
          expect(back).toMatchObject({ turns, netKg });
        },
      ),
      { numRuns: 40 },
    );
  });
});
