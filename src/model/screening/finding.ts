import type { Catch } from "../../data/types.ts";
import { at } from "../../errors/at.ts";
import type { OutsideVariance } from "../../statistics/constant-offset.ts";
import {
  allowedP,
  type DeletionStep,
  deletionSteps,
  exceeds,
  type FamilyRule,
  familyOf,
  firstLook,
  limitBelow,
  outlyingOf,
} from "../../statistics/deleted-residuals.ts";
import type { JudgedPoint } from "../../statistics/predicting-line.ts";
import type { Fill } from "../meters.ts";
import { readingVariance } from "../reading.ts";
import { type FillTotals, totalsOf } from "../totals.ts";

/** Which catches of a fill stand out, before anything is made of it. */
export interface FillFinding {
  /** With every catch that the person lets count, those that are set aside among them. */
  readonly fill: Fill;
  readonly isNewest: boolean;
  readonly status: "judged" | "too few to judge" | "nothing to compare with";
  /** Scatter the other fills lend, kg²/turn at the delivery of this one; null: own catches alone. */
  readonly outside: OutsideVariance | null;
  /** True for a fill of two: what stands out is their difference. */
  readonly isPair: boolean;
  /** Of the two catches of a pair; null: no pair, not judged, or nowhere near standing out. */
  readonly pairPValue: number | null;
  /** With the fill as the family, at `levels.told`. */
  readonly inFill: readonly Catch[];
  /** The same at `levels.lookFirst`. */
  readonly inFillStrictly: readonly Catch[];
  /** With all catch tests of the log as the family, at `levels.told`. */
  readonly inLog: readonly Catch[];
  /** Left out of every figure: with the log as the family, at `levels.setAside`; never of the newest fill. */
  readonly setAside: readonly Catch[];
  /**
   * True when still more catches stand out, at `levels.lookFirst`, than a fill of this size can tell apart, or when those
   * that do not, alone in the log, scatter by more than `grossScatter`: several wrong ones hide behind each other.
   */
  readonly moreThanCanBeTold: boolean;
}

/** Chance that clean catches pass the test, by what follows from failing it. */
export const levels = {
  /** One false flag in twenty clean fills, or clean logs, is what a person will still look into. */
  told: 0.95,
  /** Looking into something before the drive is set costs time in the field: one false call in a hundred fills. */
  lookFirst: 0.99,
  /** What speaks for the scatter of other fills: set aside at 0.95, clean histories lend too little scatter. */
  lent: 0.99,
  /** A figure changes by it: one clean log in a hundred loses a catch. */
  setAside: 0.99,
} as const;

/** Tests that a fill belongs to. */
export interface FindingRule {
  /** Of the whole log, every meter's. */
  readonly testsInLog: number;
  readonly divisionKg: number | null;
}

/**
 * Catches of a fill of five or more that scatter by more than this share of their mass cannot all be right: as a
 * standard deviation what a range of 0.15 is in three catches (mean range 1.69 of them; NIST/SEMATECH e-Handbook 6.3.2).
 * A judgement; of clean catches that scatter by 5 % one fill of five in a hundred does, by 4 % one in two thousand.
 */
export const grossScatter = 0.09;
const fewestAlone = 5;
const fewestWithOthers = 3;
const catchesForTwo = 5;

/** How many catches of a fill may be taken away: two of five or more, else one. */
function mostOfFill(catches: number): number {
  return catches >= catchesForTwo ? 2 : 1;
}

/**
 * Share of the error rate that a second look at a fill gets: with it false alarms stay at 5–6 %, and with lent scatter
 * two bad catches of five or more are still found. reports/outlier-study.md, section 2.
 */
export const laterShare = { lent: 0.5, alone: 0.25 } as const;

/** A catch as a point of its fill's line, with the error of reading gross and tare. */
export function judgedPoint(row: Catch, divisionKg: number | null): JudgedPoint {
  return {
    x: row.turns,
    y: row.netKg,
    knownVariance: readingVariance(row.divisionKg ?? divisionKg ?? 0),
  };
}

/** Tests that a fill of so many catches makes; 0: too few to judge one of them. */
export function testsOf(catches: number, outside: OutsideVariance | null): number {
  if (outside === null) return catches >= fewestAlone ? catches : 0;
  return catches >= fewestWithOthers || catches === 2 ? familyOf(catches) : 0;
}

const noCatches: readonly Catch[] = [];

