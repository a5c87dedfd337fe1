import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isTypedCatch, readTypedCatches } from "../../src/cli/typed-catches.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { command, inFolder } from "../support/command.ts";
import { english } from "../support/words.ts";

const { needed } = english().usage;
const kg = { turns: 20, unit: "kg" } as const;

const netOf = async (...catches: string[]) =>
  (await readTypedCatches(catches, kg, needed)).catches.map(({ turns, netKg }) => [turns, netKg]);

describe("catches typed behind the command", () => {
  it("are told from files", () => {
    for (const one of ["6.3", "6,3", "20:6.3", "6.3kg", "20:14lb", "6300g", "7"])
      expect(isTypedCatch(one), one).toBe(true);
    for (const file of ["catches.csv", "./6.3", "6.3.csv", "a:6.3b", "-6"])
      expect(isTypedCatch(file), file).toBe(false);
  });

  it("take turns and unit of all unless they say their own", async () => {
    expect(await netOf("6.3", "10:3.2")).toEqual([
      [20, 6.3],
      [10, 3.2],
    ]);
    const [pounds] = await netOf("14lb");
    expect(pounds?.[1]).toBeCloseTo(14 * 0.45359237, 12);
    const mixed = await netOf("6.3", "14lb", "6300g");
    expect(mixed.map((row) => row[1]?.toFixed(6))).toEqual(["6.300000", "6.350293", "6.300000"]);
    expect(await netOf("6,3", "6,5")).toEqual([
      [20, 6.3],
      [20, 6.5],
    ]);
  });

  it("are the same as a sheet of turns and masses, to the digit", async () => {
    const catches = fc.array(
      fc.record({
        turns: fc.integer({ min: 1, max: 60 }),
        tens: fc.integer({ min: 10, max: 2_000 }),
      }),
      { minLength: 1, maxLength: 8 },
    );
    await fc.assert(
      fc.asyncProperty(catches, async (rows) => {
        const asTyped = rows.map(({ turns, tens }) => `${turns}:${tens / 100}`);
        const lines = rows.map(({ turns, tens }) => `${turns},${tens / 100}`);
        const text = ["turns,net_kg", ...lines].join("\n");
        const read = await readCatches({ name: "typed.csv", text });
        expect(await readTypedCatches(asTyped, kg, needed)).toEqual(read);
      }),
      { numRuns: 50 },
    );
  });
});

describe("a file of turns and masses alone", () => {
  it("is the first fill of one bin, and says that this was taken for granted", async () => {
    const log = await readCatches({ name: "a.csv", text: "turns,net_kg\n20,6.3\n20,6.5" });
    expect(log.catches).toMatchObject([
      { bin: "1", fill: 1, catch: 1, row: 2 },
      { bin: "1", fill: 1, catch: 2, row: 3 },
    ]);
    expect(log.cautions).toContainEqual(
      expect.objectContaining({ code: "one-bin-taken", facts: { catches: 2 } }),
    );
  });

  it("is refused as before where more was meant", async () => {
    for (const header of ["bin,turns,net_kg", "turns,net_kg,lot"])
      await expect(
        readCatches({
          name: "a.csv",
          text: `${header}\n${"1,20,6.3".split(",").slice(0, header.split(",").length).join(",")}`,
        }),
        header,
      ).rejects.toThrow("needed a column");
  });
});

