import { at } from "../../errors/at.ts";
import type { Fill } from "../../model/meters.ts";
import type { FillName } from "../../results/fill-name.ts";
import {
  type CusumPoint,
  cusumChart,
  type EwmaPoint,
  ewmaChart,
} from "../../statistics/control-charts.ts";
import { type AgainstEarlier, normalScore } from "./as-they-came.ts";

/** Charts that remember earlier fills. They are for the eye: nothing here decides the verdict. */
export interface ScoreCharts {
  readonly ewma: { readonly weight: number; readonly width: number };
  readonly cusum: { readonly allowance: number; readonly decision: number };
  readonly points: readonly {
    readonly fill: FillName;
    /** How far the fill is from the earlier ones, as a standard normal value. */
    readonly score: number;
    readonly ewma: EwmaPoint;
    readonly cusum: CusumPoint;
  }[];
}

// A weight of 0.3 with limits at 2.7 keeps a steady season of up to twelve fills inside 95 times in 100; an allowance of a
// half with a decision at 3 one of up to seven, and longer ones less often. reports/drift-study.md has the rates.
const ewma = { weight: 0.3, width: 2.7 };
const cusum = { allowance: 0.5, decision: 3 };

/** Of a meter whose fills are too few to score. */
export const noScores: ScoreCharts = { ewma, cusum, points: [] };

/** EWMA and CUSUM of the normal scores, from the third fill on. */
export function scoreCharts(
  fills: readonly Fill[],
  judged: readonly (AgainstEarlier | null)[],
): ScoreCharts {
  const scored = judged.flatMap((one, i) =>
    one === null ? [] : [{ fill: at(fills, i).fill, score: normalScore(one) }],
  );
  const scores = scored.map(({ score }) => score);
  const averages = ewmaChart(scores, { target: 0, standardDeviation: 1, ...ewma });
  const sums = cusumChart(scores, { target: 0, ...cusum });
  return {
    ewma,
    cusum,
    points: scored.map((point, i) => ({ ...point, ewma: at(averages, i), cusum: at(sums, i) })),
  };
}
