import { sum } from "simple-statistics";
import { newestFill } from "../model/meters.ts";
import type { MeterModel } from "../model/model.ts";
import { requireModelOptions } from "../results/options.ts";
import { outlierCautions } from "./outliers/cautions.ts";
import { judgeFill } from "./outliers/judge-catch.ts";
import { findInFill, type JudgingRule, testsInLog } from "./outliers/judge-fill.ts";
import { leftOutOf } from "./outliers/left-out.ts";
import { influenceOfEach } from "./outliers/refit.ts";
import type { OutlierOptions, Outliers } from "./outliers/result.ts";
import { screenHistory } from "./outliers/screened-history.ts";
import { screeningOf } from "./outliers/screening.ts";
import { pairOf, suspectsOf } from "./outliers/suspects.ts";

export type {
  CatchJudgement,
  CatchVerdict,
  DisagreeingPair,
  FamilyJudgement,
  FillScreening,
  Influence,
  LeftOutOfFill,
  OutlierOptions,
  Outliers,
  Suspect,
} from "./outliers/result.ts";

/**
 * Which catches should not be believed, and what may have happened?
 *
 * Each fill is a line through the origin; a catch is held against what the others of its fill predict, with the catch
 * scatter of all the meter's fills: T = (m − b't)/√(s²·t(1 + t/Σt') + d²/6·(1 + n'(t/Σt')²)), t turns and m mass of the
 * catch, b' = Σm'/Σt' of its n' fellows, s² pooled in kg² per turn, d the scale's division. The scatter holds rounding
 * too, so this errs on the quiet side: T is a little smaller than without d, by under 1 % at a usual scale. The
 * farthest is taken away, then the next, at most two of five or more catches and one of three or four. A catch of the
 * newest fill stands out when it does so among its fill's catches, an earlier one when it does so among all of the
 * log's (Bonferroni); what an earlier fill shows only by itself is graded so. Catches with p < 0.001 by themselves do
 * not speak for the scatter lent to others.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  level of intervals, screeningLevel, metersInLog, massUnit, the scale's division (kg, null: unknown)
 * @returns        verdicts, influence, explanations; nothing is left out or corrected
 * Null when       statistics of a fill with too few catches: below 5 alone, below 3 with scatter lent by others (two are
 *                 compared as a pair), with caution too-few-to-judge for the newest fill
 * Assumes         catches of a fill independent, about normal, scatter variance about proportional to turns. False alarms,
 *                 power and how often the right explanation comes first: reports/outlier-study.md
 * Source          Cook & Weisberg, Residuals and Influence in Regression (1982); Rosner, Technometrics 25 (1983) 165;
 *                 ISO 5725-2 (pooled repeatability variance)
 */
export function outliers(meter: MeterModel, options: OutlierOptions): Outliers {
  requireModelOptions(options);
  const history = screenHistory(meter.fills, options.scaleDivisionKg);
  const tests = testsInLog(history);
  const rule: JudgingRule = {
    level: options.screeningLevel,
    testsInLog: Math.max(1, tests * options.metersInLog),
    divisionKg: options.scaleDivisionKg,
  };
  const newest = newestFill(meter);
  const today = findInFill(newest, history, rule);
  const judged = meter.fills.map((fill) =>
    judgeFill(fill === newest ? today : findInFill(fill, history, rule), rule, fill === newest),
  );
  const fills = judged.map(({ finding }) => screeningOf(meter, finding, options));
  const found = {
    bin: meter.bin,
    product: meter.product,
    options,
    input: {
      catches: sum(meter.fills.map(({ totals }) => totals.catches)),
      fills: meter.fills.length,
      leftOut: sum(meter.fills.map(({ leftOut }) => leftOut.length)),
    },
    today: screeningOf(meter, today, options),
    fills,
    catches: judged.flatMap(({ judgements }) => judgements.map(({ judgement }) => judgement)),
    suspects: judged.flatMap((one) => suspectsOf(meter, one, options, rule)),
    pairs: judged.flatMap((one) => pairOf(one) ?? []),
    influence: influenceOfEach(meter, newest, options),
    scatter: {
      before: history.before,
      after: history.after,
      setAside: history.setAside.map((row) => ({ fill: row.fill, catch: row.catch })),
      homogeneity: history.homogeneity,
    },
    testsInLog: tests,
    leftOut: leftOutOf(meter, options),
  };
  return { kind: "outliers", ...found, cautions: outlierCautions(found) };
}
