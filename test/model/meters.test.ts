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
