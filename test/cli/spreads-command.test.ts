import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readSpreadLibrary } from "../../src/data/spreads/read.ts";
import { catchesToCsv } from "../../src/data/write-csv.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { englishIn, numbersIn } from "../support/bilingual.ts";
import { command, fileWith, inFolder } from "../support/command.ts";
import { inventedFills } from "../support/simulated-fills.ts";

/** A pooled log of bins that scatter unlike each other, as a file has it. */
function pooled(bins: number, product: (bin: number) => string = () => "Wheat AC"): string {
  const stream = randomStream(7);
  const catches = Array.from({ length: bins }, (_, bin) =>
    inventedFills(
      {
        fills: 3,
        catches: 3,
        spread: 0.03 * Math.exp(0.5 * stream.normal()),
        scatter: 0.015 * Math.exp(0.5 * stream.normal()),
        bin: `Kim ${bin + 1}`,
      },
      stream,
    ).map((one) => ({ ...one, product: product(bin) })),
  ).flat();
  return catchesToCsv(catches);
}

const libraryIn = async (path: string) =>
  readSpreadLibrary({ name: path, text: await readFile(path, "utf8") });

describe("evencatch spreads", () => {
  it("writes a library that can be read, names nobody, and says what the declared constants are worth", async () => {
    await inFolder(async (folder) => {
      const [log, out] = [await fileWith(folder, "log.csv", pooled(32)), join(folder, "s.json")];
      const done = await command("spreads", log, "--out", out);
      expect(done).toMatchObject({ code: 0, err: "" });
      expect(done.out).toContain("how much 32 meters of 1 log scatter, without a name of any.");
      expect(done.out).toContain("- No class told: 32 meters.");
      expect(done.out.match(/The declared/g)).toHaveLength(5);
      const library = await libraryIn(out);
      expect(library.records).toHaveLength(32);
      expect(library.made.tablesSha256).toBeNull();
      // Reading makes one plain space of whatever space there is.
      const plain = done.out.replaceAll(/[^\S\n]/g, " ");
      for (const { said } of library.estimates?.constants ?? []) expect(plain).toContain(said);
      const text = await readFile(out, "utf8");
      for (const name of ["Kim", "Wheat", "log.csv", folder]) expect(text).not.toContain(name);
      expect((await command("spreads", log, "--out", out)).code).toBe(0);
    });
  });

  it("says the same in German", async () => {
    await inFolder(async (folder) => {
      const log = await fileWith(
        folder,
        "log.csv",
        pooled(34, (bin) => (bin < 2 ? "rye" : "wheat")),
      );
      const classes = await fileWith(folder, "classes.csv", "product,class\nrye,A\nwheat,B\n");
      const args = ["spreads", log, "--classes", classes, "--out"];
      const [en, de] = [
        await command(...args, join(folder, "en.json")),
        await command(...args, join(folder, "de.json"), "--language", "de"),
      ];
      expect(en.out).toContain(
        "- A: left out, as they are only 2 bins; a class needs 5, so that nobody's meter is told by itself.",
      );
      expect(de.out.split("\n")).toHaveLength(en.out.split("\n").length);
      const inEnglish = en.out.split("\n").slice(1);
      for (const [i, line] of de.out.split("\n").slice(1).entries()) {
        expect(englishIn(line)).toEqual([]);
        expect(numbersIn(line, "de")).toEqual(numbersIn(inEnglish[i] ?? "", "en"));
      }
    });
  });

  it("refuses a file that is given twice, also under another name, and names both", async () => {
    await inFolder(async (folder) => {
      const [one, two] = [
        await fileWith(folder, "one.csv", pooled(3)),
        await fileWith(folder, "two.csv", pooled(3)),
      ];
      const out = join(folder, "spreads.json");
      for (const [first, again] of [
        [one, one],
        [one, two],
      ] as const) {
        const done = await command("spreads", first, again, "--out", out);
        expect(done).toMatchObject({ code: 2, out: "" });
        expect(done.err).toContain(`${again}: found the same file as ${first}, byte for byte`);
        await expect(readFile(out, "utf8")).rejects.toThrow();
      }
    });
  });

  it("pools several files, tells their hashes where asked, and a column's classes", async () => {
    await inFolder(async (folder) => {
      const [one, two] = [
        await fileWith(folder, "one.csv", pooled(3)),
        await fileWith(folder, "two.csv", pooled(4)),
      ];
      const out = join(folder, "spreads.json");
      const done = await command("spreads", one, two, "--sha256", "--out", out);
      expect(done.out).toContain("7 meters of 2 logs");
      expect(done.out).toContain("that takes 30 meters.");
      const { made, estimates } = await libraryIn(out);
      expect(made.tablesSha256).toHaveLength(2);
      expect(estimates).toBeNull();
    });
  });

  it("writes nothing of fewer than five bins, nor over a file that is not its own", async () => {
    await inFolder(async (folder) => {
      const few = await fileWith(folder, "few.csv", pooled(4));
      const out = join(folder, "spreads.json");
      expect(await command("spreads", few, "--out", out)).toMatchObject({
        code: 2,
        err: expect.stringContaining("found 4 bins in the largest class; needed at least 5 bins"),
      });
      await fileWith(folder, "spreads.json", "mine");
      const enough = await fileWith(folder, "enough.csv", pooled(5));
      expect((await command("spreads", enough, "--out", out)).code).toBe(2);
      expect(await readFile(out, "utf8")).toBe("mine");
    });
  });

  it("refuses classes that cannot be read, and no file at all", async () => {
    await inFolder(async (folder) => {
      const log = await fileWith(folder, "log.csv", pooled(5));
      const classes = join(folder, "lost.csv");
      expect(await command("spreads", log, "--classes", classes)).toMatchObject({
        code: 2,
        err: expect.stringContaining("no file of that name"),
      });
      expect((await command("spreads")).code).toBe(2);
    });
  });
});
