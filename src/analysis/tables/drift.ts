import type { PlainRow } from "../../data/write-csv.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Analysis } from "../analyse.ts";
import { estimateCells, rowsOfEach } from "./cells.ts";
import { placeFrom1 } from "./fills.ts";

function ofEach(
  analysis: Analysis,
  rowsOf: (drift: Drift) => readonly PlainRow[],
): readonly PlainRow[] {
  return rowsOfEach(analysis, ({ drift }) => drift, rowsOf);
}

/** What was decided after each fill, whether the meter has moved: one row a fill, with its place on the charts of scores. */
export function driftStepTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, ({ fills, scoreCharts }) => {
    const points = new Map(scoreCharts.points.map((one) => [one.fill, one]));
    return fills.map(({ fill, takenAt, catches, stretch, step }, i) => {
      const point = points.get(fill);
      return {
        fill,
        place_in_time: i + 1,
        taken_at: takenAt,
        catches,
        outcome: step?.outcome ?? null,
        settled: step?.settled ?? null,
        p: step?.pValue ?? null,
        evidence: step?.evidence ?? null,
        evidence_limit: step?.limit ?? null,
        stretch: placeFrom1(stretch),
        score: point?.score ?? null,
        ewma: point?.ewma.value ?? null,
        ewma_lower: point?.ewma.lower ?? null,
        ewma_upper: point?.ewma.upper ?? null,
        cusum_lower: point?.cusum.lower ?? null,
        cusum_upper: point?.cusum.upper ?? null,
        cusum_signal: point?.cusum.signal ?? null,
      };
    });
  });
}

/** The stretches of one level: one row a stretch, the last in force. */
export function driftStretchTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, ({ stretches }) =>
    stretches.map(({ from, to, fills, begins, mean }, i) => ({
      stretch: i + 1,
      from_fill: from,
      to_fill: to,
      fills,
      begins,
      mean_kg_per_turn: mean,
    })),
  );
}

interface DriftTest {
  readonly test: string;
  /** Whether the verdict rests on it; the others explain. */
  readonly decides: boolean;
  readonly since?: FillName;
  readonly fillsBefore?: number;
  readonly fillsSince?: number;
  readonly estimate?: Estimate;
  readonly statistic?: number;
  readonly pValue?: number | null;
  readonly adjusted?: number;
  readonly evidence?: number | null;
  readonly limit?: number | null;
}

/** Every test of whether the meter has moved: one row a test, those that decide before those that explain. */
export function driftTestTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, (drift) =>
    [...deciding(drift), ...atTheEnd(drift), ...byName(drift), ...settling(drift)].map(
      (one): PlainRow => ({
        test: one.test,
        decides: one.decides,
        since_fill: one.since ?? null,
        fills_before: one.fillsBefore ?? null,
        fills_since: one.fillsSince ?? null,
        ...estimateCells(one.estimate ?? null),
        statistic: one.statistic ?? null,
        p: one.pValue ?? null,
        p_adjusted: one.adjusted ?? null,
        evidence: one.evidence ?? null,
        evidence_limit: one.limit ?? null,
      }),
    ),
  );
}

function deciding({ changes, differs, trending }: Drift): readonly DriftTest[] {
  return [
    ...changes.map(({ since, size, fillsBefore, fillsSince, pValue, evidence, limit }) => ({
      test: "lasting shift found",
      decides: true,
      since: since.fill,
      fillsBefore,
      fillsSince,
      estimate: size,
      pValue,
      evidence,
      limit,
    })),
    ...(differs === null
      ? []
      : [
          {
            test: "newest fill against earlier ones",
            decides: true,
            since: differs.fill,
            fillsBefore: differs.earlierFills,
            fillsSince: 1,
            estimate: differs.difference,
            pValue: differs.pValue,
          },
        ]),
    ...(trending === null
      ? []
      : [
          {
            test: "trend found",
            decides: true,
            since: trending.from.fill,
            fillsSince: trending.fills,
            estimate: trending.perFill,
            evidence: trending.evidence,
            limit: trending.limit,
          },
        ]),
  ];
}

/** Looked at once, after the last fill. */
function atTheEnd({ trend, shift }: Drift): readonly DriftTest[] {
  return [
    ...(trend === null
      ? []
      : [
          {
            test: "slope over all fills",
            decides: false,
            estimate: trend.relativePerFill,
            statistic: trend.statistic,
            pValue: trend.pValue,
            adjusted: trend.adjustedPValue,
          },
        ]),
    ...(shift === null
      ? []
      : [
          {
            test: "largest shift over all fills",
            decides: false,
            since: shift.since.fill,
            fillsBefore: shift.fillsBefore,
            fillsSince: shift.fillsAfter,
            estimate: shift.relativeSize,
            statistic: shift.statistic,
            pValue: shift.pValue,
            adjusted: shift.adjustedPValue,
          },
        ]),
  ];
}

function byName({ byName: named }: Drift): readonly DriftTest[] {
  if (named === null) return [];
  const { mannKendall, theilSenPerFill } = named;
  const slope = { standardError: null, df: null, interval: null } as const;
  return [
    {
      test: "Mann-Kendall",
      decides: false,
      statistic: mannKendall.score,
      pValue: mannKendall.pValue,
    },
    {
      test: "Theil-Sen slope",
      decides: false,
      estimate: { value: theilSenPerFill, unit: "kg/turn/fill", ...slope },
    },
  ];
}

function settling({ settling: tests }: Drift): readonly DriftTest[] {
  return tests.flatMap(
    ({ scope, against, perCatch, emptyToFull, statistic, pValue, adjustedPValue }) => {
      const estimate = perCatch ?? emptyToFull;
      return {
        test: `settling ${scope} against ${against}`,
        decides: false,
        ...(estimate === null ? {} : { estimate }),
        statistic,
        pValue,
        adjusted: adjustedPValue,
      };
    },
  );
}
