import { sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { wholePower } from "../numeric/powers.ts";
import { bracketRoot, findRoot } from "../numeric/roots.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { mean } from "./summary.ts";

/** One group of a one-way random-effects layout, reduced to what matters across groups. */
export interface Group {
  /** The group's own estimate. */
  readonly estimate: number;
  /** Its information T: within variance σ² gives the estimate the variance σ²/T (observations, or turns). */
  readonly information: number;
  /** Sum of squares within the group, in units of σ². */
  readonly sumOfSquares: number;
  /** Degrees of freedom of that sum. */
  readonly df: number;
}

export interface RandomEffectsFit {
  readonly mean: number;
  readonly betweenVariance: number;
  readonly withinVariance: number;
  /** True when the between variance is estimated as exactly zero. */
  readonly atBoundary: boolean;
  /** Plain standard error of the mean, 1/√Σ(1/V). */
  readonly standardError: number;
  /** Standard error with the small-sample adjustment of Kenward & Roger. */
  readonly adjustedStandardError: number;
  /** Degrees of freedom that go with it. */
  readonly df: number;
}

/**
 * One-way random effects by restricted maximum likelihood, with small-sample adjusted standard error and degrees of
 * freedom for the mean. For a single mean the whole problem is one-dimensional in λ = τ²/σ²:
 * minimise (N−1)·ln[SSW + Σw(b−μ)²] + Σln(1+λT) + lnΣw, w = T/(1+λT), μ = Σwb/Σw; then σ² = [..]/(N−1), τ² = λσ².
 *
 * @param groups  k >= 2 groups, information above zero
 * @returns       null when no within-group scatter exists to compare with (no degrees of freedom, or a sum that is zero but
 *                for floating point, as from repeated readings of a coarse scale): then λ has no finite estimate
 * @throws        NumericalError with fewer than two groups or information not above zero
 * Source         Searle, Casella & McCulloch, Variance Components, ch. 3 and 6; Kenward & Roger, Biometrics 53 (1997)
 *                983
 */
export function fitRandomEffects(groups: readonly Group[]): RandomEffectsFit | null {
  if (groups.length < 2)
    throw new NumericalError(`Random effects need at least 2 groups; got ${groups.length}.`);
  if (groups.some(({ information }) => !(information > 0 && Number.isFinite(information))))
    throw new NumericalError("Every group needs information above zero.");
  const within = sum(groups.map((group) => group.sumOfSquares));
  const withinDf = sum(groups.map((group) => group.df));
  const sizes = groups.map(({ estimate, information }) => estimate * Math.sqrt(information));
  if (withinDf === 0 || noScatter(within, sizes)) return null;

  const lambda = bestVarianceRatio(groups, within, withinDf);
  const total = atRatio(groups, lambda);
  const withinVariance = (within + total.sumOfSquares) / (withinDf + groups.length - 1);
  const betweenVariance = lambda * withinVariance;
  return {
    mean: total.mean,
    betweenVariance,
    withinVariance,
    atBoundary: lambda === 0,
    ...adjustedError(groups, betweenVariance, withinVariance, withinDf),
  };
}

interface AtRatio {
  readonly mean: number;
  /** Σw. */
  readonly weight: number;
  /** Σw². */
  readonly squaredWeight: number;
  /** Σw(b−μ)². */
  readonly sumOfSquares: number;
  /** Σw²(b−μ)². */
  readonly weightedSumOfSquares: number;
}

// One plain loop: a refit asks for this some twenty times, and a study refits a million times.
function atRatio(groups: readonly Group[], lambda: number): AtRatio {
  // Weighting distances from the first estimate keeps digits when estimates agree closely.
  const origin = at(groups, 0).estimate;
  let [weight, squaredWeight, shift] = [0, 0, 0];
  for (const { estimate, information } of groups) {
    const w = information / (1 + lambda * information);
    weight += w;
    squaredWeight += w * w;
    shift += w * (estimate - origin);
  }
  const center = origin + shift / weight;
  let [sumOfSquares, weightedSumOfSquares] = [0, 0];
  for (const { estimate, information } of groups) {
    const w = information / (1 + lambda * information);
    const square = w * (estimate - center) ** 2;
    sumOfSquares += square;
    weightedSumOfSquares += w * square;
  }
  return { mean: center, weight, squaredWeight, sumOfSquares, weightedSumOfSquares };
}

/** Shares between which the valleys are looked for; two of them are rare but happen. */
const scannedShares = [
  0,
  0.005,
  0.02,
  0.05,
  0.1,
  0.17,
  0.25,
  0.35,
  0.45,
  0.55,
  0.65,
  0.75,
  0.85,
  0.92,
  0.97,
  0.99,
  0.999,
  0.999999,
  1 - 1e-12,
];

// The shares scanned are λT̄/(1+λT̄), the intraclass correlation of a typical group, so that one grid serves every scale of
// T. A valley is pinned down by the derivative, because a minimum alone is known to half the digits of a root.
function bestVarianceRatio(groups: readonly Group[], within: number, withinDf: number): number {
  const typical = mean(groups.map(({ information }) => information));
  const total = withinDf + groups.length - 1;
  const deviance = (lambda: number) => {
    const { sumOfSquares, weight } = atRatio(groups, lambda);
    const logDeterminant = sum(groups.map(({ information }) => Math.log1p(lambda * information)));
    return total * Math.log(within + sumOfSquares) + logDeterminant + Math.log(weight);
  };
  const slopeAt = (lambda: number) => {
    const at = atRatio(groups, lambda);
    return (
      at.weight -
      at.squaredWeight / at.weight -
      (total * at.weightedSumOfSquares) / (within + at.sumOfSquares)
    );
  };
  const scanned = scannedShares.map((share) => {
    const lambda = share / (1 - share) / typical;
    return { lambda, rises: slopeAt(lambda) >= 0 };
  });
  const valleys = scanned.flatMap(({ lambda, rises }, i) => {
    const before = scanned[i - 1];
    if (before === undefined) return rises ? [lambda] : [];
    return rises && !before.rises ? [findRoot(slopeAt, before.lambda, lambda)] : [];
  });
  const last = scanned.at(-1);
  if (last?.rises === false) valleys.push(rootBeyond(slopeAt, last.lambda));
  return valleys.reduce((best, one) => (deviance(one) < deviance(best) ? one : best));
}

/** Where catches all but agree, λ is beyond every share that a number can tell from 1. */
function rootBeyond(slopeAt: (lambda: number) => number, from: number): number {
  const ofLog = (x: number) => slopeAt(Math.exp(x));
  const { lower, upper } = bracketRoot(ofLog, Math.log(from), Math.log(from) + 2);
  return Math.exp(findRoot(ofLog, lower, upper));
}

// The letters are those of the source: Φ the variance of the mean, P and Q the first and second derivative terms, I
// the expected information of (τ², σ²), W its inverse. For one mean the scale factor of the F statistic is exactly 1.
function adjustedError(
  groups: readonly Group[],
  betweenVariance: number,
  withinVariance: number,
  withinDf: number,
): Pick<RandomEffectsFit, "standardError" | "adjustedStandardError" | "df"> {
  const terms = groups.map(({ information }) => ({
    v: betweenVariance + withinVariance / information,
    g: [1, 1 / information] as const,
  }));
  const phi = 1 / sum(terms.map(({ v }) => 1 / v));
  const p = ([0, 1] as const).map((i) => -sum(terms.map(({ v, g }) => g[i] / v ** 2))) as [
    number,
    number,
  ];
  const q = (i: 0 | 1, j: 0 | 1) => sum(terms.map(({ v, g }) => (g[i] * g[j]) / wholePower(v, 3)));
  const information = (i: 0 | 1, j: 0 | 1) =>
    0.5 *
    (sum(terms.map(({ v, g }) => (g[i] * g[j]) / v ** 2)) +
      (i === 1 && j === 1 ? withinDf / withinVariance ** 2 : 0) -
      2 * phi * q(i, j) +
      phi ** 2 * p[i] * p[j]);

  const [a, b, d] = [information(0, 0), information(0, 1), information(1, 1)];
  const determinant = a * d - b * b;
  const w = [
    [d / determinant, -b / determinant],
    [-b / determinant, a / determinant],
  ] as const;
  const overPairs = (term: (i: 0 | 1, j: 0 | 1) => number) =>
    term(0, 0) * w[0][0] + (term(0, 1) + term(1, 0)) * w[0][1] + term(1, 1) * w[1][1];
  const df = 2 / (phi ** 2 * overPairs((i, j) => p[i] * p[j]));
  const adjusted = phi + 2 * phi ** 2 * overPairs((i, j) => q(i, j) - phi * p[i] * p[j]);
  return { standardError: Math.sqrt(phi), adjustedStandardError: Math.sqrt(adjusted), df };
}
