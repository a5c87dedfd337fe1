import { skippingChart } from "../../charts/skipping.ts";
import type { Skipping } from "../../questions/skipping.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/** What leaving the drive alone risks: the sentence, the distribution, and how many fills in a row can be skipped. */
export function skippingSection(result: Skipping, words: Words, id: string): readonly Block[] {
  const say = words.skipping;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    chart(id, skippingChart(result, words)),
    list([
      say.law(result),
      say.today(result),
      say.share(result),
      say.between(result),
      say.practice(result),
    ]),
    paragraph(say.noPermission),
    result.chances.length === 0
      ? null
      : details(
          `${id}-detail`,
          say.detail,
          chanceTable(result, words, id),
          riskTable(result, words, id),
          paragraph(say.assumptions(result), "small"),
        ),
  );
}

function chanceTable({ chances, leastChance }: Skipping, { format, skipping }: Words, id: string) {
  const say = skipping.chances;
  const shown = (chance: number) => skipping.chanceOf(chance, leastChance);
  return table({
    id: `${id}-chances`,
    caption: say.caption,
    rows: chances,
    columns: [
      { heading: say.limit, align: "end", cell: ({ limit }) => format.plusMinus(limit) },
      { heading: say.bound, align: "end", cell: ({ upperBound }) => format.bound(upperBound) },
      { heading: say.either, align: "end", cell: ({ either }) => shown(either) },
      { heading: say.heavy, align: "end", cell: ({ heavy }) => shown(heavy) },
      { heading: say.light, align: "end", cell: ({ light }) => shown(light) },
    ],
  });
}

function riskTable(
  { betweenCalibrations, leastChance }: Skipping,
  { format, skipping }: Words,
  id: string,
) {
  const say = skipping.risk;
  return table({
    id: `${id}-in-a-row`,
    caption: say.caption,
    rows: betweenCalibrations?.points ?? [],
    columns: [
      { heading: say.fills, align: "end", cell: ({ fills }) => format.count(fills) },
      { heading: say.bound, align: "end", cell: ({ upperBound }) => format.bound(upperBound) },
      {
        heading: say.any,
        align: "end",
        cell: ({ chanceAny }) => skipping.chanceOf(chanceAny, leastChance),
      },
      {
        heading: say.expected,
        align: "end",
        cell: ({ expectedOff }) => format.fixed(expectedOff, 2),
      },
    ],
  });
}
