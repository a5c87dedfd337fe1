/** No step longer than this, so that a start on the flat side cannot jump out of what a number can hold. */
const longestStep = 8;

/** With steps that long, enough to cross the whole range of a double. */
const mostRounds = 250;

/** Smaller doubles lose their digits. */
const vanishing = 1e-290;

/**
 * Finds where one tail of a distribution has a given chance: Newton's method for the logarithm of the tail, which is
 * concave wherever the density is log-concave, so the steps cannot wander off.
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
  for (let round = 0; round < mostRounds; round++) {
    const found = tail(v);
    const miss = Math.log(chance / found);
    // Where tail and density underflow only the direction is known; a step shorter than the longest cannot undo it.
    const full = found > vanishing ? (direction * miss * found) / density(v) : 5 * direction;
    const step = Math.min(Math.max(full, -longestStep), longestStep);
    v += step;
    // Each step about squares the error; a miss of 1e-14 is the rounding of the tail itself.
    if (Math.abs(step) < 1e-10 || Math.abs(miss) < 1e-14) return v;
  }
  return Number.NaN;
}
