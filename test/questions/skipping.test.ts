import fc from "fast-check";
import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { simulateSeasons } from "../../bench/study/skipping/simulate.ts";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { catchesNeededOptions } from "../../src/questions/catches-needed/options.ts";
import { catchesNeeded } from "../../src/questions/catches-needed.ts";
import { type SkippingChoices, skippingOptions } from "../../src/questions/skipping/options.ts";
import { skipping } from "../../src/questions/skipping.ts";
import { expectedAbsolute } from "../../src/statistics/expected-loss.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { evalR } from "../support/webr.ts";

const model = { level: 0.95, tolerance: 0.05, scaleDivisionKg: 0.02 };

function ask(catches: readonly Catch[], given: Partial<SkippingChoices> = {}, changes = {}) {
  const options = { ...model, ...changes };
  const meter = present(fitModel(catches, options).meters[0]);
  return { meter, options, result: skipping(meter, skippingOptions(options, given)) };
}

const codesOf = ({ result }: ReturnType<typeof ask>) => result.cautions.map(({ code }) => code);
const season = inventedFills({ fills: 6, catches: 3, spread: 0.025, scatter: 0.015 }, 11);
const single = (masses: readonly number[], bin = "1") =>
  masses.flatMap((mass, i) => aFill([[20, mass]], { bin, fill: i + 1 }));

