import { describe, expect, it } from "vitest";
import { decidedLog } from "../../src/analysis/decided-bin.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { catchesOf, type FillOfMasses, stepsFor } from "../support/decision-states.ts";

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

describe("the rate error that catches are planned with", () => {
  // 1 ha is 10,000/(9 · 2.2) = 505.05 turns of the wheel; 19.4 kg in 60 turns, 0.32333 kg/turn: a ratio of 1 puts out
  // 163.3 kg/ha. The ratio for 160 kg/ha is 0.9798.
  const rateErrorOf = (ratio: number) => (ratio * (10_000 / (9 * 2.2)) * (19.4 / 60)) / 160 - 1;

  it.each([
    ["of the nearest step where it is too light but within the tolerance", 0.95, rateErrorOf(0.95)],
    ["of the nearest step where it is too heavy but within the tolerance", 1, rateErrorOf(1)],
    ["none where the nearest step is too light by more: a finding of its own", 0.85, 0],
    ["none where the nearest step is too heavy by more", 1.1, 0],
  ])("is %s", async (_, ratio, expected) => {
    const text = catchesOf({ masses: [6.36, 6.48, 6.56] });
    const log = await readCatches({ name: "catches.csv", text });
    const setup = {
      tolerance_percent: 5,
      cart: {
        working_width: { value: 9, unit: "m" },
        wheel_circumference: { value: 2.2, unit: "m" },
      },
      bins: [stepsFor(160, [ratio])],
    };
    const read = readSetup({ name: "setup.json", text: JSON.stringify(setup) });
    const planned = decidedLog(log, read, {}).meters[0]?.catchesNeeded?.options.settingError;
    expect(planned).toBeCloseTo(expected, 12);
  });
});
