import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { namedTests } from "../../../src/questions/outliers/named-tests.ts";
import { outliersOptions } from "../../../src/questions/outliers/options.ts";
import { outliers } from "../../../src/questions/outliers.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";
import { wordsBy } from "../../support/words.ts";

const model = (weights: readonly number[], scaleDivisionKg: number | null) =>
  fitModel(aFill(weights.map((weight) => [20, weight] as const)), { scaleDivisionKg });

function named(weights: readonly number[], divisionKg: number | null) {
  const meter = present(model(weights, divisionKg).meters[0]);
  return namedTests(present(meter.fills[0]), 0.95, divisionKg);
}

function said(
  weights: readonly number[],
  divisionKg: number | null,
  language: keyof typeof wordsBy,
): string {
  const { options, meters } = model(weights, divisionKg);
  const { today } = outliers(present(meters[0]), outliersOptions(options));
  return wordsBy[language].outliers.named(today);
}

const tie = "weights tie at the scale's step";

describe("Grubbs' test and generalized ESD", () => {
  it("are given where the other weights differ on the scale", () => {
    const { grubbs, generalizedEsd, missing } = named([6.02, 6.44, 5.95, 6.0, 6.03], 0.01);
    expect(present(grubbs).outlying).toBe(true);
    expect(present(generalizedEsd).outliers).toEqual([1]);
    expect(missing).toEqual({ grubbs: null, generalizedEsd: null });
    // 6.04 − 6.02 is one step of the scale, in floating point a little less.
    expect(named([6.02, 6.04, 6.1], 0.02).missing.grubbs).toBeNull();
  });

  it.each([
    [[6.0, 6.0, 6.1], 0.1],
    [[6.0, 6.0, 6.1], null],
    [[6.3, 6.3, 6.3, 6.3, 6.4], 0.1],
    [[6.0, 6.03, 6.2], 0.05],
    [[0.1 + 0.2, 0.3, 0.4], null],
  ])("are not given where all of %j but one are alike on a scale of %s kg", (weights, division) => {
    const { grubbs, missing } = named(weights, division);
    expect(grubbs).toBeNull();
    expect(missing.grubbs).toBe(tie);
  });

  it("give the first without the second where two stand beside weights that tie", () => {
    const { grubbs, generalizedEsd, missing } = named([6.0, 6.0, 6.0, 6.3, 6.5], 0.1);
    expect(grubbs).not.toBeNull();
    expect(generalizedEsd).toBeNull();
    expect(missing).toEqual({ grubbs: null, generalizedEsd: tie });
  });

  it("say why they are missing otherwise", () => {
    const few = { grubbs: "too few catches", generalizedEsd: "too few catches" };
    expect(named([6.0, 6.1], 0.01).missing).toEqual(few);
    expect(named([6.0, 6.0, 6.0, 6.0, 6.0], 0.01).missing).toEqual({
      grubbs: "catches agree exactly",
      generalizedEsd: "catches agree exactly",
    });
  });

  it("are explained in both languages", () => {
    const alike = [6.0, 6.0, 6.1];
    expect(said(alike, 0.1, "en")).toBe(
      "Grubbs' test is not given: all weights but one are the same to the step of the scale, and beside them the one would always seem to be an outlier.",
    );
    expect(said(alike, 0.1, "de")).toBe(
      "Der Grubbs-Test wird nicht angegeben: Alle Massen bis auf eine sind bis auf die Teilung der Waage gleich, und neben ihnen wirkte die eine immer wie ein Ausreißer.",
    );
    const two = [6.0, 6.0, 6.0, 6.3, 6.5];
    expect(said(two, 0.1, "en")).toContain("Generalized ESD is not given: all weights but two");
    expect(said(two, 0.1, "de")).toContain("wird nicht angegeben: Alle Massen bis auf zwei");
    expect(said([6.0, 6.1], 0.01, "en")).toBe("Grubbs' test needs three catches.");
    expect(said([6.0, 6.0, 6.0], 0.01, "de")).toBe(
      "Der Grubbs-Test braucht Proben, die sich unterscheiden.",
    );
  });

  // Without the rule Grubbs' test declares a clean catch in 61 % of fills of three, and 23 % of four, at a step of one
  // standard deviation.
  it.each([3, 4, 5, 6])(
    "declare about as many clean catches of %i as they say, however coarse the scale",
    (n) => {
      for (const coarseness of [0.25, 0.5, 1, 2, 4]) {
        const stream = randomStream(100 * n + 4 * coarseness);
        const step = 0.1 * coarseness;
        const fills = 1500;
        let declared = 0;
        for (let i = 0; i < fills; i++) {
          const at = 6 + stream.uniform() * step;
          const weights = Array.from({ length: n }, () => {
            const kg = at + 0.1 * stream.normal();
            return Math.round(kg / step) * step;
          });
          if (named(weights, step).grubbs?.outlying) declared++;
        }
        // Four standard errors above 6 %.
        expect(declared / fills).toBeLessThan(0.06 + 4 * Math.sqrt((0.06 * 0.94) / fills));
      }
    },
  );
});
