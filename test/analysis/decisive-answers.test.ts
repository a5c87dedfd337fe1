import { describe, expect, it } from "vitest";
import { decidedLog } from "../../src/analysis/decided-bin.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { catchesOf, type FillOfMasses } from "../support/decision-states.ts";

async function plansOf(...fills: readonly FillOfMasses[]) {
  const log = await readCatches({ name: "catches.csv", text: catchesOf(...fills) });
  return decidedLog(log, null, {}).meters.map(({ product, catchesNeeded }) => ({
    product,
    fill: catchesNeeded?.fill,
    catches: catchesNeeded?.input.catches,
    earlierFills: catchesNeeded?.input.earlierFills,
  }));
}

describe("the catches that are planned", () => {
  const masses = [6.36, 6.48, 6.56];

  it("are further ones of the fill in the bin", async () => {
    expect(await plansOf({ fill: 1, masses }, { fill: 2, masses })).toEqual([
      { product: "pea", fill: 2, catches: 3, earlierFills: 1 },
    ]);
  });

  it("are those of a fill to come where another product is in the bin", async () => {
    expect(
      await plansOf({ fill: 1, masses }, { fill: 2, masses }, { product: "oat", fill: 3, masses }),
    ).toEqual([
      { product: "pea", fill: null, catches: 0, earlierFills: 2 },
      { product: "oat", fill: 3, catches: 3, earlierFills: 0 },
    ]);
  });

  it("are those of a fill to come where every catch of the newest is left out", async () => {
    expect(
      await plansOf({ fill: 1, masses }, { fill: 2, masses: [9.1, 9.2], leftOut: [1, 2] }),
    ).toEqual([{ product: "pea", fill: null, catches: 0, earlierFills: 1 }]);
  });
});
