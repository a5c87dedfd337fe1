import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { newestFill } from "../../src/model/meters.ts";
import { curveOf, estimateOf, fitModel } from "../../src/model/model.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../src/numeric/random.ts";
import {
  type CatchesNeededChoices,
  catchesNeededDefaults,
  catchesNeededOptions,
} from "../../src/questions/catches-needed/options.ts";
import { stoppingAdvice } from "../../src/questions/catches-needed/stopping.ts";
import { worthwhileTurns } from "../../src/questions/catches-needed/turns.ts";
import { catchesNeeded } from "../../src/questions/catches-needed.ts";
import { aCatch, aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const model = { level: 0.95, tolerance: 0.02, scaleDivisionKg: 0.02 };

function plan(given: Partial<CatchesNeededChoices> = {}, changes: Partial<typeof model> = {}) {
  return catchesNeeded(null, catchesNeededOptions({ ...model, ...changes }, given));
}

function ask(
  catches: readonly Catch[],
  given: Partial<CatchesNeededChoices> = {},
  changes: Partial<typeof model> = {},
) {
  const options = { ...model, ...changes };
  const meter = present(fitModel(catches, options).meters[0]);
  return catchesNeeded(meter, catchesNeededOptions(options, given));
}

const codesOf = ({ cautions }: ReturnType<typeof plan>) => cautions.map(({ code }) => code);
const history = inventedFills({ fills: 5, catches: 3, spread: 0.02, scatter: 0.015 }, 12);
const today = (pairs: readonly (readonly [number, number])[]) => [
  ...history,
  ...aFill(pairs, { fill: 6 }),
];

describe("before any catch", () => {
  // Computed by an independent program: n with an assurance of 80 % by scatter of a catch and width.
  it.each([
    [0.01, 0.01, 8],
    [0.01, 0.015, 6],
    [0.015, 0.02, 6],
    [0.015, 0.03, 4],
    [0.02, 0.02, 8],
    [0.03, 0.015, 22],
    [0.03, 0.01, 44],
  ])("scatter %s and tolerance %s ask for %i catches", (relative, tolerance, catches) => {
    const typicalScatter = { relative, turns: 20 };
    const result = plan({ typicalScatter }, { tolerance });
    expect(result.withoutLimit?.further).toBe(catches);
    expect(result.recommended?.further ?? null).toBe(catches <= 6 ? catches : null);
    expect(result.halfWidth).toBeNull();
    expect(codesOf(result)).toContain("scatter-assumed");
    expect(codesOf(result).includes("tolerance-needs-more-catches")).toBe(catches > 6);
  });

  it("longer catches scatter less, by the square root of their turns", () => {
    const result = plan({ turnsPerCatch: 80, typicalScatter: { relative: 0.03, turns: 20 } });
    expect(result.basis.relativeScatter).toBeCloseTo(0.015, 14);
  });

  it("a book value brings the scale's division in", () => {
    const result = plan({ assumedKgPerTurn: 0.3 });
    expect(result.basis.divisionInTurns).toBeCloseTo(0.02 / 0.3, 14);
    // t >= (4/√6)·d/(w·b)
    expect(result.turnsForScale).toBe(Math.ceil(((4 / Math.sqrt(6)) * 0.02) / (0.02 * 0.3)));
    expect(plan().turnsForScale).toBeNull();
  });

  it("a delivery of a few grams a turn needs more turns, not more catches", () => {
    const result = plan({ assumedKgPerTurn: 0.01 });
    expect(result.withoutLimit).toBeNull();
    expect(codesOf(result)).toContain("scale-limits-tolerance");
    expect(result.turnsForScale).toBe(164);
    const longer = plan({ assumedKgPerTurn: 0.01, turnsPerCatch: 200 });
    expect(longer.recommended).not.toBeNull();
    expect(codesOf(longer)).not.toContain("scale-limits-tolerance");
  });

  it("the fill to come of a meter with a log rests on the log's scatter", () => {
    const result = ask(history, { fill: "next" });
    expect(result).toMatchObject({ fill: null, met: null, halfWidth: null });
    expect(result.basis).toMatchObject({ scatter: "pooled", df: 10, catches: 0, earlierFills: 5 });
    // With nothing added to the scatter yet the first catch either reaches the tolerance or does not.
    expect(result.further[1]?.chance).toBe(0);
    const curve = present(result.curve);
    expect(result.further[1]?.halfWidth).toBeCloseTo(present(curve.points[1]?.halfWidth), 12);
  });
});

describe("with catches in hand", () => {
  it("one catch and a log: the scatter is borrowed and the width known", () => {
    const result = ask(today([[20, 6.1]]));
    expect(result.basis).toMatchObject({ scatter: "pooled", df: 10, catches: 1 });
    expect(result.halfWidth).toBeGreaterThan(0.02);
    expect(result.met).toBe(false);
    expect(result.stopping).toMatchObject({ action: "catch again", reason: "too few catches" });
    expect(present(result.recommended).chance).toBeGreaterThanOrEqual(0.8);
    expect(codesOf(result)).not.toContain("scatter-assumed");
  });

  it("one catch alone: no width, and a plan from a typical scatter that says so", () => {
    const result = ask(aFill([[20, 6.1]]), {}, { tolerance: 0.05 });
    expect(result).toMatchObject({ halfWidth: null, met: null });
    expect(result.basis).toMatchObject({ scatter: "assumed", df: 0, catches: 1 });
    expect(result.recommended?.further).toBeGreaterThanOrEqual(2);
    expect(codesOf(result)).toContain("scatter-assumed");
  });

  it("catches that agree exactly, with no division given, count as a scatter that is not known", () => {
    const alike = aFill([
      [20, 6],
      [20, 6],
      [20, 6],
    ]);
    const result = ask(alike, {}, { scaleDivisionKg: null as never });
    expect(result.basis.scatter).toBe("assumed");
    expect(ask(alike).basis.scatter).toBe("own");
    expect(ask(alike).met).toBe(true);
  });

  it("the width so far is that of the fill's interval", () => {
    const catches = today([
      [20, 6.1],
      [20, 6.15],
    ]);
    const meter = present(fitModel(catches, model).meters[0]);
    const fill = newestFill(meter);
    const { estimate } = estimateOf(meter, fill, model);
    const half = present(estimate.interval?.upper) - estimate.value;
    expect(ask(catches).halfWidth).toBeCloseTo(half / estimate.value, 12);
  });

  it("also with catches weighed on scales of their own", () => {
    const catches = aFill([
      [20, 6.1],
      [20, 6.2],
      [30, 9.2],
    ]).map((row, i) => ({ ...row, divisionKg: i === 1 ? 0.1 : 0.01 }));
    const meter = present(fitModel(catches, model).meters[0]);
    const fill = newestFill(meter);
    const { estimate } = estimateOf(meter, fill, model);
    const half = present(estimate.interval?.upper) - estimate.value;
    expect(ask(catches).halfWidth).toBeCloseTo(half / estimate.value, 12);
  });

  it("unequal turns carry the larger standard error into the plan", () => {
    const unequal = aFill([
      [10, 3.3],
      [40, 12],
      [40, 12.5],
      [10, 2.9],
    ]);
    const meter = present(fitModel(unequal, model).meters[0]);
    const fill = newestFill(meter);
    const { variance, estimate } = estimateOf(meter, fill, model);
    const largest = Math.max(present(variance.model), present(variance.robust));
    expect(ask(unequal).basis.variancePerTurn).toBeCloseTo(
      (largest * 100) / estimate.value ** 2,
      14,
    );
  });

  it("the chance of reaching the tolerance is the one that happens when the catches are made", () => {
    const catches = today([
      [20, 6.1],
      [20, 6.16],
    ]);
    const tight = { tolerance: 0.0165 };
    const { basis, further } = ask(catches, {}, tight);
    const wanted = present(further[2]);
    const chance = present(wanted.chance);
    expect(chance).toBeGreaterThan(0.3);
    expect(chance).toBeLessThan(0.97);
    // True scatters in keeping with what is in hand, two more catches with each, and the whole model fitted again.
    const stream = randomStream(6);
    const trials = 3_000;
    let reached = 0;
    for (let i = 0; i < trials; i++) {
      const perTurn = (basis.variancePerTurn * basis.df) / stream.chiSquared(basis.df);
      const level = 0.3065 * (1 + Math.sqrt(perTurn / 40) * stream.normal());
      const more = [3, 4].map((number) => {
        const netKg = level * 20 * (1 + Math.sqrt(perTurn / 20) * stream.normal());
        return aCatch({ fill: 6, catch: number, turns: 20, netKg });
      });
      if (ask([...catches, ...more], {}, tight).met === true) reached++;
    }
    // Four standard errors of the simulated share.
    expect(Math.abs(reached / trials - chance)).toBeLessThan(0.036);
  });
});

describe("what further catches buy", () => {
  const chances = (result: ReturnType<typeof plan>) =>
    result.further.flatMap(({ chance }) => chance ?? []);

  it("grows with every catch, and the assured width is the wider one", () => {
    const scatter = fc.double({ min: 0.004, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(scatter, fc.integer({ min: 1, max: 4 }), fc.integer(), (size, catches, seed) => {
        const log = inventedFills(
          { fills: 4, catches: 3, spread: 0.02, scatter: size },
          seed >>> 0,
        );
        const fill = inventedFills(
          { fills: 1, catches, spread: 0.02, scatter: size, firstFill: 5 },
          1 + (seed >>> 0),
        );
        const { further } = ask([...log, ...fill]);
        for (const [i, point] of further.entries()) {
          const before = further[i - 1];
          if (before === undefined) continue;
          expect(point.halfWidth).toBeLessThan(present(before.halfWidth));
          if (i >= 2) expect(point.chance).toBeGreaterThanOrEqual(present(before.chance) - 1e-9);
          expect(point.halfWidthAssured).toBeGreaterThanOrEqual(present(point.halfWidth) * 0.999);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("is recommended only where the chance is that of the assurance, and one fewer falls short", () => {
    for (const assurance of [0.5, 0.8, 0.95]) {
      const result = plan({ assurance, typicalScatter: { relative: 0.015, turns: 20 } });
      const { further, chance } = present(result.withoutLimit);
      expect(chance).toBeGreaterThanOrEqual(assurance);
      if (further > 3) expect(result.further[further - 1]?.chance).toBeLessThan(assurance);
    }
  });

  it("takes fewer of the longer catches", () => {
    const { byTurns } = plan(
      { typicalScatter: { relative: 0.03, turns: 20 } },
      { tolerance: 0.05 },
    );
    const counts = byTurns.map(({ recommended }) => recommended?.further ?? 99);
    expect(byTurns.map(({ turns }) => turns)).toEqual([10, 20, 40]);
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
  });

  it("is certain to be reached with hardly any scatter", () => {
    const result = plan({ typicalScatter: { relative: 1e-4, turns: 20 } });
    expect(chances(result).at(-1)).toBeCloseTo(1, 12);
    expect(result.recommended?.further).toBe(3);
  });
});

describe("one catch at a time", () => {
  const rule = { tolerance: 0.02, fewestOwn: 3, fewestPooled: 2, mostCatches: 6 };

  it.each([
    [2, 0.01, "own", "catch again", "too few catches", 0.02],
    [3, 0.01, "own", "stop", "within tolerance", 0.02],
    [3, 0.03, "own", "catch again", "wider than tolerance", 0.03],
    [2, 0.01, "pooled", "stop", "within tolerance", 0.02],
    [1, 0.01, "pooled", "catch again", "too few catches", 0.02],
    [6, 0.03, "own", "stop", "most catches reached", 0.03],
    [9, 0.03, "pooled", "stop", "most catches reached", 0.03],
    [6, 0.02, "own", "stop", "within tolerance", 0.02],
    [1, null, "assumed", "catch again", "too few catches", null],
  ] as const)(
    "%i catches, ± %s, %s scatter: %s, %s",
    (catches, halfWidth, scatter, action, reason, shown) => {
      const advice = stoppingAdvice({ catches, halfWidth, scatter }, rule);
      expect(advice).toMatchObject({ action, reason, shownHalfWidth: shown });
    },
  );

  it("states the tolerance, not the smaller width, once it is reached", () => {
    const catches = today([
      [20, 6.1],
      [20, 6.1],
      [20, 6.11],
    ]);
    const result = ask(catches, {}, { tolerance: 0.03 });
    expect(result.met).toBe(true);
    expect(result.stopping).toMatchObject({ action: "stop", shownHalfWidth: 0.03 });
    expect(codesOf(result)).toEqual(["stopped-on-width"]);
    expect(result.recommended?.further).toBe(0);
  });
});

describe("turns for the time there is", () => {
  const time = {
    minutes: 10,
    minutesPerCatch: 1.5,
    turnsPerMinute: 30,
    longestTurns: 60,
    proportionalScatter: 0,
  };
  const choose = (given: Partial<typeof time> = {}, scatter = 0.015) =>
    present(
      plan({
        time: { ...time, ...given },
        assumedKgPerTurn: 0.3,
        typicalScatter: { relative: scatter, turns: 20 },
      }).turnsPlan,
    );

  it("gives each number of catches the longest that fit", () => {
    expect(choose().choices.map(({ catches, turns }) => [catches, turns])).toEqual([
      [2, 60],
      [3, 55],
      [4, 30],
      [5, 15],
      [6, 5],
    ]);
    for (const { minutes } of choose().choices) expect(minutes).toBeLessThanOrEqual(10 + 1e-9);
  });

  it("finds the narrowest of all catches × turns that fit, from the fewest that may be judged", () => {
    const width = (n: number, t: number) =>
      studentTQuantile(0.975, n - 1) *
      Math.sqrt((0.015 ** 2 * 20) / t / n + (0.02 / 0.3 / t) ** 2 / 6);
    let narrowest = Number.POSITIVE_INFINITY;
    for (let n = 3; n <= 6; n++)
      for (let t = 1; t <= 60; t++)
        if (n * (1.5 + t / 30) <= 10 + 1e-9) narrowest = Math.min(narrowest, width(n, t));
    expect(choose().best).toMatchObject({ catches: 4, turns: 30 });
    expect(choose().best?.halfWidth).toBeCloseTo(narrowest, 14);
  });

  it("has no best where there is no time for three", () => {
    expect(choose({ minutes: 4 }).best).toBeNull();
    expect(choose({ minutes: 1 }).choices).toEqual([]);
  });

  it("names the length beyond which catches are not worth their time, as a search finds it", () => {
    const basis = plan({
      assumedKgPerTurn: 0.3,
      typicalScatter: { relative: 0.015, turns: 20 },
    }).basis;
    const slack = { ...time, longestTurns: 500, proportionalScatter: 0.01 };
    const cost = (t: number) =>
      (((0.02 / 0.3) ** 2 / 6 + basis.variancePerTurn * t + 0.01 ** 2 * t * t) * (1.5 + t / 30)) /
      t ** 2;
    let best = 1;
    for (let t = 1; t <= 500; t += 0.01) if (cost(t) < cost(best)) best = t;
    expect(present(worthwhileTurns(basis, slack))).toBeCloseTo(best, 1);
    expect(worthwhileTurns(basis, time)).toBeNull();
    expect(worthwhileTurns(basis, { ...slack, longestTurns: 20 })).toBeNull();
  });
});

describe("a trial's fills × catches × turn levels", () => {
  const costs = { budget: 12, perFill: 0, perCatch: 1, perTurn: 0, perExtraLevel: 0 };
  const split = (given: Partial<typeof costs>) =>
    present(
      plan({
        trial: { ...costs, ...given },
        typicalSpread: 0.03,
        typicalScatter: { relative: 0.015, turns: 20 },
      }).trialPlan,
    );

  // Computed by an independent program: half-width of the mean over fills, percent.
  it.each([
    [12, 2, 6, 27.5],
    [12, 3, 4, 7.7],
    [12, 4, 3, 5.0],
    [12, 6, 2, 3.3],
    [12, 12, 1, 2.1],
    [24, 4, 6, 4.9],
    [24, 6, 4, 3.2],
    [24, 12, 2, 2.0],
  ])("%i catches as %i × %i give ± %s %%", (budget, fills, catches, percent) => {
    const { splits } = split({ budget });
    const found = present(splits.find((one) => one.fills === fills && one.turnLevels.length === 1));
    expect(found.catchesPerFill).toBe(catches);
    expect(Number((found.halfWidth * 100).toFixed(1))).toBe(percent);
  });

  it("spends no more than there is, and prefers fills while a catch costs little less than a fill", () => {
    const { splits, best, bestWithTwoLevels } = split({ budget: 300, perFill: 12, perCatch: 4 });
    for (const { cost } of splits) expect(cost).toBeLessThanOrEqual(300);
    expect(present(best).catchesPerFill).toBe(2);
    expect(present(best).fills).toBe(15);
    expect(present(bestWithTwoLevels).catchesPerFill).toBeGreaterThanOrEqual(4);
    expect(present(bestWithTwoLevels).halfWidth).toBeGreaterThan(present(best).halfWidth);
  });

  it("asks for √(fill ÷ catch)·(catch scatter ÷ spread) catches, and a search over unequal costs agrees", () => {
    const { idealCatchesPerFill } = split({ budget: 1e4, perFill: 400, perCatch: 1 });
    expect(idealCatchesPerFill).toBeCloseTo(20 * 0.5, 12);
    // Cost × variance for one fill's worth, whole numbers of catches.
    const product = (n: number) => (400 + n) * (0.03 ** 2 + 0.015 ** 2 / n);
    const best = Array.from({ length: 60 }, (_, i) => i + 1).reduce((a, b) =>
      product(b) < product(a) ? b : a,
    );
    expect(best).toBe(10);
  });

  it("sees a constant mass only with two turn levels and at least four catches a fill", () => {
    const { splits } = split({ budget: 60 });
    for (const { turnLevels, catchesPerFill, detectableConstant } of splits)
      expect(detectableConstant === null).toBe(turnLevels.length === 1 || catchesPerFill < 4);
    const two = present(splits.find(({ turnLevels }) => turnLevels.length === 2));
    expect(two.turnLevels).toEqual([13, 26]);
  });

  it("rests on the log's own spread where it shows one, else on a typical one that is named", () => {
    const trial = { ...costs, budget: 40 };
    const own = ask(inventedFills({ fills: 8, catches: 3, spread: 0.04, scatter: 0.01 }, 2), {
      trial,
    });
    expect(own.trialPlan?.spreadFrom).toBe("fills");
    expect(codesOf(own)).not.toContain("spread-assumed");
    const assumed = ask(aFill([[20, 6]]), { trial });
    expect(assumed.trialPlan).toMatchObject({ spreadFrom: "assumption", spread: 0.03 });
    expect(codesOf(assumed)).toContain("spread-assumed");
  });
});

describe("results and options", () => {
  it("the curve is the model's own", () => {
    const meter = present(fitModel(history, model).meters[0]);
    expect(ask(history).curve).toEqual(curveOf(meter, model));
  });

  it("survive a journey through JSON unchanged", () => {
    const given = {
      time: {
        minutes: 10,
        minutesPerCatch: 1,
        turnsPerMinute: 30,
        longestTurns: 60,
        proportionalScatter: 0,
      },
      trial: { budget: 60, perFill: 5, perCatch: 1, perTurn: 0.1, perExtraLevel: 1 },
    };
    for (const result of [plan(given), ask(history, given), ask(aFill([[20, 6]]), given)])
      expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it("hold no number that is not finite, whatever the catches", () => {
    const pair = fc.tuple(
      fc.double({ min: 0.5, max: 200, noNaN: true }),
      fc.double({ min: 1e-3, max: 90, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(pair, { minLength: 1, maxLength: 7 }), (pairs) => {
        const text = JSON.stringify(ask(aFill(pairs)), (_, value) => {
          if (typeof value === "number" && !Number.isFinite(value)) throw new Error("not finite");
          return value;
        });
        expect(text.length).toBeGreaterThan(100);
      }),
      { numRuns: 60 },
    );
  });

  it("that cannot be meant are refused by name", () => {
    for (const given of [
      { assurance: 1 },
      { fill: "last" as never },
      { fewestOwn: 1 },
      { mostCatches: 2 },
      { typicalScatter: { relative: 0, turns: 20 } },
      {
        time: {
          minutes: 0,
          minutesPerCatch: 1,
          turnsPerMinute: 1,
          longestTurns: 1,
          proportionalScatter: 0,
        },
      },
      { trial: { budget: 1, perFill: 1, perCatch: 0, perTurn: 0, perExtraLevel: 0 } },
      { assurence: 0.8 } as never,
    ])
      expect(() => catchesNeededOptions(model, given)).toThrow(OptionError);
    expect(catchesNeededOptions(model)).toEqual({ ...model, ...catchesNeededDefaults });
  });
});
