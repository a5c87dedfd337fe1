import { describe } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { inverseVarianceMean, normalisedError } from "../../src/statistics/agreement.ts";
import { oneWayAnova } from "../../src/statistics/anova.ts";
import { bartlettTest } from "../../src/statistics/bartlett.ts";
import { blockAnova } from "../../src/statistics/block-anova.ts";
import { brownForsythe } from "../../src/statistics/brown-forsythe.ts";
import {
  changePoint,
  changePointCritical,
  changePointPValue,
} from "../../src/statistics/change-point.ts";
import { changePointInterval } from "../../src/statistics/change-point-interval.ts";
import {
  coefficientOfVariation,
  vangelInterval,
} from "../../src/statistics/coefficient-of-variation.ts";
import { cusumChart, ewmaChart, individualsChart } from "../../src/statistics/control-charts.ts";
import { deletionSteps, firstLook } from "../../src/statistics/deleted-residuals.ts";
import { twoOneSidedTests } from "../../src/statistics/equivalence.ts";
import { equivalencePower, welchDfs } from "../../src/statistics/equivalence-power.ts";
import {
  shareAboveBound,
  shareBelowBound,
  shareBeyondBound,
} from "../../src/statistics/exceedance-bound.ts";
import {
  chanceAbove,
  chanceBelow,
  chanceBeyond,
  type ErrorLaw,
  errorDensity,
  expectedAbsolute,
  expectedSquare,
  lawAtScaleLimit,
} from "../../src/statistics/expected-loss.ts";
import { benjaminiHochberg } from "../../src/statistics/false-discovery.ts";
import { generalizedLimit, possibleLaws } from "../../src/statistics/generalized-interval.ts";
import { compareGroups } from "../../src/statistics/group-comparison.ts";
import { lastingShiftChance } from "../../src/statistics/lasting-shift-power.ts";
import { mandelHLimit, mandelKLimit } from "../../src/statistics/mandel.ts";
import { mannKendall } from "../../src/statistics/mann-kendall.ts";
import { monteCarloCheck } from "../../src/statistics/monte-carlo-check.ts";
import { holm } from "../../src/statistics/multiplicity.ts";
import { nestedTest } from "../../src/statistics/nested-test.ts";
import type { NormalSample } from "../../src/statistics/normal-sample.ts";
import { generalizedEsd, grubbsTest } from "../../src/statistics/outlier-tests.ts";
import { pooledSlope } from "../../src/statistics/pooled-slope.ts";
import { type JudgedPoint, lineOf } from "../../src/statistics/predicting-line.ts";
import { predict } from "../../src/statistics/prediction.ts";
import {
  type Input,
  propagateUncertainty,
  welchSatterthwaite,
} from "../../src/statistics/propagation.ts";
import { fitRandomEffects } from "../../src/statistics/random-effects.ts";
import { fiellerSet } from "../../src/statistics/ratio-interval.ts";
import { regression } from "../../src/statistics/regression.ts";
import { chanceAnyBeyond } from "../../src/statistics/repeated-exceedance.ts";
import { combinedDf, pooledVariance } from "../../src/statistics/sample.ts";
import {
  chiSquaredVariationInterval,
  compareScatter,
  logVariance as logScatter,
} from "../../src/statistics/scatter-comparison.ts";
import { shiftEvidence } from "../../src/statistics/shift-evidence.ts";
import { lastingShiftLimit } from "../../src/statistics/shift-evidence-limit.ts";
import { bonferroniRule, pairsWithReference } from "../../src/statistics/simultaneous.ts";
import { noPrior } from "../../src/statistics/spread-prior.ts";
import {
  assumedVote,
  logVariance,
  voteAmongOthers,
  voteOfOwnGroups,
} from "../../src/statistics/spread-votes.ts";
import { typicalSpread } from "../../src/statistics/spread-within.ts";
import { lineAt, weightedLine } from "../../src/statistics/straight-line.ts";
import { mean, median, sampleStandardDeviation } from "../../src/statistics/summary.ts";
import { detectableEffect, tTestPower } from "../../src/statistics/t-test-power.ts";
import { theilSen } from "../../src/statistics/theil-sen.ts";
import { fitThroughOrigin } from "../../src/statistics/through-origin.ts";
import { howeToleranceFactor } from "../../src/statistics/tolerance-interval.ts";
import {
  typicalDeviation,
  varianceHeterogeneity,
} from "../../src/statistics/variance-heterogeneity.ts";
import { varianceRatioTest } from "../../src/statistics/variance-ratio.ts";
import { welchOneWay } from "../../src/statistics/welch.ts";
import { lawsWithoutScatter } from "../../src/statistics/without-scatter.ts";
import { youdenCircle } from "../../src/statistics/youden.ts";
import { expectedExcess, expectedShortfall } from "../support/expected-sides.ts";
import {
  anyNumber,
  but,
  finite,
  notNegative,
  positive,
  positiveOrInfinite,
  probability,
  type Refusal,
  refuseOutOfDomain,
  refuseUnusable,
  wholeFrom,
} from "../support/refusals.ts";

