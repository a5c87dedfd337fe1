import fc from "fast-check";
import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { fitModel } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { lossOf } from "../../src/questions/cost/loss.ts";
import { costOptions, priceRules } from "../../src/questions/cost/options.ts";
import { cost, type Prices } from "../../src/questions/cost.ts";
import { skippingOptions } from "../../src/questions/skipping/options.ts";
import { skipping } from "../../src/questions/skipping.ts";
import { resolve } from "../../src/results/options.ts";
import { aFill } from "../support/catches.ts";
import { expectedExcess, expectedShortfall } from "../support/expected-sides.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const model = { level: 0.95, tolerance: 0.05, scaleDivisionKg: 0.02 };

const noPrices = resolve(priceRules, {});

/** Invented prices, none of them a recommendation. */
const prices: Prices = {
  currency: "CAD",
  response: {
    kind: "linear",
    heavyCostPerHectarePerPercent: 0.9,
    lightCostPerHectarePerPercent: 1.8,
  },
  pricePerKg: 0.6,
  targetKgPerHectare: 120,
  valueOfHour: 60,
  minutesPerCatch: 4,
  minutesToSetUp: 10,
  costPerCatch: null,
  costToSetUp: null,
  areaHectares: 800,
  areaPerFillHectares: 40,
};

function ask(catches: readonly Catch[], given: Partial<Prices> = {}, book: number | null = null) {
  const meter = present(fitModel(catches, model).meters[0]);
  const assumed =
    book === null
      ? ({ source: "average of fills" } as const)
      : ({ source: "book value", kgPerTurn: book } as const);
  const options = costOptions(model, { prices: { ...prices, ...given }, assumed });
  return { meter, result: cost(meter, options) };
}

const codesOf = ({ result }: ReturnType<typeof ask>) => result.cautions.map(({ code }) => code);
const season = inventedFills({ fills: 6, catches: 3, spread: 0.025, scatter: 0.015 }, 31);
const firstFills = (fills: number) => season.filter(({ fill }) => fill <= fills);
/** A rate error that is known. */
const sure = (location: number) => ({ location, scale: 1e-12, df: 1e6 });

describe("published figures", () => {
  it("missing the best nitrogen rate of irrigated maize by 2, 5 and 10 % costs 0.16, 1.02 and 4.08 an acre", () => {
    // Univ. Nebraska, Cornhusker Economics, 25 Sep 2019: yield 1.34 N − 0.0034 N² bu/ac; grain 4.00 and N 0.65 a unit
    // give the best N and the loss 4.00·0.0034·d².
    const best = (1.34 - 0.65 / 4) / (2 * 0.0034);
    expect(best).toBeCloseTo(173.2, 1);
    const curvature = 4 * 0.0034 * (best / 100) ** 2;
    const response = {
      kind: "quadratic",
      curvaturePerHectarePerPercentSquared: curvature,
    } as const;
    const at = (error: number) => lossOf(sure(error), { ...noPrices, response }).perHectare;
    expect(at(0.02)).toBeCloseTo(0.16, 2);
    expect(at(0.05)).toBeCloseTo(1.02, 2);
    expect(at(-0.1)).toBeCloseTo(4.08, 2);
  });

  it("1 % too much of 100 kg/ha at 0.662 a kg wastes 0.66 a hectare", () => {
    const product = { ...noPrices, pricePerKg: 0.662, targetKgPerHectare: 100 };
    expect(lossOf(sure(0.01), product).productWastedPerHectare).toBeCloseTo(0.66, 2);
    expect(lossOf(sure(-0.01), product).productWastedPerHectare).toBe(0);
  });
});

