import type { DecidedBin, DecidedLog } from "../analysis/decided-bin.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import { decisionLines } from "../report/sections/decision.ts";
import type { Words } from "../wording/words.ts";

/** What to do at one bin, how sure that is, by itself and with what others lend, and why: the lines `report` and `enough` print alike. */
export function decisionText(answers: DecidedBin, log: DecidedLog, words: Words): string {
  const { action, sure, why, doNotSkip } = decisionLines(answers, log, words);
  const who = words.decision.who(answers.bin, answers.product, answers.delivery.fill);
  const lines = [sure, words.delivery.twoLines(answers.delivery), ...why, doNotSkip];
  return [`${who}: ${action}`, ...lines.filter((line) => line !== null)].join("\n  ");
}

/** What everything rests on beside the catches: the tolerance, the scale's division where nobody stated it, and a library. */
export function groundText(
  { options, toleranceFrom, scaleDivision, cautions }: DecidedLog,
  words: Words,
): string {
  const { decision } = words;
  const division = decision.division(scaleDivision);
  return [
    decision.tolerance(options.tolerance, toleranceFrom),
    ...(division === null ? [] : [division]),
    ...cautions
      .filter(({ code }) => code === "library-lends" || code === "library-not-read")
      .map((found) => cautionSentence(found, words)),
  ].join("\n");
}
