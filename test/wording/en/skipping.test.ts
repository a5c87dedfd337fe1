import { describe, expect, it } from "vitest";
import { aLog, skipped } from "../../support/planning-answers.ts";
import { present } from "../../support/reference.ts";
import { english } from "../../support/words.ts";

const words = english();
const plain = (text: string | null) => (text ?? "").replaceAll(/[\u00a0\u202f]/g, " ");
const season = aLog(6, 2);

describe("skipping, in words", () => {
  const say = words.skipping;

  it("gives the band, the chance with its bound, and the mean error", () => {
    expect(plain(say.sentence(skipped(season)))).toMatch(
      /^Bin 1 \(wheat\), left at the mean of its fills, 0\.\d+ kg\/turn: the rate error of the next fill is expected within −\d\.\d % to \+\d\.\d % \(95 % band\)\. The chance of more than ± 3\.0 % is at most \d+ % \(90 % confidence; \d+ % by the estimate\); on average the rate is off by \d\.\d %\.$/,
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

  const betweenOf = (most: { readonly mostFills: number; readonly mostFillsByBound: number }) => {
    const answer = skipped(season);
    const risk = present(answer.betweenCalibrations);
    return plain(say.between({ ...answer, betweenCalibrations: { ...risk, ...most } }));
  };

  it("counts the fills that can be skipped in a row", () => {
    expect(say.between(skipped(season))).toMatch(/^Not even one fill can be skipped/);
    expect(say.between(skipped(season, { acceptedRisk: 0.9 }))).toMatch(
      /^Between calibrations up to \d+ fills? in a row/,
    );
    expect(say.between(skipped(season, {}, 0.5))).toMatch(/50 fills and more/);
  });

  it("leads with the upper bound and gives no permission", () => {
    const between = betweenOf({ mostFills: 4, mostFillsByBound: 2 });
    expect(between).toMatch(
      /^Between calibrations up to 2 fills .* by the upper bound of the risk/,
    );
    expect(between).toMatch(/By the estimate alone it would be up to 4 fills\.$/);
    expect(betweenOf({ mostFills: 4, mostFillsByBound: 0 })).toMatch(
      /^By the upper bound of the risk not even one fill .*: calibrate every fill\. By the estimate/,
    );
    expect(say.noPermission).toContain("is no permission");
  });

  it("has nothing to count where a chance is not known", () => {
    expect(say.between(skipped(aLog(0, 2)))).toBeNull();
  });

  it("calls the common-practice figure what it is", () => {
    expect(plain(say.practice(skipped(season)))).toMatch(
      /^Common practice puts the error of skipping at 10 % to 12 %; no source was found for it\. This meter's band ends at \d\.\d %: smaller\.$/,
    );
  });
});
