import { copyFile, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { references } from "../../src/wording/references.ts";
import { englishIn } from "../support/bilingual.ts";
import { command, demo, filesIn, fileWith, inFolder } from "../support/command.ts";

const morning = demo("herbstmorgen/catches.csv");
const broken = [
  "Tank;Produkt;Füllung;Probe;Umdrehungen;Netto_kg;weglassen;Grund",
  "1;Weizen;1;1;zwanzig;5,9;;",
  "1;Weizen;1;2;20;-1;;",
  ";Weizen;1;3;20;5,9;vielleicht;",
  "1;Weizen;1,5;3;20;5,9;ja;",
].join("\n");

/** What is asked, in a folder that holds the morning, a broken file and a broken setup, and how it ends. */
const asked: readonly (readonly [string, readonly string[], 0 | 2])[] = [
  ["a report", ["report", "morgen.csv", "--out", "bericht"], 0],
  ["a full report", ["report", "morgen.csv", "--out", "voll", "--edition", "full"], 0],
  ["whether it is enough", ["enough", "morgen.csv", "--detail"], 0],
  [
    "the same of typed weights",
    ["enough", "6.3", "6.5", "6.4", "--turns", "20", "--tolerance", "3%"],
    0,
  ],
  ["a file in order", ["check", "morgen.csv"], 0],
  ["a broken file", ["check", "kaputt.csv"], 2],
  ["a report of a broken file", ["report", "kaputt.csv"], 2],
  ["a file that is missing", ["check", "fehlt.csv"], 2],
  ["a folder for a file", ["check", "."], 2],
  ["a broken setup", ["check", "morgen.csv", "--setup", "kaputt.json"], 2],
  ["the files to start from", ["template", "vorlage"], 0],
  ["sheets to print", ["sheet", "morgen.csv", "--out", "zettel"], 0],
  ["an empty sheet to print", ["sheet", "--out", "leer"], 0],
  ["a plan", ["plan", "Weizen", "Gerste", "--out", "versuch", "--margin", "4%"], 0],
  ["a plan of one product", ["plan", "Weizen"], 2],
  ["a sheet of one's own", ["import", "morgen.csv", "--out", "sauber.csv"], 0],
  ["one more catch", ["add", "neu.csv", "20:6.3", "--bin", "1", "--tare", "0.42"], 0],
  ["one more catch of no bin", ["add", "neu.csv", "20:6.3"], 2],
  [
    "how much two meters scatter, too few to lend",
    ["spreads", "morgen.csv", "--out", "streuungen.json"],
    2,
  ],
  ["an unknown option", ["report", "morgen.csv", "--tolleranz", "3"], 2],
  ["an unknown command", ["rapport"], 2],
  ["a missing argument", ["report"], 2],
  ["an argument too many", ["check", "morgen.csv", "neu.csv"], 2],
  ["an option without its value", ["report", "morgen.csv", "--tolerance"], 2],
  ["a share that may mean two things", ["report", "morgen.csv", "--tolerance", "0.03"], 2],
  ["a choice that is none", ["report", "morgen.csv", "--weighting", "sehr"], 2],
  ["a catch nobody took", ["report", "morgen.csv", "--leave-out", "9:9:9"], 2],
  ["a bin that is not there", ["report", "morgen.csv", "--bin", "9"], 2],
  ["a trial of two equal names", ["plan", "Weizen", "Weizen"], 2],
  ["a trial without end", ["plan", "Weizen", "Gerste", "--fills", "9000"], 2],
  ["a sheet of a file that has none", ["check", "morgen.csv", "--sheet", "Tabelle1"], 2],
];

/** Names, values and paths that stand in every language as they are written. */
const asWritten =
  /`[^`]*`|"[^"]*"|„[^“]*“|bei bins|title, .*\$schema|--?[a-z-]+|\S*\/\S*|\S+\.(csv|json|md|html|svg)\b/g;
/** Sources stand as they were published. */
const published = Object.values(references);
const textFiles = /\.md$|^vorlage.catches\.csv$/;

describe("evencatch --language de", () => {
  it.each(asked)("answers %s without an English word", async (_, args, ends) => {
    await inFolder(async (folder) => {
      await copyFile(morning, join(folder, "morgen.csv"));
      await copyFile(morning, join(folder, "neu.csv"));
      await fileWith(folder, "kaputt.csv", broken);
      await fileWith(
        folder,
        "kaputt.json",
        '{"scale": {"division": 3}, "tollerance": 2, "bins": 1}',
      );
      const before = new Set(await filesIn(folder));
      const inside = args.map((arg) =>
        /\.(csv|json)$|^(bericht|voll|vorlage|zettel|leer|versuch|\.)$/.test(arg)
          ? join(folder, arg)
          : arg,
      );
      const { code, out, err } = await command(...inside, "--language", "de");
      expect(code, err).toBe(ends);
      expect(`${out}${err}`).not.toBe("");
      const told = `${out}\n${err}`.replaceAll(folder, "/");
      expect(englishIn(told.replaceAll(asWritten, " ")), told).toEqual([]);
      for (const name of (await filesIn(folder)).filter((one) => !before.has(one)))
        if (textFiles.test(name)) {
          const text = await readFile(join(folder, name), "utf8");
          const own = published
            .reduce((rest, one) => rest.replaceAll(one, " "), text)
            .replaceAll(asWritten, " ");
          expect(englishIn(own), name).toEqual([]);
        }
    });
  });
});
