import { describe, expect, it } from "vitest";
import { english } from "../../support/words.ts";

const words = english();
const plain = (text: string | null) => (text ?? "").replaceAll(/[\u00a0\u202f]/g, " ");

describe("cautions about planning, in words", () => {
  const { cautions } = words;
  const where = { bin: "1", product: "wheat", fill: null, catches: [] };

  it("two fills cannot price a skip", () => {
    expect(cautions["skip-not-priced"]({ fills: 2, df: 1 }, where)).toMatch(
      /^Two fills cannot price a skip/,
    );
    expect(cautions["skip-not-priced"]({ fills: 1, df: 0 }, where)).toMatch(
      /^One fill cannot price a skip/,
    );
  });

  it("stopping on the width is said", () => {
    expect(plain(cautions["stopped-on-width"]({ tolerance: 0.02 }, where))).toBe(
      "If you stopped catching because ± 2.0 % was reached, state ± 2.0 %: stopping on the width makes a smaller figure say more than it holds.",
    );
  });

  it("a catch that pays is said with what it costs and saves", () => {
    const say = cautions["next-catch-pays"];
    const facts = { costs: 4, saves: 9.104, currency: "CAD" };
    expect(plain(say(facts, where))).toBe(
      "Another catch costs 4.00 CAD and saves about 9.10 CAD: it pays.",
    );
    expect(plain(say({ ...facts, currency: null }, where))).toBe(
      "Another catch costs 4 and saves about 9.1: it pays.",
    );
    expect(plain(say({ ...facts, saves: null }, where))).toBe(
      "Another catch costs 4.00 CAD and pays: so little is known of the scatter that what it saves has no limit.",
    );
  });

  it("money that decides is said with what would decide before it", () => {
    const facts = { costs: 4, saves: 2.48, currency: "CAD" };
    expect(plain(cautions["enough-by-money"](facts, where))).toBe(
      "No tolerance was given, so money decides: the catches are enough once another costs more than it saves. A tolerance of your own, with --tolerance or in the setup, decides first.",
    );
  });

  it("a fill short of the tolerance is said with both figures, and with what a step uses up", () => {
    const facts = {
      halfWidth: 0.039,
      tolerance: 0.03,
      settingError: 0,
    };
    const say = cautions["short-of-tolerance"];
    expect(plain(say(facts, where))).toBe(
      "The fill is known within ± 3.9 % so far; ± 3.0 % is wanted.",
    );
    expect(plain(say({ ...facts, halfWidth: 0.016, settingError: -0.018 }, where))).toBe(
      "The fill is known within ± 1.6 % so far, and the nearest step of the drive is off by −1.8 % by itself; together they are to keep within ± 3.0 %.",
    );
  });

  it("a tolerance out of reach is said with what was counted with, and what helps", () => {
    const facts = {
      halfWidth: 0.012,
      tolerance: 0.005,
      catches: 3,
      mostCatches: 8,
      heaviestCatchKg: 20,
      heaviestGiven: false,
      leastTurns: null,
    };
    const say = cautions["tolerance-not-reachable"];
    expect(plain(say(facts, where))).toBe(
      "The fill is known within ± 1.2 %. ± 0.5 % is not likely to be reached with 8 catches of at most 20 kg (assumed); what helps is longer catches next time, or a wider tolerance.",
    );
    expect(plain(say({ ...facts, heaviestGiven: true, leastTurns: 31 }, where))).toContain(
      "at most 20 kg; what helps is catches of at least 31 turns next time, a finer scale, or a wider tolerance.",
    );
    expect(plain(say({ ...facts, catches: 8 }, where))).toBe(
      "8 catches were taken and the fill is known within ± 1.2 %, not ± 0.5 %. State what was reached and do not go on until it happens to fit; what helps is longer catches next time, or a wider tolerance.",
    );
  });

  it("a step that leaves a chance, and a scale that hides the scatter, are told apart from it", () => {
    expect(
      plain(cautions["step-leaves-chance"]({ settingError: 0.028, chance: 0.34 }, where)),
    ).toBe(
      "The delivery is known well enough, but the nearest step is off by +2.8 % by itself, so the rate is outside the tolerance with a chance of 34 %.",
    );
    expect(
      plain(
        cautions["scale-limits-tolerance"]({ turns: 20, leastTurns: 27, divisionKg: 0.5 }, where),
      ),
    ).toBe(
      "The scale's step of 0.5 kg hides the scatter of 20 turns: below 27 turns a catch, reading it alone is wider than the tolerance.",
    );
  });

  it("an assumption is called one, with where it comes from", () => {
    const sentence = cautions["scatter-assumed"]({ relative: 0.02, turns: 20 }, where);
    expect(sentence).toContain("That is an assumption, not your meter");
    expect(sentence).toContain("Yazgi et al., 2017");
  });

  it("missing prices are named in words", () => {
    const sentence = cautions["prices-missing"]({ missing: ["valueOfHour", "response"] }, where);
    expect(sentence).toContain("the value of an hour and what a rate error costs");
    expect(sentence).toContain("No price is ever assumed");
  });
});
