import Table from "cli-table3";
import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import { decisionLines } from "../report/sections/decision.ts";
import type { Words } from "../wording/words.ts";

/** The answers of an analysis as a table for a terminal: one row a bin and product. */
export function answerTable(analysis: Analysis, words: Words): string {
  const { format, decision } = words;
  const { bin, product, fill, catches, action, known } = decision.columns;
  const table = new Table({
    head: [bin, product, fill, catches, action, known],
    colAligns: ["left", "left", "right", "right", "left", "right"],
    style: { head: [], border: [], compact: true },
  });
  for (const answers of analysis.meters) {
    const { input, fill: number, halfWidth } = answers.delivery;
    table.push([
      answers.bin,
      answers.product,
      format.count(number),
      format.count(input.catches),
      decisionLines(answers, analysis, words).action,
      halfWidth === null ? decision.unknown : format.plusMinus(halfWidth),
    ]);
  }
  return table.toString();
}

/** What to do at one bin, how sure that is, and why: the lines `report` and `enough` print alike. */
export function decisionText(answers: MeterAnswers, analysis: Analysis, words: Words): string {
  const { action, sure, why } = decisionLines(answers, analysis, words);
  const who = words.decision.who(answers.bin, answers.product, answers.delivery.fill);
  return [`${who}: ${action}`, ...(sure === null ? [] : [sure]), ...why].join("\n  ");
}

/** The tolerance everything was held against, and where it comes from. */
export function toleranceText({ options, toleranceFrom }: Analysis, words: Words): string {
  return words.decision.tolerance(options.tolerance, toleranceFrom);
}
