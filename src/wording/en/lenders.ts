/** Who lends a bin its scatter, or its spread; German has it in the dative. */
export interface LenderFacts {
  /** Other fills of the bin lend. */
  readonly fills: boolean;
  /** Other bins that lend. */
  readonly meters: number;
  /** A typical figure was taken for granted. */
  readonly assumed: boolean;
}

const bins = (meters: number) => (meters === 1 ? "the other bin" : `${meters} other bins`);

export const lenders = ({ fills, meters, assumed }: LenderFacts): string =>
  [
    ...(fills ? ["this bin's other fills"] : []),
    ...(meters > 0 ? [bins(meters)] : []),
    ...(assumed ? ["the typical figure given in the setup"] : []),
  ].join(" and ");
