import { expect, it } from "vitest";
import { fillRecords } from "../../src/pool.ts";

const row = {
  farm: "",
  machine: "north",
  season: null,
  bin: "1",
  product: "wheat",
  fill: 2,
  taken_at: "2026-03-05",
  catches: "3",
  turns: 60,
  mass_kg: "17.67",
  scatter_sum: 0,
  divisions_kg: 0,
  without_division: 3n,
  fewest_turns: 20,
  most_turns: 20,
};

it("makes records of rows as drivers return them", () => {
  expect(fillRecords([row])).toEqual([
    {
      farm: null,
      machine: "north",
      season: null,
      bin: "1",
      product: "wheat",
      fill: 2,
      takenAt: "2026-03-05",
      sums: {
        catches: 3,
        turns: 60,
        massKg: 17.67,
        scatterSum: 0,
        divisionsKg: 0,
        withoutDivision: 3,
        fewestTurns: 20,
        mostTurns: 20,
      },
    },
  ]);
});

it.each([
  ["bin", null],
  ["product", 7],
  ["turns", null],
  ["turns", " "],
  ["scatter_sum", Number.NaN],
  ["mass_kg", "many"],
  ["catches", undefined],
])("refuses a row whose %s is %s, by the column", (column, value) => {
  expect(() => fillRecords([{ ...row, [column]: value }])).toThrow(`Option "${column}"`);
});
