import { describe, expect, test } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import type { Catch } from "../../../src/data/types.ts";
import type { Outliers } from "../../../src/questions/outliers.ts";
import { cautionList } from "../../../src/report/sections/cautions.ts";
import { fillOf, outliersIn, quietFills } from "../../support/outliers.ts";
import { present } from "../../support/reference.ts";
import { english } from "../../support/words.ts";

const words = english("metric");
const say = words.outliers;

/** Today's fill after three quiet ones; gross and tare written, the bag weighs 0.42 kg. */
function today(masses: readonly number[], given: Partial<Catch> = {}): Outliers {
  return outliersIn(...quietFills, fillOf(4, masses, given));
}

function answersAbout(catches: readonly Catch[]) {
  const log = { source: "catches.csv", catches, massUnit: "kg", cautions: [] } as const;
  return present(analyse(log).meters[0]).delivery;
}

function cautionsOf(result: Outliers): readonly string[] {
  return cautionList(result.cautions, words).items.map(({ text }) => spaced(String(text)));
}

/** The same with ordinary spaces where the words hold a number and its sign together. */
function spaced(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, " ");
}

describe("the sentence about the newest fill", () => {
  test.each([
    [today([6.02, 6.04, 5.95, 6.0]), "none of 4 catches stands out."],
    [
      today([6.02, 6.44, 5.95, 6.0]),
      "one of 4 catches stands out. Nothing was changed or dropped.",
    ],
    [
      today([6.02, 6.52, 5.95, 6.5, 6.0, 5.97]),
      "2 of 6 catches stand out. Nothing was changed or dropped.",
    ],
    [today([6.02, 6.04]), "its two catches agree."],
    [
      today([6.02, 6.5]),
      "its two catches differ more than this meter's scatter allows. Nobody can say which one is wrong: take a third.",
    ],
    [
      today([6.02, 6.5, 8.9]),
      "its catches lie 40.3 % apart. One of them is wrong: catch again. Nothing was changed or dropped.",
    ],
  ])("%#", (result, sentence) => {
    expect(spaced(say.sentence(result))).toBe(`Bin 1 (wheat), fill 4: ${sentence}`);
  });

  test("says that three catches alone are too few, and how far apart they lie", () => {
    expect(spaced(say.sentence(outliersIn(fillOf(1, [6.0, 6.12, 6.06]))))).toBe(
      "Bin 1 (wheat), fill 1: 3 catches are too few to judge one of them; they lie 2.0 % apart.",
    );
    expect(spaced(say.sentence(outliersIn(fillOf(1, [6.0]))))).toContain(
      "one catch cannot be judged.",
    );
  });
});

describe("a suspect", () => {
  test("comes with what fits, how much better than chance, and the delivery without it", () => {
    const sentence = spaced(say.suspect(present(today([6.02, 6.44, 5.95, 6.0]).suspects[0])));
    expect(sentence).toMatch(
      /^Fill 4, catch 2 \(row 3\) stands \+7\.5 % off \(p < 0\.001, among the catches of its fill\): fits /,
    );
    expect(sentence).toContain(
      "about a bag's mass (0.45 kg) too much on the scale, as a tare left in",
    );
    expect(sentence).toContain("times better than chance");
    expect(sentence).toMatch(/Without it the fill delivers 0\.2995 kg\/turn \(−1\.8 %\)\.$/);
  });

  test("that nothing explains is said to be unexplained", () => {
    const sentence = spaced(say.suspect(present(today([6.02, 8.1, 5.95, 6.0]).suspects[0])));
    expect(sentence).toContain("no explanation fits");
    expect(sentence).not.toContain("better than chance");
  });

  test("is not counted in millions of millions", () => {
    const sentence = spaced(say.suspect(present(today([6.02, 11.96, 5.95, 6.0]).suspects[0])));
    expect(sentence).toContain(
      "a bag not emptied before (6.0 kg of the catch before still in it), which fits more than a million times better than chance",
    );
  });
});

