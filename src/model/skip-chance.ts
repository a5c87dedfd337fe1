import type { FillSpread } from "./fill-spread.ts";

/** With two fills, Student's t on one degree of freedom has no mean: neither a chance nor an expected error is stated. */
export const fewestDfToPriceSkip = 2;
/**
 * Whether a chance or an expected error of a skipped fill may be stated: from three own fills on, whatever others lend.
 */
export function canPriceSkip({ ownDf }: { readonly ownDf: number }): boolean {
  return ownDf >= fewestDfToPriceSkip;
}

/** Six fills of one level. */
const fewestOwnDfForSmallChances = 5;
const leastFromFewFills = 0.05;

/**
 * The least chance of a skipped fill being off that may be stated. Chances reckoned below 5 % came true more than twice as
 * often as said after three fills, and more often than said after four and five (reports/skipping-study.md): so few do
 * not tell one this small, whatever others lend.
 *
 * @returns null: any, from six own fills of one level on
 */
export function leastChanceOfSkip({ ownDf }: Pick<FillSpread, "ownDf">): number | null {
  return ownDf < fewestOwnDfForSmallChances ? leastFromFewFills : null;
}

/** A chance as it may be stated. */
export function statedChance(chance: number, least: number | null): number {
  return Math.max(chance, least ?? 0);
}
