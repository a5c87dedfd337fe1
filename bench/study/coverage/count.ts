import { remlAcrossFills } from "../../../src/model/across-fills.ts";
import { fitModel, type ModelOptions } from "../../../src/model/model.ts";
import { studentTQuantile } from "../../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { acrossFills } from "../../../src/questions/across-fills.ts";
import { delivery } from "../../../src/questions/delivery.ts";
import type { Interval } from "../../../src/results/estimate.ts";
import type { Cell, IntervalName } from "./cells.ts";
import { meanDelivery, type Season, type Simulated, simulate } from "./season.ts";

/** How often an interval held the truth. */
export interface Count {
  readonly covered: number;
  /** Replicates in which the library gave an interval. */
  readonly given: number;
  readonly replicates: number;
}

export const level = 0.95;

/**
 * Simulates one cell through the public functions.
 *
 * @param stream  number of the cell: replicates do not depend on how the work was divided
 */
export function countCell(cell: Cell, replicates: number, seed: number, stream: number): Count {
  const random = randomStream(seed, stream);
  let [covered, given] = [0, 0];
  for (let i = 0; i < replicates; i++) {
    const simulated = simulate(cell.season, random);
    const { interval, truth } = ask(cell.interval, simulated, cell.season);
    if (interval === null) continue;
    given++;
    if ((interval.lower ?? -Infinity) <= truth && truth <= (interval.upper ?? Infinity)) covered++;
  }
  return { covered, given, replicates };
}

interface Asked {
  readonly interval: Pick<Interval, "lower" | "upper"> | null;
  readonly truth: number;
}

function ask(name: IntervalName, simulated: Simulated, season: Season): Asked {
  const options: ModelOptions = {
    level,
    tolerance: 0.05,
    scaleDivisionKg: season.divisionKg ?? null,
  };
  const [meter] = fitModel(simulated.catches, options).meters;
  if (meter === undefined) throw new Error("A simulated season has one meter.");
  const fill = () => delivery(meter, { ...options, varianceLaw: "proportional" });
  const fills = () => acrossFills(meter, options);
  switch (name) {
    case "this fill, own scatter":
    case "this fill, pooled scatter":
      return { interval: fill().estimate.interval, truth: simulated.fills.at(-1) ?? meanDelivery };
    case "next catch":
      return { interval: fill().nextCatch.estimate.interval, truth: simulated.nextCatchKg };
    case "mean over fills":
      return { interval: meter.across.mean.interval, truth: meanDelivery };
    case "mean over fills, REML":
      return { interval: remlInterval(remlAcrossFills(meter.fills)), truth: meanDelivery };
    case "next fill":
      return { interval: meter.across.nextFill.interval, truth: simulated.nextFill };
    case "fill-to-fill spread":
      return {
        interval: meter.across.spread.standardDeviation?.interval ?? null,
        truth:
          meanDelivery *
          Math.hypot(
            season.fillSpread,
            season.catchScatter / Math.sqrt(season.turns[0]?.length ?? 1),
          ),
      };
    case "catch scatter":
      return {
        interval: fills().catchScatter.standardDeviation?.interval ?? null,
        truth: meanDelivery * 20 * season.catchScatter,
      };
    case "all catches as fills":
      return { interval: meter.across.ignoringFills?.interval ?? null, truth: meanDelivery };
  }
}

function remlInterval(
  reml: { mean: number; adjustedStandardError: number; df: number } | null,
): Asked["interval"] {
  if (reml === null) return null;
  const half = studentTQuantile((1 + level) / 2, reml.df) * reml.adjustedStandardError;
  return { lower: reml.mean - half, upper: reml.mean + half };
}
