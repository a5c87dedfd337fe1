import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { studentTTwoSided } from "../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { replayShifts, type SeriesReplay } from "../../src/statistics/shift-replay.ts";
import { noPrior } from "../../src/statistics/spread-prior.ts";
import { mean, sampleStandardDeviation } from "../../src/statistics/summary.ts";
import { present } from "../support/reference.ts";

/** Six values of one level and four of a level 6 % above it; the expected figures: test/reference/generate/moved-meter.R. */
const calm = [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011];
const shifted = [...calm, 0.3165, 0.319, 0.3148, 0.3201];

const outcomes = ({ steps }: SeriesReplay) => steps.map(({ outcome }) => outcome);
const placesOf = ({ stretches }: SeriesReplay) => stretches.map(({ places }) => places);

describe("the replay of a series that shifts", () => {
  const replay = replayShifts(shifted);

  it("says so with the second value of the new level, and since the first", () => {
    expect(outcomes(replay)).toEqual([
      ...["too few", "too few", "too few", "steady", "steady", "steady", "steady", "moved"],
      ...["too few", "steady"],
    ]);
    expect(placesOf(replay)).toEqual([
      [0, 1, 2, 3, 4, 5],
      [6, 7, 8, 9],
    ]);
    expect(present(replay.stretches[1])).toMatchObject({ begins: "moved", foundAt: 7 });
    expect(replay.steps.map(({ stretchFrom }) => stretchFrom)).toEqual([
      ...[0, 0, 0, 0, 0, 0, 0, 6, 6, 6],
    ]);
  });

  it("carries the figures it decided by", () => {
    const [, , , fourth, , , seventh, eighth] = replay.steps;
    expect(present(fourth).newest?.pValue).toBeCloseTo(0.2292174902, 10);
    expect(present(fourth).lasting?.evidence).toBeCloseTo(0.9843358196, 10);
    expect(present(seventh).newest?.pValue).toBeCloseTo(0.003590406101, 12);
    expect(present(seventh).lasting?.evidence).toBeCloseTo(0.9260047459, 10);
    expect(present(eighth).newest?.pValue).toBeCloseTo(0.06217796094, 11);
    expect(present(eighth).lasting).toMatchObject({ limit: 5.38, lineExplainsMore: false });
    expect(present(eighth).lasting?.evidence).toBeCloseTo(5.8326292, 7);
  });

  it("judges the new stretch with the spread of the old one, relative to each one's mean", () => {
    // By hand: the third value of the new stretch against two, on 5 + 1 degrees of freedom.
    const ninth = present(replay.steps[8]);
    const level = mean([0.3165, 0.319, 0.3148]);
    const old = 5 * (sampleStandardDeviation(calm) / mean(calm)) ** 2;
    const own = (0.319 - 0.3165) ** 2 / 2 / level ** 2;
    const error = Math.sqrt(((old + own) / 6) * (1 + 1 / 2));
    const statistic = (0.3148 - mean([0.3165, 0.319])) / level / error;
    expect(present(ninth.newest).df).toBe(6);
    expect(present(ninth.newest).statistic).toBeCloseTo(statistic, 10);
    expect(present(ninth.newest).pValue).toBeCloseTo(studentTTwoSided(statistic, 6), 12);
  });
});