/** Looks for catches of one fill that stand out, first with the fill as the family, then with the log. */
export function findInFill(
  fill: Fill,
  outside: OutsideVariance | null,
  isNewest: boolean,
  { testsInLog, divisionKg }: FindingRule,
): FillFinding {
  const isPair = fill.catches.length === 2;
  const hidden = (named: readonly Catch[]) =>
    outside === null && scatterGrossly(fill.catches.filter((row) => !named.includes(row)));
  const nothing = (status: FillFinding["status"], judgedAsPair = false): FillFinding => ({
    fill,
    isNewest,
    status,
    outside,
    isPair: judgedAsPair,
    pairPValue: null,
    inFill: noCatches,
    inFillStrictly: noCatches,
    inLog: noCatches,
    setAside: noCatches,
    moreThanCanBeTold: false,
  });
  if (testsOf(fill.catches.length, outside) === 0) return nothing("too few to judge");
  if (nothingCanStandOut(fill.totals, outside, levels.told)) return nothing("judged", isPair);
  const most = mostOfFill(fill.catches.length);
  const points = fill.catches.map((row) => judgedPoint(row, divisionKg));
  // What stands out at none of the levels below does not at this one, the least strict of them.
  const look = firstLook(points, outside, most, ruleFor(outside, levels.told));
  if (look === "no scatter to compare with") return nothing("nothing to compare with");
  if (look === "nothing stands out" && !isPair)
    return { ...nothing("judged"), moreThanCanBeTold: hidden(noCatches) };
  const steps = deletionSteps(points, outside, most + 1);
  const at = (level: number, comparisons?: number) =>
    outlying(fill.catches, steps.slice(0, most), ruleFor(outside, level, comparisons));
  const [first, next] = [steps[0], steps[most]];
  const inFill = at(levels.told);
  return {
    ...nothing("judged", isPair),
    pairPValue: isPair ? (first?.pValue ?? null) : null,
    inFill,
    inFillStrictly: at(levels.lookFirst),
    inLog: at(levels.told, testsInLog),
    setAside: isNewest ? [] : at(levels.setAside, testsInLog).filter(isUnchecked),
    moreThanCanBeTold:
      (inFill.length === most &&
        inFill.some(isUnchecked) &&
        next !== undefined &&
        exceeds(next, most, ruleFor(outside, levels.lookFirst))) ||
      hidden(inFill),
  };
}

/** Relative scatter of a catch of their mean turns, √(s²/t̄) over the delivery. */
function scatterGrossly(catches: readonly Catch[]): boolean {
  const { catches: n, turns, massKg, scatterSum } = totalsOf(catches.filter(isUnchecked));
  return (
    n >= fewestWithOthers && Math.sqrt((scatterSum * n * turns) / (n - 1)) > grossScatter * massKg
  );
}

/** Catches that fail the test of their fill at a level; of a pair both. */
export function outlyingIn(
  { catches, totals }: Pick<Fill, "catches" | "totals">,
  outside: OutsideVariance | null,
  level: number,
  divisionKg: number | null,
): readonly Catch[] {
  if (nothingCanStandOut(totals, outside, level)) return [];
  const points = catches.map((row) => judgedPoint(row, divisionKg));
  const most = mostOfFill(catches.length);
  const rule = ruleFor(outside, level);
  return firstLook(points, outside, most, rule) === "something may"
    ? outlying(catches, deletionSteps(points, outside, most), rule)
    : [];
}

/** Whether nobody has vouched for a catch: what somebody looked at and found genuine is never set aside. */
export function isUnchecked({ checked }: Catch): boolean {
  // A catch made by hand may not have the column at all.
  return checked == null;
}

/**
 * Whether no catch can stand out at any of the steps that are looked at: a deleted residual's square is at most all squares
 * of the fill over the least that the scatter can be, the lent one alone. Most fills of a clean log are done with here.
 */
function nothingCanStandOut(
  { catches, scatterSum }: FillTotals,
  outside: OutsideVariance | null,
  level: number,
): boolean {
  if (outside === null || outside.variance <= 0) return false;
  const rule = ruleFor(outside, level);
  const lent = outside.df * outside.variance;
  for (let i = 0; i < mostOfFill(catches) && catches - i >= 2; i++) {
    const df = outside.df + catches - i - 2;
    const limit = limitBelow(allowedP(catches - i, i, rule), df);
    if (!(scatterSum * df < lent * limit ** 2)) return false;
  }
  return true;
}

function ruleFor(outside: OutsideVariance | null, level: number, comparisons?: number): FamilyRule {
  const rule = { level, laterShare: laterShare[outside === null ? "alone" : "lent"] };
  return comparisons === undefined ? rule : { ...rule, comparisons: () => comparisons };
}

function outlying(
  catches: readonly Catch[],
  steps: readonly DeletionStep[],
  rule: FamilyRule,
): readonly Catch[] {
  const places = outlyingOf(steps, rule);
  if (catches.length === 2) return places.length === 0 ? [] : catches;
  return places.map((place) => at(catches, place));
}