const series = [5, 7, 6, 9, 11, 10];
const law: ErrorLaw = { location: 0.2, scale: 1.5, df: 6 };
const sample: NormalSample = { mean: 1, standardDeviation: 2, n: 6, df: 5 };
const square = { variance: 2, df: 5 };
const groups = [
  [5, 7, 6],
  [9, 11, 8],
];
const fields = <T extends object>(whole: T) => ({
  with: (name: keyof T) => (value: number) => ({ ...whole, [name]: value }),
});

/** Every routine that is given a law refuses each of its three numbers. */
const ofLaws: readonly Refusal[] = (
  [
    ["chanceBeyond", (one) => chanceBeyond(one, 1)],
    ["chanceBelow", (one) => chanceBelow(one, 1)],
    ["chanceAbove", (one) => chanceAbove(one, 1)],
    ["expectedSides", expectedExcess],
    ["expectedSquare", expectedSquare],
    ["errorDensity", (one) => errorDensity(one, 1)],
    ["lawAtScaleLimit", (one) => lawAtScaleLimit(one, 0.9)],
  ] as readonly (readonly [string, (one: ErrorLaw) => unknown])[]
).flatMap(([routine, call]): Refusal[] => [
  [routine, "location", finite, (location) => call({ ...law, location })],
  [routine, "scale", positive, (scale) => call({ ...law, scale })],
  [routine, "df", but(positiveOrInfinite, [0.9, Infinity]), (df) => call({ ...law, df })],
]);

const ofSamples: readonly Refusal[] = (
  [
    ["shareAboveBound", (one) => shareAboveBound(one, 3, 0.9)],
    ["shareAboveBound", (one) => shareBeyondBound(one, 3, 0.9)],
    ["possibleLaws", (one) => possibleLaws(one)],
    ["lawsWithoutScatter", (one) => lawsWithoutScatter(one, { standardDeviation: 1, df: 4 })],
  ] as readonly (readonly [string, (one: NormalSample) => unknown])[]
).flatMap(([routine, call]): Refusal[] => [
  [routine, "mean", finite, (mean) => call({ ...sample, mean })],
  [
    routine,
    "standardDeviation",
    positive,
    (standardDeviation) => call({ ...sample, standardDeviation }),
  ],
  [routine, "n", wholeFrom(1), (n) => call({ ...sample, n })],
  [routine, "df", but(positive, [1, 40]), (df) => call({ ...sample, df })],
]);

