import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { withWholeValues } from "../../src/cli/bare-tables.ts";
import { command, demo, filesIn, inFolder } from "../support/command.ts";

describe("--tables", () => {
  it.each([
    [
      ["report", "--tables", "catches.csv"],
      ["report", "--tables=csv,json,md,tex", "catches.csv"],
    ],
    [
      ["report", "a.csv", "--tables"],
      ["report", "a.csv", "--tables=csv,json,md,tex"],
    ],
    [
      ["report", "--tables", "--json", "a.csv"],
      ["report", "--tables=csv,json,md,tex", "--json", "a.csv"],
    ],
    [
      ["report", "--tables", "xlsx,csv", "a.csv"],
      ["report", "--tables", "xlsx,csv", "a.csv"],
    ],
  ])("of %j is %j", (args, whole) => {
    expect(withWholeValues(args)).toEqual(whole);
  });

  it("writes the formats asked for, for a decimal comma and by broom's names", async () => {
    await inFolder(async (folder) => {
      const flags = ["--tables", "xlsx,csv", "--table-decimal", "comma", "--table-names", "broom"];
      const { code } = await command(
        "report",
        ...flags,
        demo("first-morning/catches.csv"),
        "--out",
        folder,
      );
      expect(code).toBe(0);
      const files = await filesIn(join(folder, "tables"));
      expect(files).toEqual(
        expect.arrayContaining(["tables.xlsx", "bins.csv", "datapackage.json"]),
      );
      expect(files.filter((name) => name.endsWith(".md"))).toEqual([]);
      const bins = await readFile(join(folder, "tables", "bins.csv"), "utf8");
      expect(bins).toMatch(
        /^\ufeffbin;product;fill;fills;nobs;estimate;unit;std\.error;df;conf\.low/,
      );
      expect(bins).toMatch(/;0,32\d+;kg\/turn;/);
      const flagged = await readFile(join(folder, "tables", "flags.csv"), "utf8");
      expect(flagged).toMatch(/;sentence\n/);
    });
  });

  it("is implied by a name or a mark, and refuses a format nobody knows", async () => {
    await inFolder(async (folder) => {
      const report = ["report", demo("first-morning/catches.csv"), "--out", folder];
      await command(...report, "--table-names", "own");
      expect(await filesIn(join(folder, "tables"))).toContain("bins.tex");
      const { code, err } = await command(...report, "--tables", "xls");
      expect(code).toBe(2);
      expect(err).toContain("csv, json, xlsx, md, tex");
    });
  });
});
