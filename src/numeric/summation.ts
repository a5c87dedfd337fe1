import { NumericalError } from "../errors/errors.ts";
import { finiteResult } from "./domain.ts";

/**
 * Running sum that keeps what each addition rounds away, so the total is right to the last digit or two whatever the
 * order and however many terms (Neumaier's compensated summation).
 *
 * Source Neumaier 1974, ZAMM 54, 39–51
 */
export class RunningSum {
  #sum = 0;
  #lost = 0;

  /** Adds one finite value. */
  add(value: number): void {
    const next = this.#sum + value;
    this.#lost +=
      Math.abs(this.#sum) >= Math.abs(value) ? this.#sum - next + value : value - next + this.#sum;
    this.#sum = next;
  }

  get total(): number {
    return this.#sum + this.#lost;
  }
}

/**
 * Accurate sum of the values; 0 for none.
 *
 * @param values finite numbers
 * @throws NumericalError when a value is not finite (naming its place) or the sum overflows
 */
export function accurateSum(values: ArrayLike<number>): number {
  const running = new RunningSum();
  for (let i = 0; i < values.length; i++) running.add(values[i] ?? Number.NaN);
  return checked("accurateSum", running.total, values);
}

/**
 * Accurate sum of products, as if computed in twice the precision and then rounded: each product is split into its
 * rounded value and its exact rounding error (Ogita, Rump and Oishi's Dot2).
 *
 * @param a finite numbers
 * @param b finite numbers, as many as in `a`
 * @throws NumericalError when the lengths differ, a value is not finite (naming its place) or the sum overflows
 * Source Ogita, Rump and Oishi 2005, SIAM Journal on Scientific Computing 26, 1955–1988, algorithm 5.3
 */
export function accurateDot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  if (a.length !== b.length) {
    throw new NumericalError(`accurateDot: ${a.length} values against ${b.length}.`);
  }
  const running = new RunningSum();
  for (let i = 0; i < a.length; i++) {
    const x = a[i] ?? Number.NaN;
    const y = b[i] ?? Number.NaN;
    running.add(x * y);
    running.add(productError(x, y));
  }
  return checked("accurateDot", running.total, a, b);
}

/** x·y minus its rounded value, exactly, by splitting each factor into two halves of 26 bits. */
function productError(x: number, y: number): number {
  const [xHigh, xLow] = halves(x);
  const [yHigh, yLow] = halves(y);
  return xLow * yLow - (x * y - xHigh * yHigh - xLow * yHigh - xHigh * yLow);
}

function halves(x: number): readonly [high: number, low: number] {
  const shifted = 134217729 * x; // 2^27 + 1
  const high = shifted - (shifted - x);
  return [high, x - high];
}

/** Looks for the guilty value only after the sum has failed, so that good data pay nothing. */
function checked(routine: string, total: number, ...lists: readonly ArrayLike<number>[]): number {
  if (Number.isFinite(total)) return total;
  for (const list of lists) {
    for (let i = 0; i < list.length; i++) {
      if (!Number.isFinite(list[i])) {
        throw new NumericalError(
          `${routine}: value ${i + 1} is ${String(list[i])}, not a finite number.`,
        );
      }
    }
  }
  return finiteResult(routine, total);
}
