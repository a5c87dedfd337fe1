import type { Progress, StoppingAdvice, StoppingRule } from "./result.ts";

/**
 * One more catch, or go? Stop at the first catch, from the fewest on, whose half-width is within the tolerance, or at
 * the most catches. Stopping on the width favours fills whose catches happen to agree, so the width itself is too good;
 * stated as ± max(half-width, tolerance) the interval keeps its coverage.
 *
 * Coverage of the stated interval: reports/stopping-study.md.
 */
export function stoppingAdvice(progress: Progress, rule: StoppingRule): StoppingAdvice {
  const { catches, halfWidth } = progress;
  const fewest = fewestCatches(progress.scatter, rule);
  const within = halfWidth !== null && halfWidth <= rule.tolerance;
  const shownHalfWidth = halfWidth === null ? null : Math.max(halfWidth, rule.tolerance);
  const advise = (action: StoppingAdvice["action"], reason: StoppingAdvice["reason"]) => ({
    action,
    reason,
    fewest,
    shownHalfWidth,
  });
  if (catches >= fewest && within) return advise("stop", "within tolerance");
  if (catches >= rule.mostCatches) return advise("stop", "most catches reached");
  if (catches < fewest) return advise("catch again", "too few catches");
  return advise("catch again", "wider than tolerance");
}

/** Catches before the width may decide. */
export function fewestCatches(
  scatter: Progress["scatter"],
  { fewestOwn, fewestPooled }: Pick<StoppingRule, "fewestOwn" | "fewestPooled">,
): number {
  return scatter === "pooled" ? fewestPooled : fewestOwn;
}
