import { sum } from "simple-statistics";
import { OptionError } from "../errors/errors.ts";
import {
  type ComparedProducts,
  compareByCatches,
  compareProducts,
} from "../model/compare-products.ts";
import { designed } from "../model/comparison-design.ts";
import type { Model } from "../model/model.ts";
import { blockNames, type ProductGroup, productGroups } from "../model/product-groups.ts";
import { requireModelOptions } from "../results/options.ts";
import { completeBlocks } from "../statistics/comparison-layout.ts";
import { comparisonCautions } from "./product-comparison/cautions.ts";
import { comparedBlocks, comparedFills } from "./product-comparison/compared-fills.ts";
import { productContrasts } from "./product-comparison/contrasts.ts";
import { productEstimate } from "./product-comparison/estimates.ts";
import { inOrder } from "./product-comparison/order.ts";
import { pairsAsked } from "./product-comparison/pairs.ts";
import type { ProductComparison, ProductComparisonOptions } from "./product-comparison/result.ts";
import { scatterComparison } from "./product-comparison/scatter.ts";
import { productStandings } from "./product-comparison/standings.ts";

export type { ProductComparison, ProductComparisonOptions };

const fewestFills = 2;

/**
 * Which products does the meter deliver differently, by how much, and which are equivalent within a margin?
 *
 * One value a fill, the ratio of sums Σm/Σt: a fill is the experimental unit, its catches are not. Without blocks: all
 * pairs by Games and Howell (each product its own spread) or, where a common spread is declared, by Tukey and Kramer;
 * against a reference by Dunnett's procedure in either form. Within complete blocks, by design up to 8 of them: logarithms
 * of the fill estimates, one residual variance s² on (blocks − 1)·(products − 1) degrees of freedom, all pairs by Tukey's
 * studentized range ± q·s/√blocks, against a reference by Dunnett ± c·s·√(2/blocks); beside it, and elsewhere within
 * blocks alone, paired t tests with Bonferroni's adjustment. Ratios that are not computed on logarithms by Fieller's set
 * with the same critical values. What is decided is read off the intervals: different where the simultaneous one leaves out
 * equality; equivalent where the pair's own interval at level 2·level − 1 lies within the margin.
 *
 * @param model    as fitted; a product's fills are taken together over its bins
 * @param options  from `productComparisonOptions`
 * @returns        simultaneous intervals with single-step p-values; verdict of every pair: different, equivalent within
 *                 the margin, different by less than the margin, or undecided
 * Null when       a product has one fill (caution product-not-repeated); fills of a pair do not scatter (caution
 *                 product-without-spread; verdict untested), or within blocks the differences of a pair do not
 * @throws         OptionError when the reference is no product of the file, blocks name no column, or the log scale
 *                 meets a delivery that is not above zero
 * Assumes         independent, roughly normal fills (or blocks); a pooled spread, that products spread alike in
 *                 proportion. Any false difference, instead of 5 %: pooled blocks with spreads of 1 to 4 in 5–9 %;
 *                 Games–Howell with unequal spreads and numbers in 6–8 %, Tukey then in 15 %; catches as units in 30–44 %
 * Source          Tukey 1953; Games & Howell 1976; Kramer 1956; Dunnett 1955; Hasler & Hothorn 2008; Fieller 1954;
 *                 Schuirmann 1987; full references at each routine in src/statistics
 */
export function productComparison(
  model: Model,
  options: ProductComparisonOptions,
): ProductComparison {
  requireModelOptions(options);
  checkAgainst(model, options);
  const all = inOrder(productGroups(model, options.blocks), options);
  const usable = all.filter(({ fills }) => fills.length >= fewestFills);
  const design = designed(usable, options);
  const comparable = pairsAsked(usable, options).length > 0;
  const compared = comparable
    ? asked(
        compareProducts(usable, design, ({ delivery }) => delivery),
        usable,
        options,
      )
    : null;
  const byCatches = comparable ? compareByCatches(usable, design) : [];
  const blocks = blocksOf(compared, usable);
  const scatter = scatterComparison(all, pairsAsked(all, options), options.level);
  const names = usable.map(({ product }) => product);
  return {
    kind: "product-comparison",
    options,
    input: inputOf(all, blocks),
    compared: comparedFills(all, usable, compared?.contrasts ?? [], blocks !== null),
    products: all.map((group) => productEstimate(group, options.level)),
    scale: design.scale,
    method: compared?.method ?? null,
    overall: compared?.overall ?? null,
    standings: compared === null ? null : productStandings(compared, names, design.scale),
    contrasts: compared === null ? [] : productContrasts(compared, names, design),
    scatter,
    cautions: comparisonCautions({
      all,
      usable,
      compared,
      blocks,
      byCatches,
      scatter,
      options: design,
    }),
  };
}

/** A comparison without the pairs that are not asked about. */
function asked(
  compared: ComparedProducts,
  usable: readonly ProductGroup[],
  options: ProductComparisonOptions,
): ComparedProducts {
  const wanted = pairsAsked(usable, options);
  const contrasts = compared.contrasts.filter((contrast) =>
    wanted.some(({ first, second }) => first === contrast.first && second === contrast.second),
  );
  return { ...compared, contrasts };
}

/** Null without blocks; where no pair shares enough of them, all there are. */
function blocksOf(
  compared: ComparedProducts | null,
  usable: readonly ProductGroup[],
): ProductComparison["input"]["blocks"] {
  const rows = compared?.blocks?.rows;
  if (compared === null || rows === undefined) return null;
  return compared.contrasts.length === 0
    ? { count: rows.length, complete: completeBlocks(rows).length }
    : comparedBlocks(usable, compared.contrasts);
}

function inputOf(
  groups: readonly ProductGroup[],
  blocks: ProductComparison["input"]["blocks"],
): ProductComparison["input"] {
  const fills = groups.flatMap((group) => group.fills.map(({ fill }) => fill));
  return {
    products: groups.length,
    bins: [...new Set(groups.flatMap(({ bins }) => bins))],
    fills: fills.length,
    catches: sum(fills.map(({ totals }) => totals.catches)),
    blocks,
  };
}

function checkAgainst(
  model: Model,
  { products: wanted, reference, blocks, scale }: ProductComparisonOptions,
): void {
  const fills = model.meters.flatMap((meter) => meter.fills);
  const products = [...new Set(model.meters.map(({ product }) => product))];
  if (reference !== null && !(wanted ?? products).includes(reference)) {
    throw new OptionError("reference", reference, {
      need: "listed",
      facts: { choices: wanted ?? products },
    });
  }
  const names = blockNames(model);
  if (blocks !== null && !names.includes(blocks)) {
    throw new OptionError("blocks", blocks, { need: "listed", facts: { choices: names } });
  }
  if (scale === "log" && fills.some(({ delivery }) => !(delivery > 0))) {
    throw new OptionError("scale", scale, { need: "as-measured", facts: {} });
  }
}
