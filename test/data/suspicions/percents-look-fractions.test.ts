import { describe, expect, it } from "vitest";
import { percentsLookFractions } from "../../../src/data/suspicions/percents-look-fractions.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import type { Catch } from "../../../src/data/types.ts";
import { aCatch } from "../../support/catches.ts";

const asked = (...rows: readonly Partial<Catch>[]) =>
  percentsLookFractions(
    countedLog(
      rows.map((row, i) => aCatch({ turns: 20, netKg: 6, catch: i + 1, ...row })),
      "kg",
      [],
    ),
  ).map(({ facts }) => facts);

describe("percentages that look like fractions", () => {
  it("are so in every catch that has one", () => {
    expect(asked({ moisturePercent: 0.135 }, { moisturePercent: 0.14 }, {})).toEqual([
      { column: "moisture", largest: 0.14 },
    ]);
    expect(asked({ binLevelPercent: 1 }, { binLevelPercent: 0.5 })).toHaveLength(1);
  });

  it("are not where one of them is plain percent, or too small for a fraction", () => {
    expect(asked({ moisturePercent: 0.3 }, { moisturePercent: 13.5 })).toEqual([]);
    expect(asked({ moisturePercent: 0.02 })).toEqual([]);
    expect(asked({ binLevelPercent: 0 }, { binLevelPercent: 80 })).toEqual([]);
    expect(asked({ binLevelPercent: 0 })).toEqual([]);
  });
});
