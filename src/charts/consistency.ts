import type { Consistency } from "../questions/repeatability/consistency.ts";
import type { Repeatability } from "../questions/repeatability.ts";
import { defaults } from "../results/defaults.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { chartStyles, stackedSpec } from "./theme.ts";

const viewHeight = 150;
/** More than these cannot be told apart side by side. */
const mostGroups = 60;
/** Level marks of a limit, across the place of a group. */
const across = "M-1,0L1,0";

/**
 * Which fill, or which operator, is unlike the others: Mandel's h of the means above, k of the scatters below, each against
 * what chance exceeds in 5 and in 1 of 100.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's; null with fewer than three
 *          groups, and with too many to be told apart
 */
export function consistencyChart(
  result: Repeatability,
  by: Consistency["by"],
  words: Words,
): ChartSpec | null {
  const found = result.consistency.find((one) => one.by === by);
  if (found === undefined || found.groups.length > mostGroups) return null;
  const say = words.repeatability.consistency;
  const { groups, hLimits } = found;
  const names = groups.map(({ name }) => name);
  const x = {
    field: "name",
    type: "ordinal",
    title: say.names[by],
    scale: { domain: names },
    axis: { labelAngle: 0, labelOverlap: true },
  };
  const points = groups.map(({ name, h, k }) => ({
    name,
    h,
    k,
    words: say.point({ name, h, k }, by),
  }));
  const hRows = groups.flatMap(({ name }) =>
    hLimits.flatMap((limit, place) => [
      { name, place, limit },
      { name, place, limit: -limit },
    ]),
  );
  const kRows = groups.flatMap(({ name, kLimits }) =>
    kLimits.map((limit, place) => ({ name, place, limit })),
  );
  const view = (field: "h" | "k", title: string, rows: readonly { readonly place: number }[]) => {
    const y = (one: string) => ({ field: one, type: "quantitative", title });
    return [
      ...looks.map(({ style }, place) => ({
        data: { values: rows.filter((row) => row.place === place) },
        mark: { type: "tick", style, thickness: place + 1, size: 14 },
        encoding: { x, y: y("limit") },
      })),
      {
        data: { values: points },
        mark: { type: "point", style: "observation" },
        encoding: { x, y: y(field), ...sentenceHint("words") },
      },
    ];
  };
  return withNamedData(
    stackedSpec(
      {
        marks: words.format.marks,
        title: say.title(result, by),
        description: say.description(found),
      },
      [
        {
          height: viewHeight,
          layer: [
            ...view("h", say.h, hRows),
            ...keyLayer([
              ...keyed("observation", say.key[by]),
              ...looks.flatMap(({ style, chance }) =>
                keyed(
                  { shape: across, stroke: chartStyles[style].color },
                  words.charts.byChance(chance),
                ),
              ),
            ]),
          ],
        },
        { height: viewHeight, layer: view("k", say.k, kRows) },
      ],
    ),
  );
}

const [often, seldom] = defaults.beyondByChance;
/** The pairs of limits, the inner one first. */
const looks = [
  { style: "interval", chance: often },
  { style: "reference", chance: seldom },
] as const;
