import type { Fill } from "../../../src/model/meters.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { againstEarlier } from "../../../src/questions/drift/as-they-came.ts";
import { byName } from "../../../src/questions/drift/by-name.ts";
import { changeTests } from "../../../src/questions/drift/changes.ts";
import { scoreCharts } from "../../../src/questions/drift/score-charts.ts";
import { type SeasonPlan, seasonOf, usualSeason } from "./season.ts";

/** Ways of looking once, at the end, each by the name the page gives it. They explain; none decides. */
export const ways = [
  "trend or shift, by Holm",
  "trend alone",
  "shift alone",
  "newest fill at 5 %",
  "Mann–Kendall",
  "individuals chart",
  "EWMA of scores",
  "CUSUM of scores",
] as const;

export type Way = (typeof ways)[number];

/** Share of seasons in which each way finds something. */
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
      const found = findings(seasonOf(plan, random).meter.fills);
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
  const { trend, shift } = changeTests(fills);
  const asTheyCame = againstEarlier(deliveries, level);
  const named = byName(fills);
  const charts = scoreCharts(fills, asTheyCame);
  const adjusted = [trend, shift].flatMap((test) => test?.adjustedPValue ?? []);
  return {
    "trend or shift, by Holm": adjusted.some((p) => p <= significance),
    "trend alone": trend !== null && trend.pValue <= significance,
    "shift alone": shift !== null && shift.pValue <= significance,
    "newest fill at 5 %": asTheyCame.at(-1)?.outside ?? false,
    "Mann–Kendall": named !== null && named.mannKendall.pValue <= significance,
    "individuals chart": (named?.individuals.outside.length ?? 0) > 0,
    "EWMA of scores": charts.points.some(
      ({ ewma }) => ewma.value < ewma.lower || ewma.value > ewma.upper,
    ),
    "CUSUM of scores": charts.points.some(({ cusum }) => cusum.signal !== null),
  };
}
