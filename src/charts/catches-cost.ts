import type { Cost } from "../questions/cost.ts";
import type { Words } from "../wording/words.ts";
import { cheapestLayer } from "./cheapest.ts";
import { hints } from "./hints.ts";

/** What so many catches of every fill cost, in money for each hectare (or acre). */
export interface Total {
  readonly catches: number;
  readonly total: number;
  readonly label: string;
}

export function totalsOf(cost: Cost, words: Words, most: number): readonly Total[] {
  const perArea = words.format.convert(1, "area", 1);
  return cost.points.flatMap(({ catches, totalPerHectare }) =>
    totalPerHectare === null || catches > most
      ? []
      : [
          {
            catches,
            total: totalPerHectare / perArea,
            label: words.cost.perArea(totalPerHectare, cost),
          },
        ],
  );
}

/** What catches cost, below what they buy. */
export function catchesCostLayers(
  totals: readonly Total[],
  cost: Cost,
  words: Words,
  x: object,
): readonly object[] {
  const say = words.cost.chart;
  const y = {
    field: "total",
    type: "quantitative",
    title: say.cost(cost),
    scale: { zero: true },
  };
  const least = totals.filter(({ catches }) => catches === cost.cheapest?.catches);
  const said = hints([
    { field: "catches", title: say.catches },
    { field: "label", title: say.cost(cost) },
  ]);
  return [
    {
      data: { values: totals },
      mark: { type: "line", style: "estimate" },
      encoding: { x, y },
    },
    {
      data: { values: totals },
      mark: { type: "point", style: "observation" },
      encoding: { x, y, ...said },
    },
    ...(least.length > 0 ? [cheapestLayer(least, x, y)] : []),
  ];
}
