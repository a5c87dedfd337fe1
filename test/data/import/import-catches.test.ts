import { readFile } from "node:fs/promises";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { importCatches } from "../../../src/data/import/import-catches.ts";
import type { ImportOptions } from "../../../src/data/import/result.ts";
import { makeCatch } from "../../../src/data/make-catch.ts";
import { readCatches } from "../../../src/data/read-catches.ts";
import { catchesToCsv, rowsToCsv } from "../../../src/data/write-csv.ts";
import { english } from "../../support/words.ts";
import { catchesMeant, ownSheets } from "../../tools/make-own-sheets.ts";

const own = (...lines: readonly string[]) => [{ name: "heft.csv", text: lines.join("\n") }];
const head = "Tank;Produkt;Füllung;Probe;Umdr.;Netto (kg)";

/** Answers to all that is asked of a file. */
const answers: Readonly<Record<string, ImportOptions>> = {
  "abdrehbuch.xlsx": {},
  "bins.xlsx": { map: { "Weight (lb)": "net_lb", sheet: "bin" }, dates: "dmy" },
  "two-drills.xlsx": { map: { sheet: "season" }, decimal: "point" },
  "saatgut.txt": {},
};

describe.each(Object.keys(ownSheets))("the invented file %s", (name) => {
  const source = async () => {
    const bytes = await readFile(join(import.meta.dirname, "sheets", name));
    return [{ name, bytes: new Uint8Array(bytes) }];
  };

  it("is read by nothing but answers to what is asked, to every catch that was meant", async () => {
    const { log, asked } = await importCatches(await source(), answers[name]);
    expect(asked).toEqual([]);
    const read = log?.catches.map((row) => [
      row.season === null ? row.bin : `${row.bin}/${row.machine}/${row.season}`,
      row.product,
      row.fill,
      row.catch,
      row.turns,
    ]);
    expect(read).toEqual(catchesMeant[name]?.map((row) => row.slice(0, 5)));
    log?.catches.forEach(({ netKg }, i) => {
      expect(netKg).toBeCloseTo(catchesMeant[name]?.[i]?.[5] ?? Number.NaN, 9);
    });
  });

  it("gives a clean file that is the same when it is imported again, with nothing assumed", async () => {
    const first = await importCatches(await source(), answers[name]);
    const text = rowsToCsv(first.catches);
    const again = await importCatches([{ name: "clean.csv", text }]);
    expect(rowsToCsv(again.catches)).toBe(text);
    expect([again.assumed, again.asked, again.setAside]).toEqual([[], [], []]);
  });
});

describe("the invented files", () => {
  it("ask what could be read two ways, and have no log until it is answered", async () => {
    const bytes = new Uint8Array(await readFile(join(import.meta.dirname, "sheets", "bins.xlsx")));
    const { log, catches, asked } = await importCatches([{ name: "bins.xlsx", bytes }]);
    expect([log, catches]).toEqual([null, []]);
    expect(new Set(asked.map(({ problem }) => problem))).toEqual(
      new Set(["weight-kind", "column-open", "dates-two-ways"]),
    );
  });

  it("say once what was assumed, with rows, and set aside what is no catch", async () => {
    const bytes = new Uint8Array(
      await readFile(join(import.meta.dirname, "sheets", "abdrehbuch.xlsx")),
    );
    const { assumed, setAside, log } = await importCatches([{ name: "abdrehbuch.xlsx", bytes }]);
    const facts = assumed.map(({ kind, facts }) => JSON.stringify([kind, facts]));
    expect(new Set(facts).size).toBe(facts.length);
    expect(assumed).toContainEqual(
      expect.objectContaining({ kind: "filled-down", count: 3, rows: [7, 8, 11] }),
    );
    expect(setAside.map(({ row, why }) => `${row} ${why}`)).toEqual([
      "1 title",
      "2 title",
      "9 mean",
      "12 total",
      "1 other-sheet",
    ]);
    expect(log?.missed).toMatchObject([{ fill: 1, catch: 3, reason: "verschüttet" }]);
  });
});

