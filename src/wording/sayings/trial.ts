import type { Trial } from "../../analysis/trial.ts";
import type {
  ProductComparison,
  ProductStanding,
} from "../../questions/product-comparison/result.ts";
import type { ComparisonVerdict } from "../../statistics/mean-comparison.ts";
import type { productComparison as productTemplates } from "../en/product-comparison.ts";
import type { trial as templates } from "../en/trial.ts";
import type { Format } from "../format.ts";
import { leftOutSaying } from "./left-out.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about a trial beyond those about its pairs of products. */
export function trialSayings(
  format: Format,
  say: typeof templates,
  products: typeof productTemplates,
) {
  const leftOut = leftOutSaying(format, products);
  const percent = (ratio: number) => format.percent(ratio, 1);
  const marginOf = ({ options: { equivalenceMargin: margin } }: ProductComparison) =>
    margin === null ? null : format.plusMinus(margin);
  const level = ({ options }: ProductComparison) => format.percent(options.level, 0);
  const order = ({ products, options }: ProductComparison): string => {
    const names = format.list(products.map(({ product }) => product));
    if (options.order === "by size") return say.bySize(names);
    return options.products === null ? say.inFile(names) : say.listed(names);
  };
  const progress = ({ planned, behind }: Trial): string | null => {
    if (planned.fills === null) return null;
    if (behind.length === 0) return say.complete({ fills: planned.fills });
    const products = format.list(behind.map((one) => say.ofProduct(one)));
    return say.behind({ fills: planned.fills, products });
  };
  const listed = (names: readonly string[], saying: (names: string) => string) =>
    names.length === 0 ? null : saying(format.list(names));
  const standing = ({ product, ratio, lower, upper }: ProductStanding) =>
    say.standing({
      product,
      ratio: percent(ratio),
      ends: format.range(percent(lower), percent(upper)),
    });

  return {
    ...say.labels,
    bins: say.bins,
    /** What was compared, in which blocks, and what was not. */
    sentence: ({ input, compared, options }: ProductComparison): string => {
      if (compared === null) return say.caught(input);
      const { blocks } = input;
      return sentences(
        blocks === null || options.blocks === null
          ? say.byFill(compared)
          : say.inBlocks({
              ...compared,
              blocks: blocks.count,
              complete: blocks.complete,
              by: options.blocks,
            }),
        leftOut(compared),
      );
    },
    /** In which order, against what, and how much of it is caught. */
    plan: (trial: Trial, comparison: ProductComparison): string =>
      sentences(
        order(comparison),
        comparison.options.reference === null ? null : say.reference(comparison.options.reference),
        progress(trial),
        listed(trial.notCaught, say.notCaught),
        listed(trial.notPlanned, say.notPlanned),
      ),
    margin: ({ options: { equivalenceMargin: margin } }: ProductComparison): string =>
      margin === null
        ? say.noMargin
        : say.margin({
            margin: format.plusMinus(margin),
            limits: format.range(percent(1 / (1 + margin)), percent(1 + margin)),
          }),
    /** How pairs are judged, and how many would come out otherwise; null: no pair could be compared. */
    judged: (comparison: ProductComparison): string | null => {
      const { method, contrasts } = comparison;
      if (method === null) return null;
      const otherwise = contrasts.filter(
        ({ verdict, notAlike }) => notAlike !== null && notAlike.verdict !== verdict,
      ).length;
      return sentences(
        say.judged({ method: products.labels.methods[method], level: level(comparison) }),
        otherwise === 0 ? null : say.judgedOtherwise(otherwise),
      );
    },
    /** The heading of pairs that came out alike. */
    outcome: (verdict: ComparisonVerdict, count: number, comparison: ProductComparison): string =>
      say.outcome({
        outcome: say.outcomes[verdict]({ margin: marginOf(comparison) }),
        count,
        of: comparison.contrasts.length,
      }),
    overlap: (comparison: ProductComparison) => say.overlap(level(comparison)),
    standings: {
      ...say.labels.chart,
      said: (ratio: number) => percent(ratio),
      description: (standings: readonly ProductStanding[]) =>
        say.standingsDescription({ all: standings.map(standing).join("; ") }),
    },
  };
}
