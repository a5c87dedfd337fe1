import { sum } from "simple-statistics";
import { finiteResult, requireFinite } from "./domain.ts";

/**
 * Accurate sum of the values, right to the last digit or two whatever their order and however many (compensated
 * summation of Kahan and Babuška, which keeps what each addition rounds away); 0 for none.
 *
 * @param values finite numbers
 * @throws NumericalError when a value is not finite (naming its place) or the sum overflows
 * Source Neumaier 1974, ZAMM 54, 39–51
 */
export function accurateSum(values: readonly number[]): number {
  const total = sum(values);
  // The guilty value is looked for only after the sum has failed, so that good data pay nothing.
  if (!Number.isFinite(total))
    values.forEach((value, i) => {
      requireFinite("accurateSum", `value ${i + 1}`, value);
    });
  return finiteResult("accurateSum", total);
}