describe("skipping calibration", () => {
  it("agrees with the curve of catches at no catch, and with the interval for the next fill", () => {
    const { meter, options, result } = ask(season);
    const { curve } = catchesNeeded(meter, catchesNeededOptions(options));
    const skip = present(curve.points[0]);
    expect(skip).toMatchObject({ catches: 0, basis: "earlier fills" });
    const { interval, value, standardError, df } = meter.across.nextFill;
    expect(result.distribution?.scale).toBeCloseTo(present(standardError) / value, 15);
    expect(result.distribution?.df).toBe(df);
    expect(result.distribution?.location).toBe(0);
    expect(result.nextFill.interval?.upper).toBeCloseTo(present(skip.halfWidth), 13);
    const atTolerance = present(result.chances.find(({ limit }) => limit === 0.05));
    expect(atTolerance.either).toBeCloseTo(present(skip.chanceOffTolerance), 13);
    expect(result.nextFill.interval?.lower).toBeCloseTo(present(interval?.lower) / value - 1, 13);
  });

  it("by hand for three fills left at a book value: t(.975, 2) = 4.302653", () => {
    const { result } = ask(single([6, 6.2, 6.4]), {
      assumed: { source: "book value", kgPerTurn: 0.3 },
    });
    // Fills .30, .31, .32: mean .31, spread .01; next fill ± 4.302653·.01·√(4/3).
    const reach = (4.302653 * 0.01 * Math.sqrt(4 / 3)) / 0.3;
    expect(result.nextFill.value).toBeCloseTo(1 / 30, 12);
    expect(result.nextFill.interval?.lower).toBeCloseTo(1 / 30 - reach, 6);
    expect(result.nextFill.interval?.upper).toBeCloseTo(1 / 30 + reach, 6);
    // Today: the newest fill delivers .32 where .30 is believed.
    expect(result.today?.value).toBeCloseTo(0.32 / 0.3 - 1, 12);
    // Student's t on 2 df has F(x) = ½ + x/(2√(2 + x²)) in closed form.
    const scale = (0.01 * Math.sqrt(4 / 3)) / 0.3;
    const above = (limit: number) => {
      const x = (limit - 1 / 30) / scale;
      return 0.5 - x / (2 * Math.sqrt(2 + x * x));
    };
    const chance = present(result.chances.find(({ limit }) => limit === 0.05));
    expect(chance.heavy).toBeCloseTo(above(0.05), 10);
    expect(chance.light).toBeCloseTo(1 - above(-0.05), 10);
    expect(chance.either).toBeCloseTo(above(0.05) + 1 - above(-0.05), 10);
  });

  it("gives the share of fills with Howe's factor: 8.4, 5.4, 4.3, 3.7 at three to six fills", async () => {
    const factors = [3, 4, 5, 6].map((fills) => {
      const catches = inventedFills({ fills, catches: 2, spread: 0.03, scatter: 0.01 }, fills);
      return present(ask(catches).result.shareOfFills).factor;
    });
    expect(factors.map((factor) => factor.toFixed(1))).toEqual(["8.4", "5.4", "4.3", "3.7"]);
    const inR = await evalR(
      "n <- 3:6; qnorm(0.95) * sqrt((n - 1) * (1 + 1 / n) / qchisq(0.05, n - 1))",
    );
    factors.forEach((factor, i) => {
      expect(factor).toBeCloseTo(present(inR[i]), 9);
    });
  });

  it("adds the tolerance to the limits, once, and sorts them", () => {
    const limits = (given: Partial<SkippingChoices>, tolerance: number) =>
      ask(season, given, { tolerance }).result.chances.map(({ limit }) => limit);
    expect(limits({}, 0.03)).toEqual([0.02, 0.03, 0.05, 0.1]);
    expect(limits({ limits: [0.1, 0.05] }, 0.05)).toEqual([0.05, 0.1]);
  });

  it("keeps the previous fill's value at a higher price than the mean, on the average of seasons", () => {
    const stream = randomStream(5);
    const expected = (source: "last fill" | "average of fills", catches: readonly Catch[]) =>
      present(ask(catches, { assumed: { source } }).result.expected).absolute;
    const seasons = Array.from({ length: 100 }, () =>
      inventedFills({ fills: 6, catches: 3, spread: 0.03, scatter: 0.015 }, stream),
    );
    const previous = mean(seasons.map((catches) => expected("last fill", catches)));
    const ofMean = mean(seasons.map((catches) => expected("average of fills", catches)));
    expect(previous).toBeGreaterThan(1.15 * ofMean);
  });

  it("compares with the common-practice figure, which has no source, as a check only", () => {
    const compared = (spread: number) =>
      ask(inventedFills({ fills: 8, catches: 3, spread, scatter: 0.01 }, 21)).result.commonPractice;
    expect(compared(0.01)).toMatchObject({
      lower: 0.1,
      upper: 0.12,
      source: "common practice, no source",
      compared: "smaller",
    });
    expect(compared(0.08).compared).toBe("larger");
    expect(ask(single([6])).result.commonPractice).toMatchObject({
      farthest: null,
      chanceBeyondLower: null,
      compared: "unknown",
    });
  });

  it("draws a density that encloses all but a sliver of the chance", () => {
    const { density } = ask(season).result;
    const area = density.slice(1).reduce((sum, point, i) => {
      const before = present(density[i]);
      const width = point.rateError - before.rateError;
      return sum + (width * (point.density + before.density)) / 2;
    }, 0);
    expect(area).toBeGreaterThan(0.97);
    expect(area).toBeLessThan(1.001);
    expect(density[0]?.rateError).toBeLessThan(-0.1);
    expect(density.at(-1)?.rateError).toBeGreaterThan(0.1);
    const places = density.map(({ rateError }) => rateError);
    expect(places).toEqual(expect.arrayContaining([-0.05, 0.05, -0.1, 0.1]));
  });
});

