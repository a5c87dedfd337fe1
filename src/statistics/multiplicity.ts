import { NumericalError } from "../errors/errors.ts";

/**
 * p-values of several tests adjusted so that the chance of any false finding among them stays below the level each is
 * then compared with. Holm's step-down: the smallest is multiplied by m, the next by m − 1, …, never falling, at most
 * 1. Valid however the tests depend on each other.
 *
 * @param pValues each from 0 to 1; none gives none
 * @returns adjusted values in the order of the input
 * @throws NumericalError when a value is not from 0 to 1
 * Source Holm 1979, Scandinavian Journal of Statistics 6, 65–70
 * @example holm([0.01, 0.04, 0.03]) // -> [0.03, 0.06, 0.06]
 */
export function holm(pValues: readonly number[]): readonly number[] {
  for (const pValue of pValues) {
    if (!(pValue >= 0 && pValue <= 1)) {
      throw new NumericalError(`holm: a p-value is ${String(pValue)}; it must be from 0 to 1.`);
    }
  }
  const order = pValues.map((pValue, place) => ({ pValue, place }));
  order.sort((a, b) => a.pValue - b.pValue);
  const adjusted = new Array<number>(pValues.length);
  let largest = 0;
  order.forEach(({ pValue, place }, rank) => {
    largest = Math.max(largest, Math.min(1, (pValues.length - rank) * pValue));
    adjusted[place] = largest;
  });
  return adjusted;
}
