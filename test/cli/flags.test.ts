import { describe, expect, it } from "vitest";
import { analysisGiven, languageIn, trialGiven } from "../../src/cli/flags.ts";

describe("what flags say of an analysis", () => {
  it("is nothing where none is given: the rest stays with setup and default", () => {
    expect(analysisGiven({})).toEqual({ planning: {}, comparison: {} });
  });

  it("is each option under its own name", () => {
    const values = { level: 0.9, weighting: "constant", turns: 30, reference: "pea", margin: 0.05 };
    expect(analysisGiven(values)).toEqual({
      level: 0.9,
      varianceLaw: "constant",
      planning: { turnsPerCatch: 30 },
      comparison: { reference: "pea", equivalenceMargin: 0.05 },
    });
  });

  it("is whether to compare only where one of both was said", () => {
    expect(analysisGiven({ compare: true }).comparison).toEqual({ when: "always" });
    expect(analysisGiven({ compare: false }).comparison).toEqual({ when: "never" });
  });

  it("is no budget without the flag that gives it, whatever the flags beside it have", () => {
    const beside = { minutesPerCatch: 1.5, turnsPerMinute: 30, longestTurns: 60, costPerFill: 30 };
    expect(analysisGiven(beside).planning).toEqual({});
    expect(analysisGiven({ ...beside, minutes: 10 }).planning?.time).toMatchObject({
      minutes: 10,
      longestTurns: 60,
    });
  });
});

describe("what flags say of how products are judged", () => {
  it("is the same for a report and for a plan", () => {
    const values = { reference: "pea", spreadLaw: "common", margin: 0.03 };
    const judged = { reference: "pea", spread: "common", equivalenceMargin: 0.03 };
    expect(analysisGiven(values).comparison).toEqual(judged);
    expect(trialGiven(values)).toEqual(judged);
  });
});

describe("what flags say of a trial", () => {
  it("is whether contrasts are made within blocks", () => {
    expect(trialGiven({ blocks: true, catches: 3 })).toEqual({
      analysis: "blocks",
      catchesPerLevel: 3,
    });
    expect(trialGiven({ blocks: false })).toEqual({ analysis: "fills" });
  });
});

describe("the language asked for", () => {
  it.each([
    [["report", "--language", "de", "--help"], "de"],
    [["--help", "--language=de"], "de"],
    [["plan", "--language", "de", "--language", "en"], "en"],
    [["report", "catches.csv"], "en"],
    [["report", "--language", "fr"], "en"],
    [["report", "--language"], "en"],
    [["report", "de"], "en"],
  ])("of %j is %s", (args, language) => {
    expect(languageIn(args)).toBe(language);
  });
});
