import type { FillOrder } from "../../model/fill-order.ts";
import { stillMoving } from "../../model/history-cautions.ts";
import type { MeterModel } from "../../model/model.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { FillName } from "../../results/fill-name.ts";
import { known } from "../../results/options.ts";
import { type ChangeTests, fewestForShift, fewestForTrend } from "./changes.ts";
import type { SettlingTest } from "./settling.ts";

export interface DriftFindings {
  readonly meter: MeterModel;
  readonly order: FillOrder;
  /** What is looked at once, at the end. */
  readonly explained: ChangeTests;
  readonly settling: readonly SettlingTest[];
  /** That part the fills. */
  readonly columns: readonly CautionFacts["column-splits-fills"][];
  readonly level: number;
}

type Say = <C extends CautionCode>(code: C, facts: CautionFacts[C], fill?: FillName) => Caution;

/** Everything about a season's fills that a person should know before relying on the verdict. */
export function driftCautions(findings: DriftFindings): readonly Caution[] {
  const { bin, product } = findings.meter;
  const say: Say = (code, facts, fill) =>
    caution(code, { bin, product, ...(fill === undefined ? {} : { fill }) }, facts);
  return [
    ...aboutTheNewest(findings, say),
    ...aboutLevels(findings, say),
    ...aboutOrder(findings, say),
    ...aboutNumberOfFills(findings, say),
    ...explaining(findings, say),
  ];
}

function aboutTheNewest({ meter }: DriftFindings, say: Say): Caution[] {
  const { differs } = meter.history;
  if (differs === null) return [];
  const { fill, earlierFills, pValue, limit, catches, usualCatches } = differs;
  const facts = { difference: differs.difference.value, earlierFills, pValue };
  return [
    differs.confirmed
      ? say("fill-differs-confirmed", { ...facts, catches, usualCatches }, fill)
      : say("fill-differs", { ...facts, limit }, fill),
  ];
}

function aboutLevels({ meter }: DriftFindings, say: Say): Caution[] {
  const { moved, stoodApart } = meter.history;
  return [
    ...(moved === null
      ? []
      : [
          say("moved-since", {
            sinceFill: moved.since.fill,
            ...known({ season: moved.season }),
            fillsSince: moved.fillsSince,
            change: moved.size.value,
            lower: moved.size.interval?.lower ?? null,
            upper: moved.size.interval?.upper ?? null,
            evidence: moved.evidence,
            limit: moved.limit,
          }),
        ]),
    ...stillMoving(meter),
    ...stoodApart.map(({ fill, difference, backWith }) =>
      say("stood-apart", { difference, backWith }, fill),
    ),
  ];
}

function aboutOrder({ order }: DriftFindings, say: Say): Caution[] {
  const found: Caution[] = [];
  const { otherProducts, productChangedBefore, gaps } = order;
  if (otherProducts.length > 0)
    found.push(say("product-changed", { otherProducts, beforeFills: productChangedBefore }));
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

function aboutNumberOfFills({ meter, explained }: DriftFindings, say: Say): Caution[] {
  const fills = meter.fills.length;
  if (fills < fewestForTrend) return [say("no-trend-yet", { fills, needed: fewestForTrend })];
  if (explained.trend === null && explained.shift === null && fills >= fewestForShift)
    return [say("fills-agree-exactly", { fills })];
  return fills < fewestForShift
    ? [say("no-change-point-yet", { fills, needed: fewestForShift })]
    : [];
}

function explaining(findings: DriftFindings, say: Say): Caution[] {
  const { meter, explained, settling, columns, level } = findings;
  const found: Caution[] = columns.map((facts) => say("column-splits-fills", facts));
  const { trend } = explained;
  const { status, changes } = meter.history;
  // A step looks like a slope as well: where a change was found, that explains it.
  const unexplained = changes.length === 0 && status !== "trending";
  if (trend !== null && trend.adjustedPValue <= 1 - level && unexplained)
    found.push(say("trend-or-wander", { pValue: trend.adjustedPValue }));
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
