import { max, min, sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import type { Estimate } from "../results/estimate.ts";
import {
  fitThroughOrigin,
  type ThroughOriginFit,
  type VarianceLaw,
} from "../statistics/through-origin.ts";
import type { SummedFill } from "./fill-record.ts";
import { divisionsOf } from "./fill-sums.ts";
import { halfWidthOf } from "./known-width.ts";
import {
  type ChosenScatter,
  chooseScatter,
  type MeterScatter,
  nothingLent,
} from "./lent-scatter.ts";
import type { Fill } from "./meters.ts";
import { divisionOfReading, readingVariance } from "./reading.ts";
import { intervalAround, unknownEstimate } from "./t-estimate.ts";

/** Variances behind one fill's delivery, (kg/turn)²; null where unknown. */
export interface FillVariance {
  /** Trusting the law by which scatter grows with turns; s²/Σt for the ratio of sums. */
  readonly model: number | null;
  /** HC3, only where the fill's own scatter speaks and its turns differ enough to matter. */
  readonly robust: number | null;
  /** From reading the scale; null when no division is known. */
  readonly division: number | null;
  /** max(model, robust) + division; null when no scatter is known. */
  readonly total: number | null;
}

/** What an estimate of a fill needs to be told. */
export interface EstimateOptions {
  readonly level: number;
  /** The scale's division for catches that name none, kg; null when unknown. */
  readonly scaleDivisionKg: number | null;
  /** How catch scatter grows with turns; default "proportional", the ratio of sums. */
  readonly varianceLaw?: VarianceLaw;
}

/** The delivery that some catches give, with all that stands behind it. */
export interface CatchesEstimate {
  readonly estimate: Estimate<"kg/turn">;
  /** Half-width of the interval as a fraction of the delivery; null: unknown. */
  readonly halfWidth: number | null;
  readonly scatter: ChosenScatter;
  readonly variance: FillVariance;
  readonly fit: ThroughOriginFit;
}

/** Above this ratio of longest to shortest catch the variance law matters and the larger standard error is used. */
const turnsRatioForRobust = 1.5;

/** A width is stated as it is found; the factor of stopping on a width is for plans. */
const asFound = 1;

/**
 * Delivery that a fill's catches give, with its uncertainty: line through the origin, interval from the one width
 * (`halfWidthOf`) on the scatter that speaks for the fill, with reading the scale always added. Whether the catches are to
 * be believed is another matter (`doubtedEstimate`).
 *
 * @param lent     what the meter's fills and other meters say of the scatter; a variance law other than "proportional" uses
 *                 the fill's own, because lending assumes that one
 * @returns        interval about this fill's delivery; null when a single catch has no scatter to borrow, or when
 *                 catches agree exactly and no division says how well they could disagree
 */
export function estimateFill(
  fill: Fill,
  lent: MeterScatter,
  { level, scaleDivisionKg, varianceLaw = "proportional" }: EstimateOptions,
): CatchesEstimate {
  const scatter = chooseScatter(fill, varianceLaw === "proportional" ? lent : nothingLent);
  const fit = fitThroughOrigin(
    fill.catches.map(({ turns, netKg }) => ({ x: turns, y: netKg })),
    varianceLaw,
  );
  const variance = fillVariance(fill, fit, scatter, scaleDivisionKg);
  const { halfWidth, estimate } = withInterval(fit.slope, scatter, variance, level);
  return { fit, variance, scatter, halfWidth, estimate };
}

/** What a fill's delivery is known to, with the variances behind it. */
type KnownDelivery = Omit<CatchesEstimate, "fit">;

/**
 * The same from the totals of a fill alone, by the ratio of sums.
 *
 * @returns null where the totals do not tell the error: the fill's own scatter speaks alone and its turns are so unequal that
 *          each catch counts
 */
export function estimateFromSums(
  fill: SummedFill,
  lent: MeterScatter,
  { level, scaleDivisionKg }: Pick<EstimateOptions, "level" | "scaleDivisionKg">,
): KnownDelivery | null {
  const { sums, delivery } = fill;
  const scatter = chooseScatter(fill, lent);
  const unequal = sums.mostTurns / sums.fewestTurns > turnsRatioForRobust;
  if (scatter.source === "own" && unequal) return null;
  const model = scatter.variance === null ? null : scatter.variance / sums.turns;
  const divisions = divisionsOf(sums, scaleDivisionKg);
  const division = divisions === null ? null : readingVariance(divisions / sums.turns);
  const total = model === null ? null : model + (division ?? 0);
  return withInterval(delivery, scatter, { model, robust: null, division, total }, level);
}

function withInterval(
  slope: number,
  scatter: ChosenScatter,
  variance: FillVariance,
  level: number,
): KnownDelivery {
  const spread = variance.total === null ? 0 : Math.sqrt(variance.total);
  if (isDust(spread, slope)) {
    const estimate = unknownEstimate(slope, "kg/turn" as const);
    return { variance, scatter, halfWidth: null, estimate };
  }
  const half = halfWidthOf(
    {
      scatter: Math.max(variance.model ?? 0, variance.robust ?? 0),
      reading: variance.division ?? 0,
    },
    { nu: scatter.df, own: scatter.source === "own" },
    { level, phi: asFound },
  );
  return {
    variance,
    scatter,
    halfWidth: half / slope,
    estimate: {
      value: slope,
      unit: "kg/turn",
      standardError: spread,
      df: scatter.df,
      interval: intervalAround(slope, half, level, "this fill's delivery"),
    },
  };
}

/** The division that the readings of a fill's catches amount to, kg: that of one scale, or of several as if one. */
export function effectiveDivision({ totals }: Pick<Fill, "totals">, { division }: FillVariance) {
  return division === null ? null : divisionOfReading(division) * (totals.turns / totals.catches);
}

function fillVariance(
  fill: Fill,
  fit: ThroughOriginFit,
  scatter: ChosenScatter,
  divisionKg: number | null,
): FillVariance {
  const own = scatter.source === "own";
  const model = own
    ? square(fit.modelStandardError)
    : scatter.variance === null
      ? null
      : scatter.variance / fill.totals.turns;
  const robust = own && turnsDiffer(fill) ? square(fit.robustStandardError) : null;
  const division = readingOf(fill, fit, divisionKg);
  const total = model === null ? null : Math.max(model, robust ?? 0) + (division ?? 0);
  return { model, robust, division, total };
}

/** Whether a fill's catches are so unequal in turns that the variance law matters. */
export function turnsDiffer(fill: Pick<Fill, "catches">): boolean {
  const turns = fill.catches.map((row) => row.turns);
  return max(turns) / min(turns) > turnsRatioForRobust;
}

function readingOf(fill: Fill, fit: ThroughOriginFit, divisionKg: number | null): number | null {
  const divisions = fill.catches.map((row) => row.divisionKg ?? divisionKg);
  const known = divisions.filter((division) => division !== null);
  if (known.length < divisions.length) return null;
  const effects = known.map((division, i) => {
    const { x, leverage } = at(fit.points, i);
    return (division * leverage) / x;
  });
  return readingVariance(sum(effects));
}

function square(value: number | null): number | null {
  return value === null ? null : value ** 2;
}
