/** No step longer than this, so that a start on the flat side cannot jump out of what a number can hold. */
const longestStep = 8;

/** With steps that long, enough to cross the whole range of a double. */
const mostRounds = 250;

/** e^±v is no double beyond this; a tail that falls to 0 there says nothing. */
const farthest = 709;

/** Doubles below 2e-308 lose their digits. */
const vanishing = 1e-306;

/**
 * Finds where one tail of a distribution has a given chance: Newton's method for the logarithm of the tail, which is
 * concave wherever the density is log-concave, so the steps cannot wander off. What has been found to lie on either side
 * is kept, and a step past it is halved instead: between a tail of 0 and one of 1 there may be less than a step.
 *
 * @param start first guess of v
 * @param chance wanted chance of the tail, above 0
 * @param side whether the tail grows with v (lower) or falls (upper)
 * @param tail chance of the tail at v
 * @param density its derivative by v, without sign
 * @returns v, or NaN when the search leaves what a number can hold
 */
export function findLogTail(
  start: number,
  chance: number,
  side: "lower" | "upper",
  tail: (v: number) => number,
  density: (v: number) => number,
): number {
  const direction = side === "lower" ? 1 : -1;
  let v = start;
  let [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let round = 0; round < mostRounds; round++) {
    const found = tail(v);
    const miss = Math.log(chance / found);
    if (miss * direction > 0) low = v;
    else high = v;
    // Where tail and density underflow only the direction is known; a step shorter than the longest cannot undo it.
    const full = found > vanishing ? (direction * miss * found) / density(v) : 5 * direction;
    const stepped = v + Math.min(Math.max(full, -longestStep), longestStep);
    const step = (stepped < low || stepped > high ? low + 0.5 * (high - low) : stepped) - v;
    v += step;
    // Each step about squares the error; a miss of 1e-14 is the rounding of the tail itself.
    if (Math.abs(step) < 1e-10 || Math.abs(miss) < 1e-14)
      return Math.abs(v) < farthest ? v : Number.NaN;
  }
  return Number.NaN;
}
