import {
  type ChosenScatter,
  type PooledScatter,
  scatterDiffers,
} from "../../model/catch-scatter.ts";
import { effectiveDivision, type FillEstimate } from "../../model/fill-estimate.ts";
import type { Fill } from "../../model/meters.ts";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { LackOfFit } from "../../statistics/lack-of-fit.ts";
import { apparentDivision } from "./apparent-division.ts";
import type { ConstantMassCheck } from "./constant-mass.ts";

export interface DeliveryFindings {
  readonly fill: Fill;
  readonly scatter: ChosenScatter;
  readonly pooled: PooledScatter;
  readonly estimated: FillEstimate;
  readonly divisionKg: number | null;
  readonly constantMass: ConstantMassCheck | null;
  readonly lackOfFit: LackOfFit | null;
  readonly level: number;
}

type Say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) => Caution;

const significance = 0.05;
const comfortableDf = 6;
const divisionShareThatLimits = 0.5;
/** Residuals of this size relative to the mass are what floating point leaves of none. */
const relativeDust = 1e-12;

/** Everything about one fill's delivery that a person should know before relying on it. */
export function deliveryCautions(findings: DeliveryFindings): readonly Caution[] {
  const { bin, product, fill } = findings.fill;
  const say: Say = (code, facts) => caution(code, { bin, product, fill }, facts);
  return [
    ...aboutNumberOfCatches(findings, say),
    ...aboutScale(findings, say),
    ...aboutScatter(findings, say),
    ...aboutShape(findings, say),
  ];
}

function aboutNumberOfCatches({ fill, scatter, level }: DeliveryFindings, say: Say): Caution[] {
  const n = fill.catches.length;
  const found: Caution[] = [];
  if (n === 1)
    found.push(
      scatter.source === "none" ? say("one-catch", {}) : say("one-catch-lent", { df: scatter.df }),
    );
  if (n === 2 && scatter.source === "own")
    found.push(say("two-catches", { widthFactor: studentTQuantile((1 + level) / 2, 1) }));
  const outlets = new Set(fill.weighings.flatMap(({ outlet }) => outlet ?? []));
  if (outlets.size > 0)
    found.push(
      say("outlets-in-catches", {
        outlets: outlets.size,
        addedUp: fill.catches.every(({ outlet }) => outlet === null),
      }),
    );
  if (scatter.source === "pooled" && scatter.df < comfortableDf)
    found.push(say("few-degrees-of-freedom", { df: scatter.df }));
  return found;
}

function aboutScale({ fill, divisionKg, estimated }: DeliveryFindings, say: Say): Caution[] {
  const found: Caution[] = [];
  const { division, total } = estimated.variance;
  const effective = effectiveDivision(fill, estimated.variance);
  if (fill.catches.length > 1 && catchesAgreeExactly(estimated))
    found.push(
      effective === null
        ? say("zero-scatter-unscaled", {})
        : say("zero-scatter", { divisionKg: effective }),
    );
  if (division === null) found.push(say("scale-division-unknown", {}));
  else if (total !== null && division > divisionShareThatLimits * total)
    found.push(say("scale-limits-result", { share: division / total, divisionKg }));
  const stepKg = divisionKg === null ? null : apparentDivision(fill.catches, divisionKg);
  if (stepKg !== null && divisionKg !== null)
    found.push(say("scale-looks-coarser", { stepKg, divisionKg }));
  return found;
}

function catchesAgreeExactly({ fit }: FillEstimate): boolean {
  return fit.points.every(({ fitted, residual }) => Math.abs(residual) <= relativeDust * fitted);
}

function aboutScatter({ scatter, pooled, estimated }: DeliveryFindings, say: Say): Caution[] {
  const found: Caution[] = [];
  const { model, robust } = estimated.variance;
  if (pooled.homogeneity !== null && scatterDiffers(pooled))
    found.push(
      say("scatter-differs", { pValue: pooled.homogeneity.pValue, fellBack: scatter.fellBack }),
    );
  if (model !== null && robust !== null && robust > model)
    found.push(say("heteroscedastic-error-used", { ratio: Math.sqrt(robust / model) }));
  return found;
}

function aboutShape(
  { fill, constantMass, lackOfFit, estimated }: DeliveryFindings,
  say: Say,
): Caution[] {
  const found: Caution[] = [];
  const interval = constantMass?.constant.interval;
  if (constantMass && interval && constantMass.pValue < significance)
    found.push(
      say("constant-mass", {
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
