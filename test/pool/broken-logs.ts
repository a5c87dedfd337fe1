import { at } from "../../src/errors/at.ts";
import type { RandomStream } from "../../src/numeric/random.ts";

/** Headers of a log, each with what a right cell of it may hold. */
type Layout = Readonly<Record<string, (row: number, random: RandomStream) => string>>;

const pick = <T>(values: readonly T[], random: RandomStream): T =>
  at(values, random.integer(0, values.length - 1));

const isSpilled = (row: number) => row % 11 === 7;

const common: Layout = {
  Betrieb: () => "Hill Farm",
  Bin: (row) => `${1 + (row % 3)}`,
  product: (row) => ["wheat", "barley", "Roggen für  Süd"][row % 3] ?? "",
  Fill: (row) => `${1 + (Math.floor(row / 3) % 4)}`,
  catch: (row) => `${1 + Math.floor(row / 12)}`,
  TURNS: (_, random) => pick(["20", "30", "20.5"], random),
  "taken at": (_, random) =>
    pick(
      ["2026-03-05", "2026-03-05T06:10", "2024-02-29 07:30", "2026-03-05T06:10:59.5+02:00", ""],
      random,
    ),
  "Moisture %": (_, random) => pick(["13.5", "", "14"], random),
  checked: (_, random) => pick(["", "", "weighed again"], random),
  exclude: (row) => (isSpilled(row) ? "yes" : ""),
  Reason: (row) => (isSpilled(row) ? "bag slipped" : ""),
  mine: () => "x",
};

/** Logs as people write them: net alone, some of it spilled and never weighed, gross and tare, all three in pounds, and kilograms beside grams. */
export const layouts: Readonly<Record<string, Layout>> = {
  net: { ...common, net_kg: (_, random) => (5 + random.uniform()).toFixed(2) },
  // Nobody tells what the drive makes of an area, so turns are wanted all the same.
  area: {
    ...common,
    TURNS: (row, random) => (isSpilled(row) ? "20" : pick(["", "20"], random)),
    "Fläche ha": () => "0.01",
    net_kg: (_, random) => (5 + random.uniform()).toFixed(2),
  },
  spilled: {
    ...common,
    TURNS: (row, random) =>
      pick(isSpilled(row) ? ["", "1,234", "-3", "20"] : ["20", "30", "20.5"], random),
    "taken at": (row, random) =>
      isSpilled(row) ? pick(["at noon", ""], random) : "2026-03-05T06:10",
    net_kg: (row, random) => (isSpilled(row) ? "" : (5 + random.uniform()).toFixed(2)),
    division_kg: (row) => (isSpilled(row) ? "-1" : "0.01"),
    division_g: (row) => (isSpilled(row) ? "10" : ""),
  },
  gross: {
    ...common,
    "gross (kg)": (_, random) => (6 + random.uniform()).toFixed(3),
    tare_kg: () => "0.42",
    division_g: (_, random) => pick(["5", "10", ""], random),
  },
  three: {
    ...common,
    outlet: (row) => (row % 5 === 0 ? "left" : ""),
    "gross lbs": () => "13.20",
    tare_lb: () => "0.9",
    net_lb: (_, random) => pick(["12.3", "12.30", "", "12.35"], random),
  },
  units: {
    ...common,
    machine: () => "north",
    season: () => "2026",
    net_kg: (row, random) => (row % 2 === 0 ? (5 + random.uniform()).toFixed(1) : ""),
    net_g: (row, random) => (row % 2 === 1 ? (5000 + 10 * random.uniform()).toFixed(0) : ""),
    division_kg: () => "0.01",
    division_g: () => "",
  },
};

/** What people and programs put where a right value should be. */
const slips = [
  "",
  "   ",
  "n/a",
  "#N/A",
  "#DIV/0!",
  "NaN",
  "-Infinity",
  "∞",
  "1e999",
  "0",
  "-5",
  "−3.2",
  "+4",
  ".5",
  "7.",
  "1e-3",
  "2E1",
  "1.5",
  "2000000",
  "12,5",
  "1,234",
  "1.234",
  "42.050",
  "12 345",
  "5.89 kg",
  "0x10",
  "1_000",
  "2026-02-30",
  "2023-02-29",
  "2026-13-01",
  "12.04.2026",
  "2026-04-12T25:00",
  "2026-04-12T07:30+15:00",
  "yes",
  "no",
  "X",
  "maybe",
  "WHEAT",
  "Wheat ",
  "wheat\u00a0\u2003 two",
  "u\u0308ber",
  "9".repeat(70),
] as const;

/**
 * A log with some cells gone wrong, and what there should be instead of nothing as well: a blank line, a row of blanks.
 *
 * @param slipped  cells that are replaced
 */
export function brokenLog(
  layout: Layout,
  rows: number,
  slipped: number,
  random: RandomStream,
): string {
  const headers = Object.keys(layout);
  const cells = Array.from({ length: rows }, (_, row) =>
    Object.values(layout).map((cell) => cell(row, random)),
  );
  for (let i = 0; i < slipped; i++) {
    const row = at(cells, random.integer(0, rows - 1));
    row[random.integer(0, headers.length - 1)] = pick(slips, random);
  }
  const lines = cells.map((row) => row.map(quotedCell).join(";"));
  const blank = headers.map(() => "").join(";");
  const at1 = random.integer(0, rows);
  const withBlanks = [...lines.slice(0, at1), "", blank, ...lines.slice(at1)];
  return `\ufeff\r\n${headers.join(";")}\r\n${withBlanks.join("\r\n")}\r\n`;
}

function quotedCell(text: string): string {
  return /[;"\n]/.test(text) || text.startsWith(" ") ? `"${text.replaceAll('"', '""')}"` : text;
}
