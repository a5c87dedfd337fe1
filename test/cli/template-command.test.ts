import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { catchColumns } from "../../src/data/columns.ts";
import { checkSetup } from "../../src/data/read-setup.ts";
import { command, filesIn, inFolder } from "../support/command.ts";

describe("evencatch template", () => {
  it("writes a sheet that only lacks rows, a setup that can be read, and what the columns mean", async () => {
    await inFolder(async (folder) => {
      expect((await command("template", folder)).code).toBe(0);
      expect(await filesIn(folder)).toEqual(["catches.csv", "columns.md", "setup.json"]);

      const check = await command("check", join(folder, "catches.csv"));
      expect(check.code).toBe(2);
      expect(check.err).toContain("one row for each catch");
      const text = await readFile(join(folder, "setup.json"), "utf8");
      expect(checkSetup({ name: "setup.json", text }).ok).toBe(true);
      const columns = await readFile(join(folder, "columns.md"), "utf8");
      for (const { name } of catchColumns) expect(columns).toContain(`\`${name}\``);
    });
  });

  it("overwrites nothing unless told to", async () => {
    await inFolder(async (folder) => {
      await command("template", folder);
      const again = await command("template", folder);
      expect(again.code).toBe(2);
      expect(again.err).toContain("--force");
      expect((await command("template", folder, "--force")).code).toBe(0);
    });
  });
});
