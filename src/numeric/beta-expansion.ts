import { logOnePlusMinus } from "./special-functions.ts";
import { chanceAbove } from "./standard-normal.ts";

/**
 * Regularised incomplete beta function for two huge shapes, or its complement for the upper side: the normal
 * distribution of a variable ψ that makes the exponent an exact square, and the first term of the correction. With
 * u = x/x₀ − 1, x₀ = a/(a + b), w = a/b and a <= b:
 * ½ψ² = −ln(1 + u) − ln(1 − wu)/w, P = Φ(ψ√a) + e^(−aψ²/2)/√(2πa)·(1/ψ − 1/(u√(1 + w))).
 *
 * @param a above 1e8, so that the next term of the correction stays below 1e-14
 * @param b above 1e8
 * @param excess x·b − (1 − x)·a
 * @param side which of the two is wanted
 * Source Temme 1982, SIAM Journal on Mathematical Analysis 13, 239–253 (a class of integrals related to cumulative
 *        distribution functions)
 */
export function betaExpansion(
  a: number,
  b: number,
  excess: number,
  side: "lower" | "upper",
): number {
  if (a > b) return betaExpansion(b, a, -excess, side === "lower" ? "upper" : "lower");
  const w = a / b;
  const u = Math.max(-1, excess / a);
  const halfSquare = -logOnePlusMinus(u) - logOnePlusMinus(-Math.min(1, w * u)) / w;
  const psi = Math.sign(u) * Math.sqrt(2 * halfSquare);
  const correction =
    (Math.exp(-a * halfSquare) / Math.sqrt(2 * Math.PI * a)) * firstTerm(u, w, psi);
  const reach = psi * Math.sqrt(a);
  return side === "lower" ? chanceAbove(-reach) + correction : chanceAbove(reach) - correction;
}

/** 1/ψ − 1/(u√(1 + w)); near u = 0, where the two cancel, from the series e of ψ²(1/u²)/(1 + w) − 1. */
function firstTerm(u: number, w: number, psi: number): number {
  const scale = 1 / Math.sqrt(1 + w);
  if (Math.abs(u) > 0.02) return 1 / psi - scale / u;
  const perU = slopes.reduceRight((sum, coefficient) => sum * u + coefficient(w), 0);
  const root = Math.sqrt(1 + perU * u);
  return (-scale * perU) / (root * (1 + root));
}

/** Coefficients of e/u: 2/k·(w^(k−1) + (−1)^k)/(1 + w) for k = 3, 4, …, with the division carried out. */
const slopes: readonly ((w: number) => number)[] = [
  (w) => (2 / 3) * (w - 1),
  (w) => (2 / 4) * (1 - w + w ** 2),
  (w) => (2 / 5) * (w - 1) * (1 + w ** 2),
  (w) => (2 / 6) * (1 - w * (1 - w * (1 - w * (1 - w)))),
  (w) => (2 / 7) * (w - 1) * (1 + w ** 2 * (1 + w ** 2)),
  (w) => (2 / 8) * (1 - w * (1 - w * (1 - w * (1 - w * (1 - w * (1 - w)))))),
];