describe("what catches of every fill cost", () => {
  const loss = (scale: number, df: number) => {
    const law = { location: 0, scale, df };
    return 100 * (0.9 * present(expectedExcess(law)) + 1.8 * present(expectedShortfall(law)));
  };

  it("skipping costs the closed form of the law of the next fill where no catch scatter is known", () => {
    const lone = season.filter(({ catch: number }) => number === 1);
    const { meter, result } = ask(lone);
    expect(result.skipping).toEqual({
      basis: "as measured",
      withScatter: null,
      toleranceTold: true,
    });
    const { value, standardError, df } = meter.across.nextFill;
    expect(result.points[0]?.loss.perHectare).toBeCloseTo(
      loss(present(standardError) / value, present(df)),
      11,
    );
  });

  it("skipping costs what its mean error does, in the figures of the question of skipping", () => {
    const response = {
      kind: "linear",
      heavyCostPerHectarePerPercent: 1,
      lightCostPerHectarePerPercent: 1,
    } as const;
    for (const [seed, scatter] of [
      [31, 0.015],
      [7, 0.08],
    ] as const) {
      const catches = inventedFills({ fills: 6, catches: 3, spread: 0.02, scatter }, seed);
      const { meter, result } = ask(catches, { response });
      const expected = present(skipping(meter, skippingOptions(model)).expected);
      expect(result.points[0]?.loss.perHectare).toBeCloseTo(100 * expected.absolute, 12);
      expect(result.skipping?.basis).toBe(expected.basis);
      expect(result.skipping?.withScatter?.lossPerHectare ?? null).toBe(
        expected.absoluteWithScatter === null ? null : 100 * expected.absoluteWithScatter,
      );
    }
  });

  it("skipping has its cautious cost beside it where catch scatter is most of the spread", () => {
    const calm = inventedFills({ fills: 9, catches: 3, spread: 0.0005, scatter: 0.03 }, 7);
    const asked = ask(calm, { areaPerFillHectares: 20 });
    const { points, cheapest } = asked.result;
    const { lossPerHectare, cheapestCatches } = present(asked.result.skipping?.withScatter);
    expect(lossPerHectare).toBeGreaterThan(present(points[0]?.loss.perHectare));
    const totals = points.map(({ totalPerHectare }, i) =>
      i === 0 ? lossPerHectare : present(totalPerHectare),
    );
    expect(totals[present(cheapestCatches)]).toBe(Math.min(...totals));
    expect(cheapest?.catches).toBe(0);
    expect(codesOf(asked)).toEqual(["spread-mostly-catch-scatter"]);
  });

  it("says from which fills nobody knows whether a skipped one keeps the tolerance", () => {
    const told = (fills: number) => ask(firstFills(fills)).result.skipping?.toleranceTold;
    expect([3, 4, 5, 6].map(told)).toEqual([false, false, false, true]);
    expect(ask(firstFills(2)).result.skipping).toBeNull();
  });

  it("catches cost that of what scatter and scale leave, on the degrees of freedom that fills lend", async () => {
    const { meter, result } = ask(season);
    const { value } = meter.across.nextFill;
    const { relative, df, fills } = meter.scatter;
    const [nu = 0, q = 0] = await evalR(`${votesInR} prior.of(vote.of.own.fills(s2, df, k))`, {
      s2: present(relative),
      df,
      k: fills,
    });
    for (const { catches, loss: priced } of result.points.slice(1)) {
      const error = Math.hypot(Math.sqrt(q / (20 * catches)), 0.02 / Math.sqrt(6) / 20 / value);
      expect(priced.perHectare).toBeCloseTo(loss(error, nu), 9);
    }
  });

  it("adds minutes at the value of an hour, spread over the area of a fill", () => {
    const { points } = ask(season).result;
    expect(points[0]?.catchingPerHectare).toBe(0);
    // 10 + 3·4 minutes at 60 an hour over 40 ha.
    expect(points[3]?.catchingPerHectare).toBeCloseTo(22 / 40, 14);
    for (const point of points) {
      expect(point.totalPerHectare).toBeCloseTo(
        present(point.loss.perHectare) + present(point.catchingPerHectare),
        12,
      );
      expect(point.totalPerSeason).toBeCloseTo(present(point.totalPerHectare) * 800, 9);
    }
  });

  it("names the cheapest, and the fewest that are nearly as cheap", () => {
    const { points, cheapest } = ask(season).result;
    const totals = points.map(({ totalPerHectare }) => present(totalPerHectare));
    const least = Math.min(...totals);
    expect(cheapest?.totalPerHectare).toBe(least);
    expect(totals[present(cheapest).catches]).toBe(least);
    const nearly = present(cheapest).nearlyAsCheap;
    expect(totals[nearly]).toBeLessThanOrEqual(1.05 * least);
    for (const total of totals.slice(0, nearly)) expect(total).toBeGreaterThan(1.05 * least);
    expect(cheapest?.comparedWithSkipping).toBe(true);
  });

  it("a book value far from the fills makes skipping dear, not catching", () => {
    const [mid, off] = [ask(season).result, ask(season, {}, 0.27).result];
    expect(present(off.points[0]?.loss.perHectare)).toBeGreaterThan(
      2 * present(mid.points[0]?.loss.perHectare),
    );
    expect(off.points[2]?.loss.perHectare).toBe(mid.points[2]?.loss.perHectare);
  });
});

