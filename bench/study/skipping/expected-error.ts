import { mean } from "simple-statistics";
import { lawsOfExpectation } from "../../../src/model/rate-error.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { chancesOfError } from "../../../src/questions/skipping/distribution.ts";
import { chanceBeyond, expectedAbsolute } from "../../../src/statistics/expected-loss.ts";
import { meanOver, withoutScatter } from "../../../src/statistics/without-scatter.ts";
import { simulatedSeason } from "./season.ts";
import { drawnSpread, type SeasonPlan } from "./simulate.ts";

/** The mean absolute error at the next fill, by what counts as spread of fills, beside the true one. */
export interface ExpectedOutcome {
  /** Catch scatter is more than half of the variance found between fills. */
  readonly mostlyScatter: boolean;
  readonly asMeasured: number;
  /** By the component estimated by itself, with the uncertainty of the mean; what is not done. */
  readonly byItself: number;
  readonly stated: number;
  readonly happened: number;
  /** The chance beyond the limit, as reckoned and as stated. */
  readonly chanceReckoned: number;
  readonly chanceStated: number;
  readonly chanceHappened: number;
}

/** Simulated seasons, the drive then left at the mean of fills. */
export function simulateExpected(
  plan: SeasonPlan,
  seasons: number,
  seed: number,
): readonly ExpectedOutcome[] {
  const stream = randomStream(seed);
  return Array.from({ length: seasons }, () => {
    const spread = drawnSpread(plan, stream);
    const season = { fills: plan.fills, spread, offCentre: "mean of fills" } as const;
    const { error, known } = simulatedSeason(season, stream);
    const { law, fills, catchScatter } = error;
    const asMeasured = expectedAbsolute(law) ?? 0;
    const { own, ofMean } = withoutScatter(
      fills.standardDeviation,
      catchScatter?.standardDeviation ?? 0,
      fills.n,
    );
    const [chance] = chancesOfError(error, [plan.limit]);
    return {
      mostlyScatter: catchScatter?.isMost ?? false,
      asMeasured,
      byItself: expectedAbsolute({ ...law, scale: Math.sqrt(own + ofMean) }) ?? 0,
      stated: meanOver(lawsOfExpectation(error), expectedAbsolute) ?? 0,
      happened: expectedAbsolute(known) ?? 0,
      chanceReckoned: chanceBeyond(law, plan.limit).either,
      chanceStated: chance?.either ?? 0,
      chanceHappened: chanceBeyond(known, plan.limit).either,
    };
  });
}

/** Mean stated ÷ mean true; null: no season to tell. */
export function overTrue(
  outcomes: readonly ExpectedOutcome[],
  figure: "asMeasured" | "byItself" | "stated",
): number | null {
  if (outcomes.length === 0) return null;
  return mean(outcomes.map((one) => one[figure])) / mean(outcomes.map((one) => one.happened));
}
