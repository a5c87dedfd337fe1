import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";

/**
 * p-values of many tests adjusted so that, of all that are then called findings, no larger share than the level they are
 * compared with is false on average. Step-up of Benjamini and Hochberg: of m values, the k-th smallest is multiplied by m/k,
 * never more than the next larger one, at most 1. Where nothing is to be found at all, the share is the chance of any finding.
 *
 * @param pValues each from 0 to 1; none gives none
 * @returns adjusted values in the order of the input
 * @throws NumericalError when a value is not from 0 to 1
 * Assumes tests that are independent, or depend on each other so that a small value makes others no larger
 * Source Benjamini & Hochberg 1995, Journal of the Royal Statistical Society B 57, 289–300
 * @example benjaminiHochberg([0.01, 0.04, 0.03]) // -> [0.03, 0.04, 0.04]
 */
export function benjaminiHochberg(pValues: readonly number[]): readonly number[] {
  for (const pValue of pValues) {
    if (!(pValue >= 0 && pValue <= 1)) {
      throw new NumericalError(
        `benjaminiHochberg: a p-value is ${String(pValue)}; it must be from 0 to 1.`,
      );
    }
  }
  const tests = pValues.length;
  const largestFirst = pValues
    .map((pValue, place) => ({ pValue, place }))
    .sort((a, b) => b.pValue - a.pValue);
  const adjusted = new Array<number>(tests);
  let smallest = 1;
  for (let rank = tests; rank >= 1; rank--) {
    const { pValue, place } = at(largestFirst, tests - rank);
    smallest = Math.min(smallest, (tests / rank) * pValue);
    adjusted[place] = smallest;
  }
  return adjusted;
}
