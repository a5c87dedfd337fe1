import { at } from "../../../src/errors/at.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import {
  blockLayout,
  type ComparisonLayout,
  independentLayout,
} from "../../../src/statistics/comparison-layout.ts";
import { compareMeans } from "../../../src/statistics/mean-comparison.ts";
import {
  allPairs,
  type Pair,
  pairsWithReference,
  type SimultaneousRule,
  type SpreadLaw,
} from "../../../src/statistics/simultaneous.ts";

/** Trials of one kind: every product filled once in every block. */
export interface TrialPlan {
  readonly blocks: number;
  /** Relative fill-to-fill spread of each product. */
  readonly spreads: readonly number[];
  readonly errors: "normal" | "heavy tails";
  readonly spread: SpreadLaw;
  /** Against the first product instead of all pairs. */
  readonly againstFirst: boolean;
  /** Margin by which the last product delivers more than the others. */
  readonly margin: number;
}

export interface TrialOutcome {
  /** Share of trials in which every interval holds its true difference. */
  readonly covered: number;
  /** Share in which the last product is called equivalent to the one before it, or to the first if that is the reference. */
  readonly equivalentAtMargin: number;
}

/** Fills of unlike numbers without blocks, no product differing from another. */
export interface FillsPlan {
  readonly fills: readonly number[];
  readonly spreads: readonly number[];
}

const level = 0.95;
/** What a block does to all products alike; it falls out of every comparison. */
const blockSpread = 0.03;

export function simulateTrials(plan: TrialPlan, trials: number, seed: number): TrialOutcome {
  const { spreads, spread, againstFirst, margin } = plan;
  const stream = randomStream(seed);
  const [products, last] = [spreads.length, spreads.length - 1];
  const reference = againstFirst ? 0 : null;
  const pairs = againstFirst ? pairsWithReference(products, 0) : allPairs(products);
  const effects = spreads.map((_, i) => (i === last ? Math.log1p(margin) : 0));
  const atMargin = pairs.findIndex(({ first, second }) => isAtMargin(first, second, last));
  let [covered, equivalent] = [0, 0];
  let rule: SimultaneousRule | null = null;
  for (let trial = 0; trial < trials; trial++) {
    const layout = blockLayout(oneTrial(plan, effects, stream), pairs, reference, spread);
    rule ??= remembering(layout.rule);
    const contrasts = compareMeans({ ...layout, rule }, pairs, { level, scale: "log", margin });
    if (contrasts.every((one) => holds(one, at(effects, one.first) - at(effects, one.second))))
      covered++;
    if (at(contrasts, atMargin).equivalence?.equivalent === true) equivalent++;
  }
  return { covered: covered / trials, equivalentAtMargin: equivalent / trials };
}

/** Share of comparisons by Games and Howell that find a difference where there is none. */
export function simulateGamesHowell(plan: FillsPlan, trials: number, seed: number): number {
  const stream = randomStream(seed);
  const pairs = allPairs(plan.fills.length);
  let found = 0;
  for (let trial = 0; trial < trials; trial++) {
    const groups = plan.fills.map((fills, i) =>
      Array.from({ length: fills }, () => 1 + at(plan.spreads, i) * stream.normal()),
    );
    const layout = independentLayout(groups, pairs, null, "separate");
    if (pairs.some((pair) => differs(layout, pair))) found++;
  }
  return found / trials;
}

/** Logarithms of the fill estimates, one row a block. */
function oneTrial(
  { blocks, spreads, errors }: TrialPlan,
  effects: readonly number[],
  stream: RandomStream,
): readonly (readonly number[])[] {
  return Array.from({ length: blocks }, () => {
    const shared = blockSpread * stream.normal();
    return spreads.map((spread, i) => shared + at(effects, i) + spread * oneError(errors, stream));
  });
}

/** Of variance 1; heavy tails are Student's t on 4 degrees of freedom. */
function oneError(errors: TrialPlan["errors"], stream: RandomStream): number {
  const normal = stream.normal();
  return errors === "normal" ? normal : normal / Math.sqrt(stream.chiSquared(4) / 2);
}

/** The pair that differs by the margin and scatters most. */
function isAtMargin(first: number, second: number, last: number): boolean {
  return first === last ? second === 0 : second === last && first === last - 1;
}

function holds(
  { lower, upper }: { readonly lower: number | null; readonly upper: number | null },
  truth: number,
): boolean {
  return lower !== null && upper !== null && lower <= truth && truth <= upper;
}

/** By the p-value, which says the same as the interval and is had without its critical value. */
function differs({ pairOf, rule }: ComparisonLayout, pair: Pair): boolean {
  const means = pairOf(pair);
  if (means === null || means.error === null) return false;
  const { variance, df } = means.error.at(1);
  return rule.adjustedPValue((means.first - means.second) / Math.sqrt(variance), df) < 1 - level;
}

/** Trials of one plan share their critical value. */
function remembering({ criticalValue, adjustedPValue }: SimultaneousRule): SimultaneousRule {
  const known = new Map<string, number>();
  return {
    adjustedPValue,
    criticalValue: (wanted, df) => {
      const key = `${wanted} ${df}`;
      const value = known.get(key) ?? criticalValue(wanted, df);
      known.set(key, value);
      return value;
    },
  };
}
