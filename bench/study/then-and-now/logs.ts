import type { Catch } from "../../../src/data/types.ts";
import { at } from "../../../src/errors/at.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import { aCatch } from "../../../test/support/catches.ts";
import { ofOneMeter, usualDelivery, usualScatter, usualTurns } from "../lending/meters.ts";

export const bins = ["1", "2", "3"] as const;
export const tolerance = 0.03;
const usualSpread = 0.02;
/** Standard deviation of the logarithm of a meter's spreads: 95 % of meters lie within a factor of 2.7. */
const unlike = 0.5;

/** A bin as it truly is: what each fill delivers, kg/turn, and the relative scatter of a catch. */
export interface TrueBin {
  readonly bin: string;
  readonly deliveries: readonly number[];
  readonly scatter: number;
}

/** A lasting change of the first bin. */
export interface Change {
  /** Relative. */
  readonly by: number;
  readonly fromFill: number;
}

export function trueBins(
  fills: number,
  random: RandomStream,
  change: Change | null = null,
): readonly TrueBin[] {
  return bins.map((bin, b) => {
    const spread = ofOneMeter(usualSpread, unlike, random);
    const scatter = ofOneMeter(usualScatter, unlike, random);
    const level = (fill: number) =>
      b === 0 && change !== null && fill >= change.fromFill ? 1 + change.by : 1;
    const deliveries = Array.from(
      { length: fills },
      (_, i) => usualDelivery * level(i + 1) * (1 + spread * random.normal()),
    );
    return { bin, deliveries, scatter };
  });
}

/** The truth of a fill, kg/turn. */
export function deliveryOf(bin: TrueBin, fill: number): number {
  return at(bin.deliveries, fill - 1);
}

export function catchesOf(
  bin: TrueBin,
  fills: number,
  catches: number,
  random: RandomStream,
): readonly Catch[] {
  return Array.from({ length: fills }, (_, f) => catchesOfFill(bin, f + 1, catches, random)).flat();
}

export function catchesOfFill(
  bin: TrueBin,
  fill: number,
  catches: number,
  random: RandomStream,
): readonly Catch[] {
  return Array.from({ length: catches }, (_, c) =>
    aCatch({
      bin: bin.bin,
      fill,
      catch: c + 1,
      turns: usualTurns,
      netKg: usualTurns * deliveryOf(bin, fill) * (1 + bin.scatter * random.normal()),
    }),
  );
}

export function logOf(catches: readonly Catch[]): object {
  const rows = catches.map((one, i) => ({ ...one, row: i + 2 }));
  return { source: "catches.csv", massUnit: "kg", catches: rows, cautions: [] };
}
