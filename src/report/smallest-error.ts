import { min } from "simple-statistics";
import type { Estimate } from "../results/estimate.ts";

/** The error whose digits a whole column shows: none of its figures loses a digit that it deserves. Null: none has one. */
export function smallestError(column: readonly Pick<Estimate, "standardError">[]): number | null {
  const errors = column.flatMap(({ standardError }) => standardError || []);
  return errors.length === 0 ? null : min(errors);
}
