import { describe, expect, it } from "vitest";
import { cautionSentence } from "../../../src/report/sections/cautions.ts";
import { caution } from "../../../src/results/caution.ts";
import { divisionStep } from "../../../src/wording/sayings/division-step.ts";
import { english, german } from "../../support/words.ts";

const inKg = { divisionKg: 0.05, step: 0.05, unit: "kg" };
const inLb = { divisionKg: 0.05 * 0.45359237, step: 0.05, unit: "lb" };

describe("a step that weights end in", () => {
  it("is said in metric units where it was written in them, else as it was written", () => {
    expect(divisionStep(inKg, english().format)).toBe("50\u00a0g");
    expect(divisionStep(inKg, english("us").format)).toBe("0.05\u00a0kg");
    expect(divisionStep(inLb, english("us").format)).toBe("0.05\u00a0lb");
    expect(divisionStep(inLb, german().format)).toBe("0,05\u00a0lb");
    expect(divisionStep({ divisionKg: 0.2, step: 200, unit: "g" }, german().format)).toBe(
      "0,2\u00a0kg",
    );
  });

  it("is taken for the scale's division, and it says so", () => {
    const said = (different: number, words = english()) =>
      cautionSentence(
        caution("division-read-from-digits", {}, { ...inKg, weights: 6, different }),
        words,
      );
    expect(said(5)).toContain(
      "Your weights end in steps of 50\u00a0g; taken as the scale's division.",
    );
    expect(said(1)).toContain("Your weights are all the same");
    expect(said(5, german())).toContain("Ihre Gewichte gehen in Schritten von 50\u00a0g");
    expect(said(1, german())).toContain("Ihre Gewichte sind alle gleich");
  });
});
