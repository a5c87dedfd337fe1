import type { Action } from "../analysis/decision.ts";
import type { CatchesNeeded } from "../questions/catches-needed.ts";
import { catchesNeededSection } from "../report/sections/catches-needed.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import type { Words } from "../wording/words.ts";
import { plainBlocks } from "./plain-blocks.ts";

/** How many catches are enough, with what stands behind it, for a terminal. */
export function catchesNeededText(result: CatchesNeeded, words: Words, action?: Action): string {
  const cautions = result.cautions.map((found) => `- ${cautionSentence(found, words)}`);
  return [
    ...plainBlocks(catchesNeededSection(result, words, "enough", null, action)),
    ...cautions,
  ].join("\n");
}
