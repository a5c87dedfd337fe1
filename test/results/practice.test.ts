import { describe, expect, it } from "vitest";
import { setupFields } from "../../src/data/setup/json-schema.ts";
import { defaults } from "../../src/results/defaults.ts";
import { practice, practiceSource } from "../../src/results/practice.ts";
import { english, german } from "../support/words.ts";

const languages = [
  ["en", english("us"), english("metric")],
  ["de", german("us"), german("metric")],
] as const;
const said = {
  en: {
    quarter: "at least a quarter full",
    practice: "common practice",
    us: "acres",
    metric: "hectares",
  },
  de: {
    quarter: "mindestens zu einem Viertel voll",
    practice: "so ist es üblich",
    us: "Acre",
    metric: "Hektar",
  },
} as const;
const reasons = {
  en: [/product/, /filled/, /first use in a season/],
  de: [/Produkt/, /gefüllt|Füllung|befüllt/, /[Ss]aison/],
} as const;

// Common practice, no source: the table itself is the reference, and these lines are held to it.
describe(`facts of the trade (${practiceSource})`, () => {
  it("are the figures that people with air drills name", () => {
    expect(practice.leastBinLevel).toBe(0.25);
    expect(practice.settledOver).toEqual({ metric: 2, us: 5 });
    // 1 ac = 0.40468564224 ha (NIST Handbook 44): both are the same field to the half hectare.
    expect(practice.settledOver.us * 0.40468564224).toBeCloseTo(practice.settledOver.metric, 1);
    expect(practice.primingTurns).toBe(12);
    expect(practice.minutesForCart).toEqual([3, 5]);
    expect(practice.offWhenSkipped).toEqual([0.1, 0.12]);
  });

  it.each(languages)(
    "stand in the preparation of a catch sheet in %s, named as practice",
    (tag, us, metric) => {
      const { quarter, practice: mark } = said[tag];
      for (const [units, words] of [
        ["us", us],
        ["metric", metric],
      ] as const) {
        const lines = words.sheets.prepared(practice);
        expect(lines.filter((line) => line.includes(quarter))).toEqual([
          expect.stringMatching(new RegExp(`${said[tag][units]}.*${mark}`)),
        ]);
        expect(lines.filter((line) => /\b12\b/.test(line))).toEqual([
          expect.stringContaining(mark),
        ]);
      }
    },
  );

  it.each(languages)("are the reasons to catch again in %s", (tag, words) => {
    const { items } = words.sheets.cab.again;
    expect(reasons[tag]).toHaveLength(practice.catchAgain.length);
    for (const reason of reasons[tag])
      expect(
        items.some((item) => reason.test(item)),
        `${reason}`,
      ).toBe(true);
  });

  it("agree with the minutes a setup gives as an example: a catch at each of two or three bins is a cart", () => {
    const example = setupFields().find(({ path }) => path === "money.minutes_per_catch")?.example;
    const [from, to] = practice.minutesForCart;
    for (const bins of [2, 3]) {
      expect(bins * Number(example)).toBeGreaterThanOrEqual(from);
      expect(bins * Number(example)).toBeLessThanOrEqual(to);
    }
  });

  it("do not contradict what is assumed of fills: an error of 10–12 % is rarer than an outlier, and nowhere promised away", () => {
    const [from] = practice.offWhenSkipped;
    // Off by a fill alone is a matter of fills; so much off is the value of another product, season or setting.
    expect(from / defaults.assumedSpread).toBeGreaterThan(3);
    expect(from).toBeGreaterThan(defaults.tolerance);
  });
});
