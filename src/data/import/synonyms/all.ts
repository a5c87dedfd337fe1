import { spelled } from "../../header-names.ts";
import type { Concept, Synonyms } from "../concepts.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

/** A language more is a file beside these and its name here. */
const languages: readonly Synonyms[] = [en, de];

/** Of a header that two languages read differently nobody could say which is meant: it is not known. */
export const conceptOf: ReadonlyMap<string, Concept> = oneMeaning(
  languages.flatMap(({ headers }) =>
    Object.entries(headers).flatMap(([concept, names]) =>
      names.map((name) => [spelled(name).spelling, concept as Concept] as const),
    ),
  ),
);

function oneMeaning(entries: readonly (readonly [string, Concept])[]): Map<string, Concept> {
  const found = new Map<string, Concept>();
  const doubtful = new Set<string>();
  for (const [name, concept] of entries) {
    if ((found.get(name) ?? concept) !== concept) doubtful.add(name);
    found.set(name, concept);
  }
  for (const name of doubtful) found.delete(name);
  return found;
}

type WordKind = "mean" | "total" | "otherFigure" | "spilled" | "ditto" | "yes" | "no" | "oClock";

/** Words of every language, compared as headers are. */
export function wordsOf(kind: WordKind): ReadonlySet<string> {
  return new Set(languages.flatMap((words) => words[kind].map((word) => bare(word))));
}

/** The unit a word stands for, by its spelling. */
export const unitWords: ReadonlyMap<string, keyof Synonyms["units"]> = new Map(
  languages.flatMap(({ units }) =>
    Object.entries(units).flatMap(([unit, words]) =>
      words.map((word) => [unitSpelling(word), unit as keyof Synonyms["units"]] as const),
    ),
  ),
);

export function unitSpelling(text: string): string {
  return text.normalize("NFKC").toLowerCase().replace(/[\s.]/g, "");
}

/** Month from 1 by its name. */
export const monthOf: ReadonlyMap<string, number> = new Map(
  languages.flatMap(({ months }) =>
    months.flatMap((names, i) => names.map((name) => [bare(name), i + 1] as const)),
  ),
);

/** A word as it is compared; "Ø" and the like, which are no words, stay as they are. */
export function bare(text: string): string {
  return spelled(text).spelling || text.trim();
}
