import { describe, expect, it } from "vitest";
import { aLog, byMoney, needed, someTime, someTrial } from "../../support/planning-answers.ts";
import { present } from "../../support/reference.ts";
import { english } from "../../support/words.ts";

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

  it("asks for so many more with their chance and what to expect", () => {
    const result = needed(aLog(6, 1), {}, 0.025);
    expect(plain(say.sentence(result))).toMatch(
      /^Bin 1 \(wheat\), fill 7: known within ± \d\.\d % after 1 catch; \d more catch(es)? of 20 turns: within ± 2\.5 % with a chance of [89]\d % \(typically ± \d\.\d %\)\.$/,
    );
    const { further, chance, typically } = present(result.needed);
    const said = plain(say.sentence(result));
    expect(said).toContain(`${further} more catch`);
    expect(said).toContain(`${(chance * 100).toFixed(0)} %`);
    expect(said).toContain(`± ${(typically * 100).toFixed(1)} %`);
  });

  it("names no number where catches alone cannot give one", () => {
    expect(plain(say.sentence(needed(aLog(0, 1))))).toBe(
      "Bin 1 (wheat), fill 1: 1 catch says nothing of its error.",
    );
    expect(plain(say.sentence(needed(aLog(0, 2))))).toBe(
      "Bin 1 (wheat), fill 1: two catches cannot say how much they scatter. Take a third, then ask again.",
    );
    const waiting = { ...needed(aLog(0, 2)), standing: "waits" as const };
    expect(plain(say.sentence(waiting))).toContain("must be explained or repeated first");
  });

  it("says when no number within the limits is likely to do, and what to state then", () => {
    const given = { heaviestCatchKg: 7 };
    expect(plain(say.sentence(needed(season, given, 0.003)))).toMatch(
      /after 2 catches; ± 0\.3 % is not likely to be reached with 8 catches of at most 7 kg\. State what was reached\.$/,
    );
    expect(plain(say.sentence(needed(null, { assumedKgPerTurn: 0.3, ...given }, 0.003)))).toBe(
      "Before any catch: 8 catches of at most 7 kg are not likely enough to reach ± 0.3 %.",
    );
  });

  it("plans before any catch, from an assumption it names", () => {
    const plan = needed(null, {}, 0.05);
    expect(plain(say.sentence(plan))).toMatch(
      /^Before any catch: \d catches of 20 turns: within ± 5\.0 % with a chance of \d\d % \(typically ± \d\.\d %\)\.$/,
    );
    expect(plain(say.basis(plan))).toBe(
      "Catch scatter 1.5 % for a catch of 20 turns: assumed, not measured.",
    );
    expect(say.basis(needed(aLog(0, 1)))).toBeNull();
  });

  it("says what one catch more buys, and nothing where none is planned", () => {
    expect(plain(say.buys(needed(aLog(6, 1), {}, 0.025)))).toMatch(
      /^One catch more would typically take the figure from ± \d\.\d % to ± \d\.\d %\.$/,
    );
    // Reading the scale, which more catches do not average out, is nearly all that is left.
    const still = aLog(6, 4).map((row) => ({ ...row, netKg: 6, turns: 20 }));
    expect(plain(say.buys(needed(still, {}, 0.025)))).toMatch(
      /^One catch more would change little/,
    );
    for (const none of [needed(aLog(0, 2)), needed(null), needed(season, {}, 0.0001)])
      expect(say.buys(none)).toBeNull();
  });

  it("states the rule, and what a catch is taken to weigh at most", () => {
    expect(plain(say.rule(needed(season)))).toBe(
      "One catch at a time: at least 1 catch, then stop as soon as the interval is within ± 3.0 %, at 8 catches at the latest. Then state the tolerance, or the interval where it is wider.",
    );
    expect(plain(say.rule(needed(aLog(0, 3))))).toContain("at least 3 catches");
    const short = (heaviestCatchKg: number | null) =>
      plain(say.limits(needed(aLog(6, 1), { heaviestCatchKg }, 0.025)));
    expect(short(null)).toBe(
      "A catch is taken to weigh 20 kg at most (assumed; give the capacity of bag or scale in the setup).",
    );
    expect(short(12)).toBe("A catch is taken to weigh 12 kg at most (from the setup).");
    expect(say.limits(needed(season, {}, 0.06))).toBeNull();
  });

  it("names what a step of the drive uses up, and the turns a scale needs", () => {
    expect(plain(say.step(needed(season, { settingError: -0.012 })))).toBe(
      "The nearest step of the drive is off by −1.2 % by itself, so the delivery has to be known within less than ± 3.0 %.",
    );
    expect(say.step(needed(season))).toBeNull();
    expect(say.scale(needed(season))).toBeNull();
    expect(plain(say.scale(needed(season, {}, 0.0005)))).toMatch(
      /^Below \d+ turns a catch, reading the scale alone is wider than the tolerance/,
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

describe("catches that pay, in words", () => {
  const say = words.catchesNeeded;
  const two = aLog(6, 2);

  it("stop where another costs more than it saves, and go on where it saves more", () => {
    expect(plain(say.sentence(needed(two, byMoney(1))))).toMatch(
      /^Bin 1 \(wheat\), fill 7: known within ± \d\.\d % after 2 catches\. Another catch costs 4\.00 CAD and saves about 0\.\d\d CAD: enough\.$/,
    );
    expect(plain(say.sentence(needed(two, byMoney(100))))).toMatch(
      /^Bin 1 \(wheat\), fill 7: known within ± \d\.\d % after 2 catches; \d more catch(es)? of 20 turns: typically ± \d\.\d %\.$/,
    );
    expect(plain(say.rule(needed(two, byMoney())))).toBe(
      "One catch at a time: stop as soon as another would cost more than it saves, at 8 catches at the latest. Then state ± 3.0 %, or the interval where it is wider.",
    );
  });

  it("are told beside a tolerance that somebody gave, and not while something is to be looked at", () => {
    const typed = { ...byMoney(), toleranceFrom: "setup" } as const;
    const worth = (result: ReturnType<typeof needed>) => plain(say.worth(result));
    expect(worth(needed(two, typed))).toMatch(
      /^One more catch, 4\.00 CAD, is worth about \d+\.\d\d CAD\.$/,
    );
    expect(worth(needed(two, byMoney(1)))).toMatch(
      /^Another catch costs 4\.00 CAD and saves about 0\.\d\d CAD: it does not pay\.$/,
    );
    expect(worth(needed(two, byMoney(100)))).toMatch(/: it pays\.$/);
    expect(say.worth(needed(two, typed), "look-first")).toBeNull();
    expect(say.worth(needed(two))).toBeNull();
    expect(plain(say.sentence(needed(two, byMoney(1)), "look-first"))).not.toContain("CAD");
  });

  it("are not called enough where more are asked for by something else", () => {
    for (const result of [needed(two, byMoney(1)), needed(two, {}, 0.06)]) {
      expect(result.standing).toBe("enough");
      expect(plain(say.sentence(result, "catch-more"))).toMatch(
        /known within ± \d\.\d % after 2 catches; more are asked for, as said above\.$/,
      );
      expect(say.worth(result, "catch-more")).toBeNull();
    }
  });

  it("leave the fill to come uncaught where that costs least, and say the count all the same", () => {
    const next = (given: object, tolerance?: number) =>
      needed(aLog(8, 0), { fill: "next", ...given }, tolerance);
    const spared = next(byMoney(0.5));
    expect(plain(say.sentence(spared))).toMatch(
      /^Bin 1 \(wheat\), the next fill: need not be caught; else 1 catch of 20 turns: typically ± \d\.\d %\.$/,
    );
    expect(plain(say.skip(spared))).toMatch(
      /^The next fill need not be caught: left at 0\.\d+ kg\/turn its error costs [\d.]+ CAD on average, 1 catch with the error they leave [\d.]+ CAD\.$/,
    );
    // A decision about what is in the bin comes first.
    expect(say.sentence(spared, "catch-more")).not.toContain("need not");
    expect(plain(say.skip(next(byMoney(400))))).toMatch(
      /^The next fill is worth catching: left at /,
    );
    expect(say.skip(spared, "look-first")).toBeNull();
    const typed = { ...byMoney(0.5), toleranceFrom: "option" };
    expect(plain(say.skip(next(typed)))).toMatch(
      /^Your tolerance asks for the next fill to be caught: left at 0\.\d+ kg\/turn it is off by more than ± 3\.0 % with a chance of [\d.]+ %; 5 % would be borne\. In money: left at /,
    );
    expect(plain(say.skip(next(typed, 0.2)))).toMatch(
      /^The next fill need not be caught: left at 0\.\d+ kg\/turn it is off by more than ± 20\.0 % with a chance of [<\d. ]+ %\. In money: /,
    );
    expect(
      plain(say.skip(needed(aLog(5, 0), { fill: "next", ...byMoney(), toleranceFrom: "option" }))),
    ).toMatch(
      /^Your tolerance asks for the next fill to be caught: 5 fills do not tell surely enough how often one is off by more than ± 3\.0 %\. In money: /,
    );
    // Nobody asked what skipping costs, and it is not advised.
    expect(say.skip(next({}))).toBeNull();
  });
});
