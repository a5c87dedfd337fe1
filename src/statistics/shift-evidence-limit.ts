import { at } from "../errors/at.ts";
import { requireNotNegative, requireWhole } from "../numeric/domain.ts";
import { fewestForLasting } from "./shift-evidence.ts";

/** p at which the newest value differs: one steady value in 500. */
export const newestLimit = 0.002;

interface LimitRow {
  readonly nu0: number;
  /** From 4 values to 12. */
  readonly limits: readonly number[];
}

const lowest: LimitRow = { nu0: 0, limits: [1.94, 2.63, 3.57, 4.61, 5.38, 5.79, 5.86, 5.64, 5.45] };
const highest: LimitRow = {
  nu0: 30,
  limits: [8.84, 7.69, 7.12, 6.49, 6.02, 5.51, 5.08, 4.65, 4.3],
};
/**
 * Limits of the averaged evidence by the prior's degrees of freedom. Asked after every value, a steady series passes one
 * of them within 12 values in 3 of 100: .030 spent over n = 4 … 12 in proportion to n. Beside them stands `newestLimit`.
 * By simulation of 200,000 series, held to a second one by test/reference/generate/shift-limits.R; both together:
 * reports/drift-study.md
 */
const rows: readonly LimitRow[] = [
  lowest,
  { nu0: 1, limits: [2.85, 3.62, 4.5, 5.33, 5.77, 5.95, 5.87, 5.66, 5.36] },
  { nu0: 2, limits: [3.8, 4.51, 5.33, 5.87, 6.12, 6.09, 5.96, 5.65, 5.18] },
  { nu0: 3, limits: [4.68, 5.26, 5.7, 6.08, 6.2, 6.1, 5.83, 5.49, 5.17] },
  { nu0: 5, limits: [5.98, 6.15, 6.35, 6.32, 6.19, 5.92, 5.6, 5.4, 5.03] },
  { nu0: 10, limits: [7.86, 7.34, 6.97, 6.77, 6.16, 5.8, 5.49, 5.11, 4.67] },
  highest,
];
const mostValues = 12;

/**
 * The averaged evidence from which a lasting shift is taken for found. Linear in 1/(1 + ν0) between the tabulated priors;
 * above ν0 = 30 and above 12 values the last of them counts.
 *
 * @param n   values, 4 or more
 * @param nu0 degrees of freedom of the prior, 0 or more
 * @throws NumericalError when an argument is out of range
 */
export function lastingShiftLimit(n: number, nu0: number): number {
  requireWhole("lastingShiftLimit", "n", n, fewestForLasting);
  requireNotNegative("lastingShiftLimit", "nu0", nu0);
  const place = Math.min(n, mostValues) - fewestForLasting;
  const limitOf = ({ limits }: LimitRow) => at(limits, place);
  const above = rows.find((row) => row.nu0 >= nu0) ?? highest;
  const below = rows.findLast((row) => row.nu0 <= nu0) ?? lowest;
  const [from, to] = [1 / (1 + below.nu0), 1 / (1 + above.nu0)];
  const weight = from === to ? 0 : (from - 1 / (1 + nu0)) / (from - to);
  return limitOf(below) * (1 - weight) + limitOf(above) * weight;
}
