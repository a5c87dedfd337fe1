import { sum } from "simple-statistics";
import { fLowerTail, fUpperTail } from "../numeric/distributions/f.ts";
import { requireNotNegative, requirePositive } from "../numeric/domain.ts";
import { inverseTrigamma } from "../numeric/inverse-trigamma.ts";
import { kept } from "../numeric/kept.ts";
import { logMinusDigamma, trigamma } from "../numeric/special-functions.ts";
import type { SpreadPrior } from "./spread-prior.ts";

/** What one source says of ln σ²: about `center`, give or take √`variance`. */
export interface SpreadVote {
  readonly center: number;
  readonly variance: number;
}

/** A variance that was estimated on so many degrees of freedom. */
export interface EstimatedVariance {
  /** Above 0: a vote needs its logarithm. */
  readonly variance: number;
  readonly df: number;
}

const lowOnAverage = kept(logMinusDigamma);
const varianceOfLog = kept(trigamma);
const halfDfOf = kept(inverseTrigamma);

/** ln s² without what it lies below ln σ² on average: ln s² − ψ(ν/2) + ln(ν/2), with its sampling variance ψ′(ν/2). */
export function logVariance({ variance, df }: EstimatedVariance): SpreadVote {
  requirePositive("logVariance", "variance", variance);
  requirePositive("logVariance", "df", df);
  return { center: Math.log(variance) + lowOnAverage(df / 2), variance: varianceOfLog(df / 2) };
}

/** Running sums of what several others say, so that one of them can be taken out again. */
export interface VoteSums {
  readonly weight: number;
  readonly weighted: number;
  readonly count: number;
}

export const noVotes: VoteSums = { weight: 0, weighted: 0, count: 0 };

/**
 * The part of one among others of which ln σ² scatters about a common centre with standard deviation 2h:
 * w = 1/(4h² + ψ′(ν/2)).
 */
export function voteAmongOthers(estimated: EstimatedVariance, heterogeneity: number): VoteSums {
  requireNotNegative("voteAmongOthers", "heterogeneity", heterogeneity);
  const { center, variance } = logVariance(estimated);
  const weight = 1 / (4 * heterogeneity ** 2 + variance);
  return { weight, weighted: weight * center, count: 1 };
}

export function addVotes(a: VoteSums, b: VoteSums): VoteSums {
  return {
    weight: a.weight + b.weight,
    weighted: a.weighted + b.weighted,
    count: a.count + b.count,
  };
}

export function withoutVotes(all: VoteSums, out: VoteSums): VoteSums {
  return {
    weight: all.weight - out.weight,
    weighted: all.weighted - out.weighted,
    count: all.count - out.count,
  };
}

/** What others say of one more of their kind: ē = Σwe/Σw, V = 4h² + 1/Σw; null: there are none. */
export function voteOfOthers(
  { weight, weighted, count }: VoteSums,
  heterogeneity: number,
): SpreadVote | null {
  if (count === 0) return null;
  return { center: weighted / weight, variance: 4 * heterogeneity ** 2 + 1 / weight };
}

/**
 * What k groups of one source say together of one more of its groups, which are more alike than sources are:
 * V = 4h²(1 + 1/k) + ψ′(ν/2).
 *
 * @param pooled  their variance together
 */
export function voteOfOwnGroups(
  pooled: EstimatedVariance,
  groups: number,
  heterogeneity: number,
): SpreadVote {
  requirePositive("voteOfOwnGroups", "groups", groups);
  const { center, variance } = logVariance(pooled);
  return { center, variance: 4 * heterogeneity ** 2 * (1 + 1 / groups) + variance };
}

/** An assumption: σ about `typical`, within a factor e^2g either way in 95 % of cases; V = 4g². */
export function assumedVote(typicalVariance: number, g: number): SpreadVote {
  requirePositive("assumedVote", "typicalVariance", typicalVariance);
  return { center: Math.log(typicalVariance), variance: 4 * g ** 2 };
}

/** Independent votes on the same ln σ² together: 1/V = Σ1/Vᵢ, e = V·Σeᵢ/Vᵢ; null: nobody votes. */
export function votesTogether(votes: readonly SpreadVote[]): SpreadVote | null {
  if (votes.length === 0) return null;
  const variance = 1 / sum(votes.map((vote) => 1 / vote.variance));
  return { center: variance * sum(votes.map((vote) => vote.center / vote.variance)), variance };
}

/**
 * The scaled inverse χ² law of σ² whose logarithm has the centre and the variance of a vote: ν0 = 2ψ′⁻¹(V),
 * s0² = exp(e + ψ(ν0/2) − ln(ν0/2)). One estimate alone, with no heterogeneity, gives itself back: ν0 its degrees of freedom, s0² its
 * variance.
 *
 * Source Smyth 2004, Statistical Applications in Genetics and Molecular Biology 3, article 3 (moderated variances)
 */
export function priorOfVote({ center, variance }: SpreadVote): SpreadPrior {
  const half = halfDfOf(variance);
  return { nu0: 2 * half, s0Squared: Math.exp(center - lowOnAverage(half)) };
}

/** Standard deviation in the middle of what a vote says, exp(e/2): s0 itself sits low. */
export function typicalOfVote({ center }: SpreadVote): number {
  return Math.exp(center / 2);
}

/** What an estimate looks like among those that a vote tells of. */
export interface AgainstVote {
  /** One-sided: chance of a variance so far out on its side. */
  readonly pValue: number;
  /** True: larger than they; false: smaller. */
  readonly more: boolean;
}

/**
 * Whether an estimated variance is unlike what others say: tails of F(ν, ν0) at s²/s0².
 *
 * @param limit  tail below which it is
 * @returns      null: it is like them
 */
export function unlikeVote(
  { variance, df }: EstimatedVariance,
  vote: SpreadVote,
  limit: number,
): AgainstVote | null {
  const { nu0, s0Squared } = priorOfVote(vote);
  const upper = fUpperTail(variance / s0Squared, df, nu0);
  if (upper < limit) return { pValue: upper, more: true };
  const lower = fLowerTail(variance / s0Squared, df, nu0);
  return lower < limit ? { pValue: lower, more: false } : null;
}
