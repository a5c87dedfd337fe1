import { expect, it } from "vitest";
import { logNames } from "../../src/data/log-names.ts";
import { at } from "../../src/errors/at.ts";
import { logIndex } from "../../src/model/log-index.ts";
import { metersOf } from "../../src/model/meters.ts";
import { caution } from "../../src/results/caution.ts";
import { aCatch } from "../support/catches.ts";

const row = (place: object) => aCatch({ turns: 20, netKg: 6, ...place });
const catches = [
  row({ machine: "north", season: "2025", fill: 7 }),
  row({ machine: "north", season: "2026", fill: 1 }),
  row({ machine: "north", season: "2026", fill: 2, leftOut: "spilled" }),
  row({ machine: "south", season: "2026", fill: 1 }),
  row({ machine: "south", season: "2026", fill: 2, product: "rye" }),
];
const about = (bin: string | null) =>
  caution("turns-all-equal", bin === null ? {} : { bin }, { turns: 20, tareShare: null });
const cautions = [about("1/south"), about(null), about("1/north")];
const meters = metersOf(catches);
const log = { source: "rows", massUnit: "kg", catches, cautions } as const;
const index = logIndex(log, meters, logNames(catches));

it("finds the last fill of each meter by season and number, one that is left out among them", () => {
  expect(meters.map((meter) => index.lastFill(meter).fill)).toEqual(["2/2026", "1/2026", "2/2026"]);
});

it("finds the meters of the same bin of the same machine", () => {
  expect(meters.map((meter) => index.inItsBin(meter).length)).toEqual([1, 2, 2]);
});

it("finds what the file says of a bin, or of all, in its order", () => {
  expect(index.fileFindings(at(meters, 0))).toEqual([about(null), about("1/north")]);
  expect(index.fileFindings(at(meters, 1))).toEqual([about("1/south"), about(null)]);
});
