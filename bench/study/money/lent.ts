import type { Scatter } from "../../../src/model/known-width.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";

/** What other bins say beforehand of catches and fills; null: nothing. */
export interface Lent {
  readonly name: string;
  /** Of the scatter of one-turn catches, relative. */
  readonly catches: (stream: RandomStream) => Scatter | null;
  /** Of the spread of fills, relative. */
  readonly fills: (stream: RandomStream) => Scatter | null;
}

/** Middle of the meters' standard deviations: of a catch of 20 turns, and from fill to fill. */
export const middle = { catches: 0.015, fills: 0.02 } as const;
/** Standard deviation of their logarithms: 95 % of meters lie within a factor of 2.7 either way. */
const unlike = 0.5;
export const turns = 20;

export function drawStandardDeviation(center: number, stream: RandomStream): number {
  return center * Math.exp(unlike * stream.normal());
}

export const nothing: Lent = { name: "nothing lent", catches: () => null, fills: () => null };

/**
 * Two other meters, one morning of three catches each, and nine fills each. Each votes for ln σ² with its own variance and
 * that between meters; the votes make one scaled inverse-χ² prior. With as many degrees of freedom each, its own degrees of
 * freedom and its ratio to the geometric mean of the two variances are constants.
 *
 * Source: Smyth, Statistical Applications in Genetics and Molecular Biology 3 (2004), article 3; constants as
 * test/reference/generate/one-morning.R and test/reference/generate/lent-spread.R find them, with more digits
 */
export const twoOtherBins: Lent = {
  name: "two other bins",
  catches: (stream) => {
    const { q, nu } = prior(middle.catches, 2, 1.5897123059765665, 0.8435923623360716, stream);
    return { q: q * turns, nu, own: false };
  },
  fills: (stream) => prior(middle.fills, 8, 2.00251879145279, 0.6400379183072206, stream),
};

function prior(
  center: number,
  df: number,
  nu: number,
  ratio: number,
  stream: RandomStream,
): Scatter {
  const variance = () => (drawStandardDeviation(center, stream) ** 2 * stream.chiSquared(df)) / df;
  return { q: ratio * Math.sqrt(variance() * variance()), nu, own: false };
}