describe("the area from which catches pay", () => {
  it("is where skipping and catching cost the same", () => {
    const { breakEvens } = ask(season).result;
    for (const { catches, hectares } of breakEvens) {
      const { points } = ask(season, { areaPerFillHectares: present(hectares) }).result;
      expect(points[catches]?.totalPerHectare).toBeCloseTo(present(points[0]?.totalPerHectare), 10);
    }
  });

  it("is a range around the figure, and the smallest is the headline", () => {
    const { breakEvens, paysFrom } = ask(season).result;
    for (const { hectares, lowerHectares, upperHectares, verdict } of breakEvens) {
      expect(verdict).toBe("pays above");
      expect(lowerHectares).toBeLessThan(present(hectares));
      expect(upperHectares ?? Number.MAX_VALUE).toBeGreaterThan(present(hectares));
    }
    expect(paysFrom?.hectares).toBe(
      Math.min(...breakEvens.map(({ hectares }) => present(hectares))),
    );
  });

  it("does not exist where one catch tells less than the fills so far", () => {
    const calm = inventedFills({ fills: 9, catches: 3, spread: 0.0005, scatter: 0.03 }, 7);
    const { breakEvens } = ask(calm).result;
    expect(breakEvens[0]).toMatchObject({ catches: 1, hectares: null, verdict: "does not pay" });
  });

  it.each([4, 8])("the range holds the true area eight times in ten or more, %i fills", (fills) => {
    const [spread, scatter] = [0.02, 0.015];
    const half = Math.sqrt(2 / Math.PI);
    // Known law: E max(e, 0) = E max(−e, 0) = σ/√(2π); two catches of every fill.
    const lossOfSigma = (sigma: number) => 100 * 2.7 * (sigma * half * 0.5);
    // The next fill differs by the spread alone; the mean the drive is left at errs by spread and catches.
    const ofSkip = Math.hypot(
      spread,
      Math.hypot(spread, scatter / Math.sqrt(3)) / Math.sqrt(fills),
    );
    const truth = 18 / (lossOfSigma(ofSkip) - lossOfSigma(scatter / Math.sqrt(2)));
    const stream = randomStream(51, fills);
    const held = Array.from({ length: 300 }, () => {
      const catches = inventedFills({ fills, catches: 3, spread, scatter }, stream);
      const { lowerHectares, upperHectares } = present(ask(catches).result.breakEvens[1]);
      return (lowerHectares ?? Number.POSITIVE_INFINITY) <= truth &&
        truth <= (upperHectares ?? Number.POSITIVE_INFINITY)
        ? 1
        : 0;
    });
    expect(mean(held)).toBeGreaterThan(0.75);
  });

  it.each([
    [3, 0.05],
    [5, -0.08],
    [9, 0.05],
  ])("and where the drive is set off centre, %i fills off by %s", (fills, offCentre) => {
    const [spread, scatter] = [0.02, 0.015];
    const known = (location: number, scale: number) =>
      present(
        lossOf({ location, scale, df: 1e6 }, { ...noPrices, response: prices.response }).perHectare,
      );
    const stream = randomStream(53, fills);
    const held = Array.from({ length: 200 }, () => {
      const catches = inventedFills({ fills, catches: 3, spread, scatter }, stream);
      const book = 0.3 / (1 + offCentre);
      const { lowerHectares, upperHectares } = present(ask(catches, {}, book).result.breakEvens[1]);
      const truth =
        18 / (known(offCentre, spread * (1 + offCentre)) - known(0, scatter / Math.SQRT2));
      return (lowerHectares ?? Number.POSITIVE_INFINITY) <= truth &&
        truth <= (upperHectares ?? Number.POSITIVE_INFINITY)
        ? 1
        : 0;
    });
    expect(mean(held)).toBeGreaterThanOrEqual(0.72);
  });
});

