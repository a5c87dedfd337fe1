import { describe, expect, it } from "vitest";
import { english, german } from "../support/words.ts";

const languages = [
  ["en", english().glossary],
  ["de", german().glossary],
] as const;

describe("the glossary", () => {
  it.each(languages)("has twenty words in %s, each with one meaning", (_, { entries }) => {
    const terms = Object.values(entries).map(([term]) => term);
    expect(new Set(terms).size).toBe(20);
    for (const [term, meaning] of Object.values(entries)) {
      expect(meaning, term).toMatch(/^\p{Lu}.*\.$/u);
      expect(meaning.split(" ").length, term).toBeLessThanOrEqual(25);
    }
  });

  it("has the same words in both languages", () => {
    expect(Object.keys(german().glossary.entries)).toEqual(Object.keys(english().glossary.entries));
  });
});
