import { at } from "../errors/at.ts";

/** Chebyshev points of a panel; of a function analytic around it they give all digits but the last. */
const points = 20;
const panelWidth = 1;

const nodes = Float64Array.from({ length: points }, (_, i) =>
  Math.cos((Math.PI * (i + 0.5)) / points),
);
/** Barycentric weights of Chebyshev points of the first kind. */
const weights = nodes.map(
  (_, i) => (i % 2 === 0 ? 1 : -1) * Math.sin((Math.PI * (i + 0.5)) / points),
);

/**
 * A smooth positive function on (0, end), answered from polynomials through its logarithm, each worked out when it is
 * first asked for: for a function that is asked for a hundred thousand times, and of which one value takes as long as a
 * hundred of a polynomial.
 *
 * @param f     analytic and above 0 on (0, end)
 * @param end   beyond it the function itself is asked
 * Source Berrut and Trefethen 2004, Barycentric Lagrange interpolation, SIAM Review 46, 501–517
 */
export function interpolatedLog(f: (x: number) => number, end: number): (x: number) => number {
  const panels: Float64Array[] = [];
  return (x) => {
    if (!(x < end)) return f(x);
    const panel = Math.floor(x / panelWidth);
    const middle = (panel + 0.5) * panelWidth;
    panels[panel] ??= nodes.map((node) => Math.log(f(middle + 0.5 * panelWidth * node)));
    return Math.exp(through(at(panels, panel), (x - middle) / (0.5 * panelWidth)));
  };
}

function through(values: Float64Array, x: number): number {
  let top = 0;
  let bottom = 0;
  for (let i = 0; i < points; i++) {
    const distance = x - at(nodes, i);
    if (distance === 0) return at(values, i);
    const share = at(weights, i) / distance;
    top += share * at(values, i);
    bottom += share;
  }
  return top / bottom;
}
