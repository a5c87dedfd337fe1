import { describe, expect, it } from "vitest";
import { turnsPerHectareBy } from "../../src/analysis/turns-of-area.ts";
import { type CatchCheck, checkCatches, readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { checkCatchesTogether } from "../../src/data/read-together.ts";
import { catchesToCsv } from "../../src/data/write-csv.ts";

const cart = {
  working_width: { value: 12, unit: "m" },
  wheel_circumference: { value: 2, unit: "m" },
};
const wheel = { kind: "ground-wheel", ratio: 0.72 };

function by(setup: object) {
  return {
    turnsPerHectare: turnsPerHectareBy(readSetup({ name: "s.json", text: JSON.stringify(setup) })),
  };
}

const stated = by({ bins: [{ bin: "1", turns_per_hectare: 300 }] });

const sheet = (header: string, ...rows: readonly string[]) => sheetOf(header, rows);
const sheetOf = (header: string, rows: readonly string[]) => ({
  name: "catches.csv",
  text: [
    `bin,product,fill,catch,${header},net_kg`,
    ...rows.map((row, i) => `1,oats,1,${i + 1},${row},2`),
  ].join("\n"),
});

const told = (check: CatchCheck) =>
  check.ok
    ? []
    : check.issues.map(({ problem, row, column, received }) => [problem, row, column, received]);

describe("a catch of a simulated area", () => {
  it("by hand: 300 turns/ha are 3 turns over 1/100 ha, and 6.0703 over 1/20 ac of 0.40469 ha", async () => {
    const { catches, cautions } = await readCatches(sheet("area_ha", "0.01", "1/100"), stated);
    expect(catches.map(({ turns }) => turns)).toEqual([3, 3]);
    expect(cautions.find(({ code }) => code === "turns-from-area")?.facts).toEqual({
      catches: 2,
      lowest: 300,
      highest: 300,
      assumed: false,
    });
    const acres = await readCatches(sheet("area_ac", "0.05"), stated);
    expect(acres.catches[0]?.turns).toBeCloseTo(300 * 0.05 * 0.40468564224, 12);
  });

  it("by hand: a wheel of 2 m, 12 m wide, at 0.72 makes 0.72 × 10000 ÷ 24 = 300 turns/ha, assumed without its slip", async () => {
    const rolling = { cart, bins: [{ bin: "1", drive: wheel }] };
    const free = await readCatches(sheet("Fläche_ha", "0.01"), by(rolling));
    expect(free.catches[0]?.turns).toBeCloseTo(3, 12);
    expect(free.cautions[0]).toMatchObject({ code: "turns-from-area", facts: { assumed: true } });
    const slipping = { cart: { ...cart, slip_percent: 4 }, bins: rolling.bins };
    const { catches, cautions } = await readCatches(sheet("Flaeche_ha", "0.01"), by(slipping));
    expect(catches[0]?.turns).toBeCloseTo(3 * 0.96, 12);
    expect(cautions[0]).toMatchObject({ facts: { assumed: false } });
  });

  it("is read of more rows than a call can have arguments, and refused with no more problems than are named of a file", async () => {
    const fields = Array.from({ length: 150_000 }, () => "0.01");
    const long = await checkCatches(sheetOf("area_ha", fields), stated);
    expect(long.ok && long.log.catches.length).toBe(150_000);
    const refused = await checkCatches(sheetOf("area_ha", fields), by({}));
    expect(told(refused)).toHaveLength(1_001);
    expect(told(refused).at(-1)?.[0]).toBe("rest-not-read");
  });

  it("goes by the step that was caught: 300 turns/ha at 0.75 are 240 at 0.6", async () => {
    const drive = { kind: "ground-wheel", ratio: 0.75, steps: [0.6, 0.75], caught_step: 0.6 };
    const bins = [{ bin: "1", turns_per_hectare: 300, drive }];
    const { catches, cautions } = await readCatches(sheet("area_ha", "0.01"), by({ bins }));
    expect(catches[0]?.turns).toBeCloseTo(2.4, 12);
    expect(cautions[0]).toMatchObject({ facts: { assumed: true } });
  });

  it("is refused by row and column where nothing tells the turns", async () => {
    const nothing = { turnsPerHectare: turnsPerHectareBy(null) };
    expect(told(await checkCatches(sheet("area_ha,turns", "0.01,", "0.01,3"), nothing))).toEqual([
      ["area-without-drive", 2, "area_ha", "0.01"],
    ]);
  });

  it("is refused where turns are written that are not those of the area", async () => {
    const rows = sheet("turns,area_ha", "3,0.01", "4,0.01", "303,1", "303.1,1", ",0.01");
    expect(told(await checkCatches(rows, stated))).toEqual([
      ["area-disagrees", 3, "turns", "4"],
      ["area-disagrees", 5, "turns", "303.1"],
    ]);
  });

  it("must be a figure above zero, with the decimal mark of its file", async () => {
    expect(told(await checkCatches(sheet("area_ha", "0", "one"), stated))).toEqual([
      ["out-of-range", 2, "area_ha", "0"],
      ["not-a-number", 3, "area_ha", "one"],
    ]);
    const text = "bin;product;fill;catch;Fläche_ha;netto_kg\n1;oats;1;1;0,01;2,05";
    const german = await readCatches({ name: "Proben.csv", text }, stated);
    expect(german.catches[0]?.turns).toBeCloseTo(3, 12);
  });

  it("comes back from a written file as the same catches, with the setup and without it", async () => {
    const { catches } = await readCatches(sheet("area_ha", "0.01", "0.02"), stated);
    const text = catchesToCsv(catches);
    for (const options of [stated, {}]) {
      const again = await readCatches({ name: "again.csv", text }, options);
      expect(again.catches).toEqual(catches);
      expect(again.cautions.map(({ code }) => code)).not.toContain("turns-from-area");
    }
  });

  it("is a column of the user's own where nobody asks for it: turns are wanted then", async () => {
    expect(told(await checkCatches(sheet("area_ha,turns", "0.01,")))).toEqual([
      ["value-missing", 2, "turns", ""],
    ]);
    const { catches } = await readCatches(sheet("area_ha,turns", "0.01,3"));
    expect(catches[0]?.extra).toEqual({ area_ha: "0.01" });
  });

  it("is read in several files too, each for its own machine", async () => {
    const setup = by({
      bins: [
        { bin: "1", machine: "north", turns_per_hectare: 300 },
        { bin: "1", machine: "south", turns_per_hectare: 400 },
      ],
    });
    const files = ["north", "south"].map((name) => ({
      ...sheet("area_ha", "0.01"),
      name: `${name}.csv`,
    }));
    const check = await checkCatchesTogether(files, {
      ...setup,
      keys: (name) => ({ machine: name.replace(".csv", "") }),
    });
    expect(check.ok ? check.log.catches.map(({ turns }) => turns) : check.issues).toEqual([3, 4]);
  });
});
