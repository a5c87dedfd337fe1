// `evencatch/statistics`: textbook methods on plain numbers, for use outside catches. What only the answers need stays
// inside, and so do the distributions and numerical routines below them.

// One sample: its middle, its spread, what covers a share of it, and values that do not belong

export {
  type CoefficientOfVariation,
  coefficientOfVariation,
  vangelInterval,
} from "./statistics/coefficient-of-variation.ts";
export {
  type EsdStep,
  type GeneralizedEsd,
  type GrubbsSide,
  type GrubbsTest,
  generalizedEsd,
  grubbsTest,
} from "./statistics/outlier-tests.ts";
export { type Sample, sampleOf } from "./statistics/sample.ts";
export { mean, median, sampleStandardDeviation } from "./statistics/summary.ts";
export {
  howeToleranceFactor,
  type ToleranceAim,
  type ToleranceSample,
} from "./statistics/tolerance-interval.ts";

// Several samples: do their means differ, and are they the same within a margin?

export { type OneWayAnova, oneWayAnova } from "./statistics/anova.ts";
export { type BlockAnova, blockAnova } from "./statistics/block-anova.ts";
export type { EquivalenceTest, Limits } from "./statistics/equivalence.ts";
export {
  compareBlocks,
  compareGroups,
  type GroupComparison,
  type GroupDesign,
} from "./statistics/group-comparison.ts";
export type { MeanContrast } from "./statistics/mean-comparison.ts";
export { holm } from "./statistics/multiplicity.ts";
export type { RatioSet } from "./statistics/ratio-interval.ts";
export { detectableEffect, tTestPower } from "./statistics/t-test-power.ts";
export { type MeansTest, welchOneWay } from "./statistics/welch.ts";

// Do samples scatter alike?

export { type BartlettTest, bartlettTest, type GroupScatter } from "./statistics/bartlett.ts";
export { brownForsythe } from "./statistics/brown-forsythe.ts";
export {
  type TypicalDeviation,
  typicalDeviation,
  type VarianceHeterogeneity,
  varianceHeterogeneity,
} from "./statistics/variance-heterogeneity.ts";
export {
  type VarianceEstimate,
  type VarianceRatioTest,
  varianceRatioTest,
} from "./statistics/variance-ratio.ts";

// Lines and regressions

export { type LackOfFit, lackOfFit } from "./statistics/lack-of-fit.ts";
export { type PooledSlope, pooledSlope, type SlopeGroup } from "./statistics/pooled-slope.ts";
export { type Prediction, predict } from "./statistics/prediction.ts";
export {
  type Coefficient,
  type Regression,
  type RegressionPoint,
  regression,
} from "./statistics/regression.ts";
export {
  type LineFit,
  lineAt,
  weightedLine,
} from "./statistics/straight-line.ts";
export { type RobustLine, theilSen } from "./statistics/theil-sen.ts";
export {
  type FittedPoint,
  fitThroughOrigin,
  type Point,
  type ThroughOriginFit,
  type VarianceLaw,
} from "./statistics/through-origin.ts";

// A series: does something change over time?

export { type ChangePoint, changePoint } from "./statistics/change-point.ts";
export {
  type ChangePointInterval,
  changePointInterval,
} from "./statistics/change-point-interval.ts";
export {
  type CusumOptions,
  type CusumPoint,
  cusumChart,
  type EwmaOptions,
  type EwmaPoint,
  ewmaChart,
  type IndividualsChart,
  individualsChart,
} from "./statistics/control-charts.ts";
export { type MannKendallTest, mannKendall } from "./statistics/mann-kendall.ts";
export { type TrendTest, trendTest } from "./statistics/trend.ts";

// Variance between groups and within, and the uncertainty of a result

export {
  type ExpandedValue,
  inverseVarianceMean,
  normalisedError,
  type StandardValue,
} from "./statistics/agreement.ts";
export {
  type Budget,
  type Contribution,
  type Input,
  type InputLaw,
  type Measurement,
  propagateUncertainty,
  welchSatterthwaite,
} from "./statistics/propagation.ts";
export {
  fitRandomEffects,
  type Group,
  type RandomEffectsFit,
} from "./statistics/random-effects.ts";
