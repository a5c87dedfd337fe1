import { extraCells } from "../data/catch-values.ts";
import { recordedColumns } from "../data/column-kinds.ts";
import type { Catch } from "../data/types.ts";
import type { PlainRow } from "../data/write-csv.ts";
import type { Fill } from "../model/meters.ts";
import type { MeterModel, Model } from "../model/model.ts";
import type { Estimate, Interval } from "../results/estimate.ts";
import { known } from "../results/options.ts";
import type { RatioSet } from "../statistics/ratio-interval.ts";
import type { Delivery } from "./delivery/result.ts";
import type { ExplainingVariables } from "./explaining-variables/result.ts";
import type { ProductComparison } from "./product-comparison/result.ts";

/** What the delivery question says of one fill; the tables repeat it and fit nothing themselves. */
export type DeliveryOfFill = (meter: MeterModel, fill: Fill) => Delivery;

/**
 * Every catch with what the fit of its fill says of it: one row a catch, in order of bin, product, fill and catch.
 *
 * Fitted mass is delivery × turns, the delivery being that of the fill; leverage is the catch's share in it. A catch that
 * was left out has a fitted mass and a residual, no leverage, and the reason in left_out; one that the screening set
 * aside likewise, with set_aside true.
 *
 * @returns plain rows: texts, numbers, true, false, null; masses in kg; columns of the person's own as extra.HEADER
 */
export function catchTable(model: Model, deliveryOf: DeliveryOfFill): readonly PlainRow[] {
  return model.meters.flatMap((meter) =>
    meter.screening.findings.flatMap(({ fill: whole }) => {
      const kept = meter.fills.find((fill) => fill.fill === whole.fill);
      const answer = kept === undefined ? null : deliveryOf(meter, kept);
      const leverages = new Map(
        answer?.points.map(({ catch: number, leverage }) => [number, leverage]) ?? [],
      );
      const delivery = answer?.estimate.value ?? whole.delivery;
      return [...whole.catches, ...whole.leftOut]
        .sort((a, b) => a.catch - b.catch)
        .map((row) =>
          catchRow(row, delivery, row.leftOut === null ? (leverages.get(row.catch) ?? null) : null),
        );
    }),
  );
}

/** What else was noted of a catch; when it was taken stands further left, with its place in the file. */
const circumstances = recordedColumns.filter(
  ({ name, inCatchTable }) => inCatchTable && name !== "taken_at",
);

/** @param leverage  null: the catch does not count, being left out or set aside */
function catchRow(row: Catch, delivery: number, leverage: number | null): PlainRow {
  const fittedKg = delivery * row.turns;
  return {
    ...known({ farm: row.farm, machine: row.machine, season: row.season }),
    bin: row.bin,
    product: row.product,
    fill: row.fill,
    catch: row.catch,
    row: row.row,
    taken_at: row.takenAt,
    turns: row.turns,
    net_kg: row.netKg,
    delivery_kg_per_turn: row.netKg / row.turns,
    fitted_kg: fittedKg,
    residual_kg: row.netKg - fittedKg,
    relative_residual: row.netKg / fittedKg - 1,
    leverage,
    ...Object.fromEntries(circumstances.map(({ name, field }) => [name, row[field]])),
    left_out: row.leftOut,
    set_aside: row.leftOut === null && leverage === null,
    ...extraCells(row),
  };
}

/**
 * Every estimate of the model: one row an estimate. Of every bin and product the mean over fills, the next fill and the
 * fill-to-fill spread, and of each fill its delivery. `about` says what the interval is about.
 */
export function estimateTable(model: Model, deliveryOf: DeliveryOfFill): readonly PlainRow[] {
  return model.meters.flatMap((meter) => {
    const { mean, nextFill, spread } = meter.across;
    const row = estimateRow(meter);
    return [
      row("delivery", null, mean, "mean over fills"),
      row("delivery", null, nextFill, "next fill"),
      ...(spread.standardDeviation === null
        ? []
        : [
            row(
              "standard deviation of fills",
              null,
              spread.standardDeviation,
              "fill-to-fill spread",
            ),
          ]),
      ...meter.fills.map((fill) =>
        row("delivery", fill, deliveryOf(meter, fill).estimate, "this fill's delivery"),
      ),
    ];
  });
}

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

function setCells(name: string, set: RatioSet | null): PlainRow {
  const interval = set?.shape === "interval" ? set : null;
  return { [`${name}_lower`]: interval?.lower ?? null, [`${name}_upper`]: interval?.upper ?? null };
}

/** Effects of explaining variables: one row an effect, whichever level it was found at. */
export function effectTable(result: ExplainingVariables): readonly PlainRow[] {
  const regressions = [
    ...result.betweenProducts,
    ...(result.withinProducts === null ? [] : [result.withinProducts]),
  ];
  return [
    ...regressions.flatMap(({ units, points, effects }) =>
      effects.map(
        ({ variable, perUnit, elasticity, pValue }): PlainRow => ({
          variable,
          between: units,
          together_with: othersOf(effects, variable),
          points,
          ...estimateCells(perUnit),
          elasticity,
          p: pValue,
        }),
      ),
    ),
    ...result.withinFills.map(
      ({ variable, fills, perUnit, pValue }): PlainRow => ({
        variable,
        between: "catches within fills",
        together_with: null,
        points: fills,
        ...estimateCells(perUnit),
        elasticity: null,
        p: pValue,
      }),
    ),
  ];
}

function othersOf(effects: readonly { readonly variable: string }[], variable: string) {
  const others = effects.map((effect) => effect.variable).filter((name) => name !== variable);
  return others.length === 0 ? null : others.join(", ");
}

function estimateRow({ place: { farm, machine, bin }, product }: MeterModel) {
  return (
    quantity: string,
    fill: Pick<Fill, "season" | "number"> | null,
    estimate: Estimate,
    about: string,
  ): PlainRow => ({
    quantity,
    ...known({ farm, machine, season: fill?.season }),
    bin,
    product,
    fill: fill?.number ?? null,
    ...estimateCells(estimate),
    about,
  });
}

function estimateCells({ value, unit, standardError, df, interval }: Estimate): PlainRow {
  return {
    value,
    unit,
    standard_error: standardError,
    df,
    lower: interval?.lower ?? null,
    upper: interval?.upper ?? null,
    level: interval?.level ?? null,
  };
}

function endCells(name: string, interval: Interval | null): PlainRow {
  return {
    [`${name}_lower`]: interval?.lower ?? null,
    [`${name}_upper`]: interval?.upper ?? null,
  };
}
