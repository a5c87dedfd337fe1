import { uncertaintyBudgetChart } from "../../charts/uncertainty-budget.ts";
import { varianceStaircaseChart } from "../../charts/variance-staircase.ts";
import type { UncertaintyBudget } from "../../questions/uncertainty-budget.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/** How far off the rate may be: the sentence, what makes it so, what to improve first, and the check by drawing. */
export function uncertaintyBudgetSection(
  result: UncertaintyBudget,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.uncertaintyBudget;
  const lead = paragraph(say.sentence(result), "lead");
  const drawn = chart(id, uncertaintyBudgetChart(result, words));
  if (drawn === null) return blocks(lead);
  return blocks(
    lead,
    drawn,
    paragraph(say.improve(result)),
    chart(`${id}-staircase`, varianceStaircaseChart(result, words)),
    details(
      `${id}-detail`,
      say.detail,
      budgetTable(result, words, id),
      paragraph(say.combined(result)),
      paragraph(say.check(result)),
      paragraph(say.notHere, "small"),
    ),
  );
}

function budgetTable(
  { lines }: UncertaintyBudget,
  { format, uncertaintyBudget }: Words,
  id: string,
) {
  const { table: say, source, law, uncertaintyOf, sensitivityOf } = uncertaintyBudget;
  return table({
    id: `${id}-figures`,
    caption: say.caption,
    rows: lines,
    columns: [
      { heading: say.source, cell: (line) => source(line.source) },
      { heading: say.law, cell: (line) => law(line.law) },
      {
        heading: say.standardUncertainty,
        align: "end",
        cell: (line) => uncertaintyOf(line, lines),
      },
      { heading: say.sensitivity, align: "end", cell: sensitivityOf },
      {
        heading: say.df,
        align: "end",
        cell: ({ df }) => (df === null ? say.wellKnown : format.plain(df)),
      },
      {
        heading: say.contribution,
        align: "end",
        cell: ({ contribution }) => format.percent(contribution, 2),
      },
      { heading: say.share, align: "end", cell: ({ share }) => format.percent(share, 0) },
    ],
  });
}