describe("a chance after three to five fills", () => {
  const calm = inventedFills({ fills: 9, catches: 3, spread: 0.004, scatter: 0.004 }, 4);
  const firstOf = (fills: number, given: Partial<SkippingChoices> = {}) =>
    ask(
      calm.filter(({ fill }) => fill <= fills),
      given,
    ).result;

  it("is never stated below 5 %, on either side, in a row, or at what common practice says", () => {
    for (const fills of [3, 4, 5]) {
      const { chances, betweenCalibrations, commonPractice, leastChance } = firstOf(fills);
      expect(leastChance).toBe(0.05);
      const stated = [
        ...chances.flatMap(({ either, heavy, light, upperBound }) => [
          either,
          heavy,
          light,
          upperBound,
        ]),
        ...present(betweenCalibrations).points.flatMap((one) => [one.chanceAny, one.upperBound]),
        present(commonPractice.chanceBeyondLower),
        present(commonPractice.chanceBeyondUpper),
      ];
      for (const chance of stated) expect(chance).toBeGreaterThanOrEqual(0.05);
      // So that the above is no empty promise.
      expect(stated).toContain(0.05);
    }
    const six = firstOf(6);
    expect(six.leastChance).toBeNull();
    expect(six.chances.at(-1)?.either).toBeLessThan(0.05);
  });

  it("lets no fill be skipped on a tolerance, whatever risk is accepted", () => {
    for (const fills of [3, 4, 5])
      expect(firstOf(fills, { acceptedRisk: 0.9 }).betweenCalibrations).toMatchObject({
        mostFills: 0,
        mostFillsByBound: 0,
      });
    expect(firstOf(6, { acceptedRisk: 0.9 }).betweenCalibrations?.mostFillsByBound).toBeGreaterThan(
      0,
    );
  });

  it("is the one of the curve of catches at no catch, and as unknown there with two fills", () => {
    for (const fills of [2, 3, 5, 6]) {
      const { meter, options, result } = ask(calm.filter(({ fill }) => fill <= fills));
      const skip = present(catchesNeeded(meter, catchesNeededOptions(options)).curve.points[0]);
      const chance = result.chances.find(({ limit }) => limit === options.tolerance);
      expect(skip.leastChance).toBe(result.leastChance);
      if (chance === undefined) expect(skip.chanceOffTolerance).toBeNull();
      else expect(skip.chanceOffTolerance).toBeCloseTo(chance.either, 13);
    }
  });
});

describe("the mean error of a fill that is skipped", () => {
  const still = inventedFills({ fills: 6, catches: 3, spread: 0.0005, scatter: 0.03 }, 5);
  const wide = inventedFills({ fills: 6, catches: 3, spread: 0.025, scatter: 0.005 }, 11);

  it("leaves catch scatter out, and keeps the uncertainty of the mean where nothing else is left", () => {
    const asked = ask(still);
    const { between, spread, nextFill } = asked.meter.across;
    expect(between).toMatchObject({ value: 0, atBoundary: true });
    const { absolute, absoluteUpperBound, basis, heavy, light } = present(asked.result.expected);
    expect(basis).toBe("without catch scatter");
    const ofMean = present(spread.standardDeviation).value / Math.sqrt(6) / nextFill.value;
    expect(absolute).toBeGreaterThan(Math.sqrt(2 / Math.PI) * ofMean);
    expect(heavy + light).toBeCloseTo(absolute, 14);
    expect(absoluteUpperBound).toBeGreaterThan(absolute);
  });

  it("has the cautious figure beside it where catch scatter is most of the spread, and says so", () => {
    const asked = ask(inventedFills({ fills: 6, catches: 3, spread: 0.0005, scatter: 0.03 }, 7));
    const { absolute, absoluteWithScatter } = present(asked.result.expected);
    // The plain closed form of the measured spread: E|t| of five degrees of freedom.
    expect(absoluteWithScatter).toBeCloseTo(
      present(expectedAbsolute(present(asked.result.distribution))),
      14,
    );
    expect(absoluteWithScatter).toBeGreaterThan(absolute);
    expect(codesOf(asked)).toEqual(["spread-mostly-catch-scatter"]);
    expect(ask(wide).result.expected?.absoluteWithScatter).toBeNull();
    expect(codesOf(ask(wide))).toEqual([]);
  });

  it("is the plain one where no fill has a second catch", () => {
    const { distribution, expected } = ask(single([6, 6.2, 6.4, 6.1])).result;
    expect(expected).toMatchObject({ basis: "as measured", absoluteWithScatter: null });
    expect(expected?.absolute).toBeCloseTo(present(expectedAbsolute(present(distribution))), 14);
  });
});

