import { sum } from "simple-statistics";
import type { Estimate } from "../results/estimate.ts";
import {
  fitThroughOrigin,
  type ThroughOriginFit,
  type VarianceLaw,
} from "../statistics/through-origin.ts";
import type { ChosenScatter } from "./catch-scatter.ts";
import type { Fill } from "./meters.ts";
import { tEstimate } from "./t-estimate.ts";

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

export interface FillEstimate {
  readonly estimate: Estimate<"kg/turn">;
  readonly variance: FillVariance;
  readonly fit: ThroughOriginFit;
}

/** Above this ratio of longest to shortest catch the variance law matters and the larger standard error is used. */
const turnsRatioForRobust = 1.5;

/**
 * Delivery of one fill with its uncertainty: line through the origin, t interval on the chosen scatter's degrees of
 * freedom, the scale's division always added. The quantile stays t on those df: an effective df falls short at n = 3.
 *
 * @param scatter     as chosen for the fill; for a law other than "proportional" it must be the fill's own
 * @param divisionKg  the scale's division for catches that name none; null when unknown
 * @returns           interval about this fill's delivery; null when a single catch has no scatter to borrow, or when
 *                    catches agree exactly and no division says how well they could disagree
 */
export function estimateFill(
  fill: Fill,
  scatter: ChosenScatter,
  divisionKg: number | null,
  level: number,
  law: VarianceLaw = "proportional",
): FillEstimate {
  const fit = fitThroughOrigin(
    fill.catches.map(({ turns, netKg }) => ({ x: turns, y: netKg })),
    law,
  );
  const variance = fillVariance(fill, fit, scatter, divisionKg);
  const standardError = variance.total === null ? null : Math.sqrt(variance.total);
  return {
    fit,
    variance,
    estimate: tEstimate(
      fit.slope,
      "kg/turn",
      standardError,
      scatter.df,
      level,
      "this fill's delivery",
    ),
  };
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
  const division = readingVariance(fill, fit, divisionKg);
  const total = model === null ? null : Math.max(model, robust ?? 0) + (division ?? 0);
  return { model, robust, division, total };
}

/** Whether a fill's catches are so unequal in turns that the variance law matters. */
export function turnsDiffer(fill: Pick<Fill, "catches">): boolean {
  const turns = fill.catches.map((row) => row.turns);
  return Math.max(...turns) / Math.min(...turns) > turnsRatioForRobust;
}

// Gross and tare are each rounded to the division d (d²/12 apiece), and catches that agree round alike, so reading
// errors are added as if they were one error, not averaged out: for the ratio of sums (d²/6)·(n/Σt)².
// Source: GUM (JCGM 100:2008) F.2.2.1 for the rectangular law.
function readingVariance(
  fill: Fill,
  fit: ThroughOriginFit,
  divisionKg: number | null,
): number | null {
  const divisions = fill.catches.map((row) => row.divisionKg ?? divisionKg);
  const known = divisions.filter((division) => division !== null);
  if (known.length < divisions.length) return null;
  const effects = known.map((division, i) => {
    const { x, leverage } = fit.points[i] ?? { x: 1, leverage: 0 };
    return (division * leverage) / x;
  });
  return sum(effects) ** 2 / 6;
}

function square(value: number | null): number | null {
  return value === null ? null : value ** 2;
}
