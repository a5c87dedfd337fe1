import { describe, expect, it } from "vitest";
import { readSetup } from "../../../src/data/read-setup.ts";
import { sharesLookFractions } from "../../../src/data/suspicions/shares-look-fractions.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { aCatch } from "../../support/catches.ts";

const asked = (seed: object) => {
  const text = JSON.stringify({ bins: [{ bin: "1", seed }] });
  const log = countedLog([aCatch({ turns: 20, netKg: 6 })], "kg", []);
  return sharesLookFractions(readSetup({ name: "setup.json", text }), log).map(
    ({ facts }) => facts,
  );
};

describe("shares of seeds that look like fractions", () => {
  it("are one percent at most", () => {
    expect(asked({ germination_percent: 0.95, emergence_percent: 85 })).toEqual([
      { seedShare: "germination", percent: 0.95 },
    ]);
    expect(asked({ emergence_percent: 1 })).toHaveLength(1);
    expect(asked({ germination_percent: 2 })).toEqual([]);
  });
});
