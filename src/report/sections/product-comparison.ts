import { max } from "simple-statistics";
import { productEstimatesChart } from "../../charts/product-comparison.ts";
import { productContrastsChart } from "../../charts/product-contrasts.ts";
import type { ProductComparison } from "../../questions/product-comparison/result.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block, Details } from "../document.ts";
import { smallestError } from "../smallest-error.ts";

/** How products compare: the sentence, every pair, both charts, scatter, and the figures. */
export function productComparisonSection(
  result: ProductComparison,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.productComparison;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    chart(`${id}-contrasts`, productContrastsChart(result, words)),
    paragraph(say.charts.contrasts.lines(result), "small"),
    list(result.contrasts.map((contrast) => say.contrast(contrast, result))),
    paragraph(say.pooled(result)),
    chart(`${id}-estimates`, productEstimatesChart(result, words)),
    paragraph(say.scatterSentence(result)),
    productFigures(result, words, id, say.detail),
  );
}

/** How products compare in figures, folded away under a summary. */
export function productFigures(
  result: ProductComparison,
  words: Words,
  id: string,
  summary: string,
): Details | null {
  const say = words.productComparison;
  return details(
    `${id}-comparison-detail`,
    summary,
    paragraph(say.method(result)),
    paragraph(say.overall(result)),
    contrastTable(result, words, id),
    productTable(result, words, id),
    scatterTable(result, words, id),
    paragraph(say.spreadNote, "small"),
  );
}

function contrastTable(result: ProductComparison, words: Words, id: string) {
  const { format, productComparison } = words;
  const say = productComparison.contrasts;
  const size = largestDelivery(result);
  const hasDifferences = result.scale !== "log";
  const hasMargin = result.options.equivalenceMargin !== null;
  const isPooled = result.contrasts.some(({ notAlike }) => notAlike !== null);
  const p = (value: number | null | undefined) =>
    value == null ? productComparison.unknown : format.pNumber(value);
  const error = smallestError(result.contrasts.flatMap(({ difference }) => difference ?? []));
  const kilograms = (value: number) => format.number(value, "delivery", size, error);
  return table({
    id: `${id}-contrast-table`,
    caption: say.caption(result),
    rows: result.contrasts,
    columns: [
      { heading: say.heading, cell: ({ first, second }) => say.pair(first, second) },
      hasDifferences
        ? {
            heading: say.difference(format.unit("delivery", size)),
            align: "end",
            cell: ({ difference }) => (difference === null ? "" : kilograms(difference.value)),
          }
        : null,
      hasDifferences
        ? {
            heading: say.interval,
            align: "end",
            cell: ({ difference }) =>
              difference === null
                ? ""
                : (rangeOf(difference, words, kilograms) ?? productComparison.unknown),
          }
        : null,
      { heading: say.ratio, align: "end", cell: ({ ratio }) => format.percent(ratio.value, 1) },
      {
        heading: say.interval,
        align: "end",
        cell: ({ ratio }) => productComparison.ratioSet(ratio.set),
      },
      { heading: say.pValue, align: "end", cell: ({ pValue }) => p(pValue) },
      hasMargin
        ? {
            heading: say.equivalence(result),
            align: "end",
            cell: ({ equivalence }) => productComparison.ratioSet(equivalence?.set ?? null),
          }
        : null,
      { heading: say.verdict, cell: ({ verdict }) => productComparison.verdicts[verdict] },
      isPooled
        ? {
            heading: say.notAlike,
            align: "end",
            cell: ({ notAlike }) => productComparison.notAlike(notAlike),
          }
        : null,
    ],
  });
}

function productTable(result: ProductComparison, words: Words, id: string) {
  const { format, productComparison } = words;
  const say = productComparison.products;
  const size = largestDelivery(result);
  const percent = (value: number) => format.percent(value);
  const fraction = (estimate: Estimate | null | undefined) =>
    estimate == null
      ? productComparison.unknown
      : say.withInterval(percent(estimate.value), rangeOf(estimate, words, percent));
  const error = smallestError(result.products.map(({ estimate }) => estimate));
  return table({
    id: `${id}-product-table`,
    caption: say.caption,
    rows: result.products,
    columns: [
      { heading: say.product, cell: ({ product }) => product },
      { heading: say.fills, align: "end", cell: ({ fills }) => format.count(fills) },
      { heading: say.catches, align: "end", cell: ({ catches }) => format.count(catches) },
      {
        heading: say.mean(format.unit("delivery", size)),
        align: "end",
        cell: ({ estimate }) => format.number(estimate.value, "delivery", size, error),
      },
      {
        heading: say.interval,
        align: "end",
        cell: ({ estimate }) =>
          format.estimateInterval(estimate, "delivery", error) ?? productComparison.unknown,
      },
      { heading: say.spread, align: "end", cell: ({ spread }) => fraction(spread) },
      {
        heading: say.scatter(result.scatter.turns),
        align: "end",
        cell: ({ product }) =>
          fraction(result.scatter.products.find((one) => one.product === product)?.variation),
      },
    ],
  });
}

function scatterTable({ scatter }: ProductComparison, words: Words, id: string) {
  const { format, productComparison } = words;
  const { scatterTable: say, contrasts, products, unknown } = productComparison;
  const ratioOf = (value: number) => format.fixed(value, 2);
  return table({
    id: `${id}-scatter-table`,
    caption: say.caption,
    rows: scatter.contrasts,
    columns: [
      { heading: say.pair, cell: ({ first, second }) => contrasts.pair(first, second) },
      {
        heading: say.ratio,
        align: "end",
        cell: ({ ratio }) =>
          ratio === null
            ? unknown
            : products.withInterval(ratioOf(ratio.value), rangeOf(ratio, words, ratioOf)),
      },
      {
        heading: say.pValue,
        align: "end",
        cell: ({ pValue }) => (pValue === null ? unknown : format.pNumber(pValue)),
      },
      { heading: say.method, cell: ({ method }) => say.methods[method] },
    ],
  });
}

function largestDelivery({ products }: ProductComparison): number {
  return max(products.map(({ estimate }) => estimate.value));
}

/** Both limits in words; null where one is not known. */
function rangeOf(
  { interval }: Estimate,
  { format }: Words,
  said: (limit: number) => string,
): string | null {
  const [lower, upper] = [interval?.lower ?? null, interval?.upper ?? null];
  return lower === null || upper === null ? null : format.range(said(lower), said(upper));
}
