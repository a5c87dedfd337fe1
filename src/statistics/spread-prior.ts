/** What is known of a spread beforehand, as if from ν0 degrees of freedom with variance s0². */
export interface SpreadPrior {
  readonly nu0: number;
  readonly s0Squared: number;
}

export const noPrior: SpreadPrior = { nu0: 0, s0Squared: 0 };
