import { describe, expect, it } from "vitest";
import { rateAsMass } from "../../src/model/rate-as-mass.ts";
import { present } from "../support/reference.ts";

const known = (value: number, standardUncertainty: number | null = null) => ({
  value,
  standardUncertainty,
});
const seed = {
  thousandKernelMassG: known(40, 0.4),
  germination: known(0.95, 0.019),
  emergence: known(0.8, 0.032),
};
const none = { thousandKernelMassG: null, germination: null, emergence: null };

describe("a wanted rate as mass", () => {
  it("is itself where it is one", () => {
    expect(rateAsMass({ kind: "mass", kgPerHectare: 120 }, null)).toEqual({
      rate: { value: 120, standardUncertainty: 0 },
      missing: [],
    });
  });

  it("of seeds is 300 of 40 g a thousand: 120 kg/ha, 1 % uncertain as the mass is", () => {
    const { rate, missing } = rateAsMass({ kind: "seeds", seedsPerM2: 300 }, seed);
    expect(missing).toEqual([]);
    expect(present(rate).value).toBeCloseTo(120, 10);
    expect(present(rate).standardUncertainty).toBeCloseTo(1.2, 6);
  });

  it("of plants is 228 of 76 % that come up: 120 kg/ha, relative errors of 1, 2 and 4 % together", () => {
    const { rate, missing } = rateAsMass({ kind: "plants", plantsPerM2: 228 }, seed);
    expect(missing).toEqual([]);
    expect(present(rate).value).toBeCloseTo(120, 10);
    expect(present(rate).standardUncertainty / 120).toBeCloseTo(Math.sqrt(21) / 100, 4);
  });

  it("names what it lacks, and nothing else", () => {
    const seeds = { kind: "seeds", seedsPerM2: 300 } as const;
    const plants = { kind: "plants", plantsPerM2: 228 } as const;
    const lacking = (given: typeof seed | typeof none | null) =>
      [seeds, plants].map((wanted) => rateAsMass(wanted, given));
    for (const given of [null, none])
      expect(lacking(given)).toEqual([
        { rate: null, missing: ["thousand-kernel mass"] },
        { rate: null, missing: ["thousand-kernel mass", "germination", "emergence"] },
      ]);
    const without = (name: keyof typeof seed) =>
      rateAsMass(plants, { ...seed, [name]: null }).missing;
    expect(without("thousandKernelMassG")).toEqual(["thousand-kernel mass"]);
    expect(without("germination")).toEqual(["germination"]);
    expect(without("emergence")).toEqual(["emergence"]);
  });
});
