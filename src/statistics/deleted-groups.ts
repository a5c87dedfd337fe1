import { at } from "../errors/at.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { fitRandomEffects, type Group } from "./random-effects.ts";
import { mean, squaresWithin } from "./summary.ts";

/** One group against the others of its kind, which alone say where it should lie and how far groups lie apart. */
export interface DeletedGroup {
  /** Random-effects mean of the others. */
  readonly center: number;
  /** Estimate minus that. */
  readonly deviation: number;
  /** Of the deviation, if the group is of their kind. */
  readonly standardError: number;
  readonly statistic: number;
  readonly df: number;
  /** Two-sided. */
  readonly pValue: number;
}

/** Fewest others that can say how far groups lie apart. */
export const fewestOthers = 3;

/**
 * Does a group belong with the others? Externally studentized: t = (b − μ)/√(τ² + v + se²(μ)) on k − 1 degrees of freedom, μ, τ²
 * and σ² being those of the k other groups by restricted maximum likelihood, v the larger of σ²/T and what the group's own
 * scatter says of its error. In a balanced layout with τ² above zero and nothing said of the own error this is the deleted
 * residual of the group means.
 *
 * @param groups       as `fitRandomEffects` takes them
 * @param ownVariances of each estimate, by the group's own scatter; null: nothing is known. A group that scatters more than
 *                     its fellows is then not taken for one that lies apart
 * @returns            one a group; null below 3 others, and where the others do not differ at all
 * Source              Cook & Weisberg 1982, Residuals and Influence in Regression, 2.2; Searle, Casella & McCulloch 1992
 */
export function deletedGroups(
  groups: readonly Group[],
  ownVariances: readonly (number | null)[],
): readonly (DeletedGroup | null)[] {
  return groups.map((group, i) =>
    against(
      group,
      groups.filter((_, j) => j !== i),
      at(ownVariances, i),
    ),
  );
}

function against(
  { estimate, information }: Group,
  others: readonly Group[],
  ownVariance: number | null,
): DeletedGroup | null {
  if (others.length < fewestOthers) return null;
  const fit = fitRandomEffects(others);
  const { center, variance } =
    fit === null
      ? plainly(others)
      : {
          center: fit.mean,
          variance:
            fit.betweenVariance +
            Math.max(fit.withinVariance / information, ownVariance ?? 0) +
            fit.standardError ** 2,
        };
  const estimates = others.map((one) => one.estimate);
  if (noScatter(variance, estimates)) return null;
  const deviation = estimate - center;
  const standardError = Math.sqrt(variance);
  const statistic = deviation / standardError;
  const df = others.length - 1;
  return {
    center,
    deviation,
    standardError,
    statistic,
    df,
    pValue: studentTTwoSided(statistic, df),
  };
}

/** Without any scatter within groups their estimates are plain observations. */
function plainly(others: readonly Group[]) {
  const estimates = others.map(({ estimate }) => estimate);
  const variance = squaresWithin(estimates).squares / (others.length - 1);
  return { center: mean(estimates), variance: variance * (1 + 1 / others.length) };
}
