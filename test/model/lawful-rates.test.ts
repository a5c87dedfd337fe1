import { describe, expect, it } from "vitest";
import type { SeedSetup, TargetRate } from "../../src/data/setup.ts";
import { chanceOutsideLaw, lawfulErrors, lawfulRates } from "../../src/model/lawful-rates.ts";
import { evalR } from "../support/webr.ts";

const mass = (kgPerHectare: number): TargetRate => ({ kind: "mass", kgPerHectare });
const exact = (value: number) => ({ value, standardUncertainty: null });
const seed: SeedSetup = {
  thousandKernelMassG: exact(40),
  germination: exact(0.95),
  emergence: exact(0.8),
};

describe("rates that label or law sets", () => {
  it("are none where neither end is given", () => {
    expect(lawfulRates({ lowestRate: null, highestRate: null }, seed)).toBeNull();
  });

  it("are mass: 300 seeds/m² of 40 g a thousand are 120 kg/ha, 228 plants/m² of 76 % take as much", () => {
    const seeds: TargetRate = { kind: "seeds", seedsPerM2: 300 };
    const plants: TargetRate = { kind: "plants", plantsPerM2: 228 };
    const found = lawfulRates({ lowestRate: seeds, highestRate: plants }, seed);
    expect(found?.rates.lowestKgPerHa).toBeCloseTo(120, 12);
    expect(found?.rates.highestKgPerHa).toBeCloseTo(120, 12);
    expect(found?.missing).toEqual([]);
  });

  it("name each seed figure they lack once, and keep the end that needs none", () => {
    const plants: TargetRate = { kind: "plants", plantsPerM2: 228 };
    const germinated = { ...seed, thousandKernelMassG: null, emergence: null };
    expect(lawfulRates({ lowestRate: mass(100), highestRate: plants }, germinated)).toEqual({
      rates: { lowestKgPerHa: 100, highestKgPerHa: null },
      missing: ["thousand-kernel mass", "emergence"],
    });
    expect(lawfulRates({ lowestRate: plants, highestRate: plants }, null)?.missing).toEqual([
      "thousand-kernel mass",
      "germination",
      "emergence",
    ]);
  });

  it("are rate errors against the rate intended", () => {
    const errors = lawfulErrors({ lowestKgPerHa: 108, highestKgPerHa: 132 }, 120);
    expect(errors.lowest).toBeCloseTo(-0.1, 14);
    expect(errors.highest).toBeCloseTo(0.1, 14);
    expect(lawfulErrors({ lowestKgPerHa: null, highestKgPerHa: null }, 120)).toEqual({
      lowest: null,
      highest: null,
    });
  });
});

describe("the chance of breaking them", () => {
  const law = { location: 0.012, scale: 0.021, df: 2.7 };

  it("is each tail of Student's t, moved and stretched, as R has it (pt)", async () => {
    const [below, above, far] = await evalR(
      "c(pt((-0.05 - m) / s, v), pt((0.08 - m) / s, v, lower.tail = FALSE), pt((-0.9 - m) / s, v))",
      { m: law.location, s: law.scale, v: law.df },
    );
    const chance = chanceOutsideLaw(law, { lowest: -0.05, highest: 0.08 });
    expect(chance.below).toBeCloseTo(below ?? Number.NaN, 12);
    expect(chance.above).toBeCloseTo(above ?? Number.NaN, 12);
    expect(chance.either).toBeCloseTo((below ?? Number.NaN) + (above ?? Number.NaN), 12);
    const small = chanceOutsideLaw(law, { lowest: -0.9, highest: null }).below;
    expect((small ?? 0) / (far ?? Number.NaN)).toBeCloseTo(1, 9);
  });

  it("is null at the end where there is no rate, and of both where there is none at all", () => {
    expect(chanceOutsideLaw(law, { lowest: null, highest: 0.08 }).below).toBeNull();
    expect(chanceOutsideLaw(law, { lowest: null, highest: null })).toEqual({
      below: null,
      above: null,
      either: null,
    });
  });

  it("is never more than certain, even where the two ends are the wrong way round", () => {
    expect(chanceOutsideLaw(law, { lowest: 0.3, highest: -0.3 }).either).toBe(1);
  });
});
