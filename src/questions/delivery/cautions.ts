import { at } from "../../errors/at.ts";
import { scatterDiffers } from "../../model/catch-scatter.ts";
import type { StandingTest } from "../../model/constant-mass.ts";
import type { FillEstimate } from "../../model/doubted-estimate.ts";
import { effectiveDivision } from "../../model/fill-estimate.ts";
import {
  type ChosenScatter,
  type MeterScatter,
  scatterAgainstOthers,
} from "../../model/lent-scatter.ts";
import type { Fill } from "../../model/meters.ts";
import { remarkOf } from "../../model/screening/remark.ts";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import { groupBy } from "../../numeric/group-by.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { LackOfFit } from "../../statistics/lack-of-fit.ts";
import { coarserStep } from "./coarser-step.ts";
import type { ConstantMassCheck } from "./constant-mass.ts";

export interface DeliveryFindings {
  readonly fill: Fill;
  readonly scatter: ChosenScatter;
  readonly lent: MeterScatter;
  readonly estimated: FillEstimate;
  readonly divisionKg: number | null;
  readonly constantMass: ConstantMassCheck | null;
  /** The same test among those of all bins; null: it does not stand among them. */
  readonly constantMassAmongBins: StandingTest | null;
  /** p value of the test that the two catches of the fill agree; null: they are not two, or nothing is lent. */
  readonly pairPValue: number | null;
  readonly lackOfFit: LackOfFit | null;
  readonly level: number;
}

type Say = <C extends CautionCode>(
  code: C,
  facts: CautionFacts[C],
  catches?: readonly number[],
) => Caution;

const significance = 0.05;
/** Of a test that every bin stands, after Holm: what stops a person in the field is wrong once in a hundred logs. */
const seriously = 0.01;
const comfortableDf = 6;
const divisionShareThatLimits = 0.5;

/** Everything about one fill's delivery that a person should know before relying on it. */
export function deliveryCautions(findings: DeliveryFindings): readonly Caution[] {
  const { bin, product, fill } = findings.fill;
  const say: Say = (code, facts, catches = []) =>
    caution(code, { bin, product, fill, catches }, facts);
  return [
    ...aboutDisagreement(findings, say),
    ...aboutNumberOfCatches(findings, say),
    ...aboutScale(findings, say),
    ...aboutScatter(findings, say),
    ...aboutShape(findings, say),
  ];
}

/** Why there is no interval: catches of which one must be wrong. */
function aboutDisagreement(
  { fill, estimated, pairPValue }: DeliveryFindings,
  say: Say,
): readonly Caution[] {
  const { disagree, estimate } = estimated;
  if (disagree === null) return [];
  const { by, range, apart, pairs } = disagree;
  const remarks = fill.catches.map(remarkOf);
  if (by === "range")
    return [say("catches-disagree", { relativeRange: range, pairs, remarks }, apart)];
  const apartKgPerTurn = Math.abs(at(pairs, 0).value - at(pairs, 1).value);
  const relativeDifference = apartKgPerTurn / estimate.value;
  return [say("two-disagree", { relativeDifference, pValue: pairPValue ?? 0, remarks }, apart)];
}

function aboutNumberOfCatches(findings: DeliveryFindings, say: Say): Caution[] {
  const { fill, scatter, level } = findings;
  const n = fill.catches.length;
  const found: Caution[] = [];
  if (n === 1 && scatter.source !== "none")
    found.push(say("one-catch-lent", { df: scatter.df, lentBy: scatter.lentBy }));
  if (n === 1 && scatter.source === "none" && !otherFillsAgreeExactly(findings))
    found.push(say("one-catch", {}));
  if (n === 2 && scatter.source === "own")
    found.push(say("two-catches", { widthFactor: studentTQuantile((1 + level) / 2, 1) }));
  const outlets = outletsIn(fill.weighings).size;
  if (outlets > 0)
    found.push(say(isWhole(fill) ? "outlets-in-catches" : "outlets-not-whole", { outlets }));
  if (scatter.source === "lent" && scatter.lentBy.meters === 0 && scatter.df < comfortableDf)
    found.push(say("few-degrees-of-freedom", { df: scatter.df }));
  return found;
}

