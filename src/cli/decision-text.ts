import type { DecidedBin, DecidedLog } from "../analysis/decided-bin.ts";
import { decisionLines } from "../report/sections/decision.ts";
import type { Words } from "../wording/words.ts";

/** What to do at one bin, how sure that is, by itself and with what others lend, and why: the lines `report` and `enough` print alike. */
export function decisionText(answers: DecidedBin, log: DecidedLog, words: Words): string {
  const { action, sure, why, doNotSkip } = decisionLines(answers, log, words);
  const who = words.decision.who(answers.bin, answers.product, answers.delivery.fill);
  const lines = [sure, words.delivery.twoLines(answers.delivery), ...why, doNotSkip];
  return [`${who}: ${action}`, ...lines.filter((line) => line !== null)].join("\n  ");
}

/** What everything rests on beside the catches: the tolerance, and the scale's division where nobody stated it. */
export function groundText(
  { options, toleranceFrom, scaleDivision }: DecidedLog,
  { decision }: Words,
): string {
  const division = decision.division(scaleDivision);
  return [
    decision.tolerance(options.tolerance, toleranceFrom),
    ...(division === null ? [] : [division]),
  ].join("\n");
}
