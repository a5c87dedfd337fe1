import { limits } from "../../data/limits.ts";
import { at } from "../../errors/at.ts";
import type { ComparedProducts } from "../../model/compare-products.ts";
import type { Designed } from "../../model/comparison-design.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import { type Caution, caution } from "../../results/caution.ts";
import { bartlettTest } from "../../statistics/bartlett.ts";
import type { MeanContrast } from "../../statistics/mean-comparison.ts";
import { sampleOf } from "../../statistics/sample.ts";
import { pairsAsked, tooManyPairs } from "./pairs.ts";
import type {
  ProductComparison,
  ProductComparisonOptions,
  ProductScatterComparison,
} from "./result.ts";
import { unusedBlocks } from "./unused-blocks.ts";

export interface ComparisonFindings {
  readonly all: readonly ProductGroup[];
  /** Products with enough fills to be compared. */
  readonly usable: readonly ProductGroup[];
  /** Null when fewer than two can be. */
  readonly compared: ComparedProducts | null;
  /** As `ProductComparison.input` has them. */
  readonly blocks: ProductComparison["input"]["blocks"];
  /** By catches as if they were fills. */
  readonly byCatches: readonly MeanContrast[];
  readonly scatter: ProductScatterComparison;
  readonly options: Designed<ProductComparisonOptions>;
}

const comfortableFills = 4;
const significance = 0.05;

/** Everything about a comparison of products that a person should know before relying on it. */
export function comparisonCautions(findings: ComparisonFindings): readonly Caution[] {
  return [
    ...aboutFills(findings),
    ...aboutBins(findings),
    ...aboutBlocks(findings),
    ...aboutSpread(findings),
    ...aboutVerdicts(findings),
    ...aboutScatter(findings),
  ];
}

function aboutFills({ all, usable, options }: ComparisonFindings): Caution[] {
  const found = all.flatMap(({ product, fills }) => {
    if (fills.length < 2) return [caution("product-not-repeated", { product }, {})];
    return fills.length < comfortableFills
      ? [caution("product-few-fills", { product }, { fills: fills.length })]
      : [];
  });
  if (tooManyPairs(usable, options))
    return [
      ...found,
      caution("too-many-pairs", {}, { products: usable.length, pairs: limits.pairs }),
    ];
  return pairsAsked(usable, options).length === 0
    ? [...found, caution("nothing-to-compare", {}, { products: usable.length })]
    : found;
}

function aboutBins({ usable, options }: ComparisonFindings): Caution[] {
  if (options.blocks === "bin" || usable.length < 2) return [];
  const sets = usable.map(({ bins }) => [...bins].sort().join("\n"));
  if (new Set(sets).size === 1 || tooManyPairs(usable, options)) return [];
  const shared = pairsAsked(usable, { ...options, pairs: "sharing a bin" });
  const apart = pairsAsked(usable, options).length > shared.length;
  const bins = [...new Set(usable.flatMap((group) => group.bins))];
  return [caution(apart ? "products-in-different-bins" : "products-share-some-bins", {}, { bins })];
}

function aboutBlocks({ usable, compared, blocks, options }: ComparisonFindings): Caution[] {
  if (usable.length < 2) return [];
  if (options.blocks === null) {
    const unused = unusedBlocks(usable);
    return unused === null ? [] : [caution("blocks-not-used", {}, unused)];
  }
  const { count, complete } = blocks ?? { count: 0, complete: 0 };
  const pooled = options.spread === "common";
  const without = usable.flatMap(({ fills }) => fills).filter(({ block }) => block === null).length;
  const wanted = pairsAsked(usable, options).length;
  const untried = wanted - (compared?.contrasts.length ?? 0);
  return [
    ...(without > 0 ? [caution("fills-without-block", {}, { fills: without })] : []),
    ...(complete < count
      ? [caution("blocks-incomplete", {}, { blocks: count, complete, pooled })]
      : []),
    ...(untried > 0 ? [caution("pairs-share-no-blocks", {}, { pairs: untried })] : []),
  ];
}

function aboutSpread({ usable, compared, options }: ComparisonFindings): Caution[] {
  const samples = usable.map(({ product, fills }) => ({
    product,
    ...sampleOf(fills.map(({ fill }) => fill.delivery)),
  }));
  const still = samples
    .filter(({ variance }) => variance === 0)
    .map(({ product, n }) => caution("product-without-spread", { product }, { fills: n }));
  if (options.spread === "separate" || options.blocks !== null || compared === null) return still;
  const test = bartlettTest(
    samples.map(({ n, variance, mean }) => ({
      sumOfSquares: (n - 1) * (options.scale === "log" ? variance / mean ** 2 : variance),
      df: n - 1,
    })),
  );
  return test !== null && test.pValue < significance
    ? [...still, caution("common-spread-doubtful", {}, { pValue: test.pValue })]
    : still;
}

function aboutVerdicts({ usable, compared, byCatches, options }: ComparisonFindings): Caution[] {
  const contrasts = compared?.contrasts ?? [];
  const pairOf = ({ first, second }: MeanContrast) => `${first}:${second}`;
  const ofCatches = new Map(byCatches.map((contrast) => [pairOf(contrast), contrast]));
  const misled = contrasts.flatMap((right) => {
    const wrong = ofCatches.get(pairOf(right));
    if (wrong === undefined || wrong.pValue === null || right.pValue === null) return [];
    if (wrong.verdict === right.verdict) return [];
    const facts = {
      first: at(usable, right.first).product,
      second: at(usable, right.second).product,
      verdict: right.verdict,
      pValue: right.pValue,
      wrongVerdict: wrong.verdict,
      wrongPValue: wrong.pValue,
    };
    return [caution("catches-would-mislead", {}, facts)];
  });
  const undecided = contrasts.filter(({ verdict }) => verdict === "undecided").length;
  return options.equivalenceMargin === null && undecided > 0
    ? [...misled, caution("no-equivalence-margin", {}, { pairs: undecided })]
    : misled;
}

function aboutScatter({ scatter }: ComparisonFindings): Caution[] {
  const hidden = scatter.products
    .filter(({ withoutScatter }) => withoutScatter > 0)
    .map(({ product, withoutScatter }) =>
      caution("fills-without-scatter", { product }, { fills: withoutScatter }),
    );
  const untested = scatter.contrasts.filter(({ method }) => method === "none").length;
  return untested > 0
    ? [...hidden, caution("scatter-not-compared", {}, { pairs: untested })]
    : hidden;
}
