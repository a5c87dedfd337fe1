import { readFileSync } from "node:fs";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { readCatches } from "../../src/data/read-catches.ts";
import type { HistoryChoices } from "../../src/model/history.ts";
import { fitModel, type Model } from "../../src/model/model.ts";
import { type Drift, type DriftOptions, drift } from "../../src/questions/drift.ts";
import { defaults } from "../../src/results/defaults.ts";
import { typicalSpread } from "../../src/statistics/spread-within.ts";
import { aCatch } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const options: DriftOptions = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.02,
  shiftOfInterest: defaults.shiftOfInterest,
};

/** Catches in equal pairs, so that the fill's delivery is what the list says. */
function logOf(deliveries: readonly number[], pairs: (fill: number) => number = () => 1) {
  return deliveries.flatMap((delivery, f) =>
    Array.from({ length: 2 * pairs(f + 1) }, (_, c) =>
      aCatch({
        fill: f + 1,
        catch: c + 1,
        turns: 20,
        netKg: 20 * delivery * (c % 2 === 0 ? 0.99 : 1.01),
      }),
    ),
  );
}

function driftIn(
  catches: ReturnType<typeof logOf>,
  given: Partial<DriftOptions> = {},
  choices: HistoryChoices = {},
): Drift {
  const model = fitModel(catches, options, choices);
  return drift(present(model.meters[0]), { ...options, ...given }, model.meters);
}
const driftOf = (deliveries: readonly number[], given: Partial<DriftOptions> = {}) =>
  driftIn(logOf(deliveries), given);
const codes = ({ cautions }: Drift) => cautions.map(({ code }) => code);

const wobble = [0.0, 0.006, -0.004, 0.003, -0.007, 0.005, -0.002, 0.004, -0.005];
const steady = wobble.map((error) => 0.4 * (1 + error));
const stepped = wobble.map((error, i) => 0.4 * (1 + error) * (i >= 5 ? 0.95 : 1));
const falling = wobble.map((error, i) => 0.4 * (1 + error) * (1 - 0.01 * i));
/** The worked series: moved since the seventh fill, told with the eighth: test/reference/generate/moved-meter.R. */
const worked = [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011, 0.3165, 0.319];

