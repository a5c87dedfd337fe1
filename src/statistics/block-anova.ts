import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { fUpperTail } from "../numeric/distributions/f.ts";
import { requireFinite } from "../numeric/domain.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { accurateSum } from "../numeric/summation.ts";
import { mean } from "./summary.ts";
import type { MeansTest } from "./welch.ts";

/** Analysis of variance of complete blocks, one value a block and treatment. */
export interface BlockAnova {
  readonly treatmentMeans: readonly number[];
  readonly blockSumOfSquares: number;
  readonly treatmentSumOfSquares: number;
  readonly errorSumOfSquares: number;
  /** (blocks − 1)·(treatments − 1). */
  readonly errorDf: number;
  readonly errorMeanSquare: number;
  /** F test of equal treatments; null where no error is left to compare with. */
  readonly test: MeansTest | null;
}

/**
 * Do treatments differ when each was tried once in every block? Two-way analysis of variance without interaction: what
 * a block shares is taken out, the error is what treatments differ by from block to block.
 *
 * @param blocks at least 2 rows, one a block, each with one finite value for each of at least 2 treatments
 * @throws NumericalError when there are too few, a row has another length, or a value is not finite
 * Source Snedecor and Cochran 1989, Statistical Methods, 8th edition, chapter 14
 */
export function blockAnova(blocks: readonly (readonly number[])[]): BlockAnova {
  const treatments = blocks[0]?.length ?? 0;
  check(blocks, treatments);
  const blockMeans = blocks.map(mean);
  const treatmentMeans = Array.from({ length: treatments }, (_, j) =>
    mean(blocks.map((block) => at(block, j))),
  );
  const grand = mean(blockMeans);
  const residuals = blocks.flatMap((block, i) =>
    block.map((value, j) => value - at(blockMeans, i) - (at(treatmentMeans, j) - grand)),
  );
  const squares = (values: readonly number[]) => accurateSum(values.map((value) => value ** 2));
  const treatmentSumOfSquares = blocks.length * squares(treatmentMeans.map((m) => m - grand));
  const errorDf = (blocks.length - 1) * (treatments - 1);
  const errorSumOfSquares = squares(residuals);
  const errorMeanSquare = errorSumOfSquares / errorDf;
  const known = !isDust(Math.sqrt(errorMeanSquare), grand);
  return {
    treatmentMeans,
    blockSumOfSquares: treatments * squares(blockMeans.map((m) => m - grand)),
    treatmentSumOfSquares,
    errorSumOfSquares,
    errorDf,
    errorMeanSquare,
    test: known
      ? fTest(treatmentSumOfSquares / (treatments - 1) / errorMeanSquare, treatments - 1, errorDf)
      : null,
  };
}

function fTest(statistic: number, df1: number, df2: number): MeansTest {
  return { statistic, df1, df2, pValue: fUpperTail(statistic, df1, df2) };
}

function check(blocks: readonly (readonly number[])[], treatments: number): void {
  if (blocks.length < 2 || treatments < 2) {
    throw new NumericalError(
      `blockAnova: ${blocks.length} blocks of ${treatments} treatments; at least 2 of each are needed.`,
    );
  }
  blocks.forEach((block, i) => {
    if (block.length !== treatments) {
      throw new NumericalError(
        `blockAnova: block ${i + 1} has ${block.length} values; it needs ${treatments}.`,
      );
    }
    block.forEach((value, j) => {
      requireFinite("blockAnova", `block ${i + 1}, treatment ${j + 1}`, value);
    });
  });
}