describe("the replay with a spread that others lend", () => {
  // test/reference/generate/moved-meter.R,
  // with ν0 = 2 and s0 = .0214·.3 in the values' unit; the replay has it relative to the mean of the stretch.
  const withLent = (values: readonly number[]) =>
    replayShifts(values, [], { nu0: 2, s0Squared: ((0.0214 * 0.3) / mean(values)) ** 2 });
  const newestOf = (count: number) => present(withLent(shifted.slice(0, count)).steps.at(-1));

  it("takes a fill more to say so where the lent spread is wider than the series' own", () => {
    expect(newestOf(7).newest?.pValue).toBeCloseTo(0.008535758165, 12);
    expect(newestOf(7).newest?.df).toBe(7);
    expect(newestOf(8)).toMatchObject({ outcome: "steady", lasting: { limit: 6.12 } });
    expect(newestOf(8).lasting?.evidence).toBeCloseTo(5.961351132, 9);
    expect(newestOf(9)).toMatchObject({ outcome: "moved", lasting: { limit: 6.09, before: 6 } });
    expect(newestOf(9).lasting?.evidence).toBeCloseTo(14.16292037, 8);
    expect(placesOf(withLent(shifted.slice(0, 9)))).toEqual([
      [0, 1, 2, 3, 4, 5],
      [6, 7, 8],
    ]);
  });

  it("has a closed stretch join what is lent", () => {
    const prior = { nu0: 2, s0Squared: 0.0214 ** 2 };
    const { steps } = replayShifts(shifted, [], prior);
    // By hand: ν0′ = 2 + 5, and the tenth value against three on 7 + 2 degrees of freedom.
    const joined = 2 * 0.0214 ** 2 + 5 * (sampleStandardDeviation(calm) / mean(calm)) ** 2;
    const earlier = shifted.slice(6, 9);
    const level = mean(shifted.slice(6));
    const own = 2 * (sampleStandardDeviation(earlier) / level) ** 2;
    const error = Math.sqrt(((joined + own) / 9) * (1 + 1 / 3));
    const statistic = (0.3201 - mean(earlier)) / level / error;
    expect(present(steps[8]).outcome).toBe("moved");
    expect(present(steps[9]).newest?.df).toBe(9);
    expect(present(steps[9]).newest?.statistic).toBeCloseTo(statistic, 10);
  });

  it("asks of the second value already, and settles it by the first alone", () => {
    const prior = { nu0: 2.002518791, s0Squared: 0.02137725599 ** 2 };
    const two = replayShifts([0.3, 0.7], [], prior);
    const { newest } = present(two.steps[1]);
    // By hand: 0.4 of a mean of 0.5 against s0·√2.
    const statistic = 0.8 / (0.02137725599 * Math.SQRT2);
    expect(newest?.statistic).toBeCloseTo(statistic, 10);
    expect(newest?.pValue).toBeCloseTo(studentTTwoSided(statistic, 2.002518791), 12);
    expect(outcomes(two)).toEqual(["too few", "differs"]);
    const back = replayShifts([0.3, 0.7, 0.303], [], prior);
    expect(outcomes(back)[2]).toBe("too few");
    expect(placesOf(back)).toEqual([[0, 2]]);
    expect(back.apart).toEqual([{ place: 1, settledAt: 2 }]);
    const stayed = replayShifts([0.3, 0.7, 0.69], [], prior);
    expect(outcomes(stayed)[2]).toBe("moved");
    expect(placesOf(stayed)).toEqual([[0], [1, 2]]);
  });

  it("waits for the third value where what is lent has less than a degree of freedom", () => {
    const { steps } = replayShifts([0.3, 0.7, 0.31], [], { nu0: 0.9, s0Squared: 0.0004 });
    expect(present(steps[1]).newest).toBeNull();
    expect(present(steps[2]).newest?.df).toBeCloseTo(1.9, 12);
  });

  it("judges values that agree exactly by what is lent", () => {
    const { steps } = replayShifts([0.3, 0.3, 0.3, 0.3, 0.36], [], { nu0: 4, s0Squared: 0.0001 });
    expect(present(steps[3])).toMatchObject({ outcome: "steady" });
    expect(present(steps[3]).lasting).not.toBeNull();
    expect(present(steps[4]).outcome).toBe("differs");
  });
});

describe("a value that differs", () => {
  it("stood apart when the next one is back, and is left out from then on", () => {
    const replay = replayShifts([...calm, 0.34, 0.2995, 0.3005]);
    expect(outcomes(replay).slice(6)).toEqual(["differs", "steady", "steady"]);
    expect(present(replay.steps[7]).settled).toBe("stood apart");
    expect(replay.apart).toEqual([{ place: 6, settledAt: 7 }]);
    expect(placesOf(replay)).toEqual([[0, 1, 2, 3, 4, 5, 7, 8]]);
    const without = replayShifts([...calm, 0.2995, 0.3005]);
    expect(present(replay.steps[7]).lasting).toEqual(present(without.steps[6]).lasting);
    expect(present(replay.steps[8]).newest).toEqual(present(without.steps[7]).newest);
  });

  it("was the first of a new level when the next one is not back", () => {
    const replay = replayShifts([...calm, 0.34, 0.337]);
    expect(outcomes(replay).slice(6)).toEqual(["differs", "moved"]);
    expect(present(replay.steps[7])).toMatchObject({
      settled: "moved",
      newest: null,
      lasting: null,
    });
    expect(placesOf(replay)).toEqual([
      [0, 1, 2, 3, 4, 5],
      [6, 7],
    ]);
    expect(present(replay.stretches[1])).toMatchObject({ begins: "moved", foundAt: 7 });
  });

  it("is settled by the p of the next value against those before both, at 5 %", () => {
    // Six values before: t(5) at 0.975 is 2.570582, as printed in any table.
    const reach = 2.570582 * sampleStandardDeviation(calm) * Math.sqrt(1 + 1 / 6);
    const settledBy = (value: number) =>
      present(replayShifts([...calm, 0.34, value]).steps[7]).settled;
    expect(settledBy(mean(calm) + 0.999 * reach)).toBe("stood apart");
    expect(settledBy(mean(calm) + 1.001 * reach)).toBe("moved");
    expect(settledBy(mean(calm) - 1.001 * reach)).toBe("moved");
  });

  it("differs at one chance in 500, no sooner", () => {
    // t(5) at 0.999 is 5.893430.
    const reach = 5.89343 * sampleStandardDeviation(calm) * Math.sqrt(1 + 1 / 6);
    const at = (value: number) => outcomes(replayShifts([...calm, value]))[6];
    expect(at(mean(calm) + 1.0001 * reach)).toBe("differs");
    expect(at(mean(calm) + 0.9999 * reach)).toBe("steady");
  });

  it("can be the second of a stretch once a spread is known", () => {
    const replay = replayShifts([...shifted.slice(0, 6), 0.45], [5]);
    expect(outcomes(replay).slice(5)).toEqual(["too few", "differs"]);
  });
});

