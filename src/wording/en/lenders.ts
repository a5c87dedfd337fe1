/** Who lends a bin its scatter, or its spread; German has it in the dative. */
export interface LenderFacts extends OtherMeters {
  /** Other fills of the bin lend. */
  readonly fills: boolean;
  /** A typical figure was taken for granted. */
  readonly assumed: boolean;
}

/** Meters that lend, each counted once. */
export interface OtherMeters {
  /** Other bins of the log. */
  readonly meters: number;
  /** Meters of a library. */
  readonly library: number;
}

const bins = (meters: number) => (meters === 1 ? "the other bin" : `${meters} other bins`);
const ofLibrary = (meters: number) =>
  meters === 1 ? "1 meter of the library" : `${meters} meters of the library`;

export const lenders = ({ fills, meters, library, assumed }: LenderFacts): string =>
  [
    ...(fills ? ["this bin's other fills"] : []),
    ...(meters > 0 ? [bins(meters)] : []),
    ...(library > 0 ? [ofLibrary(library)] : []),
    ...(assumed ? ["the typical figure given in the setup"] : []),
  ].join(" and ");

/** The same where it is only said with whom a bin tells something together. */
export const togetherWith = ({ meters, library }: OtherMeters): string =>
  [
    ...(meters > 0 ? [meters === 1 ? "one other bin" : `${meters} other bins`] : []),
    ...(library > 0 ? [ofLibrary(library)] : []),
  ].join(" and ");

/** Whom a bin may be like. */
export const likeWhom = ({ meters, library }: OtherMeters): string =>
  [
    ...(meters > 0 ? ["your other bins"] : []),
    ...(library > 0 ? ["the meters of the library"] : []),
  ].join(" and ");
