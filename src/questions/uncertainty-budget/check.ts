import { randomStream } from "../../numeric/random.ts";
import { monteCarloCheck } from "../../statistics/monte-carlo-check.ts";
import type { Budget } from "../../statistics/propagation.ts";
import { powerOfTen } from "../../units/power-of-ten.ts";
import type { BudgetCheck, UncertaintyBudgetOptions } from "./result.ts";
import type { Source } from "./sources.ts";
import { catchesAsOne, rateOf } from "./total.ts";

/** Standard errors of a drawn end that chance makes of it: more in one of ten thousand checks, where three are in one of a hundred. */
const chanceInDraws = 4;

/**
 * Do the budget and random draws from the same sources agree? They do where both ends of their intervals lie within half
 * a unit of the first digit of the combined uncertainty, or within four standard errors of the drawn ends where these
 * are larger: with few degrees of freedom the ends of so many draws are not known to a digit. No more are drawn once the digit
 * decides.
 *
 * Source  JCGM 101:2008 (GUM supplement 1), clauses 7 and 8; the stability of the drawn ends: 7.9.4
 */
export function checkBudget(
  sources: readonly Source[],
  { combined, expanded }: Pick<Budget, "combined" | "expanded">,
  { level, draws, seed }: UncertaintyBudgetOptions,
): BudgetCheck {
  const together = catchesAsOne(sources);
  const random = randomStream(seed);
  const halfDigit = 0.5 * powerOfTen(Math.floor(Math.log10(combined)));
  const enough = halfDigit / chanceInDraws;
  const drawn = monteCarloCheck(rateOf(together), together, level, draws, random, seed, enough);
  const [lower, upper] = [drawn.lower - 1, drawn.upper - 1];
  const difference = Math.max(Math.abs(lower + expanded), Math.abs(upper - expanded));
  const limit = Math.max(halfDigit, chanceInDraws * drawn.endError);
  return {
    draws: drawn.draws,
    seed,
    lower,
    upper,
    standardDeviation: drawn.standardDeviation,
    difference,
    limit,
    agrees: difference <= limit,
  };
}
