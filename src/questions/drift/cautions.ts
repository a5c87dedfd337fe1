import type { Meter } from "../../model/meters.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import { type Changes, fewestForShift, fewestForTrend } from "./changes.ts";
import type { SettlingTest } from "./settling.ts";
import type { Stretches } from "./stretches.ts";
import type { DriftVerdict } from "./verdict.ts";

export interface DriftFindings {
  readonly meter: Meter;
  readonly order: Stretches;
  readonly changes: Changes;
  readonly verdict: DriftVerdict;
  readonly settling: readonly SettlingTest[];
  readonly level: number;
}

type Say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) => Caution;

/** Everything about a season's fills that a person should know before relying on the verdict. */
export function driftCautions(findings: DriftFindings): readonly Caution[] {
  const { bin, product } = findings.meter;
  const say: Say = (code, facts) => caution(code, { bin, product }, facts);
  return [
    ...aboutOrder(findings, say),
    ...aboutNumberOfFills(findings, say),
    ...aboutFindings(findings, say),
  ];
}

function aboutOrder({ order }: DriftFindings, say: Say): Caution[] {
  const found: Caution[] = [];
  const { otherProducts, gaps, stretches } = order;
  if (otherProducts.length > 0)
    found.push(
      say("product-changed", {
        otherProducts,
        fillsSetAside: stretches.slice(0, -1).flat().length,
      }),
    );
  if (!order.productsInOrder) found.push(say("product-order-unknown", {}));
  if (!order.numbersFollowDates) found.push(say("fill-numbers-against-dates", {}));
  if (gaps.length > 0)
    found.push(
      say("gaps-between-fills", {
        missingFills: gaps.reduce((sum, { missingFills }) => sum + missingFills, 0),
        longestPauseDays: gaps.reduce<number | null>(
          (longest, { days }) => (days === null ? longest : Math.max(longest ?? 0, days)),
          null,
        ),
      }),
    );
  return found;
}

function aboutNumberOfFills({ order, changes }: DriftFindings, say: Say): Caution[] {
  const fills = order.stretches.at(-1)?.length ?? 0;
  if (fills < fewestForTrend) return [say("no-trend-yet", { fills, needed: fewestForTrend })];
  if (changes.trend === null && changes.shift === null && fills >= fewestForShift)
    return [say("fills-agree-exactly", { fills })];
  return fills < fewestForShift
    ? [say("no-change-point-yet", { fills, needed: fewestForShift })]
    : [];
}

function aboutFindings(findings: DriftFindings, say: Say): Caution[] {
  const { changes, verdict, settling, level } = findings;
  const found: Caution[] = [];
  if (verdict === "trending" && changes.trend !== null)
    found.push(say("trend-or-wander", { pValue: changes.trend.adjustedPValue }));
  for (const { adjustedPValue, scope, against, perCatch, emptyToFull } of settling)
    if (adjustedPValue <= 1 - level)
      found.push(
        say("delivery-settles", {
          scope,
          against,
          change: (perCatch ?? emptyToFull)?.value ?? 0,
          pValue: adjustedPValue,
        }),
      );
  return found;
}
