import { relativeRange } from "../../model/doubted-estimate.ts";
import type { MeterModel } from "../../model/model.ts";
import { type FillFinding, levels } from "../../model/screening/finding.ts";
import { namedTests } from "./named-tests.ts";
import { influenceOf } from "./refit.ts";
import type { FillScreening, OutliersOptions } from "./result.ts";

/** What was found in one fill, as the result tells it. */
export function screeningOf(
  meter: MeterModel,
  { fill, status, outside, isPair, inFill, moreThanCanBeTold }: FillFinding,
  options: OutliersOptions,
): FillScreening {
  return {
    fill: fill.fill,
    takenAt: fill.takenAt,
    catches: fill.catches.length,
    status,
    outsideDf: outside?.df ?? 0,
    relativeRange: relativeRange(fill.catches),
    standingOut: [...inFill].map((row) => row.catch).sort((a, b) => a - b),
    moreThanCanBeTold,
    withoutSuspects:
      isPair || inFill.length === 0 ? null : influenceOf(meter, fill, inFill, options),
    named: namedTests(fill, levels.told, options.scaleDivisionKg),
  };
}
