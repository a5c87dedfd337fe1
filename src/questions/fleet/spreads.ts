import { at } from "../../errors/at.ts";
import { standardDeviationInterval } from "../../model/catch-scatter.ts";
import type { MeterModel } from "../../model/model.ts";
import { type DeletedVariance, deletedVariances } from "../../statistics/deleted-variances.ts";
import type { EstimatedVariance } from "../../statistics/spread-votes.ts";
import type { AgainstSpreads } from "./result.ts";

/** A spread against those of the other meters, before it is judged together with all. */
export interface Spreading extends Omit<AgainstSpreads, "adjusted" | "unlike"> {
  readonly more: boolean;
}

/** Other meters with the product from which on only they are asked: as many as tell how far meters lie apart. */
const fewestOfProduct = 30;

/**
 * How much each meter's fills differ against those of all other meters, or of those with its product where these are thirty.
 *
 * @returns one a meter that can tell, and has others that can
 */
export function fillsAgainstOthers(
  meters: readonly MeterModel[],
  level: number,
): ReadonlyMap<MeterModel, Spreading> {
  return against(meters, ({ record }) => record.spread, {
    level,
    scale: 1,
    about: "fill-to-fill spread",
  });
}

/** The same of how much catches of so many turns scatter within fills. */
export function catchesAgainstOthers(
  meters: readonly MeterModel[],
  level: number,
  turns: number,
): ReadonlyMap<MeterModel, Spreading> {
  const scale = 1 / Math.sqrt(turns);
  return against(meters, ({ record }) => record.scatter, { level, scale, about: "catch scatter" });
}

interface Measure {
  readonly level: number;
  /** From the variance's unit to what is shown. */
  readonly scale: number;
  readonly about: "fill-to-fill spread" | "catch scatter";
}

interface Telling {
  readonly meter: MeterModel;
  readonly own: EstimatedVariance;
}

function against(
  meters: readonly MeterModel[],
  partOf: (meter: MeterModel) => EstimatedVariance | null,
  measure: Measure,
): ReadonlyMap<MeterModel, Spreading> {
  const telling = meters.flatMap((meter) => {
    const own = partOf(meter);
    return own === null ? [] : [{ meter, own }];
  });
  const products = new Set(telling.map(({ meter }) => meter.product));
  const large = new Map(
    [...products].map((product) => [
      product,
      telling.filter(({ meter }) => meter.product === product),
    ]),
  );
  const among = (product: string) => {
    const same = large.get(product) ?? [];
    return same.length >= fewestOfProduct ? same : telling;
  };
  const found = new Map(
    [...new Set([...products].map(among))].map((group) => [group, spreadsIn(group, measure)]),
  );
  return new Map(
    telling.flatMap(({ meter }) => {
      const one = found.get(among(meter.product))?.get(meter);
      return one === undefined ? [] : [[meter, one] as const];
    }),
  );
}

function spreadsIn(
  group: readonly Telling[],
  measure: Measure,
): ReadonlyMap<MeterModel, Spreading> {
  const found = deletedVariances(group.map(({ own }) => own));
  return new Map(
    group.flatMap(({ meter, own }, i) => {
      const one = at(found, i);
      return one === null ? [] : [[meter, spreading(own, one, group.length - 1, measure)] as const];
    }),
  );
}

function spreading(
  { variance, df }: EstimatedVariance,
  { pValue, more, typical }: DeletedVariance,
  meters: number,
  { level, scale, about }: Measure,
): Spreading {
  const relative = scale * Math.sqrt(variance);
  return {
    more,
    pValue,
    relative,
    df,
    interval: standardDeviationInterval(relative, df, level, about),
    typical: scale * typical,
    meters,
  };
}