describe("one sample, one law", () => {
  const tolerance = { n: 10, df: 9 };
  const aim = { content: 0.9, confidence: 0.95 };
  const scatter = { standardDeviation: 1, df: 4 };
  refuseOutOfDomain([
    ...ofLaws,
    ["chanceBeyond", "limit", finite, (limit) => chanceBeyond(law, limit)],
    ["chanceBelow", "limit", finite, (limit) => chanceBelow(law, limit)],
    ["chanceAbove", "limit", finite, (limit) => chanceAbove(law, limit)],
    ["expectedSides", "df", positiveOrInfinite, (df) => expectedShortfall({ ...law, df })],
    ["expectedSides", "df", positiveOrInfinite, (df) => expectedAbsolute({ ...law, df })],
    ...ofSamples,
    ["shareAboveBound", "limit", finite, (limit) => shareAboveBound(sample, limit, 0.9)],
    ["shareAboveBound", "confidence", probability, (p) => shareAboveBound(sample, 3, p)],
    ["shareAboveBound", "confidence", probability, (p) => shareBelowBound(sample, 3, p)],
    ["generalizedLimit", "confidence", probability, (p) => generalizedLimit(series, p)],
    [
      "lawsWithoutScatter",
      "scatter",
      positive,
      (sd) => lawsWithoutScatter(sample, { ...scatter, standardDeviation: sd }),
    ],
    [
      "lawsWithoutScatter",
      "df of scatter",
      but(positive, [1, 40]),
      (df) => lawsWithoutScatter(sample, { ...scatter, df }),
    ],
    ["mean", "value 2", finite, (value) => mean([1, value])],
    ["median", "value 2", finite, (value) => median([1, value])],
    [
      "sampleStandardDeviation",
      "value 3",
      finite,
      (value) => sampleStandardDeviation([1, 2, value]),
    ],
    ["coefficientOfVariation", "level", probability, (p) => coefficientOfVariation(series, p)],
    ["vangelInterval", "ratio", positive, (ratio) => vangelInterval(ratio, 6, 0.95)],
    ["vangelInterval", "n", wholeFrom(2), (n) => vangelInterval(0.1, n, 0.95)],
    ["vangelInterval", "level", probability, (p) => vangelInterval(0.1, 6, p)],
    ["howeToleranceFactor", "n", wholeFrom(1), (n) => howeToleranceFactor({ n, df: 9 }, aim)],
    [
      "howeToleranceFactor",
      "df",
      but(positive, [0.5, 3]),
      (df) => howeToleranceFactor({ n: 1, df }, aim),
    ],
    [
      "howeToleranceFactor",
      "content",
      probability,
      (content) => howeToleranceFactor(tolerance, { ...aim, content }),
    ],
    [
      "howeToleranceFactor",
      "confidence",
      probability,
      (confidence) => howeToleranceFactor(tolerance, { ...aim, confidence }),
    ],
  ]);
  refuseUnusable([
    ["mean: 0 values; at least 1 is needed", () => mean([])],
    ["median: 0 values; at least 1 is needed", () => median([])],
    [
      "sampleStandardDeviation: 1 values; at least 2 are needed",
      () => sampleStandardDeviation([1]),
    ],
    ["coefficientOfVariation: the mean is 0", () => coefficientOfVariation([-1, 1], 0.9)],
    ["coefficientOfVariation: the mean is -2", () => coefficientOfVariation([-3, -1], 0.9)],
    ["Got 2 values; at least 3 are needed", () => grubbsTest([1, 2], "largest", 0.9)],
    ["values[1] is NaN", () => grubbsTest([1, Number.NaN, 3], "largest", 0.9)],
    ["Got 3 values; at least 4 are needed", () => generalizedEsd([1, 2, 4], 2, 0.9)],
    ["most is 0; it must be a whole number", () => generalizedEsd(series, 0, 0.9)],
    ["most is 1.5; it must be a whole number", () => generalizedEsd(series, 1.5, 0.9)],
    ["values[0] is Infinity", () => generalizedEsd([Infinity, 1, 2, 3], 1, 0.9)],
  ]);
});

