import { max } from "simple-statistics";
import { noScatter } from "../../model/lent-scatter.ts";
import { type Fill, newestFill } from "../../model/meters.ts";
import type { MeterModel } from "../../model/model.ts";
import { unknownEstimate } from "../../model/t-estimate.ts";
import { inputOf, typicalTurns } from "./parts.ts";
import type { CatchPoint, Delivery, DeliveryOptions } from "./result.ts";

/**
 * The delivery of a fill by the ratio of sums alone, for where its error could not be computed: a value that can be read,
 * and no interval, scatter or check that anything could be set by.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  as of `delivery`, kept for the record; the weighting is the usual one
 * @param fill     which fill; default the newest
 * @returns        Σm/Σt; null: everything that says how sure it is
 */
export function deliveryWithoutError(
  meter: MeterModel,
  options: DeliveryOptions,
  fill: Fill = newestFill(meter),
): Delivery {
  const { bin, product, takenAt, delivery: value } = fill;
  const turns = typicalTurns(fill);
  const longest = max(fill.catches.map((row) => row.turns));
  return {
    kind: "delivery",
    bin,
    product,
    fill: fill.fill,
    takenAt,
    options,
    input: inputOf(meter, fill),
    estimate: unknownEstimate(value, "kg/turn"),
    halfWidth: null,
    byItself: null,
    ifTypical: null,
    hull: null,
    disagree: null,
    standardErrorFrom: "none",
    variance: { model: null, robust: null, division: null, total: null },
    scatter: noScatter,
    scatterOfTypicalCatch: null,
    nextCatch: { turns, estimate: unknownEstimate(value * turns, "kg"), fan: [] },
    points: pointsOn(fill),
    line: [0, longest].map((one) => ({ turns: one, fittedKg: value * one, ...noBand })),
    constantMass: null,
    lackOfFit: null,
    weightings: [],
    cautions: [],
  };
}

const noBand = {
  meanLowerKg: null,
  meanUpperKg: null,
  nextLowerKg: null,
  nextUpperKg: null,
  nextLowerPerTurn: null,
  nextUpperPerTurn: null,
} as const;

function pointsOn({ catches, delivery, totals }: Fill): readonly CatchPoint[] {
  return catches.map(({ row, catch: number, turns, netKg }) => {
    const fittedKg = delivery * turns;
    return {
      row,
      catch: number,
      turns,
      netKg,
      deliveryKgPerTurn: netKg / turns,
      fittedKg,
      residualKg: netKg - fittedKg,
      relativeResidual: netKg / fittedKg - 1,
      leverage: turns / totals.turns,
    };
  });
}