describe("evencatch enough with typed catches", () => {
  it("answers in few lines, and repeats what it read", async () => {
    const { code, out } = await command("enough", "6.3", "6.5", "6.4", "--turns", "20");
    expect(code).toBe(0);
    const lines = out.split("\n").filter((line) => line !== "");
    expect(lines[0]).toBe(
      "Read as: 20 turns 6.3\u00a0kg, 20 turns 6.5\u00a0kg, 20 turns 6.4\u00a0kg.",
    );
    expect(lines[1]).toBe("Bin 1 (–), fill 1: Set 0.3200\u00a0kg/turn");
    expect(lines.length).toBeLessThanOrEqual(6);
  });

  it("answers as the same sheet does, in both languages and unit systems", async () => {
    await inFolder(async (folder) => {
      const file = join(folder, "catches.csv");
      await writeFile(file, "turns,net_kg\n20,6.3\n20,6.5\n10,3.2\n");
      for (const more of [[], ["--language", "de"], ["--units", "us"]]) {
        const typed = await command(
          "enough",
          "20:6.3kg",
          "20:6.5kg",
          "10:3.2kg",
          "--json",
          ...more,
        );
        const sheet = await command("enough", file, "--json", ...more);
        expect(typed.out).toBe(sheet.out);
      }
    });
  });

  it("sets the drive that flags tell of", async () => {
    const drive = ["--target", "110kg/ha", "--width", "12m", "--wheel", "2.1m"];
    const { out } = await command("enough", "6.3", "6.5", "6.4", "--turns", "20", ...drive);
    // 110 kg/ha ÷ 0.32 kg/turn = 343.75 turns/ha; 10 000 m² ÷ (12 m × 2.1 m) = 396.83 wheel turns/ha.
    expect(out).toContain("Set a drive ratio of 0.8663");
    const { out: json } = await command("enough", "6.3", "--turns", "20", ...drive, "--json");
    expect(JSON.parse(json).answers).toHaveLength(1);
  });

  it("takes a target in bushels with the mass of one, and neither without the other", async () => {
    const asked = [
      "enough",
      "6.3",
      "6.5",
      "6.4",
      "--turns",
      "20",
      "--width",
      "12m",
      "--wheel",
      "2.1m",
    ];
    const by = (...more: string[]) => command(...asked, ...more);
    // 1.5 bu/ac × 60 lb = 90 lb/ac.
    const bushels = await by("--target", "1.5bu/ac", "--bushel", "60lb");
    expect(bushels.out).toBe((await by("--target", "90lb/ac")).out);
    // 90 × 0.45359237 kg ÷ 0.40468564224 ha = 100.8766 kg/ha; ÷ 0.32 × 12 × 2.1 ÷ 10 000 = 0.79440.
    expect(bushels.out).toContain("Set a drive ratio of 0.7944");
    const alone = await by("--target", "1.5bu/ac");
    expect(alone).toMatchObject({ code: 2 });
    expect(alone.err).toContain("bu/ac together with the mass of a bushel");
    expect(await by("--bushel", "60lb")).toMatchObject({ code: 2 });
  });

  it("puts flags over a setup file", async () => {
    await inFolder(async (folder) => {
      const setup = join(folder, "setup.json");
      const target = { value: 90, unit: "kg/ha" };
      await writeFile(setup, JSON.stringify({ bins: [{ bin: "1", target_rate: target }] }));
      const asked = ["enough", "6.4", "6.4", "6.5", "--turns", "20", "--setup", setup];
      const by = async (...more: string[]) =>
        (await command(...asked, ...more, "--width", "12m", "--wheel", "2.1m")).out;
      expect(await by("--target", "180kg/ha")).not.toBe(await by());
      expect(await by("--target", "90kg/ha")).toBe(await by());
    });
  });

  it("refuses what is neither, and says what to write", async () => {
    const both = await command("enough", "6.3", "x.csv", "--turns", "20");
    expect(both).toMatchObject({ code: 2 });
    expect(both.err).toContain('"6.3" is a catch and "x.csv" is a file');
    const noTurns = await command("enough", "6.3", "6.4");
    expect(noTurns.err).toContain("add --turns 20 for all, or write 20:6.3");
    const nothing = await command("enough", "0", "6.4", "--turns", "20");
    expect(nothing.err).toContain("needed a net mass above 0");
    const unit = await command("enough", "6.3stone", "--turns", "20", "--language", "de");
    expect(unit.err).toContain("ist keine Probe");
    const rate = await command("enough", "6.3", "--turns", "20", "--target", "110kg/acre");
    expect(rate).toMatchObject({ code: 2 });
    expect(rate.err).toContain("target_rate");
  });
});