describe("several samples", () => {
  const design = { level: 0.95, margin: 0.1, scale: "as measured", spread: "common" } as const;
  const parts = {
    numerator: 5,
    denominator: 4,
    numeratorVariance: 0.1,
    denominatorVariance: 0.2,
    covariance: 0.05,
  };
  const part = fields(parts).with;
  const limits = { lower: 0.9, upper: 1.1 };
  const test = () => ({ statistic: 2, df: 5 });
  const planned = { standardError: 0.05, df: 8 };
  refuseOutOfDomain([
    [
      "oneWayAnova",
      "group 2, value 1",
      finite,
      (x) =>
        oneWayAnova([
          [1, 2],
          [x, 4],
        ]),
    ],
    [
      "blockAnova",
      "block 2, treatment 1",
      finite,
      (x) =>
        blockAnova([
          [1, 2],
          [x, 4],
        ]),
    ],
    ["bonferroniRule", "contrasts", wholeFrom(1), (count) => bonferroniRule(count)],
    [
      "compareMeans",
      "level",
      probability,
      (level) => compareGroups(groups, { ...design, reference: null, level, margin: null }),
    ],
    [
      "compareMeans",
      "margin",
      positive,
      (margin) => compareGroups(groups, { ...design, reference: null, margin }),
    ],
    [
      "pairsWithReference",
      "reference",
      { wrong: [Number.NaN, -1, 0.5, 2, Infinity], right: [0, 1] },
      (reference) => pairsWithReference(2, reference),
    ],
    ...(["numerator", "denominator", "covariance"] as const).map(
      (name): Refusal => [
        "fiellerSet",
        name,
        but(finite, [0.01, 2]),
        (value) => fiellerSet(part(name)(value), 2),
      ],
    ),
    ["fiellerSet", "criticalValue", but(finite, [0.1, 2]), (value) => fiellerSet(parts, value)],
    [
      "fiellerSet",
      "numeratorVariance",
      but(finite, [0, 1]),
      (value) => fiellerSet(part("numeratorVariance")(value), 2),
    ],
    [
      "fiellerSet",
      "denominatorVariance",
      but(finite, [0, 1]),
      (value) => fiellerSet(part("denominatorVariance")(value), 2),
    ],
    ["twoOneSidedTests", "estimate", finite, (one) => twoOneSidedTests(one, limits, test)],
    [
      "twoOneSidedTests",
      "lower limit",
      but(finite, [0, 1.09]),
      (lower) => twoOneSidedTests(1, { lower, upper: 1.1 }, test),
    ],
    [
      "twoOneSidedTests",
      "upper limit",
      but(finite, [0.91, 2]),
      (upper) => twoOneSidedTests(1, { lower: 0.9, upper }, test),
    ],
    [
      "twoOneSidedTests",
      "level",
      { wrong: [Number.NaN, 0.5, 1, 0.1], right: [0.51, 0.99] },
      (level) => twoOneSidedTests(1, limits, test, level),
    ],
    [
      "equivalencePower",
      "trueDifference",
      finite,
      (difference) => equivalencePower(difference, planned, limits, 2),
    ],
    [
      "equivalencePower",
      "standardError",
      positive,
      (standardError) => equivalencePower(1, { ...planned, standardError }, limits, 2),
    ],
    [
      "equivalencePower",
      "criticalValue",
      positive,
      (critical) => equivalencePower(1, planned, limits, critical),
    ],
    ["welchDfs", "n", wholeFrom(2), (n) => welchDfs(n)],
    ["tTestPower", "effect", finite, (effect) => tTestPower(effect, 9, 2)],
    ["tTestPower", "criticalValue", positive, (critical) => tTestPower(1, 9, critical)],
    [
      "detectableEffect",
      "power",
      but(probability, [0.6, 0.95]),
      (p) => detectableEffect(9, p, 0.9),
    ],
    [
      "benjaminiHochberg",
      "a p-value",
      { wrong: [Number.NaN, -0.1, 1.1], right: [0, 1] },
      (p) => benjaminiHochberg([0.2, p]),
    ],
    ["holm", "a p-value", { wrong: [Number.NaN, -0.1, 1.1], right: [0, 1] }, (p) => holm([0.2, p])],
  ]);
  refuseUnusable([
    ["oneWayAnova: 1 groups; at least 2 are needed", () => oneWayAnova([[1, 2]])],
    ["oneWayAnova: group 2 is empty", () => oneWayAnova([[1, 2], []])],
    ["blockAnova: 1 blocks of 2 treatments; at least 2 of each", () => blockAnova([[1, 2]])],
    ["blockAnova: 2 blocks of 1 treatments; at least 2 of each", () => blockAnova([[1], [2]])],
    ["blockAnova: 0 blocks of 0 treatments; at least 2 of each", () => blockAnova([])],
    [
      "blockAnova: block 2 has 3 values; it needs 2",
      () =>
        blockAnova([
          [1, 2],
          [1, 2, 3],
        ]),
    ],
    ["blockAnova: block 2 has 1 values; it needs 2", () => blockAnova([[1, 2], [1]])],
    [
      "brownForsythe: group 2 has 2 values; at least 3",
      () =>
        brownForsythe([
          [1, 2, 4],
          [1, 2],
        ]),
    ],
    [
      "welchOneWay: 1 groups; at least 2 are needed",
      () => welchOneWay([{ n: 3, mean: 1, variance: 1 }]),
    ],
    [
      "welchOneWay: a group does not scatter",
      () =>
        welchOneWay([
          { n: 3, mean: 1, variance: 1 },
          { n: 3, mean: 1, variance: 0 },
        ]),
    ],
    [
      "pooledVariance: no group has 2 values",
      () => pooledVariance([{ n: 1, mean: 1, variance: 0 }]),
    ],
    ["combinedDf: all variances are 0", () => combinedDf([{ variance: 0, df: 3 }])],
    [
      "fiellerSet: variances must be at least 0 and the critical value above 0",
      () => fiellerSet({ ...parts, numeratorVariance: -0.1 }, 2),
    ],
    [
      "fiellerSet: variances must be at least 0 and the critical value above 0",
      () => fiellerSet({ ...parts, denominatorVariance: -0.1 }, 2),
    ],
    ["the critical value above 0", () => fiellerSet(parts, 0)],
    [
      "fiellerSet: the denominator is 0 and known exactly",
      () => fiellerSet({ ...parts, denominator: 0, denominatorVariance: 0 }, 2),
    ],
    [
      "compareMeans: a second mean is 0",
      () =>
        compareGroups(
          [
            [5, 7],
            [-1, 1],
          ],
          { ...design, reference: null },
        ),
    ],
    [
      "the lower limit 1.1 must be below the upper 1.1",
      () => twoOneSidedTests(1, { lower: 1.1, upper: 1.1 }, test),
    ],
    [
      "nestedTest: the larger model adds no terms",
      () => nestedTest({ residualSumOfSquares: 2, df: 4 }, { residualSumOfSquares: 1, df: 4 }, [1]),
    ],
  ]);
});

