import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { type DriftPower, falseAlarms } from "../../../src/questions/drift/rates.ts";
import { type Drift, drift } from "../../../src/questions/drift.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { english, german } from "../../support/words.ts";

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
    for (const power of [
      { bound: "about", chance: 0.04 } as const,
      { bound: "at least", chance: 0.09 } as const,
    ])
      expect(plain(say.sentence(withPower(power)))).toMatch(
        /A lasting shift of 5 % since fill \d need not have shown by now\.$/,
      );
    expect(shown({ bound: "about", chance: 0.97 })).toBe("nearly every such log");
    expect(shown({ bound: "at least", chance: 0.97 })).toBe("at least 9 of 10 such logs");
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

describe("how often a steady meter is not let be, in words", () => {
  const footer = (result: Drift) => plain(present(say.falseAlarms(result)));
  const lent: Drift = {
    ...steady,
    falseAlarms: falseAlarms.lent,
    power: {
      ...present(steady.power),
      lentBy: { from: "other bins", meters: 2, sameProduct: false },
    },
  };

  it("is that of a meter by itself, or of one to which others lend", () => {
    expect(footer(steady)).toBe(
      "Asked after every fill, a steady meter is called moved or different once in 20 seasons of 12 fills; more often if fills drift slowly by themselves (one in 4 at a likeness of 0.6 from fill to fill). What would have shown by now rests on a typical spread of 1.7 % between this meter's fills.",
    );
    expect(footer(lent)).toBe(
      "Asked after every fill, a steady meter is called moved or different once in 20 seasons of 12 fills; more often if fills drift slowly by themselves (one in 4 at a likeness of 0.6 from fill to fill), or if this meter's fills differ more than what it is compared with (one in 12 at 2 times as much). What would have shown by now rests on a typical spread of 1.7 % between fills, told by this meter's own and by 2 other bins; it is worked out as if its own spoke alone, which is cautious.",
    );
  });

  it("is said in German as well", () => {
    expect(plain(present(german().drift.falseAlarms(lent)))).toMatch(
      /in einer von 12 beim 2-Fachen\)\. .* nach denen dieses Dosierers und nach 2 anderen Tanks;/,
    );
  });

  it("is said of a whole log once", () => {
    expect(plain(say.falseAlarmsTogether({ meters: 3, fills: 12, season: 0.142625 }))).toBe(
      "Whether a meter has moved is asked of each of the 3 by itself: where all of them are steady, one or another is called moved or different once in 7 seasons of 12 fills. Of reports on 3 bins after 6 fills in which nothing is wrong, at most one in 10 asks to look first, calls a meter moved or names something serious. It is more where a weighing is now and then far off.",
    );
  });
});
