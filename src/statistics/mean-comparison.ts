import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile, studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { requirePositive, requireProbability } from "../numeric/domain.ts";
import type { ComparisonLayout, PairError, PairOfMeans } from "./comparison-layout.ts";
import { type EquivalenceTest, type Limits, twoOneSidedTests } from "./equivalence.ts";
import { fiellerSet, type RatioSet } from "./ratio-interval.ts";
import type { Pair } from "./simultaneous.ts";

export interface MeanComparisonOptions {
  /** Confidence of the family of intervals, 0 < level < 1; above 0.5 with a margin. */
  readonly level: number;
  /** "log": the values are logarithms, and means are ratios once transformed back. */
  readonly scale: "as measured" | "log";
  /**
   * Equivalent means a ratio between 1/(1 + margin) and 1 + margin, which reads the same from either side; above 0,
   * given before the data are seen. Null: no statement on equivalence.
   */
  readonly margin: number | null;
}

/**
 * "different": 0 is outside the simultaneous interval; "equivalent": the pair's own interval of level 2·level − 1 lies
 * within the margin; "different within the margin": both; "undecided": neither, which is not the same as "the same";
 * "untested": no error is known.
 */
export type ComparisonVerdict =
  | "different"
  | "equivalent"
  | "different within the margin"
  | "undecided"
  | "untested";

/** Two one-sided tests of a pair by itself; `equivalent` is read off the set. */
export interface EquivalenceOfMeans extends EquivalenceTest {
  /** Ratios at level 2·level − 1, not widened for the other pairs: equivalent where they all lie within the limits. */
  readonly set: RatioSet;
  readonly setLevel: number;
}

/** Two of several means, judged together with the others of the family. */
export interface MeanContrast extends Pair {
  readonly n: readonly [number, number];
  /** First minus second, on the scale of the values. */
  readonly difference: number;
  /** First over second. */
  readonly ratio: number;
  /** Null, as all that rests on it, where nothing scatters. */
  readonly standardError: number | null;
  readonly df: number | null;
  readonly statistic: number | null;
  readonly unadjustedPValue: number | null;
  /** Adjusted for the family in a single step, as the interval is: below 1 − level where that leaves out 0. */
  readonly pValue: number | null;
  /** Simultaneous interval of the difference, on the scale of the values. */
  readonly lower: number | null;
  readonly upper: number | null;
  /** Ratios that the data cannot rule out, simultaneous as well. */
  readonly ratioSet: RatioSet | null;
  /** Whether 0 is outside the interval. */
  readonly differenceFound: boolean;
  /** Null without a margin. */
  readonly equivalence: EquivalenceOfMeans | null;
  readonly verdict: ComparisonVerdict;
}

/**
 * Which of several means differ, by how much, and which are equivalent within a margin? Contrasts by the layout's own
 * errors with simultaneous intervals, ratios by Fieller with the same critical values. A difference is found where its
 * interval leaves out 0, equivalence where the ratios at level 2·level − 1 lie within the margin, each pair by itself.
 *
 * @param layout how the values stand to each other
 * @param pairs contrasts to make; pairs that were never tried together are left out
 * @throws NumericalError when level or margin is out of range, or the second mean of a pair is 0
 * Source Schuirmann 1987, Journal of Pharmacokinetics and Biopharmaceutics 15, 657–680 (equivalence)
 */
export function compareMeans(
  layout: ComparisonLayout,
  pairs: readonly Pair[],
  options: MeanComparisonOptions,
): readonly MeanContrast[] {
  requireProbability("compareMeans", "level", options.level);
  if (options.margin !== null) requirePositive("compareMeans", "margin", options.margin);
  const { adjustedPValue, criticalValue } = layout.rule;
  const family: Family = {
    adjustedPValue,
    criticalValue: oncePerDf((df) => criticalValue(options.level, df)),
  };
  return pairs.flatMap((pair) => {
    const means = layout.pairOf(pair);
    return means === null ? [] : [contrastOf(pair, means, family, options)];
  });
}

interface Family {
  readonly criticalValue: (df: number) => number;
  readonly adjustedPValue: (statistic: number, df: number) => number;
}

/** Critical values take most of the time of a comparison, and pairs with one error share one. */
function oncePerDf(critical: (df: number) => number): (df: number) => number {
  const found = new Map<number, number>();
  return (df) => {
    const value = found.get(df) ?? critical(df);
    found.set(df, value);
    return value;
  };
}

const unknown = {
  standardError: null,
  df: null,
  statistic: null,
  unadjustedPValue: null,
  pValue: null,
  lower: null,
  upper: null,
  ratioSet: null,
  differenceFound: false,
  equivalence: null,
  verdict: "untested",
} as const;

