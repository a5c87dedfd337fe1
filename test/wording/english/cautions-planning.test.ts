import { describe, expect, it } from "vitest";
import { english } from "../../../src/wording/english/english.ts";

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
      "If you stopped catching because ± 2.0 % was reached, state ± 2.0 %: stopping on the width makes a smaller figure too good.",
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
