import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command, demo, filesIn, fileWith, inFolder } from "../support/command.ts";

describe("evencatch sheet", () => {
  it("writes a page for the cab and a sheet with the catches that are wanted", async () => {
    await inFolder(async (folder) => {
      const log = demo("first-morning/catches.csv");
      const { code, out } = await command("sheet", log, "--out", folder, "--language", "de");
      expect(code).toBe(0);
      const files = ["cab-sheet.html", "catch-sheet.html"];
      expect(out.split("\n")).toEqual(files.map((name) => join(folder, name)));
      expect(await filesIn(folder)).toEqual([...files, "evencatch-manifest.json"]);
      expect(await readFile(join(folder, "cab-sheet.html"), "utf8")).toContain("4 weitere Proben");
      const toFillIn = await readFile(join(folder, "catch-sheet.html"), "utf8");
      expect(toFillIn.match(/<td[^>]*>barley</g)).toHaveLength(1 + 4);
    });
  });

  it("decides as the report does when asked with the same options", async () => {
    await inFolder(async (folder) => {
      const log = demo("first-morning/catches.csv");
      await command("sheet", log, "--out", folder, "--tolerance", "5%");
      expect(await readFile(join(folder, "cab-sheet.html"), "utf8")).toContain("Set 4");
    });
  });

  it("writes an empty catch sheet without a log, with the bins of a setup that is given", async () => {
    await inFolder(async (folder) => {
      const bins = [{ bin: "left", product: "rye" }, { bin: "right" }];
      const setup = await fileWith(folder, "cart.json", JSON.stringify({ title: "Spring", bins }));
      const { code } = await command("sheet", "--setup", setup, "--out", folder);
      expect(code).toBe(0);
      expect(await filesIn(folder)).not.toContain("cab-sheet.html");
      const html = await readFile(join(folder, "catch-sheet.html"), "utf8");
      for (const known of ["Spring", "left", "rye", "right"]) expect(html).toContain(known);
    });
  });

  it("says what is wrong with a log and writes nothing", async () => {
    await inFolder(async (folder) => {
      const log = await fileWith(folder, "catches.csv", "bin,product\n");
      expect((await command("sheet", log, "--out", folder)).code).toBe(2);
      expect(await filesIn(folder)).toEqual(["catches.csv"]);
    });
  });
});