describe("what fills cannot say", () => {
  it("one fill says nothing of the next one", () => {
    const asked = ask(season.filter(({ fill }) => fill === 1));
    expect(asked.result).toMatchObject({
      today: null,
      distribution: null,
      chances: [],
      expected: null,
      shareOfFills: null,
      betweenCalibrations: null,
      density: [],
    });
    expect(asked.result.nextFill.interval).toBeNull();
    expect(codesOf(asked)).toEqual(["one-fill", "skip-not-priced"]);
  });

  it("one fill borrows the spread of other bins for its band, and for no chance", () => {
    const others = ["2", "3"].map((bin) =>
      inventedFills({ fills: 9, catches: 3, spread: 0.03, scatter: 0.01, bin }, Number(bin)),
    );
    const asked = ask([...single([6]), ...others.flat()]);
    // test/reference/generate/lent-spread.R: two meters of nine fills.
    expect(asked.result.nextFill.df).toBeCloseTo(2.002518791, 8);
    expect(asked.result.nextFill.interval).not.toBeNull();
    expect(asked.result).toMatchObject({ distribution: null, chances: [], expected: null });
    expect(codesOf(asked)).toEqual(["spread-lent", "skip-not-priced"]);
  });

  it("two fills give the band but no chance and no expectation", () => {
    const asked = ask(season.filter(({ fill }) => fill <= 2));
    expect(asked.result.nextFill.interval).not.toBeNull();
    expect(asked.result.today).not.toBeNull();
    expect(asked.result).toMatchObject({ distribution: null, chances: [], expected: null });
    expect(codesOf(asked)).toEqual(["skip-not-priced"]);
  });

  it("three and four fills are few, five are not", () => {
    const fills = inventedFills({ fills: 6, catches: 3, spread: 0.025, scatter: 0.005 }, 11);
    const codes = (last: number) => codesOf(ask(fills.filter(({ fill }) => fill <= last)));
    expect(codes(3)).toEqual(["few-fills"]);
    expect(codes(4)).toEqual(["few-fills"]);
    expect(codes(5)).toEqual([]);
  });

  it("fills that agree exactly do not say that the next will", () => {
    const asked = ask(single([6, 6, 6, 6]));
    expect(asked.result.distribution).toBeNull();
    expect(asked.result.nextFill.interval).toBeNull();
    expect(codesOf(asked)).toEqual(["fills-agree-exactly"]);
  });

  it("a book value outside the band of the fills is named", () => {
    const fills = inventedFills({ fills: 6, catches: 3, spread: 0.025, scatter: 0.005 }, 11);
    const book = (kgPerTurn: number) =>
      codesOf(ask(fills, { assumed: { source: "book value", kgPerTurn } }));
    expect(book(0.3)).toEqual([]);
    expect(book(0.4)).toEqual(["book-value-outside"]);
    expect(book(0.2)).toEqual(["book-value-outside"]);
  });

  it("takes what the drive is left at under its names of earlier versions", () => {
    const source = (given: "previous fill" | "mean of fills") =>
      skippingOptions(model, { assumed: { source: given } }).assumed.source;
    expect(source("previous fill")).toBe("last fill");
    expect(source("mean of fills")).toBe("average of fills");
  });

  it("options that cannot be meant are refused", () => {
    expect(() => skippingOptions(model, { limits: [0] })).toThrow(OptionError);
    expect(() => skippingOptions(model, { acceptedRisk: 1 })).toThrow(OptionError);
    expect(() => skippingOptions(model, { content: 1.2 })).toThrow(OptionError);
    expect(() => skippingOptions(model, { tolerence: 0.1 } as never)).toThrow(/tolerence/);
  });
});