describe("variances", () => {
  const scatters = [
    { standardDeviation: 2, df: 5 },
    { standardDeviation: 3, df: 5 },
  ];
  const three = [square, { variance: 3, df: 4 }, { variance: 1, df: 6 }];
  refuseOutOfDomain([
    [
      "varianceRatioTest",
      "variance",
      positive,
      (variance) => varianceRatioTest({ variance, df: 4 }, square, 0.9),
    ],
    [
      "varianceRatioTest",
      "variance",
      positive,
      (variance) => varianceRatioTest(square, { variance, df: 4 }, 0.9),
    ],
    [
      "varianceRatioTest",
      "df",
      but(positive, [0.5]),
      (df) => varianceRatioTest({ variance: 2, df }, square, 0.9),
    ],
    [
      "varianceRatioTest",
      "df",
      but(positive, [0.5]),
      (df) => varianceRatioTest(square, { variance: 2, df }, 0.9),
    ],
    ["varianceRatioTest", "level", probability, (p) => varianceRatioTest(square, square, p)],
    [
      "logVariance",
      "standardDeviation",
      positive,
      (sd) => logScatter({ standardDeviation: sd, df: 4 }),
    ],
    ["logVariance", "df", positive, (df) => logScatter({ standardDeviation: 1, df })],
    [
      "compareScatter",
      "level",
      probability,
      (p) => compareScatter(scatters, [...scatters].reverse(), p),
    ],
    [
      "chiSquaredVariationInterval",
      "cv",
      { wrong: [], right: [0, 0.1] },
      (cv) => chiSquaredVariationInterval(cv, 5),
    ],
    [
      "chiSquaredVariationInterval",
      "df",
      but(positive, [1]),
      (df) => chiSquaredVariationInterval(0.1, df),
    ],
    [
      "chiSquaredVariationInterval",
      "level",
      probability,
      (p) => chiSquaredVariationInterval(0.1, 5, p),
    ],
    ["logVariance", "variance", positive, (variance) => logVariance({ variance, df: 4 })],
    ["logVariance", "df", positive, (df) => logVariance({ variance: 1, df })],
    ["voteAmongOthers", "heterogeneity", notNegative, (h) => voteAmongOthers(square, h)],
    ["voteOfOwnGroups", "groups", positive, (count) => voteOfOwnGroups(square, count, 0.2)],
    ["assumedVote", "typicalVariance", positive, (variance) => assumedVote(variance, 0.2)],
    ["typicalSpread", "standardDeviation", positive, (sd) => typicalSpread(sd, 4)],
    ["typicalSpread", "df", positive, (df) => typicalSpread(1, df)],
    ["varianceHeterogeneity", "level", probability, (p) => varianceHeterogeneity([three], p)],
    ["typicalDeviation", "heterogeneity", notNegative, (h) => typicalDeviation(three, h, 0.9)],
    ["typicalDeviation", "level", probability, (p) => typicalDeviation(three, 0.3, p)],
    ["mandelHLimit", "p", wholeFrom(3), (p) => mandelHLimit(p, 0.05)],
    ["mandelHLimit", "alpha", probability, (alpha) => mandelHLimit(5, alpha)],
    ["mandelKLimit", "df", wholeFrom(1), (df) => mandelKLimit(df, 8, 0.05)],
    ["mandelKLimit", "dfOfOthers", wholeFrom(1), (df) => mandelKLimit(2, df, 0.05)],
    ["mandelKLimit", "alpha", probability, (alpha) => mandelKLimit(2, 8, alpha)],
    ["youdenCircle", "level", probability, (p) => youdenCircle([{ x: 1, y: 2 }], p)],
  ]);
  refuseUnusable([
    ["chiSquaredVariationInterval: cv is -0.1", () => chiSquaredVariationInterval(-0.1, 5)],
    ["chiSquaredVariationInterval: cv is Infinity", () => chiSquaredVariationInterval(Infinity, 5)],
    ["chiSquaredVariationInterval: cv is NaN", () => chiSquaredVariationInterval(Number.NaN, 5)],
    ["A group's sum of squares is -1", () => bartlettTest([{ sumOfSquares: -1, df: 2 }])],
    ["A group's sum of squares is NaN", () => bartlettTest([{ sumOfSquares: Number.NaN, df: 2 }])],
    ["sum of squares is Infinity", () => bartlettTest([{ sumOfSquares: Infinity, df: 2 }])],
    [
      "Heterogeneity needs a group of at least 2 variances; got none",
      () => varianceHeterogeneity([[square], [square]], 0.9),
    ],
    ["A typical deviation needs 2 variances; got 1", () => typicalDeviation([square], 0.2, 0.9)],
  ]);
});

