import { costChart } from "../../charts/cost.ts";
import type { Cost } from "../../questions/cost.ts";
import type { Words } from "../../wording/words.ts";
import type { Block } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** What catches cost and save: the sentence, the cost curve, the area from which they pay, and the figures. */
export function costSection(result: Cost, words: Words, id: string): readonly Block[] {
  const say = words.cost;
  const chart = costChart(result, words);
  const items = [say.breakEven(result), say.nextCatch(result), say.wasted(result)].flatMap(
    (text) => text ?? [],
  );
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(chart === null ? [] : [chartBlock(`${id}-cost`, chart)]),
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
    ...(chart === null ? [] : [details(result, words, id)]),
  ];
}

function details(result: Cost, words: Words, id: string): Block {
  const say = words.cost;
  const money = (value: number | null) =>
    value === null ? say.unknown : say.perArea(value, result);
  return {
    kind: "details",
    id: `${id}-cost-detail`,
    summary: say.detail,
    blocks: [
      {
        kind: "table",
        id: `${id}-cost-figures`,
        caption: say.caption,
        columns: [
          { heading: say.columns.catches, align: "end" },
          { heading: say.columns.loss, align: "end" },
          { heading: say.columns.range, align: "end" },
          { heading: say.columns.catching, align: "end" },
          { heading: say.columns.total, align: "end" },
          { heading: say.columns.season, align: "end" },
          { heading: say.columns.breakEven, align: "end" },
        ],
        rows: result.points.map(({ catches, loss, catchingPerHectare, ...totals }) => ({
          cells: [
            words.format.count(catches),
            money(loss.perHectare),
            loss.lowerPerHectare === null || loss.upperPerHectare === null
              ? say.unknown
              : `${money(loss.lowerPerHectare)} – ${money(loss.upperPerHectare)}`,
            money(catchingPerHectare),
            money(totals.totalPerHectare),
            totals.totalPerSeason === null ? say.unknown : say.money(totals.totalPerSeason, result),
            catches === 0 ? "" : breakEvenCell(result, words, catches),
          ],
        })),
      },
    ],
  };
}

function breakEvenCell(result: Cost, words: Words, catches: number): string {
  const say = words.cost;
  const found = result.breakEvens.find((one) => one.catches === catches);
  if (found === undefined || found.verdict === "unknown") return say.unknown;
  if (found.hectares === null) return say.never;
  const [area, range] = [say.area(found.hectares), say.areaRange(found)];
  return area === range ? area : `${area} (${range})`;
}