describe("fills between calibrations", () => {
  const points = (given: Partial<SkippingChoices>, catches = season) =>
    present(ask(catches, given).result.betweenCalibrations);

  it.each([
    { source: "average of fills" },
    { source: "last fill" },
    { source: "fill", fill: 2 },
    { source: "book value", kgPerTurn: 0.31 },
  ] as const)("one fill is the next fill, with its very chance and bound: %o", (assumed) => {
    const { result } = ask(season, { assumed });
    const [one] = present(result.betweenCalibrations).points;
    const chance = present(result.chances.find(({ limit }) => limit === 0.05));
    expect(one?.chanceAny).toBe(chance.either);
    expect(one?.upperBound).toBeCloseTo(chance.upperBound, 14);
    expect(one?.expectedOff).toBe(chance.either);
  });

  it("left at the last fill start from the value it has, not from that of any fill", () => {
    const catches = single([6, 6.2, 6.4, 6.1, 6.3, 6.6]);
    // In R, fills .30 .31 .32 .305 .315 .33 left at .33, integrated over mean and spread with integrate():
    // s2 <- nu * var(x) / chisq, m ~ N(mean(x), s2 / 6), 1 - (P(.3135 < N(m, s2) < .3465))^j.
    const inR = new Map([
      [1, 0.5234852866],
      [2, 0.7523919173],
      [4, 0.9192915922],
      [10, 0.9932078045],
    ]);
    const { points: rows } = points({ assumed: { source: "last fill" } }, catches);
    for (const [fills, chance] of inR)
      expect(rows.find((one) => one.fills === fills)?.chanceAny).toBeCloseTo(chance, 4);
    expect(points({ assumed: { source: "fill", fill: 6 } }, catches).points).toEqual(rows);
  });

  it("accept the one skipped fill whose chance is within the risk, whatever any two fills differ by", () => {
    // Fills .30 .31 .32 .305 .315 .311, the last near the mean. In R, pt() of the law of the next fill beyond ± 5 %:
    // 0.09877691; two fills of this spread, whichever they are, differ by more with chance 0.1822407.
    const { mostFills, points: rows } = points(
      { assumed: { source: "last fill" }, acceptedRisk: 0.12 },
      single([6, 6.2, 6.4, 6.1, 6.3, 6.22]),
    );
    expect(rows[0]?.chanceAny).toBeCloseTo(0.09877691, 8);
    expect(mostFills).toBe(1);
  });

  it("grow with the risk accepted, and the cautious count is never larger", () => {
    const calm = inventedFills({ fills: 8, catches: 3, spread: 0.008, scatter: 0.005 }, 8);
    const counts = [0.05, 0.1, 0.2, 0.4].map((acceptedRisk) => points({ acceptedRisk }, calm));
    for (const [i, { mostFills, mostFillsByBound }] of counts.entries()) {
      expect(mostFills).toBeGreaterThanOrEqual(counts[i - 1]?.mostFills ?? 0);
      expect(mostFillsByBound).toBeLessThanOrEqual(mostFills);
    }
    expect(counts.at(-1)?.mostFills).toBeGreaterThan(0);
  });

  it("are none where a single one is too risky, and open-ended where the risk never gets there", () => {
    const wild = inventedFills({ fills: 6, catches: 3, spread: 0.08, scatter: 0.01 }, 3);
    expect(points({}, wild)).toMatchObject({ mostFills: 0, openEnded: false });
    const still = inventedFills({ fills: 30, catches: 3, spread: 0.004, scatter: 0.003 }, 3);
    expect(points({}, still)).toMatchObject({ mostFills: 50, openEnded: true });
  });

  it.each([
    ["average of fills", 5],
    ["last fill", 4],
  ] as const)(
    "left at the %s, any of %i: happens as often as stated with a long log",
    (source, count) => {
      // With 300 fills the spread is known well, so what is stated can be compared with plain frequencies.
      const truth = { spread: 0.022, scatter: 0.006, catches: 2 };
      const log = inventedFills({ fills: 300, ...truth }, 99);
      const { betweenCalibrations, nextFill } = ask(log, { assumed: { source } }).result;
      const rows = present(betweenCalibrations).points;
      const stated = present(rows.find(({ fills }) => fills === count)).chanceAny;
      const stream = randomStream(100, count);
      const ofFill = Math.hypot(truth.spread, truth.scatter / Math.sqrt(truth.catches));
      const trials = 40_000;
      let any = 0;
      for (let i = 0; i < trials; i++) {
        const off = Array.from(
          { length: count },
          () => Math.abs((1 + nextFill.value) * (1 + ofFill * stream.normal()) - 1) > 0.05,
        );
        if (off.some(Boolean)) any++;
      }
      // The spread of 300 fills is known to 4 %, which moves a chance of this size by about 0.02.
      expect(Math.abs(any / trials - stated)).toBeLessThan(0.04);
    },
  );
});

