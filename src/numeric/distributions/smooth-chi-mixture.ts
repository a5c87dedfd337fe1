import { NumericalError } from "../../errors/errors.ts";
import { chiLogShape, chiScale } from "./chi-mixture.ts";

/** Terms that add less than this share of the total end the walk to their side. */
const negligible = 1e-18;

/** ln of the smallest positive double: where the density ends, the walk ends whatever it has found. */
const lowestLog = -745;

/** The root ω of v = e^−v, where ln S is to be at the peak. */
const origin = 0.5671432904097838;

const farthestLeft = 1e-160;

/** Most steps of a long walk lie where the density is 0 and cost nothing; one that is longer has no end. */
const mostSteps = 2_000_000;

/** What is known beforehand about the function whose mean is taken. */
export interface Landscape {
  /** About where density times g is highest, or anywhere to its left. */
  readonly peak: number;
  /** How sharply g bends there: minus the second derivative of its logarithm by ln S. */
  readonly sharpness: number;
}

/**
 * Mean of a smooth g(S) over the estimated standard deviation S of normal values with true deviation 1, that is S²·df
 * is chi-squared with df degrees of freedom: what `chiMean` gives, with a fifth of the work, where g is analytic.
 *
 * Puts ln S = v − e^−v + constant and sums in equal steps of v: the long exponential slope that few df leave on the left
 * then falls off doubly exponentially, as the right side does anyhow, and the sum converges faster than any power of
 * the step.
 *
 * @param g analytic function of S > 0 with values from 0 to 1; density times g must have a single peak
 * @param df degrees of freedom, finite and above 0
 * @param landscape where and how sharply the integrand peaks
 * Source Takahasi and Mori 1974, Publications of the Research Institute for Mathematical Sciences 9, 721–741
 */
export function smoothChiMean(
  g: (deviation: number) => number,
  df: number,
  { peak, sharpness }: Landscape,
): number {
  // A peak that is too far left for a number is walked to from here; from minus infinity no walk would ever end.
  const shift = Math.log(Math.max(peak, farthestLeft));
  // 2·df is the sharpness of the density itself; 30 keeps the step short enough for the double exponential at few df.
  const step = 0.45 / Math.sqrt(2 * df + sharpness + 30);
  let total = 0;
  for (const direction of [1, -1]) {
    for (let i = direction === 1 ? 0 : 1; ; i++) {
      // With v = ω + t, v − e^−v is t − ω·(e^−t − 1), which keeps its digits where many df need them, near t = 0.
      const t = direction * i * step;
      const bend = origin * Math.expm1(-t);
      const u = shift + t - bend;
      const logDensity = df * chiLogShape(u);
      const weight = Math.exp(logDensity);
      const term = weight === 0 ? 0 : weight * g(Math.exp(u)) * (1 + origin + bend);
      total += term;
      if (i === mostSteps)
        throw new NumericalError(`smoothChiMean: no convergence for ${df} degrees of freedom.`);
      if (term < negligible * total || (logDensity < lowestLog && direction * u > 0)) break;
    }
  }
  return chiScale(df) * step * total;
}
