/** Shares are written in five digits, the smallest of them with seven decimals. */
const unit = 1e7;

/** The last digit that is written of a share in units. */
function lastDigit(share: number): number {
  if (share >= 1e6) return 100;
  return share >= 1e5 ? 10 : 1;
}

/**
 * Rising shares of five digits as steps off the straight line through the two before, in the last digit of the earlier one:
 * small whole numbers, which a page at the drill loads in little more than half the time. Steps of zero at the end are left out.
 */
export function foldedShares(shares: readonly number[]): readonly number[] {
  let [before, last] = [0, 0];
  const steps = shares.map((share) => {
    const units = Math.round(share * unit);
    const step = (units - (2 * last - before)) / lastDigit(before);
    [before, last] = [last, units];
    return step;
  });
  return steps.slice(0, steps.findLastIndex((step) => step !== 0) + 1);
}

/** The shares that such steps came from, to the digit. */
export function unfoldedShares(steps: readonly number[], count: number): readonly number[] {
  let [before, last] = [0, 0];
  return Array.from({ length: count }, (_, i) => {
    const units = 2 * last - before + (steps[i] ?? 0) * lastDigit(before);
    [before, last] = [last, units];
    return units / unit;
  });
}
