import * as XLSX from "@e965/xlsx";
import { describe, expect, it } from "vitest";
import type { ReadOptions } from "../../../src/data/read-catches.ts";
import { bytesOf, logOf, type SheetCell, workbook } from "../../support/catch-files.ts";

const head = ["bin", "product", "fill", "catch", "turns", "net_kg"];
const march = [head, ["1", "wheat", 1, 1, 20, 6.02], ["1", "wheat", 1, 2, 40, 12.1]];
const april = [head, ["1", "wheat", 2, 1, 20, 6.11]];

async function found(options: ReadOptions = {}) {
  const { cautions } = await logOf(workbook({ march, april, notes: [["a note"]] }), options);
  return cautions.map(({ code, facts }) => ({ code, facts }));
}

describe("sheets of a workbook that are not read", () => {
  it("are asked about where they look like catches, and else said", async () => {
    expect(await found()).toEqual([
      { code: "catches-on-other-sheets", facts: { sheet: "march", others: ["april"] } },
      { code: "sheets-passed-over", facts: { sheet: "march", others: ["notes"] } },
    ]);
  });

  it("are not where somebody named the one that is", async () => {
    expect(await found({ sheet: "march" })).toEqual([]);
  });
});

describe("cells of a workbook that show otherwise than they are read", () => {
  const table: readonly (readonly SheetCell[])[] = [
    [...head, "moisture_pct", "note", "Shed"],
    ["1", "wheat", 1, 1, 20, 6.02, 13.5, "dry", 0.2],
    ["1", "wheat", 1, 2, 20, 6.11, 0.135, "dry", 0.2],
    ["1", "wheat", 1, 3, 20, 5.94, 0.14, "dry", 0.2],
  ];
  /** What is said of the table with some of its cells given otherwise. */
  const foundWith = async (cells: Readonly<Record<string, XLSX.CellObject>>) => {
    const sheet = XLSX.utils.aoa_to_sheet(table.map((row) => [...row]));
    Object.assign(sheet, cells);
    const book = XLSX.utils.book_new(sheet, "march");
    const { cautions } = await logOf({ name: "catches.xlsx", bytes: bytesOf(book) });
    return cautions
      .filter(({ code }) => code === "percent-cells" || code === "formulas-without-value")
      .map(({ code, facts }) => ({ code, facts }));
  };
  const percent = (v: number): XLSX.CellObject => ({ t: "n", v, z: "0.0%" });
  const unworked: XLSX.CellObject = { t: "s", v: "", f: 'IF(F2>9,"wet","")' };

  it("are asked about where a percentage is read as its fraction, from the first of a column on", async () => {
    expect(await foundWith({ G3: percent(0.135), G4: percent(0.14) })).toEqual([
      {
        code: "percent-cells",
        facts: { header: "moisture_pct", cells: 2, first: "G3", readAs: 0.135 },
      },
    ]);
  });

  it("are asked about where nobody worked out a formula, from the first of a column on", async () => {
    expect(await foundWith({ H2: unworked, H4: unworked })).toEqual([
      { code: "formulas-without-value", facts: { header: "note", cells: 2, first: "H2" } },
    ]);
  });

  it("are not where the column is nobody's but the user's own, or all cells are as they show", async () => {
    expect(await foundWith({ I2: percent(0.2), I3: unworked })).toEqual([]);
    expect(await foundWith({})).toEqual([]);
  });
});