describe("lines and regressions", () => {
  const x = [1, 2, 3, 5];
  const y = [2, 3, 5, 4];
  const rows = x.map((one) => [one]);
  const fit = regression(["turns"], rows, y);
  const line = weightedLine(x, y);
  const points: readonly JudgedPoint[] = x.map((one, i) => ({
    x: one,
    y: y[i] ?? 0,
    knownVariance: 0,
  }));
  const withPoint = (changed: Partial<JudgedPoint>) => [
    ...points,
    { x: 4, y: 5, knownVariance: 0.1, ...changed },
  ];
  const rule = { level: 0.95 };
  refuseOutOfDomain([
    ["weightedLine", "x 2", finite, (value) => weightedLine([1, value, 7], [1, 2, 4])],
    ["weightedLine", "y 2", finite, (value) => weightedLine([1, 2, 7], [1, value, 4])],
    ["weightedLine", "weight 3", positive, (w) => weightedLine([1, 2, 7], [1, 2, 4], [1, 1, w])],
    ["lineAt", "x", finite, (value) => lineAt(line, value)],
    ["regression", "level", probability, (level) => regression(["turns"], rows, y, level)],
    ["predict", "turns", finite, (value) => predict(fit, [value])],
  ]);
  refuseUnusable([
    ["weightedLine: a line needs at least 2 points; there are 1", () => weightedLine([1], [2])],
    ["weightedLine: 2 x, 3 y and 2 weights", () => weightedLine([1, 2], [1, 2, 3])],
    ["weightedLine: 2 x, 2 y and 1 weights", () => weightedLine([1, 2], [1, 2], [1])],
    ["weightedLine: all x are equal", () => weightedLine([2, 2], [1, 3])],
    ["regression: there are no variables", () => regression([], [], [])],
    ["regression: 4 rows and 3 y", () => regression(["turns"], rows, [1, 2, 3])],
    [
      "regression: row 2 has 2 values for 1 variables",
      () => regression(["turns"], [[1], [2, 3], [4], [5]], y),
    ],
    ["predict: 2 values for 1 variables", () => predict(fit, [1, 2])],
    ["predict: 0 values for 1 variables", () => predict(fit, [])],
    ["theilSen: 2 x and 1 y", () => theilSen([1, 2], [1])],
    ["theilSen: a slope needs two points with different x", () => theilSen([2, 2], [1, 3])],
    ["theilSen: a slope needs two points with different x", () => theilSen([], [])],
    ["A line through the origin needs at least 1 point; got none", () => fitThroughOrigin([])],
    [
      "points[1].x is 0",
      () =>
        fitThroughOrigin([
          { x: 1, y: 1 },
          { x: 0, y: 1 },
        ]),
    ],
    ["points[0].x is Infinity", () => fitThroughOrigin([{ x: Infinity, y: 1 }])],
    ["points[0].x is -1", () => fitThroughOrigin([{ x: -1, y: 1 }])],
    ["points[0].y is Infinity", () => fitThroughOrigin([{ x: 1, y: Infinity }])],
    [
      "pooledSlope: x, y and weights of a group must be as many",
      () => pooledSlope([{ x, y: [1], weights: [1, 1, 1, 1] }]),
    ],
    [
      "pooledSlope: x, y and weights of a group must be as many",
      () => pooledSlope([{ x, y, weights: [1] }]),
    ],
    ["A line needs at least 1 point; got none", () => lineOf([], null)],
    ["points[4].x is 0", () => lineOf(withPoint({ x: 0 }), null)],
    ["points[4].x is Infinity", () => lineOf(withPoint({ x: Infinity }), null)],
    ["points[4].y is NaN", () => lineOf(withPoint({ y: Number.NaN }), null)],
    ["points[4].knownVariance is -1", () => lineOf(withPoint({ knownVariance: -1 }), null)],
    ["knownVariance is Infinity", () => lineOf(withPoint({ knownVariance: Infinity }), null)],
    ["Got 1 points; at least 2 are needed", () => deletionSteps(points.slice(1, 2), null, 1)],
    ["points[4].x is 0", () => deletionSteps(withPoint({ x: 0 }), null, 1)],
    ["Got 1 points; at least 2 are needed", () => firstLook(points.slice(1, 2), null, 1, rule)],
    ["points[4].y is NaN", () => firstLook(withPoint({ y: Number.NaN }), null, 1, rule)],
  ]);
});

