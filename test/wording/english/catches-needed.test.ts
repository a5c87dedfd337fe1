import { describe, expect, it } from "vitest";
import { english } from "../../../src/wording/english/english.ts";
import { aLog, needed, someTime, someTrial } from "../../support/planning-answers.ts";

const words = english();
const plain = (text: string | null) => (text ?? "").replaceAll(/[\u00a0\u202f]/g, " ");
const season = aLog(6, 2);

describe("enough catches, in words", () => {
  const say = words.catchesNeeded;

  it("stops where the tolerance is reached, and states the tolerance", () => {
    expect(plain(say.sentence(needed(season, {}, 0.06)))).toMatch(
      /^Bin 1 \(wheat\), fill 7: known within ± \d\.\d % after 2 catches, enough for the tolerance of ± 6\.0 %\.$/,
    );
  });

  it("asks for so many more with their chance", () => {
    expect(plain(say.sentence(needed(aLog(6, 1), {}, 0.025)))).toMatch(
      /after 1 catch; \d more catche?s? of 20 turns reach(es)? ± 2\.5 % with a chance of [89]\d %\.$/,
    );
  });

  it("says when the catches there may be are not enough", () => {
    expect(plain(say.sentence(needed(season, {}, 0.005)))).toMatch(
      /up to 6 catches of 20 turns are not likely enough to reach ± 0\.5 %\.$/,
    );
  });

  it("ends at the most catches with what was reached", () => {
    expect(plain(say.sentence(needed(aLog(6, 6), {}, 0.005)))).toMatch(
      /after 6 catches, wider than the tolerance of ± 0\.5 %\. Stop here and state what was reached/,
    );
  });

  it("plans before any catch, from an assumption it names", () => {
    const plan = needed(null, {}, 0.05);
    expect(plain(say.sentence(plan))).toMatch(
      /^Before any catch; \d catches of 20 turns reach ± 5\.0 %/,
    );
    expect(plain(say.basis(plan))).toBe(
      "Catch scatter 2.0 % for a catch of 20 turns: assumed, not measured.",
    );
  });

  it("tells the plans for time and trial", () => {
    const result = needed(season, { time: someTime, trial: someTrial });
    expect(plain(say.time(result))).toMatch(/^In 10 minutes \d catches of \d+ turns do best: ± \d/);
    expect(plain(say.trial(result))).toMatch(
      /^For a trial the budget goes furthest with \d+ fills of \d catches/,
    );
    expect(plain(say.trial(result))).toMatch(/take two turn levels: \d+ fills of [4-9] catches/);
    expect(say.time(needed(season))).toBeNull();
    expect(say.trial(needed(season))).toBeNull();
  });
});
