import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { demoSets } from "../data-demo/scenario/demo-sets.ts";
import { filesOf } from "../data-demo/scenario/files.ts";
import { firstMorningSeed } from "../data-demo/scenario/first-morning.ts";
import { products, productTrialSeed, trueDelivery } from "../data-demo/scenario/product-trial.ts";
import { planted, seasonSeed } from "../data-demo/scenario/season-plan.ts";

type Row = Readonly<Record<string, string>>;

const folder = join(import.meta.dirname, "..", "data-demo");
const read = (...path: string[]): string => readFileSync(join(folder, ...path), "utf8");
const readme = read("README.md");

function rowsOf(set: string): Row[] {
  const { data, errors } = Papa.parse<Row>(read(set, "catches.csv"), {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

function number(row: Row, column: string): number {
  const text = row[column];
  if (text === undefined || text === "") {
    throw new Error(`A row has no ${column}.`);
  }
  return Number(text);
}

const net = (row: Row): number => number(row, "gross_kg") - number(row, "tare_kg");

/** Sum of masses over sum of turns. */
function delivery(rows: readonly Row[], mass: (row: Row) => number = net): number {
  const total = (of: (row: Row) => number): number => rows.reduce((sum, row) => sum + of(row), 0);
  return total(mass) / total((row) => number(row, "turns"));
}

/** Cells of the README.md table row that begins with `first`. */
function told(first: string): string[] {
  const rows = readme
    .split("\n")
    .filter((line) => line.startsWith("|"))
    .map((line) =>
      line
        .slice(1, -1)
        .split("|")
        .map((cell) => cell.trim()),
    );
  const row = rows.find(([cell]) => cell === first);
  if (row === undefined) {
    throw new Error(`README.md has no table row "${first}".`);
  }
  return row;
}

/** Bin, fill and catch of a planted fault, as README.md tells them. */
function placeTold(fault: string): { bin: string; fill: string; catch: string } {
  const [, bin = "", fill = "", number = ""] = told(fault);
  return { bin, fill, catch: number };
}

const season = rowsOf("season");
const at = (bin: string, fill: number | string): Row[] =>
  season.filter((row) => row.bin === bin && row.fill === String(fill));

describe("making the demo data again", () => {
  it.each(demoSets())("gives the committed bytes of $name", (set) => {
    for (const [name, content] of Object.entries(filesOf(set))) {
      expect(content, `${set.name}/${name}`).toBe(read(set.name, name));
    }
  });

  it("uses the seeds README.md tells", () => {
    const seeds = [...readme.matchAll(/^Seed (\d+)\./gm)].map((match) => Number(match[1]));
    expect(seeds).toEqual([seasonSeed, firstMorningSeed, productTrialSeed]);
  });

  it.each(demoSets())("gives $name as many catches as README.md tells", (set) => {
    expect(told(`[${set.name}](${set.name}/catches.csv)`)).toContain(String(set.rows.length));
  });
});

describe("the data package", () => {
  it.each(demoSets())("of $name describes the file that lies beside it", (set) => {
    const descriptor = JSON.parse(read(set.name, "datapackage.json"));
    const catches = descriptor.resources[0];
    const text = read(set.name, catches.path);
    expect(catches.bytes).toBe(Buffer.byteLength(text));
    expect(catches.hash).toBe(`sha256:${createHash("sha256").update(text).digest("hex")}`);
    expect(catches.schema.fields.map((field: { name: string }) => field.name)).toEqual(
      text.slice(0, text.indexOf("\n")).split(catches.dialect?.delimiter ?? ","),
    );
  });

  it.each(demoSets())("of $name holds for every cell", (set) => {
    const { schema } = JSON.parse(read(set.name, "datapackage.json")).resources[0];
    const rows = rowsOf(set.name);
    for (const field of schema.fields) {
      const cells = rows.map((row) => row[field.name] ?? "").filter((cell) => cell !== "");
      if (field.constraints?.required) {
        expect(cells, field.name).toHaveLength(rows.length);
      }
      expect(
        cells.filter((cell) => !isOfType(cell, field)),
        field.name,
      ).toEqual([]);
    }
    const keys = rows.map((row) => schema.primaryKey.map((name: string) => row[name]).join("|"));
    expect(new Set(keys).size).toBe(rows.length);
  });
});

interface Field {
  readonly type: string;
  readonly decimalChar?: string;
  readonly constraints?: {
    readonly minimum?: number;
    readonly maximum?: number;
    readonly exclusiveMinimum?: number;
  };
}

function isOfType(cell: string, { type, decimalChar, constraints = {} }: Field): boolean {
  if (type === "string") {
    return true;
  }
  if (type === "datetime") {
    return /^2026-\d\d-\d\dT\d\d:\d\d$/.test(cell) && !Number.isNaN(Date.parse(cell));
  }
  const text = decimalChar === undefined ? cell : cell.replace(decimalChar, ".");
  const value = Number(text);
  const {
    minimum = -Infinity,
    maximum = Infinity,
    exclusiveMinimum: above = -Infinity,
  } = constraints;
  const shaped = (type === "integer" ? /^\d+$/ : /^\d+(\.\d+)?$/).test(text);
  return shaped && value >= minimum && value <= maximum && value > above;
}

describe("the season", () => {
  it("has nine fills a bin, three to six catches a fill at two or three turn levels", () => {
    for (const bin of ["1", "2", "3"]) {
      for (let fill = 1; fill <= 9; fill += 1) {
        const catches = at(bin, fill);
        const levels = new Set(catches.map((row) => row.turns));
        expect(catches.length).toBeGreaterThanOrEqual(3);
        expect(catches.length).toBeLessThanOrEqual(6);
        expect([2, 3]).toContain(levels.size);
        expect(catches.map((row) => number(row, "catch"))).toEqual(catches.map((_, i) => i + 1));
      }
    }
    expect(new Set(season.map((row) => `${row.bin} ${row.fill}`)).size).toBe(27);
  });

  it("is in order of time, fill after fill", () => {
    const times = season.map((row) => row.taken_at ?? "");
    expect(times).toEqual([...times].sort());
    expect(new Set(times).size).toBe(times.length);
    for (const bin of ["1", "2", "3"]) {
      const fills = season.filter((row) => row.bin === bin).map((row) => number(row, "fill"));
      expect(fills).toEqual([...fills].sort((a, b) => a - b));
    }
  });

  it("forgot one tare, where README.md says", () => {
    const untared = season.filter((row) => number(row, "tare_kg") < 0.3);
    const where = placeTold("forgotten tare");
    expect(untared).toMatchObject([where]);
    expect(where).toEqual(asText(planted.forgottenTare));
    const fellows = at(where.bin, where.fill).filter((row) => row !== untared[0]);
    const excess = untared.map((row) => net(row) - delivery(fellows) * number(row, "turns"))[0];
    expect(excess).toBeGreaterThan(0.3);
    expect(excess).toBeLessThan(0.55);
  });

  it("lost one turn, where README.md says", () => {
    const where = placeTold("miscounted turn");
    expect(where).toEqual(asText(planted.miscountedTurn));
    const fill = at(where.bin, where.fill);
    const bad = fill.filter((row) => row.catch === where.catch);
    const share = delivery(bad) / delivery(fill.filter((row) => !bad.includes(row)));
    expect(bad.map((row) => number(row, "turns"))).toEqual([planted.miscountedTurn.turnsWritten]);
    expect(Math.abs(share - 19 / 20)).toBeLessThan(0.02);
  });

  it("drifts in the bin and from the fill README.md says", () => {
    const where = placeTold("drift");
    expect(where).toEqual({ bin: "3", fill: "6 to 9", catch: "all" });
    const fills = Array.from({ length: 9 }, (_, index) => delivery(at("3", index + 1)));
    const change = mean(fills.slice(5)) / mean(fills.slice(0, 5)) - 1;
    expect(change).toBeGreaterThan(-0.06);
    expect(change).toBeLessThan(-0.05);
    expect(Math.max(...fills.slice(5))).toBeLessThan(Math.min(...fills.slice(0, 5)));
  });

  it("used a coarse scale for one fill, where README.md says, and noted it", () => {
    const where = placeTold("coarse scale");
    const coarse = season.filter((row) => row.note?.includes("0.2 kg"));
    expect(new Set(coarse.map((row) => `${row.bin} ${row.fill}`))).toEqual(
      new Set([`${where.bin} ${where.fill}`]),
    );
    expect(coarse).toEqual(at(where.bin, where.fill));
    const steps = (rows: readonly Row[], division: number): boolean =>
      rows.every((row) =>
        ["gross_kg", "tare_kg"].every((column) => isMultiple(number(row, column), division)),
      );
    expect(steps(coarse, 0.2)).toBe(true);
    for (const { bin, fill } of [
      { bin: "1", fill: 6 },
      { bin: "1", fill: 8 },
    ]) {
      expect(steps(at(bin, fill), 0.2)).toBe(false);
      expect(steps(at(bin, fill), 0.02)).toBe(true);
    }
  });

  it("tells nothing else: every other note is empty or the weather", () => {
    const notes = season.filter((row) => row.note !== "" && !row.note?.includes("0.2 kg"));
    expect(notes).toMatchObject([{ bin: "3", fill: "6", catch: "1", note: "rain overnight" }]);
  });
});

describe("the first morning", () => {
  it("is three catches of 20 turns of one fill", () => {
    const rows = rowsOf("first-morning");
    expect(rows.map((row) => [row.fill, row.catch, row.turns])).toEqual([
      ["1", "1", "20"],
      ["1", "2", "20"],
      ["1", "3", "20"],
    ]);
  });
});

describe("the product trial", () => {
  const rows = rowsOf("product-trial");

  it("fills every product once a day and catches it twice at each turn level, at both speeds", () => {
    for (const { product } of products) {
      for (const day of ["1", "2", "3", "4", "5"]) {
        const fill = rows.filter((row) => row.product === product && row.day === day);
        expect(new Set(fill.map((row) => row.fill)).size).toBe(1);
        expect(fill.map((row) => `${row.turns} at ${row.meter_rpm}`).sort()).toEqual([
          "20 at 40",
          "20 at 70",
          "40 at 40",
          "40 at 70",
        ]);
      }
    }
    expect(new Set(rows.map((row) => row.fill)).size).toBe(20);
  });

  it("has the true deliveries README.md tells, one pair equal within 1 %", () => {
    for (const product of products) {
      expect(told(product.product)).toContain(`${trueDelivery(product).toFixed(4)} kg/turn`);
    }
    const deliveries = products.map(trueDelivery);
    const nearPairs = deliveries.flatMap((a, i) =>
      deliveries.slice(i + 1).filter((b) => Math.abs(b / a - 1) < 0.01),
    );
    expect(nearPairs).toHaveLength(1);
  });

  it("delivers what the truth says, to within its scatter", () => {
    for (const product of products) {
      const own = rows.filter((row) => row.product === product.product);
      const found = delivery(own, (row) => number(row, "net_kg"));
      expect(Math.abs(found / trueDelivery(product) - 1)).toBeLessThan(0.015);
    }
  });
});

function asText(place: { bin: string; fill: number; catch: number }): object {
  return { bin: place.bin, fill: String(place.fill), catch: String(place.catch) };
}

function isMultiple(value: number, division: number): boolean {
  return Math.abs(value / division - Math.round(value / division)) < 1e-6;
}
