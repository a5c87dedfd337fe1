import type { Catch } from "../../data/types.ts";
import {
  type FamilyJudgement,
  familyOf,
  judgeInFamily,
} from "../../statistics/deleted-residuals.ts";
import { lineOf, type PredictingLine, residualFrom } from "../../statistics/predicting-line.ts";
import { type FillFinding, type JudgingRule, laterShare } from "./judge-fill.ts";
import type { CatchJudgement, CatchVerdict } from "./result.ts";
import { judgedPoint } from "./screened-history.ts";

/** A fill's finding with the judgement of each of its catches. */
export interface JudgedFill {
  readonly finding: FillFinding;
  readonly judgements: readonly { readonly row: Catch; readonly judgement: CatchJudgement }[];
}

export function judgeFill(finding: FillFinding, rule: JudgingRule, isNewest: boolean): JudgedFill {
  const judgements = finding.fill.catches.map((row) => ({
    row,
    judgement: judgeCatch(row, finding, rule, isNewest),
  }));
  return { finding, judgements };
}

/**
 * One catch against the others of its fill that do not stand out. A catch that was taken away first is so compared with
 * sound catches only, not with another bad one beside it.
 *
 * @param isNewest  the newest fill is its own family; an earlier one belongs to the log
 */
function judgeCatch(
  row: Catch,
  finding: FillFinding,
  rule: JudgingRule,
  isNewest: boolean,
): CatchJudgement {
  const verdict = verdictOf(row, finding, isNewest);
  const residual =
    finding.status === "judged"
      ? residualFrom(soundLine(row, finding, rule), judgedPoint(row, rule.divisionKg))
      : null;
  const expectedKg = residual === null ? null : residual.slope * row.turns;
  const share = shareOfLook(row, finding);
  const among = (comparisons: number): FamilyJudgement | null =>
    residual === null ? null : judgeInFamily(residual, comparisons, share, rule.level);
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
    inFill: among(familyOf(soundOthers(row, finding).length + 1)),
    inLog: among(rule.testsInLog),
    verdict,
    family: familyOfVerdict(row, finding, isNewest),
  };
}

/** The line that the sound catches of a fill, without this one, give. */
export function soundLine(
  row: Catch,
  finding: FillFinding,
  { divisionKg }: JudgingRule,
): PredictingLine {
  const points = soundOthers(row, finding).map((other) => judgedPoint(other, divisionKg));
  return lineOf(points, finding.outside);
}

function verdictOf(row: Catch, finding: FillFinding, isNewest: boolean): CatchVerdict {
  if (finding.status !== "judged") return finding.status;
  if (!finding.inFill.has(row) && !finding.inLog.has(row)) return "in line";
  if (finding.isPair) return "one of two that disagree";
  return isNewest || finding.inLog.has(row)
    ? "stands out"
    : "stands out only when its fill is looked at alone";
}

function familyOfVerdict(
  row: Catch,
  { inFill, inLog }: FillFinding,
  isNewest: boolean,
): CatchJudgement["family"] {
  if (inLog.has(row) && !isNewest) return "whole log";
  return inFill.has(row) || inLog.has(row) ? "this fill" : null;
}

function soundOthers(row: Catch, { fill, inFill, isPair }: FillFinding): readonly Catch[] {
  return fill.catches.filter((other) => other !== row && (isPair || !inFill.has(other)));
}

function shareOfLook(row: Catch, { inFill, isPair, outside }: FillFinding): number {
  const isFirstLook = isPair || inFill.size === 0 || (inFill.size === 1 && inFill.has(row));
  return isFirstLook ? 1 : laterShare[outside ? "lent" : "alone"];
}
