import { describe, expect, it } from "vitest";
import { metersOf, newestFill } from "../../src/model/meters.ts";
import { aCatch } from "../support/catches.ts";
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
