import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command, demo, filesIn, fileWith, inFolder } from "../support/command.ts";

const page = (folder: string, name: string, ...more: readonly string[]) =>
  command("page", "--out", join(folder, name), ...more);

describe("evencatch page", () => {
  it("writes one file, and a second beside it takes nothing from the first", async () => {
    await inFolder(async (folder) => {
      const { code, out } = await page(folder, "en.html");
      expect([code, out]).toEqual([0, join(folder, "en.html")]);
      await page(folder, "de.html", "--language", "de");
      expect(await filesIn(folder)).toEqual(["de.html", "en.html", "evencatch-manifest.json"]);
      expect(await readFile(join(folder, "de.html"), "utf8")).toMatch(/<html lang="de">/);
      expect((await page(folder, "en.html", "--units", "us")).code).toBe(0);
    });
  });

  it("carries a checked setup, as it is read and as its file has it", async () => {
    await inFolder(async (folder) => {
      const setup = await fileWith(
        folder,
        "setup.json",
        JSON.stringify({ title: "</script>", tolerance_percent: 3 }),
      );
      expect((await page(folder, "page.html", "--setup", setup)).code).toBe(0);
      const html = await readFile(join(folder, "page.html"), "utf8");
      const given = /<script type="application\/json" id="given">(.*?)<\/script>/.exec(html)?.[1];
      expect(JSON.parse(given ?? "")).toMatchObject({
        setup: { setup: { tolerance: 0.03 }, file: { tolerance_percent: 3 } },
      });
    });
  });

  it("refuses a setup that cannot be used, and a file that is not its own", async () => {
    await inFolder(async (folder) => {
      const setup = await fileWith(folder, "setup.json", '{ "tolerance_percent": "much" }');
      expect(await page(folder, "page.html", "--setup", setup)).toMatchObject({ code: 2 });
      await fileWith(folder, "page.html", "mine");
      const refused = await page(folder, "page.html");
      expect(refused).toMatchObject({ code: 2, err: expect.stringContaining("page.html") });
      expect(await readFile(join(folder, "page.html"), "utf8")).toBe("mine");
      expect((await page(folder, "page.html", "--replace")).code).toBe(0);
    });
  });

  it("starts from the setup of a season", async () => {
    await inFolder(async (folder) => {
      expect((await page(folder, "page.html", "--setup", demo("season/setup.json"))).code).toBe(0);
    });
  });
});
