import type { Catch } from "../../data/types.ts";
import {
  type FillFinding,
  type FindingRule,
  judgedPoint,
  laterShare,
  levels,
} from "../../model/screening/finding.ts";
import {
  type FamilyJudgement,
  familyOf,
  judgeInFamily,
} from "../../statistics/deleted-residuals.ts";
import { linesTakenOutOf } from "../../statistics/farthest-point.ts";
import { lineOf, type PredictingLine, residualFrom } from "../../statistics/predicting-line.ts";
import type { CatchJudgement, CatchVerdict } from "./result.ts";

/** A fill's finding with the judgement of each of its catches. */
export interface JudgedFill {
  readonly finding: FillFinding;
  readonly judgements: readonly { readonly row: Catch; readonly judgement: CatchJudgement }[];
}

export function judgeFill(finding: FillFinding, rule: FindingRule): JudgedFill {
  return judgedOf(finding.fill.catches, finding, rule);
}

/** The same of those catches alone that stand out, or of a pair of which one would. */
export function judgeStandingOut(finding: FillFinding, rule: FindingRule): JudgedFill {
  const { catches } = finding.fill;
  const rows = finding.isPair
    ? catches
    : catches.filter((row) => familyOfVerdict(row, finding) !== null);
  return judgedOf(rows, finding, rule);
}

function judgedOf(rows: readonly Catch[], finding: FillFinding, rule: FindingRule): JudgedFill {
  const sound = soundOthersOf(finding, rule);
  const judgements = rows.map((row) => ({
    row,
    judgement: judgeCatch(row, finding, rule, sound(row)),
  }));
  return { finding, judgements };
}

/** The catches of a fill that one is held against: how many, and the line they give. */
interface SoundOthers {
  readonly count: number;
  readonly line: () => PredictingLine;
}

/** Above so many catches, what one of them adds is taken out of the sums of all instead of adding up the others. */
const fewestToTakeOut = 200;

function soundOthersOf(finding: FillFinding, rule: FindingRule): (row: Catch) => SoundOthers {
  const { fill, isPair } = finding;
  if (isPair || fill.catches.length < fewestToTakeOut)
    return (row) => ({
      count: soundOthers(row, finding).length,
      line: () => soundLine(row, finding, rule),
    });
  const out = new Set([...finding.inFill, ...finding.setAside]);
  const sound = fill.catches.filter((row) => !out.has(row));
  const places = new Map(sound.map((row, place) => [row, place]));
  const points = sound.map((row) => judgedPoint(row, rule.divisionKg));
  const without = linesTakenOutOf(points, finding.outside);
  return (row) => {
    const place = places.get(row);
    return place === undefined
      ? { count: sound.length, line: () => lineOf(points, finding.outside) }
      : { count: sound.length - 1, line: () => without(place) };
  };
}

/**
 * One catch against the others of its fill that do not stand out. A catch that was taken away first is so compared with
 * sound catches only, not with another bad one beside it. The newest fill is its own family; an earlier one belongs to
 * the log.
 */
function judgeCatch(
  row: Catch,
  finding: FillFinding,
  rule: FindingRule,
  sound: SoundOthers,
): CatchJudgement {
  const verdict = verdictOf(row, finding);
  const residual =
    finding.status === "judged"
      ? residualFrom(sound.line(), judgedPoint(row, rule.divisionKg))
      : null;
  const expectedKg = residual === null ? null : residual.slope * row.turns;
  const share = shareOfLook(row, finding);
  const among = (comparisons: number): FamilyJudgement | null =>
    residual === null ? null : judgeInFamily(residual, comparisons, share, levels.told);
  return {
    row: row.row,
    fill: finding.fill.fill,
    catch: row.catch,
    turns: row.turns,
    netKg: row.netKg,
    expectedKg,
    relativeResidual: expectedKg === null ? null : row.netKg / expectedKg - 1,
    statistic: residual?.statistic ?? null,
    df: residual?.df ?? null,
    inFill: among(familyOf(sound.count + 1)),
    inLog: among(rule.testsInLog),
    verdict,
    family: familyOfVerdict(row, finding),
  };
}

/** The line that the sound catches of a fill, without this one, give. */
export function soundLine(
  row: Catch,
  finding: FillFinding,
  { divisionKg }: FindingRule,
): PredictingLine {
  const points = soundOthers(row, finding).map((other) => judgedPoint(other, divisionKg));
  return lineOf(points, finding.outside);
}

function verdictOf(row: Catch, finding: FillFinding): CatchVerdict {
  const { status, inFill, inLog, setAside, isPair, isNewest } = finding;
  if (isPair && (inFill.includes(row) || setAside.includes(row))) return "one of two that disagree";
  if (setAside.includes(row)) return "set aside";
  if (status !== "judged") return status;
  if (!inFill.includes(row) && !inLog.includes(row)) return "in line";
  return isNewest || inLog.includes(row)
    ? "stands out"
    : "stands out only when its fill is looked at alone";
}

function familyOfVerdict(
  row: Catch,
  { inFill, inLog, setAside, isNewest }: FillFinding,
): CatchJudgement["family"] {
  if (setAside.includes(row) || (inLog.includes(row) && !isNewest)) return "whole log";
  return inFill.includes(row) || inLog.includes(row) ? "this fill" : null;
}

function soundOthers(
  row: Catch,
  { fill, inFill, setAside, isPair }: FillFinding,
): readonly Catch[] {
  const isSound = (other: Catch) => !inFill.includes(other) && !setAside.includes(other);
  return fill.catches.filter((other) => other !== row && (isPair || isSound(other)));
}

function shareOfLook(row: Catch, { inFill, isPair, outside }: FillFinding): number {
  const isFirstLook = isPair || inFill.length === 0 || (inFill.length === 1 && inFill[0] === row);
  return isFirstLook ? 1 : laterShare[outside === null ? "alone" : "lent"];
}
