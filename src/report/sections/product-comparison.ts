import { productContrastsChart, productEstimatesChart } from "../../charts/product-comparison.ts";
import type {
  ProductComparison,
  ProductContrast,
  ProductEstimate,
} from "../../questions/product-comparison/result.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Row } from "../document.ts";
import { chartBlock } from "./chart-block.ts";
import { paragraph } from "./paragraph.ts";

/** How products compare: the sentence, every pair, both charts, scatter, and the figures. */
export function productComparisonSection(
  result: ProductComparison,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.productComparison;
  const contrasts = productContrastsChart(result, words);
  const sentences = result.contrasts.map((contrast) => say.contrast(contrast, result));
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(contrasts === null ? [] : [chartBlock(`${id}-contrasts`, contrasts)]),
    ...(sentences.length === 0 ? [] : [{ kind: "list", items: sentences } as const]),
    chartBlock(`${id}-estimates`, productEstimatesChart(result, words)),
    { kind: "paragraph", text: say.scatterSentence(result) },
    {
      kind: "details",
      id: `${id}-comparison-detail`,
      summary: say.detail,
      blocks: [
        { kind: "paragraph", text: say.method(result) },
        ...paragraph(say.overall(result)),
        ...(result.contrasts.length === 0 ? [] : [contrastTable(result, words, id)]),
        productTable(result, words, id),
        ...(result.scatter.contrasts.length === 0 ? [] : [scatterTable(result, words, id)]),
        { kind: "paragraph", role: "small", text: say.spreadNote },
      ],
    },
  ];
}

function contrastTable(result: ProductComparison, words: Words, id: string): Block {
  const { format, productComparison } = words;
  const say = productComparison.contrasts;
  const size = Math.max(...result.products.map(({ estimate }) => estimate.value));
  const withMargin = result.options.equivalenceMargin !== null;
  const p = (value: number | null | undefined) =>
    value == null ? productComparison.unknown : format.pNumber(value);
  const row = (contrast: ProductContrast): Row => ({
    cells: [
      say.pair(contrast.first, contrast.second),
      ...(contrast.difference === null ? [] : differenceCells(contrast.difference, size, words)),
      format.percent(contrast.ratio.value, 1),
      productComparison.ratioSet(contrast.ratio.set),
      p(contrast.pValue),
      ...(withMargin ? [p(contrast.equivalence?.adjustedPValue)] : []),
      productComparison.verdicts[contrast.verdict],
    ],
  });
  return {
    kind: "table",
    id: `${id}-contrast-table`,
    caption: say.caption(result),
    columns: [
      { heading: say.heading },
      ...(result.options.scale === "log"
        ? []
        : [
            { heading: say.difference(format.unit("delivery", size)), align: "end" } as const,
            { heading: say.interval, align: "end" } as const,
          ]),
      { heading: say.ratio, align: "end" },
      { heading: say.interval, align: "end" },
      { heading: say.pValue, align: "end" },
      ...(withMargin ? [{ heading: say.equivalence, align: "end" } as const] : []),
      { heading: say.verdict },
    ],
    rows: result.contrasts.map(row),
  };
}

function differenceCells(
  { value, standardError, interval }: Estimate,
  size: number,
  { format, productComparison }: Words,
): readonly string[] {
  const number = (kg: number) => format.number(kg, "delivery", size, standardError);
  const [lower, upper] = [interval?.lower ?? null, interval?.upper ?? null];
  return [
    number(value),
    lower === null || upper === null
      ? productComparison.unknown
      : format.range(number(lower), number(upper)),
  ];
}

function productTable(result: ProductComparison, words: Words, id: string): Block {
  const { format, productComparison } = words;
  const say = productComparison.products;
  const size = Math.max(...result.products.map(({ estimate }) => estimate.value));
  const fraction = (estimate: Estimate | null) =>
    estimate === null
      ? productComparison.unknown
      : say.withInterval(format.percent(estimate.value), percentRange(estimate, words));
  const row = ({ product, fills, catches, estimate, spread }: ProductEstimate): Row => ({
    cells: [
      product,
      format.count(fills),
      format.count(catches),
      format.number(estimate.value, "delivery", size, estimate.standardError),
      format.estimateInterval(estimate, "delivery") ?? productComparison.unknown,
      fraction(spread),
      fraction(result.scatter.products.find((one) => one.product === product)?.variation ?? null),
    ],
  });
  return {
    kind: "table",
    id: `${id}-product-table`,
    caption: say.caption,
    columns: [
      { heading: say.product },
      { heading: say.fills, align: "end" },
      { heading: say.catches, align: "end" },
      { heading: say.mean(format.unit("delivery", size)), align: "end" },
      { heading: say.interval, align: "end" },
      { heading: say.spread, align: "end" },
      { heading: say.scatter(result.scatter.turns), align: "end" },
    ],
    rows: result.products.map(row),
  };
}

function percentRange({ interval }: Estimate, { format }: Words): string | null {
  const [lower, upper] = [interval?.lower ?? null, interval?.upper ?? null];
  return lower === null || upper === null
    ? null
    : format.range(format.percent(lower), format.percent(upper));
}

function scatterTable({ scatter }: ProductComparison, words: Words, id: string): Block {
  const { format, productComparison } = words;
  const say = productComparison.scatterTable;
  return {
    kind: "table",
    id: `${id}-scatter-table`,
    caption: say.caption,
    columns: [
      { heading: say.pair },
      { heading: say.ratio, align: "end" },
      { heading: say.pValue, align: "end" },
      { heading: say.method },
    ],
    rows: scatter.contrasts.map(({ first, second, ratio, pValue, method }) => ({
      cells: [
        productComparison.contrasts.pair(first, second),
        ratio === null ? productComparison.unknown : ratioCell(ratio, words),
        pValue === null ? productComparison.unknown : format.pNumber(pValue),
        say.methods[method],
      ],
    })),
  };
}

function ratioCell({ value, interval }: Estimate, { format, productComparison }: Words): string {
  const [lower, upper] = [interval?.lower ?? null, interval?.upper ?? null];
  return productComparison.products.withInterval(
    format.plain(value),
    lower === null || upper === null
      ? null
      : format.range(format.plain(lower), format.plain(upper)),
  );
}
