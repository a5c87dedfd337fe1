import type { Catch, MassUnit } from "../../data/types.ts";
import type { MeterModel } from "../../model/model.ts";
import { type FillFinding, judgedPoint } from "../../model/screening/finding.ts";
import { remarkOf } from "../../model/screening/remark.ts";
import { explanationsOf } from "./explanations.ts";
import { type JudgedFill, soundLine } from "./judged-fill.ts";
import type { CatchInDoubt } from "./mishap-laws.ts";
import { influenceOf } from "./refit.ts";
import type { DisagreeingPair, OutliersOptions, Suspect } from "./result.ts";

/**
 * The catches of one fill that stand out, with what they do and what may have happened.
 *
 * @param isExplained  whether anybody will read what may have happened
 */
export function suspectsOf(
  meter: MeterModel,
  { finding, judgements }: JudgedFill,
  options: OutliersOptions,
  isExplained: boolean,
): readonly Suspect[] {
  if (finding.isPair) return [];
  return judgements
    .filter(({ judgement }) => judgement.family !== null)
    .flatMap(({ row, judgement }) => {
      const influence = influenceOf(meter, finding.fill, [row], options);
      return influence === null
        ? []
        : [
            {
              ...judgement,
              remark: remarkOf(row),
              influence,
              explanations: isExplained
                ? explanationsOf(doubtOf(row, meter, finding, options.massUnit))
                : [],
            },
          ];
    });
}

/** The two catches of a fill of two, when they differ too much. */
export function pairOf({ finding, judgements }: JudgedFill): DisagreeingPair | null {
  const [first, second] = judgements;
  if (!finding.isPair || !first || !second) return null;
  const { statistic, inFill, inLog, family } = first.judgement;
  if (family === null || statistic === null || inFill === null || inLog === null) return null;
  const [a, b] = [first.row, second.row];
  return {
    fill: finding.fill.fill,
    catches: [a.catch, b.catch],
    relativeDifference: Math.abs(a.netKg / a.turns - b.netKg / b.turns) / finding.fill.delivery,
    statistic: Math.abs(statistic),
    inFill,
    inLog,
    family,
    setAside: finding.setAside.length > 0,
    remarks: [a, b].map(remarkOf),
  };
}

function doubtOf(
  row: Catch,
  meter: MeterModel,
  finding: FillFinding,
  massUnit: MassUnit,
): CatchInDoubt {
  const ofFill = [...finding.fill.catches, ...finding.fill.leftOut];
  const before = ofFill.filter((other) => other.catch < row.catch);
  const [previous] = before.sort((a, b) => b.catch - a.catch);
  return {
    row,
    line: soundLine(row, finding, meter.screening),
    readingVariance: judgedPoint(row, meter.screening.divisionKg).knownVariance,
    previous: previous ?? null,
    fellows: meter.screening.findings
      .flatMap(({ fill: { catches, leftOut } }) => [...catches, ...leftOut])
      .filter((other) => other !== row),
    massUnit,
  };
}
