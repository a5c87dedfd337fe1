import type { PlainRow } from "../../data/write-csv.ts";
import type { Estimate, Interval } from "../../results/estimate.ts";
import type { RatioSet } from "../../statistics/ratio-interval.ts";
import type { Analysis, MeterAnswers } from "../analyse.ts";

/** An estimate as the cells of a row; null: every cell is empty, so that a table keeps its columns. */
export function estimateCells(estimate: Estimate | null): PlainRow {
  return {
    value: estimate?.value ?? null,
    unit: estimate?.unit ?? null,
    standard_error: estimate?.standardError ?? null,
    df: estimate?.df ?? null,
    ...intervalCells(estimate?.interval ?? null),
  };
}

export function intervalCells(interval: Interval | null): PlainRow {
  return {
    lower: interval?.lower ?? null,
    upper: interval?.upper ?? null,
    level: interval?.level ?? null,
  };
}

/** The ends of an interval that is not the row's main one. */
export function endCells(
  name: string,
  interval: { readonly lower: number | null; readonly upper: number | null } | null,
  factor: number | null = 1,
): PlainRow {
  const scaled = (end: number | null | undefined) =>
    end == null || factor === null ? null : end * factor;
  return {
    [`${name}_lower`]: scaled(interval?.lower),
    [`${name}_upper`]: scaled(interval?.upper),
  };
}

/** The same of ratios; a set that is no interval has no ends. */
export function setCells(name: string, set: RatioSet | null): PlainRow {
  return endCells(name, set?.shape === "interval" ? set : null);
}

/** The rows of one answer about every bin and product, each with whose it is; where there is no answer, there is no row. */
export function rowsOfEach<A>(
  { meters }: Analysis,
  answerOf: (answers: MeterAnswers) => A | null,
  rowsOf: (answer: A) => readonly PlainRow[],
): readonly PlainRow[] {
  return meters.flatMap((answers) => {
    const answer = answerOf(answers);
    const { bin, product } = answers;
    return answer === null ? [] : rowsOf(answer).map((row) => ({ bin, product, ...row }));
  });
}
