import { acrossFillsChart } from "../../charts/across-fills.ts";
import type { AcrossFills } from "../../questions/across-fills.ts";
import type { Words } from "../../wording/words.ts";
import type { Block } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** The fills of one bin together: the sentence, every fill against the band for the next, and the figures. */
export function acrossFillsSection(
  result: AcrossFills,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.acrossFills;
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    chartBlock(`${id}-fills`, acrossFillsChart(result, words)),
    {
      kind: "list",
      items: [
        say.meanSentence(result),
        say.spread(result),
        say.scatter(result),
        say.correlation(result),
        say.leftOut(result),
      ].flatMap((text) => text ?? []),
    },
    {
      kind: "details",
      id: `${id}-fills-detail`,
      summary: say.fills.caption,
      blocks: [fillTable(result, words, id), { kind: "paragraph", text: say.reml(result) }],
    },
  ];
}

function fillTable(result: AcrossFills, words: Words, id: string): Block {
  const { format, acrossFills } = words;
  const say = acrossFills.fills;
  const size = result.mean.value;
  return {
    kind: "table",
    id: `${id}-fill-table`,
    caption: say.caption,
    columns: [
      { heading: say.fill, align: "end" },
      { heading: say.date },
      { heading: say.catches, align: "end" },
      { heading: say.turns, align: "end" },
      { heading: say.delivery(format.unit("delivery", size)), align: "end" },
      { heading: say.interval, align: "end" },
    ],
    rows: result.points.map(({ fill, takenAt, catches, turns, estimate }) => ({
      cells: [
        format.count(fill),
        takenAt === null ? "" : format.date(takenAt),
        format.count(catches),
        format.plain(turns, 6),
        format.number(estimate.value, "delivery", size, estimate.standardError),
        format.estimateInterval(estimate, "delivery") ?? say.unknown,
      ],
    })),
  };
}
