import type { Analysis } from "../analysis/analyse.ts";
import { trialLines } from "../report/sections/trial.ts";
import type { Words } from "../wording/words.ts";

/** What came of a trial, as its report opens; null where the log is none. */
export function trialText(analysis: Analysis, words: Words): string | null {
  const lines = trialLines(analysis, words);
  if (lines === null) return null;
  const { lead, plan, toSettle, outcomes, ground, doubts } = lines;
  const indented = (under: readonly string[]) => under.map((line) => `  ${line}`);
  return [
    lead,
    plan,
    ...(toSettle.length === 0 ? [] : [words.trial.toSettle, ...indented(toSettle)]),
    ...outcomes.flatMap(({ heading, pairs }) => [heading, ...indented(pairs)]),
    ...ground,
    ...doubts,
  ].join("\n");
}
