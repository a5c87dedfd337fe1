import * as germanTemplates from "../../src/wording/de/german.ts";
import * as englishTemplates from "../../src/wording/en/english.ts";
import type { UnitSystem } from "../../src/wording/format.ts";
import { type Words, wordsIn } from "../../src/wording/words.ts";

export function english(units: UnitSystem = "metric"): Words {
  return wordsIn(englishTemplates, units);
}

export function german(units: UnitSystem = "metric"): Words {
  return wordsIn(germanTemplates, units);
}

/** Words by the tag of their language, without waiting for them. */
export const wordsBy = { en: english(), de: german() } as const;
