import { sum } from "simple-statistics";
import { at } from "../../errors/at.ts";
import type { FillEstimate } from "../../model/doubted-estimate.ts";
import type { FillVariance } from "../../model/fill-estimate.ts";
import type { ChosenScatter } from "../../model/lent-scatter.ts";
import type { Fill, Meter } from "../../model/meters.ts";
import { groupBy } from "../../numeric/group-by.ts";
import {
  fitThroughOrigin,
  type ThroughOriginFit,
  type VarianceLaw,
} from "../../statistics/through-origin.ts";
import type { CatchPoint, Delivery, WeightedDelivery } from "./result.ts";

const varianceLaws: readonly VarianceLaw[] = ["proportional", "constant", "squared"];

/** Turns most catches of the fill have; the longer where two are equally common. */
export function typicalTurns({ catches }: Fill): number {
  const alike = [...groupBy(catches, ({ turns }) => turns)];
  alike.sort(([a, one], [b, other]) => other.length - one.length || b - a);
  const [typical] = at(alike, 0);
  return typical;
}

export function inputOf({ fills }: Pick<Meter, "fills">, fill: Fill): Delivery["input"] {
  return {
    catches: fill.totals.catches,
    turns: fill.totals.turns,
    massKg: sum(fill.catches.map(({ netKg }) => netKg)),
    earlierFills: fills.filter((other) => other.fill < fill.fill).length,
    leftOut: fill.leftOut.map((row) => ({
      catch: row.catch,
      row: row.row,
      reason: row.leftOut ?? "",
    })),
  };
}

export function pointsOf(fill: Fill, { fit }: FillEstimate): readonly CatchPoint[] {
  return fit.points.map((point, i) => ({
    row: at(fill.catches, i).row,
    catch: at(fill.catches, i).catch,
    turns: point.x,
    netKg: point.y,
    deliveryKgPerTurn: point.y / point.x,
    fittedKg: point.fitted,
    residualKg: point.residual,
    relativeResidual: point.residual / point.fitted,
    leverage: point.leverage,
  }));
}

/** The line through the same points by another law of scatter. */
export function fitBy(law: VarianceLaw, fit: ThroughOriginFit): ThroughOriginFit {
  return law === fit.law ? fit : fitThroughOrigin(fit.points, law);
}

export function weightingsOf(fit: ThroughOriginFit): readonly WeightedDelivery[] {
  return varianceLaws.map((law) => {
    const { slope, modelStandardError, robustStandardError } = fitBy(law, fit);
    return { law, delivery: slope, modelStandardError, robustStandardError };
  });
}

export function standardErrorFrom(
  scatter: ChosenScatter,
  { model, robust }: FillVariance,
): Delivery["standardErrorFrom"] {
  if (scatter.source === "none") return "none";
  if (scatter.source === "lent") return "lent scatter";
  return model !== null && robust !== null && robust > model ? "robust" : "model";
}
