import {
  blockLayout,
  type ComparisonLayout,
  type ComparisonMethod,
  independentLayout,
} from "./comparison-layout.ts";
import { compareMeans, type MeanComparisonOptions, type MeanContrast } from "./mean-comparison.ts";
import { allPairs, type Pair, pairsWithReference, type SpreadLaw } from "./simultaneous.ts";
import type { MeansTest } from "./welch.ts";

/** How several groups are compared. */
export interface GroupDesign extends MeanComparisonOptions {
  /** Place of the group that every other one is compared with, from 0; null: all pairs. */
  readonly reference: number | null;
  readonly spread: SpreadLaw;
}

export interface GroupComparison {
  readonly method: ComparisonMethod;
  /** F test of no difference at all; null where it cannot be made. */
  readonly overall: MeansTest | null;
  readonly contrasts: readonly MeanContrast[];
  /**
   * Beside one spread pooled over blocks: the same contrasts with spreads not assumed alike, each by its own paired
   * differences; null otherwise.
   */
  readonly notAlike: readonly MeanContrast[] | null;
}

/**
 * Which of several groups differ in their means? All pairs by Games and Howell, each group having a spread of its own, or
 * by Tukey and Kramer with a common spread; against a reference by Dunnett's two-sided procedure, with separate spreads
 * as Hasler and Hothorn extended it. Games and Howell's 5 % become 6 to 8 % where numbers and spreads are unequal.
 *
 * @param groups at least 2, each of at least 2 finite values
 * @returns simultaneous intervals, adjusted p-values, ratios by Fieller and, with a margin, equivalence
 * @throws NumericalError when a group is too small, a value is not finite, a second mean is 0, or level, margin or
 *   reference is out of range
 * Source Games and Howell 1976, Journal of Educational Statistics 1, 113–125; Kramer 1956, Biometrics 12, 307–310; Dunnett
 *   1955, Journal of the American Statistical Association 50, 1096–1121; Hasler and Hothorn 2008, Biometrical Journal 50,
 *   793–800; Fieller 1954, Journal of the Royal Statistical Society B 16, 175–185; Sasabuchi 1988, Memoirs of the Faculty
 *   of Science, Kyushu University A 42, 103–110 (ratios against limits)
 */
export function compareGroups(
  groups: readonly (readonly number[])[],
  design: GroupDesign,
): GroupComparison {
  const pairs = pairsOf(groups.length, design);
  const layout = independentLayout(groups, pairs, design.reference, design.spread);
  return { ...comparison(layout, pairs, design), notAlike: null };
}

/**
 * The same, each group with a spread of its own, where pairs are compared by fewer than all values of their groups.
 *
 * @param ownOf values of a pair, at least 2 each; null: it is not compared
 */
export function comparePairsOfGroups(
  groups: readonly (readonly number[])[],
  ownOf: (pair: Pair) => readonly [first: readonly number[], second: readonly number[]] | null,
  design: GroupDesign,
): readonly MeanContrast[] {
  const pairs = pairsOf(groups.length, design);
  const both = { first: 0, second: 1 };
  const pairOf = (pair: Pair) => {
    const own = ownOf(pair);
    return own === null ? null : independentLayout(own, [both], null, "separate").pairOf(both);
  };
  const layout = independentLayout(groups, pairs, design.reference, "separate");
  return compareMeans({ ...layout, pairOf }, pairs, design);
}

/**
 * The same for groups that were tried together in blocks. With a common spread the complete blocks are analysed as one:
 * one residual variance on (blocks − 1)·(groups − 1) degrees of freedom, all pairs by Tukey's studentized range, against
 * a reference by Dunnett. With separate spreads each pair is a paired t test on its shared blocks, with Bonferroni's
 * adjustment for the pairs; these stand beside the pooled ones too, since pooling rests on a claim.
 *
 * @param blocks one row a block, one value a group; null where the group was not tried
 * @returns contrasts of the pairs that were tried together
 * @throws NumericalError as for `compareGroups`
 * Source Tukey 1953, The Problem of Multiple Comparisons; Dunnett 1955; Snedecor and Cochran 1989, Statistical Methods,
 *   8th edition, chapter 14
 */
export function compareBlocks(
  blocks: readonly (readonly (number | null)[])[],
  design: GroupDesign,
): GroupComparison {
  const [first] = blocks;
  const pairs = first === undefined ? [] : pairsOf(first.length, design);
  const judged = (spread: SpreadLaw) =>
    comparison(blockLayout(blocks, pairs, design.reference, spread), pairs, design);
  const notAlike = design.spread === "common" ? judged("separate").contrasts : null;
  return { ...judged(design.spread), notAlike };
}

function pairsOf(groups: number, { reference }: GroupDesign): readonly Pair[] {
  return reference === null ? allPairs(groups) : pairsWithReference(groups, reference);
}

function comparison(
  layout: ComparisonLayout,
  pairs: readonly Pair[],
  design: GroupDesign,
): Omit<GroupComparison, "notAlike"> {
  const { method, overall } = layout;
  return { method, overall, contrasts: compareMeans(layout, pairs, design) };
}