describe("chances stated against chances that happen, over simulated seasons", () => {
  // Simulated in R, 60,000 seasons a row: test/reference/generate/skipped-fill.R. Spread log-uniform 1–6 %, stated → happened.
  it.each([
    [3, 0.221, 0.142],
    [6, 0.164, 0.124],
    [10, 0.141, 0.116],
  ])("%i fills: %s stated, %s happened", (fills, stated, happened) => {
    const plan = { fills, spreadFrom: 0.01, spreadTo: 0.06, limit: 0.05 };
    const outcomes = simulateSeasons(plan, 6_000, 41);
    expect(Math.abs(mean(outcomes.map((one) => one.stated)) - stated)).toBeLessThan(0.012);
    expect(Math.abs(mean(outcomes.map((one) => one.happened)) - happened)).toBeLessThan(0.012);
    const sure = outcomes.filter((one) => one.stated >= 0.3);
    expect(mean(sure.map((one) => one.happened))).toBeLessThan(mean(sure.map((one) => one.stated)));
  });
});

describe("properties", () => {
  const plan = fc.record({
    fills: fc.integer({ min: 3, max: 9 }),
    catches: fc.integer({ min: 1, max: 4 }),
    spread: fc.double({ min: 0.003, max: 0.08, noNaN: true }),
    scatter: fc.double({ min: 0.003, max: 0.04, noNaN: true }),
  });

  it("chances fall with the limit and add up from both sides", () => {
    fc.assert(
      fc.property(plan, fc.integer({ min: 0, max: 1e6 }), (one, seed) => {
        const { chances, expected, leastChance } = ask(inventedFills(one, seed)).result;
        for (const [i, { either, heavy, light }] of chances.entries()) {
          expect(either).toBeLessThanOrEqual(chances[i - 1]?.either ?? 1);
          if (leastChance === null) expect(heavy + light).toBeCloseTo(either, 14);
        }
        expect(present(expected).absoluteUpperBound).toBeGreaterThan(present(expected).absolute);
      }),
      { numRuns: 40 },
    );
  });

  it("are the same whatever the product weighs", () => {
    fc.assert(
      fc.property(plan, fc.double({ min: 0.01, max: 40, noNaN: true }), (one, times) => {
        const catches = inventedFills(one, 5);
        const heavier = catches.map((row) => ({ ...row, netKg: row.netKg * times }));
        const [a, b] = [ask(catches), ask(heavier, {}, { scaleDivisionKg: 0.02 * times })];
        expect(b.result.nextFill.standardError).toBeCloseTo(
          present(a.result.nextFill.standardError),
          10,
        );
        expect(b.result.chances[1]?.either).toBeCloseTo(present(a.result.chances[1]).either, 9);
        expect(b.result.today?.value).toBeCloseTo(present(a.result.today).value, 10);
      }),
      { numRuns: 20 },
    );
  });

  it("hold no number that is not finite, whatever the fills", () => {
    const mass = fc.double({ min: 1e-3, max: 90, noNaN: true });
    fc.assert(
      fc.property(fc.array(mass, { minLength: 1, maxLength: 7 }), (masses) => {
        const { result } = ask(single(masses));
        // What is not finite would come back as null.
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      }),
      { numRuns: 60 },
    );
  });

  it("survive a journey through JSON unchanged", () => {
    for (const fills of [1, 2, 3, 6]) {
      const { result } = ask(season.filter(({ fill }) => fill <= fills));
      expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    }
  });
});
