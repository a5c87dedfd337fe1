import { copyFile, readFile } from "node:fs/promises";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { flags } from "../../src/cli/flags.ts";
import { englishIn } from "../support/bilingual.ts";
import { command, demo, fileWith, inFolder } from "../support/command.ts";
import { english, german } from "../support/words.ts";

const commands = ["", ...Object.keys(flags)];
const helps = { en: new Map<string, string>(), de: new Map<string, string>() };

beforeAll(async () => {
  for (const language of ["en", "de"] as const)
    for (const name of commands) {
      const asked = [...(name === "" ? [] : [name]), "--help", "--language", language];
      const { code, out, err } = await command(...asked);
      expect([code, err]).toEqual([0, ""]);
      helps[language].set(name, out);
    }
});

const oneLine = (text: string) => text.replaceAll(/\s+/g, " ").trim();
const flagsIn = (text = "") => text.match(/(?<![\w-])--?[a-zA-Z][a-z-]*/g);

describe.each([
  ["en", english()],
  ["de", german()],
] as const)("the help in the language %s", (language, { help }) => {
  it("says all it can say somewhere", () => {
    const said = oneLine([...helps[language].values()].join("\n"));
    const unsaid = Object.entries(help).filter(([, text]) => !said.includes(oneLine(text)));
    // Said after an error only.
    expect(unsaid.map(([key]) => key)).toEqual(["afterError"]);
  });
});

describe.each(commands)("the German help of evencatch %s", (name) => {
  const [en, de] = [() => helps.en.get(name), () => helps.de.get(name)];

  it("names the same flags in the same order", () => {
    expect(flagsIn(en())).toContain("--help");
    expect(flagsIn(de())).toEqual(flagsIn(en()));
  });

  it("holds no English word, whatever commander says by itself", () => {
    const text = (de() ?? "").replaceAll(/--[a-z-]+|"[^"]*"/g, " ");
    expect(text).toMatch(/^Aufruf: evencatch .*\n\n.*[.?]\n/s);
    expect(englishIn(text)).toEqual([]);
    expect(text).not.toMatch(/Usage|Arguments|Options\b|Commands|display|output|choices|default/);
    expect(text).not.toMatch(/<(?!n>|kg)[a-z]|\[[a-z]/);
  });
});

describe("every text of the help", () => {
  it("is another one in German", () => {
    const { help } = english();
    const same = Object.entries(german().help).filter(([, text]) =>
      Object.values(help).includes(text),
    );
    expect(same).toEqual([]);
  });
});

describe("evencatch --language de", () => {
  it("says in German where things came from and went to, and what is in the way", async () => {
    await inFolder(async (folder) => {
      const path = join(folder, "catches.csv");
      await copyFile(demo("first-morning/catches.csv"), path);
      await fileWith(folder, "setup.json", "{}");
      const out = join(folder, "out");
      const asked = ["--out", out, "--language", "de"];
      const report = await command("report", path, ...asked);
      expect(report.err.split("\n")).toEqual([
        `Setup-Datei: ${join(folder, "setup.json")}, neben den Proben gefunden (--no-setup verwendet sie nicht)`,
        `Bericht: ${join(out, "report.html")}`,
      ]);
      await fileWith(out, "report.md", "mine");
      const again = await command("report", path, ...asked);
      expect([again.code, again.err]).toEqual([
        2,
        expect.stringContaining("Nichts wurde geschrieben."),
      ]);
      expect(again.err).toContain("Geändert, seit evencatch es geschrieben hat: report.md.");

      const files = join(folder, "files");
      expect((await command("template", files, "--language", "de")).code).toBe(0);
      expect(await readFile(join(files, "columns.md"), "utf8")).toMatch(/^# Was in die Dateien/);
      expect((await command("plan", "Raps", "--language", "de")).err).toMatch(/nur „Raps“\.$/);
    });
  });
});
