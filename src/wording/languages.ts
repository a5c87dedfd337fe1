import { OptionError } from "../errors/errors.ts";
import type { UnitSystem } from "./format.ts";
import { type Language, type Words, wordsIn } from "./words.ts";

/** Each language is fetched alone, when it is asked for. */
const languages: Readonly<Record<string, () => Promise<Language>>> = {
  en: () => import("./en/english.ts"),
  de: () => import("./de/german.ts"),
};

/** Words once made, by language and units: they hold the formats of numbers, which are slow to make. */
const made = new Map<string, Words>();

/** Languages a report can be written in, by their tag. */
export const languageTags: readonly string[] = Object.keys(languages);

/**
 * Everything that is said in words, in one language and one system of units: for reports, charts and single sentences.
 *
 * @param language  one of `languageTags`
 * @throws          OptionError for a language evencatch has no words in
 */
export async function wordsFor(language: string, units: UnitSystem): Promise<Words> {
  const load = Object.hasOwn(languages, language) ? languages[language] : undefined;
  if (load === undefined)
    throw new OptionError("language", language, {
      need: "listed",
      facts: { choices: languageTags },
    });
  const key = `${language} ${units}`;
  const words = made.get(key) ?? wordsIn(await load(), units);
  made.set(key, words);
  return words;
}
