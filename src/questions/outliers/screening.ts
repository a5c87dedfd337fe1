import { relativeRange } from "../../model/doubted-estimate.ts";
import type { MeterModel } from "../../model/model.ts";
import { type FillFinding, levels } from "../../model/screening/finding.ts";
import { namedTests } from "./named-tests.ts";
import { influenceOf } from "./refit.ts";
import type { FillScreening, OutliersOptions } from "./result.ts";

/** What was found in one fill, as the result tells it. */
export function screeningOf(
  meter: MeterModel,
  finding: FillFinding,
  options: OutliersOptions,
): FillScreening {
  const { fill, isPair, inFill } = finding;
  return {
    ...screeningInBrief(finding),
    withoutSuspects:
      isPair || inFill.length === 0 ? null : influenceOf(meter, fill, inFill, options),
    named: namedTests(fill, levels.told, options.scaleDivisionKg),
  };
}

/** The same without what leaving the suspects out would do, and without the named tests. */
export function screeningInBrief({
  fill,
  status,
  outside,
  inFill,
  moreThanCanBeTold,
}: FillFinding): Omit<FillScreening, "withoutSuspects" | "named"> {
  return {
    fill: fill.fill,
    takenAt: fill.takenAt,
    catches: fill.catches.length,
    status,
    outsideDf: outside?.df ?? 0,
    relativeRange: relativeRange(fill.catches),
    standingOut: [...inFill].map((row) => row.catch).sort((a, b) => a - b),
    moreThanCanBeTold,
  };
}
