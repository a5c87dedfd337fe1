/** From the lowest to the highest rate of a study's situations, fractions. */
export interface StudiedRange {
  readonly lowest: number;
  readonly highest: number;
}

/** What simulation found and sentences tell, in whole percent as the studies' files have it; a test holds each to its file. */
export const studied = {
  /** reports/coverage.json: intervals at 95 % that take every catch for a fill. */
  catchesAsFills: { lowest: 0.57, highest: 0.87 },
  /** reports/outlier-study.json: clean logs of 6 and 12 fills that raise a flag. */
  flags: {
    heavyTails: { lowest: 0.14, highest: 0.18 },
    turnsSquared: { lowest: 0.02, highest: 0.07 },
    /** Clean fills among earlier ones that scatter unlike one another, where 5 % is meant. */
    unlikeFills: { lowest: 0.05, highest: 0.09 },
  },
  /** reports/skipping-study.json: how often a 90 % bound of a chance holds at least, neighbouring fills correlated by .5. */
  boundsOfAlikeFills: 0.87,
  /** reports/outlier-study.json: false flags with an explanation more than a thousand times likelier than bad luck, at most; where none was seen, the 95 % bound 3 ÷ n. */
  convincing: { normal: 0.06, heavyTails: 0.11 },
  /** reports/blocks-study.json: trials in complete blocks without any true difference that find one, at 95 %. */
  blocks: {
    /** One spread pooled over the products: where they spread alike, and where the widest spreads four times as much. */
    "tukey-blocks": {
      alike: { lowest: 0.05, highest: 0.06 },
      unlike: { lowest: 0.06, highest: 0.09 },
    },
    "dunnett-blocks": {
      alike: { lowest: 0.04, highest: 0.06 },
      unlike: { lowest: 0.05, highest: 0.08 },
    },
    /** Each pair by itself, whether products spread alike or not. */
    paired: { lowest: 0.04, highest: 0.05 },
    /** Products that differ by the margin and are called equivalent by the pooled spread, where spreads are unlike; at most. */
    equivalentAtMargin: 0.12,
  },
  /** reports/blocks-study.json: Games and Howell's comparisons of unequal spreads that find a difference where there is none. */
  gamesHowell: { lowest: 0.06, highest: 0.08 },
  /** reports/decision-study.json: reports in which nothing is wrong that look alarmed; what the study holds itself to. */
  cleanReports: { bins: 3, fills: 6, atMost: 0.1 },
} as const;
