import type { PlainRow } from "../../data/write-csv.ts";
import type { ProductComparison } from "../../questions/product-comparison.ts";
import { endCells, estimateCells, setCells } from "./cells.ts";

/** The products of a comparison: one row a product. */
export function productTable({ products, scatter }: ProductComparison): readonly PlainRow[] {
  return products.map(({ product, bins, fills, catches, estimate, spread }): PlainRow => {
    const variation = scatter.products.find((one) => one.product === product)?.variation ?? null;
    return {
      product,
      bins: bins.join(", "),
      fills,
      catches,
      ...estimateCells(estimate),
      fill_spread: spread?.value ?? null,
      ...endCells("fill_spread", spread?.interval ?? null),
      catch_cv: variation?.value ?? null,
      ...endCells("catch_cv", variation?.interval ?? null),
      catch_cv_turns: scatter.turns,
    };
  });
}

/** The fills that products are compared by: one row a fill. */
export function productFillTable({ products }: ProductComparison): readonly PlainRow[] {
  return products.flatMap(({ product, points }) =>
    points.map(({ bin, fill, takenAt, block, catches, delivery }) => ({
      bin,
      product,
      fill,
      taken_at: takenAt,
      block,
      catches,
      delivery_kg_per_turn: delivery,
    })),
  );
}

/**
 * The pairs of a comparison: one row a contrast, first against second. Where one spread is pooled within blocks, paired_…
 * is the same pair with spreads not assumed alike.
 */
export function contrastTable(comparison: ProductComparison): readonly PlainRow[] {
  const { method, scale, contrasts, options } = comparison;
  return contrasts.map((contrast): PlainRow => {
    const { difference, ratio, equivalence, notAlike } = contrast;
    return {
      first: contrast.first,
      second: contrast.second,
      n_first: contrast.n[0],
      n_second: contrast.n[1],
      difference_kg_per_turn: difference?.value ?? null,
      ...endCells("difference", difference?.interval ?? null),
      unit: difference?.unit ?? null,
      standard_error: difference?.standardError ?? null,
      df: contrast.df,
      statistic: contrast.statistic,
      ratio: ratio.value,
      ...setCells("ratio", ratio.set),
      ratio_shape: ratio.set?.shape ?? null,
      p_unadjusted: contrast.unadjustedPValue,
      p_adjusted: contrast.pValue,
      ...setCells("equivalence", equivalence?.set ?? null),
      equivalence_level: equivalence?.level ?? null,
      p_equivalence: equivalence?.pValue ?? null,
      margin: options.equivalenceMargin,
      verdict: contrast.verdict,
      ...setCells("paired_ratio", notAlike?.ratio.set ?? null),
      paired_df: notAlike?.df ?? null,
      paired_p_adjusted: notAlike?.pValue ?? null,
      paired_verdict: notAlike?.verdict ?? null,
      method,
      scale,
      level: options.level,
    };
  });
}

/** How many times the catches of one product scatter as those of another: one row a pair. */
export function scatterContrastTable({
  scatter,
  options: { level },
}: ProductComparison): readonly PlainRow[] {
  return scatter.contrasts.map((contrast) => ({
    first: contrast.first,
    second: contrast.second,
    method: contrast.method,
    ratio: contrast.ratio?.value ?? null,
    ...endCells("ratio", contrast.ratio?.interval ?? null),
    p_unadjusted: contrast.unadjustedPValue,
    p_adjusted: contrast.pValue,
    difference_found: contrast.differenceFound,
    level,
  }));
}
