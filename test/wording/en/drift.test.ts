import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import type { DriftPower } from "../../../src/questions/drift/rates.ts";
import { type Drift, drift } from "../../../src/questions/drift.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { english } from "../../support/words.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02, shiftOfInterest: 0.05 };
const say = english().drift;
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");

const model = fitModel(
  inventedFills({ fills: 8, catches: 3, spread: 0.01, scatter: 0.01 }, 1),
  options,
);
const steady = drift(present(model.meters[0]), options, model.meters);

function withPower(power: Partial<DriftPower>): Drift {
  return { ...steady, power: { ...present(steady.power), ...power } };
}

describe("what would have shown by now, in words", () => {
  const shown = (power: Partial<DriftPower>) =>
    /would have shown by now in (.*)\.$/.exec(plain(say.sentence(withPower(power))))?.[1];

  it("is said in tenths, towards the side that is known", () => {
    expect(shown({ bound: "about", chance: 0.66 })).toBe("about 7 of 10 such logs");
    expect(shown({ bound: "at least", chance: 0.66 })).toBe("at least 6 of 10 such logs");
  });

  it("is neither never nor always", () => {
    expect(shown({ bound: "about", chance: 0.04 })).toBe("hardly any such log");
    expect(shown({ bound: "about", chance: 0.97 })).toBe("nearly every such log");
  });

  it("names the shift without digits that nobody gave it", () => {
    expect(plain(say.sentence(withPower({ shift: 0.05 })))).toContain("lasting shift of 5 % since");
    expect(plain(say.sentence(withPower({ shift: 0.025 })))).toContain("shift of 2.5 % since");
  });

  it("is left unsaid where nothing is known of it", () => {
    expect(plain(say.sentence({ ...steady, power: null }))).toBe(
      "Bin 1 (wheat): steady so far, over 8 fills.",
    );
  });
});
