import { OptionError } from "../errors/errors.ts";
import type { UnitSystem } from "./format.ts";
import { type Language, type Words, wordsIn } from "./words.ts";

/** Each language is fetched alone, when it is asked for. */
const languages: Readonly<Record<string, () => Promise<Language>>> = {
  en: () => import("./en/english.ts"),
  de: () => import("./de/german.ts"),
};

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
    throw new OptionError("language", language, `one of ${languageTags.join(", ")}`);
  return wordsIn(await load(), units);
}