const meant = fc.record({
  bin: fc.constantFrom("1", "rear"),
  fill: fc.integer({ min: 1, max: 3 }),
  turns: fc.integer({ min: 5, max: 60 }),
  netKg: fc.integer({ min: 100, max: 9_999 }).map((grams) => grams / 1000),
  note: fc.constantFrom(null, "after rain", "a; b, c"),
  takenAt: fc.constantFrom(null, "2026-04-12", "2026-04-12T07:30"),
  meterRpm: fc.constantFrom(null, 30, 32.5),
});

const logs = fc
  .array(meant, { minLength: 1, maxLength: 12 })
  .map((rows) =>
    rows.map((row, i) =>
      makeCatch({ ...row, product: row.bin === "1" ? "oats" : "peas", catch: i + 1 }),
    ),
  );

describe("a clean file", () => {
  it("is itself when it is imported, and assumes nothing", async () => {
    await fc.assert(
      fc.asyncProperty(logs, async (catches) => {
        const text = catchesToCsv(catches);
        const source = { name: "catches.csv", text };
        const imported = await importCatches([source]);
        expect([imported.assumed, imported.asked, imported.setAside]).toEqual([[], [], []]);
        const read = await readCatches(source);
        expect(imported.log?.catches).toEqual(read.catches);
        expect(rowsToCsv(imported.catches)).toBe(text);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a sheet of somebody's own", () => {
  const lines = [
    "Tank;Produkt;Füllung;Umdr.;Netto (kg);Datum;Schlag",
    "1;Hafer;1;20;6,30;12.4.2026;Nord",
    ";;;20;6,35;;",
    ";;2;40;12,60;13.4.2026;Süd",
    "2;Erbsen;1;20;8,10;;",
    ";Mittel;;;8,10;;",
  ].map((line) => line.split(";"));

  it("means the same whatever the order of its columns", async () => {
    const usual = await importCatches(own(...lines.map((cells) => cells.join(";"))));
    expect(usual.log?.catches).toHaveLength(4);
    const orders = fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6], { minLength: 7 });
    await fc.assert(
      fc.asyncProperty(orders, async (order) => {
        const shuffled = lines.map((cells) => order.map((i) => cells[i]).join(";"));
        const { catches, asked } = await importCatches(own(...shuffled));
        expect(asked).toEqual([]);
        expect(rowsToCsv(catches)).toBe(rowsToCsv(usual.catches));
      }),
      { numRuns: 40 },
    );
  });

  it("is asked for a fill where a new bin leaves it blank, and not given the old one", async () => {
    const { log, asked } = await importCatches(
      own(head, "1;Hafer;3;1;20;6,3", "2;Hafer;;1;20;6,4"),
    );
    expect(log).toBeNull();
    expect(asked.map(({ row, column, problem }) => [row, column, problem])).toEqual([
      [3, "Füllung", "blank-below"],
    ]);
  });

  it("asks whether a fill stays in the tank overnight, and keeps to the season where the machine changes", async () => {
    const rows = [
      "Saison;Maschine;Tank;Produkt;Füllung;Umdr.;Netto (kg);Datum",
      "2026;Nord;1;Hafer;1;20;6,3;12.4.2026",
      ";;;;;20;6,4;13.4.2026",
      ";Süd;1;Hafer;1;20;6,5;",
    ];
    const open = await importCatches(own(...rows));
    expect(open.asked.map(({ row, problem }) => [row, problem])).toEqual([[3, "blank-below"]]);
    const told = await importCatches(own(...rows), { fillDown: ["fill"] });
    expect(told.log?.catches.map((row) => [row.season, row.machine, row.fill, row.catch])).toEqual([
      ["2026", "Nord", 1, 1],
      ["2026", "Nord", 1, 2],
      ["2026", "Süd", 1, 1],
    ]);
  });

  it("does not cost a catch for a date that cannot be read", async () => {
    const { log, catches, assumed } = await importCatches(
      own(`${head};Datum`, "1;Hafer;1;1;20;6,3;nach Ostern", "1;Hafer;1;2;20;6,4;31.02.2026"),
    );
    expect(log?.catches.map(({ takenAt }) => takenAt)).toEqual([null, null]);
    expect(catches[0]).toMatchObject({ "Datum as written": "nach Ostern" });
    expect(assumed.find(({ kind }) => kind === "dates-left-out")?.rows).toEqual([2, 3]);
  });

  it("keeps a time as it was written where it is the time of no date", async () => {
    const { catches, assumed } = await importCatches(
      own(
        `${head};Datum;Uhrzeit`,
        "1;Hafer;1;1;20;6,3;;7:05",
        "1;Hafer;1;2;20;6,4;25.4.2026;morgens",
        // The date has a time of its own, which a second one must not be put behind.
        "1;Hafer;1;3;20;6,5;25.4.2026 8:15;9:00",
        "1;Hafer;1;4;20;6,6;nach Ostern;8:00",
        "1;Hafer;1;5;20;6,7;25.4.2026;7:05",
      ),
    );
    const kept = catches.map((row) => [row.taken_at, row["Datum as written"], row.Uhrzeit]);
    expect(kept).toEqual([
      [null, null, "7:05"],
      ["2026-04-25", null, "morgens"],
      ["2026-04-25T08:15", null, "9:00"],
      [null, "nach Ostern 8:00", null],
      ["2026-04-25T07:05", null, null],
    ]);
    expect(assumed.find(({ kind }) => kind === "time-joined")?.rows).toEqual([6]);
  });

  it("never takes a figure for thousands or decimals by guess", async () => {
    const rows = [head, "1;Hafer;1;1;20;6,300", "1;Hafer;1;2;20;6,400"];
    // A leading digit before one mark and three digits may be thousands.
    const open = await importCatches(own(...rows));
    expect([open.log, open.asked[0]?.problem]).toEqual([null, "decimal-two-ways"]);
    const told = await importCatches(own(...rows), { decimal: "comma" });
    expect(told.log?.catches.map(({ netKg }) => netKg)).toEqual([6.3, 6.4]);
    const points = await importCatches(
      own(head, "1;Hafer;1;1;20;1.234,5", "1;Hafer;1;2;20;1.234,6"),
    );
    expect(points.log?.catches[0]?.netKg).toBe(1234.5);
  });

  it("takes an answer for the tare where none is written, and for no catch that was spilled", async () => {
    const rows = [
      "Tank;Produkt;Füllung;Umdr.;Brutto (kg);Tara (kg)",
      "1;Hafer;1;20;6,72;0,50",
      "1;Hafer;1;20;6,80;",
      "1;Hafer;1;20;verschüttet;",
    ];
    for (const options of [{ set: { tare_kg: "0.50" } }, { fillDown: ["tare"] }]) {
      const { log, asked } = await importCatches(own(...rows), options);
      expect(asked).toEqual([]);
      expect(log?.catches.map(({ netKg }) => netKg.toFixed(3))).toEqual(["6.220", "6.300"]);
      expect(log?.missed).toHaveLength(1);
    }
    const other = await importCatches(own(...rows), { set: { tare_kg: "0.42" } });
    expect(other.log?.catches.map(({ tareKg }) => tareKg)).toEqual([0.5, 0.42]);
  });

  it("asks about turns that are written once, and takes an answer", async () => {
    const rows = [head, "1;Hafer;1;1;20;6,3", "1;Hafer;1;2;;6,4"];
    const { asked } = await importCatches(own(...rows));
    expect(asked.map(({ problem, row }) => [problem, row])).toEqual([["blank-below", 3]]);
    const told = await importCatches(own(...rows), { fillDown: ["turns"] });
    expect(told.log?.catches.map(({ turns }) => turns)).toEqual([20, 20]);
  });

  it("reads the day from the one date that settles it, and asks where none does", async () => {
    const dated = (...days: readonly string[]) =>
      own(`${head};Datum`, ...days.map((day, i) => `1;Hafer;1;${i + 1};20;6,3;${day}`));
    const settled = await importCatches(dated("03/04/2026", "25/04/2026"));
    expect(settled.log?.catches.map(({ takenAt }) => takenAt)).toEqual([
      "2026-04-03",
      "2026-04-25",
    ]);
    const american = await importCatches(dated("03/04/2026", "04/25/2026"));
    expect(american.log?.catches[0]?.takenAt).toBe("2026-03-04");
    const both = await importCatches(dated("25/04/2026", "04/25/2026", "03/04/2026"));
    expect(both.asked.map(({ row }) => row)).toEqual([4]);
    expect(both.log?.catches.map(({ takenAt }) => takenAt?.slice(5) ?? null)).toEqual([
      "04-25",
      "04-25",
      null,
    ]);
  });

  it("finds a mean without a word by its figure, and a row that is told to be none", async () => {
    const rows = [head, "1;Hafer;1;1;20;6,3", ";;;2;20;6,5", ";;;;;6,4"];
    const { log, setAside } = await importCatches(own(...rows));
    expect(log?.catches).toHaveLength(2);
    expect(setAside).toMatchObject([{ row: 4, why: "mean" }]);
    const told = await importCatches(own(...rows), { aside: [{ row: 3 }] });
    expect(told.setAside).toContainEqual(expect.objectContaining({ row: 3, why: "told" }));
  });

  it("names file, row and column as it spells them, in every problem", async () => {
    const { asked } = await importCatches(own("", "Heft", head, "1;Hafer;1;1;zwanzig;6,3"));
    expect(asked.map(({ text }) => text)).toEqual([
      'heft.csv, row 4, column Umdr.: found "zwanzig"; needed a number from 0.001 to 1000000, in turns. Write the figure alone, without unit, spaces or thousands separators, or delete the row.',
    ]);
  });

  it("refuses a line that goes on behind its head, since a comma has cut a figure in two", async () => {
    const { log, asked } = await importCatches([
      { name: "a.csv", text: "tank,crop,fill,rep,revs,net kg\n1,oats,1,1,20,6,3" },
    ]);
    expect([log, asked.map(({ problem, row }) => [problem, row])]).toEqual([
      null,
      [["too-many-cells", 2]],
    ]);
  });

  it("is refused with a typed error where it is no table at all, or an answer names no column", async () => {
    const broken = { name: "a.xlsx", bytes: new Uint8Array([0x50, 0x4b, 3, 4, 9]) };
    await expect(importCatches([broken])).rejects.toThrow("needed a whole .xlsx workbook");
    await expect(importCatches(own(head), { map: { Tank: "tonk" } })).rejects.toMatchObject({
      name: "OptionError",
      option: "map",
    });
    const strange = { name: "a.csv", bytes: new Uint8Array([0x62, 0x3b, 0x81, 0x0a]) };
    await expect(importCatches([strange])).rejects.toThrow("UTF-8");
  });

  it("is never read with a figure that the file does not hold, whatever is in it", async () => {
    const cell = fc.constantFrom(
      "",
      "1",
      "Hafer",
      "6,3",
      "6.300",
      "20 U",
      "Mittel",
      '"',
      "12/04/26",
      "-",
      "x",
    );
    const rows = fc.array(fc.array(cell, { minLength: 6, maxLength: 6 }), { maxLength: 6 });
    await fc.assert(
      fc.asyncProperty(rows, async (cells) => {
        const text = cells.map((row) => row.map((one) => (one === '"' ? '""""' : one)).join(";"));
        const { log, asked } = await importCatches(own(head, ...text));
        if (log === null) expect(asked.length).toBeGreaterThan(0);
        else for (const { netKg } of log.catches) expect([6.3, 1]).toContain(netKg);
      }),
      { numRuns: 150 },
    );
  });
});

describe("several files", () => {
  it("are one table, and what is wrong between them is told where it lies", async () => {
    const csv = (name: string, ...rows: readonly string[]) => ({
      name,
      text: [head, ...rows].join("\n"),
    });
    const { log, asked } = await importCatches([
      csv("a.csv", "1;Hafer;1;1;20;6,3"),
      csv("b.csv", "", "1;Hafer;1;1;20;6,4"),
    ]);
    expect(log).toBeNull();
    expect(asked[0]?.text).toContain(
      "b.csv, row 3, column Probe: found a catch that stands in a.csv too",
    );
  });

  it("may be named by machine and season, and their folders too", async () => {
    const file = (name: string, mass: string) => ({
      name,
      text: [head, `1;Hafer;1;1;20;${mass}`].join("\n"),
    });
    const files = [
      file("2025/north.csv", "6,3"),
      file("./2026/north.csv", "6,4"),
      file("x\\2026\\south.csv", "6,5"),
    ];
    const { log } = await importCatches(files, { map: { folder: "season", file: "machine" } });
    expect(log?.catches.map(({ season, machine, netKg }) => [season, machine, netKg])).toEqual([
      ["2025", "north", 6.3],
      ["2026", "north", 6.4],
      ["2026", "south", 6.5],
    ]);
  });

  it("of turns and masses alone are asked whether they are of one fill", async () => {
    const plain = (name: string) => ({ name, text: "turns;net_kg\n20;6,3\n20;6,4" });
    const { log, asked } = await importCatches([plain("a.csv"), plain("b.csv")]);
    expect([log, asked.map(({ problem, row }) => [problem, row])]).toEqual([
      null,
      [
        ["fill-in-two-places", 2],
        ["fill-in-two-places", 3],
      ],
    ]);
    const told = await importCatches([plain("a.csv"), plain("b.csv")], { map: { file: "-" } });
    expect(told.log?.catches.map((row) => row.catch)).toEqual([1, 2, 3, 4]);
  });

  it("ask for a season where the folder that should name it is not known", async () => {
    const { log, asked } = await importCatches(own(head, "1;Hafer;1;1;20;6,3"), {
      map: { folder: "season" },
    });
    expect([log, asked.map(({ problem, column }) => [problem, column])]).toEqual([
      null,
      [["column-open", "season"]],
    ]);
  });
});

describe("a workbook of two machines and two seasons", () => {
  const source = async () => {
    const bytes = await readFile(join(import.meta.dirname, "sheets", "two-drills.xlsx"));
    return [{ name: "two-drills.xlsx", bytes: new Uint8Array(bytes) }];
  };

  it("gives one meter for each machine, whose fills are those of both seasons", async () => {
    const { log } = await importCatches(await source(), answers["two-drills.xlsx"]);
    expect(log?.missed).toMatchObject([
      { machine: "South", season: "2025", bin: "1", fill: 1, catch: 2, reason: "spilled" },
    ]);
    const meters = log === null ? [] : analyse(log).meters;
    expect(
      meters.map(({ delivery, acrossFills }) => [
        delivery.bin,
        delivery.fill,
        acrossFills?.points.map(({ fill, catches, turns, estimate }) => [
          fill,
          catches,
          turns,
          estimate.value.toFixed(5),
        ]),
      ]),
    ).toEqual([
      // Mass over turns of each fill, by hand.
      [
        "1/North",
        "1/2026",
        [
          ["1/2025", 2, 60, (2.43 / 60).toFixed(5)],
          ["2/2025", 1, 30, (1.24 / 30).toFixed(5)],
          ["1/2026", 1, 30, (1.203 / 30).toFixed(5)],
        ],
      ],
      [
        "1/South",
        "1/2026",
        [
          ["1/2025", 2, 60, (2.624 / 60).toFixed(5)],
          ["1/2026", 2, 90, (3.986 / 90).toFixed(5)],
        ],
      ],
    ]);
  });

  it("asks about what stands in both sheets until the seasons are told, in one line a sheet", async () => {
    const { log, asked } = await importCatches(await source(), { decimal: "point" });
    expect(log).toBeNull();
    const [said, ...others] = english().problems.grouped(asked);
    expect(said).toContain(
      "two-drills.xlsx › 2026, rows 2–4 (3 times), column Load: found a fill that stands in two-drills.xlsx › 2025 too",
    );
    expect(others).toEqual([]);
  });

  it("is one season where its sheets are said to go on with one another", async () => {
    const { log, assumed } = await importCatches(await source(), {
      decimal: "point",
      map: { sheet: "-" },
    });
    const south = log?.catches.filter(({ machine }) => machine === "South");
    expect(south?.map((row) => [row.season, row.fill, row.catch])).toEqual([
      [null, 1, 1],
      [null, 1, 3],
      [null, 1, 4],
      [null, 1, 5],
    ]);
    expect(assumed).toContainEqual(
      expect.objectContaining({ kind: "fill-goes-on", facts: { bin: "1", fill: "1" }, rows: [4] }),
    );
  });
});
