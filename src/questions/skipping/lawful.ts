import { lawfulErrors } from "../../model/lawful-rates.ts";
import type { NextFillError } from "../../model/rate-error.ts";
import { statedChance } from "../../model/skip-chance.ts";
import { shareAboveBound, shareBelowBound } from "../../statistics/exceedance-bound.ts";
import { chanceAbove, chanceBelow } from "../../statistics/expected-loss.ts";
import { boundConfidence } from "./distribution.ts";
import type { BoundedChance, LawfulAim, LawfulWhenSkipped } from "./result.ts";

const confidenceOfEnd = (1 + boundConfidence) / 2;

/**
 * The chance that the next fill breaks label or law uncaught, by the law and the bounds of every other chance of a skipped
 * fill: a lawful rate is a rate error against the target.
 *
 * @param error  null: too little known for a chance
 */
export function lawfulWhenSkipped(aim: LawfulAim, error: NextFillError | null): LawfulWhenSkipped {
  const { targetKgPerHa: target } = aim;
  if (error === null || target === null) return { ...aim, below: null, above: null, either: null };
  const { law, fills, leastChance } = error;
  const beyond = (
    limit: number | null,
    chanceOf: typeof chanceBelow,
    boundOf: typeof shareBelowBound,
  ): BoundedChance | null =>
    limit === null
      ? null
      : { chance: chanceOf(law, limit), upperBound: boundOf(fills, limit, confidenceOfEnd) };
  const stated = (reckoned: BoundedChance | null): BoundedChance | null => {
    if (reckoned === null) return null;
    const chance = statedChance(reckoned.chance, leastChance);
    // As of every chance: far out the t tail is the larger of the two.
    return { chance, upperBound: Math.max(chance, reckoned.upperBound) };
  };
  const { lowest, highest } = lawfulErrors(aim, target);
  const below = beyond(lowest, chanceBelow, shareBelowBound);
  const above = beyond(highest, chanceAbove, shareAboveBound);
  return {
    ...aim,
    below: stated(below),
    above: stated(above),
    either: stated(eitherOf(below, above)),
  };
}

function eitherOf(below: BoundedChance | null, above: BoundedChance | null): BoundedChance | null {
  if (below === null || above === null) return below ?? above;
  return {
    chance: Math.min(1, below.chance + above.chance),
    upperBound: Math.min(1, below.upperBound + above.upperBound),
  };
}
