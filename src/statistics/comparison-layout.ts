import { at } from "../errors/at.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { blockAnova } from "./block-anova.ts";
import { combinedDf, pooledVariance, type Sample, sampleOf, varianceOfMean } from "./sample.ts";
import {
  bonferroniRule,
  dunnettRule,
  type Pair,
  referenceLoadings,
  type SimultaneousRule,
  type SpreadLaw,
  studentizedRangeRule,
} from "./simultaneous.ts";
import { mean } from "./summary.ts";
import { type MeansTest, welchOneWay } from "./welch.ts";

/** Two means to compare, with all that is known of their errors. */
export interface PairOfMeans {
  readonly first: number;
  readonly second: number;
  /** Values, or blocks, behind them. */
  readonly n: readonly [number, number];
  /** Null where nothing scatters, so that the error is unknown. */
  readonly error: PairError | null;
}

/** Squared standard errors of two means and their covariance. */
export interface PairError {
  readonly firstVariance: number;
  readonly secondVariance: number;
  readonly covariance: number;
  /** Squared standard error of first − ratio·second, with its degrees of freedom. */
  readonly at: (ratio: number) => { readonly variance: number; readonly df: number };
}

export type ComparisonMethod =
  | "games-howell"
  | "tukey-kramer"
  | "dunnett-separate"
  | "dunnett"
  | "paired-bonferroni"
  | "tukey-blocks"
  | "dunnett-blocks";

/** How the values stand to each other, and so how their means are compared. */
export interface ComparisonLayout {
  readonly method: ComparisonMethod;
  /** Null: the two were never tried together. */
  readonly pairOf: (pair: Pair) => PairOfMeans | null;
  readonly rule: SimultaneousRule;
  /** F test of no difference at all; null where it cannot be made. */
  readonly overall: MeansTest | null;
}

/**
 * Groups of independent values. All pairs: Games–Howell, or Tukey–Kramer with a common spread. Against a reference:
 * Dunnett's procedure, with separate spreads in the extension of Hasler and Hothorn.
 *
 * @param groups at least 2, each of at least 2 finite values
 * @param pairs the contrasts that will be made
 * @param reference place of the reference group; null: all pairs
 */
export function independentLayout(
  groups: readonly (readonly number[])[],
  pairs: readonly Pair[],
  reference: number | null,
  spread: SpreadLaw,
): ComparisonLayout {
  const samples = groups.map(sampleOf);
  const errorOf = spread === "common" ? commonError(samples) : separateError;
  return {
    method: independentMethod(reference, spread),
    rule:
      reference === null
        ? studentizedRangeRule(samples.length)
        : dunnettRule(referenceLoadings(samples, pairs, spread)),
    overall: samples.every(({ variance }) => variance > 0) ? welchOneWay(samples) : null,
    pairOf: ({ first, second }) => {
      const [a, b] = [at(samples, first), at(samples, second)];
      return { first: a.mean, second: b.mean, n: [a.n, b.n], error: errorOf(a, b) };
    },
  };
}

/**
 * Groups tried together in blocks. With separate spreads each pair is a paired t test on its shared blocks, judged
 * together by Bonferroni; with a common spread the blocks that hold every group are analysed as one, Tukey's or Dunnett's
 * procedure on (blocks − 1)·(groups − 1) degrees of freedom. What a block shares is taken as it is, not as a sample.
 *
 * @param blocks one row a block, one value a group; null where the group was not tried
 * @param pairs and reference as for `independentLayout`
 */
