import { isDust } from "../numeric/rounding-dust.ts";

/**
 * All that one fill's catches say about anything beyond that fill: a small record that adds up. Two records merge
 * in any order, so a season and a million fills run through the same code.
 */
export interface FillTotals {
  readonly catches: number;
  /** Σ turns. */
  readonly turns: number;
  /** Σ net mass, kg. */
  readonly massKg: number;
  /** Σ (m − b·t)²/t about the fill's own b = Σm/Σt, in kg²/turn. */
  readonly scatterSum: number;
}

interface Weighed {
  readonly turns: number;
  readonly netKg: number;
}

export const noTotals: FillTotals = { catches: 0, turns: 0, massKg: 0, scatterSum: 0 };

export function totalsOf(catches: Iterable<Weighed>): FillTotals {
  // Written out as `mergeTotals` with one catch at a time has it: two objects a catch would be a million times two.
  let [count, turns, massKg, scatterSum] = [0, 0, 0, 0];
  for (const one of catches) {
    const together = turns + one.turns;
    if (count > 0) {
      const gap = massKg / turns - one.netKg / one.turns;
      scatterSum += gap ** 2 * ((turns * one.turns) / together);
    }
    count += 1;
    turns = together;
    massKg += one.netKg;
  }
  return { catches: count, turns, massKg, scatterSum };
}

/**
 * Totals of two sets of catches of one fill taken together.
 *
 * The scatter sum is updated by the distance of the two deliveries, (b₁−b₂)²·T₁T₂/(T₁+T₂), never as a difference of
 * large sums: Σm²/t − (Σm)²/Σt loses every digit when catches agree closely.
 * Source: Chan, Golub & LeVeque, The American Statistician 37 (1983) 242, with turns as weights.
 */
export function mergeTotals(a: FillTotals, b: FillTotals): FillTotals {
  if (a.catches === 0) return b;
  if (b.catches === 0) return a;
  const turns = a.turns + b.turns;
  const gap = a.massKg / a.turns - b.massKg / b.turns;
  return {
    catches: a.catches + b.catches,
    turns,
    massKg: a.massKg + b.massKg,
    scatterSum: a.scatterSum + b.scatterSum + gap ** 2 * ((a.turns * b.turns) / turns),
  };
}

/** Delivery of the fill, ratio of sums Σm/Σt, kg/turn. */
export function deliveryOf(totals: FillTotals): number {
  return totals.massKg / totals.turns;
}

/** Whether the catches differ in what they give per turn by rounding only. */
export function agreeExactly(totals: FillTotals): boolean {
  return isDust(Math.sqrt(totals.scatterSum / totals.turns), deliveryOf(totals));
}
