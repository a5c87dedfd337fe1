import { max } from "simple-statistics";
import { deliveryChart, deliveryPerTurnChart } from "../../charts/delivery.ts";
import type { Delivery } from "../../questions/delivery.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/**
 * The delivery of one fill: the sentence, the chart, the catches, and how it was computed.
 *
 * @param id        of the section, with which the ids of its blocks begin
 * @param suspects  catch numbers to mark in chart and table
 */
export function deliverySection(
  result: Delivery,
  words: Words,
  id: string,
  suspects: readonly number[] = [],
): readonly Block[] {
  const say = words.delivery;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    paragraph(say.twoLines(result)),
    paragraph(say.hull(result)),
    chart(`${id}-per-turn`, deliveryPerTurnChart(result, words, suspects)),
    paragraph(say.nextCatch(result)),
    paragraph(say.scatter(result)),
    details(
      `${id}-detail`,
      say.detail,
      paragraph(say.basis(result)),
      chart(`${id}-line`, deliveryChart(result, words, suspects)),
      catchTable(result, words, id),
      paragraph(say.constantMass(result)),
      paragraph(say.lackOfFit(result)),
      weightingTable(result, words, id),
    ),
  );
}

function catchTable(result: Delivery, { format, delivery }: Words, id: string) {
  const say = delivery.table;
  const longest = max(result.points.map(({ netKg }) => netKg));
  const unit = format.unit("mass", longest);
  const mass = (kg: number) => format.number(kg, "mass", longest);
  return table({
    id: `${id}-catches`,
    caption: say.caption(result),
    rows: result.points,
    columns: [
      { heading: say.catch, cell: (point) => format.count(point.catch) },
      { heading: say.row, align: "end", cell: ({ row }) => format.count(row) },
      { heading: say.turns, align: "end", cell: ({ turns }) => format.plain(turns, 6) },
      { heading: say.net(unit), align: "end", cell: ({ netKg }) => mass(netKg) },
      { heading: say.fitted(unit), align: "end", cell: ({ fittedKg }) => mass(fittedKg) },
      {
        heading: say.residual,
        align: "end",
        cell: ({ relativeResidual }) => format.signedPercent(relativeResidual, 1),
      },
      {
        heading: say.leverage,
        align: "end",
        cell: ({ leverage }) => format.percent(leverage, 0),
      },
    ],
  });
}

function weightingTable(result: Delivery, { format, delivery }: Words, id: string) {
  const size = result.estimate.value;
  const error = result.estimate.standardError;
  const number = (value: number | null) =>
    value === null ? delivery.unknown : format.number(value, "delivery", size, error);
  return table({
    id: `${id}-weightings`,
    caption: delivery.weightingsCaption,
    rows: result.weightings,
    columns: [
      { heading: delivery.weighting, cell: ({ law }) => delivery.laws[law] },
      {
        heading: format.unit("delivery", size),
        align: "end",
        cell: (one) => number(one.delivery),
      },
      {
        heading: delivery.standardError,
        align: "end",
        cell: ({ modelStandardError }) => number(modelStandardError),
      },
      {
        heading: delivery.robustError,
        align: "end",
        cell: ({ robustStandardError }) => number(robustStandardError),
      },
    ],
  });
}
