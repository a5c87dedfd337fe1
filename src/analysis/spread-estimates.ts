import { fewestToEstimate } from "../data/spreads/limits.ts";
import type { EstimatedConstant, ReEstimate, SpreadLibrary } from "../data/spreads/schema.ts";
import { dfOf, relativeSquares } from "../model/catch-scatter.ts";
import { seenVariance } from "../model/lent-scatter.ts";
import type { MeterModel, Model } from "../model/model.ts";
import { defaults } from "../results/defaults.ts";
import type { EstimatedVariance } from "../statistics/spread-votes.ts";
import { typicalDeviation, varianceHeterogeneity } from "../statistics/variance-heterogeneity.ts";

interface Found {
  readonly value: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * The declared heterogeneities and typical figures as pooled logs have them: between meters from one variance a meter, as meters
 * lend them, all meters about one centre; between fills of one meter from one variance a fill, each meter with a centre of its
 * own. What differs between fills is therefore part of what differs between meters of few fills, as it is where they lend.
 * Meters count as independent; those of one bin or farm are more alike than that.
 *
 * @returns null with fewer than 30 meters for each; a constant for which there are fewer is left out
 */
export function constantsFrom(models: readonly Model[], level: number): SpreadLibrary["estimates"] {
  const meters = models.flatMap((model) => model.meters);
  const spreads = meters.flatMap(({ record }) => record.spread ?? []);
  const scatters = meters.flatMap(({ record }) => record.scatter ?? []);
  const byFill = meters.map(fillScatters).filter((fills) => fills.length >= 2);
  const constants = [
    ...ofMeters(spreads, level, {
      between: "between_meters_spread",
      typical: "typical_spread",
      declared: defaults.assumedSpread,
      perVariance: 1,
    }),
    ...ofMeters(scatters, level, {
      between: "between_meters_scatter",
      typical: "typical_scatter",
      declared: defaults.assumedScatter.relative,
      perVariance: defaults.assumedScatter.turns,
    }),
    ...(byFill.length < fewestToEstimate
      ? []
      : [
          compared(
            "between_fills_scatter",
            defaults.betweenFills,
            varianceHeterogeneity(byFill, level),
            byFill.flat().length,
          ),
        ]),
  ];
  return constants.length === 0 ? null : { level, constants };
}

/** @param perVariance  turns of the catch that the typical figure is about */
function ofMeters(
  variances: readonly EstimatedVariance[],
  level: number,
  {
    between,
    typical,
    declared,
    perVariance,
  }: {
    readonly between: EstimatedConstant;
    readonly typical: EstimatedConstant;
    readonly declared: number;
    readonly perVariance: number;
  },
): readonly ReEstimate[] {
  if (variances.length < fewestToEstimate) return [];
  const found = varianceHeterogeneity([variances], level);
  const middle = typicalDeviation(variances, found.value, level);
  const scaled = (deviation: number) => deviation / Math.sqrt(perVariance);
  return [
    compared(between, defaults.betweenMeters, found, variances.length),
    compared(
      typical,
      declared,
      { value: scaled(middle.value), lower: scaled(middle.lower), upper: scaled(middle.upper) },
      variances.length,
    ),
  ];
}

function fillScatters({ fills, scatter }: MeterModel): readonly EstimatedVariance[] {
  return fills.flatMap(({ scatterTotals }) => {
    const df = dfOf(scatterTotals);
    if (df === 0) return [];
    return seenVariance(relativeSquares(scatterTotals) / df, df, scatter.floor) ?? [];
  });
}

function compared(
  name: EstimatedConstant,
  declared: number,
  { value, lower, upper }: Found,
  sources: number,
): ReEstimate {
  const differs = declared < lower || declared > upper;
  return { name, declared, estimate: value, from: lower, to: upper, sources, differs, said: null };
}
