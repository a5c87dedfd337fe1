import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { spreadLibraryText } from "../../src/data/spreads/write.ts";
import { catchesToCsv } from "../../src/data/write-csv.ts";
import { command, fileWith, inFolder } from "../support/command.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { aSpreadLibrary } from "../support/spread-libraries.ts";

const catches = catchesToCsv(
  inventedFills({ fills: 1, catches: 3, spread: 0.02, scatter: 0.01 }, 3),
);
const lends = /The library spreads\.json lends how much fills differ \(2 meters\)/;
const like = /If it scatters like the meters of the library, ±/;

async function farm(folder: string, setup: object | null = null) {
  await fileWith(folder, "spreads.json", spreadLibraryText(aSpreadLibrary));
  if (setup !== null) await fileWith(folder, "setup.json", JSON.stringify(setup));
  return {
    log: await fileWith(folder, "catches.csv", catches),
    library: join(folder, "spreads.json"),
  };
}

describe("a library of spreads", () => {
  it("lends by a flag, the same to every command, and is told once", async () => {
    await inFolder(async (folder) => {
      const { log, library } = await farm(folder);
      const out = join(folder, "out");
      const report = await command("report", log, "--library", library, "--out", out);
      const enough = await command("enough", log, "--library", library);
      for (const { code, out: said } of [report, enough]) {
        expect(code).toBe(0);
        expect(said.match(new RegExp(lends, "g"))).toHaveLength(1);
        expect(said).toMatch(like);
      }
      const html = await readFile(join(out, "report.html"), "utf8");
      expect(html.match(/lends how much fills differ/g)).toHaveLength(1);
      expect((await command("enough", log)).out).not.toMatch(/library/);
    });
  });

  it("lends by a setup that names it, beside itself; the flag counts before it", async () => {
    await inFolder(async (folder) => {
      const { log } = await farm(folder, { library: "spreads.json" });
      expect((await command("enough", log)).out).toMatch(lends);
      const other = await fileWith(
        folder,
        "other.json",
        spreadLibraryText({ ...aSpreadLibrary, records: aSpreadLibrary.records.slice(0, 1) }),
      );
      expect((await command("enough", log, "--library", other)).out).toMatch(
        /The library other\.json lends how much fills differ \(1 meter\)/,
      );
    });
  });

  it("goes into sheets and page, and is never written over", async () => {
    await inFolder(async (folder) => {
      const { log, library } = await farm(folder);
      const sheets = join(folder, "sheets");
      const sheet = await command("sheet", log, "--library", library, "--out", sheets);
      expect(sheet.code).toBe(0);
      const page = join(folder, "page.html");
      expect((await command("page", "--library", library, "--out", page)).code).toBe(0);
      const html = await readFile(page, "utf8");
      const given = /<script type="application\/json" id="given">(.*?)<\/script>/.exec(html)?.[1];
      expect(JSON.parse(given ?? "").library).toMatchObject({
        libraryFrom: "spreads.json",
        library: [{ product: "cereals" }, { product: null }, {}],
      });
      const over = await command("page", "--library", library, "--out", library, "--replace");
      expect(over.code).toBe(2);
    });
  });

  it("is said to wait for the first catch where a plan is made before any", async () => {
    await inFolder(async (folder) => {
      const { library } = await farm(folder);
      const [without, borrowing] = [
        await command("enough"),
        await command("enough", "--library", library),
      ];
      expect(borrowing).toMatchObject({ code: 0, out: without.out });
      expect(borrowing.err).toContain("The library lends from the first catch on");
    });
  });

  it("that cannot be used is refused, by the flag and by the setup", async () => {
    await inFolder(async (folder) => {
      const { log } = await farm(folder, { library: "lost.json" });
      for (const refused of [
        await command("enough", log),
        await command("enough", log, "--library", log),
      ])
        expect(refused).toMatchObject({ code: 2, out: "" });
    });
  });
});
