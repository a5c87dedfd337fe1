import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import { grid } from "../report/blocks.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import { decisionLines } from "../report/sections/decision.ts";
import type { Words } from "../wording/words.ts";
import { plainTable } from "./plain-blocks.ts";

/** The answers of an analysis as a table for a terminal: one row a bin and product. */
export function answerTable(analysis: Analysis, words: Words): string {
  const { format, decision } = words;
  const say = decision.columns;
  return plainTable(
    grid({
      rows: analysis.meters,
      columns: [
        { heading: say.bin, cell: ({ bin }) => bin },
        { heading: say.product, cell: ({ product }) => product },
        { heading: say.fill, align: "end", cell: ({ delivery }) => format.count(delivery.fill) },
        {
          heading: say.catches,
          align: "end",
          cell: ({ delivery }) => format.count(delivery.input.catches),
        },
        {
          heading: say.action,
          cell: (answers) => decisionLines(answers, analysis, words).action,
        },
        {
          heading: say.known,
          align: "end",
          cell: ({ delivery: { halfWidth } }) =>
            halfWidth === null ? decision.unknown : format.plusMinus(halfWidth),
        },
      ],
    }),
  );
}

/** What to do at one bin, how sure that is, by itself and with what others lend, and why: the lines `report` and `enough` print alike. */
export function decisionText(answers: MeterAnswers, analysis: Analysis, words: Words): string {
  const { action, sure, why } = decisionLines(answers, analysis, words);
  const who = words.decision.who(answers.bin, answers.product, answers.delivery.fill);
  const lines = [sure, words.delivery.twoLines(answers.delivery)].filter((line) => line !== null);
  return [`${who}: ${action}`, ...lines, ...why].join("\n  ");
}

/** What everything rests on beside the catches: the tolerance, the scale's division where nobody stated it, and a library. */
export function groundText(
  { options, toleranceFrom, scaleDivision, cautions }: Analysis,
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
