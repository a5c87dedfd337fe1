/** A rule for taking catches one at a time, and what is stated when it stops. */
export interface StudiedRule {
  readonly name: string;
  /** Degrees of freedom of the catch scatter that earlier fills know; 0: the fill's own scatter only. */
  readonly earlierDf: number;
  readonly fewest: number;
  readonly mostCatches: number;
  readonly stated: "half-width" | "max(half-width, tolerance)";
}

/** No limit worth the name. */
const unlimited = 200;

/** The bare rule in its variants, for comparison, and the ones in use. */
export const studiedRules: readonly StudiedRule[] = [
  bare("own scatter, from 2", 0, 2),
  bare("own scatter, from 3", 0, 3),
  bare("own scatter, from 4", 0, 4),
  bare("earlier fills with 6 df, from 2", 6, 2),
  bare("earlier fills with 12 df, from 2", 12, 2),
  used("own scatter, from 3, at most 12", 0, 3, 12),
  used("own scatter, from 3, at most 8", 0, 3, 8),
  used("own scatter, from 4, at most 6", 0, 4, 6),
  used("earlier fills with 2 df, from 1, at most 8", 2, 1, 8),
  used("earlier fills with 6 df, from 1, at most 8", 6, 1, 8),
  used("earlier fills with 12 df, from 1, at most 8", 12, 1, 8),
  used("earlier fills with 6 df, from 2, at most 8", 6, 2, 8),
];

function bare(name: string, earlierDf: number, fewest: number): StudiedRule {
  return { name, earlierDf, fewest, mostCatches: unlimited, stated: "half-width" };
}

function used(name: string, earlierDf: number, fewest: number, mostCatches: number): StudiedRule {
  return { name, earlierDf, fewest, mostCatches, stated: "max(half-width, tolerance)" };
}