export function blockLayout(
  blocks: readonly (readonly (number | null)[])[],
  pairs: readonly Pair[],
  reference: number | null,
  spread: SpreadLaw,
): ComparisonLayout {
  const complete = completeBlocks(blocks);
  const anova = complete.length >= 2 ? blockAnova(complete) : null;
  if (spread === "separate") {
    return {
      method: "paired-bonferroni",
      rule: bonferroniRule(Math.max(1, pairs.length)),
      overall: anova?.test ?? null,
      pairOf: (pair) => pairedMeans(blocks, pair),
    };
  }
  return {
    method: reference === null ? "tukey-blocks" : "dunnett-blocks",
    rule:
      reference === null
        ? studentizedRangeRule(blocks[0]?.length ?? 2)
        : dunnettRule(pairs.map(() => Math.SQRT1_2)),
    overall: anova?.test ?? null,
    pairOf: ({ first, second }) => {
      if (anova === null) return null;
      const [a, b] = [at(anova.treatmentMeans, first), at(anova.treatmentMeans, second)];
      const variance = anova.errorMeanSquare / complete.length;
      const error =
        anova.test === null ? null : independentError(variance, variance, anova.errorDf);
      return { first: a, second: b, n: [complete.length, complete.length], error };
    },
  };
}

/** Blocks in which every group was tried. */
export function completeBlocks(
  blocks: readonly (readonly (number | null)[])[],
): readonly (readonly number[])[] {
  return blocks.flatMap((block) => {
    const values = block.filter((value) => value !== null);
    return values.length === block.length && values.length > 0 ? [values] : [];
  });
}

function independentMethod(reference: number | null, spread: SpreadLaw): ComparisonMethod {
  if (reference === null) return spread === "common" ? "tukey-kramer" : "games-howell";
  return spread === "common" ? "dunnett" : "dunnett-separate";
}

function separateError(a: Sample, b: Sample): PairError | null {
  const [firstVariance, secondVariance] = [varianceOfMean(a), varianceOfMean(b)];
  if (!(firstVariance + secondVariance > 0)) return null;
  return {
    firstVariance,
    secondVariance,
    covariance: 0,
    at: (ratio) => {
      const parts = [
        { variance: firstVariance, df: a.n - 1 },
        { variance: ratio ** 2 * secondVariance, df: b.n - 1 },
      ];
      const variance = firstVariance + ratio ** 2 * secondVariance;
      return { variance, df: combinedDf(parts) };
    },
  };
}

function commonError(samples: readonly Sample[]): typeof separateError {
  const { variance, df } = pooledVariance(samples);
  return (a, b) => (variance > 0 ? independentError(variance / a.n, variance / b.n, df) : null);
}

function independentError(firstVariance: number, secondVariance: number, df: number): PairError {
  return {
    firstVariance,
    secondVariance,
    covariance: 0,
    at: (ratio) => ({ variance: firstVariance + ratio ** 2 * secondVariance, df }),
  };
}

function pairedMeans(
  blocks: readonly (readonly (number | null)[])[],
  { first, second }: Pair,
): PairOfMeans | null {
  const shared = blocks.flatMap((block) => {
    const [a, b] = [at(block, first), at(block, second)];
    return a === null || b === null ? [] : [{ a, b }];
  });
  if (shared.length < 2) return null;
  const n = shared.length;
  const [a, b] = [sampleOf(shared.map((pair) => pair.a)), sampleOf(shared.map((pair) => pair.b))];
  const combined = (ratio: number) => sampleOf(shared.map((pair) => pair.a - ratio * pair.b));
  const means = { first: a.mean, second: b.mean, n: [n, n] as const };
  // Differences that agree to rounding of the values themselves scatter by nothing that was measured.
  const size = Math.max(Math.abs(a.mean), Math.abs(b.mean));
  if (isDust(Math.sqrt(combined(1).variance), size)) return { ...means, error: null };
  const products = shared.map((pair) => (pair.a - a.mean) * (pair.b - b.mean));
  return {
    ...means,
    error: {
      firstVariance: a.variance / n,
      secondVariance: b.variance / n,
      covariance: mean(products) / (n - 1),
      at: (ratio) => ({ variance: combined(ratio).variance / n, df: n - 1 }),
    },
  };
}
