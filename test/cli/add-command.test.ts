import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readCatchesFile } from "../../src/node.ts";
import { command, filesIn, fileWith, inFolder, processOf } from "../support/command.ts";

const head = "bin;product;fill;catch;turns;net_kg;note";
const row = "1;oats;1;1;20;6,30;after rain, late";

const withLog = (text: string, work: (path: string, folder: string) => Promise<void>) =>
  inFolder(async (folder) => work(await fileWith(folder, "log.csv", text), folder));

describe("evencatch add", () => {
  it("goes on as the file does: its separator, decimal mark, unit and line ends, every other byte as it was", async () => {
    const text = `\uFEFF${head}\r\n${row}\r\n`;
    await withLog(text, async (path) => {
      const { code, out } = await command("add", path, "20:6.35", "10:3200g");
      expect([code, out]).toEqual([
        0,
        "Added: bin 1 (oats), fill 1, catch 2: 20 turns, 6.35 kg net.\nAdded: bin 1 (oats), fill 1, catch 3: 10 turns, 3.2 kg net.",
      ]);
      expect(await readFile(path, "utf8")).toBe(
        `${text}1;oats;1;2;20;6,35;\r\n1;oats;1;3;10;3,2;\r\n`,
      );
    });
  });

  it("begins a new fill, another bin, and a file that is a header alone", async () => {
    await withLog(head, async (path) => {
      const unnamed = await command("add", path, "20:6.3");
      expect(unnamed).toMatchObject({ code: 2 });
      expect(unnamed.err).toContain("--bin 1, and --product wheat");
      await command("add", path, "20:6.3", "--bin", "1", "--product", "oats");
      await command("add", path, "20:6.4", "--new-fill");
      await command("add", path, "20:8.1", "--bin", "2", "--product", "peas", "--set", "note=dry");
      const { catches } = await readCatchesFile(path);
      expect(catches.map((one) => [one.bin, one.product, one.fill, one.catch, one.note])).toEqual([
        ["1", "oats", 1, 1, null],
        ["1", "oats", 2, 1, null],
        ["2", "peas", 1, 1, "dry"],
      ]);
    });
  });

  it("asks for what only the person knows, and changes nothing until it is told", async () => {
    const gross = "bin,product,fill,catch,turns,gross_kg,tare_kg\n1,oats,1,1,20,6.72,0.42\n";
    await withLog(gross, async (path) => {
      expect((await command("add", path, "20:6.8")).err).toContain("such as --tare 0.42");
      expect((await command("add", path, "20:6.8", "--product", "peas")).err).toContain(
        "--new-fill",
      );
      expect((await command("add", path, "20:6.8", "--set", "mood=good")).err).toContain("mood");
      expect((await command("add", path, "20:1,234", "--tare", "0")).err).toContain("1,234");
      expect(await readFile(path, "utf8")).toBe(gross);
      await command("add", path, "20:6.8", "--tare", "0.42");
      expect((await readCatchesFile(path)).catches[1]).toMatchObject({ netKg: 6.38, catch: 2 });
    });
  });

  it("says in either language what now stands in the file, in its unit, of pounds and a bare tare", async () => {
    const gross = "bin,product,fill,catch,turns,gross_g,tare_g\n1,oats,1,1,20,6720,420\n";
    await withLog(gross, async (path) => {
      // 3.6 lb are 3.6 × 453.59237 = 1632.932532 g, less 420 g.
      const add = ["add", path, "10:3.6lb", "1:780", "--tare", "420"];
      expect((await command(...add)).out).toBe(
        "Added: bin 1 (oats), fill 1, catch 2: 10 turns, 1,212.93 g net, tare 420 g.\nAdded: bin 1 (oats), fill 1, catch 3: 1 turn, 360 g net, tare 420 g.",
      );
      expect((await command(...add, "--again", "--language", "de")).out).toBe(
        "Angefügt: Tank 1 (oats), Füllung 1, Probe 4: 10 Umdrehungen, 1.212,93 g netto, Tara 420 g.\nAngefügt: Tank 1 (oats), Füllung 1, Probe 5: 1 Umdrehung, 360 g netto, Tara 420 g.",
      );
    });
  });

  it("refuses the same catches given twice, in both languages, unless they are meant", async () => {
    await withLog(`${head}\n${row}\n`, async (path) => {
      await command("add", path, "20:6.3", "20:6.5");
      const again = await command("add", path, "20:6.3", "20:6.5");
      expect(again).toMatchObject({ code: 2 });
      expect(again.err).toContain("--again adds them once more");
      const german = await command("add", path, "20:6.3", "20:6.5", "--language", "de");
      expect(german.err).toContain("Nichts wurde angefügt");
      expect((await command("add", path, "20:6.3", "20:6.5", "--again")).code).toBe(0);
      expect((await readCatchesFile(path)).catches).toHaveLength(5);
    });
  });

  it("notes a catch that was spilled, with why and no mass, in either language's words", async () => {
    const columns = "bin;product;fill;catch;turns;net_kg;exclude;reason\n";
    await withLog(`${columns}1;oats;1;1;20;6,3;;\n`, async (path) => {
      const { code, out } = await command("add", path, "20:spilled, wind", "20:6.4");
      expect([code, out]).toEqual([
        0,
        "Added: bin 1 (oats), fill 1, catch 2, left out without a mass (spilled, wind).\nAdded: bin 1 (oats), fill 1, catch 3: 20 turns, 6.4 kg net.",
      ]);
      await command("add", path, "verschüttet", "--language", "de");
      expect(await readFile(path, "utf8")).toBe(
        `${columns}1;oats;1;1;20;6,3;;\n1;oats;1;2;20;;yes;spilled, wind\n1;oats;1;3;20;6,4;;\n1;oats;1;4;;;yes;verschüttet\n`,
      );
      const { catches, missed } = await readCatchesFile(path);
      expect([catches.length, missed?.map((one) => one.catch)]).toEqual([2, [2, 4]]);
      expect((await command("add", path, "20:twice")).err).toContain("20:twice");
    });
    await withLog(`${head}\n${row}\n`, async (path) => {
      const { code, err } = await command("add", path, "20:spilled");
      expect(code).toBe(2);
      expect(err).toContain("no columns exclude and reason");
    });
  });

  it("tells machines and seasons apart, asks which is meant, and names them", async () => {
    const year = new Date().getFullYear();
    const keyed = "machine,season,bin,product,fill,catch,turns,net_kg\n";
    const rows = [
      `north,${year},1,oats,2,1,20,6.3`,
      `south,${year - 1},1,peas,4,1,20,8.1`,
      `south,${year},1,peas,1,1,20,8.2`,
    ];
    await withLog(`${keyed}${rows.join("\n")}\n`, async (path) => {
      const which = await command("add", path, "20:6.4");
      expect(which.err).toContain('Say which machine these are from: --key "machine=north" or');
      const { out } = await command("add", path, "20:6.4", "--key", "machine=north");
      expect(out).toBe(`Added: bin 1/north (oats), fill 2/${year}, catch 2: 20 turns, 6.4 kg net.`);
      const south = ["add", path, "20:8.3", "--key", "machine=south"];
      expect((await command(...south)).out).toContain(
        `bin 1/south (peas), fill 1/${year}, catch 2`,
      );
      const earlier = await command(...south, "--key", `season=${year - 1}`);
      expect(earlier.out).toContain(`bin 1/south (peas), fill 4/${year - 1}, catch 2`);
      const begun = [...south, "--key", `season=${year + 1}`];
      expect((await command(...begun)).err).toContain("No catch stands there yet: say which bin");
      expect((await command(...begun, "--bin", "1")).err).toContain("No catch of bin 1 stands");
      const first = await command(...begun, "--bin", "1", "--product", "peas");
      expect(first.out).toContain(`fill 1/${year + 1}, catch 1`);
    });
  });

  it("does not go on with a season that is over unless it is told", async () => {
    const keyed = "season,bin,product,fill,catch,turns,net_kg\n2019/20,1,oats,2,1,20,6.3\n";
    await withLog(keyed, async (path) => {
      const { code, err } = await command("add", path, "20:6.4");
      expect(code).toBe(2);
      expect(err).toContain('--key "season=2019/20", or a new one');
      expect((await command("add", path, "20:6.4", "--key", "season=2019/20")).code).toBe(0);
      expect((await command("add", path, "20:6.4", "--key", "farm=Hill")).err).toContain("farm");
    });
  });

  it("refuses a file that is not in order, and one that rows cannot be added to", async () => {
    await withLog(`${head}\n1;oats;1;1;0;6,3;\n`, async (path, folder) => {
      const before = await readFile(path, "utf8");
      expect((await command("add", path, "20:6.3")).err).toContain("row 2, column turns");
      expect(await readFile(path, "utf8")).toBe(before);
      const json = await fileWith(folder, "log.json", "[]");
      expect((await command("add", json, "20:6.3")).err).toContain("Save it as CSV");
      expect((await command("add", join(folder, "lost.csv"), "20:6.3")).err).toContain("no file");
      expect(await filesIn(folder)).toEqual(["log.csv", "log.json"]);
    });
  });

  it("waits for who is at the file, and tells of a lock that was left", {
    timeout: 30_000,
  }, async () => {
    await withLog(`${head}\n${row}\n`, async (path, folder) => {
      await writeFile(`${path}.lock`, "1\n");
      const { code, err } = await command("add", path, "20:6.3");
      expect(code).toBe(2);
      expect(err).toContain("log.csv.lock and try again");
      expect(await filesIn(folder)).toEqual(["log.csv", "log.csv.lock"]);
    });
  });

  it("loses none of two, or of five, at once", { timeout: 60_000 }, async () => {
    await withLog(`${head}\n${row}\n`, async (path, folder) => {
      const masses = ["6.31", "6.32", "6.33", "6.34", "6.35"];
      const runs = await Promise.all(masses.map((mass) => processOf("add", path, `20:${mass}`)));
      expect(runs.map(({ code }) => code)).toEqual(masses.map(() => 0));
      const { catches } = await readCatchesFile(path);
      expect(catches.map((one) => one.catch)).toEqual([1, 2, 3, 4, 5, 6]);
      expect(catches.map(({ netKg }) => netKg).sort()).toEqual([6.3, ...masses.map(Number)]);
      expect(await filesIn(folder)).toEqual(["log.csv"]);
    });
  });
});
