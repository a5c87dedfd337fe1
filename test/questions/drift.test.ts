import { readFileSync } from "node:fs";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { readCatches } from "../../src/data/read-catches.ts";
import { fitModel, type Model } from "../../src/model/model.ts";
import { type Drift, type DriftOptions, drift } from "../../src/questions/drift.ts";
import { defaults } from "../../src/results/defaults.ts";
import { aCatch } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const options: DriftOptions = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.02,
  shiftOfInterest: defaults.shiftOfInterest,
  productChange: "starts afresh",
};

/** One equal pair of catches a fill, so that the fill's delivery is what the list says. */
function logOf(deliveries: readonly number[]) {
  return deliveries.flatMap((delivery, f) =>
    [0.99, 1.01].map((error, c) =>
      aCatch({ fill: f + 1, catch: c + 1, turns: 20, netKg: 20 * delivery * error }),
    ),
  );
}

function driftOf(deliveries: readonly number[], given: Partial<DriftOptions> = {}): Drift {
  const model = fitModel(logOf(deliveries), options);
  return drift(present(model.meters[0]), { ...options, ...given }, model.meters);
}

const wobble = [0.0, 0.006, -0.004, 0.003, -0.007, 0.005, -0.002, 0.004, -0.005];
const steady = wobble.map((error) => 0.4 * (1 + error));
const stepped = wobble.map((error, i) => 0.4 * (1 + error) * (i >= 5 ? 0.95 : 1));
const falling = wobble.map((error, i) => 0.4 * (1 + error) * (1 - 0.008 * i));

