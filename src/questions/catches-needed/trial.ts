import { sum } from "simple-statistics";
import { at } from "../../errors/at.ts";
import { halfWidthOf } from "../../model/known-width.ts";
import type { MeterModel } from "../../model/model.ts";
import { readingVariance } from "../../model/reading.ts";
import { offsetVarianceFactor } from "../../statistics/constant-offset.ts";
import { mean } from "../../statistics/summary.ts";
import { detectableEffect } from "../../statistics/t-test-power.ts";
import type { TrialCosts, TrialSplit, TrialSplits } from "./plans.ts";
import type { CatchesNeededOptions, Knowledge } from "./result.ts";

const fewestFills = 2;
const mostFills = 40;
const mostCatches = 12;
const fewestForScatter = 2;
const fewestForConstant = 4;
const usualPower = 0.8;

/**
 * How to split a budget into fills, catches and turn levels? The mean over fills has variance (τ² + σ²/n)/k and Student's
 * t on k − 1 degrees of freedom, so fills almost always buy more than catches; catches are for knowing their scatter.
 *
 * Source: Cochran, Sampling Techniques (two-stage sampling, optimum allocation)
 */
export function trialPlan(
  meter: MeterModel | null,
  basis: Knowledge,
  options: CatchesNeededOptions,
  costs: TrialCosts,
): TrialSplits {
  const known = spreadOf(meter);
  const spread = known ?? options.typicalSpread;
  const perCatch = costs.perCatch + costs.perTurn * basis.turnsPerCatch;
  const splits = affordableSplits(basis, options, costs, spread);
  return {
    spread,
    spreadFrom: known === null ? "assumption" : "fills",
    idealCatchesPerFill: Math.sqrt(costs.perFill / perCatch) * (basis.relativeScatter / spread),
    splits,
    best: narrowest(splits.filter(({ catchesPerFill: n }) => n >= fewestForScatter)),
    bestWithTwoLevels: narrowest(splits.filter((split) => split.detectableConstant !== null)),
  };
}

/** A spread of zero says "not told apart", and a plan resting on it would ask for a single fill. */
function spreadOf(meter: MeterModel | null): number | null {
  const between = meter?.across.between ?? null;
  if (meter === null || between === null || between.atBoundary) return null;
  return between.value / meter.across.mean.value;
}

function affordableSplits(
  basis: Knowledge,
  options: CatchesNeededOptions,
  costs: TrialCosts,
  spread: number,
): readonly TrialSplit[] {
  const fillCounts = Array.from({ length: mostFills - fewestFills + 1 }, (_, i) => fewestFills + i);
  return fillCounts.flatMap((fills) =>
    [1, 2].flatMap((levels) => {
      const catches = mostCatchesWithin(costs, fills, levels, basis.turnsPerCatch);
      if (catches < (levels === 1 ? 1 : fewestForConstant)) return [];
      return splitOf(fills, catches, levels, { basis, options, costs, spread });
    }),
  );
}

function mostCatchesWithin(costs: TrialCosts, fills: number, levels: number, turns: number) {
  const forCatches = costs.budget / fills - costs.perFill - (levels - 1) * costs.perExtraLevel;
  const each = costs.perCatch + costs.perTurn * turns;
  // A hair is added so that money that fits exactly is not lost to rounding.
  return Math.min(mostCatches, Math.floor(forCatches / each + 1e-9));
}

interface SplitGround {
  readonly basis: Knowledge;
  readonly options: CatchesNeededOptions;
  readonly costs: TrialCosts;
  readonly spread: number;
}

function splitOf(fills: number, catches: number, levels: number, ground: SplitGround): TrialSplit {
  const { basis, costs, spread } = ground;
  const { level } = ground.options;
  const turnLevels = levelsAround(basis.turnsPerCatch, levels);
  const turns = turnsOfCatches(turnLevels, catches);
  const reading = readingVariance(((basis.divisionInTurns ?? 0) * catches) / sum(turns));
  const ofFill = spread ** 2 + basis.variancePerTurn / sum(turns);
  return {
    fills,
    catchesPerFill: catches,
    turnLevels,
    cost:
      fills *
      (costs.perFill +
        (levels - 1) * costs.perExtraLevel +
        catches * costs.perCatch +
        sum(turns) * costs.perTurn),
    // Fills of one turn level round alike, so reading is not averaged over them.
    halfWidth: halfWidthOf(
      { scatter: ofFill / fills, reading },
      { nu: fills - 1, own: false },
      { level, phi: 1 },
    ),
    detectable:
      detectableEffect(fills - 1, usualPower, level) * Math.sqrt((ofFill + reading) / fills),
    detectableConstant: levels === 1 ? null : detectableConstant(turns, fills, ground),
  };
}

/** Two levels a factor 2 apart with the same mean, so that they cost no more turns than one. */
function levelsAround(turns: number, levels: number): readonly number[] {
  return levels === 1 ? [turns] : [Math.round((2 * turns) / 3), 2 * Math.round((2 * turns) / 3)];
}

function turnsOfCatches(levels: readonly number[], catches: number): number[] {
  return Array.from({ length: catches }, (_, i) => at(levels, i % levels.length));
}

/** By a line with intercept in each fill, its scatter pooled over the fills; as a share of a catch's mass. */
function detectableConstant(
  turns: readonly number[],
  fills: number,
  { basis, options }: SplitGround,
) {
  const standardError = Math.sqrt(basis.variancePerTurn * offsetVarianceFactor(turns));
  const df = fills * (turns.length - 1) - 1;
  return (detectableEffect(df, usualPower, options.level) * standardError) / mean(turns);
}

function narrowest(splits: readonly TrialSplit[]): TrialSplit | null {
  return splits.reduce<TrialSplit | null>(
    (best, split) => (best === null || split.halfWidth < best.halfWidth ? split : best),
    null,
  );
}
