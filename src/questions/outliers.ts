import { sum } from "simple-statistics";
import { lastOf } from "../errors/at.ts";
import type { PooledScatter } from "../model/catch-scatter.ts";
import { newestFill } from "../model/meters.ts";
import { estimateOf, type MeterModel } from "../model/model.ts";
import { type FillFinding, isUnchecked, levels } from "../model/screening/finding.ts";
import { relativeHalfWidth } from "../model/t-estimate.ts";
import { requireModelOptions } from "../results/options.ts";
import type { OutsideVariance } from "../statistics/constant-offset.ts";
import { outliersCautions } from "./outliers/cautions.ts";
import { judgeFill, judgeStandingOut } from "./outliers/judged-fill.ts";
import { leftOutOf } from "./outliers/left-out.ts";
import { influenceOf, influenceOfEach } from "./outliers/refit.ts";
import type { Influence, Outliers, OutliersOptions } from "./outliers/result.ts";
import { screeningInBrief, screeningOf } from "./outliers/screening.ts";
import { pairOf, suspectsOf } from "./outliers/suspects.ts";

export type {
  CatchJudgement,
  CatchVerdict,
  DisagreeingPair,
  FamilyJudgement,
  FillScreening,
  Influence,
  LeftOutOfFill,
  Outliers,
  OutliersOptions,
  Suspect,
} from "./outliers/result.ts";

/**
 * Which catches should not be believed, and what may have happened?
 *
 * Each fill is a line through the origin; a catch is held against what the others of its fill predict, with the catch
 * scatter of all the meter's fills: T = (m − b't)/√(s²·t(1 + t/Σt') + d²/6·(1 + n'(t/Σt')²)), t turns and m mass of the
 * catch, b' = Σm'/Σt' of its n' fellows, s² lent and own scatter together in kg² per turn (as in the fill's delivery), d
 * the scale's division. The scatter holds rounding too, so this errs on the quiet side: T is a little smaller than without
 * d, by under 1 % at a usual scale. The farthest is taken away, then the next, at most two of five or more catches and one
 * of three or four. A catch of the newest fill stands out when it does so among its fill's catches, an earlier one when it
 * does so among all of the log's (Bonferroni); what an earlier fill shows only by itself is graded so. The model has
 * done this already; an earlier catch beyond doubt is set aside there, the newest fill's never are.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  level of intervals, the scale's division (kg, null: unknown) and massUnit
 * @returns        verdicts, influence, explanations; nothing is corrected
 * Null when       statistics of a fill with too few catches: below 5 alone, below 3 with scatter lent by others (two are
 *                 compared as a pair), with caution too-few-to-judge for the newest fill
 * Assumes         catches of a fill independent, about normal, scatter variance about proportional to turns. False alarms,
 *                 power and how often the right explanation comes first: reports/outlier-study.md
 * Source          Cook & Weisberg, Residuals and Influence in Regression (1982); Rosner, Technometrics 25 (1983) 165;
 *                 ISO 5725-2 (pooled repeatability variance)
 */
export function outliers(meter: MeterModel, options: OutliersOptions): Outliers {
  const { tests, metersInLog, scatterOfAll, findings } = meter.screening;
  const { suspects, pairs, disagree, nextFill, falseAlarms, cautions } = foundIn(
    meter,
    options,
    true,
  );
  const newest = newestFill(meter);
  const judged = findings.map((finding) => judgeFill(finding, meter.screening));
  const fills = findings.map((finding) => screeningOf(meter, finding, options));
  return {
    kind: "outliers",
    bin: meter.bin,
    product: meter.product,
    options,
    input: {
      catches: sum(findings.map(({ fill }) => fill.catches.length)),
      fills: findings.length,
      leftOut: sum(findings.map(({ fill }) => fill.leftOut.length)),
    },
    today: lastOf(fills),
    fills,
    catches: judged.flatMap(({ judgements }) => judgements.map(({ judgement }) => judgement)),
    suspects,
    pairs,
    disagree,
    influence: influenceOfEach(meter, newest, options),
    scatter: {
      before: lent(scatterOfAll),
      after: lent(meter.scatter),
      setAside: findings.flatMap(({ fill }) =>
        fill.notLent.map((row) => ({ fill: row.fill, catch: row.catch })),
      ),
      homogeneity: meter.scatter.homogeneity,
    },
    nextFill,
    falseAlarms,
    tests,
    metersInLog,
    leftOut: leftOutOf(meter, options),
    cautions,
  };
}

/** Which findings `outliers` has; what may have happened to a catch is not looked into. */
export function outliersInBrief(
  meter: MeterModel,
  options: OutliersOptions,
): Pick<Outliers, "cautions"> {
  return foundIn(meter, options, false);
}

/** The findings, and what they are made from, without what is drawn or told of catches that are in line. */
function foundIn(meter: MeterModel, options: OutliersOptions, isExplained: boolean) {
  requireModelOptions(options);
  const { findings } = meter.screening;
  const judged = findings
    .filter(somethingStandsOut)
    .map((finding) => judgeStandingOut(finding, meter.screening));
  const found = {
    bin: meter.bin,
    product: meter.product,
    today: screeningInBrief(lastOf(findings)),
    suspects: judged.flatMap((one) => suspectsOf(meter, one, options, isExplained)),
    withoutBoth: withoutBoth(meter, lastOf(findings), options),
    pairs: judged.flatMap((one) => pairOf(one) ?? []),
    disagree: estimateOf(meter, newestFill(meter), options).disagree,
    nextFill: {
      halfWidth: relativeHalfWidth(meter.across.nextFill),
      withAll: meter.withAll?.nextFillHalfWidth ?? null,
    },
    falseAlarms,
    fillsJudged: findings.length,
    setAside: sum(
      judged.map(
        ({ judgements }) =>
          judgements.filter(({ judgement }) => judgement.verdict === "set aside").length,
      ),
    ),
  };
  return { ...found, cautions: outliersCautions(found) };
}

function withoutBoth(
  meter: MeterModel,
  { fill, isPair, inFill }: FillFinding,
  options: OutliersOptions,
): Influence | null {
  const unchecked = inFill.filter(isUnchecked);
  return isPair || unchecked.length < 2 ? null : influenceOf(meter, fill, unchecked, options);
}

function somethingStandsOut({ inFill, inLog, setAside }: FillFinding): boolean {
  return inFill.length > 0 || inLog.length > 0 || setAside.length > 0;
}

function lent({ variance, df }: PooledScatter): OutsideVariance | null {
  return variance === null ? null : { variance, df };
}

/** 1 − level without what floating point adds to it. */
const alarmRate = (level: number) => Number((1 - level).toPrecision(3));

const falseAlarms = {
  told: alarmRate(levels.told),
  lookFirst: alarmRate(levels.lookFirst),
  setAside: alarmRate(levels.setAside),
} as const;
