import { outletsChart } from "../../charts/outlets.ts";
import type { Outlets } from "../../questions/outlets.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Table } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** How evenly the outlets deliver: the sentence, each outlet against the band, and what is not to be mixed up with it. */
export function outletsSection(result: Outlets, words: Words, id: string): readonly Block[] {
  const say = words.outlets;
  const items = [say.band(result), say.grade(result), say.grades, say.catchScatter(result)].flatMap(
    (text) => text ?? [],
  );
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    chartBlock(`${id}-outlets`, outletsChart(result, words)),
    { kind: "list", items },
    {
      kind: "details",
      id: `${id}-outlets-detail`,
      summary: say.detail,
      blocks: [outletTable(result, words, id)],
    },
  ];
}

function outletTable({ outlets, meanKgPerTurn }: Outlets, words: Words, id: string): Table {
  const { format } = words;
  const say = words.outlets.table;
  return {
    kind: "table",
    id: `${id}-outlet-figures`,
    caption: say.caption,
    columns: [
      { heading: say.outlet },
      { heading: say.catches, align: "end" },
      { heading: say.turns, align: "end" },
      { heading: say.delivery(format.unit("delivery", meanKgPerTurn)), align: "end" },
      { heading: say.off, align: "end" },
      { heading: say.inside },
    ],
    rows: outlets.map(({ outlet, catches, turns, deliveryKgPerTurn, relative, insideBand }) => {
      const row = {
        cells: [
          outlet,
          format.count(catches),
          format.plain(turns, 6),
          format.number(deliveryKgPerTurn, "delivery", meanKgPerTurn),
          format.signedPercent(relative, 1),
          insideBand ? say.yes : say.no,
        ],
      };
      return insideBand ? row : { ...row, tone: "attention" as const };
    }),
  };
}
