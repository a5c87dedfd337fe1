import { describe, expect, it } from "vitest";
import { isInTheBin } from "../../src/analysis/in-the-bin.ts";
import { newestFillLeftOut } from "../../src/analysis/newest-fill-left-out.ts";
import { fitModel } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";

/** Products by the fills they were caught in: number, day, bin. */
const inBin = (...fills: readonly (readonly [string, number, string | null, string?])[]) => {
  const { meters } = fitModel(
    fills.flatMap(([product, fill, takenAt, bin = "1"]) =>
      aFill([[20, 6]], { product, fill, takenAt, bin }),
    ),
  );
  return meters.filter((meter) => isInTheBin(meter, meters)).map(({ product }) => product);
};

describe("the product in a bin", () => {
  it("is the one that was filled last, by date where both have one", () => {
    expect(inBin(["oats", 1, "2026-04-01"], ["peas", 2, "2026-04-02"])).toEqual(["peas"]);
    expect(inBin(["oats", 2, "2026-04-03"], ["peas", 3, "2026-04-02"])).toEqual(["oats"]);
  });

  it("is, without dates or on one day, that of the highest number where products share a numbering", () => {
    expect(inBin(["oats", 1, null], ["peas", 2, null])).toEqual(["peas"]);
    expect(inBin(["oats", 3, null], ["peas", 2, null])).toEqual(["oats"]);
    expect(inBin(["oats", 1, "2026-04-01"], ["peas", 2, "2026-04-01"])).toEqual(["peas"]);
    expect(inBin(["oats", 1, "2026-04-01"], ["peas", 2, null])).toEqual(["peas"]);
  });

  it("cannot be told where each product is numbered by itself, and is then every one", () => {
    expect(inBin(["oats", 1, null], ["oats", 2, null], ["peas", 1, null])).toEqual([
      "oats",
      "peas",
    ]);
  });

  it("is asked for bin by bin", () => {
    expect(inBin(["oats", 1, "2026-04-01"], ["peas", 2, "2026-04-02", "2"])).toEqual([
      "oats",
      "peas",
    ]);
  });
});

describe("a newest fill whose catches are all left out", () => {
  it("is said of the fill that is answered instead", () => {
    const meter = present(fitModel(aFill([[20, 6]], { fill: 4 })).meters[0]);
    expect(newestFillLeftOut(meter, null)).toEqual([]);
    expect(newestFillLeftOut(meter, 5)).toMatchObject([
      {
        code: "newest-fill-left-out",
        where: { bin: "1", product: "wheat", fill: 4 },
        facts: { leftOutFill: 5 },
      },
    ]);
  });
});
