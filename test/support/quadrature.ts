import { integratePanel } from "../../src/numeric/quadrature.ts";

/** Integral over consecutive panels; n + 1 ascending edges make n of them. */
export function integratePanels(
  f: (x: number) => number,
  edges: readonly number[],
  points = 16,
): number {
  return edges
    .slice(1)
    .reduce((total, upper, i) => total + integratePanel(f, edges[i] ?? upper, upper, points), 0);
}
