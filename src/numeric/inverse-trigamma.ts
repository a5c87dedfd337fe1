import { requirePositive } from "./domain.ts";
import { tetragamma, trigamma } from "./special-functions.ts";

/** Outside these ψ′(x) is its first term to all the digits of a double: 1/x² near 0, 1/x far out. */
const [smallest, largest] = [1e-16, 1e16];
const closeEnough = 4e-16;
const mostSteps = 50;

/**
 * The x whose trigamma is y, by Newton's method on 1/ψ′, which is nearly a straight line: from ½ + 1/y it comes from one
 * side and stays on the positive half-line.
 *
 * @param y above 0
 * @throws NumericalError when y is out of range
 * Source Smyth 2004, Statistical Applications in Genetics and Molecular Biology 3, article 3, appendix
 */
export function inverseTrigamma(y: number): number {
  requirePositive("inverseTrigamma", "y", y);
  if (y > largest) return 1 / Math.sqrt(y);
  if (y < smallest) return 1 / y;
  let x = 0.5 + 1 / y;
  for (let step = 0; step < mostSteps; step++) {
    const value = trigamma(x);
    const change = (value * (1 - value / y)) / tetragamma(x);
    x += change;
    if (Math.abs(change) <= closeEnough * x) break;
  }
  return x;
}
