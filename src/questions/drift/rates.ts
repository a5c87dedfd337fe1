import type { Estimate } from "../../results/estimate.ts";
import { fewestForTrend } from "./changes.ts";
import { seasonChances } from "./season-chances.ts";
import { fewestForVerdict } from "./verdict.ts";

/** How often a steady meter is said to have changed. */
export interface FalseAlarms {
  /** Trend or shift, asked once at the end of the season; at most this. */
  readonly season: number;
  /** The same when it is asked after every fill from the fifth on; null without power and above 40 fills. */
  readonly seasonAskedEveryFill: number | null;
  /** Newest fill outside its band, one look. */
  readonly newestFill: number;
  /** Each fill as it came, so that all fills of a season together stay at `season`; null below 4 fills. */
  readonly eachFill: number | null;
}

/** What the season tests would have found. */
export interface DriftPower {
  /** Relative shift, halfway through the season. */
  readonly shift: number;
  /** Chance that it would have been found with this meter's spread between fills. */
  readonly chance: number;
  /** The same at the ends of the interval for that spread. */
  readonly range: { readonly lower: number; readonly upper: number };
  /** Spread between fills about the change found, or about their mean; interval about "fill-to-fill spread". */
  readonly spread: Estimate<"kg/turn">;
  /** The same relative to the delivery. */
  readonly relativeSpread: number;
  /** Simulated seasons behind the chances. */
  readonly seasons: number;
  readonly seed: number;
}

export interface Rates {
  readonly falseAlarms: FalseAlarms;
  readonly power: DriftPower | null;
}

/** What is asked of the rates. */
export interface RatesInput {
  readonly fills: number;
  /** Null: fills do not differ, or there are fewer than two. */
  readonly spread: Estimate<"kg/turn"> | null;
  /** Delivery that the shift is a fraction of, kg/turn. */
  readonly delivery: number;
  readonly shift: number;
  readonly level: number;
}

/** False-alarm rates and power of a season of so many fills, by seeded simulation; power null below 5 fills. */
export function ratesOf({ fills, spread, delivery, shift, level }: RatesInput): Rates {
  const rate = Number((1 - level).toFixed(12)); // 1 − 0.95 leaves rounding dust that nobody wants to read
  const falseAlarms = {
    season: rate,
    seasonAskedEveryFill: null,
    newestFill: rate,
    eachFill: fills < fewestForVerdict ? null : rate / (fills - 3),
  };
  if (fills < fewestForTrend || spread === null) return { falseAlarms, power: null };

  const inSpreads = (size: number | null | undefined) =>
    (shift * delivery) / (size ?? spread.value);
  const { found, falseWhenAskedEveryFill, seasons, seed } = seasonChances(
    fills,
    [spread.value, spread.interval?.upper, spread.interval?.lower].map(inSpreads),
    level,
  );
  const [chance = 0, lower = 0, upper = 0] = found;
  return {
    falseAlarms: { ...falseAlarms, seasonAskedEveryFill: falseWhenAskedEveryFill },
    power: {
      shift,
      chance,
      range: { lower, upper },
      spread,
      relativeSpread: spread.value / delivery,
      seasons,
      seed,
    },
  };
}
