import { describe, expect, it } from "vitest";
import type { ReEstimate } from "../../../src/data/spreads/schema.ts";
import { englishIn, numbersIn } from "../../support/bilingual.ts";
import { aReEstimate, aSpreadLibrary } from "../../support/spread-libraries.ts";
import { english, german } from "../../support/words.ts";

const constants: readonly ReEstimate[] = [
  aReEstimate,
  { ...aReEstimate, name: "between_meters_scatter", to: 0.45, differs: true },
  { ...aReEstimate, name: "between_fills_scatter", declared: 0.2, estimate: 0, from: 0 },
  {
    ...aReEstimate,
    name: "typical_spread",
    declared: 0.03,
    estimate: 0.021,
    from: 0.018,
    to: 0.025,
    differs: true,
  },
  {
    ...aReEstimate,
    name: "typical_scatter",
    declared: 0.015,
    estimate: 0.014,
    from: 0.011,
    to: 0.018,
  },
];
const said = (one: ReEstimate) =>
  english()
    .spreads.constant(one, 0.95)
    .replaceAll(/[^\S\n]/g, " ");

describe("a constant estimated anew", () => {
  it.each(constants.map((one) => [one.name, one] as const))(
    "%s is told in German with the numbers of English",
    (_, one) => {
      const inGerman = german().spreads.constant(one, 0.95);
      expect(englishIn(inGerman)).toEqual([]);
      expect(numbersIn(inGerman, "de")).toEqual(numbersIn(said(one), "en"));
      expect(inGerman).toMatch(/^[A-Z].*\.$/);
    },
  );

  it("says by how much, whether what is declared fits, and that none is no proof of likeness", () => {
    const [first, second, third, fourth] = constants.map(said);
    expect(first).toMatch(
      /95 in 100 within a factor 2\.3 of the middle .* nothing here speaks against it\.$/,
    );
    expect(second).toMatch(
      /The declared 0\.5, a factor 2\.7, lies outside and does not fit these meters;/,
    );
    expect(third).toMatch(
      /no more unlike than chance makes them, which does not say that they are alike/,
    );
    expect(fourth).toMatch(
      /typical meter: 2\.1 % \(95 % interval 1\.8 % to 2\.5 %.*The declared 3\.0 % lies outside/,
    );
  });

  it("is kept beside its figures", () => {
    const { estimates } = english().spreads.told({
      ...aSpreadLibrary,
      estimates: { level: 0.95, constants },
    });
    expect(estimates?.constants.map((one) => one.said)).toEqual(
      constants.map((one) => english().spreads.constant(one, 0.95)),
    );
  });
});
