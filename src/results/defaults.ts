/** Every default an answer may rest on, with the reason for it. */
export const defaults = {
  /** The level most tables, bulletins and reviewers use. */
  level: 0.95,
  /**
   * Within 5 % of the rate wanted, else adjust: University of Georgia Extension (Madison County, 2020) on application equipment,
   * Field and Long (2018) on drills; Sumner (Georgia) and Alabama ANR-725 ask it of each outlet. The user's to choose.
   */
  tolerance: 0.05,
  /** Chance of reaching a width that was planned for; below it a plan fails little less often than it holds. */
  assurance: 0.8,
  /** Shift for which the power of the drift tests is stated: the default tolerance, so that "moved" means "off". */
  shiftOfInterest: 0.05,
  /**
   * Standard deviation of ln σ between meters, for catch scatter and for how fills differ: 95 % of meters lie within a factor
   * 2.7 of their middle. Declared, with no real logs behind it; what a wrong one costs: reports/lending-study.md.
   */
  betweenMeters: 0.5,
  /** The same between fills of one meter, for catch scatter: within a factor 1.5. Declared likewise. */
  betweenFills: 0.2,
  /**
   * Catch scatter where nobody knows better, of a catch of so many turns. Within the repeat-to-repeat unevenness of metered
   * flow of 0.8–3.7 % that Yazgi et al. (Applied Engineering in Agriculture 33, 2017) report.
   */
  assumedScatter: { relative: 0.015, turns: 20 },
  /**
   * How much fills differ where nobody knows better. No published figure; the middle of 1–6 %, a reading of how far seed
   * lots, moisture and filling move bulk density.
   */
  assumedSpread: 0.03,
  /** Standard deviation of ln σ about both of these: a meter is within a factor 7.4 of them. */
  aboutAssumed: 1,
  /** Chances of a group like the others to lie beyond its limits, the inner one first: those of ISO 5725-2 for Mandel's statistics. */
  beyondByChance: [0.05, 0.01],
} as const;
