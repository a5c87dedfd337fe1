import { describe, expect, it } from "vitest";
import { decidedLog } from "../../src/analysis/decided-bin.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { catchesOf, type FillOfMasses, stepsFor } from "../support/decision-states.ts";
import { present } from "../support/reference.ts";

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

describe("the error of the nearest step", () => {
  /** What the plan takes for it; eight catches of 20 turns, 6.4625 kg on average. */
  const settingErrorWith = async (steps: readonly number[]) => {
    const masses = [6.46, 6.48, 6.44, 6.46, 6.48, 6.46, 6.44, 6.48];
    const log = await readCatches({ name: "catches.csv", text: catchesOf({ masses }) });
    const setup = {
      tolerance_percent: 3,
      cart: {
        working_width: { value: 9, unit: "m" },
        wheel_circumference: { value: 2.2, unit: "m" },
      },
      bins: [stepsFor(160, steps)],
    };
    const read = readSetup({ name: "setup.json", text: JSON.stringify(setup) });
    const [bin] = decidedLog(log, read, {}).meters;
    return present(bin?.catchesNeeded).options.settingError;
  };
  // 160 kg/ha · 9 m · 2.2 m ÷ 10,000 m²/ha ÷ (6.4625 ÷ 20) kg/turn.
  const wanted = (160 * 9 * 2.2) / 10_000 / (6.4625 / 20);

  it("uses up a part of the tolerance, whichever way it is off", async () => {
    expect(await settingErrorWith([0.98 * wanted, 1.2])).toBeCloseTo(-0.02, 9);
    expect(await settingErrorWith([0.8, 1.02 * wanted])).toBeCloseTo(0.02, 9);
  });

  it("is planned for no more where it is off by more than the tolerance, which no catch can mend", async () => {
    expect(await settingErrorWith([0.96 * wanted, 1.2])).toBe(0);
    expect(await settingErrorWith([0.8, 1.04 * wanted])).toBe(0);
  });
});