describe("drift", () => {
  it("leaves a steady meter alone", () => {
    const result = driftOf(steady);
    expect(result.verdict).toBe("steady");
    expect(result.nextSteps).toEqual(["carry on"]);
    expect(result.cautions).toEqual([]);
    expect(result.stretches).toEqual([
      { from: 1, to: 9, fills: 9, begins: "log", mean: expect.closeTo(0.4, 12) },
    ]);
  });

  it("tells since which fill a meter has moved and how much, by the evidence of R", () => {
    const result = driftOf(worked);
    const moved = present(result.moved);
    expect(result.verdict).toBe("moved");
    expect(result.nextSteps).toEqual(["set by this fill", "look for the cause"]);
    expect(moved.since.fill).toBe(7);
    expect(moved.evidence).toBeCloseTo(5.8326292, 7);
    // (0.3165 + 0.3190)/2 over the mean of the six before.
    expect(moved.size.value).toBeCloseTo(0.31775 / 0.29985 - 1, 12);
    expect(result.input).toMatchObject({ fills: 8, fillsInForce: 2 });
    expect(result.cautions).toContainEqual(
      expect.objectContaining({
        code: "moved-since",
        severity: "doubt",
        asks: "to-know",
        facts: {
          sinceFill: 7,
          fillsSince: 2,
          change: moved.size.value,
          lower: present(moved.size.interval).lower,
          upper: present(moved.size.interval).upper,
          evidence: moved.evidence,
          limit: 5.38,
        },
      }),
    );
  });

  it("centres the tolerance on the level in force", () => {
    const { toleranceLines } = driftOf(worked);
    expect(toleranceLines).toEqual({
      center: expect.closeTo(0.31775, 12),
      lower: expect.closeTo(0.97 * 0.31775, 12),
      upper: expect.closeTo(1.03 * 0.31775, 12),
    });
  });

  it("is steady again four fills later, and keeps the change as history", () => {
    const result = driftOf([...worked, 0.3148, 0.3201]);
    expect(result.verdict).toBe("steady");
    expect(result.moved).toBeNull();
    expect(result.changes.map(({ since }) => since.fill)).toEqual([7]);
    expect(codes(result)).not.toContain("moved-since");
  });

  it("calls a steady fall trending, and says to catch every fill", () => {
    const result = driftOf(falling);
    const { perFill, fills, evidence, limit } = present(result.trending);
    expect(result.verdict).toBe("trending");
    expect(result.nextSteps).toEqual(["catch every fill", "look for the cause"]);
    expect(perFill.value).toBeCloseTo(-0.0104, 3);
    expect(result.cautions).toEqual([
      expect.objectContaining({
        code: "trending",
        severity: "doubt",
        facts: { perFill: perFill.value, fills, evidence, limit },
      }),
    ]);
    expect(result.stretches).toHaveLength(1);
  });

  it("asks for another catch when the newest fill stands apart, before anything is turned", () => {
    const result = driftOf([...steady.slice(0, 6), 0.37]);
    const { difference, earlierFills, pValue, limit } = present(result.differs);
    expect(result.verdict).toBe("fill differs");
    expect(result.nextSteps).toEqual(["catch again"]);
    expect(difference.value).toBeCloseTo(-0.0755, 3);
    expect(present(result.cautions[0])).toMatchObject({
      code: "fill-differs",
      severity: "serious",
      asks: "look-first",
      where: { bin: "1", product: "wheat", fill: 7 },
      facts: { difference: difference.value, earlierFills, pValue, limit },
    });
    expect(result.toleranceLines.center).toBeCloseTo(
      steady.slice(0, 6).reduce((sum, value) => sum + value / 6, 0),
      12,
    );
  });

  it("takes such a fill as it stands once it has twice the usual catches", () => {
    const catches = logOf([...steady.slice(0, 6), 0.37], (fill) => (fill === 7 ? 2 : 1));
    const result = driftIn(catches);
    expect(result.verdict).toBe("fill differs, confirmed");
    expect(result.nextSteps).toEqual(["set by this fill", "look for the cause"]);
    expect(present(result.cautions[0])).toMatchObject({
      code: "fill-differs-confirmed",
      severity: "doubt",
      asks: "to-know",
      facts: { catches: 4, usualCatches: 2 },
    });
    const flagged = driftIn(catches, {}, { flagged: ({ fill }) => fill === 7 });
    expect(flagged.verdict).toBe("fill differs");
  });

  it("lists a fill that stood apart once the next one is back", () => {
    const result = driftOf([...steady.slice(0, 6), 0.37, 0.401]);
    expect(result.verdict).toBe("stood apart");
    expect(result.nextSteps).toEqual(["carry on"]);
    expect(present(result.fills[6])).toMatchObject({ fill: 7, stretch: null });
    expect(result.cautions).toContainEqual(
      expect.objectContaining({
        code: "stood-apart",
        severity: "note",
        where: expect.objectContaining({ fill: 7 }),
        facts: { difference: expect.closeTo(-0.0755, 3), backWith: 8 },
      }),
    );
  });

  it("asks nothing of a log with planned differences", () => {
    const result = driftIn(logOf(stepped), {}, { asked: "never" });
    expect(result).toMatchObject({ verdict: "not asked", power: null, moved: null });
    expect(result.nextSteps).toEqual(["carry on"]);
    expect(result.fills.every(({ step }) => step === null)).toBe(true);
  });

  it("says what it cannot tell yet: nothing that lasts below four fills", () => {
    const at = (fills: number) => driftOf(steady.slice(0, fills));
    expect(at(3).verdict).toBe("too few fills");
    expect(at(3).nextSteps).toEqual(["collect fills"]);
    expect(at(4).verdict).toBe("steady");
    expect(at(3).power).toBeNull();
  });

  it("has nothing to say of fills that agree exactly", () => {
    const result = driftOf(Array.from({ length: 7 }, () => 0.4));
    expect(result).toMatchObject({ trend: null, shift: null, differs: null, power: null });
    expect(result.verdict).toBe("steady");
    expect(codes(result)).toEqual(["fills-agree-exactly"]);
  });

  it("takes another product in between for a note, and cuts where the setup says", () => {
    const wheat = logOf(stepped).map((row) => ({
      ...row,
      fill: row.fill <= 5 ? row.fill : row.fill + 50,
    }));
    const pea = [aCatch({ product: "pea", fill: 50, turns: 20, netKg: 9 })];
    const asOne = driftIn([...wheat, ...pea]);
    expect(asOne.input).toMatchObject({ fills: 9, otherProducts: ["pea"] });
    expect(asOne.changes.map(({ since }) => since.fill)).toEqual([56]);
    expect(asOne.cautions).toContainEqual(
      expect.objectContaining({
        code: "product-changed",
        severity: "note",
        facts: { otherProducts: ["pea"], beforeFills: [56] },
      }),
    );
    const startsAfresh = [{ bin: "1", product: null, fill: 56 }];
    const cut = driftIn([...wheat, ...pea], {}, { startsAfresh });
    expect(cut.changes).toEqual([]);
    expect(cut.stretches.map(({ from, begins }) => [from, begins])).toEqual([
      [1, "log"],
      [56, "setup"],
    ]);
  });

  it("is the same on any scale of mass", () => {
    const heavier = driftOf(worked.map((value) => 3 * value));
    const plain = driftOf(worked);
    expect(heavier.verdict).toBe(plain.verdict);
    expect(present(heavier.moved).size.value).toBeCloseTo(present(plain.moved).size.value, 12);
    expect(present(heavier.moved).evidence).toBeCloseTo(present(present(plain.moved).evidence), 9);
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

describe("what drift would have found", () => {
  const at = (shiftOfInterest: number, deliveries = steady) =>
    driftOf(deliveries, { shiftOfInterest }).power;

  it("is asked about halfway, with the typical spread that the fills leave possible", () => {
    const power = present(at(0.02));
    // Nine fills on 8 degrees of freedom: four before, five since.
    expect(power).toMatchObject({ sinceFill: 5, fillsBefore: 4, fillsSince: 5, bound: "about" });
    const center = steady.reduce((sum, value) => sum + value / 9, 0);
    const own = Math.sqrt(steady.reduce((sum, value) => sum + (value / center - 1) ** 2, 0) / 8);
    expect(power.relativeSpread).toBeCloseTo(typicalSpread(own, 8), 12);
    // Row "4 before" of the table at shift ÷ spread, halfway between 4 and 6 fills since.
    const spreads = 0.02 / power.relativeSpread;
    expect(spreads).toBeGreaterThan(3);
    expect(spreads).toBeLessThan(4);
    const at3 = (0.38 + 0.65) / 2;
    const at4 = (0.65 + 0.9) / 2;
    expect(power.chance).toBeCloseTo(at3 + (spreads - 3) * (at4 - at3), 10);
  });

  it("is not said after a change was found, nor while a fill differs", () => {
    expect(at(0.05, [...worked, 0.3148, 0.3201])).toBeNull();
    expect(at(0.05, [...steady.slice(0, 6), 0.37])).toBeNull();
    expect(at(0.05, falling)).toBeNull();
    expect(at(0.05, [...steady.slice(0, 6), 0.37, 0.401])).not.toBeNull();
  });
});

describe("tests that look once, at the end", () => {
  it("are adjusted together by Holm's method", () => {
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

  it("say when they cannot be made: no trend below five fills, no shift below six", () => {
    const at = (fills: number) => driftOf(steady.slice(0, fills));
    expect(at(4)).toMatchObject({ trend: null, shift: null });
    expect(codes(at(4))).toEqual(["no-trend-yet"]);
    expect(at(5).trend).not.toBeNull();
    expect(at(5).shift).toBeNull();
    expect(codes(at(5))).toEqual(["no-change-point-yet"]);
    expect(at(6).shift).not.toBeNull();
    expect(codes(at(6))).toEqual([]);
  });

  it("never change the verdict: a trend found at the end is a note beside it", () => {
    // Eight fills that rise by half a spread each: t = 2.9 on 6 degrees of freedom, evidence below its limit throughout.
    const rise = [0, 1.2, 0.1, 1.9, 1.1, 3.4, 1.6, 3.2].map((step) => 0.4 * (1 + 0.005 * step));
    const result = driftOf(rise);
    const { trend } = result;
    expect(present(trend).adjustedPValue).toBeLessThan(0.05);
    expect(result.verdict).toBe("steady");
    expect(result.cautions).toEqual([
      expect.objectContaining({
        code: "trend-or-wander",
        severity: "note",
        facts: { pValue: present(trend).adjustedPValue },
      }),
    ]);
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

  it("finds the planted shift of bin 3: 5.5 % down from fill 6", () => {
    const { verdict, moved } = ofBin("3");
    const { since, size } = present(moved);
    expect(verdict).toBe("moved");
    expect(since.fill).toBe(6);
    expect(present(size.interval).lower).toBeLessThan(-0.055);
    expect(present(size.interval).upper).toBeGreaterThan(-0.055);
    expect(present(size.interval).upper).toBeLessThan(0);
  });

  it("leaves the two bins alone whose meters did not move", () => {
    for (const bin of ["1", "2"]) {
      const result = ofBin(bin);
      expect(result.verdict).toBe("steady");
      expect(result.byName?.individuals.outside).toEqual([]);
      expect(result.cautions).toEqual([]);
    }
  });
});

// A smoke run of the study behind reports/drift-study.md: three standard errors of 0.05 with 1,000 seasons are 0.021.
describe("drift in simulated seasons, asked after every fill", () => {
  const alarms = (fills: number, from: number, shift: number, seasons: number) => {
    let found = 0;
    for (let season = 0; season < seasons; season++) {
      const catches = inventedFills(
        { fills, catches: 3, spread: 0.02, scatter: 0.015 },
        7000 + season,
      ).map((row) => (row.fill >= from ? { ...row, netKg: row.netKg + 6 * shift } : row));
      const { history } = present(fitModel(catches, options).meters[0]);
      if (history.steps.some(({ outcome }) => outcome !== "too few" && outcome !== "steady"))
        found++;
    }
    return found / seasons;
  };

  it("finds something in a steady season of twelve fills in about one of twenty", () => {
    const share = alarms(12, 13, 0, 1000);
    expect(share).toBeLessThan(0.051 + 0.021);
    expect(share).toBeGreaterThan(0.051 - 0.021);
  });

  it("finds a shift of 5 % from the seventh of twelve fills on in about two of three", () => {
    // 0.642 in R: test/reference/generate/seasons.R; three standard errors with 400 seasons are 0.072.
    const share = alarms(12, 7, 0.05, 400);
    expect(Math.abs(share - 0.642)).toBeLessThan(0.072);
  });
});

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}
