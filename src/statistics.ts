// `evencatch/statistics`: textbook methods on plain numbers, for use outside catches. What only the answers need stays
// inside, and so do the distributions and numerical routines below them.

// Do means differ, or agree?
export {
  type ExpandedValue,
  inverseVarianceMean,
  normalisedError,
  type StandardValue,
} from "./statistics/agreement.ts";
// Groups: variance between and within
export { type OneWayAnova, oneWayAnova } from "./statistics/anova.ts";
// Do groups scatter alike?
export { type BartlettTest, bartlettTest, type GroupScatter } from "./statistics/bartlett.ts";
export { type BlockAnova, blockAnova } from "./statistics/block-anova.ts";
export { brownForsythe } from "./statistics/brown-forsythe.ts";
// Does something change over time?
export { type ChangePoint, changePoint } from "./statistics/change-point.ts";
export {
  type ChangePointInterval,
  changePointInterval,
} from "./statistics/change-point-interval.ts";
// A sample
export {
  type CoefficientOfVariation,
  coefficientOfVariation,
  vangelInterval,
} from "./statistics/coefficient-of-variation.ts";
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
export type { EquivalenceTest, Limits } from "./statistics/equivalence.ts";
export {
  compareBlocks,
  compareGroups,
  type GroupComparison,
  type GroupDesign,
} from "./statistics/group-comparison.ts";
// Lines
export { type LackOfFit, lackOfFit } from "./statistics/lack-of-fit.ts";
export { type MannKendallTest, mannKendall } from "./statistics/mann-kendall.ts";
export type { MeanContrast } from "./statistics/mean-comparison.ts";
export { holm } from "./statistics/multiplicity.ts";
// Does a value belong with the others?
export {
  type EsdStep,
  type GeneralizedEsd,
  type GrubbsSide,
  type GrubbsTest,
  generalizedEsd,
  grubbsTest,
} from "./statistics/outlier-tests.ts";
export { type PooledSlope, pooledSlope, type SlopeGroup } from "./statistics/pooled-slope.ts";
export { type Prediction, predict } from "./statistics/prediction.ts";
// Uncertainty of a result from that of its inputs
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
export type { RatioSet } from "./statistics/ratio-interval.ts";
export {
  type Coefficient,
  type Regression,
  type RegressionPoint,
  regression,
} from "./statistics/regression.ts";
export { type Sample, sampleOf } from "./statistics/sample.ts";
export {
  type LineFit,
  lineAt,
  weightedLine,
} from "./statistics/straight-line.ts";
export { mean, median, sampleStandardDeviation } from "./statistics/summary.ts";
export { detectableEffect, tTestPower } from "./statistics/t-test-power.ts";
export { type RobustLine, theilSen } from "./statistics/theil-sen.ts";
export {
  type FittedPoint,
  fitThroughOrigin,
  type Point,
  type ThroughOriginFit,
  type VarianceLaw,
} from "./statistics/through-origin.ts";
export {
  howeToleranceFactor,
  type ToleranceAim,
  type ToleranceSample,
} from "./statistics/tolerance-interval.ts";
export { type TrendTest, trendTest } from "./statistics/trend.ts";
export {
  type VarianceEstimate,
  type VarianceRatioTest,
  varianceRatioTest,
} from "./statistics/variance-ratio.ts";
export { type MeansTest, welchOneWay } from "./statistics/welch.ts";
