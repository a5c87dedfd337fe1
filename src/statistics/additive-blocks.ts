import { at } from "../errors/at.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { groupBy } from "../numeric/group-by.ts";
import { leastSquares } from "../numeric/least-squares.ts";
import { quadraticForm } from "../numeric/linear-algebra.ts";
import { type NestedTest, nestedTest } from "./nested-test.ts";
import { mean, squaresWithin } from "./summary.ts";

/** A value of one treatment in one block. */
export interface BlockedValue {
  readonly block: string;
  readonly treatment: string;
  readonly value: number;
}

/** A treatment against the plain mean of all of them, what blocks share taken out. */
export interface TreatmentEffect {
  readonly treatment: string;
  readonly value: number;
  readonly standardError: number;
  readonly lower: number;
  readonly upper: number;
}

export interface AdditiveBlocks {
  readonly test: NestedTest;
  /** In the order in which the values first name them; they sum to zero. */
  readonly effects: readonly TreatmentEffect[];
  /** Of the error: values − blocks − treatments + 1. */
  readonly df: number;
}

/**
 * Do treatments differ when blocks hold some of them, once or more? Additive two-way layout without interaction, by least
 * squares on values and treatments taken from their block's mean; F test of the treatments after the blocks.
 *
 * @param level of the effects' t intervals
 * @returns null with one treatment, without degrees of freedom or scatter for an error, and where blocks and treatments
 *          fall apart into parts that share neither, so that some treatments were never compared
 * Source   Searle 1987, Linear Models for Unbalanced Data, chapter 4
 */
export function additiveBlocks(
  values: readonly BlockedValue[],
  level: number,
): AdditiveBlocks | null {
  const treatments = [...new Set(values.map(({ treatment }) => treatment))];
  const blocks = [...groupBy(values, ({ block }) => block).values()];
  const df = values.length - blocks.length - (treatments.length - 1);
  if (treatments.length < 2 || df < 1 || !areConnected(values)) return null;
  const coded = blocks.flatMap((block) => withinBlock(block, treatments));
  const y = coded.map(({ value }) => value);
  const fit = leastSquares(
    coded.map(({ row }) => row),
    y,
  );
  const { residualSumOfSquares } = fit;
  const blocksOnly = {
    residualSumOfSquares: blocks.reduce(
      (sum, block) => sum + squaresWithin(block.map(({ value }) => value)).squares,
      0,
    ),
    df: values.length - blocks.length,
  };
  const all = values.map(({ value }) => value);
  const test = nestedTest(blocksOnly, { residualSumOfSquares, df }, all);
  if (test === null) return null;
  const half = studentTQuantile((1 + level) / 2, df);
  return {
    test,
    df,
    effects: treatments.map((treatment, l) => {
      const combination = code(l, treatments.length);
      const value = combination.reduce((sum, c, j) => sum + c * at(fit.coefficients, j), 0);
      const standardError = Math.sqrt(
        (residualSumOfSquares / df) * quadraticForm(fit.unscaledCovariance, combination),
      );
      return {
        treatment,
        value,
        standardError,
        lower: value - half * standardError,
        upper: value + half * standardError,
      };
    }),
  };
}

/** Coefficients that sum to zero: the last treatment is minus all the others. */
function code(treatment: number, treatments: number): readonly number[] {
  return Array.from({ length: treatments - 1 }, (_, j) =>
    treatment === treatments - 1 ? -1 : treatment === j ? 1 : 0,
  );
}

function withinBlock(block: readonly BlockedValue[], treatments: readonly string[]) {
  const rows = block.map(({ treatment }) => code(treatments.indexOf(treatment), treatments.length));
  const centers = at(rows, 0).map((_, j) => mean(rows.map((row) => at(row, j))));
  const center = mean(block.map(({ value }) => value));
  return block.map(({ value }, i) => ({
    value: value - center,
    row: at(rows, i).map((one, j) => one - at(centers, j)),
  }));
}

/** Whether one can get from any value to any other by steps within a block or within a treatment. */
function areConnected(values: readonly BlockedValue[]): boolean {
  const byBlock = groupBy(values, ({ block }) => block);
  const byTreatment = groupBy(values, ({ treatment }) => treatment);
  const reached = new Set<BlockedValue>();
  const next = values.slice(0, 1);
  for (let one = next.pop(); one !== undefined; one = next.pop()) {
    if (reached.has(one)) continue;
    reached.add(one);
    next.push(...(byBlock.get(one.block) ?? []), ...(byTreatment.get(one.treatment) ?? []));
  }
  return reached.size === values.length;
}
