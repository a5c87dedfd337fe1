import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { chartPng } from "../../src/cli/chart-png.ts";
import { manifestName, sha256Of } from "../../src/cli/manifest.ts";
import { catchesToCsv } from "../../src/data/write-csv.ts";
import { command, demo, filesIn, fileWith, inFolder, processOf } from "../support/command.ts";
import { inventedFleet } from "../support/fleets.ts";

const season = ["report", demo("season/catches.csv"), "--setup", demo("season/setup.json")];

describe("evencatch report", () => {
  it("prints a table and a sentence for each bin, and writes every kind of file", async () => {
    await inFolder(async (folder) => {
      const { code, out, err } = await command(...season, "--out", folder, "--edition", "full");
      expect(code).toBe(0);
      for (const bin of ["1", "2", "3"]) expect(out).toContain(`Bin ${bin} (`);
      expect(err).toBe(`Report: ${join(folder, "report.html")}`);
      const files = await filesIn(folder);
      expect(files).toEqual(expect.arrayContaining(["report.html", "report.json", "report.md"]));
      expect(files.filter((name) => name.endsWith(".vl.json")).length).toBeGreaterThanOrEqual(12);
    });
  });

  it.each(["short", "full"])(
    "draws every chart of the %s edition beside its specification",
    async (edition) => {
      await inFolder(async (folder) => {
        const flags = ["--out", folder, "--edition", edition, "--language", "de"];
        const morning = ["report", demo("first-morning/catches.csv"), ...flags];
        expect((await command(...morning, "--charts", "svg,png")).code).toBe(0);
        const files = await filesIn(folder);
        const ending = (suffix: string) =>
          files
            .filter((name) => name.endsWith(suffix))
            .map((name) => name.slice(0, -suffix.length));
        const drawn = ending(".vl.json");
        expect(drawn.length).toBeGreaterThan(1);
        expect(ending(".svg")).toEqual(drawn);
        expect(ending(".png")).toEqual(drawn);
        const written = JSON.parse(await readFile(join(folder, manifestName), "utf8")).files;
        for (const name of drawn) {
          const svg = await readFile(join(folder, `${name}.svg`), "utf8");
          expect(svg).toMatch(/^<svg xmlns=.*font-weight="600"[^>]*>[^<]*Tank .*<\/svg>\n$/s);
          const png = await readFile(join(folder, `${name}.png`));
          expect(png.subarray(1, 4).toString("latin1")).toBe("PNG");
          expect(written[`${name}.png`].sha256).toBe(sha256Of(png));
        }

        expect((await command(...morning, "--charts", "svg")).code).toBe(0);
        const left = await filesIn(folder);
        expect(left.some((name) => name.endsWith(".svg"))).toBe(true);
        expect(left.filter((name) => name.endsWith(".png"))).toEqual([]);
      });
    },
  );

  it("draws letters: a picture with words differs from the same without", async () => {
    const picture = (inside: string) =>
      chartPng(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 40">${inside}</svg>`);
    const word = '<text x="5" y="20" font-family="system-ui, sans-serif">ä kg</text>';
    expect(Buffer.from(await picture(word)).equals(await picture(""))).toBe(false);
    expect(Buffer.from(await picture(word)).equals(await picture(word))).toBe(true);
  });

  it("prints the whole analysis as JSON when asked, the same as report.json", async () => {
    await inFolder(async (folder) => {
      const { out } = await command(...season, "--out", folder, "--json");
      expect(JSON.parse(out)).toEqual(
        JSON.parse(await readFile(join(folder, "report.json"), "utf8")),
      );
    });
  });

  it("lets an option count before the setup", async () => {
    await inFolder(async (folder) => {
      const flags = ["--out", folder, "--json", "--level", "90%", "--tolerance", "1.5 %"];
      const { options } = JSON.parse((await command(...season, ...flags)).out);
      expect(options).toMatchObject({ level: 0.9, tolerance: 0.015, scaleDivisionKg: 0.02 });
    });
  });

  it("leaves out the catches it is asked to, and says so in the report", async () => {
    await inFolder(async (folder) => {
      const { code } = await command(...season, "--out", folder, "--leave-out", "1:9:1");
      expect(code).toBe(0);
      const markdown = await readFile(join(folder, "report.md"), "utf8");
      expect(markdown).toContain("Bin 1, fill 9, catch 1");
      expect(markdown).toContain("--leave-out");
    });
  });

  it("has of many meters those that need attention, and the bins it is asked for, and a row for each", async () => {
    await inFolder(async (folder) => {
      const log = inventedFleet(7, { meters: 12, products: ["wheat"], fills: () => 3 });
      const catches = await fileWith(folder, "fleet.csv", catchesToCsv(log.catches));
      const report = ["report", catches, "--out", join(folder, "report"), "--tables"];
      const { out } = await command(...report, "--bin", "3", "--bin", "5");
      expect(out).toContain("12 meters: ");
      expect(out).toContain("Bin 5 (wheat), fill 3");
      expect(out).not.toContain("Bin 6 (wheat), fill 3");
      const html = await readFile(join(folder, "report", "report.html"), "utf8");
      for (const [bin, shown] of [
        ["3", true],
        ["5", true],
        ["6", false],
      ] as const)
        expect(html.includes(`id="bin-${bin}-wheat"`)).toBe(shown);
      const bins = await readFile(join(folder, "report", "tables", "bins.csv"), "utf8");
      expect(bins.trimEnd().split("\n")).toHaveLength(13);
      const { code, err } = await command(...report, "--bin", "no such bin");
      expect(code).toBe(2);
      expect(err).toContain("no such bin");
    });
  });

  it.each(["en", "de"])(
    "says in %s of many meters which operators make a difference, as the report does",
    async (language) => {
      await inFolder(async (folder) => {
        const { catches } = inventedFleet(7, {
          meters: 12,
          products: ["wheat"],
          fills: () => 4,
          beside: (place, fill) => ({
            operator: fill % 2 === 0 ? "KM" : "FB",
            machine: place % 2 === 0 ? "old" : "new",
          }),
        });
        const heavy = catches.map((row) =>
          row.operator === "KM" ? { ...row, netKg: 1.15 * row.netKg } : row,
        );
        const path = await fileWith(folder, "fleet.csv", catchesToCsv(heavy));
        const { out } = await command("report", path, "--out", folder, "--language", language);
        const names = language === "en" ? ["Operator", "Machine"] : ["Bediener", "Maschine"];
        const [operator = "", ...others] = out
          .split("\n")
          .filter((line) => names.some((name) => line.startsWith(`${name}: `)));
        expect(operator).toContain("KM 10");
        expect(others).toEqual([]);
        const report = (await readFile(join(folder, "report.md"), "utf8")).replaceAll("&lt;", "<");
        expect(report).toContain(`- ${operator}`);
        expect(report).toContain(`- ${names[1]}: `);
      });
    },
  );

  it("tells two machines and two seasons apart, on the terminal, in the report and in its tables", async () => {
    await inFolder(async (folder) => {
      const rows = ["north,2025", "north,2026", "south,2026"].flatMap((keys) =>
        [5.9, 6, 6.1].map((kg, i) => `${keys},1,wheat,1,${i + 1},20,${kg}`),
      );
      const header = "machine,season,bin,product,fill,catch,turns,net_kg";
      const catches = await fileWith(folder, "catches.csv", [header, ...rows].join("\n"));
      const flags = ["--tables", "--leave-out", "1/north:1/2026:3"];
      const { out } = await command("report", catches, "--out", join(folder, "out"), ...flags);
      expect(out).toContain("Bin 1/north (wheat), fill 1/2026");
      expect(out).toContain("Bin 1/south (wheat), fill 1/2026");
      const html = await readFile(join(folder, "out", "report.html"), "utf8");
      expect(html).toContain("Bin 1/north, fill 1/2026, catch 3");
      const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
      const json = JSON.parse(await readFile(join(folder, "out", "report.json"), "utf8"));
      expect(json.meters).toMatchObject([
        { bin: "1/north", machine: "north", delivery: { fill: "1/2026" } },
        { bin: "1/south", machine: "south", delivery: { fill: "1/2026" } },
      ]);
      const table = await readFile(join(folder, "out", "tables", "catches.csv"), "utf8");
      expect(table.split("\n").slice(0, 2)).toEqual([
        expect.stringMatching(/^machine,season,bin,product,fill,catch,/),
        expect.stringMatching(/^north,2025,1,wheat,1,1,/),
      ]);
    });
  });

  it("takes a machine or season for all rows, and refuses what is none", async () => {
    await inFolder(async (folder) => {
      const catches = await fileWith(
        folder,
        "catches.csv",
        "bin,product,fill,catch,turns,net_kg\n1,wheat,1,1,20,5.9\n1,wheat,1,2,20,6",
      );
      const flags = ["--key", "season=2026", "--key", "machine=north", "--json"];
      const { code, out } = await command(
        "report",
        catches,
        "--out",
        join(folder, "out"),
        ...flags,
      );
      expect(code).toBe(0);
      // Of one machine and one season: named for programs, and not in words.
      expect(JSON.parse(out).meters).toMatchObject([
        { bin: "1", machine: "north", delivery: { fill: 1 } },
      ]);
      const refused = await command("report", catches, "--key", "field=Hill");
      expect(refused.err).toContain("It must be farm, machine or season with its name");
    });
  });

  it("ends with 1 on cautions only when asked", async () => {
    await inFolder(async (folder) => {
      const catches = await fileWith(
        folder,
        "one.csv",
        "bin,product,fill,catch,turns,net_kg\n1,pea,1,1,20,6\n",
      );
      const out = join(folder, "report");
      expect((await command("report", catches, "--out", out)).code).toBe(0);
      expect((await command("report", catches, "--out", out, "--fail-on", "doubt")).code).toBe(1);
    });
  });

  it("answers repeated readings of a coarse scale", async () => {
    await inFolder(async (folder) => {
      const rows = [6.3, 6.4].flatMap((net, f) =>
        [1, 2, 3, 4].map((number) => `1,pea,${f + 1},${number},20,${net}`),
      );
      const text = ["bin,product,fill,catch,turns,net_kg", ...rows].join("\n");
      const catches = await fileWith(folder, "catches.csv", text);
      const { code, err } = await command("report", catches, "--out", join(folder, "report"));
      expect([code, err]).toEqual([0, `Report: ${join(folder, "report", "report.html")}`]);
    });
  });

  it("ends with an answer whatever division of the scale a setup claims", async () => {
    await inFolder(async (folder) => {
      const out = join(folder, "report");
      for (const [set, kg] of [
        ["season", 300],
        ["first-morning", 1000],
        ["first-morning", 1e9],
      ] as const) {
        const text = JSON.stringify({ scale: { division: { value: kg, unit: "kg" } } });
        const setup = await fileWith(folder, "setup.json", text);
        const flags = ["--setup", setup, "--out", out];
        const { code, err } = await command("report", demo(`${set}/catches.csv`), ...flags);
        expect([code, err], `${set}, ${kg} kg`).toEqual([0, `Report: ${join(out, "report.html")}`]);
      }
    });
  });

  it("writes nothing when the input is bad, and ends with 2", async () => {
    await inFolder(async (folder) => {
      const catches = await fileWith(
        folder,
        "bad.csv",
        "bin,product,fill,catch,turns,net_kg\n1,pea,1,1,-20,6\n",
      );
      const { code, out, err } = await command("report", catches, "--out", join(folder, "report"));
      expect(code).toBe(2);
      expect(out).toBe("");
      expect(err).toContain("row 2, column turns");
      expect(await filesIn(folder)).toEqual(["bad.csv"]);
    });
  });

  it("refuses a folder it cannot write into", async () => {
    await inFolder(async (folder) => {
      const file = await fileWith(folder, "taken", "");
      const { code, err } = await command(...season, "--out", file);
      expect(code).toBe(2);
      expect(err).toContain("a folder that can be written to");
    });
  });

  it("works as a process of its own: answers on stdout, the rest on stderr, no colour codes", async () => {
    await inFolder(async (folder) => {
      const { code, out, err } = await processOf(...season, "--out", folder);
      expect(code).toBe(0);
      expect(out).toContain("kg/turn");
      expect(err).toContain("report.html");
      expect(out + err).not.toContain("\u001b[");
    });
  });
});

describe("evencatch", () => {
  it("explains every command, and its exit codes", async () => {
    for (const args of [
      ["--help"],
      ["report", "--help"],
      ["check", "--help"],
      ["template", "--help"],
    ]) {
      const { code, out } = await command(...args);
      expect(code).toBe(0);
      expect(out).toContain("Usage: evencatch");
      expect(out).toContain("Exit codes");
    }
  });

  it.each([
    [["report"], "missing required argument 'catches'"],
    [["report", "x.csv", "--tolerance", "many"], 'such as "3%"'],
    [["report", "x.csv", "--leave-out", "4"], 'such as "3:4:2"'],
    [["report", "x.csv", "--sooner"], "unknown option '--sooner'"],
    [["reports"], "unknown command 'reports'"],
    [["report", "no-such-file.csv"], "no-such-file.csv"],
    [["check", "no-such-file.csv"], "no-such-file.csv"],
  ])("refuses %j with 2 and says what to do", async (args, message) => {
    const { code, err } = await command(...args);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });

  it("says which version it is", async () => {
    const { version } = JSON.parse(
      await readFile(new URL("../../package.json", import.meta.url), "utf8"),
    );
    expect((await command("--version")).out).toBe(version);
  });
});
