import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { median } from "../../src/statistics/summary.ts";
import { root } from "../support/compiler.ts";
import { textsOf as wholeTextsOf } from "../tools/figures/find.ts";

/** What no sentence says, by language, and what it says instead. */
const banned: Readonly<Record<"en" | "de", readonly (readonly [RegExp, string])[]>> = {
  en: [
    [/\bskid/i, "slip"],
    [/upside down/i, "the reciprocal"],
    [/\blet expect\b/i, "what the catches said"],
    [/\btoo good\b/i, "too narrow, or too small"],
    [/likelier than bad luck/i, "fits … times better than chance"],
    [/\(seed \$|seed of the random/i, "random start"],
    [/who took it/i, "the person who took it"],
    [/commonest advice/i, "a claim needs its source"],
  ],
  de: [
    [/Unterschied(e|s|en)? zwischen (den )?Füllungen/, "Streuung zwischen den Füllungen"],
    [/gemeinsam erklärte/, "gemeinsam angenommene"],
    [/(?<!englische )Pfund(?! \(lb\))[^"]*statt/, "englische Pfund (lb)"],
    [/\bHebel\b/, "Hebelwert"],
    [/wer sie genommen hat/, "die Person, die sie genommen hat"],
    [/dürfen[^"`]*ohne Abdrehen bleiben/, "nothing is allowed"],
    // A chance is what one hopes for; what one fears has a probability.
    [
      /Chance (auf|für) (zu|mehr|einen größeren)|Chance, daneben|Chance eines (Mengenf|F)ehlers/,
      "Wahrscheinlichkeit",
    ],
  ],
};

/** The folders that sentences of a language stand in; what is wrong with a file is said in English by the errors themselves. */
const folders = { en: ["src/wording/en", "src/errors/en"], de: ["src/wording/de"] } as const;

/** Every text of a file of templates, its comments left out. */
function textsOf(path: string): readonly string[] {
  const code = readFileSync(path, "utf8")
    .replace(/\/\*\*.*?\*\//gs, "")
    .replace(/^\s*\/\/.*$/gm, "");
  return [...code.matchAll(/"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/gs)].map(([text]) => text);
}

describe.each(["en", "de"] as const)("sentences in %s", (language) => {
  const texts = folders[language].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .flatMap((name) =>
        textsOf(join(root, folder, name)).map((text) => [`${folder}/${name}`, text] as const),
      ),
  );

  it("are all read", () => {
    expect(texts.length).toBeGreaterThan(1000);
  });

  it.each(banned[language])("never say %s but %s", (form) => {
    expect(texts.filter(([, text]) => form.test(text))).toEqual([]);
  });
});

describe.each(["src/wording/en", "src/wording/de"])("the length of sentences in %s", (folder) => {
  /** From one full stop to the next; each fact, filled in later, is a word. */
  const lengths = readdirSync(join(root, folder)).flatMap((name) =>
    wholeTextsOf(readFileSync(join(root, folder, name), "utf8"))
      .flatMap((text) => text.split(/(?<=[.!?])\s+/))
      .filter((text) => /[.!?]$/.test(text))
      .map((text) => ({
        text,
        words: text.split(/\s+/).filter((one) => /[\p{L}\p{N}#]/u.test(one)).length,
      })),
  );

  it("is at most 15 words in the middle, and 40 at most", () => {
    expect(lengths.length).toBeGreaterThan(500);
    expect(median(lengths.map(({ words }) => words))).toBeLessThanOrEqual(15);
    expect(lengths.filter(({ words }) => words > 40)).toEqual([]);
  });
});

describe("a banned form", () => {
  it("is found where it stands", () => {
    for (const text of ["3 times likelier than bad luck", "seed of the random order"])
      expect(banned.en.some(([form]) => form.test(text))).toBe(true);
    for (const text of [
      "Unterschied zwischen Füllungen",
      "die Chance auf zu viel",
      "Pfund statt Kilogramm",
    ])
      expect(banned.de.some(([form]) => form.test(text))).toBe(true);
    expect(banned.de.some(([form]) => form.test("englische Pfund (lb) statt Kilogramm"))).toBe(
      false,
    );
  });
});