describe("series", () => {
  const found = changePoint(series);
  const ewma = { target: 7, standardDeviation: 1, weight: 0.2, width: 3 };
  const cusum = { target: 7, allowance: 0.5, decision: 4 };
  const shift = { before: 4, after: 2, shift: 2 };
  const [ofEwma, ofCusum, ofShift] = [fields(ewma).with, fields(cusum).with, fields(shift).with];
  refuseOutOfDomain([
    ["changePoint", "value 3", finite, (value) => changePoint([1, 2, value, 9, 8])],
    ["changePointPValue", "statistic", anyNumber, (t) => changePointPValue(t, 8)],
    [
      "changePointPValue",
      "n",
      { wrong: [3, Number.NaN], right: [4, 5] },
      (n) => changePointPValue(2, n),
    ],
    ["changePointCritical", "level", probability, (level) => changePointCritical(level, 8)],
    ...(found === null
      ? []
      : [
          [
            "changePointInterval",
            "level",
            probability,
            (level: number) => changePointInterval(series, found, level),
          ] as const,
        ]),
    ["individualsChart", "sigmas", positive, (sigmas) => individualsChart(series, sigmas)],
    ["ewmaChart", "target", finite, (value) => ewmaChart(series, ofEwma("target")(value))],
    [
      "ewmaChart",
      "standardDeviation",
      positive,
      (value) => ewmaChart(series, ofEwma("standardDeviation")(value)),
    ],
    ["ewmaChart", "width", positive, (value) => ewmaChart(series, ofEwma("width")(value))],
    [
      "ewmaChart",
      "weight",
      { wrong: [Number.NaN, 0, -1, 1.01], right: [0.01, 1] },
      (value) => ewmaChart(series, ofEwma("weight")(value)),
    ],
    ["ewmaChart", "value 2", finite, (value) => ewmaChart([1, value], ewma)],
    ["cusumChart", "target", finite, (value) => cusumChart(series, ofCusum("target")(value))],
    ["cusumChart", "decision", positive, (value) => cusumChart(series, ofCusum("decision")(value))],
    [
      "cusumChart",
      "allowance",
      notNegative,
      (value) => cusumChart(series, ofCusum("allowance")(value)),
    ],
    ["cusumChart", "value 2", finite, (value) => cusumChart([1, value], cusum)],
    ["mannKendall", "value 2", finite, (value) => mannKendall([1, value, 5])],
    ["shiftEvidence", "value 2", finite, (value) => shiftEvidence([1, value, 7], noPrior)],
    ["lastingShiftLimit", "n", wholeFrom(4), (n) => lastingShiftLimit(n, 2)],
    ["lastingShiftLimit", "nu0", notNegative, (nu0) => lastingShiftLimit(6, nu0)],
    [
      "lastingShiftChance",
      "before",
      wholeFrom(0),
      (value) => lastingShiftChance(ofShift("before")(value)),
    ],
    [
      "lastingShiftChance",
      "after",
      wholeFrom(1),
      (value) => lastingShiftChance(ofShift("after")(value)),
    ],
    [
      "lastingShiftChance",
      "shift",
      positive,
      (value) => lastingShiftChance(ofShift("shift")(value)),
    ],
  ]);
  refuseUnusable([
    ["changePoint: 3 values; at least 4 are needed, 2 on each side", () => changePoint([1, 2, 3])],
    ["individualsChart: 1 values; at least 2 are needed", () => individualsChart([1])],
    ["mannKendall: 2 values; at least 3 are needed", () => mannKendall([1, 2])],
  ]);
});