describe("a series that rises", () => {
  const rising = Array.from({ length: 9 }, (_, i) => 0.3 * (1 + 0.01 * i) + 0.0004 * (i % 2));

  it("is trending once the evidence is there, which closes nothing", () => {
    const replay = replayShifts(rising);
    expect(outcomes(replay).slice(3)).toEqual([
      ...["steady", "steady", "steady", "steady", "trending", "trending"],
    ]);
    expect(placesOf(replay)).toEqual([rising.map((_, i) => i)]);
  });

  it("cannot be told from a step with four values", () => {
    const replay = replayShifts([0.3, 0.3004, 0.31, 0.3105]);
    expect(outcomes(replay)[3]).toBe("moved");
  });
});

describe("a place named as a new beginning", () => {
  it("closes the stretch without asking, and its spread is kept", () => {
    const replay = replayShifts(shifted, [6]);
    expect(outcomes(replay).slice(6)).toEqual(["too few", "too few", "too few", "steady"]);
    expect(present(replay.stretches[1])).toMatchObject({ begins: "afresh", foundAt: null });
    expect(present(present(replay.steps[7]).newest).df).toBe(5);
  });

  it("leaves a value that waited by itself, neither of the old level nor of the new", () => {
    const replay = replayShifts([...calm, 0.34, 0.299, 0.301], [7]);
    expect(placesOf(replay)).toEqual([[0, 1, 2, 3, 4, 5], [6], [7, 8]]);
    expect(replay.stretches.map(({ begins }) => begins)).toEqual(["series", "unsettled", "afresh"]);
    expect(replay.apart).toEqual([]);
  });

  it("is nothing new at the first value", () => {
    expect(replayShifts(shifted, [0])).toEqual(replayShifts(shifted));
  });
});

