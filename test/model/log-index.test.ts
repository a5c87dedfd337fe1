import { describe, expect, it } from "vitest";
import type { Catch, MissedCatch } from "../../src/data/types.ts";
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
const index = logIndex(log, meters);

it("finds the last fill after the newest of which every catch is left out", () => {
  expect(meters.map((meter) => index.leftOutSince(meter))).toEqual(["2/2026", null, null]);
});

describe("of fills in order of their dates", () => {
  const onDay = (fill: number, day: string | null, leftOut: string | null = null) =>
    row({ fill, takenAt: day === null ? null : `2026-03-${day}`, leftOut });
  const since = (rows: readonly Catch[], missed: readonly Partial<MissedCatch>[] = []) => {
    const own = metersOf(rows);
    const { row: number, farm, machine, season, bin, product, catch: one, outlet } = at(rows, 0);
    const place = { row: number, farm, machine, season, bin, product, catch: one, outlet };
    const spilled = missed.map((it) => ({ ...place, fill: 1, reason: "spilled", ...it }));
    return logIndex({ ...log, catches: rows, missed: spilled }, own).leftOutSince(at(own, 0));
  };

  it("a fill that counts is never one that is left out, whatever its number", () => {
    expect(since([onDay(1, "01"), onDay(2, "09"), onDay(3, "05")])).toBeNull();
  });

  it("one that is left out is later by its date", () => {
    const known = [onDay(1, "01"), onDay(2, "09")];
    expect(since([...known, onDay(3, "05", "spilled")])).toBeNull();
    expect(since([...known, onDay(3, "10", "spilled")])).toBe(3);
    expect(since([onDay(5, "01"), onDay(2, "09", "spilled")])).toBe(2);
  });

  it("and by its number where a date is missing", () => {
    const known = [onDay(1, "01"), onDay(4, "05"), onDay(2, "09")];
    expect(since(known, [{ fill: 3 }])).toBeNull();
    expect(since(known, [{ fill: 5 }])).toBe(5);
    expect(since([...known, onDay(0, null)], [{ fill: 3 }])).toBeNull();
  });

  it("a season of which every catch was missed comes after those before it", () => {
    const before = row({ season: "2025", fill: 7 });
    expect(since([before], [{ season: "2026", fill: 1 }])).toBe("1/2026");
    expect(since([before], [{ season: "2024", fill: 9 }])).toBeNull();
  });
});

it("finds the meters of the same bin of the same machine", () => {
  expect(meters.map((meter) => index.inItsBin(meter).length)).toEqual([1, 2, 2]);
});

it("finds what the file says of a bin, or of all, in its order", () => {
  expect(index.fileFindings(at(meters, 0))).toEqual([about(null), about("1/north")]);
  expect(index.fileFindings(at(meters, 1))).toEqual([about("1/south"), about(null)]);
});
