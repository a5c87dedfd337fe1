import type { Catch } from "../../data/types.ts";
import type { Fill } from "../../model/meters.ts";
import type { OutsideVariance } from "../../statistics/constant-offset.ts";
import {
  deletionSteps,
  exceeds,
  familyOf,
  outlyingOf,
} from "../../statistics/deleted-residuals.ts";
import { judgedPoint, lentTo, mostOfFill, type ScreenedHistory } from "./screened-history.ts";

/** Which catches of a fill stand out, before anything is made of it. */
export interface FillFinding {
  readonly fill: Fill;
  readonly status: "judged" | "too few to judge" | "nothing to compare with";
  /** Scatter the other fills lend; null: own catches alone. */
  readonly outside: OutsideVariance | null;
  /** True for a fill of two: what stands out is their difference. */
  readonly isPair: boolean;
  /** With the fill as the family. */
  readonly inFill: ReadonlySet<Catch>;
  /** With the whole log as the family. */
  readonly inLog: ReadonlySet<Catch>;
  readonly moreThanCanBeTold: boolean;
}

export interface JudgingRule {
  readonly level: number;
  /** Tests in the log's family. */
  readonly testsInLog: number;
  readonly divisionKg: number | null;
}

/** Fewest degrees of freedom with which other fills can speak. */
const fewestLentDf = 2;
const fewestAlone = 5;
const fewestWithOthers = 3;

/**
 * Share of the error rate that a second look at a fill gets: with it false alarms stay at 5–6 %, and with lent scatter
 * two bad catches of five or more are still found. reports/outlier-study.md, section 2.
 */
export const laterShare = { lent: 0.5, alone: 0.25 } as const;

/** Looks for catches of one fill that stand out, first with the fill as the family, then with the log. */
export function findInFill(
  fill: Fill,
  history: ScreenedHistory,
  { level, testsInLog, divisionKg }: JudgingRule,
): FillFinding {
  const outside = scatterFor(fill, history);
  const none = { fill, outside, isPair: false, inFill: new Set<Catch>(), inLog: new Set<Catch>() };
  if (testsOf(fill, outside) === 0)
    return { ...none, status: "too few to judge", moreThanCanBeTold: false };
  const points = fill.catches.map((row) => judgedPoint(row, divisionKg));
  const most = mostOfFill(points.length);
  const steps = deletionSteps(points, outside, most + 1);
  if (steps.length === 0)
    return { ...none, status: "nothing to compare with", moreThanCanBeTold: false };
  const rule = { level, laterShare: laterShare[outside ? "lent" : "alone"] };
  const inFill = outlyingOf(steps.slice(0, most), rule);
  const inLog = outlyingOf(steps.slice(0, most), { ...rule, comparisons: () => testsInLog });
  const isPair = points.length === 2;
  const catchesAt = (places: readonly number[]) =>
    new Set(
      isPair && places.length > 0 ? fill.catches : places.flatMap((i) => fill.catches[i] ?? []),
    );
  const next = steps[most];
  return {
    fill,
    status: "judged",
    outside,
    isPair,
    inFill: catchesAt(inFill),
    inLog: catchesAt(inLog),
    moreThanCanBeTold: inFill.length === most && next !== undefined && exceeds(next, most, rule),
  };
}

/** Tests that the fills of a meter add to the family of the log. */
export function testsInLog(history: ScreenedHistory): number {
  return [...history.kept.keys()].reduce(
    (tests, fill) => tests + testsOf(fill, scatterFor(fill, history)),
    0,
  );
}

function scatterFor(fill: Fill, history: ScreenedHistory): OutsideVariance | null {
  const lent = lentTo(fill, history);
  return lent !== null && lent.df >= fewestLentDf ? lent : null;
}

function testsOf({ catches }: Fill, outside: OutsideVariance | null): number {
  const n = catches.length;
  if (outside === null) return n >= fewestAlone ? n : 0;
  return n >= fewestWithOthers || n === 2 ? familyOf(n) : 0;
}
