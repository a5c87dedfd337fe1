import { describe, expect, it } from "vitest";
import type { Variable } from "../../../src/questions/explaining-variables/result.ts";
import { explainingUnits } from "../../../src/wording/sayings/explaining-units.ts";
import { english } from "../../support/words.ts";

const varies = { withinFills: true, withinProducts: true, betweenProducts: true };
const variable = (name: string, unit: Variable["unit"]): Variable => ({
  name,
  unit,
  fills: 4,
  lowest: 1,
  highest: 2,
  varies,
});
const variables = [variable("bulk density", "kg/m³"), variable("moisture", "%")];
const metric = explainingUnits(english("metric").format);
const us = explainingUnits(english("us").format);

describe("volumes and effects on paper", () => {
  it("are litres for one reader, cubic inches for another", () => {
    expect([metric.volumeUnit, us.volumeUnit]).toEqual(["L", "in³"]);
    expect(metric.volume(0.000_542, null)).toBe("0.5420");
    // 1 in³ is 16.387 064 cm³ exactly.
    expect(us.volume(0.000_016_387_064 * 32, null)).toBe("32.00");
  });

  it("are as precise as the error beside them deserves, of a whole column the smallest", () => {
    expect(metric.volume(0.000_542, 0.000_004)).toBe("0.5420");
    expect(metric.effect(0.0005, { standardError: 0.000_12 }, "moisture", variables)).toBe(
      "0.00050",
    );
  });

  it("are per unit of the reader's own", () => {
    expect(metric.unit("bulk density", variables)).toBe("kg/m³");
    expect(us.unit("bulk density", variables)).toBe("lb/ft³");
    expect(us.unit("tkw", [...variables, variable("tkw", null)])).toBeNull();
  });

  it("say the same whichever the units: 100 kg/m³ more are 6.24 lb/ft³ more", () => {
    const [perKgPerM3, alone] = [0.0005, { standardError: null }];
    expect(metric.effect(perKgPerM3, alone, "bulk density", variables)).toBe("0.000500");
    const perLbPerFt3 = Number(us.effect(perKgPerM3, alone, "bulk density", variables));
    expect(perLbPerFt3 * 6.2428).toBeCloseTo(100 * perKgPerM3 * 2.204_62, 3);
    expect(us.relative(0.001, "moisture", variables)).toBe(0.001);
    expect(us.relative(0.001, "bulk density", variables)).toBeCloseTo(0.016_018, 5);
  });
});