describe("what is not given", () => {
  it("is named, and only what needs it is missing", () => {
    const without = (name: keyof Prices) => ask(season, { [name]: null }).result;
    const time = without("valueOfHour");
    expect(time.missing).toEqual(["valueOfHour"]);
    expect(time.points[2]?.loss.perHectare).not.toBeNull();
    expect(time.points[2]?.totalPerHectare).toBeNull();
    expect(time.breakEvens[0]?.verdict).toBe("unknown");
    const area = without("areaPerFillHectares");
    expect(area.points[2]?.totalPerHectare).toBeNull();
    expect(area.breakEvens[1]?.hectares).not.toBeNull();
    const response = without("response");
    expect(response.points[0]?.loss.perHectare).toBeNull();
    expect(response.points[0]?.loss.productWastedPerHectare).toBeGreaterThan(0);
    expect(response.cheapest).toBeNull();
    const product = without("pricePerKg");
    expect(product.points[0]?.loss.productWastedPerHectare).toBeNull();
    expect(product.cheapest).not.toBeNull();
    const season_ = without("areaHectares");
    expect(season_.cheapest).toMatchObject({ totalPerSeason: null });
  });

  it("nothing given: nothing priced, everything named, nothing invented", () => {
    const asked = ask(season, noPrices);
    expect(asked.result.missing).toHaveLength(7);
    expect(asked.result).toMatchObject({ cheapest: null, paysFrom: null });
    expect(codesOf(asked)).toEqual(["prices-missing"]);
  });

  it("no time to set up counts as none, and says so", () => {
    const asked = ask(season, { minutesToSetUp: null });
    expect(codesOf(asked)).toEqual(["set-up-time-not-counted"]);
    expect(asked.result.points[1]?.catchingPerHectare).toBeCloseTo(4 / 40, 14);
  });

  it("a catch with a price of its own needs no minutes, and its price comes before theirs", () => {
    const untimed = { valueOfHour: null, minutesPerCatch: null, minutesToSetUp: null };
    const priced = ask(season, { ...untimed, costPerCatch: 4, costToSetUp: 8 });
    expect(priced.result.missing).toEqual([]);
    expect(codesOf(priced)).toEqual([]);
    // 8 + 3·4 over 40 ha.
    expect(priced.result.points[3]?.catchingPerHectare).toBeCloseTo(20 / 40, 14);
    const both = ask(season, { costPerCatch: 6 }).result;
    // 10 minutes at 60 an hour and 3 · 6.
    expect(both.points[3]?.catchingPerHectare).toBeCloseTo(28 / 40, 14);
    expect(codesOf(ask(season, { ...untimed, costPerCatch: 4 }))).toEqual([
      "set-up-time-not-counted",
    ]);
    // Without the value of an hour the minutes of setting up are no price.
    const hourless = { ...untimed, minutesToSetUp: 10, costPerCatch: 4 };
    expect(codesOf(ask(season, hourless))).toEqual(["set-up-time-not-counted"]);
  });

  it("a heavy cost below the product's own price is asked about", () => {
    const response = { ...present(prices.response), heavyCostPerHectarePerPercent: 0.1 } as never;
    expect(codesOf(ask(season, { response }))).toEqual(["heavy-cost-below-product"]);
  });
});

describe("too few fills", () => {
  const quadratic = { kind: "quadratic", curvaturePerHectarePerPercentSquared: 0.04 } as const;

  it("two cannot price a skip; catches can still be priced among themselves", () => {
    const asked = ask(firstFills(2));
    expect(asked.result.points[0]?.totalPerHectare).toBeNull();
    expect(asked.result.cheapest?.comparedWithSkipping).toBe(false);
    expect(asked.result.paysFrom).toBeNull();
    expect(codesOf(asked)).toEqual(["skip-not-priced"]);
  });

  it("three price a linear response, not a quadratic one, whose mean loss is infinite", () => {
    expect(ask(firstFills(3)).result.points[0]?.loss.perHectare).toBeGreaterThan(0);
    const asked = ask(firstFills(3), { response: quadratic });
    expect(asked.result.points[0]?.loss.perHectare).toBeNull();
    expect(asked.result.points[0]?.loss.upperPerHectare).toBeGreaterThan(0);
    expect(codesOf(asked)).toEqual([
      "few-fills",
      "quadratic-about-best-rate",
      "quadratic-needs-more",
    ]);
    expect(
      ask(firstFills(4), { response: quadratic }).result.points[0]?.loss.perHectare,
    ).toBeGreaterThan(0);
  });

  it("prices nothing about skipping before three fills of its own, whatever other bins lend", () => {
    const others = ["2", "3"].map((bin) =>
      inventedFills({ fills: 9, catches: 3, spread: 0.03, scatter: 0.01, bin }, Number(bin)),
    );
    for (const fills of [1, 2]) {
      const lent = ask([...firstFills(fills), ...others.flat()]);
      expect(codesOf(lent)).toEqual(["skip-not-priced"]);
      expect(lent.result.points[0]?.loss.perHectare).toBeNull();
    }
    const third = ask([...firstFills(3), ...others.flat()], { response: quadratic });
    expect(third.result.points[0]?.loss.perHectare).toBeGreaterThan(0);
    expect(codesOf(third)).not.toContain("quadratic-needs-more");
    expect(codesOf(ask(firstFills(1)))).toEqual(["skip-not-priced"]);
  });

  it("fills that agree exactly price no skip", () => {
    const alike = [1, 2, 3, 4].flatMap((fill) => aFill([[20, 6]], { fill }));
    expect(codesOf(ask(alike))).toEqual(["fills-agree-exactly"]);
  });
});

