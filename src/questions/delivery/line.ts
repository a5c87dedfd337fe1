import { tEstimate } from "../../model/t-estimate.ts";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
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
  readonly standardError: number | null;
  readonly df: number;
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
 * own scatter, plus one reading of gross and tare (d²/6).
 */
export function nextCatchEstimate(turns: number, line: LineUncertainty): Estimate<"kg"> {
  const { delivery, standardError, catchVariance, divisionKg, law, df, level } = line;
  const known = standardError !== null && catchVariance !== null;
  const error = known
    ? Math.sqrt(
        (turns * standardError) ** 2 +
          catchVariance * turns ** variancePowers[law] +
          (divisionKg ?? 0) ** 2 / 6,
      )
    : null;
  return tEstimate(delivery * turns, "kg", error, df, level, "next catch");
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
  const half =
    line.standardError === null
      ? null
      : turns * line.standardError * studentTQuantile((1 + line.level) / 2, line.df);
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
