import { skippingChart } from "../../charts/skipping.ts";
import type { Skipping } from "../../questions/skipping.ts";
import type { Words } from "../../wording/words.ts";
import type { Block } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** What leaving the drive alone risks: the sentence, the distribution, and how many fills in a row can be skipped. */
export function skippingSection(result: Skipping, words: Words, id: string): readonly Block[] {
  const say = words.skipping;
  const chart = skippingChart(result, words);
  const items = [
    say.today(result),
    say.share(result),
    say.between(result),
    say.practice(result),
  ].flatMap((text) => text ?? []);
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(chart === null ? [] : [chartBlock(`${id}-skipping`, chart)]),
    { kind: "list", items },
    ...(result.chances.length === 0 ? [] : [details(result, words, id)]),
  ];
}

function details(result: Skipping, words: Words, id: string): Block {
  return {
    kind: "details",
    id: `${id}-skipping-detail`,
    summary: words.skipping.detail,
    blocks: [
      chanceTable(result, words, id),
      ...riskTable(result, words, id),
      { kind: "paragraph", role: "small", text: words.skipping.assumptions },
    ],
  };
}

function chanceTable(result: Skipping, words: Words, id: string): Block {
  const { format } = words;
  const say = words.skipping.chances;
  return {
    kind: "table",
    id: `${id}-skipping-chances`,
    caption: say.caption,
    columns: [
      { heading: say.limit, align: "end" },
      { heading: say.heavy, align: "end" },
      { heading: say.light, align: "end" },
      { heading: say.either, align: "end" },
      { heading: say.bound, align: "end" },
    ],
    rows: result.chances.map(({ limit, heavy, light, either, upperBound }) => ({
      cells: [format.plusMinus(limit), ...[heavy, light, either, upperBound].map(percent)],
    })),
  };
  function percent(fraction: number): string {
    return format.percent(fraction);
  }
}

function riskTable(
  { betweenCalibrations: risk }: Skipping,
  words: Words,
  id: string,
): readonly Block[] {
  if (risk === null) return [];
  const { format } = words;
  const say = words.skipping.risk;
  return [
    {
      kind: "table",
      id: `${id}-skipping-in-a-row`,
      caption: say.caption,
      columns: [
        { heading: say.fills, align: "end" },
        { heading: say.any, align: "end" },
        { heading: say.bound, align: "end" },
        { heading: say.expected, align: "end" },
      ],
      rows: risk.points.map(({ fills, chanceAny, upperBound, expectedOff }) => ({
        cells: [
          format.count(fills),
          format.percent(chanceAny),
          format.percent(upperBound),
          format.plain(expectedOff, 2),
        ],
      })),
    },
  ];
}
