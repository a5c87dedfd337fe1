import { describe, expect, it } from "vitest";
import { costFigures } from "../../../src/wording/sayings/cost.ts";
import { aLog, priced } from "../../support/planning-answers.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { english } from "../../support/words.ts";

const words = english();
const plain = (text: string | null) => (text ?? "").replaceAll(/[\u00a0\u202f]/g, " ");
const season = aLog(6, 2);

describe("money, in words", () => {
  const say = words.cost;

  it("names the cheapest, what is nearly as cheap, and skipping beside it", () => {
    expect(plain(say.sentence(priced(season)))).toMatch(
      /^Bin 1 \(wheat\): \d catches of every fill cost least, \d\.\d\d CAD\/ha for catching and the rate errors that remain( \(\d catche?s? within 5 % of that\))?, \d+ CAD a season; skipping costs \d\.\d\d CAD\/ha\.$/,
    );
  });

  it("names the cautious cost of skipping, and what would then cost least", () => {
    const calm = inventedFills({ fills: 9, catches: 3, spread: 0.0005, scatter: 0.03 }, 7);
    const least = priced(calm, { areaPerFillHectares: 10 });
    expect(least.cheapest?.catches).toBe(0);
    expect(plain(say.sentence(least))).toMatch(
      /\. That leaves catch scatter out of the differences between fills; with it counted, skipping costs \d\.\d\d CAD\/ha\.$/,
    );
    const then = { lossPerHectare: 2, cheapestCatches: 3 };
    const skipping = { ...present(least.skipping), withScatter: then };
    expect(plain(say.sentence({ ...least, skipping }))).toMatch(
      /skipping costs 2\.00 CAD\/ha, and 3 catches of every fill cost least\.$/,
    );
    expect(say.sentence(priced(season))).not.toContain("with it counted");
  });

  it("does not let money answer for a tolerance that few fills cannot tell of", () => {
    const few = aLog(4, 0);
    const least = priced(few, { areaPerFillHectares: 0.5 });
    expect(least.cheapest?.catches).toBe(0);
    expect(plain(say.sentence(least))).toMatch(
      /Whether a skipped fill keeps within ± 3\.0 % so few fills cannot tell\.$/,
    );
    expect(say.sentence(priced(few))).not.toContain("so few fills");
  });

  it("speaks of acres to those who use them", () => {
    expect(english("us").cost.sentence(priced(season))).toContain("CAD/ac");
    expect(plain(english("us").cost.breakEven(priced(season)))).toContain(" ac");
  });

  it("gives the area from which catches pay as a range", () => {
    expect(plain(say.breakEven(priced(season)))).toMatch(
      /^Catching pays from about [\d.]+ ha a fill on \(with \d catche?s?\); mean and spread of fills are poorly known, so it may be /,
    );
    expect(say.breakEven(priced(season, { valueOfHour: null }))).toBeNull();
  });

  it("gives no range where both ends are written alike", () => {
    const result = priced(season);
    const paysFrom = present(result.paysFrom);
    const ends = { lowerHectares: paysFrom.hectares, upperHectares: paysFrom.hectares };
    expect(plain(say.breakEven({ ...result, paysFrom: { ...paysFrom, ...ends } }))).toMatch(
      /^Catching pays from about [\d.]+ ha a fill on \(with \d catche?s?\)\.$/,
    );
  });

  it("does not guess without prices", () => {
    const bare = priced(season, { response: null });
    expect(say.sentence(bare)).toContain("cannot be worked out yet");
    expect(say.wasted(bare)).toContain("Product put out beyond the target when skipping");
    expect(say.wasted(priced(season, { pricePerKg: null }))).toBeNull();
  });
});

describe("an area from which catching pays", () => {
  it("has one decimal, and is said to be below it rather than nothing", () => {
    const { area } = costFigures(english().format);
    expect([13, 0.73, 0.06, 0.04].map((hectares) => plain(area(hectares)))).toEqual([
      "13.0 ha",
      "0.7 ha",
      "0.1 ha",
      "< 0.1 ha",
    ]);
  });
});
