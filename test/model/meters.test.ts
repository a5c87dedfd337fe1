import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { earliestOf, metersOf, newestFill, severalSeasons } from "../../src/model/meters.ts";
import { aCatch, aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";

describe("metersOf", () => {
  it("sorts catches into bin and product, and fills into order", () => {
    const meters = metersOf([
      aCatch({ bin: "2", product: "pea", fill: 1, turns: 20, netKg: 5 }),
      aCatch({ fill: 2, turns: 20, netKg: 6.2 }),
      aCatch({ fill: 1, turns: 20, netKg: 6 }),
    ]);
    expect(meters.map(({ bin, product }) => [bin, product])).toEqual([
      ["2", "pea"],
      ["1", "wheat"],
    ]);
    expect(present(meters[1]).fills.map(({ fill }) => fill)).toEqual([1, 2]);
    expect(newestFill(present(meters[1])).delivery).toBeCloseTo(0.31, 15);
  });

  it("keeps a bin apart from another whose name and product run together the same way", () => {
    const meters = metersOf([
      aCatch({ bin: "a-b", product: "c", turns: 20, netKg: 6 }),
      aCatch({ bin: "a", product: "b-c", turns: 20, netKg: 6 }),
    ]);
    expect(meters).toHaveLength(2);
  });

  it("counts no catch that was left out, and no fill of which all were", () => {
    const meters = metersOf([
      aCatch({ catch: 1, turns: 20, netKg: 6 }),
      aCatch({ catch: 2, turns: 20, netKg: 9, leftOut: "spilled" }),
      aCatch({ fill: 2, turns: 20, netKg: 9, leftOut: "spilled" }),
    ]);
    const { fills } = present(meters[0]);
    expect(fills).toHaveLength(1);
    expect(present(fills[0]).delivery).toBeCloseTo(0.3, 15);
    expect(present(fills[0]).leftOut.map((row) => row.catch)).toEqual([2]);
  });

  it("takes the earliest time of a fill", () => {
    const meters = metersOf([
      aCatch({ catch: 1, turns: 20, netKg: 6, takenAt: "2026-04-02T09:10" }),
      aCatch({ catch: 2, turns: 20, netKg: 6, takenAt: "2026-04-02T09:05" }),
    ]);
    expect(newestFill(present(meters[0])).takenAt).toBe("2026-04-02T09:05");
  });
});

describe("outlets weighed apart", () => {
  const row = (one: number, outlet: string, netKg: number) =>
    aCatch({ catch: one, outlet, turns: 20, netKg, tareKg: 0.1, grossKg: netKg + 0.1 });

  it("are added up to one catch of the meter, and kept as weighed beside it", () => {
    const [meter] = metersOf([
      row(1, "a", 2),
      row(1, "b", 2.1),
      row(2, "a", 2.2),
      row(2, "b", 1.9),
    ]);
    const [fill] = present(meter).fills;
    expect(present(fill).catches.map(({ netKg, outlet }) => [netKg, outlet])).toEqual([
      [4.1, null],
      [expect.closeTo(4.1, 12), null],
    ]);
    expect(present(present(fill).catches[0]).tareKg).toBeCloseTo(0.2, 12);
    expect(present(fill).weighings).toHaveLength(4);
    expect(present(fill).delivery).toBeCloseTo(8.2 / 40, 12);
  });

  it("stay as they are where each catch has one outlet only", () => {
    const [meter] = metersOf([row(1, "a", 2), row(2, "b", 2.1)]);
    expect(present(present(meter).fills[0]).catches.map(({ outlet }) => outlet)).toEqual([
      "a",
      "b",
    ]);
  });
});

describe("catches of one fill", () => {
  it("stand in the order of their numbers, whatever that of the rows", () => {
    const [one, two, three] = aFill([
      [20, 6],
      [20, 6.1],
      [20, 6.2],
    ]);
    const [meter] = metersOf([present(three), present(one), present(two)]);
    expect(newestFill(present(meter)).catches.map((row) => row.catch)).toEqual([1, 2, 3]);
  });

  it("are none set aside, and lend themselves all", () => {
    const fill = newestFill(
      present(
        metersOf(
          aFill([
            [20, 6],
            [30, 9.3],
          ]),
        )[0],
      ),
    );
    expect(fill.leftOut).toEqual([]);
    expect(fill.notLent).toEqual([]);
    expect(fill.scatterTotals).toEqual(fill.totals);
    expect(fill.totals).toMatchObject({ catches: 2, turns: 50 });
  });

  it("of two outlets are one only where both are named, caught in as many turns, and of one number", () => {
    const numbers = (rows: readonly Partial<Catch>[]) =>
      newestFill(
        present(metersOf(rows.map((row) => aCatch({ turns: 20, netKg: 2, catch: 1, ...row })))[0]),
      ).catches.length;
    expect(numbers([{ outlet: "a" }, { outlet: "b" }])).toBe(1);
    expect(numbers([{ outlet: "a" }, { outlet: null }])).toBe(2);
    expect(numbers([{ outlet: "a" }, { outlet: "b", turns: 30 }])).toBe(2);
    expect(numbers([{ outlet: "a" }, { outlet: "b", catch: 2 }])).toBe(2);
  });

  it("of several outlets have no gross weight or division where one has none", () => {
    const fill = (rows: readonly Partial<Catch>[]) =>
      present(
        newestFill(
          present(
            metersOf(
              rows.map((row, i) => aCatch({ outlet: `${i}`, turns: 20, netKg: 2, ...row })),
            )[0],
          ),
        ).catches[0],
      );
    expect(fill([{ divisionKg: 0.01 }, { divisionKg: 0.02 }]).divisionKg).toBeCloseTo(0.03, 12);
    expect(fill([{ divisionKg: 0.01 }, {}]).divisionKg).toBeNull();
    expect(fill([{ grossKg: 3 }, { grossKg: 4 }]).grossKg).toBe(7);
    expect(fill([{ grossKg: 3 }, { grossKg: null }]).grossKg).toBeNull();
  });
});

it("knows the earliest of some times, and none of none", () => {
  const at = (...times: readonly (string | null)[]) =>
    earliestOf(times.map((takenAt) => ({ takenAt })));
  expect(at("2026-04-02", null, "2026-03-30", "2026-04-01")).toBe("2026-03-30");
  expect(at(null, null)).toBeNull();
  expect(at()).toBeNull();
});

it("knows a log of several seasons by the names of its fills", () => {
  expect(severalSeasons([{ fill: 1 }, { fill: "2/2026" }])).toBe(true);
  expect(severalSeasons([{ fill: 1 }, { fill: 2 }])).toBe(false);
});
