import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { fitModel } from "../../../src/model/model.ts";
import { acrossFillsAnswer } from "../../../src/questions/across-fills.ts";
import { english } from "../../../src/wording/english/english.ts";
import { aLog } from "../../support/planning-answers.ts";
import { present } from "../../support/reference.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const say = english().acrossFills;
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");

function across(catches: readonly Catch[]) {
  return acrossFillsAnswer(present(fitModel(catches, options).meters[0]), options);
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

  it("give the REML error in the unit of its mean", () => {
    expect(plain(say.reml(across(aLog(5, 3))))).toMatch(
      /mean 0\.\d+ kg\/turn, adjusted standard error 0\.\d+ kg\/turn on /,
    );
  });
});
