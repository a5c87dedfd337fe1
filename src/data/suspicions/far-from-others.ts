import { median } from "simple-statistics";
import { type Caution, caution, type Where } from "../../results/caution.ts";
import { groupsOf } from "../groups.ts";
import {
  type CountedLog,
  type CountedMeter,
  medianDelivery,
  placeOfFill,
  type Suspicion,
  spanOf,
} from "./suspect.ts";
import { isTimes, leastTimes, unitMeant } from "./unit-factors.ts";

/** Two at least must agree before anything is held against them: of two that differ nobody can say which is right. */
const fewest = 2;
/** Meters of one build and product, and fills of one meter, lie closer together than this. */
const agree = 1.5;
/** Beyond what rollers of another size make of the same product. */
const otherMeter = 4;

/** Masses of one bin, or of one fill, that other bins or fills of the product tell to be in another unit. */
export const farFromOthers: Suspicion = (log) =>
  groupsOf(log.meters, ({ where }) => where.product ?? "").flatMap((ofProduct) => [
    ...meterFar(ofProduct, log),
    ...ofProduct.flatMap((meter) => fillFar(meter, log)),
  ]);

function meterFar(meters: CountedLog["meters"], { massUnit }: CountedLog): readonly Caution[] {
  if (meters.length <= fewest) return [];
  return farAmong(
    meters.map(({ catches, where }) => ({ delivery: medianDelivery(catches), where })),
    (times) => isTimes(times, otherMeter) || unitMeant(times, massUnit) !== null,
  ).map(({ where, times }) => {
    const facts = { heldAgainst: "other-bins", times, read: massUnit } as const;
    return caution("delivery-far-off", where, { ...facts, meant: unitMeant(times, massUnit) });
  });
}

function fillFar({ fills, span }: CountedMeter, log: CountedLog) {
  if (fills.length <= fewest || span < leastTimes) return [];
  const { massUnit: read } = log;
  return farAmong(
    fills.map((fill) => ({ delivery: medianDelivery(fill), where: placeOfFill(fill, log) })),
    (times) => unitMeant(times, read) !== null,
  ).map(({ where, times }) => {
    const facts = { heldAgainst: "other-fills", times, read } as const;
    return caution("delivery-far-off", where, { ...facts, meant: unitMeant(times, read) });
  });
}

interface Delivering {
  readonly delivery: number;
  readonly where: Partial<Where>;
}

/** Those far from all others, where the others agree among themselves. */
function farAmong(all: readonly Delivering[], isFar: (times: number) => boolean) {
  const middle = median(all.map(({ delivery }) => delivery));
  const near = all.filter(({ delivery }) => spanOf([delivery, middle]) < agree);
  if (near.length < fewest || 2 * near.length <= all.length) return [];
  const known = median(near.map(({ delivery }) => delivery));
  return all
    .map(({ delivery, where }) => ({ where, times: delivery / known }))
    .filter(({ times }) => isFar(times));
}
