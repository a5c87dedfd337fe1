import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { requirePositive, requireProbability } from "../numeric/domain.ts";
import type { ComparisonLayout, PairError, PairOfMeans } from "./comparison-layout.ts";
import { type EquivalenceTest, twoOneSidedTests } from "./equivalence.ts";
import { holm } from "./multiplicity.ts";
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
 * "equivalent": within the margin beyond doubt, also where a small difference was found as well; "different": a
 * difference was found; "undecided": neither, which is not the same as "the same"; "untested": no error is known.
 */
export type ComparisonVerdict = "different" | "equivalent" | "undecided" | "untested";

/** Whether two of several means differ or are equivalent, decided together with the others of the family. */
export interface JudgedPair extends Pair {
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
  /** Adjusted for the family. */
  readonly pValue: number | null;
  readonly differenceFound: boolean;
  /** Null without a margin. */
  readonly equivalence: (EquivalenceTest & { readonly adjustedPValue: number }) | null;
  readonly verdict: ComparisonVerdict;
}

/** A judged pair with its simultaneous intervals. */
export interface MeanContrast extends JudgedPair {
  /** Interval of the difference, on the scale of the values. */
  readonly lower: number | null;
  readonly upper: number | null;
  /** Ratios that the data cannot rule out. */
  readonly ratioSet: RatioSet | null;
}

/**
 * Which of several means differ, by how much, and which are equivalent within a margin? Contrasts by the layout's own
 * errors, simultaneous intervals and adjusted p-values, ratios by Fieller with the same critical values, equivalence by
 * two one-sided tests adjusted by Holm over the family.
 *
 * @param layout how the values stand to each other
 * @param pairs contrasts to make; pairs that were never tried together are left out
 * @throws NumericalError when level or margin is out of range, or the second mean of a pair is 0
 */
export function compareMeans(
  layout: ComparisonLayout,
  pairs: readonly Pair[],
  options: MeanComparisonOptions,
): readonly MeanContrast[] {
  return judgeMeans(layout, pairs, options).map((judged) => {
    const means = layout.pairOf(judged);
    return { ...judged, ...intervalsOf(judged, means, layout, options) };
  });
}

/** The verdicts of `compareMeans` without its intervals, whose critical values take most of the time. */
export function judgeMeans(
  layout: ComparisonLayout,
  pairs: readonly Pair[],
  options: MeanComparisonOptions,
): readonly JudgedPair[] {
  requireProbability("compareMeans", "level", options.level);
  if (options.margin !== null) requirePositive("compareMeans", "margin", options.margin);
  const tested = pairs.flatMap((pair) => {
    const means = layout.pairOf(pair);
    return means === null ? [] : [testedPair(pair, means, layout, options)];
  });
  return decideTogether(tested, layout, options);
}

type TestedPair = Omit<JudgedPair, "equivalence" | "differenceFound" | "verdict"> & {
  readonly equivalence: EquivalenceTest | null;
};

function testedPair(
  { first, second }: Pair,
  means: PairOfMeans,
  { rule }: ComparisonLayout,
  options: MeanComparisonOptions,
): TestedPair {
  const difference = means.first - means.second;
  const ratio = options.scale === "log" ? Math.exp(difference) : means.first / means.second;
  if (!Number.isFinite(ratio)) throw new NumericalError("compareMeans: a second mean is 0.");
  const known = { first, second, n: means.n, difference, ratio };
  if (means.error === null) {
    const unknown = { standardError: null, df: null, statistic: null };
    return { ...known, ...unknown, unadjustedPValue: null, pValue: null, equivalence: null };
  }
  const { standardError, df } = errorAt(means.error, 1);
  const statistic = difference / standardError;
  return {
    ...known,
    standardError,
    df,
    statistic,
    unadjustedPValue: studentTTwoSided(statistic, df),
    pValue: rule.adjustedPValue(statistic, df),
    equivalence: equivalenceOf(means, means.error, options),
  };
}

function decideTogether(
  tested: readonly TestedPair[],
  { adjustment }: ComparisonLayout,
  { level }: MeanComparisonOptions,
): readonly JudgedPair[] {
  const adjusted =
    adjustment === "holm"
      ? holmWithGaps(tested.map(({ unadjustedPValue }) => unadjustedPValue))
      : tested.map(({ pValue }) => pValue);
  const equivalence = holmWithGaps(tested.map((one) => one.equivalence?.pValue ?? null));
  return tested.map((one, i) => {
    const pValue = at(adjusted, i);
    const adjustedPValue = at(equivalence, i);
    const differenceFound = pValue !== null && pValue < 1 - level;
    return {
      ...one,
      pValue,
      differenceFound,
      equivalence:
        one.equivalence === null || adjustedPValue === null
          ? null
          : { ...one.equivalence, adjustedPValue },
      verdict: verdictOf(pValue, differenceFound, adjustedPValue, 1 - level),
    };
  });
}

function verdictOf(
  pValue: number | null,
  differenceFound: boolean,
  equivalencePValue: number | null,
  limit: number,
): ComparisonVerdict {
  if (pValue === null) return "untested";
  if (equivalencePValue !== null && equivalencePValue < limit) return "equivalent";
  return differenceFound ? "different" : "undecided";
}

/** Holm over the tests that were made; the others stay null. */
function holmWithGaps(pValues: readonly (number | null)[]): readonly (number | null)[] {
  const made = holm(pValues.filter((pValue) => pValue !== null));
  let next = 0;
  return pValues.map((pValue) => (pValue === null ? null : at(made, next++)));
}

function equivalenceOf(
  { first, second }: PairOfMeans,
  error: PairError,
  { level, scale, margin }: MeanComparisonOptions,
): EquivalenceTest | null {
  if (margin === null) return null;
  const limits = { lower: 1 / (1 + margin), upper: 1 + margin };
  if (scale === "log") {
    const { standardError, df } = errorAt(error, 1);
    const test = (limit: number) => ({
      statistic: (first - second - Math.log(limit)) / standardError,
      df,
    });
    return twoOneSidedTests(Math.exp(first - second), limits, test, level);
  }
  const test = (limit: number) => {
    const { standardError, df } = errorAt(error, limit);
    return { statistic: (first - limit * second) / standardError, df };
  };
  return twoOneSidedTests(first / second, limits, test, level);
}

function intervalsOf(
  { difference, standardError, df, ratio }: JudgedPair,
  means: PairOfMeans | null,
  { rule }: ComparisonLayout,
  { level, scale }: MeanComparisonOptions,
): Pick<MeanContrast, "lower" | "upper" | "ratioSet"> {
  const error = means?.error ?? null;
  if (means === null || error === null || standardError === null || df === null) {
    return { lower: null, upper: null, ratioSet: null };
  }
  const half = rule.criticalValue(level, df) * standardError;
  const [lower, upper] = [difference - half, difference + half];
  if (scale === "log") {
    const ratioSet = { shape: "interval", lower: Math.exp(lower), upper: Math.exp(upper) } as const;
    return { lower, upper, ratioSet };
  }
  const parts = {
    numerator: means.first,
    denominator: means.second,
    numeratorVariance: error.firstVariance,
    denominatorVariance: error.secondVariance,
    covariance: error.covariance,
  };
  const critical = rule.criticalValue(level, error.at(ratio).df);
  return { lower, upper, ratioSet: fiellerSet(parts, critical) };
}

/** Standard error and degrees of freedom of first − ratio·second. */
function errorAt(error: PairError, ratio: number) {
  const { variance, df } = error.at(ratio);
  return { standardError: Math.sqrt(variance), df };
}
