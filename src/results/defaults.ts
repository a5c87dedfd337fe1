/** Every default an answer may rest on, with the reason for it. */
export const defaults = {
  /** The level most tables, bulletins and reviewers use. */
  level: 0.95,
  /** The commonest advice in extension bulletins on drills and granular applicators: within 5 % of the target. */
  tolerance: 0.05,
  /** Chance of reaching a width that was planned for; below it a plan fails little less often than it holds. */
  assurance: 0.8,
  /** Shift for which the power of the drift tests is stated: the commonest tolerance, so that "moved" means "off". */
  shiftOfInterest: 0.05,
} as const;
