import { describe, expect, it } from "vitest";
import { importCatches } from "../../../src/data/import/import-catches.ts";
import { readCatches } from "../../../src/data/read-catches.ts";
import { rowsToCsv } from "../../../src/data/write-csv.ts";

/** What is kept of the user's own columns of one catch, in the log and in the clean file when that is read by itself. */
async function kept(headers: readonly string[], values: readonly string[]) {
  const text = [
    ["Compartment", "Product", "Fill", "Turns", "net_kg", ...headers].join(";"),
    ["1", "oats", "1", "20", "6.31", ...values].join(";"),
  ].join("\n");
  const { log, catches, asked } = await importCatches([{ name: "book.csv", text }]);
  expect(asked).toEqual([]);
  const clean = await readCatches({ name: "clean.csv", text: rowsToCsv(catches) });
  return [log?.catches[0]?.extra, clean.catches[0]?.extra];
}

describe("columns of somebody's own", () => {
  it("each keep what stands in them where several have one name, and are told apart by a number", async () => {
    const own = { Shed: "A", "Shed (2)": "B", "SHED (3)": "C" };
    expect(await kept(["Shed", "Shed", "SHED"], ["A", "B", "C"])).toEqual([own, own]);
  });

  it("take no number that another column has", async () => {
    const own = { "Shed (2)": "A", Shed: "B", "Shed (3)": "C" };
    expect(await kept(["Shed (2)", "Shed", "Shed"], ["A", "B", "C"])).toEqual([own, own]);
  });

  it("keep their name, but where it is a slip of the keyboard away from one that is read", async () => {
    // One letter from "catch", which the sheet does not have.
    const own = { Shed: "A", "own Batch": "7" };
    expect(await kept(["Shed", "Batch"], ["A", "7"])).toEqual([own, own]);
  });
});
