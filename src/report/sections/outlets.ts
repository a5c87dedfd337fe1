import { outletsChart } from "../../charts/outlets.ts";
import type { Outlets } from "../../questions/outlets.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/** How evenly the outlets deliver: the sentence, each outlet against the band, and what is not to be mixed up with it. */
export function outletsSection(result: Outlets, words: Words, id: string): readonly Block[] {
  const say = words.outlets;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    chart(id, outletsChart(result, words)),
    list([say.band(result), say.catchScatter(result)]),
    details(`${id}-detail`, say.detail, outletTable(result, words, id)),
  );
}

function outletTable({ outlets, meanKgPerTurn }: Outlets, words: Words, id: string) {
  const { format } = words;
  const say = words.outlets.table;
  return table({
    id: `${id}-figures`,
    caption: say.caption,
    rows: outlets,
    tone: ({ insideBand }) => (insideBand ? null : "attention"),
    columns: [
      { heading: say.outlet, cell: ({ outlet }) => outlet },
      { heading: say.catches, align: "end", cell: ({ catches }) => format.count(catches) },
      { heading: say.turns, align: "end", cell: ({ turns }) => format.plain(turns, 6) },
      {
        heading: say.delivery(format.unit("delivery", meanKgPerTurn)),
        align: "end",
        cell: ({ deliveryKgPerTurn }) =>
          format.number(deliveryKgPerTurn, "delivery", meanKgPerTurn),
      },
      {
        heading: say.off,
        align: "end",
        cell: ({ relative }) => format.signedPercent(relative, 1),
      },
      { heading: say.inside, cell: ({ insideBand }) => (insideBand ? say.yes : say.no) },
    ],
  });
}
