import { sum } from "simple-statistics";
import { OptionError } from "../errors/errors.ts";
import {
  type ComparedProducts,
  compareProducts,
  judgeByCatches,
} from "../model/compare-products.ts";
import type { Model } from "../model/model.ts";
import { blockNames, type ProductGroup, productGroups } from "../model/product-groups.ts";
import { requireModelOptions } from "../results/options.ts";
import { comparisonCautions } from "./product-comparison/cautions.ts";
import { productContrast } from "./product-comparison/contrasts.ts";
import { productEstimate } from "./product-comparison/estimates.ts";
import { pairsAsked } from "./product-comparison/pairs.ts";
import type { ProductComparison, ProductComparisonOptions } from "./product-comparison/result.ts";
import { scatterComparison } from "./product-comparison/scatter.ts";

export type { ProductComparison, ProductComparisonOptions };

const fewestFills = 2;

/**
 * Which products does the meter deliver differently, by how much, and which are equivalent within a margin?
 *
 * One value a fill, the ratio of sums Σm/Σt: a fill is the experimental unit, its catches are not. All pairs by Games and
 * Howell (each product its own spread) or, where a common spread is declared, by Tukey and Kramer; against a reference
 * by Dunnett's procedure in either form; within blocks by paired t tests with Holm's adjustment, or by the analysis of
 * complete blocks. Ratios by Fieller's set with the same critical values; equivalence by two one-sided tests.
 *
 * @param model    as fitted; a product's fills are taken together over its bins
 * @param options  from `productComparisonOptions`
 * @returns        simultaneous intervals and adjusted p-values; verdict of every pair: different, equivalent within the
 *                 margin, or undecided
 * Null when       a product has one fill (caution product-not-repeated); fills of a pair do not scatter (caution
 *                 product-without-spread; verdict untested)
 * @throws         OptionError when the reference is no product of the file, blocks name no column, or the log scale
 *                 meets a delivery that is not above zero
 * Assumes         independent, roughly normal fills (or blocks). Any false difference among three products: about 5 % by
 *                 Games–Howell, 15 % by Tukey with unequal spreads and fills, 30–44 % with catches as units
 * Source          Games & Howell 1976; Kramer 1956; Dunnett 1955; Hasler & Hothorn 2008; Holm 1979; Fieller 1954;
 *                 Schuirmann 1987; full references at each routine in src/statistics
 */
export function productComparison(
  model: Model,
  options: ProductComparisonOptions,
): ProductComparison {
  requireModelOptions(options);
  checkAgainst(model, options);
  const all = productGroups(model, options.blocks);
  const usable = all.filter(({ fills }) => fills.length >= fewestFills);
  const comparable = pairsAsked(usable, options).length > 0;
  const compared = comparable
    ? asked(
        compareProducts(usable, options, ({ delivery }) => delivery),
        usable,
        options,
      )
    : null;
  const byCatches = comparable ? judgeByCatches(usable, options) : [];
  const scatter = scatterComparison(all, pairsAsked(all, options), options.level);
  const names = usable.map(({ product }) => product);
  return {
    kind: "product-comparison",
    options,
    input: inputOf(all, compared?.blocks?.rows ?? null),
    products: all.map((group) => productEstimate(group, options)),
    method: compared?.method ?? null,
    overall: compared?.overall ?? null,
    contrasts: (compared?.contrasts ?? []).map((contrast) =>
      productContrast(contrast, names, options.scale, options.level),
    ),
    scatter,
    cautions: comparisonCautions({ all, usable, compared, byCatches, scatter, options }),
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

function inputOf(
  groups: readonly ProductGroup[],
  rows: readonly (readonly (number | null)[])[] | null,
): ProductComparison["input"] {
  const fills = groups.flatMap((group) => group.fills.map(({ fill }) => fill));
  return {
    products: groups.length,
    bins: [...new Set(groups.flatMap(({ bins }) => bins))],
    fills: fills.length,
    catches: sum(fills.map(({ totals }) => totals.catches)),
    blocks:
      rows === null
        ? null
        : {
            count: rows.length,
            complete: rows.filter((row) => row.every((value) => value !== null)).length,
          },
  };
}

function checkAgainst(model: Model, { reference, blocks, scale }: ProductComparisonOptions): void {
  const fills = model.meters.flatMap((meter) => meter.fills);
  const products = [...new Set(model.meters.map(({ product }) => product))];
  if (reference !== null && !products.includes(reference)) {
    throw new OptionError("reference", reference, `a product of the file: ${products.join(", ")}`);
  }
  const names = blockNames(model);
  if (blocks !== null && !names.includes(blocks)) {
    throw new OptionError("blocks", blocks, `one of ${names.join(", ")}`);
  }
  if (scale === "log" && fills.some(({ delivery }) => !(delivery > 0))) {
    throw new OptionError("scale", scale, '"as measured" where a fill delivered nothing');
  }
}