describe("variance between groups, and uncertainty", () => {
  const input: Input = { name: "mass", value: 5, standardUncertainty: 0.1, law: "t", df: 4 };
  const budget = (changed: Partial<Input>) =>
    propagateUncertainty(([a = 0]) => a, [{ ...input, ...changed }], 0.95);
  const group = { estimate: 1, information: 3, sumOfSquares: 0.4, df: 2 };
  const repeated = { location: 0, spread: 1, df: 8, sharedVariance: 0.2 };
  const ofRepeated = fields(repeated).with;
  refuseOutOfDomain([
    [
      "normalisedError",
      "value",
      finite,
      (value) => normalisedError({ value, expanded: 1 }, { value: 2, expanded: 1 }),
    ],
    [
      "normalisedError",
      "value",
      finite,
      (value) => normalisedError({ value: 2, expanded: 1 }, { value, expanded: 1 }),
    ],
    [
      "normalisedError",
      "an expanded uncertainty",
      notNegative,
      (expanded) => normalisedError({ value: 1, expanded }, { value: 2, expanded: 1 }),
    ],
    [
      "normalisedError",
      "an expanded uncertainty",
      notNegative,
      (expanded) => normalisedError({ value: 1, expanded: 1 }, { value: 2, expanded }),
    ],
    [
      "inverseVarianceMean",
      "value",
      finite,
      (value) => inverseVarianceMean([{ value, standardUncertainty: 1 }]),
    ],
    [
      "inverseVarianceMean",
      "standardUncertainty",
      positive,
      (standardUncertainty) => inverseVarianceMean([{ value: 1, standardUncertainty }]),
    ],
    [
      "welchSatterthwaite",
      "contribution",
      finite,
      (contribution) => welchSatterthwaite([{ contribution, df: 4 }]),
    ],
    [
      "welchSatterthwaite",
      "df",
      positiveOrInfinite,
      (df) => welchSatterthwaite([{ contribution: 1, df }]),
    ],
    [
      "chanceAnyBeyond",
      "location",
      finite,
      (value) => chanceAnyBeyond(ofRepeated("location")(value), 2),
    ],
    [
      "chanceAnyBeyond",
      "spread",
      positive,
      (value) => chanceAnyBeyond(ofRepeated("spread")(value), 2),
    ],
    [
      "chanceAnyBeyond",
      "df",
      positiveOrInfinite,
      (value) => chanceAnyBeyond(ofRepeated("df")(value), 2),
    ],
    [
      "chanceAnyBeyond",
      "sharedVariance",
      positive,
      (value) => chanceAnyBeyond(ofRepeated("sharedVariance")(value), 2),
    ],
    ["chanceAnyBeyond", "limit", positive, (limit) => chanceAnyBeyond(repeated, limit)],
    ["chanceAnyBeyond", "count", wholeFrom(1), (count) => chanceAnyBeyond(repeated, 2)(count)],
  ]);
  refuseUnusable([
    [
      "normalisedError: both uncertainties are 0",
      () => normalisedError({ value: 1, expanded: 0 }, { value: 2, expanded: 0 }),
    ],
    ["inverseVarianceMean: there are no values", () => inverseVarianceMean([])],
    ["at least 1 input", () => propagateUncertainty(() => 1, [], 0.95)],
    ["mass: the standard uncertainty is -0.1", () => budget({ standardUncertainty: -0.1 })],
    ["the standard uncertainty is Infinity", () => budget({ standardUncertainty: Infinity })],
    ["mass: df is 0", () => budget({ df: 0 })],
    ["mass: df is Infinity", () => budget({ df: Infinity })],
    ["mass: df is NaN", () => budget({ df: Number.NaN })],
    ["The result is Infinity", () => propagateUncertainty(() => Infinity, [input], 0.95)],
    ["at least 1 input", () => monteCarloCheck(() => 1, [], 0.95, 100, randomStream(1), 1)],
    ["Random effects need at least 2 groups; got 1", () => fitRandomEffects([group])],
    [
      "Every group needs information above zero",
      () => fitRandomEffects([group, { ...group, information: 0 }]),
    ],
    [
      "Every group needs information above zero",
      () => fitRandomEffects([group, { ...group, information: Infinity }]),
    ],
  ]);
});
