import type { ProductContrast } from "../questions/product-comparison/result.ts";
import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { type KeyEntry, keyed, keyLayer, lineShape } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import {
  type Axes,
  axesOf,
  frameHeight,
  intervalLayer,
  lineBreak,
  pointLayer,
  rowHeight,
} from "./product-rows.ts";
import { baseSpec, chartStyles } from "./theme.ts";

/** The interval that equivalence is read off: thick, and paler than the one that lies on it. */
const ownLook = { style: "interval", size: 7, opacity: 0.6 } as const;
const thickShape = "M-1.6,-0.5L1.6,-0.5L1.6,0.5L-1.6,0.5Z";
const pooledDash = [4, 3];
/** Pixels by which a pair with spreads not assumed alike stands below its pooled line. */
const notAlikeBelow = 11;

/**
 * Every pair of products: the first in percent of the second with its simultaneous interval, and the line of no
 * difference. With a margin its band, and thick the interval that equivalence is read off; below, dashed, the pair with
 * spreads not assumed alike where one spread is pooled.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null when no
 *          pair could be compared
 */
export function productContrastsChart(result: ProductComparison, words: Words): ChartSpec | null {
  if (result.contrasts.length === 0) return null;
  const say = words.productComparison.charts.contrasts;
  const values = contrastRows(result, words);
  const axes = axesOf(
    "pair",
    values.map(({ pair }) => pair),
    say.ratio,
  );
  const tooltip = [
    { field: "pair", title: say.pair },
    { field: "said", title: say.ratio },
    { field: "verdict", title: say.verdict },
  ];
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title,
      description: say.description(result),
      height: frameHeight + rowHeight * values.length,
    }),
    layer: [
      ...equivalenceBand(result, axes),
      {
        data: { values: [{ ratio: 100 }] },
        mark: { type: "rule", style: "reference" },
        encoding: { x: axes.x("ratio") },
      },
      ...intervalLayer(
        result.contrasts.map((one) => endsOf(one, one.equivalence?.set, words)),
        axes,
        ownLook,
      ),
      ...intervalLayer(
        result.contrasts.map((one) => endsOf(one, one.notAlike?.ratio.set, words)),
        axes,
        {
          strokeDash: pooledDash,
          yOffset: notAlikeBelow,
        },
      ),
      ...intervalLayer(values, axes),
      ...[...new Set(values.map(({ different }) => different))].map((different) =>
        pointLayer(
          values.filter((one) => one.different === different),
          different ? "observation" : "earlier",
          axes,
          "ratio",
          tooltip,
        ),
      ),
      ...keyLayer(keyOf(result, words)),
    ],
  });
}

function keyOf(
  { contrasts, options }: ProductComparison,
  { charts: key }: Words,
): readonly KeyEntry[] {
  const some = (has: (contrast: ProductContrast) => boolean) => contrasts.some(has);
  const found = some(({ differenceFound }) => differenceFound);
  const notFound = some(({ differenceFound }) => !differenceFound);
  const { color } = chartStyles.estimate;
  const ownLevel = 2 * options.level - 1;
  const { equivalenceMargin: margin } = options;
  return [
    ...keyed("observation", key.differenceFound, found),
    ...keyed("earlier", key.noneFound, notFound),
    ...keyed("estimate", key.together(options.level)),
    ...(some(({ equivalence }) => equivalence !== null) && margin !== null
      ? [
          ...keyed(
            { shape: thickShape, fill: chartStyles.interval.color },
            key.pairAlone(ownLevel),
          ),
          ...keyed("band", key.equivalent(margin)),
        ]
      : []),
    ...keyed(
      { shape: lineShape, stroke: color, dash: pooledDash },
      key.notAlike,
      some(({ notAlike }) => notAlike !== null),
    ),
    ...keyed("reference", key.noDifference),
  ];
}

function contrastRows({ contrasts }: ProductComparison, words: Words) {
  return contrasts.map((contrast) => ({
    ...endsOf(contrast, contrast.ratio.set, words),
    ratio: 100 * contrast.ratio.value,
    said: words.format.percent(contrast.ratio.value, 1),
    verdict: words.productComparison.verdicts[contrast.verdict],
    different: contrast.differenceFound,
  }));
}

/** A pair's row with the ends of one of its intervals, in percent; null where there is none. */
function endsOf(
  { first, second }: ProductContrast,
  set: ProductContrast["ratio"]["set"] | undefined,
  { productComparison: say }: Words,
) {
  const interval = set?.shape === "interval" ? set : null;
  return {
    pair: say.contrasts.pair(first, second, lineBreak),
    lower: interval === null ? null : 100 * interval.lower,
    upper: interval === null ? null : 100 * interval.upper,
  };
}

function equivalenceBand(
  { contrasts, options }: ProductComparison,
  { x }: Axes,
): readonly object[] {
  const limits = contrasts.find(({ equivalence }) => equivalence !== null)?.equivalence ?? null;
  if (limits === null || options.equivalenceMargin === null) return [];
  return [
    {
      data: { values: [{ lower: 100 * limits.lowerLimit, upper: 100 * limits.upperLimit }] },
      mark: { type: "rect", style: "band" },
      encoding: { x: x("lower"), x2: { field: "upper" } },
    },
  ];
}