function contrastOf(
  { first, second }: Pair,
  means: PairOfMeans,
  { criticalValue, adjustedPValue }: Family,
  options: MeanComparisonOptions,
): MeanContrast {
  const difference = means.first - means.second;
  const ratio = options.scale === "log" ? Math.exp(difference) : means.first / means.second;
  if (!Number.isFinite(ratio)) throw new NumericalError("compareMeans: a second mean is 0.");
  const known = { first, second, n: means.n, difference, ratio };
  if (means.error === null) return { ...known, ...unknown };
  const { standardError, df } = errorAt(means.error, 1);
  const statistic = difference / standardError;
  const half = criticalValue(df) * standardError;
  const [lower, upper] = [difference - half, difference + half];
  const differenceFound = lower > 0 || upper < 0;
  const pair = { means, error: means.error, ratio, options };
  const set = ratiosOf(pair, criticalValue);
  // Degrees of freedom of a ratio are not those of the difference; where the two then part, the difference has decided.
  const ratioSet = holdsOne(set) === differenceFound ? ratiosOf(atOne(pair), criticalValue) : set;
  const equivalence = equivalenceOf(pair, differenceFound);
  return {
    ...known,
    standardError,
    df,
    statistic,
    unadjustedPValue: studentTTwoSided(statistic, df),
    pValue: adjustedPValue(statistic, df),
    lower,
    upper,
    ratioSet,
    differenceFound,
    equivalence,
    verdict: verdictOf(differenceFound, equivalence?.equivalent ?? false),
  };
}

function verdictOf(different: boolean, equivalent: boolean): ComparisonVerdict {
  if (equivalent) return different ? "different within the margin" : "equivalent";
  return different ? "different" : "undecided";
}

/** Two means with a known error. */
interface ErringPair {
  readonly means: PairOfMeans;
  readonly error: PairError;
  readonly ratio: number;
  readonly options: MeanComparisonOptions;
}

/** Ratios within so many standard errors; by Fieller's set where the values are no logarithms. */
function ratiosOf(
  { means: { first, second }, error, ratio, options: { scale } }: ErringPair,
  criticalValue: (df: number) => number,
): RatioSet {
  if (scale === "log") {
    const { standardError, df } = errorAt(error, 1);
    const half = criticalValue(df) * standardError;
    const difference = first - second;
    return {
      shape: "interval",
      lower: Math.exp(difference - half),
      upper: Math.exp(difference + half),
    };
  }
  const parts = {
    numerator: first,
    denominator: second,
    numeratorVariance: error.firstVariance,
    denominatorVariance: error.secondVariance,
    covariance: error.covariance,
  };
  return fiellerSet(parts, criticalValue(error.at(ratio).df));
}

/** The pair with the degrees of freedom of its difference, wherever its ratio lies. */
function atOne(pair: ErringPair): ErringPair {
  return { ...pair, ratio: 1 };
}

function holdsOne(set: RatioSet): boolean {
  switch (set.shape) {
    case "interval":
      return set.lower <= 1 && set.upper >= 1;
    case "two half-lines":
      return set.below >= 1 || set.above <= 1;
    case "whole line":
      return true;
  }
}

function equivalenceOf(pair: ErringPair, differenceFound: boolean): EquivalenceOfMeans | null {
  const { ratio, options } = pair;
  const { level, margin } = options;
  if (margin === null) return null;
  const limits = { lower: 1 / (1 + margin), upper: 1 + margin };
  const critical = (df: number) => studentTQuantile(level, df);
  const own = ratiosOf(pair, critical);
  const set = differenceFound && holdsOne(own) ? ratiosOf(atOne(pair), critical) : own;
  return {
    ...twoOneSidedTests(ratio, limits, testOf(pair), level),
    equivalent: liesWithin(set, limits),
    set,
    // 0.9 and not 0.8999999999999999, which people and tables would have to read.
    setLevel: Math.round(1e12 * (2 * level - 1)) / 1e12,
  };
}

/** t statistic of the hypothesis that the ratio is the given limit. */
function testOf({ means: { first, second }, error, options }: ErringPair) {
  return (limit: number) => {
    const { standardError, df } = errorAt(error, options.scale === "log" ? 1 : limit);
    const distance =
      options.scale === "log" ? first - second - Math.log(limit) : first - limit * second;
    return { statistic: distance / standardError, df };
  };
}

function liesWithin(set: RatioSet, { lower, upper }: Limits): boolean {
  return set.shape === "interval" && set.lower > lower && set.upper < upper;
}

/** Standard error and degrees of freedom of first − ratio·second. */
function errorAt(error: PairError, ratio: number) {
  const { variance, df } = error.at(ratio);
  return { standardError: Math.sqrt(variance), df };
}