describe("drift", () => {
  it("leaves a steady meter alone", () => {
    const result = driftOf(steady);
    expect(result.verdict).toBe("steady");
    expect(result.nextSteps).toEqual(["carry on"]);
    expect(result.cautions).toEqual([]);
  });

  it("finds a shift, since which fill, and how much", () => {
    const result = driftOf(stepped);
    const shift = present(result.shift);
    expect(result.verdict).toBe("moved");
    expect(result.nextSteps).toEqual(["recalibrate", "inspect"]);
    expect(shift.since).toMatchObject({ fill: 6, earliest: 6, latest: 6 });
    expect(shift.relativeSize.value).toBeCloseTo(-0.05, 2);
    expect(present(shift.relativeSize.interval).lower).toBeLessThan(-0.05);
    expect(present(shift.relativeSize.interval).upper).toBeGreaterThan(-0.05);
    expect(present(shift.relativeSize.interval).upper).toBeLessThan(0);
    expect(result.toleranceLines.center).toBeCloseTo(shift.before, 12);
  });

  it("does not send anybody to look for a cause while the shift is within the tolerance", () => {
    expect(driftOf(stepped, { tolerance: 0.06 }).nextSteps).toEqual(["recalibrate"]);
  });

  it("calls a steady fall a trend, and warns that a slow wander looks the same", () => {
    const result = driftOf(falling);
    expect(result.verdict).toBe("trending");
    expect(result.nextSteps).toEqual(["inspect", "catch again"]);
    expect(present(result.trend).relativePerFill.value).toBeCloseTo(-0.0082, 3);
    expect(result.cautions.map(({ code }) => code)).toEqual(["trend-or-wander"]);
  });

  it("asks for another catch when only the newest fill stands out", () => {
    const result = driftOf([...steady.slice(0, 5), 0.38]);
    expect(result.verdict).toBe("newest differs");
    expect(result.nextSteps).toEqual(["catch again"]);
    expect(present(result.newest).difference.value).toBeCloseTo(-0.05, 2);
    expect(present(result.fills.at(-1)).asItCame).toMatchObject({ outside: true });
  });

  it("adjusts trend and shift together by Holm's method", () => {
    const { trend, shift } = driftOf(stepped);
    const [smaller, larger] = [present(trend), present(shift)].toSorted(
      (a, b) => a.pValue - b.pValue,
    );
    expect(present(smaller).adjustedPValue).toBeCloseTo(2 * present(smaller).pValue, 12);
    expect(present(larger).adjustedPValue).toBeCloseTo(
      Math.max(present(larger).pValue, 2 * present(smaller).pValue),
      12,
    );
  });

  it("says what it cannot tell yet: no trend below five fills, no shift below six", () => {
    const at = (fills: number) => driftOf(steady.slice(0, fills));
    const codes = (result: Drift) => result.cautions.map(({ code }) => code);
    expect(at(3).verdict).toBe("too few fills");
    expect(at(3).nextSteps).toEqual(["collect fills"]);
    expect(at(1).newest).toBeNull();
    expect(at(4)).toMatchObject({ trend: null, shift: null, power: null, verdict: "steady" });
    expect(codes(at(4))).toEqual(["no-trend-yet"]);
    expect(at(5).trend).not.toBeNull();
    expect(at(5).shift).toBeNull();
    expect(codes(at(5))).toEqual(["no-change-point-yet"]);
    expect(at(6).shift).not.toBeNull();
    expect(codes(at(6))).toEqual([]);
  });

  it("has nothing to say of fills that agree exactly", () => {
    const result = driftOf(Array.from({ length: 7 }, () => 0.4));
    expect(result).toMatchObject({ trend: null, shift: null, newest: null, power: null });
    expect(result.verdict).toBe("steady");
    expect(result.cautions.map(({ code }) => code)).toEqual(["fills-agree-exactly"]);
  });

  it("states its false alarms, and that asking after every fill raises them", () => {
    const { falseAlarms } = driftOf(steady);
    expect(falseAlarms).toMatchObject({ season: 0.05, newestFill: 0.05 });
    expect(falseAlarms.eachFill).toBeCloseTo(0.05 / 6, 12);
    expect(falseAlarms.seasonAskedEveryFill).toBeGreaterThan(0.08);
    expect(falseAlarms.seasonAskedEveryFill).toBeLessThan(0.2);
  });

  it("states the power it had, more for a larger shift and for a calmer meter", () => {
    const small = present(driftOf(steady, { shiftOfInterest: 0.01 }).power);
    const large = present(driftOf(steady, { shiftOfInterest: 0.02 }).power);
    const unruly = wobble.map((error) => 0.4 * (1 + 3 * error));
    const unsure = present(driftOf(unruly, { shiftOfInterest: 0.02 }).power);
    expect(large.chance).toBeGreaterThan(small.chance);
    expect(unsure.chance).toBeLessThan(large.chance);
    for (const { chance, range } of [small, large, unsure]) {
      expect(range.lower).toBeLessThanOrEqual(chance);
      expect(range.upper).toBeGreaterThanOrEqual(chance);
    }
  });

  it("does not count a shift it found as spread when it states its power", () => {
    const [before, after] = [present(driftOf(steady).power), present(driftOf(stepped).power)];
    expect(after.spread.value / before.spread.value).toBeCloseTo(1, 0.5);
  });

  it("starts afresh after another product was in the bin, and says so", () => {
    const wheat = logOf(stepped);
    const pea = [aCatch({ product: "pea", fill: 50, turns: 20, netKg: 9 })];
    const later = wheat.map((row) => ({ ...row, fill: row.fill <= 5 ? row.fill : row.fill + 50 }));
    const model = fitModel([...later, ...pea], options);
    const result = drift(present(model.meters[0]), options, model.meters);
    expect(result.input).toMatchObject({ fills: 4, fillsSetAside: 5, otherProducts: ["pea"] });
    expect(result.verdict).toBe("steady");
    expect(result.fills.map(({ judged }) => judged)).toEqual([
      ...Array.from({ length: 5 }, () => false),
      ...Array.from({ length: 4 }, () => true),
    ]);
    expect(present(result.cautions[0])).toMatchObject({
      code: "product-changed",
      facts: { otherProducts: ["pea"], fillsSetAside: 5 },
    });
    const carried = drift(
      present(model.meters[0]),
      { ...options, productChange: "carries on" },
      model.meters,
    );
    expect(carried.verdict).toBe("moved");
  });

  it("is the same on any scale of mass", () => {
    const heavier = driftOf(stepped.map((value) => 3 * value));
    const plain = driftOf(stepped);
    expect(heavier.verdict).toBe(plain.verdict);
    expect(present(heavier.shift).size.value).toBeCloseTo(3 * present(plain.shift).size.value, 12);
    expect(present(heavier.shift).pValue).toBeCloseTo(present(plain.shift).pValue, 12);
    expect(heavier.power?.chance).toBe(plain.power?.chance);
  });

  it("is plain data without gaps in its numbers, whatever the fills", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 380, max: 420 }), { minLength: 1, maxLength: 12 }),
        (deliveries) => {
          const result = driftOf(deliveries.map((value) => value / 1000));
          expect(JSON.parse(JSON.stringify(result))).toEqual(result);
          expect(numbersIn(result).every(Number.isFinite)).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe("drift on the demo season", () => {
  let model: Model;
  beforeAll(async () => {
    const file = new URL("../../data-demo/season/catches.csv", import.meta.url);
    const log = await readCatches({ name: "catches.csv", text: readFileSync(file, "utf8") });
    model = fitModel(log.catches, options);
  });
  const ofBin = (bin: string) =>
    drift(present(model.meters.find((meter) => meter.bin === bin)), options, model.meters);

  it("finds the planted shift of the rear bin: 5.5 % down from fill 6", () => {
    const result = ofBin("rear");
    const { since, relativeSize } = present(result.shift);
    expect(result.verdict).toBe("moved");
    expect(since.fill).toBe(6);
    expect(present(relativeSize.interval).lower).toBeLessThan(-0.055);
    expect(present(relativeSize.interval).upper).toBeGreaterThan(-0.055);
    expect(present(relativeSize.interval).upper).toBeLessThan(0);
  });

  it("leaves the two bins alone whose meters did not move", () => {
    for (const bin of ["front", "middle"]) {
      const result = ofBin(bin);
      expect(result.verdict).toBe("steady");
      expect(result.fills.some(({ asItCame }) => asItCame?.outside)).toBe(false);
      expect(result.byName?.individuals.outside).toEqual([]);
      expect(result.cautions).toEqual([]);
    }
  });
});

// A smoke run of the study behind reports/drift-study.md: three standard errors of 0.05 with 1,000 seasons are 0.021.
describe("drift in simulated seasons", () => {
  const verdicts = (fills: number, shift: number, seasons: number) => {
    const found: Drift["verdict"][] = [];
    for (let season = 0; season < seasons; season++) {
      const catches = inventedFills(
        { fills, catches: 3, spread: 0.02, scatter: 0.015 },
        7000 + season,
      ).map((row) => (row.fill > fills / 2 ? { ...row, netKg: row.netKg * (1 + shift) } : row));
      const model = fitModel(catches, options);
      found.push(drift(present(model.meters[0]), options).verdict);
    }
    return (verdict: Drift["verdict"]) => found.filter((one) => one === verdict).length / seasons;
  };

  it("calls a steady season moved or trending in at most one of twenty", () => {
    const share = verdicts(8, 0, 1000);
    expect(share("moved") + share("trending")).toBeLessThan(0.05 + 0.021);
    expect(share("moved") + share("trending")).toBeGreaterThan(0.01);
  });

  it("finds a shift of 5 % halfway through eight fills about every second time", () => {
    const share = verdicts(8, 0.05, 300);
    expect(share("moved") + share("trending")).toBeGreaterThan(0.35);
    expect(share("moved") + share("trending")).toBeLessThan(0.75);
  });
});

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}
