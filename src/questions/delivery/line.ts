import type { ChosenScatter } from "../../model/catch-scatter.ts";
import type { FillVariance } from "../../model/fill-estimate.ts";
import { type DeliveryVariance, halfWidthOf } from "../../model/known-width.ts";
import { readingVariance } from "../../model/reading.ts";
import { unknownEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import { type VarianceLaw, variancePowers } from "../../statistics/through-origin.ts";

/** One place on the fitted line: what is expected at these turns, and how sure that is. */
export interface LinePoint {
  readonly turns: number;
  readonly fittedKg: number;
  /** Band of the line itself. */
  readonly meanLowerKg: number | null;
  readonly meanUpperKg: number | null;
  /** Band for one more catch. */
  readonly nextLowerKg: number | null;
  readonly nextUpperKg: number | null;
  /** The same band divided by the turns: what one catch of these turns may deliver per turn, kg/turn. */
  readonly nextLowerPerTurn: number | null;
  readonly nextUpperPerTurn: number | null;
}

/** What the bands are made from; null where unknown. */
export interface LineUncertainty {
  readonly delivery: number;
  readonly variance: FillVariance;
  readonly scatter: ChosenScatter;
  /** Error variance of a one-turn catch. */
  readonly catchVariance: number | null;
  readonly divisionKg: number | null;
  readonly law: VarianceLaw;
  readonly level: number;
}

const placesOnLine = 41;
const beyondLongestCatch = 1.1;

/**
 * Net mass of one more catch of the given turns. Its variance is that of the line at those turns, plus the catch's
 * own scatter, plus one reading of gross and tare.
 */
export function nextCatchEstimate(turns: number, line: LineUncertainty): Estimate<"kg"> {
  const { delivery, catchVariance, divisionKg, law, scatter } = line;
  const mean = meanVariance(turns, line);
  if (mean === null || catchVariance === null) return unknownEstimate(delivery * turns, "kg");
  const variance = {
    scatter: mean.scatter + catchVariance * turns ** variancePowers[law],
    reading: mean.reading + readingVariance(divisionKg ?? 0),
  };
  const half = halfWidth(variance, line);
  return {
    value: delivery * turns,
    unit: "kg",
    standardError: Math.sqrt(variance.scatter + variance.reading),
    df: scatter.df,
    interval: {
      lower: delivery * turns - half,
      upper: delivery * turns + half,
      level: line.level,
      about: "next catch",
    },
  };
}

/** Variance of the line at so many turns, kg²; null where nothing is known of it. */
function meanVariance(turns: number, { variance }: LineUncertainty): DeliveryVariance | null {
  if (variance.total === null || variance.total === 0) return null;
  return {
    scatter: turns ** 2 * Math.max(variance.model ?? 0, variance.robust ?? 0),
    reading: turns ** 2 * (variance.division ?? 0),
  };
}

function halfWidth(variance: DeliveryVariance, { scatter, level }: LineUncertainty): number {
  return halfWidthOf(
    variance,
    { nu: scatter.df, own: scatter.source === "own" },
    { level, phi: 1 },
  );
}

/** The line from no turns to a little beyond the longest catch, with both bands. */
export function deliveryLine(longestCatch: number, line: LineUncertainty): readonly LinePoint[] {
  const end = longestCatch * beyondLongestCatch;
  return Array.from({ length: placesOnLine }, (_, i) =>
    linePoint((end * i) / (placesOnLine - 1), line),
  );
}

function linePoint(turns: number, line: LineUncertainty): LinePoint {
  const fittedKg = line.delivery * turns;
  const mean = meanVariance(turns, line);
  const half = mean === null ? null : halfWidth(mean, line);
  const next = turns > 0 ? nextCatchEstimate(turns, line).interval : null;
  return {
    turns,
    fittedKg,
    meanLowerKg: half === null ? null : fittedKg - half,
    meanUpperKg: half === null ? null : fittedKg + half,
    nextLowerKg: next?.lower ?? null,
    nextUpperKg: next?.upper ?? null,
    nextLowerPerTurn: perTurn(next?.lower ?? null, turns),
    nextUpperPerTurn: perTurn(next?.upper ?? null, turns),
  };
}

function perTurn(massKg: number | null, turns: number): number | null {
  return massKg === null ? null : massKg / turns;
}
