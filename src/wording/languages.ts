import { OptionError } from "../errors/errors.ts";
import { english } from "./english/english.ts";
import type { UnitSystem } from "./format.ts";
import { german } from "./german/german.ts";
import type { Words } from "./words.ts";

const languages: Readonly<Record<string, (units: UnitSystem) => Words>> = {
  en: english,
  de: german,
};

/** Languages a report can be written in, by their tag. */
export const languageTags: readonly string[] = Object.keys(languages);

/**
 * Everything that is said in words, in one language and one system of units: for reports, charts and single sentences.
 *
 * @param language  one of `languageTags`
 * @throws          OptionError for a language evencatch has no words in
 */
export function wordsFor(language: string, units: UnitSystem): Words {
  const make = Object.hasOwn(languages, language) ? languages[language] : undefined;
  if (make === undefined)
    throw new OptionError("language", language, `one of ${languageTags.join(", ")}`);
  return make(units);
}