function outletsIn(weighings: Fill["weighings"]): ReadonlySet<string> {
  return new Set(weighings.flatMap(({ outlet }) => outlet ?? []));
}

/** Whether every catch that names outlets has all that the fill names, and more than one: one alone may be any part. */
function isWhole({ weighings }: Pick<Fill, "weighings">): boolean {
  const outlets = outletsIn(weighings).size;
  return (
    outlets > 1 &&
    [...groupBy(weighings, (row) => row.catch).values()].every((rows) =>
      [0, outlets].includes(outletsIn(rows).size),
    )
  );
}

function aboutScale(findings: DeliveryFindings, say: Say): Caution[] {
  const { fill, divisionKg, estimated } = findings;
  const found: Caution[] = [];
  const { division, total } = estimated.variance;
  const effective = effectiveDivision(fill, estimated.variance);
  if (catchesAgreeExactly(findings))
    found.push(
      effective === null
        ? say("zero-scatter-unscaled", {})
        : say("zero-scatter", { divisionKg: effective }),
    );
  if (division === null) found.push(say("scale-division-unknown", {}));
  else if (total !== null && division > divisionShareThatLimits * total)
    found.push(say("scale-limits-result", { share: division / total, divisionKg }));
  const stepKg = divisionKg === null ? null : coarserStep(fill.catches, divisionKg);
  if (stepKg !== null && divisionKg !== null)
    found.push(say("scale-looks-coarser", { stepKg, divisionKg }));
  return found;
}

/** Those of the fill, or, for a catch alone, those of the other fills, which then have nothing to lend. */
function catchesAgreeExactly(findings: DeliveryFindings): boolean {
  if (findings.fill.catches.length === 1) return otherFillsAgreeExactly(findings);
  return findings.estimated.fit.points.every(({ fitted, residual }) => isDust(residual, fitted));
}

/** Whether nothing is lent although other fills have catches to compare: no scatter at all, and no division to put for it. */
function otherFillsAgreeExactly({ scatter, lent }: DeliveryFindings): boolean {
  return scatter.source === "none" && lent.df > 0;
}

function aboutScatter({ lent, estimated }: DeliveryFindings, say: Say): Caution[] {
  const found: Caution[] = [];
  const { model, robust } = estimated.variance;
  if (lent.homogeneity !== null && scatterDiffers(lent))
    found.push(say("scatter-differs", { pValue: lent.homogeneity.pValue }));
  const against = scatterAgainstOthers(lent);
  if (against !== null && estimated.byItself !== null)
    found.push(
      say(against.more ? "catches-wilder-than-bins" : "catches-calmer-than-bins", {
        pValue: against.pValue,
      }),
    );
  if (model !== null && robust !== null && robust > model)
    found.push(say("heteroscedastic-error-used", { ratio: Math.sqrt(robust / model) }));
  return found;
}

function aboutShape(
  { fill, constantMass, constantMassAmongBins, lackOfFit, estimated }: DeliveryFindings,
  say: Say,
): Caution[] {
  const found: Caution[] = [];
  const interval = constantMass?.constant.interval;
  const serious = (constantMassAmongBins?.adjustedPValue ?? 1) <= seriously;
  if (constantMass && interval && constantMass.pValue < significance)
    found.push(
      say(serious ? "constant-mass" : "constant-mass-suspected", {
        constantKg: constantMass.constant.value,
        lowerKg: interval.lower,
        upperKg: interval.upper,
        pValue: constantMass.pValue,
        interceptSlopeKgPerTurn: constantMass.interceptSlope,
      }),
    );
  if (lackOfFit && lackOfFit.pValue < significance)
    found.push(say("lack-of-fit", { pValue: lackOfFit.pValue }));
  if (estimated.fit.law !== "proportional")
    found.push(say("weighting-by-name", { law: estimated.fit.law, usualKgPerTurn: fill.delivery }));
  return found;
}
