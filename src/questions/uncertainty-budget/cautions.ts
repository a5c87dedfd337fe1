import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { UncertaintyBudget } from "./result.ts";

/** Everything about a budget that a person should know before relying on it. */
export function uncertaintyBudgetCautions({
  bin,
  product,
  fill,
  total,
  leftOut,
  check,
  options,
}: Omit<UncertaintyBudget, "cautions">): readonly Caution[] {
  const found: Caution[] = [];
  const say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) =>
    found.push(caution(code, { bin, product, fill }, facts));
  if (total === null) say("budget-unknown", {});
  else if (leftOut.length > 0) say("budget-leaves-out", { sources: leftOut });
  if (check !== null && !check.agrees)
    say("budget-not-confirmed", { difference: check.difference, limit: check.limit });
  if (options.scaleTestedError !== null && options.scaleTestedError !== 0)
    say("scale-error-not-corrected", { testedError: options.scaleTestedError });
  return found;
}
