import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { fitModel } from "../../../src/model/model.ts";
import { acrossFills } from "../../../src/questions/across-fills.ts";
import { aFill } from "../../support/catches.ts";
import { aLog } from "../../support/planning-answers.ts";
import { present } from "../../support/reference.ts";
import { english } from "../../support/words.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const say = english().acrossFills;
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");

function across(catches: readonly Catch[]) {
  return acrossFills(present(fitModel(catches, options).meters[0]), options);
}

describe("fills together, in words", () => {
  it("give the band for the next fill in figures and in percent", () => {
    expect(plain(say.sentence(across(aLog(5, 3))))).toMatch(
      /^Bin 1 \(wheat\): 0\.\d+ kg\/turn on average over 6 fills; the next fill should deliver 0\.\d+ to 0\.\d+ kg\/turn \(95 % band\), which is ± \d\.\d %\.$/,
    );
  });

  it("speak of one fill in the singular", () => {
    const one = across(aLog(0, 3));
    expect(plain(say.fills.description(one))).toMatch(/^1 fill in order/);
    expect(plain(say.scatter(one))).toContain("2 degrees of freedom from 1 fill)");
  });

  it("name what is left out of them, and say what they would be with it", () => {
    const season = [6.0, 6.2, 5.9, 6.1].flatMap((mass, i) =>
      aFill(
        [mass, i === 2 ? 2 * mass : mass * 1.01, mass * 0.99].map((kg) => [20, kg] as const),
        { fill: i + 1 },
      ),
    );
    // Without the doubled catch fill 3 gives 5.8705 kg in 20 turns, with it 7.8470; the mean of the four gains a quarter.
    expect(plain(say.leftOut(across(season)) ?? "")).toMatch(
      /^Left out of these figures, because no chance explains it: fill 3 catch 2\. With it the mean over fills would be 0\.33 kg\/turn, and the next fill would be known to ± [\d.]+ %\.$/,
    );
    expect(say.leftOut(across(aLog(5, 3)))).toBeNull();
  });

  it("give the REML error in the unit of its mean", () => {
    expect(plain(say.reml(across(aLog(5, 3))))).toMatch(
      /mean 0\.\d+ kg\/turn, adjusted standard error 0\.\d+ kg\/turn on /,
    );
  });
});
