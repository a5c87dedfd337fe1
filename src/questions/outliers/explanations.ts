import { sum } from "simple-statistics";
import {
  studentTDensity,
  studentTLowerTail,
  studentTTwoSided,
} from "../../numeric/distributions/student-t.ts";
import type { Mishap } from "../../results/mishap.ts";
import {
  type CatchInDoubt,
  expectation,
  type MishapLaw,
  mishapLaws,
  type Place,
} from "./mishap-laws.ts";

/** A mishap that would make the catch weigh about what it did. */
export interface Explanation {
  readonly mishap: Mishap;
  /** Likelihood of the mass if this happened over its likelihood by bad luck; at most a million million. */
  readonly timesBetter: number;
  /** Share of the weight of all mishaps together, prior odds included. */
  readonly share: number;
  /** Two-sided p value of the catch if this happened. */
  readonly pValue: number;
  /** The bag, the previous catch, or the reading that was meant, kg. */
  readonly massKg: number | null;
  /** Turns really made. */
  readonly turns: number | null;
  /** Share delivered, or factor between what was written and what was meant. */
  readonly factor: number | null;
}

const smallestShare = 0.1;
/** A mishap under which the catch would be odder than this does not explain it. */
const smallestPValue = 0.01;
const mostTimesBetter = 1e12;

/**
 * What probably happened? Weighs physical mishaps by the likelihood of the recorded mass under each: the catches that do
 * not stand out predict it with Student's t, a mishap shifts, stretches or blurs that prediction, and bad luck leaves it
 * as it is. weight = prior odds × density.
 *
 * @returns  those with more than 10 % of the mishaps' weight under which the catch is nothing odd (p >= 0.01) and likelier
 *           than by bad luck, best first; empty: no explanation fits
 * Assumes   the prior odds are a judgement, the same for everybody, and carry little: what counts is whether a mishap
 *           fits. How often the right one comes first: reports/outlier-study.md
 */
export function explanationsOf(doubt: CatchInDoubt): readonly Explanation[] {
  if (doubt.line.variance === null) return [];
  const { df } = doubt.line;
  const at = expectation(doubt, doubt.row.turns);
  if (at.standardError === 0) return [];
  const luck = pointDensity(doubt.row.netKg, at.kg, at.standardError, df);
  const weighed = mishapLaws(doubt).map((law) => ({ law, density: densityOf(law, df) }));
  const total = sum(weighed.map(({ law, density }) => law.prior * density));
  if (total === 0) return [];
  return weighed
    .map(({ law, density }): Explanation => {
      const best = likeliestPlace(law, df);
      return {
        mishap: law.mishap,
        timesBetter: Math.min(mostTimesBetter, density / Math.max(luck, Number.MIN_VALUE)),
        share: (law.prior * density) / total,
        pValue: studentTTwoSided((best.comparedKg - nearest(best)) / best.standardError, df),
        massKg: best.massKg,
        turns: best.turns,
        factor: best.factor,
      };
    })
    .filter(
      ({ share, pValue, timesBetter }) =>
        share > smallestShare && pValue >= smallestPValue && timesBetter > 1,
    )
    .sort((a, b) => b.share - a.share);
}

function densityOf({ places }: MishapLaw, df: number): number {
  return sum(places.map((one) => one.weight * placeDensity(one, df)));
}

// A mass spread evenly over a range and blurred by t has the density of the difference of two t tails.
function placeDensity({ fromKg, toKg, standardError, comparedKg }: Place, df: number): number {
  if (fromKg === toKg) return pointDensity(comparedKg, fromKg, standardError, df);
  const below = (edge: number) => studentTLowerTail((comparedKg - edge) / standardError, df);
  return (below(fromKg) - below(toKg)) / (toKg - fromKg);
}

function pointDensity(kg: number, expectedKg: number, standardError: number, df: number): number {
  return studentTDensity((kg - expectedKg) / standardError, df) / standardError;
}

function likeliestPlace({ places }: MishapLaw, df: number): Place {
  const weight = (one: Place) => one.weight * placeDensity(one, df);
  return places.reduce((best, one) => (weight(one) > weight(best) ? one : best));
}

// For a range the mass in it that lies nearest: all of the range is equally well explained.
function nearest({ fromKg, toKg, comparedKg }: Place): number {
  return Math.min(toKg, Math.max(fromKg, comparedKg));
}
