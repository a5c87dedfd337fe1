import { describe, expect, it } from "vitest";
import { aLog, skipped } from "../../support/planning-answers.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { english } from "../../support/words.ts";

const words = english();
const plain = (text: string | null) => (text ?? "").replaceAll(/[\u00a0\u202f]/g, " ");
const season = aLog(6, 2);

describe("skipping, in words", () => {
  const say = words.skipping;

  it("gives the band, the chance with its bound, and the mean error", () => {
    expect(plain(say.sentence(skipped(season)))).toMatch(
      /^Bin 1 \(wheat\), left at the mean of its fills, 0\.\d+ kg\/turn: the rate error of the next fill is expected within −\d\.\d % to \+\d\.\d % \(95 % band\)\. The chance of more than ± 3\.0 % is \d+ % at most \(with 90 % confidence, for independent fills\), reckoned \d+ %\. On average the rate is off by \d\.\d %\.$/,
    );
  });

  it("refuses a chance after two fills and everything after one", () => {
    expect(say.sentence(skipped(aLog(1, 2)))).toContain("a chance or a cost cannot be given yet");
    expect(say.sentence(skipped(aLog(0, 2)))).toContain("cannot be told from these fills");
    expect(say.practice(skipped(aLog(0, 2)))).toContain("cannot check it");
  });

  it("names what the drive is left at", () => {
    const at = (assumed: Parameters<typeof skipped>[1]) => say.sentence(skipped(season, assumed));
    expect(plain(at({ assumed: { source: "book value", kgPerTurn: 0.3 } }))).toContain(
      "the book value, 0.3 kg/turn",
    );
    expect(at({ assumed: { source: "last fill" } })).toContain("the previous fill's value");
    expect(at({ assumed: { source: "fill", fill: 2 } })).toContain("the value of fill 2");
  });

  it("leads with the upper bound of fills in a row, and allows nothing", () => {
    expect(say.noPermission).toContain("is no permission");
    const inARow = (given: Parameters<typeof skipped>[1], tolerance?: number) =>
      plain(say.between(skipped(season, given, tolerance)));
    expect(inARow({})).toMatch(
      /^Not even one skipped fill keeps the chance of being off by more than ± 3\.0 % within 20 %: calibrate every fill\.$/,
    );
    expect(inARow({ acceptedRisk: 0.5 })).toMatch(
      /^Skipped in a row: the chance of any fill being off by more than ± 3\.0 % stays within 50 % for no fill at all at the upper bound of the risk \(90 %, independent fills\); reckoned, for (a single fill|up to \d fills)\.$/,
    );
    expect(inARow({ acceptedRisk: 0.9 })).toMatch(
      / at the upper bound .*; reckoned, for up to \d+ fills\.$/,
    );
    expect(inARow({}, 0.5)).toMatch(
      / within 20 % for 50 fills and more at the upper bound .* fills\)\.$/,
    );
    expect(say.between(skipped(aLog(0, 2)))).toBeNull();
  });

  it("says that so few fills know no smaller chance, and have none skipped", () => {
    const few = skipped(aLog(4, 2), {}, 0.3);
    expect(few.leastChance).toBe(0.05);
    expect(plain(say.sentence(few))).toContain(
      "; one below 5 % cannot be known from so few fills. On average",
    );
    expect(plain(say.between(few))).toBe(
      "So few fills cannot tell whether a skipped one keeps within ± 30.0 %: calibrate every fill.",
    );
    expect(plain(say.chart.description(few))).toContain("± 30.0 %: 5 %, less cannot be known");
    expect(plain(say.assumptions(few))).toContain(
      "No chance below 5 % is stated: that takes six fills of one level or more.",
    );
    expect(say.assumptions(skipped(season))).not.toContain("No chance below");
    expect(plain(say.chanceOf(0.05, 0.05))).toBe("5 %, less cannot be known");
    expect(plain(say.chanceOf(0.05, null))).toBe("5 %");
  });

  it("names both mean errors where catch scatter is most of the spread", () => {
    const calm = inventedFills({ fills: 6, catches: 3, spread: 0.0005, scatter: 0.03 }, 7);
    expect(plain(say.sentence(skipped(calm)))).toMatch(
      /On average the rate is off by (\d\.\d+) % with catch scatter left out of the differences between fills, by (\d\.\d+) % with it counted\.$/,
    );
    expect(say.assumptions(skipped(calm))).toContain("the average error leaves it out");
  });

  it("says how seldom the bounds hold where neighbouring fills are alike", () => {
    expect(plain(say.assumptions(skipped(season)))).toContain(
      "(correlation 0.5) simulated ones held only 87 % of the time.",
    );
  });

  it("calls the common-practice figure what it is", () => {
    expect(plain(say.practice(skipped(season)))).toMatch(
      /^Common practice puts the error of skipping at 10 % to 12 %; no source was found for it\. This meter's band ends at \d\.\d %: smaller\.$/,
    );
  });
});
