import { NumericalError } from "../errors/errors.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { requirePositive, requireProbability } from "../numeric/domain.ts";
import type { ComparisonLayout, PairError, PairOfMeans } from "./comparison-layout.ts";
import { type EquivalenceTest, twoOneSidedTests } from "./equivalence.ts";
import { holm } from "./multiplicity.ts";
import { fiellerSet, type RatioSet } from "./ratio-interval.ts";
import type { Pair } from "./simultaneous.ts";

export interface MeanComparisonOptions {
  /** Confidence of the family of intervals, 0.5 < level < 1. */
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

/** Two of several means compared, together with the others of the family. Null: not known, or not on this scale. */
export interface MeanContrast extends Pair {
  readonly n: readonly [number, number];
  /** First minus second, on the scale of the values. */
  readonly difference: number;
  readonly standardError: number | null;
  readonly df: number | null;
  /** Simultaneous interval of the difference, on the scale of the values. */
  readonly lower: number | null;
  readonly upper: number | null;
  readonly statistic: number | null;
  readonly unadjustedPValue: number | null;
  /** Adjusted for the family. */
  readonly pValue: number | null;
  /** First over second. */
  readonly ratio: number;
  /** Simultaneous set of ratios that the data cannot rule out. */
  readonly ratioSet: RatioSet | null;
  readonly differenceFound: boolean;
  /** Null without a margin. */
  readonly equivalence: (EquivalenceTest & { readonly adjustedPValue: number }) | null;
  readonly verdict: ComparisonVerdict;
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
  requireProbability("compareMeans", "level", options.level);
  if (options.margin !== null) requirePositive("compareMeans", "margin", options.margin);
  const tried = pairs.flatMap((pair) => {
    const means = layout.pairOf(pair);
    return means === null ? [] : [{ pair, means }];
  });
  const first = tried.map(({ pair, means }) => ({
    ...pair,
    n: means.n,
    ...differenceOf(means, layout, options.level),
    ...ratioOf(means, layout, options),
    equivalence: equivalenceOf(means, options),
  }));
  return decideTogether(first, layout, options);
}

type Undecided = Omit<MeanContrast, "equivalence" | "differenceFound" | "verdict"> & {
  readonly equivalence: EquivalenceTest | null;
};

function decideTogether(
  contrasts: readonly Undecided[],
  { adjustment }: ComparisonLayout,
  { level }: MeanComparisonOptions,
): readonly MeanContrast[] {
  const adjusted =
    adjustment === "holm"
      ? holmWithGaps(contrasts.map(({ unadjustedPValue }) => unadjustedPValue))
      : contrasts.map(({ pValue }) => pValue);
  const equivalence = holmWithGaps(contrasts.map((one) => one.equivalence?.pValue ?? null));
  return contrasts.map((one, i) => {
    const pValue = adjusted[i] ?? null;
    const adjustedPValue = equivalence[i] ?? null;
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
  return pValues.map((pValue) => (pValue === null ? null : (made[next++] ?? null)));
}

function differenceOf(
  { first, second, error }: PairOfMeans,
  layout: ComparisonLayout,
  level: number,
) {
  const difference = first - second;
  if (error === null) {
    const unknown = { standardError: null, df: null, lower: null, upper: null };
    return { difference, ...unknown, statistic: null, unadjustedPValue: null, pValue: null };
  }
  const { standardError, df } = errorAt(error, 1);
  const half = layout.rule.criticalValue(level, df) * standardError;
  const statistic = difference / standardError;
  return {
    difference,
    standardError,
    df,
    lower: difference - half,
    upper: difference + half,
    statistic,
    unadjustedPValue: studentTTwoSided(statistic, df),
    pValue: layout.rule.adjustedPValue(statistic, df),
  };
}

function ratioOf(
  { first, second, error }: PairOfMeans,
  { rule }: ComparisonLayout,
  { level, scale }: MeanComparisonOptions,
): Pick<MeanContrast, "ratio" | "ratioSet"> {
  const ratio = scale === "log" ? Math.exp(first - second) : first / second;
  if (!Number.isFinite(ratio)) throw new NumericalError("compareMeans: a second mean is 0.");
  if (error === null) return { ratio, ratioSet: null };
  if (scale === "log") {
    const { standardError, df } = errorAt(error, 1);
    const half = rule.criticalValue(level, df) * standardError;
    const [lower, upper] = [Math.exp(first - second - half), Math.exp(first - second + half)];
    return { ratio, ratioSet: { shape: "interval", lower, upper } };
  }
  const parts = {
    numerator: first,
    denominator: second,
    numeratorVariance: error.firstVariance,
    denominatorVariance: error.secondVariance,
    covariance: error.covariance,
  };
  return { ratio, ratioSet: fiellerSet(parts, rule.criticalValue(level, error.at(ratio).df)) };
}

function equivalenceOf(
  { first, second, error }: PairOfMeans,
  { level, scale, margin }: MeanComparisonOptions,
): EquivalenceTest | null {
  if (margin === null || error === null) return null;
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

/** Standard error and degrees of freedom of first − ratio·second. */
function errorAt(error: PairError, ratio: number) {
  const { variance, df } = error.at(ratio);
  return { standardError: Math.sqrt(variance), df };
}
