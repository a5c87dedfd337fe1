import { mkdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { createColors } from "picocolors";
import { describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.ts";
import { command, demo, filesIn, fileWith, inFolder } from "../support/command.ts";

const text =
  "Tank;Produkt;Füllung;Umdr.;Gewicht (kg)\n1;Hafer;1;20;6,30\n;;;20;6,36\nMittel;;;20;6,33\n";

describe("evencatch import", () => {
  it("asks, writes nothing, and then a clean file with what was assumed beside it", async () => {
    await inFolder(async (folder) => {
      const path = await fileWith(folder, "heft.csv", text);
      const out = join(folder, "clean.csv");
      const asked = await command("import", path, "--out", out);
      expect(asked).toMatchObject({ code: 2, out: "" });
      expect(asked.err).toContain('`--map "Gewicht (kg)=net_kg"`');
      expect(await filesIn(folder)).toEqual(["heft.csv"]);
      const done = await command("import", path, "--out", out, "--map", "Gewicht (kg)=net_kg");
      expect(done).toMatchObject({ code: 0, out });
      expect(await readFile(out, "utf8")).toBe(
        "bin,product,fill,catch,turns,net_kg\n1,Hafer,1,1,20,6.30\n1,Hafer,1,2,20,6.36\n",
      );
      const told = await readFile(`${out}.assumed.md`, "utf8");
      expect(told).toContain(
        "- The catches are numbered in the order of their rows. 2 times, rows 2–3.",
      );
      expect(told).toContain("- Row 4, a mean: Mittel \\| 20 \\| 6,33");
      const json = JSON.parse(await readFile(`${out}.assumed.json`, "utf8"));
      expect(json).toMatchObject({ kind: "imported", catches: 2, asked: [] });
      expect((await command("enough", out)).code).toBe(0);
      expect((await readFile(path, "utf8")) === text).toBe(true);
    });
  });

  it("speaks German", async () => {
    await inFolder(async (folder) => {
      const path = await fileWith(folder, "heft.csv", text);
      const out = join(folder, "o", "clean.csv");
      const { err } = await command("import", path, "--out", out, "--language", "de");
      expect(err).toContain("nötig zu wissen, ob der Behälter mitgewogen wurde");
      await command(
        "import",
        path,
        "--out",
        out,
        "--language",
        "de",
        "--map",
        "Gewicht (kg)=net_kg",
      );
      expect(await readFile(`${out}.assumed.md`, "utf8")).toContain("Zeile 4, ein Mittelwert");
    });
  });

  it("takes a folder of files, but not the file it writes, and never writes over what it reads", async () => {
    await inFolder(async (folder) => {
      const head = "tank,crop,fill,rep,revs,net kg\n";
      await fileWith(folder, "a.csv", `${head}1,oats,1,1,20,6.3\n`);
      await fileWith(folder, "b.csv", `${head}2,peas,1,1,20,8.1\n`);
      const out = join(folder, "clean.csv");
      for (const _ of [1, 2]) {
        expect((await command("import", folder, "--out", out)).code).toBe(0);
        expect((await readFile(out, "utf8")).split("\n")).toHaveLength(4);
      }
      const over = await command("import", join(folder, "a.csv"), "--out", join(folder, "a.csv"));
      expect(over).toMatchObject({ code: 2 });
      expect(over.err).toContain("a.csv");
    });
  });

  it("says what it leaves in a folder, and that a folder has no table", async () => {
    await inFolder(async (folder) => {
      await fileWith(folder, "notes.pdf", "");
      const none = await command("import", folder);
      expect(none).toMatchObject({ code: 2 });
      expect(none.err).toContain("a folder without a table");
      await fileWith(folder, "a.csv", "tank,crop,fill,rep,revs,net kg\n1,oats,1,1,20,6.3\n");
      const some = await command("import", folder, "--out", join(folder, "clean.csv"));
      expect(some).toMatchObject({ code: 0 });
      expect(some.err).toContain(
        `Not read, since no table ends so: ${join(folder, "notes.pdf")}\n`,
      );
    });
  });

  it("refuses answers that are none, and files that are none", async () => {
    expect((await command("import", "x.csv", "--map", "revs")).err).toContain('"revs=turns"');
    expect((await command("import", "x.csv", "--aside", "top")).err).toContain("number of a row");
    expect((await command("import", "/nowhere/x.csv")).err).toContain("no file of that name");
  });
});

describe("files of catches", () => {
  const morning = demo("first-morning/catches.csv");

  it("are read from standard input as from a file", async () => {
    const bytes = new Uint8Array(await readFile(morning));
    const out: string[] = [];
    const plain = createColors(false);
    const code = await run(["enough", "-", "--json"], {
      out: (line) => out.push(line),
      err: () => {},
      stdin: async () => bytes,
      outColors: plain,
      errColors: plain,
    });
    expect(code).toBe(0);
    expect(out.join("\n")).toBe((await command("enough", morning, "--no-setup", "--json")).out);
  });

  it("are told apart by the names of file or folder, whichever names machine or season", async () => {
    await inFolder(async (folder) => {
      const text = "bin,product,fill,catch,turns,net_kg\n1,oats,1,1,20,6.3\n1,oats,1,2,20,6.4\n";
      const paths = await Promise.all(
        ["2025", "2026"].map(async (season) => {
          await mkdir(join(folder, season));
          return fileWith(join(folder, season), "north.csv", text);
        }),
      );
      const same = await command("enough", ...paths);
      expect(same).toMatchObject({ code: 2 });
      expect(same.err).toContain("--key season=file");
      const keys = ["--key", "season=folder", "--key", "machine=file"];
      const { code, out } = await command("enough", ...paths, ...keys, "--json");
      expect(code).toBe(0);
      expect(out).toContain('"1/2026"');
      const stream = await command("enough", "-", "--key", "season=folder");
      expect(stream.err).toContain("Standard input has neither file nor folder");
      expect((await command("enough", paths[0] ?? "", paths[0] ?? "")).code).toBe(0);
    });
  });

  it("may be several, in one report", async () => {
    await inFolder(async (folder) => {
      const head = "bin,product,fill,catch,turns,net_kg\n";
      const a = await fileWith(folder, "a.csv", `${head}1,oats,1,1,20,6.3\n1,oats,1,2,20,6.4\n`);
      const b = await fileWith(folder, "b.csv", `${head}2,peas,1,1,20,8.1\n2,peas,1,2,20,8.2\n`);
      const { code, out } = await command("report", a, b, "--out", join(folder, "out"));
      expect(code).toBe(0);
      expect(out).toMatch(/oats[\s\S]*peas/);
      expect(await readFile(join(folder, "out", "report.md"), "utf8")).toContain(
        `The catches come from 2 files, and rows are counted through them: ${a} from row 2, ${b} from row 4.`,
      );
    });
  });
});
