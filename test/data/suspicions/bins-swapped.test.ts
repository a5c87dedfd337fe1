import { describe, expect, it } from "vitest";
import { binsSwapped } from "../../../src/data/suspicions/bins-swapped.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { aFill } from "../../support/catches.ts";

/** Deliveries of fills 1, 2, 3 … of each bin. */
const asked = (bins: Readonly<Record<string, readonly number[]>>) =>
  binsSwapped(
    countedLog(
      Object.entries(bins).flatMap(([bin, deliveries]) =>
        deliveries.flatMap((each, i) => aFill([[20, 20 * each]], { bin, fill: i + 1 })),
      ),
      "kg",
      [],
    ),
  );

describe("two bins in one fill", () => {
  it("are asked about in both, where each gave what the other gives", () => {
    const found = asked({ A: [0.3, 0.302, 0.361, 0.299], B: [0.36, 0.358, 0.3, 0.362] });
    expect(found.map(({ where }) => [where.bin, where.fill])).toEqual([
      ["A", 3],
      ["B", 3],
    ]);
    expect(found[0]?.facts).toMatchObject({ other: "B" });
  });

  it("are not where only one jumped, or both jumped elsewhere, or in different fills", () => {
    expect(asked({ A: [0.3, 0.302, 0.361], B: [0.36, 0.358, 0.362] })).toEqual([]);
    expect(asked({ A: [0.3, 0.302, 0.361], B: [0.36, 0.358, 0.43] })).toEqual([]);
    expect(asked({ A: [0.3, 0.302, 0.361, 0.3], B: [0.36, 0.358, 0.36, 0.3] })).toEqual([]);
  });

  it("are not where they give about the same, or hold two fills only", () => {
    expect(asked({ A: [0.3, 0.302, 0.315], B: [0.315, 0.314, 0.3] })).toEqual([]);
    expect(asked({ A: [0.3, 0.36], B: [0.36, 0.3] })).toEqual([]);
  });
});
