import { describe, expect, it } from "vitest";
import { passages, textsOf } from "./find.ts";
import { sourcedFigures, toldAndKept } from "./list.ts";
import { rules } from "./sources.ts";

const all = passages();

describe("every figure of README, notebooks' prose and sentences", () => {
  const figures = all.flatMap(sourcedFigures);

  it("is found", () => {
    for (const place of [
      /^README/,
      /^notebooks/,
      /^src\/wording\/en/,
      /^src\/wording\/de/,
      /^src\/errors/,
    ])
      expect(figures.filter((one) => place.test(one.place)).length, `${place}`).toBeGreaterThan(5);
  });

  it("has a source", () => {
    const gaps = figures.filter(({ source }) => source === null);
    expect(gaps.map(({ place, figure, text }) => `${place}: ${figure} in ${text}`)).toEqual([]);
  });

  it("has one that somebody still asks for", () => {
    const idle = rules.filter((rule) => toldAndKept(rule, all).told.length === 0);
    expect(idle.map(({ source, says }) => `${says}: ${source}`)).toEqual([]);
  });

  it.each(rules.filter(({ values }) => values !== undefined))(
    "is the one of its source: $source",
    (rule) => {
      const { told, kept } = toldAndKept(rule, all);
      // A language has its own mark of decimals.
      for (const figures of told)
        expect(figures.map((one) => one.replace(/^(\d),(\d)$/, "$1.$2"))).toEqual(kept);
    },
  );
});

describe("a sentence of a template", () => {
  it("is read whole, with a mark for what facts fill in, and no key for a text", () => {
    const code =
      // biome-ignore lint/suspicious/noTemplateCurlyInString: code as it stands in a file
      'const a = { "4 keys": (f) => `in ${f.a === 1 ? "1 fill" : `${f.a} fills`}, 95 %` };';
    expect([...textsOf(code)].sort()).toEqual(["# fills", "1 fill", "in #, 95 %"]);
  });
});
