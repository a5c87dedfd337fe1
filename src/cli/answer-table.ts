import Table from "cli-table3";
import type { Analysis } from "../analysis/analyse.ts";
import type { Words } from "../wording/words.ts";

/** The answers of an analysis as a table for a terminal: one row a bin and product. */
export function answerTable(analysis: Analysis, words: Words): string {
  const { format, report, delivery } = words;
  const table = new Table({
    head: [...report.columns],
    colAligns: ["left", "left", "right", "right", "right", "right", "left"],
    style: { head: [], border: [], compact: true },
  });
  for (const answers of analysis.meters) {
    const { estimate, input, fill } = answers.delivery;
    table.push([
      answers.bin,
      answers.product,
      format.count(fill),
      format.count(input.catches),
      delivery.value(answers.delivery),
      format.estimateInterval(estimate, "delivery") ?? delivery.unknown,
      report.verdict(answers.verdict),
    ]);
  }
  return table.toString();
}
