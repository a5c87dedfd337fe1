import { appendFile, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { catchColumns } from "../../src/data/columns.ts";
import { checkSetup } from "../../src/data/read-setup.ts";
import { command, filesIn, fileWith, inFolder } from "../support/command.ts";
import { english } from "../support/words.ts";

describe("evencatch template", () => {
  it("writes a sheet that only lacks rows, a setup that can be read, and what the columns mean", async () => {
    await inFolder(async (folder) => {
      expect((await command("template", folder)).code).toBe(0);
      expect(await filesIn(folder)).toEqual([
        "catch-sheet.html",
        "catches.csv",
        "columns.md",
        "evencatch-manifest.json",
        "setup.json",
      ]);

      const check = await command("check", join(folder, "catches.csv"));
      expect(check.code).toBe(2);
      expect(check.err).toContain("one row for each catch");
      const text = await readFile(join(folder, "setup.json"), "utf8");
      expect(checkSetup({ name: "setup.json", text }).ok).toBe(true);
      const columns = await readFile(join(folder, "columns.md"), "utf8");
      for (const line of english().report.safety.strip.lines) expect(columns).toContain(line);
      for (const { name } of catchColumns) expect(columns).toContain(`\`${name}\``);
    });
  });

  it("writes over what was filled in only when told to, by either name of the option", async () => {
    await inFolder(async (folder) => {
      await command("template", folder);
      expect((await command("template", folder)).code).toBe(0);
      for (const option of ["--replace", "--force"]) {
        await appendFile(join(folder, "catches.csv"), "1,wheat,1,1,20,6.4,0.4,,,,,\n");
        const again = await command("template", folder);
        expect(again.code).toBe(2);
        expect(again.err).toContain("Changed since evencatch wrote them: catches.csv.");
        expect(again.err).toContain("--replace");
        expect(await readFile(join(folder, "catches.csv"), "utf8")).toContain("1,wheat");
        expect((await command("template", folder, option)).code).toBe(0);
        expect(await readFile(join(folder, "catches.csv"), "utf8")).not.toContain("1,wheat");
      }
    });
  });

  it("leaves a sheet and a setup that were there before alone", async () => {
    await inFolder(async (folder) => {
      await fileWith(folder, "setup.json", "{}");
      const { code, err } = await command("template", folder);
      expect(code).toBe(2);
      expect(err).toContain(": setup.json. To go on, give another folder");
      expect(await filesIn(folder)).toEqual(["setup.json"]);
    });
  });
});
