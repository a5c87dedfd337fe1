import type { Analysis } from "../analysis/analyse.ts";
import { grid } from "../report/blocks.ts";
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
        { heading: say.fill, align: "end", cell: ({ delivery }) => format.fill(delivery.fill) },
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
