import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { fitModel, type MeterModel } from "../../src/model/model.ts";
import { acrossFills } from "../../src/questions/across-fills.ts";
import { catchesNeededOptions } from "../../src/questions/catches-needed/options.ts";
import { catchesNeeded } from "../../src/questions/catches-needed.ts";
import { delivery } from "../../src/questions/delivery.ts";
import { repeatability } from "../../src/questions/repeatability.ts";
import type { Words } from "../../src/wording/words.ts";
import { englishIn, numbersIn } from "../support/bilingual.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { english, german } from "../support/words.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const assumed = { spread: 0.02, scatter: 0.01 };

const morning = (bin: string, masses: readonly number[]) =>
  aFill(
    masses.map((mass) => [20, mass] as const),
    { bin },
  );
const others = ["2", "3"].map((bin) =>
  inventedFills({ fills: 3, catches: 3, spread: 0.02, scatter: 0.015, bin }, Number(bin)),
);
const season = inventedFills({ fills: 3, catches: 3, spread: 0.02, scatter: 0.015 }, 9);
const three = morning("1", [6.02, 5.91, 6.1]);

const first = (catches: readonly Catch[], states = usualBorrowing): MeterModel =>
  present(fitModel(catches, options, { borrowing: states }).meters[0]);

const library = [0.015, 0.021, 0.03].map((sd) => ({
  product: "wheat",
  spread: { variance: sd ** 2, df: 8 },
  scatter: { variance: 20 * (sd / 2) ** 2, df: 12 },
}));

/** By who lends to a bin. */
const meters: readonly (readonly [string, MeterModel])[] = [
  ["nobody, to three catches", first(three)],
  ["nobody, to three fills", first(season)],
  ["one other bin, to one catch", first([...three.slice(0, 1), ...present(others[0])])],
  ["two other bins, to three catches", first([...three, ...others.flat()])],
  ["two other bins and other fills", first([...season, ...others.flat()])],
  ["a library, to three catches", first(three, { ...usualBorrowing, library })],
  [
    "a library and two other bins, to three fills",
    first([...season, ...others.flat()], { ...usualBorrowing, library }),
  ],
  ["a typical figure, to three catches", first(three, { ...usualBorrowing, assumed })],
  ["a typical figure and other fills", first(season, { ...usualBorrowing, assumed })],
];

/** All that is said of what is lent. */
function saidOf(meter: MeterModel, words: Words): readonly string[] {
  const fills = acrossFills(meter, options);
  const fill = delivery(meter, { ...options, varianceLaw: "proportional" });
  const needed = catchesNeeded(meter, catchesNeededOptions(options));
  return [
    words.delivery.twoLines(fill),
    words.delivery.scatter(fill),
    words.acrossFills.twoLines(fills),
    words.acrossFills.spread(fills),
    words.acrossFills.meanSentence(fills),
    words.catchesNeeded.basis(needed),
    words.catchesNeeded.rule(needed),
    words.repeatability.sentence(repeatability(meter, options)),
  ].filter((said) => said !== null);
}

describe("what others lend, said in both languages", () => {
  it.each(meters)("%s: whole German sentences with the numbers of the English ones", (_, meter) => {
    const [inEnglish, inGerman] = [saidOf(meter, english()), saidOf(meter, german())];
    expect(inGerman).toHaveLength(inEnglish.length);
    for (const [i, said] of inGerman.entries()) {
      expect(said).toMatch(/^„?[A-ZÄÖÜ0-9].*\.$/s);
      expect(said).not.toMatch(/undefined|NaN|\[object/);
      expect(englishIn(said)).toEqual([]);
      expect(numbersIn(said, "de")).toEqual(numbersIn(present(inEnglish[i]), "en"));
    }
  });

  it("is named as what it is: lent, or assumed and deciding nothing", () => {
    const plain = (meter: MeterModel) =>
      saidOf(meter, english())
        .join(" ")
        .replaceAll(/[\u00a0\u202f]/g, " ");
    const byName = new Map(meters);
    const told = (name: string) => plain(present(byName.get(name)));
    expect(told("two other bins, to three catches")).toMatch(
      /By itself ± 4\.0 %\. If it scatters like your other bins, ± \d\.\d %\./,
    );
    expect(told("one other bin, to one catch")).toContain(
      "By itself this bin says nothing of the error yet.",
    );
    expect(told("nobody, to three catches")).toMatch(
      /If catches scatter by 1\.5 % in 20 turns, as many meters do, ± \d\.\d %: assumed, not measured, and nothing is decided by it\./,
    );
    expect(told("nobody, to three fills")).toMatch(
      /If fills differ by 3 %, as many meters' do: ± \d+(\.\d)? %, which is assumed, not measured, and decides nothing\./,
    );
    expect(told("two other bins and other fills")).toMatch(
      /The next fill, by itself: ± \d+(\.\d)? %\. If this bin's fills differ like those of your other bins: ± \d+(\.\d)? %\./,
    );
    expect(told("a library, to three catches")).toMatch(
      /If it scatters like the meters of the library, ± \d\.\d %\..*3 meters of the library/,
    );
    expect(told("a library, to three catches")).not.toMatch(/other bin/);
    expect(told("a library and two other bins, to three fills")).toMatch(
      /differ like those of your other bins and the meters of the library: .* told together with 2 other bins and 3 meters of the library/,
    );
    expect(told("a typical figure, to three catches")).toContain(
      "If it scatters like the typical figure in the setup,",
    );
    expect(told("two other bins and other fills")).toContain(
      "even if neighbouring fills are alike (correlation up to 0.5)",
    );
  });
});