describe("any series", () => {
  /** Levels that jump, drift and throw up odd values, so that every branch is taken. */
  const series = fc.integer({ min: 1, max: 100_000 }).map((seed) => {
    const random = randomStream(seed);
    let level = 1;
    return Array.from({ length: 16 }, () => {
      if (random.uniform() < 0.12) level *= 1 + 0.1 * random.normal();
      const odd = random.uniform() < 0.08 ? 1 + 0.15 * random.normal() : 1;
      return level * odd * (1 + 0.01 * random.normal());
    });
  });

  it("takes every branch of what can happen", () => {
    const seen = new Set<string>();
    for (let seed = 1; seed <= 300; seed++) {
      const [values = []] = fc.sample(series, { seed, numRuns: 1 });
      const replay = replayShifts(values, [9]);
      for (const { outcome, settled } of replay.steps) seen.add(outcome).add(`${settled}`);
      for (const { begins } of replay.stretches) seen.add(begins);
    }
    expect([...seen].sort()).toEqual(
      [
        ...["too few", "steady", "differs", "moved", "trending"],
        ...["null", "stood apart", "series", "afresh", "unsettled"],
      ].sort(),
    );
  });

  /** A spread that others lend, or none. */
  const priors = fc.oneof(
    fc.constant(noPrior),
    fc.record({
      nu0: fc.double({ min: 0.3, max: 12, noNaN: true }),
      s0Squared: fc.double({ min: 1e-6, max: 1e-2, noNaN: true }),
    }),
  );

  it("replayed up to a value is the log cut there, whatever others lend", () => {
    fc.assert(
      fc.property(series, fc.integer({ min: 0, max: 16 }), priors, (values, length, prior) => {
        const whole = replayShifts(values, [9], prior);
        const part = replayShifts(values.slice(0, length), [9], prior);
        expect(part.steps).toEqual(whole.steps.slice(0, length));
        expect(part.apart).toEqual(whole.apart.filter(({ settledAt }) => settledAt < length));
      }),
    );
  });

  it("with next to no degree of freedom lent is told as by itself from four values on", () => {
    fc.assert(
      fc.property(series, (values) => {
        const [alone, hardly] = [noPrior, { nu0: 1e-9, s0Squared: 1e-4 }].map((prior) =>
          replayShifts(values, [9], prior),
        );
        const hasMoved = present(alone).stretches.length > 2;
        fc.pre(!hasMoved);
        expect(outcomes(present(hardly))).toEqual(outcomes(present(alone)));
      }),
    );
  });

  it("has every value in one stretch, or apart", () => {
    fc.assert(
      fc.property(series, (values) => {
        const { stretches, apart } = replayShifts(values, [9]);
        const places = [
          ...stretches.flatMap((one) => one.places),
          ...apart.map((one) => one.place),
        ];
        expect(places.toSorted((a, b) => a - b)).toEqual(values.map((_, i) => i));
      }),
    );
  });

  it("is told the same in any unit", () => {
    fc.assert(
      fc.property(series, fc.constantFrom(0.001, 2.2046226, 700), (values, unit) => {
        const [plain, other] = [values, values.map((value) => value * unit)].map((list) =>
          replayShifts(list),
        );
        expect(outcomes(present(other))).toEqual(outcomes(present(plain)));
        expect(present(other).stretches).toEqual(present(plain).stretches);
      }),
    );
  });

  it("is not told differently with a constant added, while its own spread alone speaks", () => {
    fc.assert(
      fc.property(series, (values) => {
        const higher = values.map((value) => value + 3);
        const [plain, moved] = [values, higher].map((list) => replayShifts(list).steps);
        const closed = present(plain).findIndex(({ outcome }) => outcome === "moved");
        present(plain)
          .slice(0, closed === -1 ? values.length : closed + 1)
          .forEach(({ outcome, newest, lasting }, i) => {
            const other = present(present(moved)[i]);
            expect(other.outcome).toBe(outcome);
            if (newest !== null)
              expect(present(other.newest).pValue / newest.pValue).toBeCloseTo(1, 4);
            if (lasting !== null)
              expect(present(other.lasting).evidence / lasting.evidence).toBeCloseTo(1, 4);
          });
      }),
    );
  });
});

describe("hardly a series", () => {
  it("has too few values to ask", () => {
    expect(replayShifts([])).toEqual({ steps: [], stretches: [], apart: [] });
    expect(outcomes(replayShifts([0.3, 0.4]))).toEqual(["too few", "too few"]);
    expect(present(replayShifts([0.3, 0.4]).steps[1]).newest).toBeNull();
  });

  it("is no series of alarms where values come in a few coarse steps, as a coarse scale gives them", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(0.3, 0.31, 0.32), { minLength: 1, maxLength: 12 }),
        (values) => {
          const { steps } = replayShifts(values);
          steps.forEach(({ newest, lasting }, i) => {
            if (new Set(values.slice(0, i)).size < 2) expect(newest).toBeNull();
            for (const figure of [newest?.pValue, newest?.statistic, lasting?.evidence])
              expect(Number.isFinite(figure ?? 0)).toBe(true);
          });
        },
      ),
    );
    expect(outcomes(replayShifts([0.3, 0.3, 0.31, 0.31]))).toEqual([
      ...["too few", "too few", "too few", "steady"],
    ]);
  });

  it("is steady where all values agree exactly, for want of anything to measure by", () => {
    const replay = replayShifts([0.3, 0.3, 0.3, 0.3, 0.3]);
    expect(outcomes(replay).slice(3)).toEqual(["steady", "steady"]);
    expect(present(replay.steps[4])).toMatchObject({ newest: null, lasting: null });
  });
});

describe("values that rise by more than a spread of 2 % each", () => {
  const lent = { nu0: 20, s0Squared: 0.0004 };
  const rising = (count: number, step: number) =>
    Array.from({ length: count }, (_, i) => 0.3 * (1 + step * i) + (i === 1 ? 0.0004 : 0));

  it("are trending from the fifth on, the fewest that can be", () => {
    const { steps } = replayShifts(rising(5, 0.03), [], lent);
    expect(present(steps[4]).lasting?.lineExplainsMore).toBe(true);
    expect(steps.map(({ outcome }) => outcome)).toEqual([
      ...["too few", "too few", "too few", "steady", "trending"],
    ]);
  });

  it("have moved where the evidence is there with four of them", () => {
    const { steps } = replayShifts(rising(4, 0.045), [], lent);
    expect(present(steps[3]).lasting?.lineExplainsMore).toBe(true);
    expect(present(steps[3]).outcome).toBe("moved");
  });
});
