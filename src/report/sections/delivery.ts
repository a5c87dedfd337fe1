import { deliveryChart, deliveryPerTurnChart } from "../../charts/delivery.ts";
import type { Delivery } from "../../questions/delivery.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Row } from "../document.ts";
import { chartBlock } from "./chart-block.ts";
import { paragraph } from "./paragraph.ts";

/**
 * The delivery of one fill: the sentence, the chart, the catches, and how it was computed.
 *
 * @param id        prefix for the ids of this bin's blocks
 * @param suspects  catch numbers to mark in chart and table
 */
export function deliverySection(
  result: Delivery,
  words: Words,
  id: string,
  suspects: readonly number[] = [],
): readonly Block[] {
  const say = words.delivery;
  const next = say.nextCatch(result);
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...paragraph(say.hull(result)),
    chartBlock(`${id}-delivery-per-turn`, deliveryPerTurnChart(result, words, suspects)),
    ...(next === null ? [] : [{ kind: "paragraph", text: next } as const]),
    { kind: "paragraph", text: say.scatter(result) },
    {
      kind: "details",
      id: `${id}-delivery-detail`,
      summary: say.detail,
      blocks: [
        { kind: "paragraph", text: say.basis(result) },
        chartBlock(`${id}-delivery`, deliveryChart(result, words, suspects)),
        catchTable(result, words, id),
        { kind: "paragraph", text: say.constantMass(result) },
        { kind: "paragraph", text: say.lackOfFit(result) },
        weightingTable(result, words, id),
      ],
    },
  ];
}

function catchTable(result: Delivery, words: Words, id: string): Block {
  const { format, delivery } = words;
  const say = delivery.table;
  const longest = Math.max(...result.points.map(({ netKg }) => netKg));
  const unit = format.unit("mass", longest);
  const mass = (kg: number) => format.number(kg, "mass", longest);
  return {
    kind: "table",
    id: `${id}-catches`,
    caption: say.caption(result),
    columns: [
      { heading: say.catch },
      { heading: say.row, align: "end" },
      { heading: say.turns, align: "end" },
      { heading: say.net(unit), align: "end" },
      { heading: say.fitted(unit), align: "end" },
      { heading: say.residual, align: "end" },
      { heading: say.leverage, align: "end" },
    ],
    rows: result.points.map((point) => ({
      cells: [
        format.count(point.catch),
        format.count(point.row),
        format.plain(point.turns, 6),
        mass(point.netKg),
        mass(point.fittedKg),
        format.signedPercent(point.relativeResidual, 1),
        format.percent(point.leverage, 0),
      ],
    })),
  };
}

function weightingTable(result: Delivery, words: Words, id: string): Block {
  const { format, delivery } = words;
  const size = result.estimate.value;
  const error = result.estimate.standardError;
  const cell = (value: number | null) =>
    value === null ? delivery.unknown : format.number(value, "delivery", size, error);
  const unit = format.unit("delivery", size);
  return {
    kind: "table",
    id: `${id}-weightings`,
    caption: delivery.weightingsCaption,
    columns: [
      { heading: delivery.weighting },
      { heading: unit, align: "end" },
      { heading: delivery.standardError, align: "end" },
      { heading: delivery.robustError, align: "end" },
    ],
    rows: result.weightings.map(
      (one): Row => ({
        cells: [
          delivery.laws[one.law],
          cell(one.delivery),
          cell(one.modelStandardError),
          cell(one.robustStandardError),
        ],
      }),
    ),
  };
}
