import { describe, expect, it } from "vitest";
import { languageTags, wordsFor } from "../../../src/wording/languages.ts";
import { englishIn } from "../../support/bilingual.ts";
import { leavesOf } from "../../support/listening.ts";
import { english, german } from "../../support/words.ts";

const [inEnglish, inGerman] = [leavesOf(english()), leavesOf(german())];

describe("the German words", () => {
  it("are had by their tag", async () => {
    expect(languageTags).toContain("de");
    expect((await wordsFor("de", "us")).format).toMatchObject({ language: "de", units: "us" });
  });

  it("have every leaf that the English ones have, of the same kind, and no other", () => {
    const kinds = (leaves: ReadonlyMap<string, unknown>) =>
      [...leaves].map(([path, leaf]) => `${path}: ${typeof leaf}`).sort();
    expect(kinds(inGerman)).toEqual(kinds(inEnglish));
  });

  it("are no English words, apart from those that both languages share", () => {
    const kept = [...inGerman].filter(
      ([path, leaf]) => typeof leaf === "string" && leaf !== "" && leaf === inEnglish.get(path),
    );
    expect([...new Set(kept.map(([, leaf]) => leaf))].sort()).toEqual([
      "Block",
      "Test",
      "kg/m³",
      "n",
      "p",
      "–",
    ]);
    const left = [...inGerman].filter(
      ([, leaf]) => typeof leaf === "string" && englishIn(leaf).length > 0,
    );
    expect(left).toEqual([]);
  });

  it("say nothing where the English ones say nothing, and there only", () => {
    const empty = (leaves: ReadonlyMap<string, unknown>) =>
      [...leaves].filter(([, leaf]) => leaf === "").map(([path]) => path);
    expect(empty(inGerman)).toEqual(empty(inEnglish));
  });
});
