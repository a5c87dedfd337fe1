import type { Fill } from "../../../src/model/meters.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { againstEarlier } from "../../../src/questions/drift/as-they-came.ts";
import { byName } from "../../../src/questions/drift/by-name.ts";
import { changesOf, fewestForTrend } from "../../../src/questions/drift/changes.ts";
import { newestFillOf } from "../../../src/questions/drift/newest.ts";
import { scoreCharts } from "../../../src/questions/drift/score-charts.ts";
import { driftVerdict } from "../../../src/questions/drift/verdict.ts";
import { type SeasonPlan, seasonFills, usualSeason } from "./season.ts";

/** What is counted, each by the name the page gives it. */
export const ways = [
  "verdict: moved or trending",
  "trend alone",
  "shift alone",
  "newest fill, one look",
  "any fill as it came",
  "Mann–Kendall",
  "individuals chart",
  "EWMA of scores",
  "CUSUM of scores",
  "verdict, asked after every fill",
] as const;

export type Way = (typeof ways)[number];

/** Share of seasons in which each way finds something; null where it needs more fills. */
export interface RateCell extends SeasonPlan {
  readonly rates: Readonly<Record<Way, number>>;
}

const level = 0.95;
const significance = 1 - level;

/** @param plans  what differs from the usual season */
export function rateTable(
  plans: readonly Partial<SeasonPlan>[],
  seasons: number,
  seed: number,
): readonly RateCell[] {
  return plans.map((given, cell) => {
    const plan = { ...usualSeason, ...given };
    const random = randomStream(seed, cell);
    const counts = Object.fromEntries(ways.map((way) => [way, 0])) as Record<Way, number>;
    for (let season = 0; season < seasons; season++) {
      const found = findings(seasonFills(plan, random));
      for (const way of ways) if (found[way]) counts[way]++;
    }
    const rates = Object.fromEntries(ways.map((way) => [way, counts[way] / seasons])) as Record<
      Way,
      number
    >;
    return { ...plan, rates };
  });
}

function findings(fills: readonly Fill[]): Record<Way, boolean> {
  const deliveries = fills.map(({ delivery }) => delivery);
  const { trend, shift } = changesOf(fills, level);
  const looks = Math.max(1, fills.length - 3);
  const asTheyCame = againstEarlier(deliveries, 1 - significance / looks);
  const named = byName(fills);
  const charts = scoreCharts(fills, againstEarlier(deliveries, level));
  return {
    "verdict: moved or trending": seasonFinding(fills),
    "trend alone": trend !== null && trend.pValue <= significance,
    "shift alone": shift !== null && shift.pValue <= significance,
    "newest fill, one look": newestFillOf(fills, level)?.outside ?? false,
    "any fill as it came": asTheyCame.slice(3).some((one) => one?.outside),
    "Mann–Kendall": named !== null && named.mannKendall.pValue <= significance,
    "individuals chart": (named?.individuals.outside.length ?? 0) > 0,
    "EWMA of scores": charts.points.some(
      ({ ewma }) => ewma.value < ewma.lower || ewma.value > ewma.upper,
    ),
    "CUSUM of scores": charts.points.some(({ cusum }) => cusum.signal !== null),
    "verdict, asked after every fill": fills.some(
      (_, i) => i + 1 >= fewestForTrend && seasonFinding(fills.slice(0, i + 1)),
    ),
  };
}

function seasonFinding(fills: readonly Fill[]): boolean {
  const verdict = driftVerdict(fills.length, changesOf(fills, level), null, level);
  return verdict === "moved" || verdict === "trending";
}
