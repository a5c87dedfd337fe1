/** What all of them rest on: no bulletin or standard that we know gives these figures. */
export const practiceSource = "common practice, no source";

/**
 * What people with air drills do and find, in figures. No answer is computed from them: sentences, sheets and examples that
 * touch one agree with it, and say that it is practice.
 */
export const practice = {
  /** Share of the bin's content below which a catch is not taken. */
  leastBinLevel: 1 / 4,
  /** Drilled after filling, before the catch, so that the product has settled: hectares and acres. */
  settledOver: { metric: 2, us: 5 },
  /** Of the meter, before the first catch that counts, so that its cells are full. */
  primingTurns: 12,
  /** That one catch at every bin of a cart of two or three bins takes, from and to. */
  minutesForCart: [3, 5],
  /** How far the rate is found to be off where catches are skipped, relative, from and to. */
  offWhenSkipped: [0.1, 0.12],
  /** When the value of an earlier catch is not relied on any more. */
  catchAgain: ["another product", "bin filled", "first use in a season"],
} as const;
