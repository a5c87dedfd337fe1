import { normalQuantile } from "../../numeric/distributions/normal.ts";
import { realPower } from "../../numeric/powers.ts";
import { fitRandomEffects, type Group } from "../../statistics/random-effects.ts";
import type { Funnel, FunnelPoint } from "./result.ts";

const drawn = 40;
const bands = { inner: 0.95, outer: 0.998 } as const;

/**
 * Limits about 1 for deliveries relative to their level, the narrower the more turns were caught: τ and σ by random effects of
 * the meters together.
 *
 * @param groups  ln of delivery ÷ level of the meters that are like each other
 * @param reach   fewest and most turns of all meters
 * @returns       null with fewer than two, or without scatter within meters
 * Source         Spiegelhalter 2005, Statistics in Medicine 24, 1185–1202 (limits at 95 and 99.8 %, additive overdispersion)
 */
export function funnelOf(
  groups: readonly Group[],
  { fewest, most }: { readonly fewest: number; readonly most: number },
): Funnel | null {
  const fit = groups.length < 2 ? null : fitRandomEffects(groups);
  if (fit === null) return null;
  const { betweenVariance, withinVariance } = fit;
  return {
    betweenMeters: Math.sqrt(betweenVariance),
    perTurn: Math.sqrt(withinVariance),
    points: Array.from({ length: drawn }, (_, i) => {
      const turns = fewest * realPower(most / fewest, i / (drawn - 1));
      return pointAt(turns, Math.sqrt(betweenVariance + withinVariance / turns));
    }),
  };
}

function pointAt(turns: number, sd: number): FunnelPoint {
  const end = (content: number, sign: number) =>
    Math.exp(sign * normalQuantile((1 + content) / 2) * sd);
  return {
    turns,
    lower95: end(bands.inner, -1),
    upper95: end(bands.inner, 1),
    lower998: end(bands.outer, -1),
    upper998: end(bands.outer, 1),
  };
}
