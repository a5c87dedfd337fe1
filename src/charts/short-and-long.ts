import type { AcrossFills } from "../questions/across-fills.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

const height = 340;

/**
 * Whether short and long catches agree: Youden's plot, a point a fill, with the line of agreement and the circle of chance.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in the units the words
 *          show; null with fewer than three fills with catches of both kinds
 */
export function shortAndLongChart(result: AcrossFills, words: Words): ChartSpec | null {
  const { shortAndLong, options, mean } = result;
  if (shortAndLong === null) return null;
  const { format, charts: key } = words;
  const say = words.acrossFills.shortAndLong;
  const unit = format.unit("delivery", mean.value);
  const shown = ({ short, long }: { readonly short: number; readonly long: number }) => ({
    short: format.convert(short, "delivery", mean.value),
    long: format.convert(long, "delivery", mean.value),
  });
  const scale = { zero: false, nice: false, padding: 8 };
  const encoding = {
    x: { field: "short", type: "quantitative", title: say.short(unit), scale },
    y: { field: "long", type: "quantitative", title: say.long(unit), scale },
  };
  return withNamedData({
    ...baseSpec({
      marks: format.marks,
      title: say.title(result),
      description: say.description(shortAndLong.fills, mean.value),
      height,
    }),
    layer: [
      {
        data: { values: shortAndLong.alike.map(shown) },
        mark: { type: "line", style: "reference" },
        encoding,
      },
      {
        data: { values: shortAndLong.outline.map((one, order) => ({ ...shown(one), order })) },
        mark: { type: "line", style: "next-edge" },
        encoding: { ...encoding, order: { field: "order", type: "quantitative" } },
      },
      {
        data: {
          values: shortAndLong.fills.map((one) => ({
            ...shown(one),
            words: say.point(one, mean.value),
          })),
        },
        mark: { type: "point", style: "observation" },
        encoding: { ...encoding, ...sentenceHint("words") },
      },
      ...keyLayer([
        ...keyed("observation", key.fill),
        ...keyed("reference", key.shortAsLong),
        ...keyed("next-edge", key.chanceAlone(options.level)),
      ]),
    ],
  });
}
