import { max, min, sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { chiSquaredLowerTail, chiSquaredUpperTail } from "../numeric/distributions/chi-squared.ts";
import { normalDensity } from "../numeric/distributions/normal.ts";
import { gaussLegendreRule } from "../numeric/quadrature.ts";
import { type EstimatedVariance, logVariance, type SpreadVote } from "./spread-votes.ts";

/** One estimated variance against others of its kind, which alone say where it should lie and how far they lie apart. */
export interface DeletedVariance {
  /** Middle of the others' standard deviations. */
  readonly typical: number;
  /** Two-sided: twice the smaller tail, at most 1. */
  readonly pValue: number;
  /** True: larger than they are; false: smaller. */
  readonly more: boolean;
}

/** Fewest others that can say how far variances lie apart. */
const fewestOtherVariances = 3;

/**
 * Does an estimated variance belong with others? Given μ and τ, ln σ² of one more of them is normal about μ with variance
 * τ² + 1/Σw, w = 1/(τ² + ψ′(ν/2)), μ the weighted mean of ln s² − ψ(ν/2) + ln(ν/2); τ is integrated over its restricted likelihood,
 * flat in τ, since a few variances say it loosely; and s² given σ² is χ², so that a variance on few degrees of freedom, which
 * scatters far down and little up, is judged as it is.
 *
 * The votes by which variances are lent take τ for granted and have tails made for intervals; so far out as many tests at once
 * look they say nothing of a variance eighty times the others', and cry wolf over small ones.
 *
 * @returns one a variance; null below 3 others
 * Source   Higgins, Thompson & Spiegelhalter 2009, J. Royal Statistical Society A 172, 137 (one more of a random-effects
 *          kind); Gelman 2006, Bayesian Analysis 1, 515 (flat in τ); Bartlett & Kendall 1946 (ln s²)
 */
export function deletedVariances(
  variances: readonly EstimatedVariance[],
): readonly (DeletedVariance | null)[] {
  const logs = variances.map(logVariance);
  return variances.map((one, i) => against(one, [...logs.slice(0, i), ...logs.slice(i + 1)]));
}

function against(own: EstimatedVariance, others: readonly SpreadVote[]): DeletedVariance | null {
  if (others.length < fewestOtherVariances) return null;
  const laws = lawsOf(others);
  const center = sum(laws.map((law) => law.weight * law.center));
  const narrowest = min(laws.map(({ scale }) => scale));
  const over = (tail: (x: number, df: number) => number) =>
    sum(
      nodes.map(({ x, weight }) => {
        const log = center + narrowest * Math.sinh(x);
        const density = densityOf(laws, log);
        if (density === 0) return 0;
        const ratio = Math.min(Number.MAX_VALUE, own.df * own.variance * Math.exp(-log));
        return weight * narrowest * Math.cosh(x) * density * tail(ratio, own.df);
      }),
    );
  const upper = over(chiSquaredUpperTail);
  const more = upper < 0.5;
  return {
    typical: Math.exp(center / 2),
    pValue: Math.min(1, 2 * (more ? upper : over(chiSquaredLowerTail))),
    more,
  };
}

/** What one τ says of ln σ², and how much it counts. */
interface Law {
  readonly center: number;
  readonly scale: number;
  readonly weight: number;
}

/** Beyond the last end no meters lie apart; finer where τ is told from none. */
const ends = [0, 0.25, 0.5, 1, 2, 4, 8];
const possibleTaus = ends.slice(1).flatMap((upper, i) => placed(at(ends, i), upper, 8));
/** Of sinh⁻¹, in the narrowest scale: as far as the widest law reaches. */
const reach = 8;
const panels = 32;
const nodes = Array.from({ length: panels }, (_, i) => {
  const start = -reach + (2 * reach * i) / panels;
  return placed(start, start + (2 * reach) / panels, 10);
}).flat();

function placed(lower: number, upper: number, points: number) {
  const rule = gaussLegendreRule(points);
  const half = (upper - lower) / 2;
  return Array.from(rule.nodes, (node, i) => ({
    x: lower + half * (1 + node),
    weight: half * at(rule.weights, i),
  }));
}

function lawsOf(logs: readonly SpreadVote[]): readonly Law[] {
  const found = possibleTaus.map(({ x: tau, weight: width }) => {
    const weights = logs.map(({ variance }) => 1 / (tau ** 2 + variance));
    const total = sum(weights);
    const center = sum(logs.map((one, i) => at(weights, i) * one.center)) / total;
    const squares = sum(logs.map((one, i) => at(weights, i) * (one.center - center) ** 2));
    const likelihood =
      (sum(weights.map((weight) => Math.log(weight))) - Math.log(total) - squares) / 2;
    return { center, scale: Math.sqrt(tau ** 2 + 1 / total), width, likelihood };
  });
  const most = max(found.map(({ likelihood }) => likelihood));
  const counted = found.map((one) => one.width * Math.exp(one.likelihood - most));
  const all = sum(counted);
  return found
    .map(({ center, scale }, i) => ({ center, scale, weight: at(counted, i) / all }))
    .filter(({ weight }) => weight > negligible);
}

/** A share of the laws that changes no tail anybody looks at. */
const negligible = 1e-14;

function densityOf(laws: readonly Law[], log: number): number {
  let density = 0;
  for (const { center, scale, weight } of laws)
    density += (weight / scale) * normalDensity((log - center) / scale);
  return density;
}
