import { halfWidthOf } from "../../model/known-width.ts";
import type { ChosenScatter } from "../../model/lent-scatter.ts";
import { readingVariance } from "../../model/reading.ts";
import { intervalAround, unknownEstimate } from "../../model/t-estimate.ts";
import { wholePower } from "../../numeric/powers.ts";
import type { Estimate, Interval } from "../../results/estimate.ts";
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
  readonly delivery: Estimate<"kg/turn">;
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
  const { delivery, catchVariance, divisionKg, law, scatter, level } = line;
  const ofLine = halfWidthAt(turns, line);
  if (ofLine === null || delivery.standardError === null || catchVariance === null)
    return unknownEstimate(delivery.value * turns, "kg");
  const ofCatch = {
    scatter: catchVariance * wholePower(turns, variancePowers[law]),
    reading: readingVariance(divisionKg ?? 0),
  };
  const nu = { nu: scatter.df, own: scatter.source === "own" };
  const half = Math.hypot(ofLine, halfWidthOf(ofCatch, nu, { level, phi: 1 }));
  const standardError = Math.hypot(
    turns * delivery.standardError,
    Math.sqrt(ofCatch.scatter + ofCatch.reading),
  );
  return {
    value: delivery.value * turns,
    unit: "kg",
    standardError,
    df: scatter.df,
    interval: intervalAround(delivery.value * turns, half, level, "next catch"),
  };
}

/** Half-width of the line at so many turns, kg; null where nothing is known of it. */
function halfWidthAt(turns: number, { delivery }: LineUncertainty): number | null {
  const upper = delivery.interval?.upper ?? null;
  return upper === null ? null : turns * (upper - delivery.value);
}

/** The line from no turns to a little beyond the longest catch, with both bands. */
export function deliveryLine(longestCatch: number, line: LineUncertainty): readonly LinePoint[] {
  const end = longestCatch * beyondLongestCatch;
  return Array.from({ length: placesOnLine }, (_, i) =>
    linePoint((end * i) / (placesOnLine - 1), line),
  );
}

function linePoint(turns: number, line: LineUncertainty): LinePoint {
  const fittedKg = line.delivery.value * turns;
  const half = halfWidthAt(turns, line);
  const mean =
    half === null ? null : intervalAround(fittedKg, half, line.level, "this fill's delivery");
  const next = turns > 0 ? nextCatchEstimate(turns, line).interval : null;
  return {
    turns,
    fittedKg,
    meanLowerKg: mean?.lower ?? null,
    meanUpperKg: mean?.upper ?? null,
    nextLowerKg: next?.lower ?? null,
    nextUpperKg: next?.upper ?? null,
    nextLowerPerTurn: perTurn(next?.lower ?? null, turns),
    nextUpperPerTurn: perTurn(next?.upper ?? null, turns),
  };
}

/** Of a mass at so many turns: what it is per turn. */
export function intervalPerTurn(interval: Interval, turns: number): Interval {
  return {
    ...interval,
    lower: perTurn(interval.lower, turns),
    upper: perTurn(interval.upper, turns),
  };
}

function perTurn(massKg: number | null, turns: number): number | null {
  return massKg === null ? null : massKg / turns;
}
