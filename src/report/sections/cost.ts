import type { Action } from "../../analysis/decision.ts";
import { costChart } from "../../charts/cost.ts";
import type { CatchesNeeded } from "../../questions/catches-needed.ts";
import type { Cost } from "../../questions/cost.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/**
 * What catches cost and save: the sentence, the cost curve, the area from which they pay, and the figures.
 *
 * @param needed  of the same bin and product, for what the next catch and the next fill are worth; null: none
 * @param action  decided for the same fill
 */
export function costSection(
  result: Cost,
  words: Words,
  id: string,
  needed: CatchesNeeded | null = null,
  action?: Action,
): readonly Block[] {
  const say = words.cost;
  const drawn = chart(id, costChart(result, words));
  return blocks(
    paragraph(say.sentence(result), "lead"),
    drawn,
    list([
      say.breakEven(result),
      needed === null ? null : words.catchesNeeded.worth(needed, action),
      say.wasted(result),
    ]),
    drawn === null ? null : details(`${id}-detail`, say.detail, figureTable(result, words, id)),
  );
}

function figureTable(result: Cost, words: Words, id: string) {
  const say = words.cost;
  const money = (value: number | null) =>
    value === null ? say.unknown : say.perArea(value, result);
  return table({
    id: `${id}-figures`,
    caption: say.caption,
    rows: result.points,
    columns: [
      {
        heading: say.columns.catches,
        align: "end",
        cell: ({ catches }) => words.format.count(catches),
      },
      { heading: say.columns.loss, align: "end", cell: ({ loss }) => money(loss.perHectare) },
      {
        heading: say.columns.range,
        align: "end",
        cell: ({ loss: { lowerPerHectare, upperPerHectare } }) =>
          lowerPerHectare === null || upperPerHectare === null
            ? say.unknown
            : `${money(lowerPerHectare)} – ${money(upperPerHectare)}`,
      },
      {
        heading: say.columns.catching,
        align: "end",
        cell: ({ catchingPerHectare }) => money(catchingPerHectare),
      },
      {
        heading: say.columns.total,
        align: "end",
        cell: ({ totalPerHectare }) => money(totalPerHectare),
      },
      {
        heading: say.columns.season,
        align: "end",
        cell: ({ totalPerSeason }) =>
          totalPerSeason === null ? say.unknown : say.money(totalPerSeason, result),
      },
      {
        heading: say.columns.breakEven,
        align: "end",
        cell: ({ catches }) => (catches === 0 ? "" : breakEvenCell(result, words, catches)),
      },
    ],
  });
}

function breakEvenCell(result: Cost, words: Words, catches: number): string {
  const say = words.cost;
  const found = result.breakEvens.find((one) => one.catches === catches);
  if (found === undefined || found.verdict === "unknown") return say.unknown;
  if (found.hectares === null) return say.never;
  const [area, range] = [say.area(found.hectares), say.areaRange(found)];
  return area === range ? area : `${area} (${range})`;
}
