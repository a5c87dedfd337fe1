import { readFile } from "node:fs/promises";
import { createColors } from "picocolors";
import { describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.ts";
import { command, demo, fileWith, inFolder } from "../support/command.ts";

const header = "bin,product,fill,catch,turns,net_kg";

describe("evencatch check", () => {
  it("says what a good file holds", async () => {
    const { code, out } = await command("check", demo("first-morning/catches.csv"));
    expect(code).toBe(0);
    expect(out).toContain("3 catches, nothing wrong.");
  });

  it("says every problem of a bad one, and ends with 2", async () => {
    await inFolder(async (folder) => {
      const path = await fileWith(
        folder,
        "bad.csv",
        `${header}\n1,pea,1,1,0,6\n1,pea,1,2,20,heavy\n`,
      );
      const { code, out, err } = await command("check", path);
      expect(code).toBe(2);
      expect(out).toBe("");
      expect(err).toContain("row 2, column turns");
      expect(err).toContain("row 3, column net_kg");
      const json = JSON.parse((await command("check", path, "--json")).out);
      expect(json.issues.map(({ row }: { row: number }) => row)).toEqual([2, 3]);
    });
  });

  it("says problems and findings in the language asked for, as text and as JSON", async () => {
    await inFolder(async (folder) => {
      const bad = await fileWith(folder, "bad.csv", `${header}\n1,pea,1,1,0,6\n`);
      const german = ["check", bad, "--language", "de"];
      const said =
        "Zeile 2, Spalte turns: gefunden „0“; nötig eine Zahl von 0,001 bis 1000000, in Umdrehungen. Berichtigen Sie die Zahl, oder löschen Sie die Zeile.";
      expect((await command(...german)).err).toBe(`${bad}, ${said}`);
      const [issue] = JSON.parse((await command(...german, "--json")).out).issues;
      expect(issue).toMatchObject({ code: "out-of-range", text: `${bad}, ${said}` });

      const rows = [6, 6.1, 61].map((net, i) => `1,pea,1,${i + 1},20,${net}`).join("\n");
      const odd = await fileWith(folder, "odd.csv", `${header}\n${rows}\n`);
      const { out } = await command("check", odd, "--language", "de");
      expect(out).toContain("odd.csv: 3 Proben, nichts auszusetzen.");
      expect(out).toMatch(/^ansehen: Diese Probe ergibt je Umdrehung das 10.*-Fache der anderen/m);
    });
  });

  it("refuses a file of which no catch counts, as every command does that would answer it", async () => {
    await inFolder(async (folder) => {
      const rows = ["1,pea,1,1,20,6.4,yes,spilt", "1,pea,1,2,20,6.5,yes,spilt"];
      const path = await fileWith(
        folder,
        "none.csv",
        [`${header},exclude,reason`, ...rows].join("\n"),
      );
      const said =
        "rows 2–3 (2 times), column exclude: found every catch excluded; needed at least one catch that counts. Take the mark off one that was caught as it should be, or catch once more.";
      for (const name of ["check", "enough", "report"]) {
        const { code, err } = await command(name, path);
        expect(code, name).toBe(2);
        expect(err, name).toContain(`none.csv, ${said}`);
        expect(err, name).not.toContain("leave-out");
      }
      expect((await command("check", path, "--language", "de")).err).toContain(
        "none.csv, Zeilen 2–3 (2-mal), Spalte exclude: gefunden jede Probe weggelassen; nötig mindestens eine Probe, die zählt.",
      );
    });
  });

  it("reads standard input under the name that the other commands give it", async () => {
    const fed = async (text: string, ...flags: readonly string[]) => {
      const said: string[] = [];
      const say = (line: string) => said.push(line);
      const plain = createColors(false);
      const code = await run(["check", "-", ...flags], {
        out: say,
        err: say,
        stdin: async () => new TextEncoder().encode(text),
        outColors: plain,
        errColors: plain,
      });
      return { code, said: said.join("\n") };
    };
    const good = await readFile(demo("first-morning/catches.csv"), "utf8");
    const fine = await fed(good);
    expect(fine.code).toBe(0);
    expect(fine.said).toMatch(/^stdin\.csv: 3 catches, nothing wrong\.$/m);
    const bad = await fed(`${header}\n1,pea,1,1,0,6\n`);
    expect(bad.code).toBe(2);
    expect(bad.said).toContain("stdin.csv, row 2, column turns");
    const named = await fed(good, "--key", "machine=file");
    expect(named.code).toBe(2);
    expect(named.said).toContain("Standard input has neither");
  });

  it("points at what is suspicious without calling it wrong", async () => {
    await inFolder(async (folder) => {
      const rows = [6, 6.1, 61].map((net, i) => `1,pea,1,${i + 1},20,${net}`).join("\n");
      const path = await fileWith(folder, "odd.csv", `${header}\n${rows}\n`);
      const { code, out } = await command("check", path);
      expect(code).toBe(0);
      expect(out).toMatch(/look at .*times what its fellows do/);
    });
  });

  it("names the division that is read from the weights where no setup gives one", async () => {
    await inFolder(async (folder) => {
      const rows = ["6.05", "5.90", "6.15"].map((net, i) => `1,pea,1,${i + 1},20,${net}`);
      const path = await fileWith(folder, "catches.csv", [header, ...rows].join("\n"));
      const { out } = await command("check", path);
      expect(out).toMatch(
        /look at Your weights end in steps of 50.g; taken as the scale's division/,
      );
      const { cautions } = JSON.parse((await command("check", path, "--json")).out);
      expect(cautions).toContainEqual(
        expect.objectContaining({
          code: "division-read-from-digits",
          facts: { divisionKg: 0.05, step: 0.05, unit: "kg", weights: 3, different: 3 },
        }),
      );
      const text = '{"scale": {"division": {"value": 10, "unit": "g"}}}';
      const setup = await fileWith(folder, "own.json", text);
      expect((await command("check", path, "--setup", setup)).out).not.toContain("end in steps");
    });
  });

  it("checks a setup against the catches, and asks about a name that is nearly theirs", async () => {
    await inFolder(async (folder) => {
      const text = '{"bins": [{"bin": "9"}, {"bin": "1", "product": "barly"}]}';
      const setup = await fileWith(folder, "setup.json", text);
      const flags = ["check", demo("first-morning/catches.csv"), "--setup", setup];
      const { code, out, err } = await command(...flags);
      expect([code, err]).toEqual([0, ""]);
      expect(out).toContain(
        'Product "barly" of the setup has no catches in bin 1; did you mean "barley"?',
      );
      expect(out).not.toContain('"9"');
      const { cautions } = JSON.parse((await command(...flags, "--json")).out);
      expect(cautions.map(({ code: found }: { code: string }) => found)).toContain(
        "setup-name-not-caught",
      );
    });
  });

  it("says which names of a setup have another name now", async () => {
    await inFolder(async (folder) => {
      const setup = await fileWith(folder, "setup.json", '{"cart": {"skid_percent": 3}}');
      const flags = ["check", demo("first-morning/catches.csv"), "--setup", setup];
      expect((await command(...flags)).out).toMatch(
        /look at .*cart\.skid_percent is now called cart\.slip_percent/,
      );
      const { cautions } = JSON.parse((await command(...flags, "--json")).out);
      const found = cautions.filter(({ code }: { code: string }) => code === "old-name");
      expect(found).toMatchObject([{ severity: "note" }]);
    });
  });
});
