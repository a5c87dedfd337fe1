import { uncertaintyBudgetChart } from "../../charts/uncertainty-budget.ts";
import type { UncertaintyBudget } from "../../questions/uncertainty-budget.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Table } from "../document.ts";
import { chartBlock } from "./chart-block.ts";
import { paragraph } from "./paragraph.ts";

/** How far off the rate may be: the sentence, what makes it so, what to improve first, and the check by drawing. */
export function uncertaintyBudgetSection(
  result: UncertaintyBudget,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.uncertaintyBudget;
  const chart = uncertaintyBudgetChart(result, words);
  const lead: Block = { kind: "paragraph", role: "lead", text: say.sentence(result) };
  if (chart === null) return [lead];
  return [
    lead,
    chartBlock(`${id}-budget`, chart),
    ...paragraph(say.improve(result)),
    {
      kind: "details",
      id: `${id}-budget-detail`,
      summary: say.detail,
      blocks: [
        budgetTable(result, words, id),
        ...paragraph(say.combined(result)),
        ...paragraph(say.check(result)),
        { kind: "paragraph", role: "small", text: say.notHere },
      ],
    },
  ];
}

function budgetTable({ lines }: UncertaintyBudget, words: Words, id: string): Table {
  const { format } = words;
  const say = words.uncertaintyBudget;
  return {
    kind: "table",
    id: `${id}-budget-figures`,
    caption: say.table.caption,
    columns: [
      { heading: say.table.source },
      { heading: say.table.law },
      { heading: say.table.standardUncertainty, align: "end" },
      { heading: say.table.sensitivity, align: "end" },
      { heading: say.table.df, align: "end" },
      { heading: say.table.contribution, align: "end" },
      { heading: say.table.share, align: "end" },
    ],
    rows: lines.map((line) => ({
      cells: [
        say.source(line.source),
        say.law(line.law),
        say.uncertaintyOf(line),
        say.sensitivityOf(line),
        line.df === null ? say.table.wellKnown : format.plain(line.df),
        format.percent(line.contribution, 2),
        format.percent(line.share, 0),
      ],
    })),
  };
}
