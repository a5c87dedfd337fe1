import { appendFile, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command, demo, filesIn, inFolder } from "../support/command.ts";

describe("evencatch plan", () => {
  it("writes a sheet that only lacks its masses, the same for the same seed", async () => {
    await inFolder(async (folder) => {
      const { code, out } = await command("plan", "wheat", "pea", "--fills", "4", "--out", folder);
      expect(code).toBe(0);
      expect(out).toContain("2 products, 4 fills of each");
      const sheet = await readFile(join(folder, "sheet.csv"), "utf8");
      const check = await command("check", join(folder, "sheet.csv"));
      expect(check.err).toContain("gross_kg");

      const again = ["plan", "wheat", "pea", "--fills", "4", "--out", folder];
      expect((await command(...again)).code).toBe(0);
      expect(await readFile(join(folder, "sheet.csv"), "utf8")).toBe(sheet);
      await command(...again, "--seed", "2");
      const other = await readFile(join(folder, "sheet.csv"), "utf8");
      expect(other).not.toBe(sheet);

      await appendFile(join(folder, "sheet.csv"), "a note of one's own\n");
      const refused = await command(...again);
      expect(refused.code).toBe(2);
      expect(refused.err).toContain("sheet.csv was changed since evencatch wrote it");
      expect(refused.err).toContain("--replace");
      expect(refused.out).toBe("");
      for (const option of ["--force", "--replace"])
        expect((await command(...again, option)).code).toBe(0);
      expect(await readFile(join(folder, "sheet.csv"), "utf8")).toBe(sheet);
    });
  });

  it("refuses one product and turn levels that are none", async () => {
    expect((await command("plan", "wheat")).code).toBe(2);
    const { code, err } = await command("plan", "wheat", "pea", "--turns", "20,many");
    expect(code).toBe(2);
    expect(err).toContain("above zero");
  });
});

describe("evencatch report on a trial", () => {
  const trial = [
    "report",
    demo("product-trial/catches.csv"),
    "--setup",
    demo("product-trial/setup.json"),
  ];

  it("compares products where one bin held several, and writes tidy tables when asked", async () => {
    await inFolder(async (folder) => {
      const flags = ["--blocks", "day", "--margin", "2%", "--tables", "--out", folder];
      expect((await command(...trial, ...flags)).code).toBe(0);
      const { products } = JSON.parse(await readFile(join(folder, "report.json"), "utf8"));
      expect(products.comparison.kind).toBe("product-comparison");
      const files = await filesIn(join(folder, "tables"));
      for (const name of ["catches", "estimates", "products", "contrasts"])
        for (const kind of ["csv", "json", "md", "tex"]) expect(files).toContain(`${name}.${kind}`);
    });
  });

  it("leaves products alone in a season, or when told to", async () => {
    await inFolder(async (folder) => {
      await command(...trial, "--no-compare", "--out", folder);
      const { products } = JSON.parse(await readFile(join(folder, "report.json"), "utf8"));
      expect(products).toBeNull();
      const season = ["report", demo("season/catches.csv"), "--json", "--out", folder];
      expect(JSON.parse((await command(...season)).out).products).toBeNull();
      expect(JSON.parse((await command(...season, "--compare")).out).products).not.toBeNull();
    });
  });
});