describe("cautions about catches", () => {
  test("a suspect: what it would fit, that nothing was changed, whom to ask", () => {
    const [text] = cautionsOf(today([6.02, 6.44, 5.95, 6.0]));
    expect(text).toMatch(/^This catch stands \+7\.5 % off what the others predict/);
    expect(text).toContain("about a bag's mass too much on the scale, as a tare left in");
    expect(text).toContain(
      "Nothing was changed or dropped; without it the delivery is 0.2995 kg/turn",
    );
  });

  test("a pair: never which one", () => {
    const [text] = cautionsOf(today([6.02, 6.5]));
    expect(text).toMatch(/^These two catches differ by 7\.7 %/);
    expect(text).toContain("Nobody can say which one is wrong: take a third.");
  });

  test("a flagged one with what was written beside it, in every column the person has", () => {
    const beside = { note: "bag slipped", operator: "A", extra: { lot: "7", remark: "" } };
    const rows = fillOf(4, [6.02, 6.44, 5.95, 6.0]).map((row) =>
      row.catch === 2 ? { ...row, ...beside } : row,
    );
    const result = outliersIn(...quietFills, rows);
    const written = "Written beside it: “bag slipped”; operator A; lot 7.";
    expect(cautionsOf(result)[0]?.endsWith(` ${written}`)).toBe(true);
    expect(spaced(say.suspect(present(result.suspects[0])))).toContain(written);
  });

  test("three that disagree: which two, what each pair gives, and no ± until one is caught again", () => {
    const catches = fillOf(1, [6.0, 6.06, 9.6]);
    const { cautions } = answersAbout(catches);
    const [text] = cautionList(cautions, words).items.map((one) => spaced(String(one.text)));
    // (9.6 − 6.0)/7.22 = 49.9 %; 12.06/40, 15.6/40 and 15.66/40 kg/turn.
    expect(text).toBe(
      "Catches 1 and 3 lie 49.9 % apart: one of these is wrong; catch again. Until then no ± is given. Catches 1 and 2 give 0.3015 kg/turn, 1 and 3 give 0.3900 kg/turn, 2 and 3 give 0.3915 kg/turn.",
    );
  });

  test("one of an earlier fill that is left out of every figure: by how much, what it would do, what to do", () => {
    const bad = fillOf(3, [5.88, 11.6, 5.9, 5.84], { note: "bag full?" });
    const [text] = cautionsOf(
      outliersIn(...quietFills.slice(0, 2), bad, fillOf(4, [6.02, 6.04, 5.95, 6.0])),
    );
    expect(text).toMatch(/^This catch weighed 2 times what its fellows predict, beyond doubt/);
    expect(text).toMatch(
      /With it the next fill would be known to ± [\d.]+ % instead of ± 8\.9 %\. Exclude it with a reason, or say in the column checked what was looked at; then it counts\. Written beside it: “bag full\?”\.$/,
    );
  });

  test("too few: what would show", () => {
    expect(cautionsOf(outliersIn(fillOf(1, [6.0, 6.12, 6.06])))).toEqual([
      "3 catches and no earlier fill are too few to judge one of them; only an error above about 15 % would show. They lie 2.0 % apart.",
    ]);
  });

  test("an earlier fill looked at alone: how many show one by chance", () => {
    const more = [5, 6, 7, 8].map((fill) => fillOf(fill, [6.04, 5.96, 6.02, 5.91]));
    const slight = fillOf(2, [6.21, 6.46, 6.25, 6.18]);
    const result = outliersIn(present(quietFills[0]), slight, present(quietFills[2]), ...more);
    const [text] = cautionsOf(result);
    expect(text).toContain("but only when its fill is looked at alone");
    expect(text).toContain("among so many fills 0.35 show one by chance");
    expect(spaced(say.suspect(present(result.suspects[0])))).toContain(
      "only when its fill is looked at alone",
    );
  });

  test("more than can be told: the fill as a whole", () => {
    expect(cautionsOf(today([6.02, 6.6, 7.4])).join(" ")).toContain(
      "More catches of this fill stand out than can be told apart among 3.",
    );
  });
});

test("a false flag is not denied, and when the rate holds is said where it is said", () => {
  const result = today([6.02, 6.44, 5.95, 6.0]);
  expect(spaced(say.explanationNote)).toContain(
    "in up to 6 % of false flags, and in up to 11 % of",
  );
  const family = spaced(say.family(result));
  expect(family).toContain("a clean newest fill raises a flag 5 % of the time (1 % one that asks");
  expect(family).toContain("holds for normal errors with scatter in proportion to turns");
  expect(family).toContain(
    "14 % to 18 % of the time, and 2 % to 7 % where scatter follows turns squared",
  );
});

test("catches left out are told with the reason, and what that did", () => {
  const rows = fillOf(4, [6.02, 6.44, 5.95, 6.0]).map((row) =>
    row.catch === 2 ? { ...row, leftOut: "bag not tared" } : row,
  );
  const [left] = outliersIn(...quietFills, rows).leftOut;
  expect(spaced(say.leftOut(present(left)))).toMatch(
    /^Fill 4, left out as asked: catch 2 \(row 3: bag not tared\)\. With it the delivery would be 0\.3051 kg\/turn; leaving out made it 0\.2995 kg\/turn \(−1\.8 %\)\.$/,
  );
});

test("the named tests are told with statistic, limit and p", () => {
  const result = today([6.02, 6.44, 5.95, 6.0, 6.03]);
  expect(spaced(say.named(result.today))).toMatch(
    /^Grubbs' test on the catches' deliveries, own scatter only: G = 1\.7\d* against 1\.72, p .*Generalized ESD, at most two: 1 declared\.$/,
  );
});
