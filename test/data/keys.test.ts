import { describe, expect, it } from "vitest";
import { leaveOut } from "../../src/data/leave-out.ts";
import { checkCatches } from "../../src/data/read-catches.ts";
import { suspicions } from "../../src/data/suspicions.ts";
import { catchesToCsv } from "../../src/data/write-csv.ts";
import { csv, logOf, problemsOf } from "../support/catch-files.ts";
import { aCatch } from "../support/catches.ts";
import { german } from "../support/words.ts";

const header = "bin,product,fill,catch,turns,net_kg";
const row = "1,wheat,1,1,20,5.9";

describe("farm, machine and season of a file", () => {
  it("are read under their names, in English and German, in any spelling", async () => {
    for (const keys of ["farm,machine,season", "Betrieb,Maschine,Saison", "FARM,Machine ,Season"]) {
      const log = await logOf(csv(`${keys},${header}`, `Hill,north,2026,${row}`));
      expect(log.catches).toMatchObject([
        { farm: "Hill", machine: "north", season: "2026", extra: {} },
      ]);
    }
  });

  it("are null where the file has no such column, or an empty one", async () => {
    const empty = await logOf(csv(`machine,${header}`, `,${row}`, ",1,wheat,1,2,20,5.8"));
    expect(empty.catches[1]).toMatchObject({ farm: null, machine: null, season: null });
  });

  it("make two meters, and two fills, of the same bin, product, fill and catch", async () => {
    const two = await logOf(csv(`machine,${header}`, `north,${row}`, `south,${row}`));
    expect(two.catches).toHaveLength(2);
    const seasons = await logOf(csv(`season,${header}`, `2025,${row}`, `2026,1,oats,1,1,20,5.9`));
    expect(seasons.catches).toHaveLength(2);
  });

  it("still leave a catch that is named twice", async () => {
    const [text] = await problemsOf(
      csv(`machine,${header}`, `north,${row}`, `south,${row}`, `north,${row}`),
    );
    expect(text).toContain("catch 1 of bin 1/north, wheat, fill 1 again, first in row 2");
  });

  it("are refused where only some rows name them, and in two spellings", async () => {
    expect(await problemsOf(csv(`season,${header}`, `2026,${row}`, ",1,wheat,1,2,20,5.8"))).toEqual(
      [expect.stringContaining('needed a season in every row, since row 2 names "2026"')],
    );
    expect(
      await problemsOf(csv(`machine,${header}`, `North,${row}`, "north,1,wheat,1,2,20,5.8")),
    ).toEqual([expect.stringContaining("Spell each machine in one way throughout.")]);
  });

  it("come back from the text of a file", async () => {
    const catches = [
      aCatch({ row: 2, farm: "Hill", machine: "north", season: "2026", turns: 20, netKg: 6 }),
    ];
    const text = catchesToCsv(catches);
    expect(text.split("\n")[0]).toBe("farm,machine,season,bin,product,fill,catch,turns,net_kg");
    expect((await logOf(csv(text))).catches).toEqual(catches);
    expect(catchesToCsv([aCatch({ turns: 20, netKg: 6 })])).not.toContain("machine");
  });
});

describe("a catch that the file names twice", () => {
  it("is advised to name machine or season, never to be deleted", async () => {
    const [text] = await problemsOf(csv(header, row, row));
    expect(text).toContain(
      "Two machines, or two seasons? Name them in a column machine or season.",
    );
    expect(text).not.toMatch(/delete/i);
    const check = await checkCatches(csv(header, row, row));
    const said = check.ok ? "" : check.issues.map((issue) => german().problems.text(issue)).join();
    expect(said).toContain("Nennen Sie sie in einer Spalte `machine` oder `season`.");
    expect(said).not.toMatch(/lösch/i);
  });
});

describe("keys given for all rows", () => {
  it("stand in each of them", async () => {
    const log = await logOf(csv(header, row, "1,wheat,1,2,20,5.8"), {
      keys: { machine: "north", season: "2026" },
    });
    expect(log.catches).toMatchObject([
      { machine: "north", season: "2026", farm: null },
      { machine: "north", season: "2026", farm: null },
    ]);
  });

  it("stand in a file of turns and masses alone", async () => {
    const log = await logOf(csv("turns,net_kg", "20,5.9"), { keys: { season: "2026" } });
    expect(log.catches).toMatchObject([{ season: "2026", bin: "1" }]);
  });

  it("are refused where the file has the column, in either language, and where they are none", async () => {
    const file = csv(`Saison,${header}`, `2025,${row}`);
    await expect(checkCatches(file, { keys: { season: "2026" } })).rejects.toThrow(
      "since the file has a column season",
    );
    const keys: object = { field: "Hill" };
    await expect(checkCatches(csv(header, row), { keys })).rejects.toThrow(
      "one of farm, machine, season",
    );
    await expect(checkCatches(csv(header, row), { keys: { farm: " " } })).rejects.toThrow("a name");
  });
});

describe("leaving out a catch of several machines or seasons", () => {
  const lines = ["north,2025", "north,2026", "south,2026"].map((keys) => `${keys},${row}`);
  const read = () => logOf(csv(`machine,season,${header}`, ...lines));
  const left = async (bin: string, fill: number | string) =>
    leaveOut(await read(), [{ bin, fill, catch: 1 }], "slip").catches.map(
      ({ leftOut }) => leftOut !== null,
    );

  it("takes the names that reports have", async () => {
    expect(await left("1/north", "1/2026")).toEqual([false, true, false]);
    expect(await left("1/south", 1)).toEqual([false, false, true]);
  });

  it("asks for the name of the bin, then of the fill, where several are meant", async () => {
    await expect(left("1", 1)).rejects.toThrow(
      "exists in bin 1/north and in bin 1/south, so name the bin so",
    );
    await expect(left("1/north", 1)).rejects.toThrow(
      "exists in fill 1/2025 and in fill 1/2026, so name the fill so",
    );
  });
});

describe("what is suspicious in a log of two machines", () => {
  it("holds a catch against its own machine's, and names both", () => {
    const of = (machine: string, kg: readonly number[]) =>
      kg.map((netKg, i) => aCatch({ machine, catch: i + 1, turns: 20 + i, netKg }));
    // Ten times the other machine's: no slip, another meter.
    const clean = [...of("north", [6, 6.1, 6.2]), ...of("south", [60, 61, 62])];
    expect(suspicions(clean, "kg")).toEqual([]);
    const slipped = [...of("north", [6, 6.1, 62]), ...of("south", [6, 6.1, 6.2])];
    expect(suspicions(slipped, "kg")).toMatchObject([
      { code: "catch-far-from-fellows", where: { bin: "1/north", fill: 1, catches: [3] } },
    ]);
  });
});