describe("properties", () => {
  const money = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  it("dearer hours never ask for more catches; larger fills never for fewer", () => {
    fc.assert(
      fc.property(money(5, 200), money(2, 300), (valueOfHour, areaPerFillHectares) => {
        const best = (given: Partial<Prices>) =>
          present(ask(season, { valueOfHour, areaPerFillHectares, ...given }).result.cheapest)
            .catches;
        expect(best({ valueOfHour: valueOfHour * 2 })).toBeLessThanOrEqual(best({}));
        expect(best({ areaPerFillHectares: areaPerFillHectares * 2 })).toBeGreaterThanOrEqual(
          best({}),
        );
      }),
      { numRuns: 30 },
    );
  });

  it("another currency changes every sum by the same factor and no choice", () => {
    fc.assert(
      fc.property(money(0.01, 100), (rate) => {
        const linear = {
          kind: "linear",
          heavyCostPerHectarePerPercent: 0.9 * rate,
          lightCostPerHectarePerPercent: 1.8 * rate,
        } as const;
        const here = ask(season).result;
        const there = ask(season, {
          response: linear,
          pricePerKg: 0.6 * rate,
          valueOfHour: 60 * rate,
        }).result;
        expect(there.cheapest?.catches).toBe(here.cheapest?.catches);
        expect(
          present(there.cheapest).totalPerHectare / present(here.cheapest).totalPerHectare,
        ).toBeCloseTo(rate, 8);
        expect(there.paysFrom?.hectares).toBeCloseTo(present(here.paysFrom?.hectares), 8);
      }),
      { numRuns: 20 },
    );
  });

  it("hold no number that is not finite, whatever the fills", () => {
    const pair = fc.tuple(
      fc.double({ min: 0.5, max: 200, noNaN: true }),
      fc.double({ min: 1e-3, max: 90, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(pair, { minLength: 1, maxLength: 7 }), (pairs) => {
        const catches = pairs.flatMap(([a, b], i) =>
          aFill(
            [
              [20, a],
              [20, b],
            ],
            { fill: i + 1 },
          ),
        );
        const { result } = ask(catches);
        // What is not finite would come back as null.
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      }),
      { numRuns: 60 },
    );
  });

  it("survive a journey through JSON unchanged", () => {
    for (const fills of [1, 2, 3, 6]) {
      const { result } = ask(firstFills(fills));
      expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    }
  });

  it("takes what the drive is left at under its names of earlier versions", () => {
    const source = (given: "previous fill" | "mean of fills") =>
      costOptions(model, { assumed: { source: given } }).assumed.source;
    expect(source("previous fill")).toBe("last fill");
    expect(source("mean of fills")).toBe("average of fills");
  });

  it("prices that cannot be meant are refused by name", () => {
    for (const given of [
      { pricePerKg: -1 },
      { valueOfHour: Number.NaN },
      { areaPerFillHectares: 0 },
      { response: { kind: "quadratic", curvaturePerHectarePerPercentSquared: -1 } },
      { pricePerKilo: 1 },
    ])
      expect(() => costOptions(model, { prices: given as never })).toThrow(OptionError);
    expect(() => costOptions(model, { mostCatches: 0 })).toThrow(OptionError);
  });
});
