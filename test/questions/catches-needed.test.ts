import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { newestFill } from "../../src/model/meters.ts";
import { estimateOf, fitModel } from "../../src/model/model.ts";
import { numberOfCatches } from "../../src/model/next-catch.ts";
import { nextCatchCurve } from "../../src/model/next-catch-curve.ts";
import { leastChanceOfSkip } from "../../src/model/skip-chance.ts";
import { normalQuantile } from "../../src/numeric/distributions/normal.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { stateOf } from "../../src/questions/catches-needed/knowledge.ts";
import {
  type CatchesNeededChoices,
  catchesNeededOptions,
  catchesNeededRules,
} from "../../src/questions/catches-needed/options.ts";
import { worthwhileTurns } from "../../src/questions/catches-needed/turns.ts";
import { aimOf, catchesNeeded } from "../../src/questions/catches-needed.ts";
import { resolve } from "../../src/results/options.ts";
import { aCatch, aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

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

type Result = ReturnType<typeof plan>;

const usualStopping = catchesNeededOptions(model).stopping;

const codesOf = ({ cautions }: Result) => cautions.map(({ code }) => code);
const factsOf = ({ cautions }: Result, wanted: string) =>
  present(cautions.find(({ code }) => code === wanted)).facts;
/** What is said of so many further catches. */
const pointAt = ({ curve }: Result, further: number) =>
  present(curve.points.find((point) => point.further === further && point.basis === "planned"));
const history = inventedFills({ fills: 5, catches: 3, spread: 0.02, scatter: 0.015 }, 12);
const today = (pairs: readonly (readonly [number, number])[]) => [
  ...history,
  ...aFill(pairs, { fill: 6 }),
];
const morning = (masses: readonly number[], turns = 20) =>
  aFill(masses.map((mass) => [turns, mass] as const));

describe("before any catch", () => {
  const steps = [0.01, 0.015, 0.02, 0.03];
  const table = steps.flatMap((relative) =>
    steps.map((tolerance) => [relative, tolerance] as const),
  );

  /** The fewest catches that reach each tolerance with an assurance of 80 %, widths taken φ times, by R's χ² law. */
  const fewestInR = (phi: number) =>
    evalR(
      `mapply(function(q, w) {
         n <- 3:60
         chance <- pchisq((n - 1) * (w / phi)^2 * n / qt(0.975, n - 1)^2 / q^2, n - 1)
         n[chance >= 0.8][1]
       }, scatter, tolerance)`,
      { phi, scatter: table.map(([one]) => one), tolerance: table.map(([, one]) => one) },
    );

  it("tolerances ask for as many catches as in R, by the scatter of a catch", async () => {
    const wanted = await fewestInR(1);
    expect(wanted.filter((catches) => catches > 8).length).toBeGreaterThan(3);
    table.forEach(([relative, tolerance], i) => {
      const catches = present(wanted[i]);
      const asked = { typicalScatter: { relative, turns: 20 }, phi: 1 };
      const unlimited = plan({ ...asked, mostCatches: 60 }, { tolerance });
      expect(unlimited.needed).toMatchObject({ further: catches, turns: 20, reaches: tolerance });
      const result = plan(asked, { tolerance });
      expect(result.needed?.further ?? null).toBe(catches <= 8 ? catches : null);
      expect(result.standing).toBe(catches <= 8 ? "short" : "not reachable");
      expect(result.halfWidth).toBeNull();
      expect(codesOf(result)).toEqual(["scatter-assumed"]);
    });
  });

  it("and one more or so where widths are taken 1.08 times, as they are of own catches", async () => {
    const found = table.map(([relative, tolerance]) => {
      const asked = { typicalScatter: { relative, turns: 20 }, mostCatches: 60 };
      return present(plan(asked, { tolerance }).needed).further;
    });
    expect(found).toEqual(await fewestInR(1.08));
    const plain = await fewestInR(1);
    expect(found.every((catches, i) => catches >= present(plain[i]))).toBe(true);
  });

  it("longer catches scatter less, by the square root of their turns", () => {
    const result = plan({ turnsPerCatch: 80, typicalScatter: { relative: 0.03, turns: 20 } });
    expect(result.basis.relativeScatter).toBeCloseTo(0.015, 14);
  });

  it("a book value brings the scale's division in", () => {
    const result = plan({ assumedKgPerTurn: 0.3 });
    expect(result.basis.divisionInTurns).toBeCloseTo(0.02 / 0.3, 14);
    // t >= z·d/(√6·w·b)
    expect(result.leastTurns).toBe(Math.ceil((1.959964 * 0.02) / (Math.sqrt(6) * 0.02 * 0.3)));
    expect(plan().leastTurns).toBeNull();
  });

  it("a delivery of a few grams a turn needs more turns, not more catches", () => {
    const result = plan({ assumedKgPerTurn: 0.01 });
    // 80.02 turns, and 1.08 times as many because that is what a width is taken for where it decides.
    expect(result.leastTurns).toBe(Math.ceil(1.08 * 80.0152));
    expect(plan({ assumedKgPerTurn: 0.01, phi: 1 }).leastTurns).toBe(81);
    // Of 20, 40, 60 and 80 turns no number would do.
    expect(present(result.needed).turns).toBeGreaterThanOrEqual(100);
    expect(plan({ assumedKgPerTurn: 0.01, heaviestCatchKg: 0.8 }).needed).toBeNull();
  });

  it("and catches no longer than bag and scale take", () => {
    const [short, long] = [2, 6].map((heaviestCatchKg) =>
      plan({ assumedKgPerTurn: 0.3, heaviestCatchKg }),
    );
    expect(short?.basis).toMatchObject({ turnsPerCatch: 6, longestTurns: 6 });
    expect(long?.basis).toMatchObject({ turnsPerCatch: 20, longestTurns: 20 });
  });

  it("the fill to come of a meter with a log rests on the log's scatter", async () => {
    const result = ask(history, { fill: "next" });
    expect(result).toMatchObject({ fill: null, standing: "short", halfWidth: null });
    // Five fills of three catches, which are much alike: 10 degrees of freedom lend fewer.
    const [df] = await evalR(`${votesInR} prior.of(vote.of.own.fills(1, 10, 5))`);
    expect(result.basis).toMatchObject({
      scatter: "lent",
      df: expect.closeTo(present(df), 9),
      lentBy: { fills: 5, meters: 0, assumed: false },
      catches: 0,
      earlierFills: 5,
    });
    expect(result.stopping).toEqual({ fewest: 1, phi: 1 });
    expect(result.curve.points.map(({ catches }) => catches)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    // With nothing added to the scatter yet the first catch either reaches the tolerance or does not.
    expect(pointAt(result, 1).chance).toBe(0);
    expect(codesOf(result)).not.toContain("scatter-assumed");
  });

  it("one catch of the fill to come may tell less than the fills so far", () => {
    const alike = [6.0, 6.01, 5.995, 6.005, 6.0, 6.002, 5.998].flatMap((mass, i) =>
      aFill(
        [
          [20, mass * 1.02],
          [20, mass * 0.98],
        ],
        { fill: i + 1 },
      ),
    );
    const result = ask(alike, { fill: "next" });
    const [skip, first] = result.curve.points;
    expect(factsOf(result, "first-catch-tells-less")).toEqual({
      skipHalfWidth: skip?.halfWidth,
      firstHalfWidth: first?.halfWidth,
    });
    expect(present(first?.halfWidth)).toBeGreaterThan(present(skip?.halfWidth));
    expect(codesOf(ask(history, { fill: "next" }))).not.toContain("first-catch-tells-less");
  });
});

describe("where the fill stands", () => {
  it("is not known of one catch alone, and no number of catches is named", () => {
    const result = ask(morning([6.1]), {}, { tolerance: 0.05 });
    expect(result).toMatchObject({
      standing: "unknown",
      halfWidth: null,
      needed: null,
      chanceOffTolerance: null,
      statedHalfWidth: null,
    });
    expect(result.basis).toMatchObject({ scatter: "assumed", df: 0, catches: 1 });
    expect(result.curve.points.map(({ further }) => further)).toEqual([0, 0]);
    // Nothing is planned, so nothing is assumed; a plan that was asked for assumes a scatter and says so.
    expect(codesOf(result)).toEqual([]);
    const time = {
      minutes: 10,
      minutesPerCatch: 1,
      turnsPerMinute: 30,
      longestTurns: 60,
      proportionalScatter: 0,
    };
    expect(codesOf(ask(morning([6.1]), { time }))).toEqual(["scatter-assumed"]);
  });

  it("of two catches alone is too few to plan: no number of catches, whatever the tolerance", () => {
    for (const tolerance of [0.005, 0.03, 0.5]) {
      const result = ask(morning([6.02, 5.91]), {}, { tolerance });
      expect(result).toMatchObject({ standing: "too few", needed: null, statedHalfWidth: null });
      expect(result.curve.points.map(({ basis }) => basis)).toEqual(["earlier fills", "made"]);
      expect(codesOf(result)).toEqual([]);
    }
    // test/reference/generate/one-morning.R.
    expect(ask(morning([6.02, 5.91])).halfWidth).toBeCloseTo(0.1184409092, 10);
  });

  it("with the scatter of earlier fills, is known of one catch", async () => {
    const result = ask(today([[20, 6.1]]));
    const [df] = await evalR(`${votesInR} prior.of(vote.of.own.fills(1, 10, 5))`);
    expect(result.basis).toMatchObject({
      scatter: "lent",
      df: expect.closeTo(present(df), 9),
      catches: 1,
    });
    expect(result.halfWidth).toBeGreaterThan(0.02);
    expect(result.standing).toBe("short");
    expect(present(result.needed).chance).toBeGreaterThanOrEqual(0.8);
    expect(codesOf(result)).toEqual(["short-of-tolerance"]);
    expect(ask(today([[20, 6.1]]), {}, { tolerance: 0.06 }).standing).toBe("enough");
    const fromTwo = { ...usualStopping, withOtherFills: { fewest: 2, phi: 1 } };
    expect(ask(today([[20, 6.1]]), { stopping: fromTwo }, { tolerance: 0.06 }).standing).toBe(
      "short",
    );
  });

  it("with the scatter of other bins only, is enough of two catches at the earliest, taken 1.05 times", () => {
    const others = [
      ...aFill(
        [
          [20, 5.48],
          [20, 5.57],
          [20, 5.5],
        ],
        { bin: "2" },
      ),
      ...aFill(
        [
          [20, 6.33],
          [20, 6.2],
          [20, 6.28],
        ],
        { bin: "3" },
      ),
    ];
    const wide = { tolerance: 0.1 };
    const [one, two] = [1, 2].map((catches) =>
      ask([...morning([6.02, 5.91].slice(0, catches)), ...others], {}, wide),
    );
    for (const result of [one, two])
      expect(present(result).stopping).toEqual({ fewest: 2, phi: 1.05 });
    // Three bins of one morning: test/reference/generate/one-morning.R.
    expect(one).toMatchObject({ standing: "short", halfWidth: expect.closeTo(0.04843910684, 10) });
    expect(two).toMatchObject({ standing: "enough", halfWidth: expect.closeTo(0.0262423069, 10) });
    expect(present(one).needed?.further).toBe(1);
    // 0.0262 is within 0.027, 1.05 times as much is not.
    const tight = ask([...morning([6.02, 5.91]), ...others], {}, { tolerance: 0.027 });
    expect(tight).toMatchObject({ standing: "short", statedHalfWidth: null });
    expect(
      ask([...morning([6.02, 5.91]), ...others], { phi: 1 }, { tolerance: 0.027 }).standing,
    ).toBe("enough");
  });

  it("is not known of catches that agree exactly while no division is given", () => {
    const alike = morning([6, 6, 6]);
    const result = ask(alike, {}, { scaleDivisionKg: null as never });
    expect(result).toMatchObject({ standing: "unknown", needed: null });
    expect(result.basis.scatter).toBe("assumed");
    expect(ask(alike).basis.scatter).toBe("own");
    expect(ask(alike).standing).toBe("enough");
    // 0.80 of a division over 6 kg.
    expect(ask(alike).halfWidth).toBeCloseTo((0.800152 * 0.02) / 6, 8);
  });

  it("is enough where the half-width is within the tolerance, and the larger of both is stated", () => {
    const catches = today([
      [20, 6.1],
      [20, 6.1],
      [20, 6.11],
    ]);
    const result = ask(catches, {}, { tolerance: 0.03 });
    expect(result).toMatchObject({ standing: "enough", needed: null, statedHalfWidth: 0.03 });
    expect(result.halfWidth).toBeLessThan(0.03);
    expect(codesOf(result)).toEqual(["stopped-on-width"]);
    const stopping = ask(catches, { phi: 1.1 }, { tolerance: 0.03 });
    expect(stopping.statedHalfWidth).toBe(0.03);
    expect(ask(catches, { phi: 10 }, { tolerance: 0.03 }).standing).not.toBe("enough");
    expect(ask(catches, { phi: 10 }, { tolerance: 0.03 }).statedHalfWidth).toBeNull();
  });

  it("is enough of three catches of its own at the earliest", () => {
    const close = [6.02, 6.03, 6.025];
    const wide = { tolerance: 0.3 };
    expect(ask(morning(close.slice(0, 2)), {}, wide).standing).toBe("too few");
    expect(ask(morning(close), {}, wide).standing).toBe("enough");
    const fromFour = { ...usualStopping, own: { fewest: 4, phi: 1.08 } };
    const four = ask(morning(close), { stopping: fromFour }, wide);
    expect(four.standing).toBe("short");
    expect(four.needed?.further).toBe(1);
  });

  it("is short by so many catches, and that is the one number", async () => {
    const three = morning([6.36, 6.48, 6.56]);
    const result = ask(three, {}, { tolerance: 0.03 });
    expect(result).toMatchObject({ standing: "short", statedHalfWidth: null });
    expect(result.needed).toMatchObject({ further: 4, turns: 20, reaches: 0.03 });
    const { chance, typically } = present(result.needed);
    // The factor of stopping is in the chance; the width to be expected is the curve's.
    expect(pointAt(result, 4)).toMatchObject({ chance, halfWidth: typically });
    expect(pointAt(result, 3).chance).toBeLessThan(0.8);
    const [byR, widthByR] = await evalR(
      `q <- var(m) / 20 / (mean(m) / 20)^2
       reading <- qnorm(0.975)^2 * 0.02^2 / 6 / mean(m)^2
       most <- ((0.03 / 1.08)^2 - reading) * 140 / qt(0.975, 6)^2
       c(pf((6 * most / q - 2) / 4, 4, 2), sqrt(qt(0.975, 6)^2 * q / 140 + reading))`,
      { m: [6.36, 6.48, 6.56] },
    );
    expect(chance).toBeCloseTo(present(byR), 10);
    expect(typically).toBeCloseTo(present(widthByR), 12);
    expect(ask(three, { phi: 1 }, { tolerance: 0.03 }).needed?.further).toBe(3);
    expect(factsOf(result, "short-of-tolerance")).toEqual({
      halfWidth: result.halfWidth,
      tolerance: 0.03,
      settingError: 0,
    });
    const state = stateOf(result.basis);
    const aim = aimOf(result.basis, result.options);
    expect(result.needed).toEqual(numberOfCatches(state, 20, 61, aim));
  });

  it("is short where the scale hides the scatter, and longer catches cure it", () => {
    const coarse = ask(morning([6.0, 6.1, 6.0]), {}, { scaleDivisionKg: 0.5, tolerance: 0.05 });
    // z·d/(√6·b·w), 1.08 times.
    const leastTurns = Math.ceil((1.08 * 1.959964 * 0.5) / (Math.sqrt(6) * (18.1 / 60) * 0.05));
    expect(coarse).toMatchObject({ standing: "short", leastTurns });
    expect(factsOf(coarse, "scale-limits-tolerance")).toEqual({
      turns: 20,
      leastTurns,
      divisionKg: 0.5,
    });
    expect(present(coarse.needed).turns).toBeGreaterThanOrEqual(40);
    expect(codesOf(coarse)).toEqual(["scale-limits-tolerance"]);
  });

  it("cannot be brought within the tolerance where no number within the limits is likely to do", () => {
    const result = ask(morning([6.36, 6.48, 6.56]), { heaviestCatchKg: 7 }, { tolerance: 0.005 });
    expect(result).toMatchObject({ standing: "not reachable", needed: null });
    expect(factsOf(result, "tolerance-not-reachable")).toEqual({
      halfWidth: result.halfWidth,
      tolerance: 0.005,
      catches: 3,
      mostCatches: 8,
      heaviestCatchKg: 7,
      heaviestGiven: true,
      leastTurns: null,
    });
    expect(codesOf(result)).toEqual(["tolerance-not-reachable"]);
    // Where the scale is what hinders, the turns it needs are named, and only there.
    const coarse = ask(
      morning([6.0, 6.1, 6.0]),
      { heaviestCatchKg: 6.5 },
      { scaleDivisionKg: 0.5, tolerance: 0.05 },
    );
    expect(factsOf(coarse, "tolerance-not-reachable")).toMatchObject({
      // As above.
      leastTurns: 29,
    });
  });

  it("nor when the most catches are taken, and then nothing more is planned", () => {
    const eight = today(Array.from({ length: 8 }, (_, i) => [20, 6.1 + 0.02 * (i % 3)] as const));
    const result = ask(eight, {}, { tolerance: 0.005 });
    expect(result).toMatchObject({ standing: "not reachable", needed: null });
    expect(factsOf(result, "tolerance-not-reachable")).toMatchObject({
      catches: 8,
      mostCatches: 8,
      heaviestCatchKg: 20,
      heaviestGiven: false,
    });
  });

  it("is known well enough, but a step of the drive leaves a chance of its own", () => {
    const eight = today(Array.from({ length: 8 }, (_, i) => [20, 6.1 + 0.02 * (i % 3)] as const));
    const settingError = 0.018;
    const result = ask(eight, { settingError });
    expect(result.halfWidth).toBeLessThan(0.02);
    expect(result.standing).toBe("not reachable");
    expect(codesOf(result)).toEqual(["step-leaves-chance"]);
    expect(factsOf(result, "step-leaves-chance")).toEqual({
      settingError,
      chance: result.chanceOffTolerance,
    });
    expect(result.chanceOffTolerance).toBeGreaterThan(0.05);
    expect(ask(eight).standing).toBe("enough");
  });

  it("is the same whatever the unit of mass", () => {
    const three = [6.36, 6.48, 6.56];
    const heavy = ask(
      morning(three.map((mass) => mass * 50)),
      { heaviestCatchKg: 20 * 50 },
      {
        scaleDivisionKg: 1,
        tolerance: 0.03,
      },
    );
    const light = ask(morning(three), {}, { tolerance: 0.03 });
    expect(heavy.halfWidth).toBeCloseTo(present(light.halfWidth), 12);
    expect(heavy.needed?.further).toBe(light.needed?.further);
    expect(heavy.needed?.chance).toBeCloseTo(present(light.needed).chance, 10);
  });
});

describe("with catches in hand", () => {
  it("the width so far is that of the fill's interval", () => {
    const catches = today([
      [20, 6.1],
      [20, 6.15],
    ]);
    const meter = present(fitModel(catches, model).meters[0]);
    const { estimate } = estimateOf(meter, newestFill(meter), model);
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
    const { estimate } = estimateOf(meter, newestFill(meter), model);
    const half = present(estimate.interval?.upper) - estimate.value;
    const result = ask(catches);
    expect(result.halfWidth).toBeCloseTo(half / estimate.value, 12);
    const made = present(result.curve.points[1]);
    expect(made.basis).toBe("made");
    expect(made.halfWidth).toBeCloseTo(half / estimate.value, 12);
  });

  it("unequal turns carry the larger standard error into the plan", () => {
    const unequal = aFill([
      [10, 3.3],
      [40, 12],
      [40, 12.5],
      [10, 2.9],
    ]);
    const meter = present(fitModel(unequal, model).meters[0]);
    const { variance, estimate } = estimateOf(meter, newestFill(meter), model);
    const largest = Math.max(present(variance.model), present(variance.robust));
    expect(ask(unequal).basis.variancePerTurn).toBeCloseTo(
      (largest * 100) / estimate.value ** 2,
      14,
    );
  });

  it("a catch is no heavier than bag and scale take: as given, else 20 kg, else the log's heaviest", () => {
    const heaviest = (result: Result) => result.basis.heaviestCatch;
    expect(heaviest(ask(morning([6, 6.1, 6.2]), { heaviestCatchKg: 12 }))).toEqual({
      kg: 12,
      given: true,
    });
    expect(heaviest(ask(morning([6, 6.1, 6.2])))).toEqual({ kg: 20, given: false });
    expect(heaviest(ask(morning([31, 30, 30.5], 100)))).toEqual({ kg: 31, given: false });
    // A heavier catch in another bin shows what bag and scale take.
    const other = aFill([[150, 45]], { bin: "2" });
    expect(heaviest(ask([...morning([6, 6.1, 6.2]), ...other]))).toEqual({ kg: 45, given: false });
    expect(ask(morning([6, 6.1, 6.2])).basis.longestTurns).toBe(Math.floor(20 / (18.3 / 60)));
  });

  it("a plan takes catches as long as the typical one, or as was asked, within that mass", () => {
    const turns = (given: Partial<CatchesNeededChoices>) =>
      ask(morning([6, 6.1, 6.2]), given).basis.turnsPerCatch;
    expect(turns({})).toBe(20);
    expect(turns({ turnsPerCatch: 35 })).toBe(35);
    expect(turns({ turnsPerCatch: 90 })).toBe(65);
    expect(turns({ heaviestCatchKg: 3 })).toBe(9);
    expect(turns({ heaviestCatchKg: 0.1 })).toBe(1);
  });

  it("the chance of reaching the tolerance is the one that happens when the catches are made", () => {
    const catches = today([
      [20, 6.1],
      [20, 6.16],
    ]);
    const tight = { tolerance: 0.0165 };
    const result = ask(catches, {}, tight);
    const chance = present(pointAt(result, 2).chance);
    expect(chance).toBeGreaterThan(0.3);
    expect(chance).toBeLessThan(0.97);
    // True scatters in keeping with what is in hand, two more catches with each, and the whole model fitted again.
    const { variancePerTurn, df } = result.basis;
    const stream = randomStream(6);
    const trials = 3_000;
    let reached = 0;
    for (let i = 0; i < trials; i++) {
      const perTurn = (variancePerTurn * df) / stream.chiSquared(df);
      const level = 0.3065 * (1 + Math.sqrt(perTurn / 40) * stream.normal());
      const more = [3, 4].map((number) => {
        const netKg = level * 20 * (1 + Math.sqrt(perTurn / 20) * stream.normal());
        return aCatch({ fill: 6, catch: number, turns: 20, netKg });
      });
      const { halfWidth } = ask([...catches, ...more], {}, tight);
      if (present(halfWidth) <= tight.tolerance) reached++;
    }
    // Four standard errors of the simulated share.
    expect(Math.abs(reached / trials - chance)).toBeLessThan(0.036);
  });
});

describe("what further catches buy", () => {
  it("is the model's curve, of the turns needed", () => {
    const meter = present(fitModel(today([[20, 6.1]]), model).meters[0]);
    const result = catchesNeeded(meter, catchesNeededOptions(model));
    const { nextFill } = meter.across;
    const skipped = {
      halfWidth: present(nextFill.interval?.upper) / nextFill.value - 1,
      df: present(nextFill.df),
      ownDf: meter.across.spread.ownDf,
      leastChance: leastChanceOfSkip(meter.across.spread),
    };
    expect(result.curve).toEqual(
      nextCatchCurve(
        stateOf(result.basis),
        skipped,
        present(result.needed).turns,
        aimOf(result.basis, result.options),
        7,
      ),
    );
    const [skip] = result.curve.points;
    expect(skip).toMatchObject({ basis: "earlier fills", halfWidth: skipped.halfWidth });
  });

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
        const { curve } = ask([...log, ...fill]);
        const points = curve.points.filter(({ basis }) => basis !== "earlier fills");
        for (const [i, point] of points.entries()) {
          const before = points[i - 1];
          if (before === undefined) continue;
          expect(point.halfWidth).toBeLessThan(present(before.halfWidth));
          expect(point.halfWidthAssured).toBeGreaterThanOrEqual(present(point.halfWidth) * 0.999);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("asks for a number only where its chance is that of the assurance, and one fewer falls short", () => {
    for (const assurance of [0.5, 0.8, 0.95]) {
      const result = plan({ assurance, typicalScatter: { relative: 0.012, turns: 20 } });
      const { further, chance } = present(result.needed);
      expect(chance).toBeGreaterThanOrEqual(assurance);
      if (further > 3) expect(pointAt(result, further - 1).chance).toBeLessThan(assurance);
    }
  });

  it("takes fewer of the longer catches", () => {
    const counts = [10, 20, 40].map(
      (turnsPerCatch) =>
        plan({ turnsPerCatch, typicalScatter: { relative: 0.03, turns: 20 } }, { tolerance: 0.05 })
          .needed?.further ?? 99,
    );
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
    expect(counts[0]).toBeGreaterThan(present(counts[2]));
  });

  it("is certain to be reached with hardly any scatter", () => {
    const result = plan({ typicalScatter: { relative: 1e-4, turns: 20 } });
    expect(result.curve.points.at(-1)?.chance).toBeCloseTo(1, 12);
    expect(result.needed?.further).toBe(3);
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
      Math.hypot(
        studentTQuantile(0.975, n - 1) * Math.sqrt((0.015 ** 2 * 20) / t / n),
        (normalQuantile(0.975) * 0.02) / 0.3 / t / Math.sqrt(6),
      );
    let narrowest = Number.POSITIVE_INFINITY;
    for (let n = 3; n <= 6; n++)
      for (let t = 1; t <= 60; t++)
        if (n * (1.5 + t / 30) <= 10 + 1e-9) narrowest = Math.min(narrowest, width(n, t));
    expect(choose().best).toMatchObject({ catches: 4, turns: 30 });
    expect(choose().best?.halfWidth).toBeCloseTo(narrowest, 14);
  });

  it("takes reading the scale as known beside scatter that one earlier fill lends, however little that is", async () => {
    const masses = [6.02, 5.91];
    const { basis, turnsPlan } = ask(morning(masses), { fill: "next", time });
    expect(basis.df).toBeLessThan(2);
    const single = present(present(turnsPlan).choices.find(({ catches }) => catches === 1));
    expect(single.turns).toBe(60);
    const [half] = await evalR(
      `${votesInR} width(prior.of(vote.of.own.fills(squares(m, c(20, 20)), 1, 1)), T = 60, n = 1, d = 0.02, b = sum(m) / 40)`,
      { m: masses },
    );
    expect(digits(single.halfWidth, present(half))).toBeGreaterThan(9);
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

  it.each([
    [12, 2, 6],
    [12, 3, 4],
    [12, 4, 3],
    [12, 6, 2],
    [12, 12, 1],
    [24, 4, 6],
    [24, 6, 4],
    [24, 12, 2],
  ])(
    "%i catches as %i × %i give the half-width of the mean that R gives",
    async (budget, fills, catches) => {
      const { splits } = split({ budget });
      const found = present(
        splits.find((one) => one.fills === fills && one.turnLevels.length === 1),
      );
      expect(found.catchesPerFill).toBe(catches);
      const [half] = await evalR(
        "qt(0.975, fills - 1) * sqrt((0.03^2 + 0.015^2 / catches) / fills)",
        {
          fills,
          catches,
        },
      );
      expect(digits(found.halfWidth, present(half))).toBeGreaterThan(9);
    },
  );

  it.each([
    [24, 4, 6],
    [24, 12, 2],
  ])(
    "%i catches as %i × %i can detect what power.t.test says of their means",
    async (budget, fills, catches) => {
      const { splits } = split({ budget });
      const found = present(
        splits.find((one) => one.fills === fills && one.turnLevels.length === 1),
      );
      // strict = TRUE counts findings on both sides; the tolerance is tightened from R's 1e-4.
      const [delta] = await evalR(
        `power.t.test(n = fills, power = 0.8, sd = sqrt(0.03^2 + 0.015^2 / catches), sig.level = 0.05,
           type = "one.sample", strict = TRUE, tol = 1e-12)$delta`,
        { fills, catches },
      );
      expect(digits(found.detectable, present(delta))).toBeGreaterThan(8);
    },
  );

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
      { stopping: { ...usualStopping, own: { fewest: 1, phi: 1.08 } } },
      { mostCatches: 2 },
      { stopping: { ...usualStopping, withOtherFills: { fewest: 0, phi: 1 } } },
      { stopping: { ...usualStopping, withOtherBins: { fewest: 2, phi: 0.9 } } },
      { stopping: { ...usualStopping, own: { fewest: 9, phi: 1.08 } } },
      { heaviestCatchKg: 0 },
      { turnsPerCatch: -20 },
      { settingError: 1 },
      { settingError: Number.NaN },
      { phi: 0.9 },
      { phi: Number.POSITIVE_INFINITY },
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
    expect(catchesNeededOptions(model)).toEqual({
      ...model,
      varianceLaw: "proportional",
      ...resolve(catchesNeededRules, {}),
    });
  });
});
